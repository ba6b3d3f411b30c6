// A number pad for gloves: whole numbers, decimals, and in inches the fractions of a rule; a keyboard types into the same line.
import { formatValue, type LengthStyle, parseNumber } from "@lamplane/parameters/units";
import { html } from "../elements.ts";
import type { BenchAnswer, BenchBlank } from "../protocol/bench-build.ts";
import { BENCH, PAD } from "../words/bench.ts";
import { commandButton } from "./command-button.ts";

export interface PadRequest {
  readonly blank: BenchBlank;
  readonly style: LengthStyle;
  /** @param value undefined takes the value back */
  enter(value: number | undefined, isConfirmed: boolean): Promise<BenchAnswer>;
}

const PAD_WORDS = "pad-words";
const ROWS = [
  ["7", "8", "9"],
  ["4", "5", "6"],
  ["1", "2", "3"],
];
/** Divisions of a rule, and what decimals and any other fraction are written with. */
const FRACTIONS = [".", "/2", "/4", "/8", "/", "/16", "/32", "/64"];

/** Opens the pad over the screen; it closes once the value is entered, or is left alone. */
export function openNumberPad({ blank, style, enter }: PadRequest): void {
  const line = createPadLine(blank.label, { changed: follow, entered: enterTyped });
  const words = html("p", { class: "pad-words", id: PAD_WORDS, role: "status" });
  const answers = html("div", { class: "pad-commands" });
  const dialog = html("dialog", { class: "bench-dialog pad", "aria-labelledby": "pad-title" });

  const read = () => parseNumber(line.element.value, blank.unit === "°" ? "angle" : "length", style.units);
  function follow() {
    const number = read();
    words.classList.remove("is-refused");
    words.textContent = "value" in number ? PAD.reads(formatValue(number.value, blank.unit, style)) : "";
    answers.replaceChildren(...commands());
  }
  function refuse(why: string) {
    words.classList.add("is-refused");
    words.textContent = why;
  }
  async function send(value: number | undefined, isConfirmed: boolean) {
    const answer = await enter(value, isConfirmed);
    if (answer.kind === "build") return dialog.close();
    if (answer.kind === "refused") return refuse(answer.words.join(" "));
    const question = questionOf(answer);
    refuse(question.words);
    const again = commandButton(question.no, () => {
      line.element.select();
      follow();
      line.element.focus();
    });
    answers.replaceChildren(
      again,
      commandButton(question.yes, () => void send(value, true)),
    );
    again.focus();
  }
  function enterTyped() {
    const number = read();
    if ("fault" in number) return refuse(number.fault);
    return void send(number.value, false);
  }
  const commands = () => [
    commandButton(PAD.cancel, () => dialog.close()),
    ...(blank.value === undefined ? [] : [commandButton(PAD.takeBack, () => void send(undefined, true))]),
    commandButton(PAD.enter, enterTyped, "is-main"),
  ];

  const isInches = style.units === "in" && blank.unit === "mm";
  const entry = html("div", { class: "pad-entry" }, line.element, unitSign(isInches ? "in" : blank.unit));
  const expected = html("p", { class: "pad-expected" }, BENCH.expected(blank.expected));
  const title = html("h2", { id: "pad-title" }, blank.label);
  dialog.append(title, expected, entry, words, keysOf(isInches, line), answers);
  dialog.addEventListener("close", () => dialog.remove());
  document.body.append(dialog);
  dialog.showModal();
  follow();
  line.element.focus();
}

const unitSign = (unit: string): HTMLElement => html("span", { "aria-hidden": "true" }, unit);

/** What the bench asks before it takes a value, and the two answers. */
const questionOf = (answer: Extract<BenchAnswer, { readonly kind: "doubt" | "skips" }>) =>
  answer.kind === "doubt"
    ? { words: answer.words, no: PAD.again, yes: PAD.isSo }
    : { words: PAD.skips(answer.titles), no: PAD.cancel, yes: PAD.areDone };

interface PadLine {
  readonly element: HTMLInputElement;
  /** At the cursor, in place of what is selected. */
  type(text: string): void;
  erase(): void;
}

function createPadLine(label: string, { changed, entered }: { changed(): void; entered(): void }): PadLine {
  const element = html("input", {
    type: "text",
    class: "pad-line",
    inputmode: "none", // the pad is the keyboard; one that is plugged in types here too
    autocomplete: "off",
    spellcheck: "false",
    "aria-label": label,
    "aria-describedby": PAD_WORDS,
  });
  const cursor = () => [element.selectionStart ?? 0, element.selectionEnd ?? 0] as const;
  const replace = (text: string, from: number, to: number) => {
    element.setRangeText(text, from, to, "end");
    changed();
  };
  element.addEventListener("input", changed);
  element.addEventListener("keydown", (event) => {
    if (event.key !== "Enter") return;
    event.preventDefault();
    entered();
  });
  return {
    element,
    type: (text) => replace(text, ...cursor()),
    erase() {
      const [from, to] = cursor();
      replace("", from === to ? Math.max(0, from - 1) : from, to);
    },
  };
}

/** Keys leave the focus on the line, so that each goes where the cursor is. */
function keysOf(isInches: boolean, { type, erase }: PadLine): HTMLElement {
  const key = (text: string): HTMLElement => {
    const button = commandButton(text === " " ? PAD.space : text, () => type(text));
    if (text === " ") button.setAttribute("aria-label", PAD.spaceHelp);
    return button;
  };
  const eraser = commandButton("⌫", erase);
  eraser.setAttribute("aria-label", PAD.erase);
  const [first, ...others] = ROWS;
  const keys = html(
    "div",
    { class: "pad-keys", role: "group", "aria-label": PAD.keys },
    ...first!.map(key),
    eraser,
    ...others.flatMap((row, i) => [...row, isInches ? [" ", "0"][i]! : [".", "0"][i]!]).map(key),
    ...(isInches ? FRACTIONS.map(key) : []),
  );
  keys.addEventListener("pointerdown", (event) => event.preventDefault());
  return keys;
}
