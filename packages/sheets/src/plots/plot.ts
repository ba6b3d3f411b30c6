// A plot as plain data → a picture: axes on round numbers, each line named at its end, no words over other words.
import { circleOutline, line, type Point, type Segment } from "@lamplane/geometry";
import {
  type LabelRequest,
  type PlacedLabel,
  placeLabels,
  sampleLine,
  spreadBlocks,
} from "../picture/label-placement.ts";
import type { LineKind, Picture, PictureMark, Shade } from "../picture/picture.ts";
import {
  type Box,
  blockHeight,
  blockMarks,
  LINE_HEIGHT,
  type PictureTextMark,
  textBox,
  wrapLines,
} from "../picture/text-layout.ts";
import { estimateTextWidth } from "../picture/text-metrics.ts";
import type { Axis } from "./axis.ts";

/** One line of a plot; two lines of a plot are told apart by their kind and by the label at their end. */
export interface Series {
  readonly label: string;
  readonly line: LineKind;
  /** In the axes' units, left to right; two or more. */
  readonly points: readonly Point[];
  /** How the line is drawn where it is not of one kind all along; stretches of `points`. */
  readonly drawn?: readonly Stretch[];
}

/** A stretch of a line that is drawn in a kind of its own. */
export interface Stretch {
  readonly line: LineKind;
  readonly points: readonly Point[];
}

/** A point with a dot and words beside it. */
export interface MarkedPoint {
  readonly at: Point;
  readonly words: string;
}

/** A shaded stretch of the x axis with words in it. */
export interface Band {
  readonly from: number;
  readonly to: number;
  readonly shade: Shade;
  readonly words: string;
}

export interface Plot {
  /** Kebab-case. */
  readonly name: string;
  readonly title: string;
  readonly x: Axis;
  readonly y: Axis;
  readonly series: readonly Series[];
  readonly points?: readonly MarkedPoint[];
  readonly bands?: readonly Band[];
  /** Of the picture, mm. */
  readonly width?: number;
  readonly height?: number;
}

/** Heights of letters, mm: read at arm's length on paper. */
export const PLOT_TEXT_SIZES = { title: 3.8, words: 2.9, ticks: 2.7 } as const;
export const PLOT_SIZE = { width: 160, height: 90 } as const;
export const PLOT_MARGIN = 4; // mm of white round everything
const GAP = 1.5; // mm between words and what they stand beside
const TICK = 1.2; // mm that a tick stands out
const DOT = 0.8; // mm, radius
const WIDEST_LABEL = 34 / 160; // of the picture's width, for the labels at the lines' ends
const WIDEST_WORDS = 42 / 160; // for the words at points

/**
 * The picture of a plot.
 * @throws Error (our bug) where a number is not finite or a point lies outside the axes
 */
export function plotPicture(plot: Plot): Picture {
  const { width, height } = { ...PLOT_SIZE, ...plot };
  assertSoundPlot(plot);
  const ends = plot.series.map(({ label }) => wrapLines(label, PLOT_TEXT_SIZES.words, width * WIDEST_LABEL));
  const title = titleMarks(plot.title, width, height);
  const frame = plotFrame(plot, ends, width, titleFoot(title) - PLOT_TEXT_SIZES.words * LINE_HEIGHT);
  const at = axesTransform(plot, frame);
  const lines = plot.series.map(({ points }) => points.map(at));
  const words = wordMarks(plot, frame, at, lines, width * WIDEST_WORDS);
  return {
    name: plot.name,
    title: plot.title,
    width,
    height,
    marks: [
      ...(plot.bands ?? []).map((band) => bandMark(band, frame, at)),
      ...axisMarks(plot, frame, at),
      ...plot.series.flatMap((each) => (each.drawn ?? [each]).map((s) => pathMark(s.line, s.points.map(at)))),
      ...(plot.points ?? []).map((marked) => dotMark(at(marked.at))),
      ...endLabels(ends, lines, frame),
      ...words,
      ...title,
    ],
  };
}

function assertSoundPlot({ name, x, y, series, points = [] }: Plot): void {
  const all = [...series.flatMap((s) => s.points), ...points.map((p) => p.at)];
  const slack = 1e-9;
  const within = (value: number, { from, to }: Axis) =>
    value >= from - slack * (to - from) && value <= to + slack * (to - from);
  const out = all.find((p) => !(within(p.x, x) && within(p.y, y)));
  if (out) throw new Error(`plot ${name}: the point ${out.x}, ${out.y} lies outside the axes`);
  if (!all.every((p) => Number.isFinite(p.x) && Number.isFinite(p.y))) throw new Error(`plot ${name}: not finite`);
}

