// One view on the sheet: its lines in SVG, its numbers over them. While the hand is on a number the scale stands still.
import { rowAt } from "@lamplane/parameters/design";
import type { NumberRow } from "@lamplane/parameters/table";
import { html, reconcileChildren, setAttributes, svg } from "../elements.ts";
import type { Dimension, SheetPlane, SheetPoint, View, ViewMark } from "../protocol.ts";
import { type DisplayUnits, formatOnDrawing } from "../state/format.ts";
import { layOutApart, type SeparationOptions } from "./dimension-separation.ts";
import { FRACTION_ROOM, type LaidDimension, layOutDimension, type Padding, type Scale, toPixels } from "./layout.ts";
import { autoPosition, numberBox, numberWidth } from "./number-box.ts";
import { type ControlHandlers, createNumberControl, type NumberControl } from "./number-control.ts";
import { type FitInput, fitView } from "./view-fit.ts";

export interface Field {
  readonly element: HTMLElement;
  /** Takes the width it has now, where the page's own word of it would come too late (printing). */
  measure(): void;
  draw(view: View, plane: SheetPlane, holding: boolean): void;
  /** Pixels on the field of a place on the view. */
  pixelsOf(spot: SheetPoint): SheetPoint;
  /** Place on the view of pixels on the field. */
  spotAt(pixels: SheetPoint): SheetPoint;
  scale(): Scale | undefined;
  readonly overlay: SVGGElement;
}

type Sides = Pick<Padding, "left" | "right">;

interface FieldOptions {
  /** At most so much room for numbers at the sides. */
  readonly padding: Sides;
  /** The same on a phone. */
  readonly narrow: Sides;
  /** More on either side of a phone's where numbers are fractions of an inch, px. */
  readonly narrowFractions?: number;
  readonly tallest: () => number;
  readonly clipped?: boolean;
  readonly handlers: ControlHandlers;
}

type ShownNumber = NumberControl | { readonly element: HTMLElement; readonly path?: undefined };

export function createField(name: View["name"], options: FieldOptions): Field {
  const { tallest, clipped, handlers } = options;
  const caption = html("figcaption", { id: `view-${name}` });
  const marks = svg("g", { class: "marks" });
  const names = svg("g", { class: "names" });
  const lines = svg("g", { class: "dimension-lines" });
  const arrows = svg("g", { class: "dimension-arrows" });
  const overlay = svg("g", { class: "overlay" });
  const window = svg("rect");
  const drawing = svg("svg", { role: "img", "aria-labelledby": `view-${name}` });
  const clip = svg("clipPath", { id: `window-${name}` }, window);
  const frame = svg("rect", { class: "window" });
  const clippedMarks = svg("g", clipped ? { "clip-path": `url(#window-${name})` } : {}, marks);
  drawing.append(svg("defs", {}, clip), clippedMarks, ...(clipped ? [frame] : []), names, lines, arrows, overlay);
  const numbers = html("div", { class: "numbers" });
  const board = html("div", { class: "board" }, drawing, numbers);
  const element = html("figure", { class: `field field-${name}` }, board, caption);
  const shown = new Map<string, ShownNumber>();
  const ways = new Map<string, number>();
  let scale: Scale | undefined;
  let width = 0; // px: kept, since reading it between two drawings would lay the page out each time
  new ResizeObserver(([entry]) => {
    width = Math.round(entry!.contentRect.width);
  }).observe(board);

  const measure = () => {
    width = board.clientWidth;
  };
  return { element, measure, draw, overlay, scale: () => scale, pixelsOf: (spot) => toPixels(scale!, spot), spotAt };

  function spotAt({ x, y }: SheetPoint): SheetPoint {
    const { perMm, origin } = scale!;
    return { x: (x - origin.x) / perMm, y: (origin.y - y) / perMm };
  }

  function draw(view: View, plane: SheetPlane, holding: boolean) {
    if (width === 0) width = board.clientWidth;
    if (width === 0) return;
    if (!holding || !scale || scale.width !== width) scale = fitView(askedOf(view, plane));
    const { perMm, origin, height } = scale;
    setAttributes(drawing, { width, height, viewBox: `0 0 ${width} ${height}` });
    setAttributes(marks, { transform: `translate(${origin.x} ${origin.y}) scale(${perMm})` });
    reconcileChildren(marks, view.marks, () => svg("path"), setPathStyle);
    if (clipped) frameRound(view);
    caption.textContent = view.title;
    reconcileChildren(
      names,
      perMm < LEAST_FOR_NAMES ? [] : view.labels,
      () => svg("text"),
      (text, { text: words, at }) => {
        setAttributes(text, { ...toPixels(scale!, at) });
        text.textContent = words;
      },
    );
    drawDimensions(view, plane, holding);
  }

  function frameRound(view: View) {
    const [a, b] = [toPixels(scale!, view.box.min), toPixels(scale!, view.box.max)];
    const box = { x: a.x, y: b.y, width: b.x - a.x, height: a.y - b.y };
    setAttributes(window, box);
    setAttributes(frame, box);
  }

  function askedOf(view: View, plane: SheetPlane): FitInput {
    const wanted = wantedOf(view);
    return {
      box: view.box,
      width,
      tallest: tallest(),
      most: sidePadding(options, width, plane.design.units === "in"),
      boxesAt(tried, withinSides) {
        const laying = layingAt(tried, view, plane, withinSides ? width : undefined);
        return layOutApart(wanted, laying, new Map(), false).map((place, i) => laying.boxOf(wanted[i]!, place));
      },
    };
  }

  function layingAt(at: Scale, view: View, plane: SheetPlane, within: number | undefined): SeparationOptions {
    const style = styleOf(plane);
    return {
      lay: (dimension) => layOutDimension(dimension, at, view.box, numberWidth(dimension, style), style.units === "in"),
      boxOf: (dimension, place) => numberBox(dimension, place, numberWidth(dimension, style)),
      width: within,
    };
  }

  /** What this width has room for. */
  function wantedOf(view: View): Dimension[] {
    const rank = greatestRank(view.name, width);
    return closeTiers(view.dimensions.filter((dimension) => dimension.rank <= rank));
  }

  function drawDimensions(view: View, plane: SheetPlane, holding: boolean) {
    const wanted = wantedOf(view);
    const style = styleOf(plane);
    const places = layOutApart(wanted, layingAt(scale!, view, plane, width), ways, holding);
    wanted.forEach((dimension, i) => {
      const number = shown.get(dimension.id) ?? makeNumber(dimension);
      updateNumber(number, dimension, plane, style);
      setPosition(number.element, places[i]!, autoPosition(dimension.shape));
    });
    reconcileChildren(
      lines,
      places,
      () => svg("path"),
      (path, { lines: d }) => setAttributes(path, { d }),
    );
    reconcileChildren(
      arrows,
      places,
      () => svg("path"),
      (path, { arrows: d }) => setAttributes(path, { d }),
    );
    const ids = new Set(wanted.map(({ id }) => id));
    for (const [id, { element: number }] of shown)
      if (!ids.has(id)) {
        number.remove();
        shown.delete(id);
      }
  }

  function makeNumber(dimension: Dimension): ShownNumber {
    const { id, parameter: path, before = "" } = dimension;
    const made: ShownNumber = path
      ? createNumberControl(path, rowAt(path) as NumberRow, handlers, before)
      : {
          element: html("span", {
            class: "number reference",
            tabindex: 0,
            role: "note",
            "data-figure": dimension.figure,
          }),
        };
    shown.set(id, made);
    numbers.append(made.element);
    return made;
  }
}

