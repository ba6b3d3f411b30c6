// A figure over a swept parameter: a line for each value of a second one, broken where a check would stop the plane.

import type { Point } from "@lamplane/geometry";
import type { Units } from "@lamplane/parameters/units";
import type { Picture } from "../picture/picture.ts";
import { SHARES } from "../words/plots.ts";
import { type Axis, lengthAxis, numberAxis } from "./axis.ts";
import { type PlotStretch, plotPicture, type Series } from "./plot.ts";
import { PLOT_SIZE } from "./plot-frame.ts";
import type { MarkedPoint } from "./plot-words.ts";

/** One design of a sweep. */
export interface SweptPoint {
  readonly x: number;
  /** Undefined where the design has no such figure. */
  readonly y: number | undefined;
  /** Codes of the checks that stop it. */
  readonly stops: readonly string[];
}

/** The designs that share all values but x. */
export interface SweptLine {
  /** Told at the line's end; where it is empty, the figure is. */
  readonly label: string;
  readonly points: readonly SweptPoint[];
}

export interface SweptFigure {
  /** Kebab-case. */
  readonly name: string;
  readonly title: string;
  readonly x: { readonly label: string; readonly unit: string };
  readonly y: { readonly label: string; readonly unit: string };
  readonly lines: readonly SweptLine[];
  readonly units: Units;
}

/** Columns of points that a plot has room for: closer than this they are no longer told apart. */
const COLUMNS = 240;
/** Height that each line's label needs, mm, and what a plot has besides its labels. */
const LABEL_ROOM = 5;
const BESIDES = 40;
/** Share of the range kept clear over and under the lines, so that none runs along the frame. */
const CLEAR = 0.04;
/** The same as a share of the figure itself: what is steady but for the arithmetic is not blown up into a mountain range. */
const LEAST_CLEAR = 0.001;
/** Notes on what stops a plane; more would hide the lines. */
const MOST_NOTES = 4;

/** The picture of a figure over a swept parameter; undefined where fewer than two designs have the figure. */
export function sweepPlot({ name, title, x, y, lines, units }: SweptFigure): Picture | undefined {
  const drawn = mergeEqualLines(lines.map(({ label, points }) => ({ label, points: thinPoints(knownPoints(points)) })));
  if (drawn.length === 0) return undefined;
  const all = drawn.flatMap(({ points }) => points);
  const [low, high] = [minimum(all.map((p) => p.y)), -minimum(all.map((p) => -p.y))];
  const clear = Math.max(CLEAR * (high - low), LEAST_CLEAR * Math.max(Math.abs(low), Math.abs(high)));
  return plotPicture({
    name,
    title,
    x: makeAxis(x, minimum(all.map((p) => p.x)), -minimum(all.map((p) => -p.x)), true, units),
    y: makeAxis(y, low - clear, high + clear, false, units),
    series: drawn.map(({ label, points }) => seriesOf(label || y.label, points, drawn.length > 1)),
    points: failureNotes(drawn.map(({ points }) => points)),
    height: Math.max(PLOT_SIZE.height, BESIDES + LABEL_ROOM * drawn.length),
  });
}

interface KnownPoint extends Point {
  readonly stops: readonly string[];
}

const knownPoints = (points: readonly SweptPoint[]): KnownPoint[] =>
  points.flatMap(({ x, y, stops }) => (y === undefined ? [] : [{ x, y, stops }])).sort((a, b) => a.x - b.x);

interface KnownLine {
  readonly label: string;
  readonly points: readonly KnownPoint[];
}

/** Lines of two points or more; neighbours that run the same are one, which is labelled with the first and the last of them. */
function mergeEqualLines(lines: readonly KnownLine[]): KnownLine[] {
  const found: { labels: string[]; points: readonly KnownPoint[]; words: string }[] = [];
  for (const { label, points } of lines) {
    if (points.length < 2) continue;
    const words = JSON.stringify(points);
    const before = found.at(-1);
    if (before?.words === words) before.labels.push(label);
    else found.push({ labels: [label], points, words });
  }
  return found.map(({ labels, points }) => ({ label: joinLabels(labels), points }));
}

const joinLabels = (labels: readonly string[]): string =>
  labels.length <= 2 ? labels.join(" and ") : `${labels[0]} to ${labels.at(-1)}`;

const minimum = (values: readonly number[]): number => values.reduce((a, b) => Math.min(a, b));

function makeAxis(variable: SweptFigure["x"], from: number, to: number, tight: boolean, units: Units): Axis {
  const need = { label: variable.label, least: from, greatest: to, tight };
  return variable.unit === "mm" ? lengthAxis(need, units) : numberAxis(need, variable.unit);
}

const isFailing = ({ stops }: KnownPoint): boolean => stops.length > 0;

/** So many points as are told apart, and all those where what stops the plane changes. */
function thinPoints(points: readonly KnownPoint[]): KnownPoint[] {
  const every = Math.ceil(points.length / COLUMNS);
  const changes = (i: number, j: number) => points[i]?.stops.join() !== points[j]?.stops.join();
  return points.filter((_, i) => i % every === 0 || i === points.length - 1 || changes(i, i - 1) || changes(i, i + 1));
}

function seriesOf(label: string, points: readonly KnownPoint[], among: boolean): Series {
  const whole = among ? "outline" : "strong";
  return {
    label,
    line: whole,
    points,
    drawn: stretches(points).map((each) => ({ ...each, line: each.fails ? "hidden" : whole })),
  };
}

/** A line's stretches; one that a failing design ends or begins counts as failing. */
function stretches(points: readonly KnownPoint[]): (Pick<PlotStretch, "points"> & { fails: boolean })[] {
  const found: { fails: boolean; points: KnownPoint[] }[] = [];
  for (let i = 1; i < points.length; i++) {
    const [from, to] = [points[i - 1]!, points[i]!];
    const failing = isFailing(from) || isFailing(to);
    const last = found.at(-1);
    if (last?.fails === failing) last.points.push(to);
    else found.push({ fails: failing, points: [from, to] });
  }
  return found;
}

/** For each set of checks that stop planes, words at the middle of the longest stretch that they stop. */
function failureNotes(lines: readonly (readonly KnownPoint[])[]): MarkedPoint[] {
  const longest = new Map<string, KnownPoint[]>();
  for (const points of lines)
    for (const run of splitRuns(points)) {
      const key = run[0]!.stops.join(", ");
      if (key !== "" && runLength(run) >= runLength(longest.get(key) ?? [])) longest.set(key, run);
    }
  return [...longest]
    .sort(([, a], [, b]) => runLength(b) - runLength(a))
    .slice(0, MOST_NOTES)
    .map(([codes, run]) => ({ at: run[Math.floor(run.length / 2)]!, words: SHARES.stopped({ codes }) }));
}

const runLength = (run: readonly KnownPoint[]): number => (run.length === 0 ? -1 : run.at(-1)!.x - run[0]!.x);

/** Neighbours that the same checks stop. */
function splitRuns(points: readonly KnownPoint[]): KnownPoint[][] {
  const found: KnownPoint[][] = [];
  for (const point of points) {
    const last = found.at(-1);
    if (last && last[0]!.stops.join() === point.stops.join()) last.push(point);
    else found.push([point]);
  }
  return found;
}
