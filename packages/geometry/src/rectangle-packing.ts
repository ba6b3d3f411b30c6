// Rectangles laid on sheets of one size: what fits together goes on as few sheets as the packer finds.
import * as packing from "maxrects-packer";

// Node reads the package as CommonJS, with everything under `default`; bundlers read its module.
type Packing = Pick<typeof packing, "MaxRectsPacker">;
const exported: Packing & { default?: Packing } = { ...packing };
const { MaxRectsPacker } = exported.default ?? exported;

export interface SheetSize {
  readonly width: number;
  readonly depth: number;
  /** Left free along every edge, mm. */
  readonly margin: number;
  /** Left free between two things, mm. */
  readonly gap: number;
  /** Whether a thing may lie turned by a quarter: not where grain runs along the sheet. */
  readonly mayTurn: boolean;
}

export interface RectangleToPack<T> {
  readonly item: T;
  readonly width: number;
  readonly depth: number;
}

/** Where a thing lies: its lower left corner from the sheet's, after a quarter turn counter-clockwise where `turned`. mm */
export interface PackedRectangle<T> {
  readonly item: T;
  readonly x: number;
  readonly y: number;
  readonly turned: boolean;
}

export interface PackedSheets<T> {
  readonly sheets: readonly (readonly PackedRectangle<T>[])[];
  /** Larger than a sheet in every way it may lie. */
  readonly oversized: readonly T[];
}

/** The same rectangles and sheet give the same places. */
export function packRectangles<T>(rectangles: readonly RectangleToPack<T>[], sheet: SheetSize): PackedSheets<T> {
  const [width, depth] = [sheet.width - 2 * sheet.margin, sheet.depth - 2 * sheet.margin];
  const fits = (w: number, d: number) => w <= width && d <= depth;
  const laid = rectangles.map((rectangle) => {
    const { width: w, depth: d } = rectangle;
    const turnsFirst = sheet.mayTurn && !fits(w, d) && fits(d, w);
    return { ...rectangle, ...(turnsFirst ? { width: d, depth: w } : {}), turnsFirst };
  });
  const packer = new MaxRectsPacker(width, depth, sheet.gap, {
    smart: false,
    pot: false,
    square: false,
    allowRotation: sheet.mayTurn,
  });
  const fitting = laid.filter((rectangle) => fits(rectangle.width, rectangle.depth));
  for (const rectangle of fitting) packer.add(rectangle.width, rectangle.depth, rectangle);
  const sheets = packer.bins.map((bin) =>
    bin.rects.map(({ x, y, rot, data }): PackedRectangle<T> => {
      const { item, turnsFirst } = data as (typeof laid)[number];
      return { item, x: x + sheet.margin, y: y + sheet.margin, turned: rot !== turnsFirst };
    }),
  );
  const oversized = laid.filter((rectangle) => !fitting.includes(rectangle)).map(({ item }) => item);
  return { sheets, oversized };
}