const styleOf = ({ design }: SheetPlane): DisplayUnits => ({
  units: design.units,
  smallestFraction: design.shop.smallestFraction,
});

function updateNumber(number: ShownNumber, dimension: Dimension, plane: SheetPlane, style: DisplayUnits) {
  const { value, unit, before = "" } = dimension;
  if (number.path === undefined) {
    const text = `${before}(${formatOnDrawing(value, unit, style)})`;
    if (number.element.textContent !== text) number.element.textContent = text;
    return;
  }
  const path = number.path;
  const given = plane.solved[path] === undefined ? value : "auto";
  number.update({ value, unit, style, planned: given, isLocked: plane.locked.includes(path) });
}

const LEAST_FOR_NAMES = 1.4; // px for each mm: on a smaller drawing names would cover the numbers
function setPosition(element: HTMLElement, { number, hold }: LaidDimension, kind: string) {
  const across = hold === "middle" ? "-50%" : hold === "left" ? "0" : "-100%";
  element.style.transform = `translate(${number.x.toFixed(1)}px, ${number.y.toFixed(1)}px) translate(${across}, -50%)`;
  element.dataset.kind = kind;
}

/** How much of what could be told a view of this width has room for. */
function greatestRank(name: View["name"], width: number): Dimension["rank"] {
  if (width < NARROW) return name === "elevation" ? 1 : 2;
  return name === "elevation" && width < 700 ? 2 : 3;
}

/** Dimension lines move up where those nearer to the view are left out. */
function closeTiers(dimensions: readonly Dimension[]): Dimension[] {
  const tiers = new Map<string, number[]>();
  for (const { shape } of dimensions)
    if (shape.kind === "along") tiers.set(shape.side, [...(tiers.get(shape.side) ?? []), shape.tier].sort());
  return dimensions.map((dimension) => {
    const { shape } = dimension;
    if (shape.kind !== "along") return dimension;
    const tier = [...new Set(tiers.get(shape.side))].indexOf(shape.tier);
    return { ...dimension, shape: { ...shape, tier } };
  });
}

const NARROW = 480; // px: a phone; fewer numbers stand on each view, the schedule has them all

/** Most room beside a view: less on a phone, more where numbers are fractions of an inch. */
function sidePadding(
  { padding, narrow, narrowFractions = 0 }: Pick<FieldOptions, "padding" | "narrow" | "narrowFractions">,
  width: number,
  inFractions: boolean,
): Sides {
  const [room, more] = width < NARROW ? [narrow, narrowFractions] : [padding, FRACTION_ROOM];
  return inFractions ? { left: room.left + more, right: room.right + more } : room;
}

function setPathStyle(path: SVGPathElement, { d, line, area }: ViewMark) {
  setAttributes(path, {
    d,
    class: `${line ? `line-${line}` : "line-none"} ${area ? `matter-${area}` : "matter-none"}`,
  });
}
