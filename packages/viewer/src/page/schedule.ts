// The schedule: every parameter of the design in the table's order, so that what has no place on a view is still on the sheet.
import { valueAt } from "@lamplane/parameters/design";
import { type NumberRow, type Row, rowsOf, TABLE, UNIT_OF } from "@lamplane/parameters/table";
import { html } from "../elements.ts";
import type { SheetPlane } from "../protocol.ts";
import { type Hands, type NumberControl, numberControl } from "../sheet/control.ts";
import { nameOf, type Style } from "../state/format.ts";

export interface Schedule {
  readonly element: HTMLElement;
  show(plane: SheetPlane): void;
}

interface Line {
  readonly path: string;
  readonly row: Row;
  update(plane: SheetPlane, style: Style): void;
}

const SECTION_WORDS: Readonly<Record<string, string>> = {
  capIron: "cap iron",
  hold: "forces on the iron",
  wood: "wood and climate",
  shop: "the shop",
};

/** Made when it is first opened: it is long, and the first picture should not wait for it. */
export function createSchedule(hands: Hands): Schedule {
  const body = html("div", { class: "schedule-sections" });
  const element = html(
    "details",
    { class: "schedule", id: "schedule" },
    html("summary", {}, html("h2", {}, "Schedule of every figure")),
    body,
  );
  let lines: Line[] | undefined;
  let plane: SheetPlane | undefined;
  const show = (next: SheetPlane) => {
    plane = next;
    if (!element.open) return;
    lines ??= build(body, hands);
    const style: Style = { units: next.design.units, smallestFraction: next.design.shop.smallestFraction };
    for (const line of lines) line.update(next, style);
  };
  element.addEventListener("toggle", () => plane && show(plane));
  return { element, show };
}

function build(body: HTMLElement, hands: Hands): Line[] {
  const sections = new Map<string, { path: string; row: Row }[]>();
  for (const entry of rowsOf(TABLE)) {
    const section = entry.path.includes(".") ? entry.path.split(".")[0]! : "design";
    sections.set(section, [...(sections.get(section) ?? []), entry]);
  }
  return [...sections].flatMap(([section, rows]) => {
    const list = html("dl");
    const title = SECTION_WORDS[section] ?? nameOf(section);
    body.append(html("section", { class: "schedule-section" }, html("h3", {}, title), list));
    return rows.map(({ path, row }) => lineOf(list, section, path, row, hands));
  });
}

function lineOf(list: HTMLElement, section: string, path: string, row: Row, hands: Hands): Line {
  const short = nameOf(path.startsWith(`${section}.`) ? path.slice(section.length + 1) : path);
  const { element, update } =
    row.kind === "number"
      ? numberLine(path, row, hands)
      : row.kind === "choice"
        ? choiceLine(path, row, hands)
        : textLine(path, hands);
  list.append(html("div", {}, html("dt", {}, short), html("dd", {}, element)));
  return { path, row, update };
}

type Made = { element: HTMLElement; update: Line["update"] };

function numberLine(path: string, row: NumberRow, hands: Hands): Made {
  const control: NumberControl = numberControl(path, row, hands);
  const unit = UNIT_OF[row.quantity];
  const after = html("span", { class: "unit" });
  const element = html("span", { class: "schedule-number" }, control.element, after);
  return {
    element,
    update(plane, style) {
      const given = valueAt(plane.design, path);
      const value = typeof given === "number" ? given : plane.settled[path];
      element.classList.toggle("is-void", value === undefined);
      after.textContent = unit === "mm" ? (style.units === "in" ? "" : "mm") : unit === "°" ? "" : unit;
      const isUnused = value === undefined && given === "auto";
      const [isVoid, isLocked] = [value === undefined, isUnused || plane.locked.includes(path)];
      control.update({ value: value ?? row.min, given, style, unit, isVoid, isLocked });
    },
  };
}

function choiceLine(path: string, row: Extract<Row, { kind: "choice" }>, hands: Hands): Made {
  const element = html(
    "select",
    { "aria-label": nameOf(path), "data-parameter": path },
    ...row.choices.map((word) => html("option", { value: word }, word)),
  );
  element.addEventListener("change", () => hands.change([[path, element.value]], false));
  return {
    element,
    update(plane) {
      element.value = String(valueAt(plane.design, path));
    },
  };
}

function textLine(path: string, hands: Hands): Made {
  const element = html("input", {
    type: "text",
    class: "words",
    "aria-label": nameOf(path),
    "data-parameter": path,
    autocomplete: "off",
    spellcheck: "false",
  });
  element.addEventListener("change", () => hands.change([[path, element.value]], false));
  return {
    element,
    update(plane) {
      if (document.activeElement !== element) element.value = String(valueAt(plane.design, path));
    },
  };
}