/** The title's lines, from the top left. */
export function titleMarks(title: string, width: number, height: number): PictureTextMark[] {
  const lines = wrapLines(title, PLOT_TEXT_SIZES.title, width - 2 * PLOT_MARGIN, true);
  return blockMarks(lines, PLOT_TEXT_SIZES.title, { x: PLOT_MARGIN, y: height - PLOT_MARGIN }).map((mark) => ({
    ...mark,
    bold: true,
  }));
}

/** Lowest height that a title reaches. */
export const titleFoot = (title: readonly PictureTextMark[]): number =>
  Math.min(...title.map((mark) => textBox(mark).low)) - GAP;

function plotFrame({ y }: Plot, ends: readonly (readonly string[])[], width: number, high: number): Box {
  const yTicks = Math.max(...y.ticks.map(({ text }) => estimateTextWidth(text, PLOT_TEXT_SIZES.ticks)));
  const labels = Math.max(0, ...ends.flat().map((text) => estimateTextWidth(text, PLOT_TEXT_SIZES.words)));
  const below = TICK + GAP + PLOT_TEXT_SIZES.ticks * LINE_HEIGHT + PLOT_TEXT_SIZES.words * LINE_HEIGHT;
  return {
    left: PLOT_MARGIN + yTicks + GAP + TICK,
    right: width - PLOT_MARGIN - labels - 2 * GAP,
    low: PLOT_MARGIN + below,
    high: high - GAP,
  };
}

type AxesTransform = (p: Point) => Point;

/** From the axes' units to the picture. */
const axesTransform =
  ({ x, y }: Plot, { left, right, low, high }: Box): AxesTransform =>
  (p) => ({
    x: left + ((p.x - x.from) / (x.to - x.from)) * (right - left),
    y: low + ((p.y - y.from) / (y.to - y.from)) * (high - low),
  });

function axisMarks({ x, y }: Plot, frame: Box, at: AxesTransform): PictureMark[] {
  const { left, right, low, high } = frame;
  const xs = x.ticks.map(({ at: value, text }) => ({ x: at({ x: value, y: y.from }).x, text }));
  const ys = y.ticks.map(({ at: value, text }) => ({ y: at({ x: x.from, y: value }).y, text }));
  const size = PLOT_TEXT_SIZES.ticks;
  return [
    ...ys.map(({ y: level }) => straightMark("grid", { x: left, y: level }, { x: right, y: level })),
    ...xs.map(({ x: place }) => straightMark("grid", { x: place, y: low }, { x: place, y: high })),
    ...ys.map(({ y: level }) => straightMark("outline", { x: left - TICK, y: level }, { x: left, y: level })),
    ...xs.map(({ x: place }) => straightMark("outline", { x: place, y: low - TICK }, { x: place, y: low })),
    straightMark("outline", { x: left, y: low }, { x: left, y: high }),
    straightMark("outline", { x: left, y: low }, { x: right, y: low }),
    ...ys.map(({ y: level, text }) =>
      makeTextMark(text, { x: left - TICK - GAP / 2, y: level - size * 0.35 }, size, "end"),
    ),
    ...xs.map(({ x: place, text }) => makeTextMark(text, { x: place, y: low - TICK - size }, size, "middle")),
    makeTextMark(
      axisTitle(y),
      { x: PLOT_MARGIN, y: high + GAP + 0.25 * PLOT_TEXT_SIZES.words },
      PLOT_TEXT_SIZES.words,
      "start",
    ),
    makeTextMark(
      axisTitle(x),
      { x: (left + right) / 2, y: PLOT_MARGIN + 0.25 * PLOT_TEXT_SIZES.words },
      PLOT_TEXT_SIZES.words,
      "middle",
    ),
  ];
}

/** An axis's label with its unit. */
export const axisTitle = ({ label, unit }: Pick<Axis, "label" | "unit">): string =>
  unit === "" ? label : `${label}, ${unit}`;

const straightMark = (kind: LineKind, from: Point, to: Point): PictureMark => pathMark(kind, [from, to]);

