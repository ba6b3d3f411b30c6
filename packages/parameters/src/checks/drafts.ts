// All checks of the elevation, in one list; what they find, before any search for cures.
import type { Elevation } from "../elevation/elevation.ts";
import { checkBlockTops, checkChamfer, checkEnds, checkShapes, checkThroat, checkTips } from "./blocks.ts";
import type { Draft } from "./draft.ts";
import { checkClearanceAngle, checkIronLength, checkIronPasses, checkSaws } from "./iron.ts";
import { checkPinRoom, checkPinShape, checkPinWood, checkWedge } from "./pin.ts";
import { checkBillet, checkCheeks, checkPegs, checkRecess } from "./stock.ts";

const CHECKS: readonly ((plane: Elevation) => Draft[])[] = [
  checkShapes,
  checkTips,
  checkChamfer,
  checkEnds,
  checkBlockTops,
  checkThroat,
  checkIronPasses,
  checkClearanceAngle,
  checkIronLength,
  checkSaws,
  checkPinWood,
  checkPinRoom,
  checkPinShape,
  checkWedge,
  checkCheeks,
  checkRecess,
  checkPegs,
  checkBillet,
];

const WORST_FIRST = { stop: 0, warning: 1, note: 2 } as const;

/** Everything found, worst first, otherwise in the order of the work. */
export const drafts = (plane: Elevation): Draft[] =>
  CHECKS.flatMap((check) => check(plane)).sort((a, b) => WORST_FIRST[a.severity] - WORST_FIRST[b.severity]);
