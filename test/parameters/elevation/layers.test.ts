// The core in layers: their thicknesses and places, the recess that they make, and the pegs through them.
import { distance, outlineArea, shapeArea } from "@lamplane/geometry";
import {
  bedToPlane,
  blocksAt,
  elevation,
  figureValue,
  layerPegLength,
  layerPegs,
  layerPegWood,
  layerShapes,
  layersOf,
  layersOfRecess,
  layersOfStack,
  layerThickness,
  planeToBed,
  setBackLayers,
} from "@lamplane/parameters/elevation";
import { expect, test } from "vitest";
import { type Changes, designWith, WORKED } from "../../support/designs.ts";

const planeWith = (changes: Changes) => elevation(designWith({ ...WORKED, ...changes }));
const thicknesses = (changes: Changes) =>
  layersOf(planeWith({ "core.layers": "auto", ...changes }))!.map((layer) => Number(layerThickness(layer).toFixed(6)));

// Core 49.6 of the worked set; head 16 and clearance 3 want a recess of 19; each face of a board loses 0.8.
test.each([
  ["three from a board that gives 19", { "core.board": 20.6 }, [15.3, 19, 15.3]],
  ["an odd group in the middle from a thinner one", { "core.board": 20 }, [15.3, 19 / 3, 19 / 3, 19 / 3, 15.3]],
  ["outer ones halved", { "core.board": 11 }, [7.65, 7.65, 19 / 3, 19 / 3, 19 / 3, 7.65, 7.65]],
  ["as few as can be where nothing is set back", { "capIron.thickness": 0 }, [49.6 / 3, 49.6 / 3, 49.6 / 3]],
  ["as given", { "core.layers": "14 mm + 21.6 mm + 14 mm" }, [14, 21.6, 14]],
] as const)("auto: %s", (_, changes, wanted) => {
  const found = thicknesses(changes);
  expect(found).toEqual(wanted.map((t) => Number(t.toFixed(6))));
});

test("they lie side by side from the right cheek to the left, and are the core", () => {
  const plane = planeWith({ "core.layers": "auto", "core.board": 12 });
  const layers = layersOf(plane)!;
  expect(layers[0]!.from).toBeCloseTo(-49.6 / 2, 9);
  expect(layers.at(-1)!.to).toBeCloseTo(49.6 / 2, 9);
  for (const [i, { from }] of layers.slice(1).entries()) expect(from).toBe(layers[i]!.to);
});

test("a core in one piece has no layers, no figures of them and no shapes", () => {
  const plane = planeWith({});
  expect(layersOf(plane)).toBeUndefined();
  expect(layerShapes(plane, "blank")).toEqual([]);
  for (const key of [
    "layerCount",
    "outerLayer",
    "recessLayer",
    "layerPegLength",
    "layerPegWood",
    "bedAllowance",
  ] as const)
    expect(figureValue(plane, key), key).toBeUndefined();
});

test("the middle layer's bed line is set back by the recess's depth from its lower end up, and its corner is cleared", () => {
  const plane = planeWith({ "core.layers": "auto", "core.board": 21, "core.cornerCutter": 6 });
  const [outer, middle] = layerShapes(plane, "trued").filter(({ block }) => block === "bed");
  expect([outer!.isSetBack, middle!.isSetBack]).toEqual([false, true]);
  const corners = middle!.shape.boundary.map(({ from }) => planeToBed(plane.frame, from));
  const { low, depth } = plane.recess!;
  // worked by hand: head at 48 from the edge, radius 8, travel 6; head 3.4 high and 1.6 under it
  expect([low, depth]).toEqual([48 - 8 - 6, 5]);
  const has = (s: number, v: number) =>
    corners.some((corner) => Math.abs(corner.s - s) < 1e-9 && Math.abs(corner.v - v) < 1e-9);
  expect(has(34, -3.6)).toBe(true);
  expect(has(34, -8.6 + 3 * Math.SQRT2)).toBe(true);
  expect(has(34 + 3 * Math.SQRT2, -8.6)).toBe(true);
  const relief = middle!.shape.boundary.find((s) => s.kind === "arc" && Math.abs(s.radius - 3) < 1e-9)!;
  // the drill reaches the very corner
  const corner = bedToPlane(plane.frame, 34, -8.6);
  expect(relief.kind === "arc" && distance(relief.centre, corner)).toBeCloseTo(3, 9);
});

test("without a drill the corner is square", () => {
  const plane = planeWith({ "core.layers": "auto", "core.board": 21, "core.cornerCutter": 0 });
  const middle = layerShapes(plane, "glued").find(({ isSetBack }) => isSetBack)!;
  expect(middle.shape.boundary.every(({ kind }) => kind === "line")).toBe(true);
});

