// Plots read back as a reader would: a tick's number stands where the axis has it, the lines run through their data, words stay off lines.
import { elevation } from "@lamplane/parameters/elevation";
import { mouthPlot, type Picture, throatPlot } from "@lamplane/sheets";
import { describe, expect, test } from "vitest";
import { designWith, WORKED } from "../support/designs.ts";
import { distanceToChords, linesOf, type Place } from "../support/drawn-lines.ts";

const planes = [
  ["the worked plane", elevation(designWith(WORKED))],
  [
    "a curved ramp",
    elevation(designWith({ ...WORKED, "bed.angle": 55, "ramp.angle": "auto", "mouth.fromToe": "auto" })),
  ],
] as const;
const plots = planes.flatMap(([name, plane]) =>
  [mouthPlot(plane), throatPlot(plane)].map((picture) => [`${picture.name} of ${name}`, picture] as const),
);

const textsOf = ({ marks }: Picture) => marks.flatMap((mark) => (mark.kind === "text" ? [mark] : []));
const gridOf = ({ marks }: Picture) =>
  marks.flatMap((mark) => (mark.kind === "line" && mark.line === "grid" ? mark.segments : []));

describe.each(plots)("%s", (_, picture) => {
  const { x, y } = picture.axes!;
  const toPicture = (p: Place): Place => ({
    x: x.low + ((p.x - x.from) / (x.to - x.from)) * (x.high - x.low),
    y: y.low + ((p.y - y.from) / (y.to - y.from)) * (y.high - y.low),
  });

  test("every line of the grid has its number beside it, and that is where the axis has it", () => {
    const [upright, level] = [true, false].map((isUpright) =>
      gridOf(picture).filter(({ from, to }) => Math.abs(isUpright ? from.x - to.x : from.y - to.y) < 1e-9),
    );
    expect(Math.min(upright!.length, level!.length)).toBeGreaterThanOrEqual(2);
    for (const { from, to } of upright!) {
      const [number] = textsOf(picture).filter(
        ({ at, anchor }) => anchor === "middle" && Math.abs(at.x - from.x) < 1e-6 && at.y < y.low,
      );
      expect(toPicture({ x: Number(number!.text), y: 0 }).x).toBeCloseTo(from.x, 6);
      expect([Math.min(from.y, to.y), Math.max(from.y, to.y)]).toEqual([
        expect.closeTo(y.low, 6),
        expect.closeTo(y.high, 6),
      ]);
    }
    for (const { from, to } of level!) {
      const [number] = textsOf(picture).filter(
        ({ at, anchor, size }) => anchor === "end" && at.x < x.low && Math.abs(at.y + 0.35 * size - from.y) < 0.5,
      );
      expect(toPicture({ x: 0, y: Number(number!.text) }).y).toBeCloseTo(from.y, 6);
      expect([Math.min(from.x, to.x), Math.max(from.x, to.x)]).toEqual([
        expect.closeTo(x.low, 6),
        expect.closeTo(x.high, 6),
      ]);
    }
  });

  test("each axis has its label with its unit, along the lower edge and over the left one", () => {
    const of = ({ label, unit }: typeof x) =>
      textsOf(picture).find(({ text }) => text === (unit === "" ? label : `${label}, ${unit}`))!;
    expect(of(x).at.y).toBeLessThan(y.low);
    expect(of(x).at.x).toBeCloseTo((x.low + x.high) / 2, 6);
    expect(of(y).at.y).toBeGreaterThan(y.high);
    expect(of(y).at.x).toBeLessThan(x.low);
  });

  test("its lines run through their data, end to end within the axes", () => {
    const drawn = linesOf(picture)
      .filter(({ line }) => line !== "outline")
      .map(({ chords }) => chords);
    expect(picture.lines!.length).toBeGreaterThan(0);
    for (const { name, points } of picture.lines!) {
      const wanted = points.map(toPicture);
      const isDrawn = drawn.some(
        (chords) =>
          wanted.every((p) => distanceToChords(p, chords) < 1e-3) &&
          chords.every(([from]) => Math.min(...wanted.map((p) => Math.abs(p.x - from.x))) < 5),
      );
      expect(isDrawn, name).toBe(true);
      for (const p of wanted) {
        expect(p.x > x.low - 1e-6 && p.x < x.high + 1e-6, name).toBe(true);
        expect(p.y > y.low - 1e-6 && p.y < y.high + 1e-6, name).toBe(true);
      }
    }
  });

  test("its frame keeps to the picture with room for what stands round it", () => {
    expect(x.low).toBeGreaterThan(5);
    expect(y.low).toBeGreaterThan(8);
    expect(picture.width - x.high).toBeGreaterThan(3);
    expect(picture.height - y.high).toBeGreaterThan(6);
    expect((x.high - x.low) / picture.width).toBeGreaterThan(0.4);
    expect((y.high - y.low) / picture.height).toBeGreaterThan(0.4);
    for (const { at } of textsOf(picture)) {
      expect(at.x >= 0 && at.x <= picture.width).toBe(true);
      expect(at.y >= 0 && at.y <= picture.height).toBe(true);
    }
  });
});
