// All checks of a plane, in one list; what they find, before any search for cures.
import { type Elevation, memoizeByPlane } from "@lamplane/parameters/elevation";
import type { Finding } from "../finding.ts";
import { BLOCK_CHECKS } from "./blocks.ts";
import { IRON_CHECKS } from "./iron.ts";
import { IRON_TAPER_CHECKS } from "./iron-taper.ts";
import { GUIDE_CHECK, judgeJigs } from "./jigs.ts";
import { type CheckRow, type Judgement, judgeRows, sortWorstFirst } from "./judgement.ts";
import { LAYER_CHECKS, noteLayerRings } from "./layers.ts";
import { PIN_CHECKS } from "./pin.ts";
import { RECESS_CHECKS } from "./recess.ts";
import { noteCup, SEASON_CHECKS } from "./seasons.ts";
import { SKEW_CHECKS } from "./skew.ts";
import { CHEEK_CHECK, STOCK_CHECKS } from "./stock.ts";
import { STRENGTH_CHECKS } from "./strength.ts";
import { WEDGE_CHECKS } from "./wedge.ts";
import { noteMoisture, noteWoods } from "./woods.ts";

/** In the order of the work. */
export const CHECKS: readonly CheckRow[] = [
  ...BLOCK_CHECKS,
  ...IRON_CHECKS,
  ...SKEW_CHECKS,
  ...IRON_TAPER_CHECKS,
  ...PIN_CHECKS,
  ...WEDGE_CHECKS,
  CHEEK_CHECK,
  ...RECESS_CHECKS,
  ...LAYER_CHECKS,
  ...STOCK_CHECKS,
  ...STRENGTH_CHECKS,
  ...SEASON_CHECKS,
  GUIDE_CHECK,
];

/** What is judged of the plane itself, in the order of the work. */
const judgeBody = memoizeByPlane((plane): readonly Judgement[] => [
  ...judgeRows(plane, CHECKS),
  ...noteCup(plane),
  ...noteLayerRings(plane),
  ...noteWoods(plane),
  ...noteMoisture(plane),
]);

/** Every check's judgement, passed ones too, worst first, otherwise in the order of the work. */
export const judgeChecks = memoizeByPlane((plane): readonly Judgement[] => {
  const judged = judgeBody(plane);
  // A jig fits a plane that can be built; there is none for any other.
  const jigs = judged.some(isStop) ? [] : judgeJigs(plane);
  return sortWorstFirst([...judged, ...jigs]);
});

const isStop = ({ severity }: Judgement): boolean => severity === "stop";

/** What stops a plane, in the order of the work; no jig ever does. */
export const stopJudgements = (plane: Elevation): Judgement[] => judgeBody(plane).filter(isStop);

/** Whether a plane is rid of a finding of the plane itself, and nothing stops it but what may. */
export function isRidOf(plane: Elevation, code: string, mayStop: ReadonlySet<string>): boolean {
  const rows = CHECKS.filter((row) => row.code === code);
  if (judgeRows(plane, rows).some(isFinding)) return false; // one code's rows are judged sooner than all
  return judgeBody(plane)
    .filter(isFinding)
    .every((d) => d.code !== code && (!isStop(d) || mayStop.has(d.code)));
}

type FindingJudgement = Judgement & Pick<Finding, "severity">;
export const isFinding = (judgement: Judgement): judgement is FindingJudgement => judgement.severity !== "passed";

/** Everything that is wrong, or may be. */
export const findingJudgements = (plane: Elevation): FindingJudgement[] => judgeChecks(plane).filter(isFinding);
