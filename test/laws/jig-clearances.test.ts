// Two clearances: printed jigs carry the printer's, in holes and at flanks apart; jigs cut from sheet none. No guide is looser than what it serves.
import { boundsOf, type Outline, tessellate } from "@lamplane/geometry";
import { type Elevation, elevation } from "@lamplane/parameters/elevation";
import { type JigBody, type JigPlan, jigPlans, pinGuideLayout } from "@lamplane/parameters/jigs";
import { describe, expect, test } from "vitest";
import { isBuildable } from "../support/buildable.ts";
import { randomDesigns, seeded } from "../support/designs.ts";

const random = seeded(9);
const PLANES: readonly Elevation[] = randomDesigns(81, 60, isBuildable).map(({ design }) =>
  elevation({
    ...design,
    hand: { ...design.hand, pinHole: Math.round(random() * 50) / 100 },
    jigs: {
      ...design.jigs,
      clearance: Math.round(random() * 40) / 100,
      drillBush: random() < 0.3 ? 15 : 0,
      relief: random() < 0.5 ? 2 : 0,
    },
  }),
);

const planOf = (plane: Elevation, name: string): JigPlan | undefined =>
  jigPlans(plane).find((plan) => plan.name === name);
const middleOf = (outline: Outline) => {
  const { min, max } = boundsOf(tessellate(outline, 1e-4));
  return { x: (min.x + max.x) / 2, y: (min.y + max.y) / 2, radius: (max.x - min.x) / 2 };
};
const cutOf = ({ drawing }: JigPlan, i: number): Outline => {
  const outlines = drawing!.entries.flatMap((entry) =>
    entry.kind === "outline" && entry.work === "CUT" ? [entry.outline] : [],
  );
  return outlines[i]!;
};

describe("the pin guide", () => {
  test("printed, lets the drill off its place by no more than the hole may be off, pegs and drill together", () => {
    for (const plane of PLANES) {
      const { holes } = planOf(plane, "pin-guide")!.bodies[0]!;
      const { drillRadius, pegRadius } = pinGuideLayout(plane);
      const [drill, ...pegs] = holes.map(({ outline }) => middleOf(outline));
      const play = drill!.radius - drillRadius + Math.max(...pegs.map(({ radius }) => radius - pegRadius));
      expect(play).toBeGreaterThan(-1e-3);
      expect(play).toBeLessThanOrEqual(plane.design.hand.pinHole + 1e-3);
    }
  });

  test("cut from sheet, is drilled with the drill and the pegs' own sizes", () => {
    for (const plane of PLANES) {
      const { drillRadius, pegRadius } = pinGuideLayout(plane);
      const radii = planOf(plane, "pin-guide")!.drawing!.entries.flatMap((entry) =>
        entry.kind === "circle" ? [entry.circle.radius] : [],
      );
      expect(radii).toEqual([drillRadius, pegRadius, pegRadius, pegRadius]);
    }
  });
});

describe("the recess template", () => {
  const innerWidth = (fences: readonly Outline[]) => {
    const [left, right] = fences.map((outline) => boundsOf(tessellate(outline))).sort((a, b) => a.min.x - b.min.x);
    return right!.min.x - left!.max.x;
  };
  test("printed, its fences stand off the core by the flanks' clearance; cut from sheet, they lie against it", () => {
    let met = 0;
    for (const plane of PLANES) {
      const plan = planOf(plane, "recess-template");
      if (!plan) continue;
      met++;
      const [body] = plan.bodies as [JigBody];
      const printed = body.risers.slice(1).map(({ outline }) => outline);
      const marks = plan.drawing!.entries.flatMap((entry) => (entry.kind === "path" ? [entry.segments] : [])).slice(1);
      expect(innerWidth(printed)).toBeCloseTo(plane.widths.core + 2 * plane.design.jigs.clearance, 6);
      expect(innerWidth(marks)).toBeCloseTo(plane.widths.core, 6);
    }
    expect(met).toBeGreaterThan(10);
  });
});

test("the wedge sled's pocket is longer than the wedge by the flanks' clearance, printed, and as long from sheet", () => {
  const length = (outline: Outline) => {
    const low = Math.min(...outline.map(({ from }) => from.y));
    const mouth = outline.map(({ from }) => from).filter(({ y }) => Math.abs(y) < 1e-9 && y > low);
    const xs = mouth.map(({ x }) => x).sort((a, b) => a - b);
    // Along the open side from left: the bar's end, the pocket's tip, its butt, the bar's other end.
    return xs.at(-2)! - xs.at(-3)!;
  };
  for (const plane of PLANES) {
    const plan = planOf(plane, "wedge-sled")!;
    if (plane.design.jigs.relief !== 0) continue;
    const [printed, sheet] = [length(plan.bodies[0]!.boundary), length(cutOf(plan, 0))];
    const slope = Math.cos((plane.design.wedge.angle * Math.PI) / 180);
    expect(sheet).toBeCloseTo(plane.wedgeLength / slope, 6);
    expect(printed - sheet).toBeCloseTo(plane.design.jigs.clearance / slope, 6);
  }
});
