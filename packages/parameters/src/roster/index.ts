// Door: a class's roster → the values by which each plane differs from the base.
export { type CsvCell, type CsvTable, csvCells } from "./csv-cells.ts";
export { isTableFile } from "./csv-columns.ts";
export { decodeRoster, decodeRosterBoards } from "./decode-roster.ts";
export { parseRoster, type RosterResult } from "./parse-roster.ts";
export {
  contradictions,
  type DesignText,
  type FileChange,
  planeFileText,
  rosterDesign,
} from "./plane-file.ts";
export type { RosterCell, RosterFile, RosterPlane, RosterRow } from "./roster.ts";
export { type RosterChange, setRosterValues } from "./roster-update.ts";
