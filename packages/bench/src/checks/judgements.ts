// All checks of the elevation, in one list; what they find, before any search for cures.
import type { Elevation } from "@lamplane/parameters/elevation";
import {
  checkBlockTops,
  checkChamfer,
  checkEnds,
  checkMouthOpens,
  checkShapes,
  checkThroat,
  checkTips,
} from "./blocks.ts";
import type { Finding } from "./finding.ts";
import { checkClearanceAngle, checkIronLength, checkIronPasses, checkSaws } from "./iron.ts";
import { checkJigs } from "./jigs.ts";
import { type Judgement, sortWorstFirst } from "./judgement.ts";
import { checkPinRoom, checkPinShape, checkPinWood, checkWedge } from "./pin.ts";
import { checkCores, checkTenons, checkWedgeThroughYear, checkYear, noteCup } from "./seasons.ts";
import { checkBillet, checkCheeks, checkPegs, checkRecess } from "./stock.ts";
import { checkFriction, checkLocking, checkPinStrength } from "./strength.ts";
import { checkMoisture, checkWoods } from "./woods.ts";

const CHECKS: readonly ((plane: Elevation) => Judgement[])[] = [
  checkShapes,
  checkTips,
  checkMouthOpens,
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
  checkLocking,
  checkFriction,
  checkPinStrength,
  checkCores,
  checkTenons,
  checkWedgeThroughYear,
  noteCup,
  checkYear,
  checkWoods,
  checkMoisture,
];

/** Every check's judgement, passed ones too, worst first, otherwise in the order of the work. */
export function judgeChecks(plane: Elevation): Judgement[] {
  const judged = CHECKS.flatMap((check) => check(plane));
  // A jig fits a plane that can be built; there is none for any other.
  const jigs = judged.some((d) => d.severity === "stop") ? [] : checkJigs(plane);
  return sortWorstFirst([...judged, ...jigs]);
}

type FindingJudgement = Judgement & Pick<Finding, "severity">;
export const isFinding = (judgement: Judgement): judgement is FindingJudgement => judgement.severity !== "passed";

/** Everything that is wrong, or may be. */
export const findingJudgements = (plane: Elevation): FindingJudgement[] => judgeChecks(plane).filter(isFinding);
