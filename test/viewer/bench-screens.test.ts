// The bench screens without a browser: everything that a step holds stands on its screen in order, its buttons do what they say, and the
// pad reads what is typed as a rule is read.
import { readFileSync } from "node:fs";
import { afterAll, afterEach, beforeAll, expect, test, vi } from "vitest";
import { openNumberPad } from "../../packages/viewer/src/bench/number-pad.ts";
import { openStepList } from "../../packages/viewer/src/bench/step-list.ts";
import { type ScreenActions, stepScreen } from "../../packages/viewer/src/bench/step-screen.ts";
import type { BenchAnswer, BenchBlank, BenchBuild } from "../../packages/viewer/src/protocol/bench-build.ts";
import { answerBench } from "../../packages/viewer/src/worker/bench-build.ts";
import { press, stubDocument, textOf } from "../support/page-document.ts";

let page: Document;
beforeAll(() => {
  page = stubDocument();
});
afterEach(() => {
  for (const dialog of page.querySelectorAll("dialog")) dialog.remove();
});
afterAll(() => vi.unstubAllGlobals());

const SMOOTHER = readFileSync("examples/apprentice-smoother.yaml", "utf8");
const JACK = readFileSync("examples/trestle-jack.yaml", "utf8");
const MEASURED = `${SMOOTHER}\nmeasured: { ironThickness: 3.55, coreWidth: 49.2, cheekThickness: 7.8, rampAngle: 60.5 }\n`;

function built(text: string): BenchBuild {
  const answer = answerBench(text, "plane.yaml", 80);
  if (answer.kind !== "build") throw new Error(JSON.stringify(answer));
  return answer.build;
}

const actions = () => ({ fill: vi.fn(), finish: vi.fn(), goToNow: vi.fn() }) satisfies ScreenActions;

test.each([
  ["planned", SMOOTHER],
  ["begun", MEASURED],
  ["in inches", JACK],
])("every screen of a build %s holds its step, in order", (_, text) => {
  const build = built(text);
  for (const [i, screen] of build.screens.entries()) {
    const doing = actions();
    const element = stepScreen(build, screen, i + 1, doing);
    const words = textOf(element);
    let at = -1;
    const next = (part: string) => {
      const found = words.indexOf(part.replace(/\s+/g, " ").trim(), at + 1);
      expect(found, `${screen.key}: "${part}" after ${at}`).toBeGreaterThan(at);
      at = found;
    };
    next(`Step ${i + 1} of ${build.screens.length}`);
    next(screen.title);
    if (screen.key === build.next) for (const stop of build.stops) next(stop);
    next(screen.task);
    for (const caution of screen.cautions) next(caution);
    for (const { label, value, was } of screen.numbers) {
      next(label);
      next(value);
      if (was !== undefined) next(`planned ${was}`);
    }
    for (const instruction of screen.instructions) next(instruction);
    for (const check of screen.checks) next(check);
    for (const blank of screen.blanks) {
      next(blank.label);
      next(blank.value ?? "enter");
      next(`expected ${blank.expected}`);
    }
    const isNow = screen.key === build.next;
    expect(/Do this now/.test(words), screen.key).toBe(isNow && screen.isKept);
    expect(element.querySelector(".is-now") !== null, screen.key).toBe(isNow);
    expect(element.querySelectorAll(".bench-blank.is-filled"), screen.key).toHaveLength(
      screen.blanks.filter(({ value }) => value !== undefined).length,
    );
    const blanks = [...element.querySelectorAll(".bench-blank")];
    for (const [k, blank] of screen.blanks.entries()) {
      press(blanks[k]);
      expect(doing.fill).toHaveBeenLastCalledWith(blank);
    }
    const finish = element.querySelector(".bench-finish");
    expect(finish !== null, screen.key).toBe(screen.isKept && !screen.isDone);
    if (finish) press(finish);
    expect(doing.finish).toHaveBeenCalledTimes(finish ? 1 : 0);
    const toNow = element.querySelector(".bench-to-now");
    expect(toNow !== null, screen.key).toBe(!isNow && !screen.isDone);
    if (toNow) press(toNow);
    expect(doing.goToNow).toHaveBeenCalledTimes(toNow ? 1 : 0);
    for (const heading of [...element.querySelectorAll("section")].filter((each) => each.querySelector("h3")))
      expect(heading.children.length, `${screen.key}: ${textOf(heading).slice(0, 40)}`).toBeGreaterThan(1);
  }
});

