// The stock list as a table for spreadsheets: lengths in mm, numbers with a point.
import type { StockPlan } from "@lamplane/parameters/bench";
import { csvLine } from "../csv.ts";

const SIDES = ["length", "width", "thickness"] as const;
const HEAD = [
  "piece",
  "count",
  ...SIDES.map((side) => `rough ${side} mm`),
  ...SIDES.map((side) => `finished ${side} mm`),
  "from",
  "wood",
  "grain",
];

/** A line for each kind of piece, length along the grain. */
export function stockCsv({ list }: StockPlan): string {
  const rows = list.rows.map(({ piece, count, rough, finished, from, species, grain }) => [
    piece,
    String(count),
    ...SIDES.map((side) => rounded(rough[side])),
    ...SIDES.map((side) => rounded(finished[side])),
    from,
    species,
    grain,
  ]);
  return [HEAD, ...rows].map(csvLine).join("");
}

const rounded = (mm: number): string => String(Number(mm.toFixed(3)));
