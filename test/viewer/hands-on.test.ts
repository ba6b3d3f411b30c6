// Hands on the page without a browser: keys and drags on a number, and a program that is played by the clock or from pass to pass.
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { createPathPlayer } from "../../packages/viewer/src/router/path-player.ts";
import type { RouterPath } from "../../packages/viewer/src/router/router-paths.ts";
import { attachDragging, attachKeys } from "../../packages/viewer/src/sheet/number-input.ts";

afterEach(() => {
  vi.unstubAllGlobals();
  vi.useRealTimers();
});

/** A text field's events, classes and selection. */
function createField() {
  const classes = new Set<string>();
  return Object.assign(new EventTarget(), {
    classes,
    classList: { add: (name: string) => classes.add(name), remove: (name: string) => classes.delete(name) },
    value: "47",
    select: vi.fn(),
    focus: vi.fn(),
    setSelectionRange: vi.fn(),
    setPointerCapture: vi.fn(),
  });
}
const asInput = (field: ReturnType<typeof createField>) => field as unknown as HTMLInputElement;

describe("keys on a number", () => {
  const press = (key: string, shiftKey = false) => {
    const field = createField();
    const handlers = { step: vi.fn(), enter: vi.fn(), revert: vi.fn() };
    attachKeys(asInput(field), handlers);
    const event = Object.assign(new Event("keydown", { cancelable: true }), { key, shiftKey });
    field.dispatchEvent(event);
    return { ...handlers, field, event };
  };
  test.each([
    ["ArrowUp", false, 1],
    ["ArrowDown", false, -1],
    ["PageUp", false, 10],
    ["PageDown", false, -10],
    ["ArrowUp", true, 10],
    ["ArrowDown", true, -10],
  ] as const)("%s, with Shift %s, goes %i steps and scrolls nothing", (key, shift, steps) => {
    const { step, enter, revert, event } = press(key, shift);
    expect(step.mock.calls).toEqual([[steps]]);
    expect([event.defaultPrevented, enter.mock.calls.length, revert.mock.calls.length]).toEqual([true, 0, 0]);
  });
  test("Enter takes what is typed, Escape gives it up, and other keys type", () => {
    const [enter, leave, other] = [press("Enter"), press("Escape"), press("7")];
    expect([enter.enter, enter.field.select].map((each) => each.mock.calls.length)).toEqual([1, 1]);
    expect([leave.revert, leave.field.select].map((each) => each.mock.calls.length)).toEqual([1, 1]);
    for (const each of [other.step, other.enter, other.revert, other.field.select]) expect(each).not.toHaveBeenCalled();
    expect([enter.revert, enter.step, leave.enter, leave.step].every((each) => each.mock.calls.length === 0)).toBe(
      true,
    );
  });
});

describe("a drag on a number", () => {
  let isTyping = false;
  let isReady = true;
  function drag(focused = false) {
    const field = createField();
    vi.stubGlobal("document", { activeElement: focused ? field : undefined });
    const handlers = { isReady: () => isReady, isTyping: () => isTyping, step: vi.fn(), commit: vi.fn() };
    attachDragging(asInput(field), handlers);
    const point = (type: string, clientX: number, more = {}) => {
      const event = Object.assign(new Event(type, { cancelable: true }), {
        clientX,
        button: 0,
        pointerId: 1,
        shiftKey: false,
        ...more,
      });
      field.dispatchEvent(event);
      return event;
    };
    return { field, ...handlers, point };
  }
  beforeEach(() => {
    [isTyping, isReady] = [false, true];
  });

  test("goes a step every 5 px, back too, and is committed once when it ends", () => {
    const { point, step, commit, field } = drag();
    expect(point("pointerdown", 100).defaultPrevented).toBe(true);
    expect(field.setPointerCapture).toHaveBeenCalledWith(1);
    for (const x of [104, 105, 112, 112, 98, 90]) point("pointermove", x);
    expect(step.mock.calls.map(([by]) => by)).toEqual([1, 1, -2, -2]);
    expect(field.classes.has("is-dragged")).toBe(true);
    expect(commit).not.toHaveBeenCalled();
    point("pointerup", 90);
    expect([commit.mock.calls.length, field.classes.size, field.focus.mock.calls.length]).toEqual([1, 0, 0]);
    point("pointermove", 150);
    point("pointerup", 150);
    expect([step.mock.calls.length, commit.mock.calls.length]).toEqual([4, 1]);
  });

  test("is ten times as coarse with Shift, and nothing without a value", () => {
    const { point, step } = drag();
    point("pointerdown", 0);
    point("pointermove", 10, { shiftKey: true });
    expect(step.mock.calls).toEqual([[20]]);
    isReady = false;
    point("pointermove", 60);
    expect(step.mock.calls).toHaveLength(1);
  });

  test("of less than 3 px is a press: it puts the cursor in and selects all; a second press puts it behind", () => {
    const first = drag();
    first.point("pointerdown", 50);
    first.point("pointermove", 52);
    first.point("pointerup", 52);
    expect(
      [first.step, first.commit, first.field.focus, first.field.select].map((each) => each.mock.calls.length),
    ).toEqual([0, 0, 1, 1]);
    const second = drag(true);
    second.point("pointerdown", 50);
    second.point("pointerup", 50);
    expect(second.field.setSelectionRange.mock.calls).toEqual([[2, 2]]);
    expect(second.field.select).not.toHaveBeenCalled();
    const cancelled = drag();
    cancelled.point("pointerdown", 50);
    cancelled.point("pointermove", 53);
    cancelled.point("pointercancel", 53);
    expect(cancelled.commit).toHaveBeenCalledTimes(1);
  });

  test("leaves the pointer to the text while something is typed, and to other buttons", () => {
    isTyping = true;
    const typing = drag(true);
    expect(typing.point("pointerdown", 0).defaultPrevented).toBe(false);
    typing.point("pointermove", 40);
    expect(typing.step).not.toHaveBeenCalled();
    const elsewhere = drag(false);
    elsewhere.point("pointerdown", 0);
    elsewhere.point("pointermove", 10);
    expect(elsewhere.step.mock.calls).toEqual([[2]]);
    isTyping = false;
    const right = drag();
    right.point("pointerdown", 0, { button: 2 });
    right.point("pointermove", 40);
    expect(right.step).not.toHaveBeenCalled();
  });
});

