// Parts of the page without a browser: the strip of steps, the title block and the drawing of a view show what they are given, and lead
// where they say.
import { readFileSync } from "node:fs";
import { asBuiltPlane } from "@lamplane/bench";
import { readDesign } from "@lamplane/parameters/design";
import type { Design } from "@lamplane/parameters/table";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test, vi } from "vitest";
import { createTitleBlock } from "../../packages/viewer/src/page/title-block.ts";
import { FIRST_SHOWN, STAGES, type StageName, stageLabel } from "../../packages/viewer/src/protocol/build-steps.ts";
import { layOutDimension } from "../../packages/viewer/src/sheet/layout.ts";
import { createViewDrawing } from "../../packages/viewer/src/sheet/view-drawing.ts";
import { createStrip } from "../../packages/viewer/src/steps/strip.ts";
import { sheetPlane } from "../../packages/viewer/src/worker/sheet-plane.ts";
import { press, stubDocument, textOf } from "../support/page-document.ts";

beforeAll(() => {
  stubDocument();
  vi.stubGlobal("window", globalThis);
  vi.stubGlobal("addEventListener", vi.fn());
});
afterAll(() => vi.unstubAllGlobals());

function example(name: string): Design {
  const file = `examples/${name}.yaml`;
  const reading = readDesign(readFileSync(file), file);
  if (!reading.ok) throw new Error(JSON.stringify(reading.faults));
  return reading.design;
}
const smoother = example("apprentice-smoother");
const sheet = sheetPlane(smoother, asBuiltPlane(smoother), "shaped");

describe("the strip", () => {
  beforeEach(() => {
    vi.useFakeTimers();
  });
  afterEach(() => {
    vi.useRealTimers();
  });
  function open() {
    const shown: StageName[] = [];
    const strip = createStrip((stage) => {
      shown.push(stage);
      strip.show(stage);
    });
    const cells = [...strip.element.querySelectorAll("li")];
    cells.forEach((cell, i) => {
      cell.getBoundingClientRect = () => ({ left: 50 * i, right: 50 * i + 50 }) as DOMRect;
    });
    const list = strip.element.querySelector("ol")!;
    const point = (type: string, clientX: number, button = 0) =>
      list.dispatchEvent(Object.assign(new Event(type), { clientX, button }));
    return { strip, shown, cells, play: strip.element.querySelector("button")!, list, point };
  }

  test("has every step in order, marks the one that is shown and those before it", () => {
    const { strip, cells } = open();
    expect(cells.map(textOf)).toEqual(STAGES.map(stageLabel));
    for (const [i, stage] of STAGES.entries()) {
      strip.show(stage);
      expect(cells.map((cell) => cell.classList.contains("is-shown"))).toEqual(STAGES.map((_, k) => k === i));
      expect(cells.map((cell) => cell.classList.contains("is-passed"))).toEqual(STAGES.map((_, k) => k < i));
      expect(cells.map((cell) => cell.querySelector("input")!.checked)).toEqual(STAGES.map((_, k) => k === i));
    }
  });

  test("plays from the first step where the plane is built, else from where it stands, and stops at the last", () => {
    const { strip, shown, play } = open();
    strip.show(FIRST_SHOWN);
    press(play);
    expect(shown).toEqual([STAGES[0]]);
    vi.advanceTimersByTime(60_000);
    expect(shown).toEqual(STAGES);
    expect(vi.getTimerCount()).toBe(0);
    shown.length = 0;
    strip.show(STAGES[4]!);
    press(play);
    vi.advanceTimersToNextTimer();
    expect(shown).toEqual([STAGES[5]]);
    const playing = textOf(play);
    press(play);
    expect(vi.getTimerCount()).toBe(0);
    expect(textOf(play)).not.toBe(playing);
  });

  test("goes along under the pointer while its button is down, and stops playing", () => {
    const { strip, shown, play, point } = open();
    strip.show(STAGES[0]!);
    press(play);
    point("pointermove", 120);
    point("pointerdown", 120, 2);
    expect(shown).toEqual([]);
    point("pointerdown", 120);
    expect(vi.getTimerCount()).toBe(0);
    for (const x of [130, 150, 199, 200]) point("pointermove", x);
    expect(shown).toEqual([STAGES[2], STAGES[3], STAGES[4]]);
  });

  test("draws each step in a frame round its own box", () => {
    const { strip, cells } = open();
    const { box, marks } = sheet.views[0]!;
    strip.draw([{ stage: "cuts", box, marks: marks.slice(0, 3) }]);
    const drawings = cells.map((cell) => cell.querySelector("svg")!);
    expect(drawings.map((drawing) => drawing.children.length)).toEqual(
      STAGES.map((stage) => (stage === "cuts" ? 3 : 0)),
    );
    const drawing = drawings[STAGES.indexOf("cuts")]!;
    const [x, y, wide, high] = drawing.getAttribute("viewBox")!.split(" ").map(Number) as [
      number,
      number,
      number,
      number,
    ];
    const [left, top, right, foot] = [box.min.x - x, -box.max.y - y, x + wide - box.max.x, y + high + box.min.y];
    expect([top, right, foot].every((room) => Math.abs(room - left) < 1e-9)).toBe(true);
    expect(left).toBeGreaterThan(0);
    expect(drawing.children[0]!.getAttribute("d")).toBe(marks[0]!.d);
    expect(drawing.children[0]!.getAttribute("class")).toBe(`area-${marks[0]!.area}`);
  });
});

