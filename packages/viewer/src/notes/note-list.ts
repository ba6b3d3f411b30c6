// The findings as a list of notes. While the hand is on a figure, notes keep their places: what is put right is crossed out,
// what is new comes last.
import type { Cure, FindingWords } from "@lamplane/bench/checks";
import { formatParameter } from "@lamplane/parameters/design";
import type { LengthStyle } from "@lamplane/parameters/units";
import { html } from "../elements.ts";
import type { FindingNote, RemediedFinding } from "../protocol/sheet-data.ts";
import { parameterName } from "../state/format.ts";
import { NO_SINGLE_FIX } from "../words/page.ts";

export interface VisibleNote {
  readonly code: string;
  readonly place: string;
  readonly element: HTMLElement;
  readonly severity: FindingNote["severity"];
}

interface ListedNote extends VisibleNote {
  readonly finding: FindingNote;
}

export interface NoteList {
  readonly element: HTMLElement;
  /** Notes now shown, in order: leader lines are drawn to them. */
  visible(): readonly VisibleNote[];
  show(findings: readonly FindingNote[], holding: boolean): void;
  /** The same findings with their cures, once they are found. */
  addCures(findings: readonly RemediedFinding[], style: LengthStyle): void;
}

interface NoteListHandlers {
  applyCure(cure: readonly Cure[]): void;
  /** The note that has the focus goes. */
  takeFocus(): void;
}

const SIGN = { stop: "✕", warning: "!", note: "i" } as const;

export function createNoteList({ applyCure, takeFocus }: NoteListHandlers): NoteList {
  const element = html("ol", { class: "note-list" });
  const notes = new Map<string, ListedNote>();

  function removeResolved(findings: readonly FindingNote[], holding: boolean) {
    const found = new Set(findings.map(({ code }) => code));
    for (const [code, note] of notes) {
      if (found.has(code)) note.element.classList.remove("is-resolved");
      else if (holding) note.element.classList.add("is-resolved");
      else {
        if (note.element.contains(document.activeElement)) takeFocus();
        note.element.remove();
        notes.delete(code);
      }
    }
  }

  function put(finding: FindingNote, holding: boolean) {
    const known = notes.get(finding.code);
    const note = known?.element ?? createNote(finding);
    const isSame = known !== undefined && wordsKey(known.finding) === wordsKey(finding);
    fillNote(note, finding, holding || isSame);
    notes.set(finding.code, { ...finding, element: note, finding });
    if (!known) element.append(note);
  }

  function sort(findings: readonly FindingNote[]) {
    findings.forEach(({ code }, i) => {
      const note = notes.get(code);
      if (!note) return;
      notes.delete(code);
      notes.set(code, note);
      if (element.children[i] !== note.element) element.insertBefore(note.element, element.children[i] ?? null);
    });
  }

  return {
    element,
    visible: () => [...notes.values()],
    show(findings, holding) {
      removeResolved(findings, holding);
      for (const finding of findings) put(finding, holding);
      if (!holding) sort(findings);
    },
    addCures(findings, style) {
      for (const { code, cure } of findings) {
        const place = notes.get(code)?.element.querySelector(".cures");
        const words = cure ? cureText(cure, style) : NO_SINGLE_FIX;
        if (!place || place.textContent === words) continue;
        place.replaceChildren(cure ? createCure(words, () => applyCure(cure)) : words);
      }
    },
  };
}

const createNote = ({ code }: FindingNote): HTMLElement =>
  html(
    "li",
    { class: "note", "data-code": code },
    html("span", { class: "sign", "aria-hidden": "true" }),
    html("strong", { class: "check-name" }),
    html("span", { class: "figures" }),
    html("span", { class: "cures" }),
    html("p", { class: "advice" }),
    html("p", { class: "source" }),
  );

function fillNote(note: HTMLElement, finding: FindingNote, keepsCures: boolean) {
  note.dataset.severity = finding.severity;
  note.querySelector(".sign")!.textContent = SIGN[finding.severity];
  for (const [part, text] of Object.entries(noteTexts(finding))) note.querySelector(`.${part}`)!.textContent = text;
  if (!keepsCures) note.querySelector(".cures")!.replaceChildren();
}

/** What a note says in each of its places. */
const noteTexts = ({ words, source }: FindingNote) => ({
  "check-name": words.name,
  figures: [figuresText(words), words.verdict].filter(Boolean).join(": "),
  advice: words.advice,
  source: `Source: ${source}.`,
});

export const figuresText = ({ value, limit }: FindingWords): string =>
  [value, limit && `(${limit})`].filter(Boolean).join(" ");

const wordsKey = ({ words }: FindingNote): string => JSON.stringify(words);

function createCure(words: string, apply: () => void): HTMLElement {
  const button = html("button", { type: "button", class: "cure" }, words);
  button.addEventListener("click", apply);
  return button;
}

const cureText = (cure: readonly Cure[], style: LengthStyle): string =>
  `Fix: ${cure.map(({ parameter, value }) => `${parameterName(parameter)} ${formatParameter(parameter, value, style)}`).join(", ")}`;