describe("a program that is played", () => {
  const steps = [0, 1, 2, 3, 4].map((i) => ({ begin: 2 * i, end: 2 * i + 2 }));
  const path = { steps, passes: [1, 3], duration: 10 } as unknown as RouterPath;
  let frames: ((now: number) => void)[];
  let heard: [number, number, boolean][];
  const last = () => heard.at(-1);

  const open = (still: boolean) => {
    [frames, heard] = [[], []];
    vi.useFakeTimers();
    vi.stubGlobal("matchMedia", () => ({ matches: still }));
    vi.stubGlobal("window", globalThis);
    vi.stubGlobal("performance", { now: () => 0 });
    vi.stubGlobal("requestAnimationFrame", (call: (now: number) => void) => frames.push(call));
    vi.stubGlobal("cancelAnimationFrame", () => {
      frames = [];
    });
    const player = createPathPlayer((...all) => heard.push(all));
    player.open(path);
    return player;
  };
  const frame = (now: number) => frames.shift()?.(now);

  test("runs by the clock at its speed, stops at the end, and begins again", () => {
    const player = open(false);
    expect([last(), player.isPlaying]).toEqual([[0, 0, false], false]);
    player.setSpeed(2);
    player.toggle();
    expect(last()).toEqual([0, 0, true]);
    frame(1000);
    expect(last()).toEqual([1, 2, true]);
    frame(2500);
    expect(last()).toEqual([2, 5, true]);
    frame(9000);
    expect([last(), player.isPlaying]).toEqual([[4, 10, false], false]);
    player.toggle();
    expect([player.seconds, player.isPlaying]).toEqual([0, true]);
    player.toggle();
    expect([player.isPlaying, frames.length]).toEqual([false, 0]);
  });

  test("goes to a time, by steps and by passes, and stands still then", () => {
    const player = open(false);
    player.toggle();
    player.goTo(5);
    expect([last(), player.isPlaying]).toEqual([[2, 5, false], false]);
    player.goBy(-1);
    expect(player.seconds).toBe(4); // to the beginning of the step within which it was
    player.goBy(-1);
    expect(player.seconds).toBe(2);
    player.goBy(1);
    expect(player.seconds).toBe(4);
    player.goBy(-9);
    expect(player.seconds).toBe(0);
    player.goBy(9);
    expect(player.seconds).toBe(10);
    player.goByPass(-1);
    expect(player.seconds).toBe(6);
    player.goByPass(-1);
    player.goByPass(-1);
    expect(player.seconds).toBe(0);
    player.goByPass(1);
    expect(player.seconds).toBe(2);
    player.goTo(99);
    player.goByPass(1);
    expect(player.seconds).toBe(10);
    player.goTo(-5);
    expect(player.seconds).toBe(0);
    player.stop();
    expect(last()).toEqual([0, 0, false]);
  });

  test("goes from pass to pass where nothing is to move", () => {
    const player = open(true);
    player.toggle();
    expect([player.isPlaying, frames.length]).toEqual([true, 0]);
    const seen = [0, 0, 0].map(() => {
      vi.advanceTimersToNextTimer();
      return player.seconds;
    });
    expect(seen).toEqual([2, 6, 10]);
    vi.advanceTimersToNextTimer();
    expect(player.isPlaying).toBe(false);
  });
});
