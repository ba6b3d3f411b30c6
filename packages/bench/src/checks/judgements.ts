// All checks of a plane, in one list; what they find, before any search for cures.
import { type Elevation, memoizeByPlane } from "@lamplane/parameters/elevation";
import type { Finding } from "../finding.ts";
import { BLOCK_CHECKS } from "./blocks.ts";
import { IRON_CHECKS } from "./iron.ts";
import { IRON_TAPER_CHECKS } from "./iron-taper.ts";
import { GUIDE_CHECK, judgeJigs, oversizeCodes } from "./jigs.ts";
import { type CheckRow, type Judgement, judgementOf, rowVerdicts, sortWorstFirst, type Verdict } from "./judgement.ts";
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

/** How the plane itself stands to every row, in the order of the work. */
const bodyVerdicts = memoizeByPlane((plane): readonly Verdict[] => rowVerdicts(plane, CHECKS));

/** What is judged of the plane itself, in the order of the work. */
const judgeBody = memoizeByPlane((plane): readonly Judgement[] => [
  ...bodyVerdicts(plane).map((verdict) => judgementOf(plane, verdict)),
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

const isStop = ({ severity }: Pick<Judgement, "severity">): boolean => severity === "stop";

/** What stops a plane, in the order of the work; no jig and no note ever does. */
export const stopJudgements = (plane: Elevation): Judgement[] =>
  bodyVerdicts(plane)
    .filter(isStop)
    .map((verdict) => judgementOf(plane, verdict));

/** Codes of what stops a plane and of what warns of it, each in the order of the work. */
export interface FindingCodes {
  readonly stops: readonly string[];
  readonly warnings: readonly string[];
}

/** The codes alone: of a note, or a jig that cannot be made, there is none. */
export function findingCodes(plane: Elevation): FindingCodes {
  const verdicts = bodyVerdicts(plane);
  const codes = (wanted: Verdict["severity"]) =>
    verdicts.filter(({ severity }) => severity === wanted).map(({ row }) => row.code);
  const stops = codes("stop");
  return { stops, warnings: stops.length > 0 ? codes("warning") : [...codes("warning"), ...oversizeCodes(plane)] };
}

/** Whether a plane is rid of a finding by a row, and nothing stops it but what may. */
export function isRidOf(plane: Elevation, code: string, mayStop: ReadonlySet<string>): boolean {
  const rows = CHECKS.filter((row) => row.code === code);
  if (rowVerdicts(plane, rows).some(isFinding)) return false; // one code's rows are judged sooner than all
  return bodyVerdicts(plane)
    .filter(isStop)
    .every(({ row }) => mayStop.has(row.code));
}

type FindingJudgement = Judgement & Pick<Finding, "severity">;
export const isFinding = <T extends Pick<Judgement, "severity">>(judged: T): judged is T & Pick<Finding, "severity"> =>
  judged.severity !== "passed";

/** Everything that is wrong, or may be. */
export const findingJudgements = (plane: Elevation): FindingJudgement[] => judgeChecks(plane).filter(isFinding);
