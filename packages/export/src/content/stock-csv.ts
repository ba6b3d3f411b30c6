// The stock list as a table for spreadsheets: lengths in mm, numbers with a point. @see RFC 4180 for commas, quotes and line ends
import type { StockPlan } from "@lamplane/parameters/bench";

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
  return [HEAD, ...rows].map((row) => `${row.map(cell).join(",")}\r\n`).join("");
}

const rounded = (mm: number): string => String(Number(mm.toFixed(3)));

/** A cell that begins like a formula is told as text: a spreadsheet would run it. */
const cell = (text: string): string => {
  const plain = /^[=+@\t\r-]/.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(plain) ? `"${plain.replaceAll('"', '""')}"` : plain;
};
