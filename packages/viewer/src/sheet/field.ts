// One view on the sheet: its lines in SVG, its numbers over them. While the hand is on a number the scale stands still.
import { html } from "../elements.ts";
import type { SheetPlane } from "../protocol/sheet-data.ts";
import type { SheetPoint, View } from "../protocol/view.ts";
import { type Scale, toPixels, toSheet } from "./layout.ts";
import type { ControlHandlers } from "./number-control.ts";
import { createNumberLayer } from "./number-layer.ts";
import { createViewDrawing } from "./view-drawing.ts";
import { chooseDimensions, type FieldRoom, fitScaleOf, placeDimensions } from "./view-layout.ts";

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
  const ways = new Map<string, number>();
  let scale: Scale | undefined;
  let width = 0; // px: kept, since reading it between two drawings would lay the page out each time
  new ResizeObserver(([entry]) => {
    width = Math.round(entry!.contentRect.width);
  }).observe(board);

  function draw(view: View, plane: SheetPlane, holding: boolean) {
    if (width === 0) width = board.clientWidth;
    if (width === 0) return;
    if (!holding || !scale || scale.width !== width)
      scale = fitScaleOf(view, plane, options, { width, tallest: tallest() });
    caption.textContent = view.title;
    drawing.drawView(view, scale);
    const dimensions = chooseDimensions(view, width);
    const places = placeDimensions(dimensions, view, plane, scale, ways, holding);
    numbers.draw(dimensions, places, plane);
    drawing.drawDimensionLines(places);
  }

  return {
    element: html("figure", { class: `field field-${name}` }, board, caption),
    measure: () => {
      width = board.clientWidth;
    },
    draw,
    overlay: drawing.overlay,
    scale: () => scale,
    pixelsOf: (spot) => toPixels(scale!, spot),
    spotAt: (pixels) => toSheet(scale!, pixels),
  };
}
