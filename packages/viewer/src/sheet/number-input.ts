// Keys and pointer on a number's box: steps by arrow key and by dragging sideways; a press without a drag puts the cursor in.

const PER_STEP = 5; // px of dragging for one step
const SLOP = 3; // px: less than this is a click
const COARSE = 10; // steps at once with Shift or Page up
const STEPS: Readonly<Record<string, number>> = { ArrowUp: 1, ArrowDown: -1, PageUp: COARSE, PageDown: -COARSE };

export interface KeyHandlers {
  step(steps: number): void;
  enter(): void;
  revert(): void;
}

export function attachKeys(input: HTMLInputElement, { step, enter, revert }: KeyHandlers): void {
  input.addEventListener("keydown", (event) => {
    const steps = STEPS[event.key];
    if (steps !== undefined) {
      event.preventDefault();
      step(steps * (event.shiftKey ? COARSE : 1));
    } else if (event.key === "Enter") {
      enter();
      input.select();
    } else if (event.key === "Escape") {
      revert();
      input.select();
    }
  });
}

export interface DragHandlers {
  /** Whether there is a value to be dragged. */
  isReady(): boolean;
  /** Whether something is being typed: then the pointer moves the cursor. */
  isTyping(): boolean;
  step(steps: number): void;
  commit(): void;
}

/** One drag: where it began, steps made so far, and whether it is more than a click. */
interface Drag {
  readonly from: number;
  readonly steps: number;
  readonly isMoved: boolean;
  /** Whether the cursor was in the number before. */
  readonly wasFocused: boolean;
}

export function attachDragging(input: HTMLInputElement, { isReady, isTyping, step, commit }: DragHandlers): void {
  let drag: Drag | undefined;
  input.addEventListener("pointerdown", (event) => {
    const wasFocused = document.activeElement === input;
    if ((wasFocused && isTyping()) || event.button !== 0) return;
    event.preventDefault();
    drag = { from: event.clientX, steps: 0, isMoved: false, wasFocused };
    input.setPointerCapture(event.pointerId);
  });
  input.addEventListener("pointermove", (event) => {
    if (!drag || !isReady()) return;
    const across = event.clientX - drag.from;
    if (!drag.isMoved && Math.abs(across) < SLOP) return;
    input.classList.add("is-dragged");
    const steps = Math.trunc((across / PER_STEP) * (event.shiftKey ? COARSE : 1));
    if (steps !== drag.steps) step(steps - drag.steps);
    drag = { ...drag, steps, isMoved: true };
  });
  const end = () => {
    if (!drag) return;
    const { isMoved, wasFocused } = drag;
    drag = undefined;
    input.classList.remove("is-dragged");
    if (isMoved) return commit();
    input.focus();
    if (wasFocused) input.setSelectionRange(input.value.length, input.value.length);
    else input.select();
  };
  input.addEventListener("pointerup", end);
  input.addEventListener("pointercancel", end);
}
