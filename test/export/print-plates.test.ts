// Plates for the printer: every jig once, apart from the others and within the bed, as one document that holds each by its name.
import { parseThreeMf } from "@lamplane/export";
import { makePackContent } from "@lamplane/export/content";
import { packRectangles } from "@lamplane/geometry";
import { meshBounds, meshVolume } from "@lamplane/geometry/mesh";
import { elevation } from "@lamplane/parameters/elevation";
import { planeJigs } from "@lamplane/parameters/solids";
import fc from "fast-check";
import { expect, test } from "vitest";
import { designWith, WORKED } from "../support/designs.ts";

const GAP = 6;
const MARGIN = 5;

async function platesOf(width: number, depth: number) {
  const design = designWith({ ...WORKED, name: "small", "shop.printer.width": width, "shop.printer.depth": depth });
  const plane = elevation(design);
  const files = await makePackContent({ design, plane, findings: [], version: "0", only: ["jigs"] });
  const plates = [...files].filter(([path]) => path.endsWith(".3mf"));
  return { jigs: planeJigs(plane), plates: plates.map(([, bytes]) => parseThreeMf(bytes as Uint8Array)) };
}

test.each([
  [220, 220],
  [180, 180],
  [400, 300],
])("all jigs on beds of %i × %i mm, none on another", async (width, depth) => {
  const { jigs, plates } = await platesOf(width, depth);
  const fitting = jigs.filter(({ lyingMesh }) => {
    const [x, y] = meshBounds(lyingMesh).max;
    return (
      Math.min(x, y) <= Math.min(width, depth) - 2 * MARGIN && Math.max(x, y) <= Math.max(width, depth) - 2 * MARGIN
    );
  });
  expect(fitting.length).toBeGreaterThan(5);
  const names = plates.flat().map(({ name }) => name);
  expect(names.toSorted()).toEqual(fitting.map(({ name }) => name).toSorted());
  for (const solids of plates) {
    const boxes = solids.map(({ mesh }) => meshBounds(mesh));
    for (const [i, { min, max }] of boxes.entries()) {
      expect(Math.min(min[0], min[1], width - max[0], depth - max[1])).toBeGreaterThanOrEqual(MARGIN - 1e-6);
      expect(min[2]).toBe(0);
      for (const other of boxes.slice(i + 1))
        expect(
          Math.max(other.min[0] - max[0], min[0] - other.max[0], other.min[1] - max[1], min[1] - other.max[1]),
        ).toBeGreaterThanOrEqual(GAP - 1e-6);
    }
    for (const { name, mesh } of solids)
      expect(meshVolume(mesh)).toBeCloseTo(jigs.find((jig) => jig.name === name)!.volume, 0);
  }
});

test("one jig by its name, and nothing else", async () => {
  const design = designWith({ ...WORKED, name: "small" });
  const input = { design, plane: elevation(design), findings: [], version: "0" };
  const files = await makePackContent({ ...input, only: ["jigs/pin-guide"] });
  expect([...files.keys()]).toEqual([
    "jigs/pin-guide.stl",
    "step/jigs/pin-guide.step",
    "jigs/pin-guide.dxf",
    "figures.json",
    "manifest.json",
  ]);
});

const size = fc.integer({ min: 5, max: 130 });
test("rectangles keep their gap, stay on the sheet, turn only where they may, and none is lost", () => {
  fc.assert(
    fc.property(fc.array(fc.tuple(size, size), { maxLength: 30 }), fc.boolean(), (sizes, mayTurn) => {
      const sheet = { width: 140, depth: 100, margin: 4, gap: 3, mayTurn };
      const rectangles = sizes.map(([width, depth], item) => ({ item, width, depth }));
      const { sheets, oversized } = packRectangles(rectangles, sheet);
      expect([...sheets.flat().map(({ item }) => item), ...oversized].toSorted((a, b) => a - b)).toEqual(
        rectangles.map(({ item }) => item),
      );
      for (const placed of sheets) {
        const boxes = placed.map(({ item, x, y, turned }) => {
          const [w, d] = turned ? [sizes[item]![1], sizes[item]![0]] : sizes[item]!;
          return { left: x, low: y, right: x + w, high: y + d, turned };
        });
        for (const [i, a] of boxes.entries()) {
          expect(Math.min(a.left, a.low, 140 - a.right, 100 - a.high)).toBeGreaterThanOrEqual(4);
          expect(a.turned && !mayTurn).toBe(false);
          for (const b of boxes.slice(i + 1))
            expect(Math.max(b.left - a.right, a.left - b.right, b.low - a.high, a.low - b.high)).toBeGreaterThanOrEqual(
              3,
            );
        }
      }
    }),
  );
});
