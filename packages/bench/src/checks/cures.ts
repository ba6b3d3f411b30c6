// The smallest change that ends a complaint and starts no new stop; found by trying, so that it holds.

import { rowAt, valueAt, withValue } from "@lamplane/parameters/design";
import type { Elevation } from "@lamplane/parameters/elevation";
import { type FigureKey, figure } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import { planeOf } from "../history/as-built.ts";
import { settledParameters } from "../steps.ts";
import type { Draft, Mend } from "./draft.ts";
import { drafts } from "./drafts.ts";
import type { Cure } from "./finding.ts";

/** Where to read what an `auto` parameter has come out as. */
const FIGURE_OF: Readonly<Record<string, FigureKey>> = {
  "mouth.fromToe": "mouthX",
  "ramp.angle": "rampAngle",
  "ramp.radius": "rampRadius",
  "pin.height": "pinY",
  "pin.tenonLength": "tenonLength",
  "wedge.length": "wedgeLength",
  "recess.width": "recessWidth",
  "recess.depth": "recessDepth",
};
const TOP_OF: Readonly<Record<string, "crownX" | "toeHeight" | "heelHeight">> = {
  "body.crown": "crownX",
  "body.toeHeight": "toeHeight",
  "body.heelHeight": "heelHeight",
};

/** Whether a design is healed. */
export type Heals = (design: Design) => boolean;

/** Mends that the bench has not overtaken: what is cut already is no cure. */
export const openMends = ({ design }: Elevation, mends: readonly Mend[]): Mend[] => {
  const settled = settledParameters(design);
  return mends.filter(({ parameter }) => !settled.has(parameter));
};

/** A finding's cure: the first of its mends that ends it; two together for a stop that none ends alone. */
export function cureOf(plane: Elevation, draft: Draft, before: readonly Draft[]): readonly Cure[] | undefined {
  const stops = new Set(before.filter((d) => d.severity === "stop").map((d) => d.code));
  const heals: Heals = (design) =>
    drafts(planeOf(design)).every((d) => d.code !== draft.code && (d.severity !== "stop" || stops.has(d.code)));
  const mends = openMends(plane, draft.mends);
  for (const mend of mends) {
    const cure = smallestStep(plane, mend, heals);
    if (cure) return [cure];
  }
  return draft.severity === "stop" ? cheapestPair(plane, mends, heals) : undefined;
}

/** Doubling steps until one heals, then halving back to the smallest that does. */
export function smallestStep(plane: Elevation, mend: Mend, heals: Heals): Cure | undefined {
  const way = wayOf(plane, mend);
  if (!way) return undefined;
  const { valueAfter, last } = way;
  const works = (steps: number) => heals(withValue(plane.design, mend.parameter, valueAfter(steps)));
  let [fails, heal] = [0, 1];
  while (heal <= last && !works(heal)) [fails, heal] = [heal, heal * 2];
  if (heal > last) {
    if (last <= fails || !works(last)) return undefined;
    heal = last;
  }
  while (heal - fails > 1) {
    const middle = Math.floor((heal + fails) / 2);
    if (works(middle)) heal = middle;
    else fails = middle;
  }
  return { parameter: mend.parameter, value: valueAfter(heal) };
}

interface Way {
  /** Value after so many steps of the row. */
  readonly valueAfter: (steps: number) => number;
  /** Steps to the row's limit. */
  readonly last: number;
}

/** The way that a mend goes, in steps of its row; undefined where the parameter is no number. */
export function wayOf(plane: Elevation, { parameter, toward }: Mend): Way | undefined {
  const row = rowAt(parameter);
  const from = valueNow(plane, parameter);
  if (row.kind !== "number" || from === undefined) return undefined;
  const sense = toward === "up" ? 1 : -1;
  const first = sense > 0 ? Math.floor(from / row.step + 1e-9) : Math.ceil(from / row.step - 1e-9);
  return {
    valueAfter: (steps) => rounded((first + sense * steps) * row.step),
    last: Math.floor(sense > 0 ? row.max / row.step - first + 1e-9 : first - row.min / row.step + 1e-9),
  };
}

/** Shares of the way to its limit at which the first of two parameters is tried: fine near by, coarse far off. */
const SHARES = [1 / 64, 1 / 32, 1 / 16, 1 / 8, 1 / 4, 1 / 2, 1];

interface Pair {
  readonly first: Mend;
  readonly cures: readonly [Cure, Cure];
  readonly cost: number;
}

/** The two changes that heal together and go the least part of their ways; undefined where no two do. */
function cheapestPair(plane: Elevation, mends: readonly Mend[], heals: Heals): readonly Cure[] | undefined {
  let best: Pair | undefined;
  for (const first of mends)
    for (const share of SHARES) {
      if (best && share >= best.cost) break;
      const way = wayOf(plane, first);
      if (!way || way.last < 1) break;
      const value = way.valueAfter(Math.max(1, Math.round(way.last * share)));
      const moved = planeOf(withValue(plane.design, first.parameter, value));
      for (const second of mends.filter((mend) => mend.parameter !== first.parameter)) {
        const cure = smallestStep(moved, second, heals);
        const cost = cure ? share + shareOf(plane, second, cure) : Number.POSITIVE_INFINITY;
        if (cure && (!best || cost < best.cost))
          best = { first, cost, cures: [{ parameter: first.parameter, value }, cure] };
      }
    }
  return best && tightened(plane, best, heals);
}

/** With the second change made, the first, which was tried by coarse shares, goes no further than it must. */
function tightened(plane: Elevation, { first, cures: [coarse, second] }: Pair, heals: Heals): readonly Cure[] {
  const beside = planeOf(withValue(plane.design, second.parameter, second.value));
  return [smallestStep(beside, first, heals) ?? coarse, second];
}

/** How much of the way to its limit a cure goes. */
export function shareOf(plane: Elevation, mend: Mend, { value }: Cure): number {
  const way = wayOf(plane, mend);
  if (!way || typeof value !== "number") return 1;
  return Math.abs((value - way.valueAfter(0)) / (way.valueAfter(Math.max(1, way.last)) - way.valueAfter(0)));
}

const rounded = (value: number): number => Math.round(value * 1e6) / 1e6;

/** What a parameter is, or what `auto` has made of it. */
function valueNow(plane: Elevation, path: string): number | undefined {
  const value = valueAt(plane.design, path);
  if (typeof value === "number") return value;
  const [key, end] = [FIGURE_OF[path], TOP_OF[path]];
  return key ? figure(plane, key) : end && plane.top[end];
}
