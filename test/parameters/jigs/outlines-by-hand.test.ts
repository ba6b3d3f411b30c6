// The shapes that jigs are made of, with areas and places worked by hand: corners rounded and relieved, sides set in, windows, boxes.
import { arc, distance, line, type Outline, outlineArea, point, segmentLength } from "@lamplane/geometry";
import { describe, expect, test } from "vitest";
import {
  areaAndCentroid,
  corneredOutline,
  corneredPath,
  insetPolygon,
  type OutlineCorner,
  reliefRadius,
  roundInnerCorner,
  windowOutline,
} from "../../../packages/parameters/src/jigs/cornered-outline.ts";
import { clipChainToHeights, nameLabel, roundedBoxOutline } from "../../../packages/parameters/src/jigs/lines.ts";
import { designWith } from "../../support/designs.ts";

const corners = (...places: readonly (readonly [number, number])[]) => places.map(([x, y]) => point(x, y));
const BOX = corners([2, 3], [22, 3], [22, 13], [2, 13]);
const ELL = corners([0, 0], [40, 0], [40, 10], [15, 10], [15, 30], [0, 30]);

const isClosed = (outline: Outline) =>
  outline.every((s, i) => distance(s.to, outline[(i + 1) % outline.length]!.from) < 1e-9);

describe("rounded corners", () => {
  test("take r²·(cot ½θ − ½(π − θ)) off at a corner of θ, and add as much at an inner one", () => {
    const rounded = (places: typeof BOX, which: number, round: number) =>
      corneredOutline(places.map((at, i): OutlineCorner => (i === which ? { at, round } : { at })));
    const off = (angle: number, r: number) => r * r * (1 / Math.tan(angle / 2) - (Math.PI - angle) / 2);
    expect(200 - outlineArea(rounded(BOX, 1, 4))).toBeCloseTo(off(Math.PI / 2, 4), 9);
    // At (9, 12) a triangle of 9, 12 and 15 has the angle whose tangent is 9 / 12.
    const triangle = corners([0, 0], [9, 0], [9, 12]);
    expect(54 - outlineArea(rounded(triangle, 2, 1))).toBeCloseTo(off(Math.atan(9 / 12), 1), 9);
    expect(54 - outlineArea(rounded(triangle, 0, 1))).toBeCloseTo(off(Math.atan(12 / 9), 1), 9);
    const whole = outlineArea(corneredOutline(ELL.map((at) => ({ at }))));
    expect(whole).toBe(40 * 10 + 15 * 20);
    expect(outlineArea(rounded(ELL, 3, 2)) - whole).toBeCloseTo(off(Math.PI / 2, 2), 9);
    for (const outline of [rounded(BOX, 1, 4), rounded(triangle, 2, 1), rounded(ELL, 3, 2)])
      expect(isClosed(outline)).toBe(true);
  });
  test("of the inner corners alone, as far as the shorter side allows: its arc takes 0.45 of that side at the most", () => {
    const made = (radius: number) =>
      ELL.map((at, i) => roundInnerCorner(ELL.at(i - 1)!, at, ELL[(i + 1) % ELL.length]!, radius));
    expect(made(2).map(({ round }) => round)).toEqual([undefined, undefined, undefined, 2, undefined, undefined]);
    // The sides at (15, 10) are 25 and 20 long, and the corner is square: 0.45 · 20.
    expect(made(50)[3]!.round).toBeCloseTo(9, 9);
  });
  test("an open path leaves the last side out", () => {
    const path = corneredPath(BOX.map((at) => ({ at })));
    expect([path.length, path[0]!.from, path.at(-1)!.to]).toEqual([3, BOX[0], BOX[3]]);
  });
});

