// The bed cradle's seats against the block that lies in them: how far up heel and sole they reach, and that it does not tip over them.
import { distance, outlineArea, point } from "@lamplane/geometry";
import { blocksAt, elevation, planeToBed } from "@lamplane/parameters/elevation";
import { expect, test } from "vitest";
import { cradleLayout } from "../../../packages/parameters/src/jigs/bed-cradle.ts";
import { type Changes, designWith, randomDesigns, WORKED } from "../../support/designs.ts";

const CHANGES: readonly Changes[] = [
  WORKED,
  { ...WORKED, "body.height": 32, "sole.allowance": 1 },
  { ...WORKED, "body.height": 40, "sole.allowance": 4 },
  { ...WORKED, "mouth.fromToe": 150 },
  ...randomDesigns(63, 20).map(({ changes }) => ({ ...changes, "body.outline": "flat" })),
];
const cases = CHANGES.map((changes) => {
  const plane = elevation(designWith(changes));
  const outline = blocksAt(plane, "blank").bed;
  return { plane, outline, layout: cradleLayout(plane) };
});

test("the seat behind the heel ends 30 up it, or at six tenths of a low block, square to the seat under the sole", () => {
  let low = 0;
  for (const { plane, layout } of cases) {
    const { corner, heelEnd, soleEnd } = layout;
    const high = plane.design.body.height + plane.design.sole.allowance;
    if (0.6 * high < 30) low++;
    expect(distance(corner, heelEnd)).toBeCloseTo(Math.min(30, 0.6 * high), 9);
    const square = (soleEnd.x - corner.x) * (heelEnd.x - corner.x) + (soleEnd.y - corner.y) * (heelEnd.y - corner.y);
    expect(Math.abs(square)).toBeLessThan(1e-6);
  }
  expect(low).toBeGreaterThan(1);
});

test("both seats run from the block's corner along its sole and its heel", () => {
  for (const { plane, outline, layout } of cases) {
    const foot = outline.map(({ from }) => from).reduce((a, b) => (b.x - b.y > a.x - a.y ? b : a));
    const onBed = (x: number, y: number) => {
      const { s, v } = planeToBed(plane.frame, { x, y });
      return point(s, v);
    };
    expect(distance(layout.corner, onBed(foot.x, foot.y))).toBeLessThan(1e-6);
    const seat = distance(layout.corner, layout.soleEnd);
    expect(distance(layout.soleEnd, onBed(foot.x - seat, foot.y))).toBeLessThan(1e-6);
    const heel = distance(layout.corner, layout.heelEnd);
    expect(distance(layout.heelEnd, onBed(foot.x, foot.y + heel))).toBeLessThan(1e-6);
  }
});

test("the seat under the sole leaves 12 of it free before the tip, and where it can reaches 20 beyond the block's middle", () => {
  let reached = 0;
  for (const { plane, outline, layout } of cases) {
    const sole = outline.filter(
      ({ from, to }) => Math.abs(from.y + plane.design.sole.allowance) < 1e-9 && Math.abs(from.y - to.y) < 1e-9,
    );
    const length = Math.max(...sole.map(({ from, to }) => Math.abs(to.x - from.x)));
    const seat = distance(layout.corner, layout.soleEnd);
    expect(seat).toBeLessThanOrEqual(length - 12 + 1e-9);
    if (seat > length - 12 - 1e-6) continue;
    reached++;
    expect(seat).toBeGreaterThanOrEqual(40 - 1e-9);
    if (seat < 40 + 1e-6) continue;
    // The wall under the seat's end, 12 thick, is the base's end: it stands 20 beyond the middle, up the bed.
    const beta = (plane.design.bed.angle * Math.PI) / 180;
    const end = layout.soleEnd.x - 12 * Math.sin(beta);
    expect(middleUpBed(plane, outline) - end).toBeCloseTo(20, 6);
  }
  expect(reached).toBeGreaterThan(5);
});

/** The middle of the block's side by the triangles of its corners, up the bed. */
function middleUpBed(plane: (typeof cases)[number]["plane"], outline: (typeof cases)[number]["outline"]): number {
  const corners = outline.map(({ from }) => planeToBed(plane.frame, from).s);
  const sum = outline.reduce((total, { from, to }, i) => {
    const twice = from.x * to.y - to.x * from.y;
    return (
      total +
      (twice * (corners[i]! + corners[(i + 1) % corners.length]! + planeToBed(plane.frame, { x: 0, y: 0 }).s)) / 6
    );
  }, 0);
  return sum / outlineArea(outline);
}
