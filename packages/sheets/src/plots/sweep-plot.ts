// A figure over a swept parameter: a line for each value of a second one, broken where a check would stop the plane.
import type { Point } from "@lamplane/geometry";
import type { Units } from "@lamplane/parameters/units";
import type { Picture } from "../picture/picture.ts";
import { type Axis, lengthAxis, numberAxis } from "./axis.ts";
import { type MarkedPoint, PLOT_SIZE, plotPicture, type Series, type Stretch } from "./plot.ts";

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
  const drawn = distinct(lines.map(({ label, points }) => ({ label, points: thinned(known(points)) })));
  if (drawn.length === 0) return undefined;
  const all = drawn.flatMap(({ points }) => points);
  const [low, high] = [least(all.map((p) => p.y)), -least(all.map((p) => -p.y))];
  const clear = Math.max(CLEAR * (high - low), LEAST_CLEAR * Math.max(Math.abs(low), Math.abs(high)));
  return plotPicture({
    name,
    title,
    x: axisOf(x, least(all.map((p) => p.x)), -least(all.map((p) => -p.x)), true, units),
    y: axisOf(y, low - clear, high + clear, false, units),
    series: drawn.map(({ label, points }) => seriesOf(label || y.label, points, drawn.length > 1)),
    points: notes(drawn.map(({ points }) => points)),
    height: Math.max(PLOT_SIZE.height, BESIDES + LABEL_ROOM * drawn.length),
  });
}

interface Known extends Point {
  readonly stops: readonly string[];
}

const known = (points: readonly SweptPoint[]): Known[] =>
  points.flatMap(({ x, y, stops }) => (y === undefined ? [] : [{ x, y, stops }])).sort((a, b) => a.x - b.x);

interface KnownLine {
  readonly label: string;
  readonly points: readonly Known[];
}

/** Lines of two points or more; neighbours that run the same are one, which is labelled with the first and the last of them. */
function distinct(lines: readonly KnownLine[]): KnownLine[] {
  const found: { labels: string[]; points: readonly Known[]; words: string }[] = [];
  for (const { label, points } of lines) {
    if (points.length < 2) continue;
    const words = JSON.stringify(points);
    const before = found.at(-1);
    if (before?.words === words) before.labels.push(label);
    else found.push({ labels: [label], points, words });
  }
  return found.map(({ labels, points }) => ({ label: inOne(labels), points }));
}

const inOne = (labels: readonly string[]): string =>
  labels.length <= 2 ? labels.join(" and ") : `${labels[0]} to ${labels.at(-1)}`;

const least = (values: readonly number[]): number => values.reduce((a, b) => Math.min(a, b));

function axisOf(told: SweptFigure["x"], from: number, to: number, tight: boolean, units: Units): Axis {
  const need = { label: told.label, least: from, greatest: to, tight };
  return told.unit === "mm" ? lengthAxis(need, units) : numberAxis(need, told.unit);
}

const fails = ({ stops }: Known): boolean => stops.length > 0;

/** So many points as are told apart, and all those where what stops the plane changes. */
function thinned(points: readonly Known[]): Known[] {
  const every = Math.ceil(points.length / COLUMNS);
  const changes = (i: number, j: number) => points[i]?.stops.join() !== points[j]?.stops.join();
  return points.filter((_, i) => i % every === 0 || i === points.length - 1 || changes(i, i - 1) || changes(i, i + 1));
}

function seriesOf(label: string, points: readonly Known[], among: boolean): Series {
  const whole = among ? "outline" : "strong";
  return {
    label,
    line: whole,
    points,
    drawn: stretches(points).map((each) => ({ ...each, line: each.fails ? "hidden" : whole })),
  };
}

/** A line's stretches; one that a failing design ends or begins counts as failing. */
function stretches(points: readonly Known[]): (Pick<Stretch, "points"> & { fails: boolean })[] {
  const found: { fails: boolean; points: Known[] }[] = [];
  for (let i = 1; i < points.length; i++) {
    const [from, to] = [points[i - 1]!, points[i]!];
    const failing = fails(from) || fails(to);
    const last = found.at(-1);
    if (last?.fails === failing) last.points.push(to);
    else found.push({ fails: failing, points: [from, to] });
  }
  return found;
}

/** For each set of checks that stop planes, words at the middle of the longest stretch that they stop. */
function notes(lines: readonly (readonly Known[])[]): MarkedPoint[] {
  const longest = new Map<string, Known[]>();
  for (const points of lines)
    for (const run of runs(points)) {
      const key = run[0]!.stops.join(", ");
      if (key !== "" && length(run) >= length(longest.get(key) ?? [])) longest.set(key, run);
    }
  return [...longest]
    .sort(([, a], [, b]) => length(b) - length(a))
    .slice(0, MOST_NOTES)
    .map(([codes, run]) => ({ at: run[Math.floor(run.length / 2)]!, words: `stopped by ${codes}` }));
}

const length = (run: readonly Known[]): number => (run.length === 0 ? -1 : run.at(-1)!.x - run[0]!.x);

/** Neighbours that the same checks stop. */
function runs(points: readonly Known[]): Known[][] {
  const found: Known[][] = [];
  for (const point of points) {
    const last = found.at(-1);
    if (last && last[0]!.stops.join() === point.stops.join()) last.push(point);
    else found.push([point]);
  }
  return found;
}