describe("a corner relieved for a cutter", () => {
  const relieved = (into: "before" | "after", radius = 3) =>
    corneredOutline(ELL.map((at, i): OutlineCorner => (i === 3 ? { at, relief: { radius, into } } : { at })));
  const reliefOf = (outline: Outline) => outline.find((s) => s.kind === "arc")! as ReturnType<typeof arc>;

  test("is a half circle into the side that gives way, which touches the one that registers in the corner alone", () => {
    // At (15, 10) the outline comes in along y = 10 and goes on along x = 15; the solid lies to the left of its way.
    for (const [into, centre, end] of [
      ["after", point(15, 13), point(15, 16)],
      ["before", point(18, 10), point(21, 10)],
    ] as const) {
      const outline = relieved(into);
      const relief = reliefOf(outline);
      expect(isClosed(outline)).toBe(true);
      expect(distance(relief.centre, centre)).toBeLessThan(1e-9);
      expect(relief.radius).toBeCloseTo(3, 9);
      const ends = [relief.from, relief.to];
      expect(ends.some((p) => distance(p, point(15, 10)) < 1e-9)).toBe(true);
      expect(ends.some((p) => distance(p, end) < 1e-9)).toBe(true);
      expect(segmentLength(relief)).toBeCloseTo(3 * Math.PI, 9);
      // It goes into the solid: half its disc is taken off.
      expect(700 - outlineArea(outline)).toBeCloseTo((9 * Math.PI) / 2, 9);
    }
  });
  test("at an angle it ends 2·r·sin φ from the corner, and its middle lies r off the side that registers", () => {
    // An inner corner at (10, 5) between a side along the x axis and one that rises from it at 60 degrees to the left.
    const slope = corners(
      [0, 0],
      [30, 0],
      [30, 5],
      [10, 5],
      [10 + 20 * Math.cos(Math.PI / 3), 5 + 20 * Math.sin(Math.PI / 3)],
      [0, 25],
    );
    const outline = corneredOutline(
      slope.map((at, i): OutlineCorner => (i === 3 ? { at, relief: { radius: 2, into: "after" } } : { at })),
    );
    const relief = reliefOf(outline);
    expect(isClosed(outline)).toBe(true);
    expect(Math.abs(relief.centre.y - 5)).toBeCloseTo(2, 9);
    expect(distance(relief.from, relief.to)).toBeCloseTo(2 * 2 * Math.sin(Math.PI / 3), 9);
    expect(distance(relief.to, relief.centre)).toBeCloseTo(2, 9);
    expect(outlineArea(outline)).toBeLessThan(outlineArea(corneredOutline(slope.map((at) => ({ at })))));
  });
  test("is none with a cutter of no size, nor at a stop that would keep less than 1.5 mm to bear on", () => {
    expect(relieved("after", 0).every(({ kind }) => kind === "line")).toBe(true);
    expect([reliefRadius(3, 7.5), reliefRadius(3, 7.4), reliefRadius(3, 20)]).toEqual([3, 0, 3]);
  });
});

describe("a convex outline set in", () => {
  test("a box of 20 by 10 by 1, 2, 3 and 4 from its four sides is one of 14 by 6", () => {
    const inside = insetPolygon(BOX, (side) => [1, 2, 3, 4][side]!);
    expect(areaAndCentroid(inside)).toEqual({
      area: expect.closeTo((20 - 2 - 4) * (10 - 1 - 3), 9),
      middle: { x: expect.closeTo((2 + 4 + 22 - 2) / 2, 9), y: expect.closeTo((3 + 1 + 13 - 3) / 2, 9) },
    });
  });
  test("a right triangle of 30 and 40 keeps its incircle's middle, 10 from each side", () => {
    const triangle = corners([0, 0], [40, 0], [0, 30]);
    for (const by of [1, 5, 9]) {
      const inside = insetPolygon(triangle, () => by);
      expect(areaAndCentroid(inside).area).toBeCloseTo(600 * ((10 - by) / 10) ** 2, 9);
    }
    expect(insetPolygon(triangle, () => 10.1).length).toBeLessThan(3);
  });
  test("area and middle of a triangle: half its base times its height, a third of its corners", () => {
    expect(areaAndCentroid(corners([1, 1], [7, 1], [4, 10]))).toEqual({
      area: 27,
      middle: { x: expect.closeTo(4, 9), y: expect.closeTo(4, 9) },
    });
    expect(areaAndCentroid(corners([1, 1], [2, 2], [3, 3]))).toEqual({ area: 0, middle: { x: 0, y: 0 } });
  });
});

describe("a window to save material", () => {
  const window = (width: number, height: number, rim: number, round?: number) =>
    windowOutline(corners([0, 0], [width, 0], [width, height], [0, height]), () => rim, round);

  test("is the outline less its rim, its corners rounded by 3", () => {
    const [outline] = window(60, 50, 10);
    expect(outlineArea(outline!)).toBeCloseTo(40 * 30 - (4 - Math.PI) * 9, 6);
    expect(outline!.filter(({ kind }) => kind === "arc")).toHaveLength(4);
    expect(outlineArea(window(60, 50, 10, 5)[0]!)).toBeCloseTo(40 * 30 - (4 - Math.PI) * 25, 6);
  });
  test("is left out where it would save under 250 mm²", () => {
    expect(window(30, 45, 10)).toHaveLength(1);
    expect(window(30, 44.9, 10)).toHaveLength(0);
    expect(window(20, 20, 11)).toHaveLength(0);
  });
  test("has no side too short to be rounded: both its ends become the corner between them", () => {
    const chipped = corners([0, 0], [60, 0], [60, 46], [56, 50], [0, 50]);
    const [outline] = windowOutline(chipped, () => 0);
    expect(outline!.filter(({ kind }) => kind === "arc")).toHaveLength(4);
    expect(outline!.some(({ from }) => Math.abs(from.x + from.y - 106) < 8)).toBe(true);
    expect(isClosed(outline!)).toBe(true);
  });
});