test("news stands on the screen of the step to do and on that which brought it, with all that it moved", () => {
  const build = built(MEASURED);
  const { news, earlier } = build;
  for (const [i, screen] of build.screens.entries()) {
    const element = stepScreen(build, screen, i + 1, actions());
    const section = element.querySelector(".bench-news");
    const isNews = screen.key === build.next || screen.title === news!.from;
    expect(section !== null, screen.key).toBe(isNews);
    if (!section) continue;
    const words = textOf(section);
    for (const { name, came, costs } of [...news!.values, ...earlier])
      for (const part of [`${name}: ${came}`, ...costs]) expect(words).toContain(part);
    for (const { name, now, planned } of news!.moved) expect(words).toContain(`${name}${now}, planned ${planned}`);
    expect(words).toContain(build.unread.replace(/\s+/g, " "));
  }
});

test("a drawing is made larger and fitted again", () => {
  const build = built(SMOOTHER);
  const figure = stepScreen(build, build.screens[0]!, 1, actions()).querySelector("figure")!;
  const [board, size] = [figure.querySelector(".bench-drawing")!, figure.querySelector("button")!];
  expect(textOf(size)).toBe("Larger drawing");
  press(size);
  expect([board.classList.contains("is-large"), textOf(size)]).toEqual([true, "Fit to the screen"]);
  press(board);
  expect([board.classList.contains("is-large"), textOf(size)]).toEqual([false, "Larger drawing"]);
});

test("the list has every step with its number and state, and leads to the one that is pressed", () => {
  const build = built(MEASURED);
  const goTo = vi.fn();
  build.screens.forEach((screen, i) => {
    openStepList(build, build.screens[2]!.key, goTo);
    const dialog = page.querySelector("dialog")!;
    const items = [...dialog.querySelectorAll("li button")];
    expect(items).toHaveLength(build.screens.length);
    const state = screen.key === build.next ? "Do this now" : screen.isDone ? "Done" : "";
    expect(textOf(items[i]!)).toBe(`${i + 1}. ${screen.title}${state}`);
    expect(items[i]!.classList.contains("is-done")).toBe(screen.isDone);
    expect(items[i]!.getAttribute("aria-current")).toBe(i === 2 ? "step" : null);
    press(items[i]);
    expect(goTo).toHaveBeenLastCalledWith(screen.key);
    expect(page.querySelector("dialog")).toBe(null);
  });
});

const blank: BenchBlank = { path: "measured.coreWidth", label: "core width", expected: "49.6 mm", unit: "mm" };
const STYLES = {
  mm: { units: "mm", shop: { smallestFraction: "1/64", bothUnits: "no" } },
  in: { units: "in", shop: { smallestFraction: "1/64", bothUnits: "no" } },
} as const;

function pad(units: "mm" | "in", answer: BenchAnswer, of: BenchBlank = blank) {
  const enter = vi.fn(async (_value: number | undefined, _isConfirmed: boolean) => answer);
  openNumberPad({ blank: of, style: STYLES[units], enter });
  const dialog = page.querySelector("dialog")!;
  const key = (sign: string) =>
    press([...dialog.querySelectorAll(".pad-keys button")].find((each) => textOf(each) === sign));
  const command = (words: string) =>
    press([...dialog.querySelectorAll(".pad-commands button")].find((each) => textOf(each) === words));
  return {
    enter,
    dialog,
    key,
    command,
    line: dialog.querySelector("input")!,
    words: () => textOf(dialog.querySelector(".pad-words")!),
  };
}
const BUILD: BenchAnswer = { kind: "build", build: undefined as unknown as BenchBuild };
const settled = () => new Promise((resolve) => setTimeout(resolve, 0));