describe("the title block", () => {
  const values = (element: HTMLElement) => [...element.querySelectorAll("dd")].map(textOf);

  test("has name, unit, scale and sizes of the plane, and signs that differ where designs do", () => {
    const share = vi.fn();
    const block = createTitleBlock(share);
    block.show(sheet, 96 / 25.4 / 2); // half as many pixels to the mm as a sheet at 1:1, 96 to the inch
    const [name, units, scale, size, signs] = values(block.element);
    expect([name, scale]).toEqual([smoother.name, expect.stringContaining("1 : 2")]);
    expect(units).toMatch(/millim|mm/i);
    const { length, height } = smoother.body;
    expect(size).toBe(`${length} × ${Math.round(sheet.figures.bodyWidth! * 100) / 100} × ${height} mm`);
    expect(signs).toMatch(/^[0-9a-f]{8}/);
    const other = createTitleBlock(share);
    other.show({ ...sheet, design: { ...smoother, bed: { ...smoother.bed, angle: 48 } } }, undefined);
    expect(values(other.element)[2]).toBe("");
    expect(values(other.element)[4]!.slice(0, 8)).not.toBe(signs!.slice(0, 8));
    press(block.element.querySelector("#share"));
    expect(share).toHaveBeenCalledTimes(1);
    block.say("saved");
    expect(textOf(block.element.querySelector(".status")!)).toBe("saved");
  });

  test("signs are FNV-1a of the design", () => {
    const fnv1a = (text: string) =>
      [...text].reduce((hash, sign) => ((hash ^ BigInt(sign.charCodeAt(0))) * 16777619n) & 0xffffffffn, 2166136261n);
    // @see Fowler, Noll and Vo: of "foobar" 0xbf9cf968, from memory
    expect(fnv1a("foobar")).toBe(0xbf9cf968n);
    const block = createTitleBlock(() => undefined);
    block.show(sheet, 3);
    expect(values(block.element)[4]!.slice(0, 8)).toBe(fnv1a(JSON.stringify(smoother)).toString(16).padStart(8, "0"));
  });

  test("in inches says the rule's smallest division, and no mm", () => {
    const jack = example("trestle-jack");
    const block = createTitleBlock(() => undefined);
    block.show(sheetPlane(jack, asBuiltPlane(jack), "shaped"), 3);
    const [, units, , size] = values(block.element);
    expect(units).toContain(jack.shop.smallestFraction);
    expect(size).toContain("14″");
    expect(size).not.toContain("mm");
  });
});

describe("the drawing of a view", () => {
  const grain = { rings: 20, bedAngle: 47, height: 60, pin: { x: 90, y: 36 } };

  test("lies at its scale with its origin where that puts it, each mark with its kind, names where there is room", () => {
    const view = sheet.views[0]!;
    const scale = { perMm: 2.5, origin: { x: 40, y: 200 }, width: 700, height: 300 };
    const drawing = createViewDrawing("elevation", false);
    const room = { left: 0, right: 1, top: 0, bottom: 1 };
    drawing.drawView(view, scale, grain, [room, undefined]);
    expect(drawing.element.getAttribute("viewBox")).toBe("0 0 700 300");
    expect(drawing.marks.getAttribute("transform")).toBe("translate(40 200) scale(2.5)");
    const paths = [...drawing.marks.children];
    expect(paths.map((path) => path.getAttribute("d"))).toEqual(view.marks.map(({ d }) => d));
    expect(paths.map((path) => path.getAttribute("class"))).toEqual(
      view.marks.map(({ line, area }) => `line-${line ?? "none"} area-${area ?? "none"}`),
    );
    expect(paths.map((path) => path.getAttribute("data-part"))).toEqual(view.marks.map(({ part }) => part ?? null));
    const [names, lines, arrows] = drawing.others;
    expect([...names!.children].map(textOf)).toEqual([view.labels[0]!.text]);
    const { x, y } = view.labels[0]!.at;
    expect(Number(names!.children[0]!.getAttribute("x"))).toBeCloseTo(40 + 2.5 * x, 9);
    expect(Number(names!.children[0]!.getAttribute("y"))).toBeCloseTo(200 - 2.5 * y, 9);
    const number = { width: 40, right: 0, below: 0 };
    const places = view.dimensions
      .slice(0, 3)
      .map(({ shape }) => layOutDimension(shape, scale, view.box, number, false));
    drawing.drawDimensionLines(places);
    expect([...lines!.children].map((path) => path.getAttribute("d"))).toEqual(places.map((place) => place.lines()));
    expect([...arrows!.children].map((path) => path.getAttribute("d"))).toEqual(places.map((place) => place.arrows()));
    drawing.drawDimensionLines([]);
    expect(lines!.children.length + arrows!.children.length).toBe(0);
  });

  test("of the mouth is clipped at a frame round its box", () => {
    const view = sheet.views.find(({ name }) => name === "mouth")!;
    const scale = { perMm: 10, origin: { x: 15, y: 150 }, width: 300, height: 200 };
    const drawing = createViewDrawing("mouth", true);
    drawing.drawView(view, scale, grain, []);
    const frames = [...drawing.element.querySelectorAll("rect")].filter(
      (rect) => rect.getAttribute("width") !== null && !rect.closest("pattern"),
    );
    const { min, max } = view.box;
    const wanted = [15 + 10 * min.x, 150 - 10 * max.y, 10 * (max.x - min.x), 10 * (max.y - min.y)];
    expect(frames).toHaveLength(2);
    for (const frame of frames)
      for (const [i, key] of ["x", "y", "width", "height"].entries())
        expect(Number(frame.getAttribute(key)), key).toBeCloseTo(wanted[i]!, 6);
    const id = drawing.element.querySelector("clipPath")!.getAttribute("id");
    expect(drawing.marks.parentElement!.getAttribute("clip-path")).toBe(`url(#${id})`);
  });
});
