// A number on the sheet that can be typed, dragged and stepped. The row of the parameter table gives its name, limits and step.
import type { NumberRow } from "@lamplane/parameters/table";
import { html, setAttributes } from "../elements.ts";
import type { ParameterChange } from "../protocol/sheet-data.ts";
import { parameterName } from "../state/format.ts";
import { attachDragging, attachKeys } from "./number-input.ts";
import {
  inputText,
  isSameState,
  type NumberState,
  numberAria,
  parseTyped,
  roundValue,
  stepState,
  withNewerValue,
} from "./number-state.ts";

/** What a control does to the design. */
export interface ControlHandlers {
  /** @param holding the hand is still on it */
  change(changes: readonly ParameterChange[], holding: boolean): void;
  commit(): void;
  /** Whether what is drawn was requested before the last change: the response to that is still to come. */
  isPending(): boolean;
  /** A typed text that is no value here, and why; undefined once it is. */
  reportFault(path: string, why: string | undefined): void;
}

export interface NumberControl {
  readonly element: HTMLElement;
  update(state: NumberState): void;
  readonly path: string;
}

const LATEST = 40; // ms: a step is shown by then, whether or not the drawing has come

/** @param before Ø, R, 2 × … before the number */
export function createNumberControl(
  path: string,
  row: NumberRow,
  handlers: ControlHandlers,
  before = "",
): NumberControl {
  const control = new Control(path, row, handlers, before);
  return { element: control.element, path, update: (state) => control.update(state) };
}

class Control {
  readonly element = html("span", { class: "number" });
  readonly #input: HTMLInputElement;
  readonly #auto = html("button", { type: "button", class: "auto" }, "auto");
  readonly #path: string;
  readonly #row: NumberRow;
  readonly #handlers: ControlHandlers;
  #state: NumberState | undefined;
  /** State that its attributes hold. */
  #described: NumberState | undefined;
  /** Shows a step that the drawing is late for; 0 while none waits. A picture of the number alone would keep the drawing waiting. */
  #echo = 0;
  /** Whether a step has been made that the drawing does not hold yet. */
  #isAhead = false;

  constructor(path: string, row: NumberRow, handlers: ControlHandlers, before: string) {
    [this.#path, this.#row, this.#handlers] = [path, row, handlers];
    this.#input = createInput(path, row);
    if (before !== "") this.element.append(html("span", { class: "before" }, before));
    this.element.append(this.#input);
    if (row.auto !== undefined) this.element.append(this.#auto);
    fitText(this.#input);
    this.#listen();
  }

  update(drawn: NumberState): void {
    this.#isAhead &&= this.#handlers.isPending();
    const next = this.#isAhead && this.#state ? withNewerValue(drawn, this.#state) : drawn;
    const input = this.#input;
    const isFollowed =
      document.activeElement === input && this.#state?.value !== next.value && input.selectionStart !== null;
    this.#state = next;
    this.#describe(next);
    if (isFollowed || this.#echo !== 0) this.#showStep();
    this.#show();
  }

  /** What a screen reader says, and how it looks. */
  #describe(state: NumberState) {
    if (this.#described && isSameState(this.#described, state)) return;
    this.#described = state;
    const [isAuto, isLocked] = [state.planned === "auto", state.isLocked === true];
    setAttributes(this.#input, numberAria(state, this.#row));
    this.#input.readOnly = isLocked;
    this.element.classList.toggle("is-locked", isLocked);
    this.element.classList.toggle("is-auto", isAuto);
    setAttributes(this.#auto, { "aria-pressed": String(isAuto), "aria-label": `auto: ${parameterName(this.#path)}` });
  }

  #listen() {
    const input = this.#input;
    attachKeys(input, { step: (n) => this.#step(n), enter: () => this.#readTyped(), revert: () => this.#revert() });
    attachDragging(input, {
      isReady: () => this.#state !== undefined,
      isTyping: () => this.#state === undefined || input.value !== inputText(this.#state),
      step: (n) => this.#step(n),
      commit: () => this.#handlers.commit(),
    });
    input.addEventListener("input", () => {
      this.#cancelEcho();
      fitText(input);
    });
    input.addEventListener("change", () => this.#readTyped());
    input.addEventListener("blur", () => {
      this.#handlers.commit();
      if (input.getAttribute("aria-invalid") === null) this.#show();
    });
    this.#auto.addEventListener("click", () => this.#toggleAuto());
  }

  #toggleAuto() {
    const state = this.#state;
    if (!state || state.isLocked) return;
    this.#handlers.change([[this.#path, state.planned === "auto" ? roundValue(state.value) : "auto"]], false);
  }

  /** The value, unless it is being typed. */
  #show() {
    if (!this.#state || document.activeElement === this.#input) return;
    const text = inputText(this.#state);
    if (this.#input.value !== text) setText(this.#input, text);
  }

  #step(steps: number) {
    if (!this.#state || this.#state.isLocked) return;
    this.#state = stepState(this.#state, steps, this.#row);
    this.#isAhead = true;
    clearTimeout(this.#echo);
    this.#echo = window.setTimeout(() => this.#showStep(), LATEST);
    this.#put(this.#state.value, true);
  }

  #showStep() {
    this.#cancelEcho();
    if (this.#state) setText(this.#input, inputText(this.#state));
  }

  #cancelEcho() {
    clearTimeout(this.#echo);
    this.#echo = 0;
  }

  #put(value: number, holding: boolean) {
    this.#handlers.reportFault(this.#path, undefined);
    this.#handlers.change([[this.#path, value]], holding);
  }

  #readTyped() {
    if (this.#echo !== 0) this.#showStep();
    if (!this.#state || this.#state.isLocked) return;
    const typed = parseTyped(this.#input.value, this.#row, this.#state);
    this.#markFault(typed.kind === "fault" ? typed.message : undefined);
    if (typed.kind === "unchanged") this.#handlers.commit();
    else if (typed.kind === "value") this.#put(typed.value, false);
    else if (typed.kind !== "fault")
      this.#handlers.change([[this.#path, typed.kind === "auto" ? "auto" : undefined]], false);
  }

  #revert() {
    if (!this.#state) return;
    setText(this.#input, inputText(this.#state));
    this.#markFault(undefined);
  }

  #markFault(why: string | undefined) {
    this.#handlers.reportFault(this.#path, why);
    setAttributes(this.#input, { "aria-invalid": why === undefined ? undefined : "true" });
  }
}

const createInput = (path: string, { min, max }: NumberRow): HTMLInputElement =>
  html("input", {
    type: "text",
    role: "spinbutton",
    inputmode: "text",
    autocomplete: "off",
    spellcheck: "false",
    "aria-label": parameterName(path),
    "aria-valuemin": min,
    "aria-valuemax": max,
    "data-parameter": path,
  });

function setText(input: HTMLInputElement, text: string) {
  input.value = text;
  fitText(input);
}

/** As wide as what it holds. */
function fitText(input: HTMLInputElement) {
  input.style.width = `${Math.max(2, input.value.length) + 0.6}ch`;
}