test("keys type a number where the cursor is, and it is entered in mm", async () => {
  const { key, line, words, command, enter, dialog } = pad("mm", BUILD);
  for (const sign of ["4", "9", "7", ".", "6"]) key(sign);
  expect(line.value).toBe("497.6");
  [line.selectionStart, line.selectionEnd] = [3, 3];
  key("⌫");
  expect([line.value, words()]).toEqual(["49.6", "reads as 49.6 mm"]);
  expect(textOf(dialog)).toContain("expected 49.6 mm");
  command("Enter");
  await settled();
  expect(enter.mock.calls).toEqual([[49.6, false]]);
  expect(page.querySelector("dialog")).toBe(null);
});

test("what is selected is replaced or erased as a whole; every digit and fraction has its key", () => {
  const { key, line, command, dialog } = pad("in", BUILD);
  const keys = [...dialog.querySelectorAll(".pad-keys button")].map(textOf);
  expect(keys).toEqual([
    ..."789⌫456".split(""),
    "and",
    ..."1230".split(""),
    ".",
    "/2",
    "/4",
    "/8",
    "/",
    "/16",
    "/32",
    "/64",
  ]);
  line.value = "2 3/8";
  [line.selectionStart, line.selectionEnd] = [0, 1];
  key("1");
  expect(line.value).toBe("1 3/8");
  [line.selectionStart, line.selectionEnd] = [1, 5];
  key("⌫");
  expect(line.value).toBe("1");
  [line.selectionStart, line.selectionEnd] = [0, 0];
  key("⌫");
  expect(line.value).toBe("1");
  command("Cancel");
});

test("an inch and a fraction: 1 3/4 in is 44.45 mm, by Enter on a keyboard too", async () => {
  const { key, line, enter } = pad("in", BUILD);
  for (const sign of ["1", "and", "3", "/4"]) key(sign);
  expect(line.value).toBe("1 3/4");
  line.dispatchEvent(Object.assign(new Event("keydown"), { key: "a" }));
  expect(enter).not.toHaveBeenCalled();
  line.dispatchEvent(Object.assign(new Event("keydown"), { key: "Enter" }));
  await settled();
  expect(enter.mock.calls).toEqual([[44.45, false]]);
});

test("what is no number is refused before it is entered, and what the table refuses after", async () => {
  const empty = pad("mm", BUILD);
  empty.command("Enter");
  expect(empty.enter).not.toHaveBeenCalled();
  expect(empty.dialog.querySelector(".pad-words")!.classList.contains("is-refused")).toBe(true);
  empty.key("5");
  expect(empty.dialog.querySelector(".pad-words")!.classList.contains("is-refused")).toBe(false);
  empty.command("Cancel");
  const refused = pad("mm", { kind: "refused", words: ["too wide", "for this"] });
  refused.key("5");
  refused.command("Enter");
  await settled();
  expect([refused.words(), page.querySelector("dialog") === null]).toEqual(["too wide for this", false]);
  refused.command("Cancel");
});

test.each([
  [{ kind: "doubt", words: "far off" }, "far off", "Read it again", "It is so: enter it"],
  [{ kind: "skips", titles: ["True the bed"] }, "True the bed", "Cancel", "They are done"],
] as const)("after a question the value is entered once it is confirmed: %j", async (answer, words, again, confirm) => {
  const asked = pad("mm", answer);
  asked.key("5");
  asked.command("Enter");
  await settled();
  expect(asked.words()).toContain(words);
  asked.command(again);
  asked.command("Enter");
  await settled();
  asked.command(confirm);
  await settled();
  expect(asked.enter.mock.calls).toEqual([
    [5, false],
    [5, false],
    [5, true],
  ]);
  asked.dialog.remove();
});

test("a value that was entered can be taken back, one that was not cannot", async () => {
  const filled = pad("mm", BUILD, { ...blank, value: "49.2 mm" });
  filled.command("Take the value back");
  await settled();
  expect(filled.enter.mock.calls).toEqual([[undefined, true]]);
  const empty = pad("mm", BUILD);
  expect([...empty.dialog.querySelectorAll(".pad-commands button")].map(textOf)).toEqual(["Cancel", "Enter"]);
  empty.command("Cancel");
});
