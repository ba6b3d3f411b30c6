// The subjects of the outside checks, in the order of the document.
import type { Subject } from "./check.ts";
import { FORMATS } from "./formats.ts";
import { GEOMETRY } from "./geometry.ts";
import { MECHANICS } from "./mechanics.ts";
import { SHEETS } from "./sheets.ts";
import { SOLIDS } from "./solids.ts";
import { STATISTICS } from "./statistics.ts";
import { TRADE } from "./trade.ts";
import { WOOD } from "./wood.ts";

export const SUBJECTS: readonly Subject[] = [
  { name: "The trade's rules, and a plane worked by hand", checks: TRADE },
  { name: "Outlines", checks: GEOMETRY },
  { name: "Solids", checks: SOLIDS },
  { name: "Mechanics", checks: MECHANICS },
  { name: "Wood", checks: WOOD },
  { name: "Statistics", checks: STATISTICS },
  { name: "Units, papers and sheets", checks: SHEETS },
  { name: "Files", checks: FORMATS },
];
