// The pack of the layered example: each layer in every format, and the parts in place with layers for blocks.
import { readFileSync } from "node:fs";
import { asBuiltPlane } from "@lamplane/bench";
import { checkPlane } from "@lamplane/bench/checks";
import { makePackContent } from "@lamplane/export/content";
import { readDesign } from "@lamplane/parameters/design";
import { layerPegs } from "@lamplane/parameters/elevation";
import { expect, test } from "vitest";

const read = readDesign(readFileSync(new URL("../../examples/layered-smoother.yaml", import.meta.url), "utf8"), "");
if (!read.ok) throw new Error("the example is not read");
const { design } = read;
const plane = asBuiltPlane(design);
const files = await makePackContent({ design, plane, findings: checkPlane(plane), version: "0", only: ["parts"] });
const LAYERS = ["front", "bed"].flatMap((block) => [1, 2, 3].map((number) => `${block}-layer-${number}`));
const textOf = (path: string) => String(files.get(path));

test("every layer has a mesh, an exact solid, a drawing for the saw and one for the eye", () => {
  for (const name of LAYERS)
    for (const path of [`parts/${name}.stl`, `parts/${name}.dxf`, `step/${name}.step`, `drawings/${name}.svg`])
      expect(files.has(path), path).toBe(true);
});

test("its drawing has two holes to drill, as far apart as the pegs", () => {
  const circles = [...textOf("parts/bed-layer-2.dxf").matchAll(/\nCIRCLE\n[\s\S]*?\n10\n([-\d.]+)\n20\n([-\d.]+)/g)];
  const [a, b] = circles.map(([, x, y]) => [Number(x), Number(y)] as const);
  expect(circles).toHaveLength(2);
  const [p, q] = layerPegs(plane).bed.holes;
  expect(Math.hypot(a![0] - b![0], a![1] - b![1])).toBeCloseTo(
    Math.hypot(p.centre.x - q.centre.x, p.centre.y - q.centre.y),
    3,
  );
});

test("the parts in their places are the layers, not the blocks", () => {
  const assembly = textOf("step/plane.step");
  for (const name of LAYERS) expect(assembly).toContain(`'${name}'`);
  expect(assembly).not.toContain("'bed-block'");
});

test("a middle layer's exact solid has its relief as a cylinder, an outer one only its pegs' holes", () => {
  const cylinders = (name: string) => textOf(`step/${name}.step`).match(/CYLINDRICAL_SURFACE/g)?.length ?? 0;
  expect(cylinders("bed-layer-2")).toBe(cylinders("bed-layer-1") + 1);
});
