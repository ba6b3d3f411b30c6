// The wood of a core in layers: strips that stand on edge, worked by hand, in place of a billet.
import { asBuiltPlane, buildState, stepWords, stockPlan } from "@lamplane/bench";
import { elevation, figureValue, layersOf, layerThickness } from "@lamplane/parameters/elevation";
import { expect, test } from "vitest";
import { designWith, WORKED } from "../../support/designs.ts";

// Core 49.6, cheeks 8; blank 230 + 25.4 long, 58 + 3 high; milling 1.5 a face, kerf 3.2, pass 0.8.
const LAYERED = { ...WORKED, "core.layers": "15.3 mm + 19 mm + 15.3 mm", "core.board": 22, "wood.rings": 90 };
const plan = stockPlan(elevation(designWith(LAYERED)));

test("five strips of the board, each as long as the blank and as wide as it is high with its milling", () => {
  expect(plan.layers).toMatchObject({
    count: 5,
    board: 22,
    thickest: 22 - 1.6,
    length: 255.4,
    width: 64,
    boardRings: 0,
  });
  expect(plan.layers!.running).toBeCloseTo(5 * (255.4 + 3.2), 9);
  expect(
    plan.layers!.strips.map(({ numbers, count, thickness }) => [numbers, count, Number(thickness.toFixed(6))]),
  ).toEqual([
    [[2], 1, 19],
    [[1, 3], 2, 15.3],
    [[], 2, 8],
  ]);
});

test("the stock list names layers and their pegs, and nothing comes from a billet", () => {
  const rows = plan.list.rows.map(({ piece, count, from }) => [piece, count, from]);
  expect(rows.slice(0, 3)).toEqual([
    ["core layer", 1, "boards"],
    ["core layer", 2, "boards"],
    ["cheek", 2, "boards"],
  ]);
  expect(rows).toContainEqual(["layer peg", 4, "separate"]);
  expect(rows.map(([, , from]) => from)).not.toContain("billet");
  const peg = plan.list.rows.find(({ piece }) => piece === "layer peg")!;
  expect(peg.finished).toEqual({ length: 47.6, width: 6, thickness: 6 });
  for (const key of ["billetWidth", "billetWidthByRule", "roughCore"] as const)
    expect(figureValue(elevation(designWith(LAYERED)), key), key).toBeUndefined();
});

test("an offcut is no wider than a layer: no wedge of 48 comes out of it", () => {
  expect(plan.offcut.width).toBeCloseTo(19, 9);
  expect(plan.offcut.wedge.fits).toBe(false);
});

test("a core in one piece has no strips", () => {
  expect(stockPlan(elevation(designWith(WORKED))).layers).toBeUndefined();
});

test("steps speak of layers, and of the recess that they make", () => {
  const titles = (["core", "cuts", "recess", "bed"] as const).map((step) => stepWords(designWith(LAYERED), step).title);
  expect(titles).toEqual([
    "Rip and plane layers and cheeks",
    "Cut the layers and glue the blocks",
    "Clean out the recess",
    "True the bed",
  ]);
  expect(stepWords(designWith({ ...LAYERED, "capIron.thickness": 0 }), "recess").title).toBe("No recess to rout");
  expect(stepWords(designWith(WORKED), "cuts").title).toBe("Cut ramp and bed");
});

test("a stack measured wider has it in its outer layers; the middle one keeps the recess", () => {
  const built = asBuiltPlane(designWith({ ...LAYERED, "measured.coreWidth": 49.8 }));
  expect(layersOf(built)!.map((layer) => Number(layerThickness(layer).toFixed(6)))).toEqual([15.4, 19, 15.4]);
  expect(built.recess!.width).toBeCloseTo(19, 6);
});

test("layers left to auto stay as they were planed once the core is done", () => {
  const auto = { ...LAYERED, "core.layers": "auto" };
  const done = asBuiltPlane(designWith({ ...auto, "measured.coreWidth": 57.9, "core.board": 20.7 }));
  // the board would give no outer layer of 19.45: planned anew there would be five
  expect(layersOf(done)).toHaveLength(3);
  expect(layersOf(elevation(designWith({ ...auto, "body.sideClearance": 9.9, "core.board": 20.7 })))).toHaveLength(5);
});

test("a recess measured wider takes it from the outer layers", () => {
  const built = asBuiltPlane(designWith({ ...LAYERED, "measured.recessWidth": 19.4 }));
  expect(layersOf(built)!.map((layer) => Number(layerThickness(layer).toFixed(6)))).toEqual([15.1, 19.4, 15.1]);
  expect(built.recess!.width).toBeCloseTo(19.4, 6);
});

test("the build's state is read at every step of a layered plane", () => {
  for (const done of ["iron", "core", "cuts", "recess", "glue-up"] as const)
    expect(buildState(designWith({ ...LAYERED, "measured.done": done }))).toBeDefined();
});
