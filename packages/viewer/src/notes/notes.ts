// The checks: one quiet mark that opens on a press. What fails is named beside it with its remedy, and stands on the drawing at
// its place. While the hand is on a figure, notes keep their places: what is put right is crossed out, what is new comes last.
import type { Cure, FindingWords } from "@lamplane/bench/checks";
import { formatParameter } from "@lamplane/parameters/design";
import type { LengthStyle } from "@lamplane/parameters/units";
import { html } from "../elements.ts";
import type { FindingNote, RemediedFinding, SheetWords } from "../protocol/sheet-data.ts";
import { parameterName } from "../state/format.ts";
import { CHECKS_MARK, NO_SINGLE_FIX, SHEET } from "../words/page.ts";

export interface VisibleNote {
  readonly code: string;
  readonly place: string;
  readonly element: HTMLElement;
  readonly severity: FindingNote["severity"];
}

export interface Notes {
  readonly element: HTMLElement;
  /** Notes now shown, in order: leader lines are drawn to them. */
  visible(): readonly VisibleNote[];
  /** Says what else has changed by itself; "" takes it back. */
  announce(words: string): void;
  show(words: SheetWords, holding: boolean): void;
  /** The same findings with their cures, once they are found. */
  addCures(findings: readonly RemediedFinding[], style: LengthStyle): void;
}

const SIGN = { stop: "✕", warning: "!", note: "i" } as const;

/** @param opened called when the list is opened or closed: what stands under it moves */
export function createNotes(applyCure: (cure: readonly Cure[]) => void, opened: () => void): Notes {
  const list = html("ol", { class: "note-list" });
  const mark = html("button", {
    type: "button",
    class: "verdict",
    "aria-expanded": "false",
    "aria-controls": "passed",
  });
  const status = html("p", { class: "verdict-status", role: "status" });
  const passed = html("ul", { class: "passed-list", id: "passed", hidden: true });
  const announcement = html("p", { class: "announcement", role: "status" });
  const element = html(
    "section",
    { class: "notes", "aria-label": SHEET.checks },
    mark,
    announcement,
    status,
    list,
    passed,
  );
  const items = new Map<string, VisibleNote & { finding: FindingNote }>();
  mark.addEventListener("click", () => {
    passed.hidden = !passed.hidden;
    mark.setAttribute("aria-expanded", String(!passed.hidden));
    element.classList.toggle("is-open", !passed.hidden);
    opened();
  });

  return { element, visible: () => [...items.values()], show, addCures, announce: say };

  function say(words: string) {
    if (announcement.textContent !== words) announcement.textContent = words;
  }

  function show({ findings, passed: sound }: SheetWords, holding: boolean) {
    const found = new Map(findings.map((finding) => [finding.code, finding]));
    for (const [code, item] of items) {
      if (found.has(code)) item.element.classList.remove("is-resolved");
      else if (holding) item.element.classList.add("is-resolved");
      else {
        if (item.element.contains(document.activeElement)) mark.focus(); // the remedy's button goes with its note
        item.element.remove();
        items.delete(code);
      }
    }
    for (const finding of findings) put(finding, holding);
    if (!holding) inOrder(findings);
    const stops = findings.filter(({ severity }) => severity === "stop").length;
    const words = checksMark(sound.length, findings.length, stops);
    if (mark.textContent !== words) mark.textContent = words;
    if (status.textContent !== words && !holding) status.textContent = words;
    mark.dataset.state = stops > 0 ? "stop" : findings.length > 0 ? "warning" : "passed";
    if (!holding)
      passed.replaceChildren(...sound.map(({ words }) => html("li", {}, `${words.name} ${figuresText(words)}`.trim())));
  }

  function put(finding: FindingNote, holding: boolean) {
    const known = items.get(finding.code);
    const element = known?.element ?? createNote(finding);
    element.dataset.severity = finding.severity;
    element.querySelector(".sign")!.textContent = SIGN[finding.severity];
    for (const [part, text] of Object.entries(noteTexts(finding)))
      element.querySelector(`.${part}`)!.textContent = text;
    const isSame = known !== undefined && wordsKey(known.finding) === wordsKey(finding);
    if (!holding && !isSame) element.querySelector(".cures")!.replaceChildren();
    items.set(finding.code, { code: finding.code, place: finding.place, element, severity: finding.severity, finding });
    if (!known) list.append(element);
  }

  function inOrder(findings: readonly FindingNote[]) {
    const sorted = findings.map(({ code }) => items.get(code)!);
    items.clear();
    sorted.forEach((item, i) => {
      items.set(item.code, item);
      if (list.children[i] !== item.element) list.insertBefore(item.element, list.children[i] ?? null);
    });
  }

  function addCures(findings: readonly RemediedFinding[], style: LengthStyle) {
    for (const { code, cure } of findings) {
      const place = items.get(code)?.element.querySelector(".cures");
      if (!place) continue;
      const words = cure ? cureText(cure, style) : NO_SINGLE_FIX;
      if (place.textContent === words) continue;
      if (!cure) place.replaceChildren(words);
      else {
        const button = html("button", { type: "button", class: "cure" }, words);
        button.addEventListener("click", () => applyCure(cure));
        place.replaceChildren(button);
      }
    }
  }
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

/** What a note says in each of its places. */
const noteTexts = ({ words, source }: FindingNote) => ({
  "check-name": words.name,
  figures: [figuresText(words), words.verdict].filter(Boolean).join(": "),
  advice: words.advice,
  source: `Source: ${source}.`,
});

const figuresText = ({ value, limit }: FindingWords): string =>
  [value, limit && `(${limit})`].filter(Boolean).join(" ");

const wordsKey = ({ words }: FindingNote): string => JSON.stringify(words);

const cureText = (cure: readonly Cure[], style: LengthStyle): string =>
  `Fix: ${cure.map(({ parameter, value }) => `${parameterName(parameter)} ${formatParameter(parameter, value, style)}`).join(", ")}`;

/** The quiet mark of the checks, by how many passed, how many are to look at, and how many of those stop the build. */
function checksMark(passed: number, findings: number, stops: number): string {
  const all = findings + passed;
  if (findings === 0) return CHECKS_MARK.passed(passed);
  return stops === 0 ? CHECKS_MARK.warnings({ findings, all }) : CHECKS_MARK.failures({ stops, all });
}