test("as cut, the bed carries its allowance, as much wider along the sole as the slope makes it", () => {
  const [none, some] = [0, 0.3].map((allowance) =>
    planeWith({ "core.layers": "auto", "core.board": 21, "core.allowanceBed": allowance }),
  ) as [ReturnType<typeof planeWith>, ReturnType<typeof planeWith>];
  const bedOf = (plane: ReturnType<typeof planeWith>) =>
    layerShapes(plane, "blank").find(({ block }) => block === "bed")!.shape.boundary;
  // chamfer c = 3 stands square on a sole 3 under the trued one: both grow by allowance / sin β, from the sole to the top
  const grown = outlineArea(bedOf(some)) - outlineArea(bedOf(none));
  const setIn = some.cuts.setInHeel - none.cuts.setInHeel;
  expect(grown + setIn * 61).toBeCloseTo((0.3 / Math.sin((47 * Math.PI) / 180)) * 61, 6);
  expect(none.cuts.bedMark - none.cuts.rampMark).toBeCloseTo(some.cuts.bedMark - some.cuts.rampMark, 9);
  expect(layerShapes(some, "glued").map(({ shape }) => shapeArea(shape))).toEqual(
    layerShapes(none, "glued").map(({ shape }) => shapeArea(shape)),
  );
});

test("layers of one block are one outline with pegs at the same places to the last digit", () => {
  const plane = planeWith({ "core.layers": "auto", "core.board": 9, "body.outline": "arched" });
  for (const stage of ["blank", "glued", "trued"] as const) {
    const layers = layerShapes(plane, stage);
    expect(layers.map(({ name }) => name)).toHaveLength(2 * layersOf(plane)!.length);
    for (const block of ["front", "bed"] as const) {
      const of = layers.filter((layer) => layer.block === block);
      for (const { shape, isSetBack } of of) {
        expect(shape.circles).toEqual(layerPegs(plane)[block].holes);
        if (!isSetBack) expect(shape.boundary).toEqual(of[0]!.shape.boundary);
      }
    }
    expect(layers[0]!.shape.boundary).toEqual(blocksAt(plane, stage).front);
  }
  expect(layerPegLength(plane)).toBeLessThan(plane.widths.core);
});

test("the wood round the pegs is none where ramp or bed miss the top", () => {
  const pegWood = (changes: Changes) => layerPegWood(planeWith({ "core.layers": "auto", ...changes }));
  expect(pegWood({})).toBeGreaterThan(3);
  // a ramp of 60 rises 58 over 33 of length: from a mouth at 30 it leaves by the toe
  expect(pegWood({ "mouth.fromToe": 30 })).toBe(0);
  // a bed of 47 rises 58 over 54, and a heel 40 behind the mouth is in its way
  expect(pegWood({ "mouth.fromToe": 190 })).toBe(0);
});

test("a stack that came out wider has it in its two outer layers, half each; the recess in the middle keeps its width", () => {
  for (const board of [20.6, 20, 11]) {
    const layers = layersOf(planeWith({ "core.layers": "auto", "core.board": board }))!;
    for (const wider of [0.6, -0.4]) {
      const found = layersOfStack(layers, 49.6 + wider);
      expect(found.reduce((sum, each) => sum + each, 0)).toBeCloseTo(49.6 + wider, 9);
      const gained = found.map((each, i) => each - layerThickness(layers[i]!));
      expect(gained.map((each) => Math.round(each * 1e9) / 1e9)).toEqual(
        layers.map((_, i) => (i === 0 || i === layers.length - 1 ? wider / 2 : 0)),
      );
    }
  }
});

test("a recess that came out wider takes it from the outer layers, and the stack stays as wide as it is", () => {
  for (const board of [20.6, 20, 11]) {
    const plane = planeWith({ "core.layers": "auto", "core.board": board });
    const [layers, recess] = [layersOf(plane)!, setBackLayers(plane)!];
    for (const width of [19.5, 18.2]) {
      const found = layersOfRecess(layers, recess, width);
      expect(found.reduce((sum, each) => sum + each, 0)).toBeCloseTo(49.6, 9);
      const within = found.slice(recess.first, recess.last + 1);
      expect(within.reduce((sum, each) => sum + each, 0)).toBeCloseTo(width, 9);
      expect(found[0]).toBeCloseTo(found.at(-1)!, 9);
      expect(found[0]! - layerThickness(layers[0]!)).toBeCloseTo((19 - width) / 2, 9);
    }
  }
});
