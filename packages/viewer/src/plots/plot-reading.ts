// What a plot says at a place: read by a pointer over it, a tap, or the arrow keys, in words beside it and to a screen reader.
import { formatDecimalLength, formatNumber } from "@lamplane/parameters/units";
import type { Picture } from "@lamplane/sheets";
import { html, setAttributes, svg } from "../elements.ts";
import { linePath } from "../path-data.ts";
import { PLOT } from "../words/page.ts";

export interface PlotReader {
  /** The reading in words. */
  readonly element: HTMLElement;
  /** Reads another picture; the place that was read is kept where it still lies on it. */
  show(picture: Picture, drawing: SVGElement): void;
}

type PlotPicture = Picture & Required<Pick<Picture, "axes" | "lines">>;

export const isPlot = (picture: Picture): picture is PlotPicture =>
  picture.axes !== undefined && (picture.lines?.length ?? 0) > 0;

const DOT = 1.1; // mm of the plot
const KEY_STEPS = 40; // presses of an arrow key from end to end
const FAR_KEY_STEPS = 8; // of a page key

/** @param board takes pointer and keys, and speaks */
export function createPlotReader(board: HTMLElement): PlotReader {
  const element = html("figcaption", { class: "plot-reading", "aria-hidden": "true" });
  let shown: { picture: PlotPicture; marks: SVGGElement } | undefined;
  let at: number | undefined; // in the axis's unit
  const hide = () => {
    at = undefined;
    shown?.marks.replaceChildren();
    element.textContent = "";
  };
  const read = (x: number) => {
    if (!shown) return;
    at = x;
    const text = readingText(shown.picture, x);
    element.textContent = text;
    shown.marks.replaceChildren(...readingMarks(shown.picture, x));
    setAttributes(board, { "aria-valuenow": round(x), "aria-valuetext": text });
  };
  const readUnder = ({ clientX }: PointerEvent) => {
    if (!shown) return;
    const x = valueUnder(clientX, shown.picture, shown.marks);
    if (x === undefined) hide();
    else read(x);
  };
  listenToPointer(board, readUnder, hide);
  board.addEventListener("blur", hide);
  board.addEventListener("focus", () => {
    if (shown && at === undefined) read(shown.picture.axes.x.from);
  });
  board.addEventListener("keydown", (event) => {
    const next = shown && valueByKey(event.key, at ?? shown.picture.axes.x.from, shown.picture);
    if (next === undefined) return;
    event.preventDefault();
    read(next);
  });
  return {
    element,
    show(picture, drawing) {
      const marks = svg("g", { class: "plot-read", transform: `translate(0 ${picture.height})` });
      if (!isPlot(picture)) return;
      drawing.append(marks);
      shown = { picture, marks };
      const { from, to } = picture.axes.x;
      describeSlider(board, picture, at ?? from);
      if (at !== undefined && at >= from && at <= to) read(at);
      else hide();
    },
  };
}

function listenToPointer(board: HTMLElement, read: (event: PointerEvent) => void, leave: () => void) {
  board.addEventListener("pointermove", read);
  board.addEventListener("pointerdown", read);
  board.addEventListener("pointerleave", ({ pointerType }) => {
    if (pointerType === "mouse" && document.activeElement !== board) leave();
  });
}

/** To a screen reader a plot is a slider over its x axis. */
function describeSlider(board: HTMLElement, picture: PlotPicture, at: number) {
  const { from, to } = picture.axes.x;
  setAttributes(board, {
    role: "slider",
    "aria-label": PLOT.help(picture.title),
    "aria-valuemin": round(from),
    "aria-valuemax": round(to),
    "aria-valuenow": round(at),
    "aria-valuetext": readingText(picture, at),
  });
}

const round = (value: number): number => Math.round(value * 1000) / 1000;

/** Each line's value at a place; a line that does not reach it has none. */
export function valuesAt({ lines }: PlotPicture, x: number): { readonly name: string; readonly value: number }[] {
  return lines.flatMap(({ name, points }) => {
    const i = points.findIndex((point) => point.x >= x);
    const [b, a] = [points[i], points[Math.max(0, i - 1)]];
    if (!a || !b || x < points[0]!.x) return [];
    const share = b.x > a.x ? (x - a.x) / (b.x - a.x) : 0;
    return [{ name, value: a.y + (b.y - a.y) * share }];
  });
}

export const readingText = (picture: PlotPicture, x: number): string =>
  PLOT.reading({
    what: picture.axes.x.label,
    at: formatOnAxis(x, picture.axes.x.unit),
    values: valuesAt(picture, x).map(({ name, value }) => `${name} ${formatOnAxis(value, picture.axes.y.unit)}`),
  });

function formatOnAxis(value: number, unit: string): string {
  if (unit === "mm" || unit === "in") return formatDecimalLength(value, { units: unit, decimals: { mm: 2, in: 3 } });
  return `${formatNumber(value, { decimals: 2 })} ${unit}`.trim();
}

type AxisOf = PlotPicture["axes"]["x"];
const placeOn = ({ from, to, low, high }: AxisOf, value: number): number =>
  low + ((value - from) / (to - from)) * (high - low);

/** A line up the plot, and a dot on each of its lines. */
function readingMarks(picture: PlotPicture, value: number): SVGElement[] {
  const { x, y } = picture.axes;
  const cx = placeOn(x, value);
  return [
    svg("path", { d: linePath({ x: cx, y: y.low }, { x: cx, y: y.high }) }),
    ...valuesAt(picture, value).map((each) => svg("circle", { cx, cy: -placeOn(y, each.value), r: DOT })),
  ];
}

/** The value of the x axis under a pointer; undefined beside the plot. */
function valueUnder(clientX: number, { axes: { x } }: PlotPicture, marks: SVGGElement): number | undefined {
  const matrix = marks.getScreenCTM();
  if (!matrix) return undefined;
  const share = ((clientX - matrix.e) / matrix.a - x.low) / (x.high - x.low);
  return share < 0 || share > 1 ? undefined : x.from + share * (x.to - x.from);
}

function valueByKey(key: string, now: number, { axes: { x } }: PlotPicture): number | undefined {
  const step = (x.to - x.from) / KEY_STEPS;
  const moves: Readonly<Record<string, number>> = {
    ArrowRight: step,
    ArrowUp: step,
    ArrowLeft: -step,
    ArrowDown: -step,
    PageUp: FAR_KEY_STEPS * step,
    PageDown: -FAR_KEY_STEPS * step,
    Home: x.from - x.to,
    End: x.to - x.from,
  };
  const by = moves[key];
  return by === undefined ? undefined : Math.min(x.to, Math.max(x.from, now + by));
}
