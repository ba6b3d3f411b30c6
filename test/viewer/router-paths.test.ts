// The router's path as it is played: where the cutter is at each time follows from the program's own lines, read word by word.
import { asBuiltPlane } from "@lamplane/bench";
import { describe, expect, test } from "vitest";
import { formatTime, pointAt, stepAt } from "../../packages/viewer/src/router/place-on-path.ts";
import { type RouterPath, routerPaths } from "../../packages/viewer/src/router/router-paths.ts";
import { designWith, WORKED } from "../support/designs.ts";
import { sheet } from "../support/nested.ts";
import { cutter, withRouter } from "../support/router-designs.ts";

const CUTTERS = [cutter("end-6", 6), cutter("drill-9.7", 9.7, { kind: "drill", step: 5 })];
const routed = withRouter(designWith(WORKED), CUTTERS, { zero: "corner-top", units: "mm" });
const design = { ...routed, sheets: [sheet("cheeks", "wood", [700, 300, routed.body.cheek])] };
const { paths, notCut, style } = routerPaths(asBuiltPlane(design), "0")!;

/** X, Y, Z and F of a block; what is not there is as before. @see NISTIR 6556, words of a block */
const wordsOf = (block: string): Record<string, number> =>
  Object.fromEntries([...block.matchAll(/([XYZF])(-?[\d.]+)/g)].map(([, letter, number]) => [letter, Number(number)]));

test("every set-up has a path, the shop's sheet too; what is not cut says why", () => {
  expect(paths.length).toBeGreaterThan(5);
  expect(paths.some(({ files }) => files.some(({ path }) => path.startsWith("nested/")))).toBe(true);
  for (const { title, why } of notCut) expect(Math.min(title.length, why.length)).toBeGreaterThan(3);
  expect(style.units).toBe("mm");
  expect(routerPaths(asBuiltPlane(designWith(WORKED)), "0")).toBe(undefined);
});

describe.each(paths.map((path) => [path.name, path] as const))("%s", (_, path) => {
  test("each step ends where its line of the program says, and takes as long as its feed", () => {
    let [time, feed, file, read] = [0, 0, 0, 0];
    const at: Record<string, number> = { X: 0, Y: 0 };
    for (const [i, step] of path.steps.entries()) {
      const { lines } = path.files[step.file]!;
      if (step.file !== file) [file, read] = [step.file, 0];
      for (const line of lines.slice(read, step.line)) Object.assign(at, line.startsWith("(") ? {} : wordsOf(line));
      read = step.line;
      const block = lines[step.line - 1]!;
      feed = at.F ?? 0;
      expect(Math.abs(step.to.x - at.X!), `${i}: ${block}`).toBeLessThan(1e-3);
      expect(Math.abs(step.to.y - at.Y!), `${i}: ${block}`).toBeLessThan(1e-3);
      expect(Math.abs(step.to.z - at.Z!), `${i}: ${block}`).toBeLessThan(1e-3);
      expect(block.startsWith("G0"), `${i}: ${block}`).toBe(step.role === "rapid");
      expect(step.begin).toBeCloseTo(time, 9);
      if (step.role !== "rapid")
        expect(step.end - step.begin, `${i}: ${block}`).toBeCloseTo((60 * lengthOf(step)) / feed, 4);
      time = step.end;
      const before = path.steps[i - 1];
      if (before) expect(step.from).toEqual(before.to);
    }
    expect(path.duration).toBeCloseTo(time, 9);
  });

  test("the cutter is at a step's ends at its begin and end, between them on its line or round its middle", () => {
    for (const [i, step] of path.steps.entries()) {
      const places = [0, 0.25, 0.5, 1].map((share) => pointAt(step, step.begin + share * (step.end - step.begin)));
      expect(Math.hypot(places[3]!.x - step.to.x, places[3]!.y - step.to.y, places[3]!.z - step.to.z)).toBeLessThan(
        1e-6,
      );
      if (step.end === step.begin) continue;
      expect(
        Math.hypot(places[0]!.x - step.from.x, places[0]!.y - step.from.y, places[0]!.z - step.from.z),
      ).toBeLessThan(1e-6);
      expect(places[2]!.z).toBeCloseTo((step.from.z + step.to.z) / 2, 9);
      if (step.centre) {
        const radius = places.map(({ x, y }) => Math.hypot(x - step.centre!.x, y - step.centre!.y));
        for (const r of radius) expect(r).toBeCloseTo(radius[0]!, 6);
      } else {
        expect(places[1]!.x).toBeCloseTo(step.from.x + (step.to.x - step.from.x) / 4, 9);
        expect(places[1]!.y).toBeCloseTo(step.from.y + (step.to.y - step.from.y) / 4, 9);
      }
      if (step.end - step.begin > 1e-6) expect(stepAt(path.steps, (step.begin + step.end) / 2)).toBe(i);
    }
    expect(stepAt(path.steps, path.duration + 5)).toBe(path.steps.length - 1);
    const last = path.steps.at(-1)!;
    expect(pointAt(last, last.end + 9)).toEqual(pointAt(last, last.end));
    expect(pointAt(last, last.begin - 9)).toEqual(pointAt(last, last.begin));
  });

  test("passes begin where wood is met after a rapid move, or deeper than since; all lies in the stock but for the cutter's way round it", () => {
    const begins = new Set(path.passes);
    let deepest = Number.POSITIVE_INFINITY;
    for (const [i, { role, to }] of path.steps.entries()) {
      if (role === "rapid") deepest = Number.POSITIVE_INFINITY;
      const isCut = role === "pass" || role === "finish";
      expect(begins.has(i), `${i}: ${role} at ${to.z}`).toBe(isCut && to.z < deepest - 0.005);
      if (isCut) deepest = Math.min(deepest, to.z);
    }
    const reach = Math.max(...path.cutters.map(({ diameter }) => diameter));
    for (const { to, role } of path.steps) {
      if (role === "rapid") continue;
      expect(to.z).toBeGreaterThanOrEqual(path.stock.min.z - design.router.through - 1e-6);
      if (path.name === "recess") continue; // it is cut out over the block's end
      expect(to.x).toBeGreaterThan(path.stock.min.x - reach);
      expect(to.x).toBeLessThan(path.stock.max.x + reach);
      expect(to.y).toBeGreaterThan(path.stock.min.y - reach);
      expect(to.y).toBeLessThan(path.stock.max.y + reach);
    }
    expect(path.stock.max.z).toBe(0);
  });

  test("every file's cutter is named where it is used", () => {
    for (const { cutter: number } of path.steps)
      expect(CUTTERS.map(({ name }) => name)).toContain(path.cutters[number]!.name);
    expect(new Set(path.steps.map(({ cutter: number }) => number)).size).toBe(path.cutters.length);
    expect(path.outlines.length).toBeGreaterThan(0);
  });
});

/** Along a line, or along an arc that rises evenly. */
function lengthOf({ from, to, centre, sweep }: RouterPath["steps"][number]): number {
  const flat =
    centre && sweep !== undefined
      ? (Math.abs(sweep) * Math.PI * Math.hypot(from.x - centre.x, from.y - centre.y)) / 180
      : Math.hypot(to.x - from.x, to.y - from.y);
  return Math.hypot(flat, to.z - from.z);
}

test("time reads in minutes and seconds", () => {
  expect([0, 59.4, 59.6, 124, 3600].map(formatTime)).toEqual(["0:00", "0:59", "1:00", "2:04", "60:00"]);
});
