// A number on the sheet that can be typed, dragged and stepped. The row of the parameter table gives its name, limits and step.
import type { NumberRow } from "@lamplane/parameters/table";
import { html, write } from "../elements.ts";
import type { Change, Value } from "../protocol.ts";
import { drawnText, limitsOf, nameOf, readText, type Style, stepOf, stepped, toldText } from "../state/format.ts";

/** What a control does to the design. */
export interface Hands {
  /** @param holding the hand is still on it */
  change(changes: readonly Change[], holding: boolean): void;
  settle(): void;
  /** Whether what is drawn now was asked for before the last change: the answer to that is still to come. */
  isBehind(): boolean;
  /** A typed text that is no value here, and why; undefined once it is. */
  refuse(path: string, why: string | undefined): void;
}

export interface NumberState {
  readonly value: number;
  /** What stands in the design: a number or `auto`. */
  readonly given: Value | undefined;
  readonly style: Style;
  readonly unit: string;
  /** A step that is done has settled it: shown, not to be changed. */
  readonly isLocked?: boolean;
  /** Not measured yet: the blank stays empty, and a first step begins at the value expected. */
  readonly isVoid?: boolean;
}

export interface NumberControl {
  readonly element: HTMLElement;
  readonly input: HTMLInputElement;
  update(state: NumberState): void;
  readonly path: string;
}

const PER_STEP = 5; // px of dragging for one step
const SLOP = 3; // px: less than this is a click
const COARSE = 10; // steps at once with Shift or Page up
const LATEST = 40; // ms: a step is shown by then, whether or not the drawing has come

export function numberControl(path: string, row: NumberRow, hands: Hands, before = ""): NumberControl {
  const input = html("input", {
    type: "text",
    role: "spinbutton",
    inputmode: "text",
    autocomplete: "off",
    spellcheck: "false",
    "aria-label": nameOf(path),
    "aria-valuemin": row.min,
    "aria-valuemax": row.max,
    "data-parameter": path,
  });
  const auto = html("button", { type: "button", class: "auto" }, "auto");
  const element = html("span", { class: "number" });
  if (before !== "") element.append(html("span", { class: "before" }, before));
  element.append(input);
  if (row.auto !== undefined) element.append(auto);
  fitText(input);
  let state: NumberState | undefined;
  // A step is shown together with the drawing that follows it: a picture of the number alone would keep the drawing waiting.
  let echo = 0;
  let isAhead = false;

  const show = () => {
    if (!state || document.activeElement === input) return;
    const text = textOf(state);
    if (input.value !== text) setText(input, text);
  };
  const put = (value: number, holding: boolean) => {
    hands.refuse(path, undefined);
    hands.change([[path, value]], holding);
  };
  const step = (steps: number) => {
    if (!state || state.isLocked) return;
    const value = stepped(state.value, steps, row, state.style);
    state = { ...state, value, given: value, isVoid: false };
    isAhead = true;
    clearTimeout(echo);
    echo = window.setTimeout(showStep, LATEST);
    put(value, true);
  };
  const showStep = () => {
    clearTimeout(echo);
    echo = 0;
    if (state) setText(input, textOf(state));
  };
  const typed = () => {
    if (echo !== 0) showStep();
    if (!state || state.isLocked) return;
    const text = input.value.trim();
    const isBlanked = text === "" && row.unset === true;
    const isAuto = text === "auto" && row.auto !== undefined;
    const isAsItWas = text === textOf(state);
    const { fault, value }: Typed = isBlanked || isAuto || isAsItWas ? {} : faultOf(text, row, state.style);
    hands.refuse(path, fault);
    write(input, { "aria-invalid": fault === undefined ? undefined : "true" });
    if (isAsItWas) hands.settle();
    else if (isBlanked || isAuto) hands.change([[path, isAuto ? "auto" : undefined]], false);
    else if (value !== undefined) put(value, false);
  };
  const revert = () => {
    if (!state) return;
    setText(input, textOf(state));
    hands.refuse(path, undefined);
    write(input, { "aria-invalid": undefined });
  };

  input.addEventListener("keydown", (event) => {
    const steps = STEPS[event.key];
    if (steps !== undefined) {
      event.preventDefault();
      step(steps * (event.shiftKey ? COARSE : 1));
    } else if (event.key === "Enter") {
      typed();
      input.select();
    } else if (event.key === "Escape") {
      revert();
      input.select();
    }
  });
  input.addEventListener("input", () => {
    clearTimeout(echo);
    echo = 0;
    fitText(input);
  });
  input.addEventListener("change", typed);
  input.addEventListener("blur", () => {
    hands.settle();
    if (input.getAttribute("aria-invalid") === null) show();
  });
  scrubbing(input, () => state, step, hands.settle);
  auto.addEventListener("click", () => {
    if (state && !state.isLocked) hands.change([[path, state.given === "auto" ? rounded(state.value) : "auto"]], false);
  });

  return {
    element,
    input,
    path,
    update(drawn) {
      isAhead &&= hands.isBehind();
      const next = isAhead && state ? { ...drawn, value: state.value, given: state.given, isVoid: false } : drawn;
      const kept = document.activeElement === input && state?.value !== next.value && input.selectionStart !== null;
      state = next;
      write(input, {
        "aria-valuenow": next.isVoid ? undefined : rounded(next.value),
        "aria-valuetext": next.isVoid
          ? "not measured yet"
          : `${toldText(next.value, next.unit, next.style)}${next.given === "auto" ? ", auto" : ""}`,
        "aria-description": `${row.help} ${limitsOf(row, next.style)}; arrow keys step by ${toldText(stepOf(row, next.style), next.unit, next.style)}.`,
      });
      input.readOnly = next.isLocked === true;
      element.classList.toggle("is-locked", next.isLocked === true);
      element.classList.toggle("is-auto", next.given === "auto");
      write(auto, {
        "aria-pressed": String(next.given === "auto"),
        "aria-label": `auto: ${nameOf(path)}`,
      });
      if (kept || echo !== 0) showStep();
      show();
    },
  };
}