export const makeTextMark = (
  text: string,
  at: Point,
  size: number,
  anchor: "start" | "middle" | "end",
): PictureTextMark => ({
  kind: "text",
  text,
  at,
  size,
  anchor,
});

const pathMark = (kind: LineKind, points: readonly Point[]): PictureMark => ({
  kind: "line",
  line: kind,
  segments: points.slice(1).map((to, i): Segment => line(points[i]!, to)),
});

const dotMark = (centre: Point): PictureMark => ({
  kind: "area",
  shade: 1,
  boundaries: [circleOutline({ centre, radius: DOT })],
});

function bandMark({ from, to, shade }: Band, { low, high }: Box, at: AxesTransform): PictureMark {
  const [left, right] = [at({ x: from, y: 0 }).x, at({ x: to, y: 0 }).x];
  const corners = [
    { x: left, y: low },
    { x: right, y: low },
    { x: right, y: high },
    { x: left, y: high },
  ];
  return { kind: "area", shade, boundaries: [corners.map((corner, i) => line(corner, corners[(i + 1) % 4]!))] };
}

/** Labels right of the frame, beside their lines' ends, with a leader where they had to give way. */
function endLabels(ends: readonly (readonly string[])[], lines: readonly Point[][], frame: Box): PictureMark[] {
  const heights = ends.map((label) => blockHeight(label, PLOT_TEXT_SIZES.words) + GAP / 2);
  const wanted = lines.map((points) => points.at(-1)!.y);
  const middles = spreadBlocks(
    wanted,
    heights,
    frame.low - PLOT_TEXT_SIZES.words,
    frame.high + PLOT_TEXT_SIZES.words / 2,
  );
  return ends.flatMap((label, i) => {
    const end = lines[i]!.at(-1)!;
    const corner = { x: frame.right + 2 * GAP, y: middles[i]! + (heights[i]! - GAP / 2) / 2 };
    const off = Math.hypot(frame.right - end.x, middles[i]! - end.y) > GAP;
    const leader = off ? [straightMark("thin", end, { x: corner.x - GAP / 2, y: middles[i]! })] : [];
    return [...leader, ...blockMarks(label, PLOT_TEXT_SIZES.words, corner)];
  });
}

/** Words of the bands and of the marked points. A band's stand in it, at the top, where it is wide enough for them. */
function wordMarks(
  plot: Plot,
  frame: Box,
  at: AxesTransform,
  lines: readonly Point[][],
  widest: number,
): PictureMark[] {
  const bands = (plot.bands ?? []).map((band) => bandWords(band, frame, at));
  const inside = bands.flatMap(({ mark }) => mark ?? []);
  const wanting: LabelRequest[] = [
    ...bands.flatMap(({ wanting: want }) => want ?? []),
    ...(plot.points ?? []).map((p) => ({ at: at(p.at), lines: wrapLines(p.words, PLOT_TEXT_SIZES.words, widest) })),
  ];
  const avoid = lines.flatMap((points) => points.slice(1).flatMap((to, i) => sampleLine([points[i]!, to])));
  const found = placeLabels(wanting, PLOT_TEXT_SIZES.words, frame, inside.map(textBox), avoid);
  return [...inside, ...found.flatMap(labelMarks)];
}

function bandWords({ from, to, words: text }: Band, { high }: Box, at: AxesTransform) {
  const [left, right] = [at({ x: from, y: 0 }).x, at({ x: to, y: 0 }).x];
  const middle = (left + right) / 2;
  const mark = makeTextMark(
    text,
    { x: middle, y: high - PLOT_TEXT_SIZES.words - GAP / 2 },
    PLOT_TEXT_SIZES.words,
    "middle",
  );
  const fits = estimateTextWidth(text, PLOT_TEXT_SIZES.words) + GAP <= right - left;
  if (fits || text === "") return { mark: text === "" ? undefined : mark, wanting: undefined };
  return { mark: undefined, wanting: { at: { x: middle, y: high - PLOT_TEXT_SIZES.words }, lines: [text] } };
}

const labelMarks = ({ lines, corner, flush, leader }: PlacedLabel): PictureMark[] => [
  ...(leader ? [straightMark("thin", ...leader)] : []),
  ...blockMarks(lines, PLOT_TEXT_SIZES.words, corner, flush),
];
