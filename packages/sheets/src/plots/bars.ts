// Shares as level bars, each with its name before it and its figure and note behind it; nothing depends on shade alone.

import { line, type Point, ringPairs } from "@lamplane/geometry";
import { formatPercent } from "@lamplane/parameters/units";
import type { Picture, PictureMark } from "../picture/picture.ts";
import { LINE_HEIGHT, type PictureTextMark, wrapLines } from "../picture/text-layout.ts";
import { estimateTextWidth } from "../picture/text-metrics.ts";
import { SHARES } from "../words/plots.ts";
import { type Axis, numberAxis } from "./axis.ts";
import {
  axisTitle,
  makeTextMark,
  PLOT_MARGIN,
  PLOT_SIZE,
  PLOT_TEXT_SIZES,
  titleFoot,
  titleMarks,
} from "./plot-frame.ts";

/** A share of a whole, 0 … 1. */
export interface ShareRow {
  readonly label: string;
  readonly share: number;
  /** Behind the bar, after the percentage. */
  readonly note?: string;
}

export interface BarPlot {
  /** Kebab-case. */
  readonly name: string;
  readonly title: string;
  /** What the shares are of. */
  readonly axis: string;
  readonly rows: readonly ShareRow[];
  /** Of the picture, mm. */
  readonly width?: number;
}

const GAP = 1.5; // mm between words and what they stand beside
const LEAST_ROW = 7; // mm
const BAR = 0.6; // of its row
const BAR_SHADE = 0.55;
const WIDEST_LABEL = 44; // mm
const WIDEST_NOTE = 50; // mm
/** Least room for the bars themselves, and least height of the picture, mm. */
const BARS = 30;
const LEAST_HEIGHT = 40;
/** Height of the scale under the bars. */
const FOOT = PLOT_MARGIN + 2 * PLOT_TEXT_SIZES.words * LINE_HEIGHT + GAP;

/** @throws Error (our bug) where a share is not one */
export function barPicture(plot: BarPlot): Picture {
  const { name, title, rows } = plot;
  const wrong = rows.find(({ share }) => !(share >= 0 && share <= 1));
  if (wrong) throw new Error(`plot ${name}: ${wrong.label} has the share ${wrong.share}`);
  const wrapped = rows.map(wrapRow);
  const layout = layoutOf(plot, wrapped);
  const { width, left, top, rowHeight, at, height } = layout;
  return {
    name,
    title,
    width,
    height,
    marks: [
      ...scaleMarks(layout),
      ...wrapped.flatMap((row, i) =>
        rowMarks(row, {
          left,
          middle: top - rowHeight * (i + 0.5),
          end: at(100 * row.share),
          half: (rowHeight * BAR) / 2,
        }),
      ),
      { kind: "line", line: "outline", segments: [line({ x: left, y: FOOT }, { x: left, y: top })] },
      ...layout.head,
    ],
  };
}

/** A row with its words in lines. */
interface WrappedRow {
  readonly share: number;
  readonly label: readonly string[];
  readonly figure: readonly string[];
}

const wrapRow = (row: ShareRow): WrappedRow => ({
  share: row.share,
  label: wrapLines(row.label, PLOT_TEXT_SIZES.words, WIDEST_LABEL),
  figure: wrapLines(shareLabel(row), PLOT_TEXT_SIZES.words, WIDEST_NOTE),
});

/** Where everything goes, mm; the picture is as high as its rows ask for. */
interface Layout {
  readonly width: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly height: number;
  readonly rowHeight: number;
  readonly head: readonly PictureTextMark[];
  readonly scale: Axis;
  /** x of a percentage. */
  readonly at: (percent: number) => number;
}

function layoutOf({ title, axis, rows, width = PLOT_SIZE.width }: BarPlot, wrappedRows: readonly WrappedRow[]): Layout {
  const rowHeight = Math.max(
    LEAST_ROW,
    ...wrappedRows.map(({ label, figure }) => lineCount(label, figure) * PLOT_TEXT_SIZES.words * LINE_HEIGHT + GAP),
  );
  const headless = titleFoot(titleMarks(title, width, 0));
  const height = Math.max(LEAST_HEIGHT, FOOT + rowHeight * rows.length + GAP - headless);
  const head = titleMarks(title, width, height);
  const widest = (key: "label" | "figure") =>
    Math.max(
      0,
      ...wrappedRows.flatMap((row) => row[key]).map((text) => estimateTextWidth(text, PLOT_TEXT_SIZES.words)),
    );
  const left = PLOT_MARGIN + widest("label") + GAP;
  const right = Math.max(left + BARS, width - PLOT_MARGIN - widest("figure") - GAP);
  const greatest = 100 * Math.max(0.01, ...rows.map(({ share }) => share));
  const scale = numberAxis({ label: axis, least: 0, greatest, most: 5 }, "%");
  const at = (percent: number) => left + (percent / scale.to) * (right - left);
  return { width, left, right, top: titleFoot(head), height, rowHeight, head, scale, at };
}

const scaleMarks = ({ scale, at, top, left, right }: Layout): PictureMark[] => [
  ...scale.ticks.flatMap(({ at: value, text }): PictureMark[] => [
    { kind: "line", line: "grid", segments: [line({ x: at(value), y: FOOT }, { x: at(value), y: top })] },
    makeTextMark(text, { x: at(value), y: FOOT - PLOT_TEXT_SIZES.ticks - GAP / 2 }, PLOT_TEXT_SIZES.ticks, "middle"),
  ]),
  makeTextMark(
    axisTitle(scale),
    { x: (left + right) / 2, y: PLOT_MARGIN + 0.25 * PLOT_TEXT_SIZES.words },
    PLOT_TEXT_SIZES.words,
    "middle",
  ),
];

const lineCount = (...blocks: readonly (readonly string[])[]): number => Math.max(...blocks.map((b) => b.length));

const shareLabel = ({ share, note }: ShareRow): string =>
  `${share > 0 && share < 0.005 ? SHARES.underOne : formatPercent(share, 0)}${note ? `: ${note}` : ""}`;

interface RowPlace {
  readonly left: number;
  readonly middle: number;
  readonly end: number;
  readonly half: number;
}

function rowMarks({ label, figure }: WrappedRow, { left, middle, end, half }: RowPlace): PictureMark[] {
  const corners: Point[] = [
    { x: left, y: middle - half },
    { x: end, y: middle - half },
    { x: end, y: middle + half },
    { x: left, y: middle + half },
  ];
  const bar: PictureMark = {
    kind: "area",
    shade: BAR_SHADE,
    boundaries: [ringPairs(corners).map(([from, to]) => line(from, to))],
  };
  return [
    ...(end > left ? [bar] : []),
    ...centreLines(label, { x: left - GAP, y: middle }, "end"),
    ...centreLines(figure, { x: end + GAP, y: middle }, "start"),
  ];
}

/** Lines under each other about a height. */
const centreLines = (lines: readonly string[], at: Point, anchor: "start" | "end"): PictureMark[] =>
  lines.map((text, i) =>
    makeTextMark(
      text,
      { x: at.x, y: at.y - PLOT_TEXT_SIZES.words * (0.3 + LINE_HEIGHT * (i - (lines.length - 1) / 2)) },
      PLOT_TEXT_SIZES.words,
      anchor,
    ),
  );
