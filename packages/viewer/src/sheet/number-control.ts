// A number on the sheet that can be typed, dragged and stepped. The row of the parameter table gives its name, limits and step.
import type { NumberRow } from "@lamplane/parameters/table";
import { html, setAttributes } from "../elements.ts";
import type { ChangeValue, ParameterChange } from "../protocol.ts";
import {
  type DisplayUnits,
  formatOnDrawing,
  formatWithUnit,
  limitsText,
  parameterName,
  parseInput,
  stepSize,
  stepValue,
} from "../state/format.ts";

/** What a control does to the design. */
export interface ControlHandlers {
  /** @param holding the hand is still on it */
  change(changes: readonly ParameterChange[], holding: boolean): void;
  commit(): void;
  /** Whether what is drawn now was asked for before the last change: the answer to that is still to come. */
  isPending(): boolean;
  /** A typed text that is no value here, and why; undefined once it is. */
  reportFault(path: string, why: string | undefined): void;
}

export interface NumberState {
  readonly value: number;
  /** What stands in the design: a number or `auto`. */
  readonly planned: ChangeValue | undefined;
  readonly style: DisplayUnits;
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

export function createNumberControl(
  path: string,
  row: NumberRow,
  handlers: ControlHandlers,
  before = "",
): NumberControl {
  const input = html("input", {
    type: "text",
    role: "spinbutton",
    inputmode: "text",
    autocomplete: "off",
    spellcheck: "false",
    "aria-label": parameterName(path),
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
    const text = inputText(state);
    if (input.value !== text) setText(input, text);
  };
  const put = (value: number, holding: boolean) => {
    handlers.reportFault(path, undefined);
    handlers.change([[path, value]], holding);
  };
  const step = (steps: number) => {
    if (!state || state.isLocked) return;
    const value = stepValue(state.value, steps, row, state.style);
    state = { ...state, value, planned: value, isVoid: false };
    isAhead = true;
    clearTimeout(echo);
    echo = window.setTimeout(showStep, LATEST);
    put(value, true);
  };
  const showStep = () => {
    clearTimeout(echo);
    echo = 0;
    if (state) setText(input, inputText(state));
  };
  const typed = () => {
    if (echo !== 0) showStep();
    if (!state || state.isLocked) return;
    const text = input.value.trim();
    const isBlanked = text === "" && row.unset === true;
    const isAuto = text === "auto" && row.auto !== undefined;
    const isAsItWas = text === inputText(state);
    const { fault, value }: Typed = isBlanked || isAuto || isAsItWas ? {} : parseTyped(text, row, state.style);
    handlers.reportFault(path, fault);
    setAttributes(input, { "aria-invalid": fault === undefined ? undefined : "true" });
    if (isAsItWas) handlers.commit();
    else if (isBlanked || isAuto) handlers.change([[path, isAuto ? "auto" : undefined]], false);
    else if (value !== undefined) put(value, false);
  };
  const revert = () => {
    if (!state) return;
    setText(input, inputText(state));
    handlers.reportFault(path, undefined);
    setAttributes(input, { "aria-invalid": undefined });
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
    handlers.commit();
    if (input.getAttribute("aria-invalid") === null) show();
  });
  attachScrubbing(input, () => state, step, handlers.commit);
  auto.addEventListener("click", () => {
    if (state && !state.isLocked)
      handlers.change([[path, state.planned === "auto" ? roundStep(state.value) : "auto"]], false);
  });

  return {
    element,
    input,
    path,
    update(drawn) {
      isAhead &&= handlers.isPending();
      const next = isAhead && state ? { ...drawn, value: state.value, planned: state.planned, isVoid: false } : drawn;
      const kept = document.activeElement === input && state?.value !== next.value && input.selectionStart !== null;
      state = next;
      setAttributes(input, {
        "aria-valuenow": next.isVoid ? undefined : roundStep(next.value),
        "aria-valuetext": next.isVoid
          ? "not measured yet"
          : `${formatWithUnit(next.value, next.unit, next.style)}${next.planned === "auto" ? ", auto" : ""}`,
        "aria-description": `${row.help} ${limitsText(row, next.style)}; arrow keys step by ${formatWithUnit(stepSize(row, next.style), next.unit, next.style)}.`,
      });
      input.readOnly = next.isLocked === true;
      element.classList.toggle("is-locked", next.isLocked === true);
      element.classList.toggle("is-auto", next.planned === "auto");
      setAttributes(auto, {
        "aria-pressed": String(next.planned === "auto"),
        "aria-label": `auto: ${parameterName(path)}`,
      });
      if (kept || echo !== 0) showStep();
      show();
    },
  };
}

const inputText = ({ value, unit, style, isVoid }: NumberState): string =>
  isVoid ? "" : formatOnDrawing(value, unit, style);

const STEPS: Readonly<Record<string, number>> = { ArrowUp: 1, ArrowDown: -1, PageUp: COARSE, PageDown: -COARSE };
const roundStep = (value: number): number => Math.round(value * 1000) / 1000;

interface Typed {
  readonly value?: number;
  readonly fault?: string;
}

function parseTyped(text: string, row: NumberRow, style: DisplayUnits): Typed {
  const reading = parseInput(text, row, style);
  if ("fault" in reading) return { fault: reading.fault };
  if (reading.value < row.min || reading.value > row.max) return { fault: `allowed is ${limitsText(row, style)}` };
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
function attachScrubbing(
  input: HTMLInputElement,
  state: () => NumberState | undefined,
  step: (n: number) => void,
  commit: () => void,
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
    if (moved) commit();
    else {
      input.focus();
      input.select();
    }
  };
  input.addEventListener("pointerup", end);
  input.addEventListener("pointercancel", end);
}
