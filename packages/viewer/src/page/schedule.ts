// The schedule: every parameter of the design in the table's order, so that what has no place on a view is still on the sheet.

import { valueAt } from "@lamplane/parameters/design";
import { type NumberRow, type Row, rowsOf, TABLE, UNIT_OF } from "@lamplane/parameters/table";
import type { LengthStyle } from "@lamplane/parameters/units";
import { html } from "../elements.ts";
import type { SheetPlane } from "../protocol/sheet-data.ts";
import { type ControlHandlers, createNumberControl, type NumberControl } from "../sheet/number-control.ts";
import { keyInWords, parameterName } from "../state/format.ts";
import { SCHEDULE } from "../words/page.ts";

export interface Schedule {
  readonly element: HTMLElement;
  show(plane: SheetPlane): void;
}

interface ScheduleLine {
  update(plane: SheetPlane, style: LengthStyle): void;
}

/** Made when it is first opened: it is long, and the first picture should not wait for it. */
export function createSchedule(handlers: ControlHandlers): Schedule {
  const body = html("div", { class: "schedule-sections" });
  const element = html(
    "details",
    { class: "schedule", id: "schedule" },
    html("summary", {}, html("h2", {}, SCHEDULE.title)),
    body,
  );
  let lines: ScheduleLine[] | undefined;
  let plane: SheetPlane | undefined;
  const show = (next: SheetPlane) => {
    plane = next;
    if (!element.open) return;
    lines ??= buildLines(body, handlers);
    const style = next.design;
    for (const line of lines) line.update(next, style);
  };
  element.addEventListener("toggle", () => plane && show(plane));
  return { element, show };
}

function buildLines(body: HTMLElement, handlers: ControlHandlers): ScheduleLine[] {
  const sections = new Map<string, { path: string; row: Row }[]>();
  for (const entry of rowsOf(TABLE)) {
    const section = entry.path.includes(".") ? entry.path.split(".")[0]! : "design";
    sections.set(section, [...(sections.get(section) ?? []), entry]);
  }
  return [...sections].flatMap(([section, rows]) => {
    const list = html("dl");
    const title = SCHEDULE.sections[section] ?? keyInWords(section);
    body.append(html("section", { class: "schedule-section" }, html("h3", {}, title), list));
    return rows.map(({ path, row }) => createLine(list, path, row, handlers));
  });
}

function createLine(list: HTMLElement, path: string, row: Row, handlers: ControlHandlers): ScheduleLine {
  const { element, update } =
    row.kind === "number"
      ? createNumberLine(path, row, handlers)
      : row.kind === "choice"
        ? createChoiceLine(path, row, handlers)
        : createTextLine(path, handlers);
  list.append(html("div", {}, html("dt", {}, parameterName(path)), html("dd", {}, element)));
  return { update };
}

type LineControl = { element: HTMLElement; update: ScheduleLine["update"] };

function createNumberLine(path: string, row: NumberRow, handlers: ControlHandlers): LineControl {
  const control: NumberControl = createNumberControl(path, row, handlers);
  const unit = UNIT_OF[row.quantity];
  const after = html("span", { class: "unit" });
  const element = html("span", { class: "schedule-number" }, control.element, after);
  return {
    element,
    update(plane, style) {
      const given = valueAt(plane.design, path);
      const value = typeof given === "number" ? given : plane.solved[path];
      after.textContent = unit === "mm" ? (style.units === "in" ? "" : "mm") : unit === "°" ? "" : unit;
      const isUnused = value === undefined && given === "auto";
      const [isVoid, isLocked] = [value === undefined, isUnused || plane.locked.includes(path)];
      control.update({ value: value ?? row.min, planned: given, style, unit, isVoid, isLocked });
    },
  };
}

function createChoiceLine(path: string, row: Extract<Row, { kind: "choice" }>, handlers: ControlHandlers): LineControl {
  const element = html(
    "select",
    { "aria-label": parameterName(path), "data-parameter": path },
    ...row.choices.map((word) => html("option", { value: word }, word)),
  );
  element.addEventListener("change", () => handlers.change([[path, element.value]], false));
  return {
    element,
    update(plane) {
      element.value = String(valueAt(plane.design, path));
    },
  };
}

function createTextLine(path: string, handlers: ControlHandlers): LineControl {
  const element = html("input", {
    type: "text",
    class: "words",
    "aria-label": parameterName(path),
    "data-parameter": path,
    autocomplete: "off",
    spellcheck: "false",
  });
  element.addEventListener("change", () => handlers.change([[path, element.value]], false));
  return {
    element,
    update(plane) {
      if (document.activeElement !== element) element.value = String(valueAt(plane.design, path));
    },
  };
}
