// The subjects of the outside checks, in the order of the document.
import type { Subject } from "./check.ts";
import { DRILL_CHECKS } from "./drills.ts";
import { FORMAT_CHECKS } from "./formats.ts";
import { GEOMETRY_CHECKS } from "./geometry.ts";
import { MECHANICS_CHECKS } from "./mechanics.ts";
import { SHEET_CHECKS } from "./sheets.ts";
import { SOLID_CHECKS } from "./solids.ts";
import { STATISTICS_CHECKS } from "./statistics.ts";
import { TRADE_CHECKS } from "./trade.ts";
import { WOOD_CHECKS } from "./wood.ts";

export const SUBJECTS: readonly Subject[] = [
  { name: "The trade's rules, and a plane worked by hand", checks: TRADE_CHECKS },
  { name: "Drills", checks: DRILL_CHECKS },
  { name: "Outlines", checks: GEOMETRY_CHECKS },
  { name: "Solids", checks: SOLID_CHECKS },
  { name: "Mechanics", checks: MECHANICS_CHECKS },
  { name: "Wood", checks: WOOD_CHECKS },
  { name: "Statistics", checks: STATISTICS_CHECKS },
  { name: "Units, papers and sheets", checks: SHEET_CHECKS },
  { name: "Files", checks: FORMAT_CHECKS },
];
