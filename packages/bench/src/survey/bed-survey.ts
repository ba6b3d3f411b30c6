// The verdict on a bed. It passes only where the readings rule a hump out, and fails only where they show one.
import { BENCH_TOLERANCE, EPSILON } from "@lamplane/geometry";
import { TABLE } from "@lamplane/parameters/table";
import { MISSING_CURVATURE } from "../words/survey.ts";
import { type BedCurvature, bedCurvature, type Sagitta } from "./curvature.ts";
import type { Direction } from "./direction.ts";
import type { Fit } from "./fit.ts";
import { type PrincipalDirection, principalDirections } from "./principal.ts";
import type { Bed, BedPoint, SurveyReadings } from "./readings.ts";
import { type WorkMap, workMap } from "./work-map.ts";

/**
 * `flat`: no hump, no hollow to speak of. `hollow`: no hump, a hollow beyond the readings' error. `humped`: the iron rocks.
 * `wound`: in wind, humped on one diagonal and hollow on the other. `undecided`: the readings leave room for a hump that matters,
 * or for a hollow both within its limit and over it.
 */
export type BedVerdict = "flat" | "hollow" | "humped" | "wound" | "undecided";

/** The bed's shape along one line through its centre, edge to edge; mm. */
export interface SurveyLine extends Sagitta {
  /** `along`, `across`, `diagonal` or, for any other, `oblique`. */
  readonly name: "along" | "across" | "diagonal" | "oblique";
  readonly from: BedPoint;
  readonly to: BedPoint;
}

export interface SurveyLimits {
  /** Greatest hollow that passes, mm over the bed's extent. @see common practice, no published source: slightly hollow passes */
  readonly hollow?: number;
  /** Smallest hump that the readings must be able to rule out, mm. */
  readonly hump?: number;
  /** How far off a gap may be judged, two standard deviations, mm; the maker's `hand.feel`. */
  readonly feel?: number;
}

export interface BedSurvey {
  readonly bed: Bed;
  readonly verdict: BedVerdict;
  /** Whether an iron can be bedded on it as it is. */
  readonly passes: boolean;
  readonly limits: Required<SurveyLimits>;
  /** Curvature that no reading determines, and what to read for it; empty when all is determined. */
  readonly missing: readonly string[];
  /** Along, across and both diagonals, those that the readings tell. */
  readonly lines: readonly SurveyLine[];
  /** Of all lines through the centre the one with the deepest hump, or the least hollow. */
  readonly worst: SurveyLine | undefined;
  /** The same for the greatest hollow. */
  readonly hollowest: SurveyLine | undefined;
  /** Absent unless the whole curvature is determined. */
  readonly principal: readonly [PrincipalDirection, PrincipalDirection] | undefined;
  /** Depth of the deepest hump anywhere that the readings do not rule out, mm; infinite where something is missing. */
  readonly possibleHump: number;
  /** The same for the deepest hollow; a bed passes by this. */
  readonly possibleHollow: number;
  readonly fit: Fit;
  /** What to take off a bed that fails, or whose fitted hollow is over its limit. Absent otherwise. */
  readonly work: WorkMap | undefined;
}

/** mm: what one fine stroke takes off; a smaller hump cannot be worked on by itself. Common practice, no published source. */
export const HUMP_THAT_MATTERS = 0.05;

const FEEL: number = TABLE.hand.feel.default!;
const STEPS = 60; // directions along each of two edges: neighbours differ by less than 1/60 of the largest sagitta's share

/**
 * Judges a bed by its readings. A hump beyond the readings' own error fails, whatever its size; a hollow passes up to its limit.
 * - shown: the 95 % range for all directions at once (`likelyAnywhere`) lies wholly on one side of 0;
 * - ruled out: neither that range nor the certain one reaches a hump of `limits.hump`;
 * - readings that one smooth surface does not explain never pass: there may be a high spot between the stations;
 * - hollow: passes where the same ranges lie wholly within its limit, fails where they lie wholly over it.
 * @see common practice, no published source: flat or slightly hollow passes, any hump fails
 */
