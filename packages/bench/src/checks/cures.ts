// The smallest change that ends a complaint and starts no new stop; found by trying, so that it holds.

import { rowAt, valueAt, withValue } from "@lamplane/parameters/design";
import type { Elevation } from "@lamplane/parameters/elevation";
import type { Design, NumberRow } from "@lamplane/parameters/table";
import { toMillimetres } from "@lamplane/parameters/units";
import { autoValue } from "../auto-values.ts";
import type { Cure } from "../finding.ts";
import { asBuiltPlane } from "../history/as-built.ts";
import { lockedParameters } from "../steps.ts";
import { crowdedChecks, harmedChecks, isAtRowsEnd } from "./crowding.ts";
import type { Judgement } from "./judgement.ts";
import { isRidOf, judgeChecks } from "./judgements.ts";
import type { Remedy } from "./remedy.ts";

/** Whether a design is rid of what was found. */
export type Resolves = (design: Design) => boolean;

/** Remedies that are still open: what is cut already cannot be changed. */
export const applicableRemedies = ({ design }: Elevation, remedies: readonly Remedy[]): Remedy[] => {
  const locked = lockedParameters(design);
  return remedies.filter(({ parameter }) => !locked.has(parameter));
};

/**
 * A finding's cure: the first of its remedies that ends it and brings no other check to its limit; where each does, the first
 * that ends it and makes nothing as grave worse, or new: cures of one list then never pull a parameter both ways, and who
 * follows them comes to an end. Two together for a stop that none ends alone.
 * @param before every check's judgement of the plane, passed ones too
 */
export function findCure(
  plane: Elevation,
  judgement: Judgement,
  before: readonly Judgement[],
): readonly Cure[] | undefined {
  const stops = new Set(before.filter((d) => d.severity === "stop").map((d) => d.code));
  const resolves: Resolves = (design) => isRidOf(asBuiltPlane(design), judgement.code, stops);
  const remedies = applicableRemedies(plane, judgement.remedies);
  if (remedies.length === 0) return undefined;
  let crowding: Cure | undefined;
  for (const remedy of remedies) {
    const cure = smallestCure(plane, remedy, resolves);
    if (!cure) continue;
    const after = judgeChecks(asBuiltPlane(withValue(plane.design, cure.parameter, cure.value)));
    if (!isAtRowsEnd(cure) && crowdedChecks(judgement.code, before, after).length === 0) return [cure];
    if (harmedChecks(judgement, before, after).length === 0) crowding ??= cure;
  }
  if (crowding) return [crowding];
  return judgement.severity === "stop" ? cheapestPair(plane, remedies, resolves) : undefined;
}

/** Doubling steps until one resolves the finding, then halving back to the smallest that does. */
export function smallestCure(plane: Elevation, remedy: Remedy, resolves: Resolves): Cure | undefined {
  if (remedy.target) return cureAtTarget(plane, remedy.parameter, remedy.target(plane), resolves);
  const way = remedyPath(plane, remedy);
  if (!way) return undefined;
  const { valueAfter, last } = way;
  const works = (steps: number) => resolves(withValue(plane.design, remedy.parameter, valueAfter(steps)));
  let [fails, succeeds] = [0, 1];
  while (succeeds <= last && !works(succeeds)) [fails, succeeds] = [succeeds, succeeds * 2];
  if (succeeds > last) {
    if (last <= fails || !works(last)) return undefined;
    succeeds = last;
  }
  while (succeeds - fails > 1) {
    const middle = Math.floor((succeeds + fails) / 2);
    if (works(middle)) succeeds = middle;
    else fails = middle;
  }
  return { parameter: remedy.parameter, value: valueAfter(succeeds) };
}

function cureAtTarget({ design }: Elevation, parameter: string, target: number, resolves: Resolves): Cure | undefined {
  const row = rowAt(parameter);
  const value = roundValue(target);
  const isAllowed = row.kind === "number" && value >= row.min && value <= row.max;
  return isAllowed && resolves(withValue(design, parameter, value)) ? { parameter, value } : undefined;
}

