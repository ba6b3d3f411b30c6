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

const ROWS = [
  ["7", "8", "9"],
  ["4", "5", "6"],
  ["1", "2", "3"],
];
/** Divisions of a rule, and what decimals and any other fraction are written with. */
const FRACTIONS = [".", "/2", "/4", "/8", "/", "/16", "/32", "/64"];

/** Opens the pad over the screen; it closes once the value is entered, or is left alone. */
export function openNumberPad({ blank, style, enter }: PadRequest): void {
  const isInches = style.units === "in" && blank.unit === "mm";
  const line = html("input", {
    type: "text",
    class: "pad-line",
    inputmode: "none", // the pad is the keyboard; one that is plugged in types here too
    autocomplete: "off",
    spellcheck: "false",
    "aria-label": blank.label,
    "aria-describedby": "pad-words",
  });
  const words = html("p", { class: "pad-words", id: "pad-words", role: "status" });
  const answers = html("div", { class: "pad-commands" });
  const quantity = blank.unit === "°" ? "angle" : "length";
  const dialog = html("dialog", { class: "bench-dialog pad", "aria-labelledby": "pad-title" });

  const read = () => parseNumber(line.value, quantity, style.units);
  const follow = () => {
    const number = read();
    words.classList.remove("is-refused");
    words.textContent = "value" in number ? PAD.reads(formatValue(number.value, blank.unit, style)) : "";
    answers.replaceChildren(...commands());
  };
  const refuse = (why: string) => {
    words.classList.add("is-refused");
    words.textContent = why;
  };
  const send = async (value: number | undefined, isConfirmed: boolean) => {
    const answer = await enter(value, isConfirmed);
    if (answer.kind === "build") return dialog.close();
    if (answer.kind === "refused") return refuse(answer.words.join(" "));
    refuse(answer.kind === "doubt" ? answer.words : PAD.skips(answer.titles));
    const again = answer.kind === "doubt" ? PAD.again : PAD.cancel;
    answers.replaceChildren(
      commandButton(again, () => {
        line.select();
        follow();
        line.focus();
      }),
      commandButton(answer.kind === "doubt" ? PAD.isSo : PAD.areDone, () => void send(value, true)),
    );
    (answers.firstElementChild as HTMLElement).focus();
  };
  const enterTyped = () => {
    const number = read();
    if ("fault" in number) return refuse(number.fault);
    return void send(number.value, false);
  };
  const commands = () => [
    commandButton(PAD.cancel, () => dialog.close()),
    ...(blank.value === undefined ? [] : [commandButton(PAD.takeBack, () => void send(undefined, true))]),
    commandButton(PAD.enter, enterTyped, "is-main"),
  ];
  const type = (text: string) => {
    line.setRangeText(text, line.selectionStart ?? 0, line.selectionEnd ?? 0, "end");
    follow();
  };
  const erase = () => {
    const [from, to] = [line.selectionStart ?? 0, line.selectionEnd ?? 0];
    line.setRangeText("", from === to ? Math.max(0, from - 1) : from, to, "end");
    follow();
  };

  line.addEventListener("input", follow);
  line.addEventListener("keydown", (event) => {
    if (event.key !== "Enter") return;
    event.preventDefault();
    enterTyped();
  });
  dialog.append(
    html("h2", { id: "pad-title" }, blank.label),
    html("p", { class: "pad-expected" }, BENCH.expected(blank.expected)),
    html("div", { class: "pad-entry" }, line, html("span", { "aria-hidden": "true" }, isInches ? "in" : blank.unit)),
    words,
    keysOf(isInches, type, erase),
    answers,
  );
  dialog.addEventListener("close", () => dialog.remove());
  document.body.append(dialog);
  dialog.showModal();
  follow();
  line.focus();
}

/** Keys leave the focus on the line, so that each goes where the cursor is. */
function keysOf(isInches: boolean, type: (text: string) => void, erase: () => void): HTMLElement {
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
