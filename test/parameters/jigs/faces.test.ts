// The exact faces of jigs: arcs are cylinders and cones, and what they enclose is the textbook's volume.
import { countOpenEdges, facesVolume, meshVolume, tessellateFaces } from "@lamplane/geometry/mesh";
import { elevation } from "@lamplane/parameters/elevation";
import { FIT_TEST_LENGTH, fitTestShank, TABLE_CHAMFER, TRIED } from "@lamplane/parameters/jigs";
import { planeJigs } from "@lamplane/parameters/solids";
import { describe, expect, test } from "vitest";
import { designWith, WORKED } from "../../support/designs.ts";

const plane = elevation(designWith({ ...WORKED, "jigs.relief": 3 }));
const jigs = planeJigs(plane);

/** @see W. F. Kern and J. R. Bland, "Solid Mensuration", 1938: frustums of pyramid and cone */
function frustum(low: number, high: number, height: number): number {
  return (height * (low + high + Math.sqrt(low * high))) / 3;
}

describe("the fit test", () => {
  const { plainFaces } = jigs.find(({ name }) => name === "fit-test")!;
  const faces = plainFaces[0]!;
  const [c, thick] = [TABLE_CHAMFER, 8];
  const high = fitTestShank(plane) + 1 + 2 * 13;

  test("is a plate chamfered all round, less six holes that open out in a cone", () => {
    const [x, y] = [FIT_TEST_LENGTH, high];
    // The chamfer's sections are no similar rectangles: the prismoidal formula.
    const middle = (x - c) * (y - c);
    const plate = x * y * (thick - c) + (c * ((x - 2 * c) * (y - 2 * c) + 4 * middle + x * y)) / 6;
    const holes = TRIED.map((clearance) => {
      const r = fitTestShank(plane) / 2 + clearance;
      return Math.PI * r * r * (thick - c) + frustum(Math.PI * (r + c) ** 2, Math.PI * r * r, c);
    });
    const exact = holes.reduce((sum, hole) => sum - hole, plate);
    expect(Math.abs(facesVolume(faces) / exact - 1)).toBeLessThan(1e-12);
  });

  test("has a face for each side, slope, hole's half and cone's half, and no facet", () => {
    const count = (kind: string) => faces.filter(({ surface }) => surface.kind === kind).length;
    expect([count("plane"), count("cylinder"), count("cone")]).toEqual([4 + 4 + 2, 12, 12]);
  });
});

test.each(jigs.map((jig) => [jig.name, jig] as const))(
  "%s: every arc is one face, and its mesh closes on the exact volume",
  (_, jig) => {
    for (const faces of jig.plainFaces) {
      for (const { surface, loops } of faces) {
        if (surface.kind === "plane") continue;
        const { origin, axis, radius } = surface;
        const growth = surface.kind === "cone" ? Math.tan((surface.halfAngle * Math.PI) / 180) : 0;
        for (const edge of loops.flat())
          for (const p of [edge.from, edge.to]) {
            const d = p.map((k, i) => k - origin[i]!);
            const along = d.reduce((sum, k, i) => sum + k * axis[i]!, 0);
            const off = Math.sqrt(d.reduce((sum, k) => sum + k * k, 0) - along ** 2);
            expect(off).toBeCloseTo(radius + along * growth, 6);
          }
      }
      const exact = facesVolume(faces);
      const off = [0.005, 0.00002].map((chordError) => {
        const mesh = tessellateFaces(faces, chordError);
        expect(countOpenEdges(mesh)).toBe(0);
        return Math.abs(meshVolume(mesh) / exact - 1);
      });
      expect(off[0]!).toBeLessThan(2e-3);
      expect(off[1]!).toBeLessThan(2e-5);
    }
  },
);