export function judgeBed(readings: SurveyReadings, bed: Bed, limits: SurveyLimits = {}): BedSurvey {
  const { hollow = BENCH_TOLERANCE, hump = HUMP_THAT_MATTERS, feel = FEEL } = limits;
  const curvature = bedCurvature(readings, bed, feel);
  const scan = directions().flatMap((direction) => surveyLine(curvature, bed, direction) ?? []);
  const missing = missingCurvature(curvature);
  const hollowest = scan.toSorted((a, b) => b.hollow - a.hollow)[0];
  const whole = missing.length === 0;
  const possibleHump = whole ? deepestPossible(scan) : Infinity;
  const possibleHollow = whole ? hollowestPossible(scan) : Infinity;
  const overHollow = scan.some(({ likelyAnywhere }) => likelyAnywhere.low > hollow);
  const ruledOut = possibleHump <= hump + EPSILON && isSmooth(curvature.fit);
  const within = possibleHollow <= hollow + EPSILON;
  const verdict = bedVerdict(scan, ruledOut && (within || overHollow));
  const passes = within && (verdict === "flat" || verdict === "hollow");
  const hollowDoubtful = ruledOut && hollowest !== undefined && hollowest.hollow > hollow;
  return {
    bed,
    verdict,
    passes,
    limits: { hollow, hump, feel },
    missing,
    lines: scan.filter(({ name }) => name !== "oblique"),
    worst: scan.toSorted((a, b) => a.hollow - b.hollow)[0],
    hollowest,
    principal: whole ? principalDirections(curvature, bed) : undefined,
    possibleHump,
    possibleHollow,
    fit: curvature.fit,
    work:
      whole && !passes && (verdict !== "undecided" || hollowDoubtful)
        ? workMap(curvature.coefficients, bed, hollow)
        : undefined,
  };
}

function bedVerdict(scan: readonly SurveyLine[], decided: boolean): BedVerdict {
  const humpShown = scan.some(isHumped);
  const diagonals = scan.filter(({ name }) => name === "diagonal");
  if (humpShown) return diagonals.some(isHumped) && diagonals.some(isHollow) ? "wound" : "humped";
  if (!decided) return "undecided";
  return scan.some(isHollow) ? "hollow" : "flat";
}

const isHumped = ({ likelyAnywhere }: SurveyLine) => likelyAnywhere.high < 0;
const isHollow = ({ likelyAnywhere }: SurveyLine) => likelyAnywhere.low > 0;

/** Whether one smooth surface explains the readings. */
const isSmooth = ({ errors, allWithin }: Fit) => errors === "normal" || allWithin;

const deepestPossible = (scan: readonly SurveyLine[]) =>
  Math.max(0, ...scan.map(({ likelyAnywhere, certain }) => -Math.min(likelyAnywhere.low, certain.low)));

const hollowestPossible = (scan: readonly SurveyLine[]) =>
  Math.max(0, ...scan.map(({ likelyAnywhere, certain }) => Math.max(likelyAnywhere.high, certain.high)));

/** Lines through the centre all round: the four with names first, then those between. */
function directions(): Direction[] {
  const between = Array.from({ length: STEPS - 1 }, (_, i) => (2 * (i + 1)) / STEPS - 1).filter((share) => share !== 0);
  const named: Direction[] = [
    [1, 0],
    [0, 1],
    [1, 1],
    [1, -1],
  ];
  return [
    ...named,
    ...between.flatMap((share): Direction[] => [
      [1, share],
      [share, 1],
    ]),
  ];
}

function surveyLine(curvature: BedCurvature, bed: Bed, direction: Direction): SurveyLine | undefined {
  const sagitta = curvature.sagitta(direction);
  if (!sagitta) return;
  const [along, across] = direction;
  const end = (side: number): BedPoint => ({
    along: bed.length * (0.5 + (side * along) / 2),
    across: bed.width * (0.5 + (side * across) / 2),
  });
  return { name: nameOf(direction), from: end(-1), to: end(1), ...sagitta };
}

function nameOf([along, across]: Direction): SurveyLine["name"] {
  if (across === 0) return "along";
  if (along === 0) return "across";
  return Math.abs(along) === Math.abs(across) ? "diagonal" : "oblique";
}

function missingCurvature(curvature: BedCurvature): string[] {
  const missing: string[] = [];
  if (!curvature.sagitta([1, 0])) missing.push(MISSING_CURVATURE.along);
  if (!curvature.sagitta([0, 1])) missing.push(MISSING_CURVATURE.across);
  if (!curvature.sagitta([1, 1]) || !curvature.sagitta([1, -1])) missing.push(MISSING_CURVATURE.wind);
  return missing;
}
