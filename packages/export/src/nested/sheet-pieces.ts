// The shop's sheets and surfaced boards as the pieces that lie on the router: a sheet longer than its travel is sawn up first.
import { type Outline, point, polygon } from "@lamplane/geometry";
import { sheetThickness } from "@lamplane/parameters/jigs";
import type { BoardEntry, Design } from "@lamplane/parameters/table";
import { hasRouter } from "../router/plane-programs.ts";

/** A sheet, board or piece of one, its grain along x; its lower left corner is 0, 0. mm */
export interface SheetPiece {
  /** As the maker calls the sheet. */
  readonly name: string;
  readonly material: "wood" | "ply";
  readonly thickness: number;
  readonly width: number;
  readonly depth: number;
  /** Knots. */
  readonly keepOuts: readonly Outline[];
  /** The sheet that it is sawn from, where that is larger than the router's travel. */
  readonly sawnFrom?: { readonly width: number; readonly depth: number };
}

/** Every piece, in the order in which the maker names the sheets. */
export function sheetPieces(design: Design): SheetPiece[] {
  const sheets = design.sheets.flatMap((sheet) => {
    const { name, material, length: width, width: depth, count } = sheet;
    const whole = { name, material, thickness: sheetThickness(sheet), width, depth, keepOuts: [] };
    return Array.from({ length: count }, () => whole);
  });
  const boards = design.boards
    .filter(({ state }) => state === "surfaced")
    .flatMap((board) => Array.from({ length: board.count }, () => wholeBoard(board)));
  return [...sheets, ...boards].flatMap((whole) => sawnPieces(whole, design));
}

function wholeBoard(board: BoardEntry): SheetPiece {
  const { name, length: width, width: depth, thickness, knots } = board;
  const keepOuts = knots.map(({ from, to, across }) => {
    const [low, high] = across.to > across.from ? [across.from, across.to] : [0, depth];
    return polygon(point(from, low), point(to, low), point(to, high), point(from, high));
  });
  return { name, material: "wood", thickness, width, depth, keepOuts };
}

/** Stretches of a length that a travel allows, a kerf between them; the last one is the rest. */
function stretches(length: number, travel: number, kerf: number): { from: number; size: number }[] {
  if (length <= travel) return [{ from: 0, size: length }];
  return [
    { from: 0, size: travel },
    ...stretches(length - travel - kerf, travel, kerf).map((rest) => ({
      ...rest,
      from: rest.from + travel + kerf,
    })),
  ].filter(({ size }) => size > 0);
}

function sawnPieces(whole: SheetPiece, design: Design): SheetPiece[] {
  const { router, shop } = design;
  const { width, depth } = router.area;
  if (!hasRouter(design) || depth === 0) return [whole];
  if (whole.width <= width && whole.depth <= depth) return [whole];
  const sawnFrom = { width: whole.width, depth: whole.depth };
  return stretches(whole.width, width, shop.kerf).flatMap((x) =>
    stretches(whole.depth, depth, shop.kerf).map((y) => ({
      ...whole,
      width: x.size,
      depth: y.size,
      sawnFrom,
      keepOuts: whole.keepOuts.flatMap((knot) => within(knot, x, y)),
    })),
  );
}

type Stretch = ReturnType<typeof stretches>[number];

/** What of a knot's upright box lies on a piece, in the piece's own place. */
function within(knot: Outline, x: Stretch, y: Stretch): Outline[] {
  const clip = (value: number, { from, size }: Stretch) => Math.max(0, Math.min(size, value - from));
  const [low, high] = [knot[0]!.from, knot[1]!.to];
  const [left, right] = [clip(low.x, x), clip(high.x, x)];
  const [under, over] = [clip(low.y, y), clip(high.y, y)];
  if (right <= left || over <= under) return [];
  return [polygon(point(left, under), point(right, under), point(right, over), point(left, over))];
}
