// Words within and beside a plot: at the lines' ends, in the bands, at marked points, none over another.
import type { Point } from "@lamplane/geometry";
import {
  type LabelRequest,
  type PlacedLabel,
  placeLabels,
  sampleLine,
  spreadBlocks,
} from "../picture/label-placement.ts";
import type { PictureMark, Shade } from "../picture/picture.ts";
import { type Box, blockHeight, blockMarks, textBox, wrapLines } from "../picture/text-layout.ts";
import { estimateTextWidth } from "../picture/text-metrics.ts";
import { type AxesTransform, GAP, makeTextMark, PLOT_TEXT_SIZES, straightMark } from "./plot-frame.ts";

/** A point with a dot and words beside it. */
export interface MarkedPoint {
  readonly at: Point;
  readonly words: string;
}

/** Darkness of a band behind the curves, 0 to 1; neighbours differ. */
export const BAND_SHADES = { light: 0.07, darker: 0.16 } as const;

/** A shaded stretch of the x axis with words in it. */
export interface Band {
  readonly from: number;
  readonly to: number;
  readonly shade: Shade;
  readonly words: string;
}

interface PlotWords {
  readonly points?: readonly MarkedPoint[];
  readonly bands?: readonly Band[];
}

/** What a line's end is labelled with. */
export interface EndLabel {
  readonly end: Point;
  readonly lines: readonly string[];
}

/** Labels right of the frame, beside their lines' ends, with a leader where they had to give way. */
export function endLabels(labels: readonly EndLabel[], frame: Box): PictureMark[] {
  const { words } = PLOT_TEXT_SIZES;
  const blocks = labels.map((label) => ({
    ...label,
    middle: label.end.y,
    height: blockHeight(label.lines, words) + GAP / 2,
  }));
  return spreadBlocks(blocks, frame.low - words, frame.high + words / 2).flatMap(({ end, lines, middle, height }) => {
    const corner = { x: frame.right + 2 * GAP, y: middle + (height - GAP / 2) / 2 };
    const off = Math.hypot(frame.right - end.x, middle - end.y) > GAP;
    const leader = off ? [straightMark("thin", end, { x: corner.x - GAP / 2, y: middle })] : [];
    return [...leader, ...blockMarks(lines, words, corner)];
  });
}

/** Words of the bands and of the marked points. A band's stand in it, at the top, where it is wide enough for them. */
export function wordMarks(
  plot: PlotWords,
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
