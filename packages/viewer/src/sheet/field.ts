// One view on the sheet: its lines in SVG, its numbers over them. While the hand is on a number the scale stands still.
import { html } from "../elements.ts";
import type { SheetPlane } from "../protocol/sheet-data.ts";
import type { Dimension, SheetPoint, View } from "../protocol/view.ts";
import { createGrips } from "./grips.ts";
import { type Scale, toPixels, toSheet } from "./layout.ts";
import type { ControlHandlers } from "./number-control.ts";
import { createNumberLayer } from "./number-layer.ts";
import { watchPointedPart } from "./pointed-part.ts";
import { createStepMotion } from "./step-motion.ts";
import { createViewDrawing } from "./view-drawing.ts";
import { chooseDimensions, type FieldRoom, fitScaleOf, layOutView } from "./view-layout.ts";
import type { WoodGrain } from "./wood-grain.ts";

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
  isInView(): boolean;
  /** Shows every number of the view, or those of what can be taken hold of and of the part that is pointed at. */
  showAll(isAll: boolean): void;
}

interface FieldOptions extends FieldRoom {
  readonly tallest: () => number;
  readonly clipped?: boolean;
  readonly handlers: ControlHandlers;
}

export function createField(name: View["name"], options: FieldOptions): Field {
  const { tallest, clipped = false, handlers } = options;
  const caption = html("figcaption", { id: `view-${name}` });
  const drawing = createViewDrawing(name, clipped);
  const numbers = createNumberLayer(handlers);
  const board = html("div", { class: "board" }, drawing.element, numbers.element);
  const grips = name === "elevation" ? createGrips(handlers) : undefined;
  if (grips) drawing.overlay.append(grips.element);
  const motion = createStepMotion({
    marks: drawing.marks,
    others: [...drawing.others, drawing.overlay],
    numbers: numbers.element,
  });
  const pointed = watchPointedPart(board, () => last && draw(...last));
  let isAll = false;
  let last: Parameters<Field["draw"]> | undefined;
  const ways = new Map<string, number>();
  let scale: Scale | undefined;
  const extent = observeExtent(board);

  const isAtRest = ({ part, isHeld }: Dimension): boolean => isAll || part === undefined || isHeld === true;
  const isWanted = (dimension: Dimension): boolean =>
    isAtRest(dimension) || dimension.part === pointed() || numbers.hasFocus(dimension.id);

  function draw(view: View, plane: SheetPlane, holding: boolean) {
    const isNextStep = last !== undefined && last[1].stage !== plane.stage && last[1].design.name === plane.design.name;
    if (isNextStep && scale) motion.keep(last![0], scale);
    last = [view, plane, holding];
    const width = extent.width();
    if (width === 0) return;
    if (!holding || !scale || scale.width !== width)
      scale = fitScaleOf(view, plane, options, { width, tallest: tallest() }, isAtRest);
    caption.textContent = view.title;
    const dimensions = chooseDimensions(view, width);
    const { places, names } = layOutView({ dimensions, view, plane, scale }, ways, holding);
    drawing.drawView(view, scale, grainOf(plane), names);
    const shown = dimensions.flatMap((dimension, i) => {
      const place = places[i];
      return place && isWanted(dimension) ? [{ dimension, place }] : [];
    });
    numbers.draw(shown, plane);
    drawing.drawDimensionLines(shown.map(({ place }) => place));
    grips?.draw(view, plane, scale);
    if (isNextStep) motion.play(view, scale);
  }

  return {
    element: html("figure", { class: `field field-${name}` }, board, caption),
    measure: extent.measure,
    draw,
    showAll(all) {
      isAll = all;
      board.classList.toggle("is-all", all);
      if (last) draw(...last);
    },
    overlay: drawing.overlay,
    isInView: extent.isInView,
    scale: () => scale,
    pixelsOf: (spot) => toPixels(scale!, spot),
    spotAt: (pixels) => toSheet(scale!, pixels),
  };
}

/** How wide an element is, kept since reading it between two drawings would lay the page out each time; and whether it is in view. */
function observeExtent(element: HTMLElement) {
  let width = 0; // px
  let isInView = false;
  new ResizeObserver(([entry]) => {
    width = Math.round(entry!.contentRect.width);
  }).observe(element);
  new IntersectionObserver((entries) => {
    isInView = entries.at(-1)!.isIntersecting;
  }).observe(element);
  const measure = () => {
    width = element.clientWidth;
  };
  return {
    measure,
    isInView: () => isInView,
    width() {
      if (width === 0) measure();
      return width;
    },
  };
}

function grainOf({ design, figures, points }: SheetPlane): WoodGrain {
  const pin = points.pinCentre ?? { x: 0, y: 0 };
  return { rings: design.wood.rings, bedAngle: figures.bedAngle ?? design.bed.angle, height: design.body.height, pin };
}
