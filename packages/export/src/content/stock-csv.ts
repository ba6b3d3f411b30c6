// The stock list as a table for spreadsheets: the billet to buy, then its pieces; lengths in mm, in an inch design on the rule too.
import { finishedRounding, type StockPlan } from "@lamplane/bench";
import type { Design } from "@lamplane/parameters/table";
import { formatNumber, type RoundingDirection, roundToRule } from "@lamplane/parameters/units";
import { csvLine } from "../csv.ts";

const SIDES = ["length", "width", "thickness"] as const;
type StockSize = Readonly<Record<(typeof SIDES)[number], number>>;

/** One row: pieces of one kind. The billet has no finished size. */
interface StockLine {
  readonly piece: string;
  readonly count: number;
  readonly rough: StockSize;
  readonly finished?: StockSize;
  readonly from: string;
  readonly species: string;
  readonly grain: string;
}

/** A line for the billet and one for each kind of piece, length along the grain. */
export function stockCsv({ list, billet }: StockPlan, design: Pick<Design, "units" | "shop" | "wood">): string {
  const { length, width, height } = billet.needed;
  const whole: StockLine = {
    piece: "billet",
    count: 1,
    rough: { length, width, thickness: height },
    from: "to buy",
    species: design.wood.body,
    grain: "along its length",
  };
  return [headCells(design), ...[whole, ...list.rows].map((row) => lineCells(row, design))].map(csvLine).join("");
}

const headCells = ({ units }: Pick<Design, "units">): string[] => [
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

function lineCells(row: StockLine, { units, shop }: Pick<Design, "units" | "shop">): string[] {
  const { piece, count, rough, finished, from, species, grain } = row;
  const inMm = [rough, finished].flatMap((size) => SIDES.map((side) => (size ? formatMillimetres(size[side]) : "")));
  // Rough sizes are rounded up, as the stock list on paper rounds them: what is sawn too large can still be milled.
  const ruled = (size: StockSize | undefined, way: (side: keyof StockSize) => RoundingDirection) =>
    SIDES.map((side) =>
      size ? roundToRule(size[side], "in", shop.smallestFraction, way(side)).text.replace(/ in$/, "") : "",
    );
  const inInches =
    units === "in" ? [...ruled(rough, () => "up"), ...ruled(finished, (side) => finishedRounding(piece, side))] : [];
  return [piece, String(count), ...inMm, ...inInches, from, species, grain];
}

const formatMillimetres = (mm: number): string => formatNumber(mm, { decimals: 3, halves: "binary" });
