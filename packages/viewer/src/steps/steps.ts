// The bench steps under the drawing: which state of the stock the sheet shows, what is done to come to it, what was measured.

import { rowAt } from "@lamplane/parameters/design";
import type { NumberRow } from "@lamplane/parameters/table";
import { formatValue, type LengthStyle } from "@lamplane/parameters/units";
import { html } from "../elements.ts";
import {
  type BenchStep,
  type FigureWords,
  type SheetPlane,
  type SheetWords,
  STAGES,
  type StageName,
} from "../protocol/sheet-data.ts";
import { type ControlHandlers, createNumberControl, type NumberControl } from "../sheet/number-control.ts";
import { figureName } from "../state/format.ts";

export interface Steps {
  readonly element: HTMLElement;
  show(words: SheetWords, plane: SheetPlane, stage: StageName, figures: Readonly<Record<string, FigureWords>>): void;
}

const STAGE_WORDS: Readonly<Record<StageName, string>> = {
  billet: "billet",
  core: "core cut",
  bed: "bed trued",
  glued: "glued",
  trued: "trued",
  shaped: "shaped",
};

export function createSteps(goTo: (stage: StageName) => void, handlers: ControlHandlers): Steps {
  const choices = STAGES.map((stage, i) => createStageChoice(stage, i, goTo));
  const list = html("ol", { class: "step-list" });
  const lost = html("ul", { class: "lost", "aria-label": "What came out otherwise" });
  const measures = new Map<string, MeasuredBlank>();
  let shown: string | undefined;
  const element = html(
    "section",
    { class: "steps", "aria-labelledby": "steps-title" },
    html("h2", { id: "steps-title" }, "At the bench"),
    html("ol", { class: "stage-list" }, ...choices.map(({ item }) => item)),
    list,
    lost,
  );
  return {
    element,
    show({ bench, lost: otherwise }, plane, stage, figures) {
      for (const { input } of choices) input.checked = input.value === stage;
      const style = plane.design;
      const key = `${stage}:${bench.map(({ measures: m }) => m.map(({ path }) => path)).join()}`;
      if (shown !== key) {
        measures.clear();
        list.replaceChildren(...bench.map((step) => createStepItem(step, measures, handlers)));
        shown = key;
      }
      bench.forEach((step, i) => {
        updateStepItem(list.children[i] as HTMLElement, step, measures, style, figures);
      });
      lost.replaceChildren(...otherwise.map((words) => html("li", {}, words)));
      lost.hidden = otherwise.length === 0;
    },
  };
}

function createStageChoice(stage: StageName, i: number, goTo: (stage: StageName) => void) {
  const input = html("input", { type: "radio", name: "stage", value: stage, id: `stage-${stage}` });
  input.addEventListener("change", () => goTo(stage));
  const number = html("span", { class: "step-number" }, String(i + 1));
  return { input, item: html("li", {}, input, html("label", { for: `stage-${stage}` }, number, STAGE_WORDS[stage])) };
}

interface MeasuredBlank {
  readonly control: NumberControl;
  readonly expected: HTMLElement;
  readonly doubt: HTMLElement;
}

/** The task with a table for its figures and a blank to fill in for everything that is measured. */
function createStepItem(
  { title, task, measures: blanks }: BenchStep,
  measures: Map<string, MeasuredBlank>,
  handlers: ControlHandlers,
) {
  const lines = blanks.map(({ path }) => {
    const control = createNumberControl(path, rowAt(path) as NumberRow, handlers);
    const expected = html("span", { class: "expected" });
    const doubt = html("span", { class: "doubt", role: "status" });
    measures.set(path, { control, expected, doubt });
    return html(
      "div",
      {},
      html("dt", {}, `measured ${figureName(path.replace("measured.", ""))}`),
      html("dd", {}, control.element, expected, doubt),
    );
  });
  return html(
    "li",
    {},
    html("h3", {}, title, html("span", { class: "done-mark" })),
    html("p", {}, task),
    html("dl", { class: "step-figures" }),
    ...(lines.length > 0 ? [html("dl", { class: "step-measures" }, ...lines)] : []),
  );
}

function updateStepItem(
  item: HTMLElement,
  step: BenchStep,
  measures: ReadonlyMap<string, MeasuredBlank>,
  style: LengthStyle,
  figures: Readonly<Record<string, FigureWords>>,
) {
  item.classList.toggle("is-done", step.isDone);
  item.querySelector(".done-mark")!.textContent = step.isDone ? " ✓ done" : "";
  item.querySelector(".step-figures")!.replaceChildren(
    ...step.figures.map(({ key, value }) => {
      const text = formatValue(value, figures[key]?.unit ?? "mm", style);
      return html("div", {}, html("dt", {}, figureName(key)), html("dd", { "data-figure": key, tabindex: 0 }, text));
    }),
  );
  for (const { path, value, expected, unit, wanted, doubt } of step.measures) {
    const { control, expected: words, doubt: beside } = measures.get(path)!;
    const expectation = doubt === undefined ? `expected ${wanted}` : ""; // a doubt holds it too
    control.update({ value: value ?? expected ?? 0, planned: value, style, unit, isVoid: value === undefined });
    words.textContent = expectation;
    if (beside.textContent !== (doubt ?? "")) beside.textContent = doubt ?? "";
  }
}
