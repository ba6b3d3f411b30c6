// The first line of the page: the maker's iron. What is typed here makes the plane.
import { rowAt, valueAt } from "@lamplane/parameters/design";
import type { NumberRow } from "@lamplane/parameters/table";
import { html } from "../elements.ts";
import type { SheetPlane } from "../protocol/sheet-data.ts";
import { type ControlHandlers, createNumberControl } from "../sheet/number-control.ts";
import { MY_IRON } from "../words/page.ts";

export interface IronLine {
  readonly element: HTMLElement;
  show(plane: SheetPlane): void;
}

const PATHS = ["iron.width", "iron.thickness"] as const;

export function createIronLine(handlers: ControlHandlers, switchUnits: (units: "mm" | "in") => void): IronLine {
  const [width, thickness] = PATHS.map((path) => createNumberControl(path, rowAt(path) as NumberRow, handlers));
  const units = html("select", { "aria-label": "units", "data-parameter": "units" });
  units.append(...["mm", "in"].map((unit) => html("option", { value: unit }, unit)));
  units.addEventListener("change", () => switchUnits(units.value as "mm" | "in"));
  const element = html("p", { class: "my-iron" });
  element.append(`${MY_IRON} `, width!.element, " × ", thickness!.element, " ", units);
  return {
    element,
    show(plane) {
      const style = plane.design;
      units.value = style.units;
      for (const control of [width!, thickness!]) {
        const value = valueAt(plane.design, control.path) as number;
        control.update({ value, planned: value, style, unit: "mm", isLocked: plane.locked.includes(control.path) });
      }
    },
  };
}
