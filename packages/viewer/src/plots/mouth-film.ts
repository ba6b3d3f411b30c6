// The mouth film: the sole is dragged up through the wood, and edge, mouth, shaving and the plot's point go with it.
import { formatLength } from "@lamplane/parameters/units";
import type { Picture } from "@lamplane/sheets";
import { html, setAttributes, svg } from "../elements.ts";
import { linePath } from "../path-data.ts";
import type { MouthFilm } from "../protocol/mouth-film.ts";
import type { ViewMark } from "../protocol/view.ts";
import { FILM } from "../words/page.ts";

export interface MouthFilmField {
  readonly element: HTMLElement;
  /** @param plot the mouth's plot, and the drawing of it on which the point runs */
  show(film: MouthFilm | undefined, plot: Picture | undefined, drawing: SVGElement | null): void;
}

/** Thickness of the shaving that is drawn, mm. */
const SHAVING = 0.1;
/** How it rolls up toward the toe. */
const CURL = "a1.7 1.7 0 0 0 -3.3 0.4a1.5 1.5 0 0 0 2.6 1.2";
/** Up and down, at the end of the sole. */
const ARROW = "M0 -0.7L0 0.7M-0.35 -0.35L0 -0.7L0.35 -0.35M-0.35 0.35L0 0.7L0.35 0.35";
const DOT = 1.4; // mm of the plot
const BY_KEY = 0.02; // share of the way for an arrow key
const DOWN = ["ArrowLeft", "ArrowDown"];

export function createMouthFilm(): MouthFilmField {
  const drawing = svg("svg", { class: "film", tabindex: 0, role: "slider", "aria-label": FILM.label });
  const words = html("figcaption", { class: "film-words", "aria-live": "off" });
  const element = html("figure", { class: "field field-film", hidden: true }, drawing, words);
  let shown: Shown | undefined;
  const goTo = (sole: number) => shown && moveSole(shown, drawing, words, sole);
  drawing.addEventListener("pointerdown", (event) => {
    if (!shown?.hold.contains(event.target as Node)) return;
    drawing.setPointerCapture(event.pointerId);
    drawing.focus({ preventScroll: true });
  });
  drawing.addEventListener("pointermove", (event) => {
    if (shown && drawing.hasPointerCapture(event.pointerId)) goTo(soleUnder(event, drawing, shown.film));
  });
  drawing.addEventListener("keydown", (event) => {
    const next = shown && soleByKey(event.key, shown);
    if (next === undefined) return;
    event.preventDefault();
    goTo(next);
  });
  return {
    element,
    show(film, plot, plotDrawing) {
      element.hidden = film === undefined;
      if (!film) return;
      const point = plot?.axes && plotDrawing ? addPlotPoint(plotDrawing, plot) : undefined;
      const before = shown?.sole ?? 0;
      shown = { film, ...drawFilm(drawing, film), plot, point, sole: before };
      goTo(before);
    },
  };
}

interface Shown {
  readonly film: MouthFilm;
  readonly kept: SVGRectElement;
  readonly iron: SVGGElement;
  readonly shaving: SVGPathElement;
  /** The sole as it can be taken hold of. */
  readonly hold: SVGGElement;
  readonly plot: Picture | undefined;
  readonly point: SVGCircleElement | undefined;
  sole: number;
}

const areas = (marks: readonly ViewMark[]): SVGPathElement[] =>
  marks.map(({ d, area }) => svg("path", { d, class: `film-${area}` }));

