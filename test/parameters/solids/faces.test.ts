// The lists of exact faces that solids are made from: what they are, what they enclose, and how the mesh comes near to it.
import { readFileSync } from "node:fs";
import { countOpenEdges, type Face, facesVolume, meshVolume, tessellateFaces } from "@lamplane/geometry/mesh";
import { readDesign } from "@lamplane/parameters/design";
import { type Elevation, elevation } from "@lamplane/parameters/elevation";
import { bodyFaces, partFaces } from "@lamplane/parameters/solids";
import { describe, expect, test } from "vitest";
import { designWith } from "../../support/designs.ts";
import { outlineVolumes } from "../../support/outline-volumes.ts";

const EXAMPLES = ["apprentice-smoother", "figured-finisher", "trestle-jack", "workshop-jointer"];

function examplePlane(name: string): Elevation {
  const reading = readDesign(readFileSync(new URL(`../../../examples/${name}.yaml`, import.meta.url), "utf8"), name);
  if (!reading.ok) throw new Error(`${name} is no design`);
  return elevation(reading.design);
}

const PLANES: [string, Elevation][] = [
  ...EXAMPLES.map((name): [string, Elevation] => [name, examplePlane(name)]),
  ["an arched one", elevation(designWith({ "body.outline": "arched", "capIron.hump": 0 }))],
  ["a curved ramp", elevation(designWith({ "bed.angle": 55, "pin.section": "round" }))],
];

/** A curved ramp's arc states its sweep some 1e-7° off what its ends say, which is felt in the ninth place of a volume. */
const ARC_ROUNDING = 1e-8;
const nearWithin = (rounding: number) => (found: number, exact: number) =>
  expect(Math.abs(found / exact - 1)).toBeLessThan(rounding);

describe.each(PLANES)("%s", (name, plane) => {
  const near = nearWithin(name === "a curved ramp" ? ARC_ROUNDING : 1e-9);
  const stages = ["blank", "trued"] as const;
  const lists: Face[][] = [
    ...stages.flatMap((stage) => partFaces(plane, stage).map(({ faces }) => [...faces])),
    bodyFaces(plane, "glued"),
    bodyFaces(plane, "trued"),
  ];

  test("has planes and cylinders alone, bounded by lines along the axis and arcs about it", () => {
    for (const { surface, loops } of lists.flat()) {
      if (surface.kind === "plane") continue;
      expect(surface.kind).toBe("cylinder");
      expect(loops).toHaveLength(1);
      expect(loops[0]!.filter(({ kind }) => kind === "arc")).toHaveLength(2);
      for (const edge of loops[0]!)
        for (const p of [edge.from, edge.to]) {
          const d = p.map((c, k) => c - surface.origin[k]!);
          const along = d.reduce((sum, c, k) => sum + c * surface.axis[k]!, 0);
          expect(Math.sqrt(d.reduce((sum, c) => sum + c * c, 0) - along ** 2)).toBeCloseTo(surface.radius, 7);
        }
    }
  });

  test("has the volume of its outlines, exactly", () => {
    for (const stage of stages) {
      const found = new Map(partFaces(plane, stage).map(({ name, faces }) => [name, facesVolume(faces)]));
      for (const [part, volume] of outlineVolumes(plane, stage)) near(found.get(part)!, volume);
    }
  });

  test("the body encloses what its two blocks and cheeks do", () => {
    const parts = partFaces(plane, "trued").filter(({ name }) => /block|cheek/.test(name));
    near(
      facesVolume(bodyFaces(plane, "trued")),
      parts.reduce((sum, { faces }) => sum + facesVolume(faces), 0),
    );
  });

  test("meshes close at every fineness and come to the exact volume", () => {
    for (const faces of lists) {
      const exact = facesVolume(faces);
      const off = [0.02, 0.005, 0.00002].map((chordError) => {
        const mesh = tessellateFaces(faces, chordError);
        expect(countOpenEdges(mesh)).toBe(0);
        return Math.abs(meshVolume(mesh) / exact - 1);
      });
      expect(off[1]!).toBeLessThan(2e-3);
      expect(off[2]!).toBeLessThan(8e-6);
    }
  });
});
