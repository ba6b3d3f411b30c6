// A few solids by name: JSCAD's own verdict, manifold-3d's, and whether the tests' own tools can tell a broken one.
import modeling from "@jscad/modeling";
import { assertSolid, type Vec3, weld } from "@lamplane/geometry/mesh";
import { elevation } from "@lamplane/parameters/elevation";
import { bodySolid, partsOf, toGeom3 } from "@lamplane/parameters/solids";
import { describe, expect, test } from "vitest";
import { type Changes, designWith, WORKED } from "../../support/designs.ts";
import { countEdgeFaults, manifoldOf, overlapVolume, solidTriangles, volumeOf } from "../../support/meshes.ts";

const { geom3 } = modeling.geometries;
const { measureBoundingBox } = modeling.measurements;

const NAMED: [string, Changes][] = [
  ["the worked set", WORKED],
  ["an arched smoother", { "body.outline": "arched", "capIron.hump": 0 }],
  ["a steep one with a curved ramp and a round pin", { "bed.angle": 55, "pin.section": "round" }],
  ["a single iron", { "capIron.thickness": 0, "sole.allowance": 0, "bed.featherChamfer": 0 }],
];

describe.each(NAMED)("%s", (_, changes) => {
  const plane = elevation(designWith(changes));

  test("JSCAD finds no fault in its solids", () => {
    for (const { inPlace, lying } of partsOf(plane, "trued")) {
      expect(() => geom3.validate(inPlace)).not.toThrow();
      expect(() => geom3.validate(lying)).not.toThrow();
    }
    for (const stage of ["glued", "trued"] as const)
      expect(() => geom3.validate(bodySolid(plane, stage).solid)).not.toThrow();
  });

  test("manifold-3d finds each part in one piece, the body in one with its holes through", () => {
    for (const part of partsOf(plane, "blank")) {
      const solid = manifoldOf(part.inPlace);
      expect([part.name, solid.decompose().length]).toEqual([part.name, 1]);
      expect(Math.abs(solid.volume() / part.volume - 1)).toBeLessThan(1e-5);
      solid.delete();
    }
    const body = manifoldOf(bodySolid(plane, "trued").solid);
    expect(body.decompose()).toHaveLength(1);
    expect(body.genus()).toBe(3); // throat and two pin holes
    body.delete();
  });

  test("lies with its lowest corner at 0, 0, 0", () => {
    for (const { lying } of partsOf(plane, "trued")) {
      const corners = solidTriangles(lying).flat();
      const low = [0, 1, 2].map((k) => Math.min(...corners.map((p) => p[k]!)));
      expect(low).toEqual([0, 0, 0]);
    }
  });
});

type Triangle = readonly [Vec3, Vec3, Vec3];
const weldTriangles = (triangles: readonly Triangle[]) => weld(triangles.flat(2));

describe("the tests' own tools tell a broken solid", () => {
  const part = partsOf(elevation(designWith(WORKED)), "trued")[0]!;
  const triangles = solidTriangles(part.inPlace) as unknown as Triangle[];

  test("by an open edge, a doubled one, and one turned over", () => {
    const [first, ...rest] = triangles;
    expect(countEdgeFaults(triangles)).toBe(0);
    expect(countEdgeFaults(rest)).toBe(3);
    expect(countEdgeFaults([...triangles, first!])).toBe(3);
    expect(countEdgeFaults([[first![0], first![2], first![1]], ...rest])).toBeGreaterThan(0);
  });

  test("by corners that only rounding to float32 lays together", () => {
    const near = triangles.map((t) => t.map(([x, y, z]) => [x, y, z] as const));
    const sliver: Triangle = [near[0]![0]!, near[0]![1]!, [near[0]![1]![0] + 1e-12, near[0]![1]![1], near[0]![1]![2]]];
    expect(countEdgeFaults([...near, sliver])).toBeGreaterThan(0);
  });

  test("by its volume, and by an overlap", () => {
    expect(volumeOf(triangles)).toBeCloseTo(part.volume, 6);
    const shifted = triangles.map((t) => t.map(([x, y, z]) => [x + 0.01, y, z] as const) as unknown as Triangle);
    const [a, b] = [manifoldOf(part.inPlace), manifoldOf(toGeom3(weldTriangles(shifted)))];
    expect(overlapVolume(a, b)).toBeGreaterThan(0.9 * part.volume);
    for (const solid of [a, b]) solid.delete();
  });

  test("and the gate before every solid refuses one that is open, or of another volume", () => {
    const mesh = weldTriangles(triangles);
    expect(() => assertSolid("it", mesh, part.volume)).not.toThrow();
    expect(() => assertSolid("it", weldTriangles(triangles.slice(1)), part.volume)).toThrow(/it: .*openEdges 3$/);
    expect(() => assertSolid("it", mesh, part.volume + 1)).toThrow(/it: its volume as modelled is/);
  });
});

test("the body to be looked at or printed stands on its sole, z up, as the 3MF document has its parts", () => {
  const plane = elevation(designWith(WORKED));
  const [low, high] = measureBoundingBox(bodySolid(plane, "trued").onSole);
  // 3MF Core Specification 1.4.0, 3.1 and 3.3: z is up, and no coordinate is negative
  for (const at of low) expect(at).toBeCloseTo(0, 9);
  const { length, height } = plane.design.body;
  for (const [k, size] of [length, plane.widths.body, height].entries()) expect(high[k]).toBeCloseTo(size, 6);
});
