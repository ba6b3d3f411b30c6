// The stock list as a table for spreadsheets: the billet to buy, then its pieces; lengths in mm, in an inch design on the rule too.
import { finishedWay, type StockPlan } from "@lamplane/bench";
import type { Design } from "@lamplane/parameters/table";
import { onRule, type SafeWay } from "@lamplane/parameters/units";
import { csvLine } from "../csv.ts";

const SIDES = ["length", "width", "thickness"] as const;
type Size = Readonly<Record<(typeof SIDES)[number], number>>;

/** One row: pieces of one kind. The billet has no finished size. */
interface Line {
  readonly piece: string;
  readonly count: number;
  readonly rough: Size;
  readonly finished?: Size;
  readonly from: string;
  readonly species: string;
  readonly grain: string;
}

/** A line for the billet and one for each kind of piece, length along the grain. */
export function stockCsv({ list, billet }: StockPlan, design: Pick<Design, "units" | "shop" | "wood">): string {
  const { length, width, height } = billet.needed;
  const whole: Line = {
    piece: "billet",
    count: 1,
    rough: { length, width, thickness: height },
    from: "to buy",
    species: design.wood.body,
    grain: "along its length",
  };
  return [head(design), ...[whole, ...list.rows].map((row) => cells(row, design))].map(csvLine).join("");
}

const head = ({ units }: Pick<Design, "units">): string[] => [
  "piece",
  "count",
  ...sizeNames("mm"),
  ...(units === "in" ? sizeNames("in") : []),
  "from",
  "wood",
  "grain",
];

const sizeNames = (unit: string): string[] =>
  ["rough", "finished"].flatMap((state) => SIDES.map((side) => `${state} ${side} ${unit}`));

function cells(row: Line, { units, shop }: Pick<Design, "units" | "shop">): string[] {
  const { piece, count, rough, finished, from, species, grain } = row;
  const inMm = [rough, finished].flatMap((size) => SIDES.map((side) => (size ? rounded(size[side]) : "")));
  // Rough sizes are rounded up, as the stock list on paper rounds them: what is sawn too large can still be milled.
  const ruled = (size: Size | undefined, way: (side: keyof Size) => SafeWay) =>
    SIDES.map((side) =>
      size ? onRule(size[side], "in", shop.smallestFraction, way(side)).text.replace(/ in$/, "") : "",
    );
  const inInches =
    units === "in" ? [...ruled(rough, () => "up"), ...ruled(finished, (side) => finishedWay(piece, side))] : [];
  return [piece, String(count), ...inMm, ...inInches, from, species, grain];
}

const rounded = (mm: number): string => String(Number(mm.toFixed(3)));
