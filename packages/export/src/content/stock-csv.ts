// The stock list as a table for a spreadsheet: lengths in mm, as everywhere outside the maker's own sheets.
import type { StockList, StockRow } from "@lamplane/parameters/bench";
import { trimmed } from "@lamplane/parameters/units";
import { csvLine } from "../csv.ts";

const HEAD = [
  "piece",
  "count",
  "rough length mm",
  "rough width mm",
  "rough thickness mm",
  "finished length mm",
  "finished width mm",
  "finished thickness mm",
  "grain",
  "from",
  "species",
];

/** One line a piece, in the order in which they are made. */
export const stockCsv = ({ rows }: StockList): string => [HEAD, ...rows.map(cells)].map(csvLine).join("");

function cells({ piece, count, rough, finished, grain, from, species }: StockRow): string[] {
  const sizes = [rough, finished].flatMap(({ length, width, thickness }) => [length, width, thickness]);
  return [piece, String(count), ...sizes.map((mm) => trimmed(mm, 2)), grain, from, species];
}
