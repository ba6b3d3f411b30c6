// What is done at the step that is shown, beside the drawing: its task and picture, its numbers, its blanks to fill in.
import { rowAt } from "@lamplane/parameters/design";
import type { NumberRow } from "@lamplane/parameters/table";
import type { LengthStyle } from "@lamplane/parameters/units";
import { html } from "../elements.ts";
import { drawingWidthIn, pictureDrawing } from "../plots/plot-field.ts";
import { type StageName, stageLabel } from "../protocol/build-steps.ts";
import type { BenchStep, Guide, SheetPlane, SheetWords } from "../protocol/sheet-data.ts";
import { type ControlHandlers, createNumberControl, type NumberControl } from "../sheet/number-control.ts";
import { parameterName } from "../state/format.ts";
import { STRIP } from "../words/page.ts";

export interface Steps {
  readonly element: HTMLElement;
  /** Stands by itself beside the body. */
  readonly picture: HTMLElement;
  /** mm that the step's picture has; undefined while the steps are not shown. */
  pictureWidth(): number | undefined;
  show(words: SheetWords, plane: SheetPlane, stage: StageName): void;
  /** What comes a moment later: the step's picture, and the words of steps at which nothing is measured. */
  showGuide(guide: Guide): void;
}

const ROUND_PICTURE = 48; // px: its padding, as in the style sheet, and room for letters that run wide

export function createSteps(endBuild: () => void, handlers: ControlHandlers): Steps {
  const title = html("h2", { id: "steps-title" });
  const list = html("ol", { class: "step-list" });
  const picture = html("section", { class: "plot step-picture", "aria-label": STRIP.picture });
  const lost = html("ul", { class: "lost", "aria-label": STRIP.changes });
  const back = html("button", { type: "button", class: "back-to-plane" }, STRIP.back);
  back.addEventListener("click", endBuild);
  const measures = new Map<string, MeasuredBlank>();
  let shown: string | undefined;
  let shownStage: StageName | undefined;
  const element = html(
    "section",
    { class: "steps", "aria-labelledby": "steps-title", tabindex: 0 },
    html("div", { class: "steps-head" }, title, back),
    list,
    lost,
  );
  return {
    element,
    picture,
    pictureWidth: () => (picture.clientWidth === 0 ? undefined : drawingWidthIn(picture.clientWidth - ROUND_PICTURE)),
    show({ bench, lost: otherwise }, plane, stage) {
      const style = plane.design;
      const key = `${stage}:${bench.map(({ measures: m }) => m.map(({ path }) => path)).join()}`;
      if (stage !== shownStage) {
        picture.replaceChildren();
        element.scrollTop = 0;
      }
      shownStage = stage;
      title.textContent = stageLabel(stage);
      if (shown !== key) {
        measures.clear();
        list.replaceChildren(...bench.map((step) => createStepItem(step, measures, handlers)));
        shown = key;
      }
      bench.forEach((step, i) => {
        updateStepItem(list.children[i] as HTMLElement, step, measures, style);
      });
      lost.replaceChildren(...otherwise.map((words) => html("li", {}, words)));
      lost.hidden = otherwise.length === 0;
    },
    showGuide(guide) {
      if (guide.stage !== shownStage) return;
      picture.replaceChildren(...(guide.picture ? [pictureDrawing(guide.picture)] : []));
      if (measures.size > 0 || list.querySelector("[data-figure]")) return;
      list.replaceChildren(...guide.steps.map(guideItem));
      shown = undefined;
    },
  };
}

/** A step of the job that is none of the bench's: in the traveller's words. */
const guideItem = ({ title, task, numbers }: Guide["steps"][number]): HTMLElement =>
  html(
    "li",
    {},
    html("h3", {}, title),
    html("p", {}, task),
    html(
      "dl",
      { class: "step-figures" },
      ...numbers.map(({ label, value }) => html("div", {}, html("dt", {}, label), html("dd", {}, value))),
    ),
  );

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
    return html("div", {}, html("dt", {}, parameterName(path)), html("dd", {}, control.element, expected, doubt));
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
) {
  item.classList.toggle("is-done", step.isDone);
  item.querySelector(".done-mark")!.textContent = step.isDone ? " ✓ done" : "";
  item
    .querySelector(".step-figures")!
    .replaceChildren(
      ...step.figures.map(({ key, name, text }) =>
        html("div", {}, html("dt", {}, name), html("dd", { "data-figure": key, tabindex: 0 }, text)),
      ),
    );
  for (const { path, value, expected, unit, wanted, doubt } of step.measures) {
    const { control, expected: words, doubt: beside } = measures.get(path)!;
    const expectation = doubt === undefined ? `expected ${wanted}` : ""; // a doubt holds it too
    control.update({ value: value ?? expected ?? 0, planned: value, style, unit, isVoid: value === undefined });
    words.textContent = expectation;
    if (beside.textContent !== (doubt ?? "")) beside.textContent = doubt ?? "";
  }
}
