// The checks: one quiet mark that opens on a press. What fails is named beside it with its remedy, and stands on the drawing at
// its place.
import type { Cure } from "@lamplane/bench/checks";
import { html } from "../elements.ts";
import type { FindingNote, SheetWords } from "../protocol/sheet-data.ts";
import { CHECKS_MARK, SHEET } from "../words/page.ts";
import { createNoteList, figuresText, type NoteList } from "./note-list.ts";

export interface Notes extends Pick<NoteList, "element" | "visible" | "addCures"> {
  /** Says what else has changed by itself; "" takes it back. */
  announce(words: string): void;
  show(words: SheetWords, holding: boolean): void;
}

/** @param opened called when the list is opened or closed: what stands under it moves */
export function createNotes(applyCure: (cure: readonly Cure[]) => void, opened: () => void): Notes {
  const mark = html("button", {
    type: "button",
    class: "verdict",
    "aria-expanded": "false",
    "aria-controls": "passed",
  });
  const status = html("p", { class: "verdict-status", role: "status" });
  const passed = html("ul", { class: "passed-list", id: "passed", hidden: true });
  const announcement = html("p", { class: "announcement", role: "status" });
  const list = createNoteList({ applyCure, takeFocus: () => mark.focus() });
  const attributes = { class: "notes", "aria-label": SHEET.checks };
  const element = html("section", attributes, mark, announcement, status, list.element, passed);
  mark.addEventListener("click", () => {
    passed.hidden = !passed.hidden;
    mark.setAttribute("aria-expanded", String(!passed.hidden));
    element.classList.toggle("is-open", !passed.hidden);
    opened();
  });

  return {
    element,
    visible: list.visible,
    addCures: list.addCures,
    announce: (words) => setText(announcement, words),
    show({ findings, passed: sound }, holding) {
      list.show(findings, holding);
      const { state, words } = verdictOf(findings, sound.length);
      mark.dataset.state = state;
      setText(mark, words);
      if (holding) return;
      setText(status, words);
      passed.replaceChildren(...sound.map(({ words }) => html("li", {}, `${words.name} ${figuresText(words)}`.trim())));
    },
  };
}

/** Leaves a text that is the same alone: a live region speaks each time that it is written. */
function setText(element: HTMLElement, words: string) {
  if (element.textContent !== words) element.textContent = words;
}

/** The quiet mark of the checks, by how many passed, how many are to look at, and how many of those stop the build. */
function verdictOf(findings: readonly FindingNote[], passed: number) {
  const stops = findings.filter(({ severity }) => severity === "stop").length;
  const all = findings.length + passed;
  if (findings.length === 0) return { state: "passed", words: CHECKS_MARK.passed(passed) };
  if (stops === 0) return { state: "warning", words: CHECKS_MARK.warnings({ findings: findings.length, all }) };
  return { state: "stop", words: CHECKS_MARK.failures({ stops, all }) };
}
