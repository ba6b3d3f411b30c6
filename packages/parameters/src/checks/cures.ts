// The smallest change of one parameter that ends a complaint and starts no new stop; found by trying, so that it holds.
import { rowAt, valueAt, withValue } from "../design/at.ts";
import { type Elevation, elevation } from "../elevation/elevation.ts";
import { type FigureKey, figure } from "../elevation/figures.ts";
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

/** The first of a finding's mends that cures it; undefined where none does within the parameter's limits. */
export function cureOf(plane: Elevation, draft: Draft, before: readonly Draft[]): readonly Cure[] | undefined {
  const stops = new Set(before.filter((d) => d.severity === "stop").map((d) => d.code));
  const heals = (parameter: string, value: number) => {
    const after = drafts(elevation(withValue(plane.design, parameter, value)));
    return after.every((d) => d.code !== draft.code && (d.severity !== "stop" || stops.has(d.code)));
  };
  for (const mend of draft.mends) {
    const value = smallestStep(plane, mend, (v) => heals(mend.parameter, v));
    if (value !== undefined) return [{ parameter: mend.parameter, value }];
  }
  return undefined;
}

/** Doubling steps until one heals, then halving back to the smallest that does. */
function smallestStep(
  plane: Elevation,
  { parameter, toward }: Mend,
  heals: (value: number) => boolean,
): number | undefined {
  const row = rowAt(parameter);
  const from = valueNow(plane, parameter);
  if (row.kind !== "number" || from === undefined) return undefined;
  const sense = toward === "up" ? 1 : -1;
  const first = sense > 0 ? Math.floor(from / row.step + 1e-9) : Math.ceil(from / row.step - 1e-9);
  const valueAfter = (steps: number) => rounded((first + sense * steps) * row.step);
  const last = Math.floor(sense > 0 ? row.max / row.step - first + 1e-9 : first - row.min / row.step + 1e-9);
  let [fails, works] = [0, 1];
  while (works <= last && !heals(valueAfter(works))) [fails, works] = [works, works * 2];
  if (works > last) return undefined;
  while (works - fails > 1) {
    const middle = Math.floor((works + fails) / 2);
    if (heals(valueAfter(middle))) works = middle;
    else fails = middle;
  }
  return valueAfter(works);
}

const rounded = (value: number): number => Math.round(value * 1e6) / 1e6;

/** What a parameter is, or what `auto` has made of it. */
function valueNow(plane: Elevation, path: string): number | undefined {
  const value = valueAt(plane.design, path);
  if (typeof value === "number") return value;
  const [key, end] = [FIGURE_OF[path], TOP_OF[path]];
  return key ? figure(plane, key) : end && plane.top[end];
}
