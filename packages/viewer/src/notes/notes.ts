// Checks as notes in the margin, each with a number that stands at its place on the drawing too; a cure is a button.
// While the hand is on a figure, notes keep their places: what is mended is crossed out, what is new comes last.

import type { Cure, FormattedFinding } from "@lamplane/bench/checks";
import { rowAt } from "@lamplane/parameters/design";
import { UNIT_OF } from "@lamplane/parameters/table";
import { formatValue, type LengthStyle } from "@lamplane/parameters/units";
import { html } from "../elements.ts";
import type { SheetWords } from "../protocol/sheet-data.ts";
import { parameterName } from "../state/format.ts";

export interface VisibleNote {
  readonly code: string;
  readonly place: string;
  readonly element: HTMLElement;
  readonly severity: FormattedFinding["severity"];
}

export interface Notes {
  readonly element: HTMLElement;
  /** Notes now shown, in order: leader lines are drawn to them. */
  visible(): readonly VisibleNote[];
  show(words: SheetWords, holding: boolean): void;
  /** The same findings with their cures, once they are found. */
  addCures(findings: readonly FormattedFinding[], style: LengthStyle): void;
}

const WIDE = 1320; // px: as in the style sheet, notes have a column of their own
const SIGN = { stop: "✕", warning: "!", note: "i" } as const;
const WORD = { stop: "will not work", warning: "look at this", note: "worth knowing" } as const;

export function createNotes(applyCure: (cure: readonly Cure[]) => void): Notes {
  const list = html("ol", { class: "note-list" });
  const verdict = html("p", { class: "verdict", role: "status" });
  const passed = html("ul", { class: "passed-list" });
  const passedCount = html("summary", {});
  const scroll = html(
    "div",
    { class: "note-scroll", tabindex: 0, role: "group", "aria-label": "Checks" },
    list,
    html("details", { class: "passed", open: innerWidth > WIDE }, passedCount, passed),
  );
  const element = html("section", { class: "notes", "aria-labelledby": "notes-title" });
  element.append(html("h2", { id: "notes-title" }, "Notes"), verdict, scroll);
  const items = new Map<string, VisibleNote & { finding: FormattedFinding }>();

  return { element, visible: () => [...items.values()], show, addCures };

  function show({ findings, passed: sound }: SheetWords, holding: boolean) {
    const found = new Map(findings.map((finding) => [finding.code, finding]));
    for (const [code, item] of items) {
      if (found.has(code)) item.element.classList.remove("is-resolved");
      else if (holding) item.element.classList.add("is-resolved");
      else {
        item.element.remove();
        items.delete(code);
      }
    }
    for (const finding of findings) put(finding, holding);
    if (!holding) inOrder(findings);
    const stops = findings.filter(({ severity }) => severity === "stop").length;
    verdict.textContent =
      findings.length === 0
        ? `All ${sound.length} checks passed.`
        : `${findings.length} of ${findings.length + sound.length} checks ask for attention${stops > 0 ? `; ${stops} must be mended before building` : ""}.`;
    verdict.dataset.stops = String(stops);
    if (!holding) {
      passed.replaceChildren(...sound.map(({ message }) => html("li", {}, message)));
      passedCount.textContent = `${sound.length} passed, with their figures`;
    }
  }

  function put(finding: FormattedFinding, holding: boolean) {
    const known = items.get(finding.code);
    const element = known?.element ?? html("li", { class: "note", "data-code": finding.code });
    element.dataset.severity = finding.severity;
    const cures = element.querySelector(".cures") ?? html("p", { class: "cures" });
    if (!holding) cures.replaceChildren();
    element.replaceChildren(
      html("span", { class: "sign", "aria-hidden": "true" }, SIGN[finding.severity]),
      html("strong", {}, WORD[finding.severity]),
      html("p", {}, finding.message),
      cures,
      html("p", { class: "source" }, `Source: ${finding.source}.`),
    );
    items.set(finding.code, { code: finding.code, place: finding.place, element, severity: finding.severity, finding });
    if (!known) list.append(element);
  }

  function inOrder(findings: readonly FormattedFinding[]) {
    const sorted = findings.map(({ code }) => items.get(code)!);
    items.clear();
    for (const item of sorted) {
      items.set(item.code, item);
      list.append(item.element);
    }
  }

  function addCures(findings: readonly FormattedFinding[], style: LengthStyle) {
    for (const { code, cure } of findings) {
      const place = items.get(code)?.element.querySelector(".cures");
      if (!place) continue;
      if (!cure) place.replaceChildren("No single figure mends this.");
      else {
        const button = html("button", { type: "button", class: "cure" }, cureText(cure, style));
        button.addEventListener("click", () => applyCure(cure));
        place.replaceChildren(button);
      }
    }
  }
}

const cureText = (cure: readonly Cure[], style: LengthStyle): string =>
  `Mend: ${cure.map(({ parameter, value }) => `${parameterName(parameter)} ${formatCureValue(parameter, value, style)}`).join(", ")}`;

function formatCureValue(path: string, value: number | string, style: LengthStyle): string {
  const row = rowAt(path);
  return typeof value === "number" && row.kind === "number"
    ? formatValue(value, UNIT_OF[row.quantity], style)
    : String(value);
}
