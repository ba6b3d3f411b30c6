// The stock list as a table for spreadsheets: the billet to buy, then its pieces; lengths in decimals of the design's unit, which the head names.
import type { StockPlan } from "@lamplane/bench";
import type { Design } from "@lamplane/parameters/table";
import { formatDecimalLength, type Units } from "@lamplane/parameters/units";
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

/** A line for the billet, or for the board of a layered core, and one for each kind of piece, length along the grain. */
export function stockCsv({ list, billet, layers }: StockPlan, design: Pick<Design, "units" | "wood">): string {
  const { length, width, height } = billet.needed;
  const whole: StockLine = {
    piece: layers ? "board" : "billet",
    count: 1,
    rough: layers
      ? { length: layers.running, width: layers.width, thickness: layers.board }
      : { length, width, thickness: height },
    from: "to buy",
    species: design.wood.body,
    grain: "along its length",
  };
  return [headCells(design), ...[whole, ...list.rows].map((row) => lineCells(row, design))].map(csvLine).join("");
}

const headCells = ({ units }: Pick<Design, "units">): string[] => [
  "piece",
  "count",
  ...sizeNames(units),
  "from",
  "wood",
  "grain",
];

const sizeNames = (unit: string): string[] =>
  ["rough", "finished"].flatMap((state) => SIDES.map((side) => `${state} ${side} ${unit}`));

function lineCells(row: StockLine, { units }: Pick<Design, "units">): string[] {
  const { piece, count, rough, finished, from, species, grain } = row;
  const sizes = [rough, finished].flatMap((size) => SIDES.map((side) => (size ? decimalText(size[side], units) : "")));
  return [piece, String(count), ...sizes, from, species, grain];
}

/** Decimals that a spreadsheet reckons with: it would take 3/8 for a date. */
const decimalText = (mm: number, units: Units): string =>
  formatDecimalLength(mm, { units, decimals: { mm: 3, in: 4 }, halves: "binary", bare: true });