const textOf = ({ value, unit, style, isVoid }: NumberState): string => (isVoid ? "" : drawnText(value, unit, style));

const STEPS: Readonly<Record<string, number>> = { ArrowUp: 1, ArrowDown: -1, PageUp: COARSE, PageDown: -COARSE };
const rounded = (value: number): number => Math.round(value * 1000) / 1000;

interface Typed {
  readonly value?: number;
  readonly fault?: string;
}

function faultOf(text: string, row: NumberRow, style: Style): Typed {
  const reading = readText(text, row, style);
  if ("fault" in reading) return { fault: reading.fault };
  if (reading.value < row.min || reading.value > row.max) return { fault: `allowed is ${limitsOf(row, style)}` };
  return { value: reading.value };
}

function setText(input: HTMLInputElement, text: string) {
  input.value = text;
  fitText(input);
}

/** As wide as what it holds. */
function fitText(input: HTMLInputElement) {
  input.style.width = `${Math.max(2, input.value.length) + 0.6}ch`;
}

/** Dragging sideways steps the value; a press without a drag puts the cursor into it. */
function scrubbing(
  input: HTMLInputElement,
  state: () => NumberState | undefined,
  step: (n: number) => void,
  settle: () => void,
) {
  let from: number | undefined;
  let done = 0;
  let moved = false;
  input.addEventListener("pointerdown", (event) => {
    if (document.activeElement === input || event.button !== 0) return;
    event.preventDefault();
    [from, done, moved] = [event.clientX, 0, false];
    input.setPointerCapture(event.pointerId);
  });
  input.addEventListener("pointermove", (event) => {
    if (from === undefined || !state()) return;
    const across = event.clientX - from;
    if (!moved && Math.abs(across) < SLOP) return;
    moved = true;
    input.classList.add("is-dragged");
    const wanted = Math.trunc((across / PER_STEP) * (event.shiftKey ? COARSE : 1));
    if (wanted !== done) step(wanted - done);
    done = wanted;
  });
  const end = () => {
    if (from === undefined) return;
    from = undefined;
    input.classList.remove("is-dragged");
    if (moved) settle();
    else {
      input.focus();
      input.select();
    }
  };
  input.addEventListener("pointerup", end);
  input.addEventListener("pointercancel", end);
}
