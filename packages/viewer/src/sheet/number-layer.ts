// The numbers of one view, as elements over its drawing: made when they are first shown, kept while they are.

import { rowAt } from "@lamplane/parameters/design";
import type { NumberRow } from "@lamplane/parameters/table";
import type { LengthStyle } from "@lamplane/parameters/units";
import { html } from "../elements.ts";
import type { SheetPlane } from "../protocol/sheet-data.ts";
import type { Dimension } from "../protocol/view.ts";
import { formatOnDrawing } from "../state/format.ts";
import type { LaidDimension } from "./layout.ts";
import { autoPosition } from "./number-box.ts";
import { type ControlHandlers, createNumberControl, type NumberControl } from "./number-control.ts";

export interface NumberLayer {
  readonly element: HTMLElement;
  /** Whether the cursor is in a dimension's number. */
  hasFocus(id: string): boolean;
  draw(dimensions: readonly PlacedDimension[], plane: SheetPlane): void;
}

/** A dimension, and where its number stands. */
export interface PlacedDimension {
  readonly dimension: Dimension;
  readonly place: LaidDimension;
}

type ShownNumber = NumberControl | { readonly element: HTMLElement; readonly path?: undefined };

export function createNumberLayer(handlers: ControlHandlers): NumberLayer {
  const element = html("div", { class: "numbers" });
  const shown = new Map<string, ShownNumber>();
  const add = (dimension: Dimension): ShownNumber => {
    const made = createNumber(dimension, handlers);
    shown.set(dimension.id, made);
    element.append(made.element);
    return made;
  };
  return {
    element,
    hasFocus: (id) => shown.get(id)?.element.contains(document.activeElement) === true,
    draw(dimensions, plane) {
      for (const { dimension, place } of dimensions) {
        const number = shown.get(dimension.id) ?? add(dimension);
        updateNumber(number, dimension, plane, plane.design);
        setPosition(number.element, place, autoPosition(dimension.shape));
      }
      const ids = new Set(dimensions.map(({ dimension }) => dimension.id));
      for (const [id, number] of shown) {
        if (ids.has(id)) continue;
        number.element.remove();
        shown.delete(id);
      }
    },
  };
}

function createNumber({ parameter, figure, before }: Dimension, handlers: ControlHandlers): ShownNumber {
  if (parameter) return createNumberControl(parameter, rowAt(parameter) as NumberRow, handlers, before);
  return {
    element: html("span", { class: "number reference", tabindex: 0, role: "note", "data-figure": figure }),
  };
}

function updateNumber(number: ShownNumber, dimension: Dimension, plane: SheetPlane, style: LengthStyle) {
  const { value, unit, before = "" } = dimension;
  if (number.path === undefined) {
    const text = `${before}(${formatOnDrawing(value, unit, style)})`;
    if (number.element.textContent !== text) number.element.textContent = text;
    return;
  }
  const { path } = number;
  const planned = plane.solved[path] === undefined ? value : "auto";
  number.update({ value, unit, style, planned, isLocked: plane.locked.includes(path) });
}

function setPosition(element: HTMLElement, { number, hold }: LaidDimension, kind: string) {
  const across = hold === "middle" ? "-50%" : hold === "left" ? "0" : "-100%";
  const transform = `translate(${number.x.toFixed(1)}px, ${number.y.toFixed(1)}px) translate(${across}, -50%)`;
  if (element.style.transform !== transform) element.style.transform = transform;
  if (element.dataset.kind !== kind) element.dataset.kind = kind;
}