function drawFilm(drawing: SVGSVGElement, film: MouthFilm) {
  const { min, max } = film.box;
  const [width, height] = [max.x - min.x, max.y - min.y];
  setAttributes(drawing, { viewBox: `${min.x} ${-max.y} ${width} ${height}` });
  const kept = svg("rect", { x: min.x, y: -max.y, width });
  const clip = svg("clipPath", { id: "film-kept" }, kept);
  const shaving = svg("path", { class: "film-shaving", d: `${linePath(...film.shaving)}${CURL}` });
  shaving.style.strokeWidth = String(SHAVING);
  const iron = svg("g", {}, ...areas(film.steel), shaving);
  const sole = { d: linePath({ x: min.x, y: 0 }, { x: max.x, y: 0 }) };
  const hold = svg(
    "g",
    { class: "film-hold" },
    svg("path", { ...sole, class: "film-reach" }),
    svg("path", { ...sole, class: "film-sole" }),
    svg("path", { d: ARROW, class: "film-arrow", transform: `translate(${max.x - 1.4} 0)` }),
  );
  drawing.replaceChildren(
    clip,
    svg("g", { class: "film-taken" }, ...areas(film.wood)),
    svg("g", { "clip-path": "url(#film-kept)" }, ...areas(film.wood)),
    iron,
    hold,
  );
  return { kept, iron, shaving, hold };
}

/** Everything at a height of the sole: the iron set to it, what lies under it taken off. */
function moveSole(shown: Shown, drawing: SVGSVGElement, words: HTMLElement, wanted: number) {
  const { film, kept, iron, shaving, hold } = shown;
  const { box, along, style } = film;
  const { first, last } = film.soles;
  const sole = Math.min(last, Math.max(first, wanted));
  const opening = openingAt(film, sole);
  shown.sole = sole;
  setAttributes(kept, { height: box.max.y - sole });
  setAttributes(iron, { transform: `translate(${along.x * sole} ${-along.y * sole})` });
  setAttributes(shaving, { visibility: opening > SHAVING ? undefined : "hidden" });
  setAttributes(hold, { transform: `translate(0 ${-sole})` });
  const text = FILM.reading({
    off: formatLength(sole - first, style),
    opening: opening > 0 ? formatLength(opening, style) : undefined,
    isBefore: sole < -1e-9,
  });
  words.textContent = text;
  setAttributes(drawing, {
    "aria-valuemin": 0,
    "aria-valuemax": round(last - first),
    "aria-valuenow": round(sole - first),
    "aria-valuetext": text,
  });
  movePoint(shown, sole - first, Math.max(0, opening));
}

const round = (mm: number): number => Math.round(mm * 1000) / 1000;

function openingAt({ openings, soles: { first, last } }: MouthFilm, sole: number): number {
  const steps = ((sole - first) / (last - first)) * (openings.length - 1);
  const [a, b] = [openings[Math.floor(steps)]!, openings[Math.ceil(steps)]!];
  return a.opening + (b.opening - a.opening) * (steps - Math.floor(steps));
}

/** The point that runs along the plot, on top of its drawing. */
function addPlotPoint(drawing: SVGElement, { height }: Picture): SVGCircleElement {
  const point = svg("circle", { class: "plot-runner", r: DOT, transform: `translate(0 ${height})` });
  drawing.append(point);
  return point;
}

function movePoint({ plot, point }: Shown, off: number, opening: number) {
  if (!plot?.axes || !point) return;
  const place = ({ from, to, low, high }: { from: number; to: number; low: number; high: number }, value: number) =>
    low + ((value - from) / (to - from)) * (high - low);
  const { x, y } = plot.axes;
  const isOnPlot = off >= x.from && off <= x.to;
  setAttributes(point, { cx: place(x, off), cy: -place(y, opening), visibility: isOnPlot ? undefined : "hidden" });
}

function soleUnder(event: PointerEvent, drawing: SVGSVGElement, { box }: MouthFilm): number {
  const { top, height } = drawing.getBoundingClientRect();
  return box.max.y - ((event.clientY - top) / height) * (box.max.y - box.min.y);
}

function soleByKey(key: string, { film, sole }: Shown): number | undefined {
  const { first, last } = film.soles;
  if (key === "Home") return first;
  if (key === "End") return last;
  if (key === "ArrowRight" || key === "ArrowUp") return sole + BY_KEY * (last - first);
  return DOWN.includes(key) ? sole - BY_KEY * (last - first) : undefined;
}
