// The bench steps under the drawing: which state of the stock the sheet shows, and the numbers of that step.

import { html } from "../page/elements.ts";
import { type FigureWords, type SheetPlane, STAGES, type StageName } from "../protocol.ts";
import { nameOf, type Style, toldText } from "../state/format.ts";
import { FIGURE_KEYS_OF, STAGE_WORDS } from "./stage-words.ts";

export interface Steps {
  readonly element: HTMLElement;
  show(plane: SheetPlane, stage: StageName, figures: Readonly<Record<string, FigureWords>>): void;
}

export function createSteps(goTo: (stage: StageName) => void): Steps {
  const choices = STAGES.map((stage, i) => {
    const input = html("input", { type: "radio", name: "stage", value: stage, id: `stage-${stage}` });
    input.addEventListener("change", () => goTo(stage));
    return {
      input,
      item: html(
        "li",
        {},
        input,
        html(
          "label",
          { for: `stage-${stage}` },
          html("span", { class: "step-number" }, String(i + 1)),
          STAGE_WORDS[stage].title,
        ),
      ),
    };
  });
  const words = html("p", { class: "step-words" });
  const numbers = html("dl", { class: "step-figures" });
  const element = html(
    "section",
    { class: "steps", "aria-labelledby": "steps-title" },
    html("h2", { id: "steps-title" }, "At the bench"),
    html("ol", { class: "stage-list" }, ...choices.map(({ item }) => item)),
    html("div", { class: "step" }, words, numbers),
  );
  return {
    element,
    show(plane, stage, figures) {
      for (const { input } of choices) input.checked = input.value === stage;
      words.textContent = STAGE_WORDS[stage].words;
      const style: Style = { units: plane.design.units, smallestFraction: plane.design.shop.smallestFraction };
      numbers.replaceChildren(
        ...FIGURE_KEYS_OF[stage].flatMap((key) => {
          const [value, row] = [plane.figures[key], figures[key]];
          if (value === undefined || !row) return [];
          return [
            html(
              "div",
              {},
              html("dt", {}, nameOf(key)),
              html("dd", { "data-figure": key, tabindex: 0 }, toldText(value, row.unit, style)),
            ),
          ];
        }),
      );
    },
  };
}
