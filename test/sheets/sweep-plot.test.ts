// The plot of a sweep: every design on its line, broken lines where a check stops it, each line told by its value.
import { lengthAxis, type Picture, type SweptPoint, sweepPlot } from "@lamplane/sheets";
import fc from "fast-check";
import { expect, test } from "vitest";
import { expectSound, textsOf } from "../support/sound-picture.ts";

const ANGLE = { label: "bed.angle", unit: "°" };
const GAP = { label: "glueGap", unit: "mm" };
const run = (count: number, y: (x: number) => number | undefined, stops: (x: number) => string[] = () => []) =>
  Array.from({ length: count }, (_, x): SweptPoint => ({ x, y: y(x), stops: stops(x) }));
const plot = (...lines: { label: string; points: readonly SweptPoint[] }[]): Picture =>
  sweepPlot({ name: "sweep-glue-gap", title: "a plane: gap", x: ANGLE, y: GAP, lines, units: "mm" })!;

/** Ends of the lines of a kind, left to right, as shares of the plot's width. */
function reaches(picture: Picture, kind: string): [number, number][] {
  const frame = picture.marks.flatMap((mark) => (mark.kind === "line" && mark.line === "grid" ? mark.segments : []));
  const xs = frame.flatMap(({ from, to }) => [from.x, to.x]);
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  return picture.marks
    .flatMap((mark) => (mark.kind === "line" && mark.line === kind ? [mark.segments] : []))
    .map((segments) => [segments[0]!.from.x, segments.at(-1)!.to.x].map((x) => (x - left) / (right - left)))
    .filter(([from, to]) => Math.abs(from! - to!) > 0.01)
    .map(([from, to]) => [Number(from!.toFixed(3)), Number(to!.toFixed(3))]);
}

test("a line is broken from the last design that may be built, and says what stops it", () => {
  const picture = plot({
    label: "3 mm",
    points: run(
      11,
      (x) => x,
      (x) => (x > 6 ? ["throat-narrowing"] : []),
    ),
  });
  expect(reaches(picture, "strong")).toEqual([[0, 0.6]]);
  expect(reaches(picture, "hidden")).toEqual([[0.6, 1]]);
  const words = textsOf(picture)
    .map(({ text }) => text)
    .join(" ");
  expect(words).toMatch(/stopped by throat-narrowing/);
  expect(words).toMatch(/3 mm/);
  expectSound(picture);
});

test("a line that may be built all along has no broken stretch and no word of a check", () => {
  const picture = plot({ label: "", points: run(5, (x) => x * x) });
  expect(reaches(picture, "hidden")).toEqual([]);
  const words = textsOf(picture).map(({ text }) => text);
  expect(words.some((text) => /stopped/.test(text))).toBe(false);
  expect(words.filter((text) => text === "glueGap")).toHaveLength(1); // the lone line tells the figure
});

test("designs in any order lie on a line from left to right; those without the figure are left out", () => {
  const points = run(9, (x) => (x === 4 ? undefined : 2 * x));
  expect(plot({ label: "a", points: points.toReversed() })).toEqual(plot({ label: "a", points }));
  expect(
    sweepPlot({
      name: "n",
      title: "t",
      x: ANGLE,
      y: GAP,
      lines: [{ label: "", points: run(3, (x) => (x ? undefined : 1)) }],
      units: "mm",
    }),
  ).toBeUndefined();
});

test("lines that run the same are one, told by all their values", () => {
  const points = run(4, () => 7);
  const told = (...labels: string[]) =>
    textsOf(plot(...labels.map((label) => ({ label, points })))).map(({ text }) => text);
  expect(told("4°", "5°")).toContain("4° and 5°");
  expect(told("4°", "5°", "6°")).toContain("4° to 6°");
});

test("ten thousand designs on a line become no more points than can be told apart, and keep where what stops them changes", () => {
  const stops = (x: number) => (x >= 3333 && x < 3340 ? ["narrow"] : []);
  const picture = plot({ label: "a", points: run(10_000, (x) => Math.sin(x / 1000), stops) });
  const segments = picture.marks.flatMap((mark) =>
    mark.kind === "line" && /strong|hidden/.test(mark.line) ? mark.segments : [],
  );
  expect(segments.length).toBeLessThan(260);
  expect(segments.length).toBeGreaterThan(230);
  expect(picture.marks.some((mark) => mark.kind === "line" && mark.line === "hidden")).toBe(true);
});

test("a figure that is steady but for the arithmetic is drawn level", () => {
  const picture = plot({ label: "", points: run(9, (x) => 16 + (x % 2) * 1e-6) });
  const [line] = picture.marks.flatMap((mark) =>
    mark.kind === "line" && mark.line === "strong" ? [mark.segments] : [],
  );
  const heights = line!.map(({ to }) => to.y);
  expect(Math.max(...heights) - Math.min(...heights)).toBeLessThan(0.1);
});

test("lengths are told in the maker's unit", () => {
  const lines = [{ label: "", points: run(5, (x) => x * 25.4) }];
  const picture = sweepPlot({ name: "n", title: "t", x: GAP, y: GAP, lines, units: "in" })!;
  expect(textsOf(picture).map(({ text }) => text)).toContain("glueGap, in");
  expect(lengthAxis({ label: "", least: 0, greatest: 4 }, "in").unit).toBe("in");
});

test("any sweep is fit for eyes: no words over words, all inside, one line or a dozen", () => {
  const number = fc.integer({ min: -500_000_000, max: 500_000_000 }).map((millionths) => millionths / 1e6); // as in the table
  const point = fc.record({
    x: number,
    y: fc.option(number, { nil: undefined }),
    stops: fc.constantFrom([], [], ["throat-narrowing"], ["block-tip-gap", "peg-room"]),
  });
  const lines = fc.array(fc.array(point, { minLength: 2, maxLength: 30 }), { minLength: 1, maxLength: 12 });
  fc.assert(
    fc.property(lines, (all) => {
      const picture = sweepPlot({
        name: "n",
        title:
          "apprentice-smoother: Gap between the blocks' tips at glue-up. By iron.thickness. Dashed where a check stops the plane.",
        x: ANGLE,
        y: GAP,
        lines: all.map((points, i) => ({ label: all.length === 1 ? "" : `${i + 2.25} mm`, points })),
        units: "mm",
      });
      if (picture) expectSound(picture);
    }),
    { numRuns: 60 },
  );
});
