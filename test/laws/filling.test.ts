// Laws of the parts among themselves: the cheeks are mirror images, and the parts with the throat fill the body.

import { outlineArea } from "@lamplane/geometry";
import { blocksAt, cheekShape, elevation, type Stage } from "@lamplane/parameters/elevation";
import { bodySolid, type Part, partsOf } from "@lamplane/parameters/solids";
import { describe, expect, test } from "vitest";
import { isBuildable } from "../support/buildable.ts";
import { designWith, randomDesigns } from "../support/designs.ts";
import { solidTriangles } from "../support/meshes.ts";

const STAGES: readonly Stage[] = ["blank", "glued", "trued"];
const cases = randomDesigns(91, 60, isBuildable).map(({ changes, design }, i) => ({
  changes,
  design,
  stage: STAGES[i % STAGES.length]!,
}));

/** Corners of a solid once each, in an order of their own; −0 is 0. */
const cornersOf = (solid: Part["inPlace"], turn: readonly [number, number, number] = [1, 1, 1]): string[] =>
  [
    ...new Set(
      solidTriangles(solid).flatMap((triangle) => triangle.map((p) => p.map((c, k) => c * turn[k]! + 0).join(" "))),
    ),
  ].sort();

describe("the cheeks", () => {
  const pairs = cases.map(({ design, stage }) => {
    const parts = partsOf(elevation(design), stage);
    return {
      left: parts.find(({ name }) => name === "cheek-left")!,
      right: parts.find(({ name }) => name === "cheek-right")!,
    };
  });

  test("mirror each other in the plane's middle, corner for corner", () => {
    for (const { left, right } of pairs) expect(cornersOf(left.inPlace, [1, 1, -1])).toEqual(cornersOf(right.inPlace));
  });
  test("hold the same volume, and lie in boxes of the same size", () => {
    for (const { left, right } of pairs) {
      expect(right.volume).toBeCloseTo(left.volume, 6);
      const box = (part: Part) =>
        [0, 1, 2].map((k) => Math.max(...solidTriangles(part.lying).flatMap((triangle) => triangle.map((p) => p[k]!))));
      box(left).forEach((size, k) => void expect(size).toBeCloseTo(box(right)[k]!, 9));
    }
  });
  test("are drawn as mirror images: as much wood, the same holes from their other ends", () => {
    for (const { left, right } of pairs) {
      const outline = ({ drawing }: Part) =>
        drawing.entries.flatMap((e) => (e.kind === "outline" && e.work === "CUT" ? [e.outline] : []))[0]!;
      expect(outlineArea(outline(left))).toBeCloseTo(outlineArea(outline(right)), 6);
      const width = Math.max(...outline(right).map(({ from }) => from.x));
      const holes = ({ drawing }: Part) => drawing.entries.flatMap((e) => (e.kind === "circle" ? [e.circle] : []));
      expect(holes(left)).toHaveLength(holes(right).length);
      holes(left).forEach(({ centre }, i) => {
        expect(width - centre.x).toBeCloseTo(holes(right)[i]!.centre.x, 6);
        expect(centre.y).toBeCloseTo(holes(right)[i]!.centre.y, 6);
      });
    }
  });
  test("but are not the same piece: neither lies as the other does", () => {
    const [{ left, right }] = pairs as [(typeof pairs)[0]];
    expect(cornersOf(left.lying)).not.toEqual(cornersOf(right.lying));
  });
});

test("blocks, cheeks, holes and throat fill the body's block, where no recess is cut", () => {
  for (const { changes, stage } of cases) {
    const plane = elevation(designWith({ ...changes, "body.outline": "flat", "capIron.screwHead.diameter": 0 }));
    if (stage === "blank") continue;
    const { boundary, circles } = cheekShape(plane, stage);
    const wood = partsOf(plane, stage).slice(0, 4);
    const throat = outlineArea(blocksAt(plane, stage).throat) * plane.widths.core;
    const holes = circles.reduce((sum, { radius }) => sum + Math.PI * radius ** 2, 0) * 2 * plane.widths.cheek;
    const whole = outlineArea(boundary) * plane.widths.body;
    const filled = wood.reduce((sum, { volume }) => sum + volume, 0) + throat + holes;
    expect(Math.abs(filled / whole - 1)).toBeLessThan(2e-5); // holes and curved ramps are in chords
    expect(bodySolid(plane, stage).volume).toBeCloseTo(whole - throat - holes, -2);
  }
});

test("the stages only take wood away", () => {
  for (const { design } of cases.slice(0, 30)) {
    const plane = elevation(design);
    const [blank, glued, trued] = STAGES.map(
      (stage) => new Map(partsOf(plane, stage).map(({ name, volume }) => [name, volume])),
    );
    for (const name of ["front-block", "bed-block", "cheek-left", "cheek-right"]) {
      expect(glued!.get(name)!, name).toBeLessThanOrEqual(blank!.get(name)! + 200); // pegs' holes are in the waste that goes
      expect(trued!.get(name)!, name).toBeLessThanOrEqual(glued!.get(name)! + 1e-6);
    }
    for (const name of ["wedge", "cross-pin"]) expect(trued!.get(name)).toBe(blank!.get(name));
  }
});
