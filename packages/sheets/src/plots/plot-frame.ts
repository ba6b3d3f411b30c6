// What stands round a plot: its title, its axes with their ticks, and where its frame lies.
import { line, type Point, type Segment } from "@lamplane/geometry";
import type { LineKind, PictureMark } from "../picture/picture.ts";
import { type Box, blockMarks, LINE_HEIGHT, type PictureTextMark, textBox, wrapLines } from "../picture/text-layout.ts";
import { estimateTextWidth } from "../picture/text-metrics.ts";
import type { Axis } from "./axis.ts";

/** Heights of letters, mm: read at arm's length on paper. */
export const PLOT_TEXT_SIZES = { title: 3.8, words: 2.9, ticks: 2.7 } as const;
export const PLOT_SIZE = { width: 160, height: 90 } as const;
export const PLOT_MARGIN = 4; // mm of white round everything
export const GAP = 1.5; // mm between words and what they stand beside
const TICK = 1.2; // mm that a tick stands out

export interface Axes {
  readonly x: Axis;
  readonly y: Axis;
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

/** The frame that the axes bound, once ticks, labels and titles have their room. */
export function plotFrame({ y }: Axes, ends: readonly (readonly string[])[], width: number, high: number): Box {
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

export type AxesTransform = (p: Point) => Point;

/** From the axes' units to the picture. */
export const axesTransform =
  ({ x, y }: Axes, { left, right, low, high }: Box): AxesTransform =>
  (p) => ({
    x: left + ((p.x - x.from) / (x.to - x.from)) * (right - left),
    y: low + ((p.y - y.from) / (y.to - y.from)) * (high - low),
  });

/** Grid, ticks and titles of both axes. */
export function axisMarks({ x, y }: Axes, frame: Box, at: AxesTransform): PictureMark[] {
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

export const straightMark = (kind: LineKind, from: Point, to: Point): PictureMark => pathMark(kind, [from, to]);

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

export const pathMark = (kind: LineKind, points: readonly Point[]): PictureMark => ({
  kind: "line",
  line: kind,
  segments: points.slice(1).map((to, i): Segment => line(points[i]!, to)),
});
