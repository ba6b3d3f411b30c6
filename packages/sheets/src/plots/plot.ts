// A plot as plain data → a picture: axes on round numbers, each line named at its end, no words over other words.
import { circleOutline, line, type Point } from "@lamplane/geometry";
import type { AxisPlace, LineKind, Picture, PictureMark } from "../picture/picture.ts";
import { type Box, LINE_HEIGHT, wrapLines } from "../picture/text-layout.ts";
import type { Axis } from "./axis.ts";
import {
  type AxesTransform,
  axesTransform,
  axisMarks,
  PLOT_SIZE,
  PLOT_TEXT_SIZES,
  pathMark,
  plotFrame,
  titleFoot,
  titleMarks,
} from "./plot-frame.ts";
import { type Band, type EndLabel, endLabels, type MarkedPoint, wordMarks } from "./plot-words.ts";

/** One line of a plot; two lines of a plot are told apart by their kind and by the label at their end. */
export interface Series {
  readonly label: string;
  readonly line: LineKind;
  /** In the axes' units, left to right; two or more. */
  readonly points: readonly Point[];
  /** How the line is drawn where it is not of one kind all along; stretches of `points`. */
  readonly drawn?: readonly PlotStretch[];
}

/** A stretch of a line that is drawn in a kind of its own. */
export interface PlotStretch {
  readonly line: LineKind;
  readonly points: readonly Point[];
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
  const labels = lines.flatMap((points, i): EndLabel[] => {
    const [end, words] = [points.at(-1), ends[i]];
    return end && words ? [{ end, lines: words }] : [];
  });
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
      ...endLabels(labels, frame),
      ...words,
      ...title,
    ],
    axes: {
      x: axisPlace(plot.x, frame.left, frame.right),
      y: axisPlace(plot.y, frame.low, frame.high),
    },
    lines: plot.series.map(({ label, points }) => ({ name: label.split(":")[0]!, points })), // a label begins with the line's name
  };
}

const axisPlace = ({ label, unit, from, to }: Axis, low: number, high: number): AxisPlace => ({
  label,
  unit,
  from,
  to,
  low,
  high,
});

function assertSoundPlot({ name, x, y, series, points = [] }: Plot): void {
  const all = [...series.flatMap((s) => s.points), ...points.map((p) => p.at)];
  const slack = 1e-9;
  const within = (value: number, { from, to }: Axis) =>
    value >= from - slack * (to - from) && value <= to + slack * (to - from);
  const out = all.find((p) => !(within(p.x, x) && within(p.y, y)));
  if (out) throw new Error(`plot ${name}: the point ${out.x}, ${out.y} lies outside the axes`);
  if (!all.every((p) => Number.isFinite(p.x) && Number.isFinite(p.y))) throw new Error(`plot ${name}: not finite`);
}

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