test("a box with rounded corners: closed, counter-clockwise, and as large as its sides less its corners", () => {
  const box = roundedBoxOutline(-3, 2, 17, 12, 4);
  expect(outlineArea(box)).toBeCloseTo(200 - (4 - Math.PI) * 16, 9);
  expect(isClosed(box)).toBe(true);
  expect(box.filter(({ kind }) => kind === "arc")).toHaveLength(4);
  const sharp = roundedBoxOutline(-3, 2, 17, 12, 0);
  expect(sharp.every(({ kind }) => kind === "line")).toBe(true);
  expect([sharp.length, outlineArea(sharp)]).toEqual([4, 200]);
  // As round as it is high: two half circles and two sides.
  const bar = roundedBoxOutline(0, 0, 20, 10, 5);
  expect([bar.length, outlineArea(bar)]).toEqual([6, expect.closeTo(100 + 25 * Math.PI, 9)]);
});

test("a rising chain between two heights ends at them, and beyond its own ends as it is", () => {
  const chain = [line(point(0, 0), point(10, 10)), arc(point(10, 10), point(20, 20), point(20, 10), -90)];
  const part = clipChainToHeights(chain, 4, 15);
  expect(distance(part[0]!.from, point(4, 4))).toBeLessThan(1e-9);
  const end = part.at(-1)!.to;
  expect(end.y).toBeCloseTo(15, 9);
  expect(Math.hypot(end.x - 20, end.y - 10)).toBeCloseTo(10, 9);
  expect(clipChainToHeights(chain, -5, 50)).toEqual(chain);
});

describe("a jig's words and its plane's name", () => {
  const choicesFor = (name: string, words = ["BED 47°", "43°"]) =>
    nameLabel(words, { ...designWith(), name }, point(0, 0)).choices;

  test("a short name stands whole in every choice that has one: lines apart, the words on one, all on one, each word by itself", () => {
    expect(choicesFor("jack", ["BED 47°", "43°"])).toEqual([
      ["BED 47°", "43°", "jack"],
      ["BED 47° 43°", "jack"],
      ["BED 47° 43° jack"],
      ["BED", "47°", "43°", "jack"],
      ["BED 47°", "43°"],
      ["BED 47° 43°"],
      ["BED", "47°", "43°"],
    ]);
  });
  test("a long one is broken behind its dashes, dots and low lines into lines of 24, 16 and 12, then shortened in its middle", () => {
    const name = "long-plane_of.the-old.workshop";
    const choices = choicesFor(name, ["X"]);
    const names = choices.map((lines) => lines.filter((line) => line !== "X").map((line) => line.replace(/^X /, "")));
    const broken = names.filter((lines) => lines.length > 1);
    expect(new Set(broken.map((lines) => lines.join("")))).toEqual(new Set([name]));
    for (const most of [24, 16, 12])
      expect(broken.some((lines) => lines.every((line) => line.length <= most))).toBe(true);
    for (const lines of broken) for (const line of lines.slice(0, -1)) expect(line).toMatch(/[-._]$/);
    // No two lines would have gone into one.
    const widest = broken.filter((lines) => Math.max(...lines.map((line) => line.length)) > 16)[0]!;
    for (const [i, line] of widest.slice(1).entries()) expect(line.length + widest[i]!.length).toBeGreaterThan(24);
    const short = [...new Set(names.filter((lines) => lines.length === 1).map(([line]) => line!))].slice(1);
    expect(short.map((each) => each.length)).toEqual([16, 12, 10, 8, 6, 4]);
    for (const each of short) {
      const [, start, end] = /^(.*)\.(.{1,4})$/.exec(each)!;
      expect([name.startsWith(start!), name.endsWith(end!)]).toEqual([true, true]);
    }
    expect(short[0]!.endsWith("shop")).toBe(true);
  });
  test("no line that it is broken into has 13 letters where lines of 12 are wanted", () => {
    const lines = choicesFor("abcdef-ghijk-mnopqrst", ["X"]).map((each) => each.filter((line) => line !== "X"));
    expect(lines).toContainEqual(["abcdef-", "ghijk-", "mnopqrst"]);
    expect(lines).toContainEqual(["abcdef-ghijk-", "mnopqrst"]);
  });
  test("a name in one piece is not broken, and one of 12 letters is shortened only below that", () => {
    expect(choicesFor("W".repeat(30), ["X"]).every((lines) => lines.length <= 2)).toBe(true);
    const lengths = choicesFor("abcdefghijkl", ["X"]).flatMap((lines) =>
      lines.filter((line) => !line.startsWith("X")).map(({ length }) => length),
    );
    expect([...new Set(lengths)]).toEqual([12, 10, 8, 6, 4]);
  });
});