interface RemedyPath {
  /** Value after so many steps of the row. */
  readonly valueAfter: (steps: number) => number;
  /** Steps to the row's limit. */
  readonly last: number;
}

/** The way that a remedy goes, in steps of its row; undefined where the parameter is no number. */
export function remedyPath(plane: Elevation, { parameter, toward }: Remedy): RemedyPath | undefined {
  const row = rowAt(parameter);
  const from = currentValue(plane, parameter);
  if (row.kind !== "number" || from === undefined) return undefined;
  const sense = toward === "up" ? 1 : -1;
  const step = stepOf(plane.design, row);
  const first = sense > 0 ? Math.floor(from / step + 1e-9) : Math.ceil(from / step - 1e-9);
  return {
    valueAfter: (steps) => roundValue((first + sense * steps) * step),
    last: Math.floor(sense > 0 ? row.max / step - first + 1e-9 : first - row.min / step + 1e-9),
  };
}

/** A row's step; of a length in an inch design the rule's division, or a thousandth for what is finer than a rule shows. */
function stepOf({ units, shop }: Design, { step, quantity }: Pick<NumberRow, "step" | "quantity">): number {
  if (units === "mm" || quantity !== "length") return step;
  const division = toMillimetres(1 / Number(shop.smallestFraction.slice(2)), "in");
  return step < FINER_THAN_RULE ? toMillimetres(0.001, "in") : division;
}
/** Steps of rows under this are finer than a rule, mm. */
const FINER_THAN_RULE = 0.1;

/** Shares of the way to its limit at which the first of two parameters is tried: fine near by, coarse far off. */
const SHARES = [1 / 64, 1 / 32, 1 / 16, 1 / 8, 1 / 4, 1 / 2, 1];

interface Pair {
  readonly first: Remedy;
  readonly cures: readonly [Cure, Cure];
  readonly cost: number;
}

/** The two changes that resolve it together and go the least part of their ways; undefined where no two do. */
function cheapestPair(plane: Elevation, remedies: readonly Remedy[], resolves: Resolves): readonly Cure[] | undefined {
  let best: Pair | undefined;
  for (const first of remedies)
    for (const share of SHARES) {
      if (best && share >= best.cost) break;
      const way = remedyPath(plane, first);
      if (!way || way.last < 1) break;
      const value = way.valueAfter(Math.max(1, Math.round(way.last * share)));
      const moved = asBuiltPlane(withValue(plane.design, first.parameter, value));
      for (const second of remedies.filter((remedy) => remedy.parameter !== first.parameter)) {
        const cure = smallestCure(moved, second, resolves);
        const cost = cure ? share + shareOfRange(plane, second, cure) : Number.POSITIVE_INFINITY;
        if (cure && (!best || cost < best.cost))
          best = { first, cost, cures: [{ parameter: first.parameter, value }, cure] };
      }
    }
  return best && tightenPair(plane, best, resolves);
}

/** With the second change made, the first, which was tried by coarse shares, goes no further than it must. */
function tightenPair(plane: Elevation, { first, cures: [coarse, second] }: Pair, resolves: Resolves): readonly Cure[] {
  const beside = asBuiltPlane(withValue(plane.design, second.parameter, second.value));
  return [smallestCure(beside, first, resolves) ?? coarse, second];
}

/** How much of the way to its limit a cure goes. */
export function shareOfRange(plane: Elevation, remedy: Remedy, { value }: Cure): number {
  const way = remedyPath(plane, remedy);
  if (!way || typeof value !== "number") return 1;
  return Math.abs((value - way.valueAfter(0)) / (way.valueAfter(Math.max(1, way.last)) - way.valueAfter(0)));
}

const roundValue = (value: number): number => Math.round(value * 1e6) / 1e6;

/** What a parameter is, or what `auto` has made of it. */
function currentValue(plane: Elevation, path: string): number | undefined {
  const value = valueAt(plane.design, path);
  const number = value === "auto" ? autoValue(plane, path) : value;
  return typeof number === "number" ? number : undefined;
}
