// Laws of the figures over the whole table: larger planes are larger alike, and a figure goes the way that its formula goes.
import { allFigures } from "@lamplane/bench";
import { CHORD_ERROR, outlineArea, shapeArea } from "@lamplane/geometry";
import { rowAt, valueAt, withValue } from "@lamplane/parameters/design";
import { blocksAt, cheekShape, elevation, FIGURES, type FigureKey, figureValue } from "@lamplane/parameters/elevation";
import { partsOf } from "@lamplane/parameters/solids";
import type { Design } from "@lamplane/parameters/table";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { isBuildable } from "../support/buildable.ts";
import { type Changes, randomDesigns } from "../support/designs.ts";
import { enlargeDesign, makeExplicit } from "../support/explicit.ts";

const designs = randomDesigns(71, 60, isBuildable).map(({ design }) => makeExplicit(design));
const anyDesign = fc.constantFrom(...designs);

describe("every length so many times as long", () => {
  /** Figures with a length of their own in them: 1 mm between the kerfs on the core, 1 1/2 in of the rule for billets. */
  const NOT_ALIKE = new Set<FigureKey>(["rampMark", "bedMark", "setInToe", "setInHeel", "billetWidthByRule"]);
  const times = fc.double({ min: 0.3, max: 4, noNaN: true });

  test("makes lengths so many times as long, and leaves angles and shares", () => {
    fc.assert(
      fc.property(anyDesign, times, (design, k) => {
        const [small, large] = [elevation(design), elevation(enlargeDesign(design, k))];
        for (const key of Object.keys(FIGURES) as FigureKey[]) {
          if (NOT_ALIKE.has(key)) continue;
          const [was, is] = [figureValue(small, key), figureValue(large, key)];
          const factor = FIGURES[key].unit === "mm" ? k : 1;
          if (was === undefined) expect(is, key).toBeUndefined();
          else expect(Math.abs(is! - was * factor), key).toBeLessThan(1e-5 * factor); // a solved pin is rounded to a nanometre
        }
      }),
      { numRuns: 60 },
    );
  });
  test("but for those named, whose own lengths show", () => {
    for (const key of NOT_ALIKE) {
      const shows = designs.some(
        (design) =>
          Math.abs(figureValue(elevation(enlargeDesign(design, 3)), key)! - 3 * figureValue(elevation(design), key)!) >
          0.1,
      );
      expect(shows, key).toBe(true);
    }
  });
  test("makes areas as the square and points as the length", () => {
    fc.assert(
      fc.property(anyDesign, times, (design, k) => {
        const [small, large] = [elevation(design), elevation(enlargeDesign(design, k))];
        for (const [name, { x, y }] of Object.entries(small.points)) {
          if (name === "throatNarrowest") continue; // between two places as narrow, rounding may choose
          const there = large.points[name as keyof typeof large.points];
          expect(Math.hypot(there.x - k * x, there.y - k * y), name).toBeLessThan(1e-6 * k);
        }
        for (const stage of ["glued", "trued"] as const) {
          const outlines = (plane: typeof small): number[] => {
            const { front, bed, throat } = blocksAt(plane, stage);
            return [
              ...[front, bed, throat, plane.wedge, plane.iron, plane.pinSection].map(outlineArea),
              shapeArea(cheekShape(plane, stage)),
            ];
          };
          outlines(large).forEach((is, i) => void expect(is / outlines(small)[i]! / k ** 2).toBeCloseTo(1, 7));
        }
      }),
      { numRuns: 40 },
    );
  });
  test("makes volumes as the cube, but for the chords of curves", () => {
    for (const design of designs.slice(0, 20)) {
      const [small, large] = [design, enlargeDesign(design, 2)].map((each) => partsOf(elevation(each), "trued"));
      // No round is smaller than the tenon; chords so far off it take less than this share of its area.
      const chords = (2 * CHORD_ERROR) / (elevation(design).pinSize.tenon / 2);
      large!.forEach(
        ({ name, volume }, i) => void expect(Math.abs(volume / small![i]!.volume / 8 - 1), name).toBeLessThan(chords),
      );
    }
  });
});

/** Which way a figure goes when a parameter grows, all else as it is: + never down, − never up. */
const WAYS: readonly (readonly [parameter: string, grows: string, shrinks: string])[] = [
  ["iron.width", "coreWidth bodyWidth wedgeWidth billetWidth billetWidthByRule recessLand", ""],
  ["iron.thickness", "bedTipFromEnd glueGap tipGap greatestAllowance unsupported", "recessPad recessFromBedEdge"],
  ["iron.bevel", "recessPad", "clearanceAngle unsupported"],
  ["bed.angle", "clearanceAngle unsupported", "sawBed mouthGrowth"],
  ["ramp.angle", "", "sawRamp mouthGrowth rampTipFromEnd"],
  ["mouth.fromToe", "mouthX bedTipFromEnd rampTipFromEnd pinFromEnd rampMark bedMark", ""],
  ["mouth.opening", "glueGap greatestAllowance mouthOpening pinToRamp", "rampTipFromEnd edgeHeightAtContact"],
  [
    "sole.allowance",
    "edgeHeightAtContact blankHeight soleToTake pinOverBlankSole rampTipFromEnd",
    "bedTipFromEnd glueGap",
  ],
  ["body.length", "blankLength", ""],
  ["body.height", "bodyHeight blankHeight", ""],
  ["body.cheek", "bodyWidth roughCheek fenceLeftCheek cheekThickness billetWidth", ""],
  [
    "body.sideClearance",
    "coreWidth bodyWidth sideClearance wedgeWidth roughCore fenceCore pinBody billetWidth recessLand",
    "",
  ],
  ["body.trim", "blankLength rampMark bedMark", ""],
  ["capIron.thickness", "pinV", "pinFromEnd pinS"],
  ["capIron.screwHead.fromEdge", "recessPad recessFromBedEdge", ""],
  ["recess.width", "recessWidth", "recessLand"],
  ["recess.depth", "recessDepth", ""],
  ["recess.travel", "", "recessPad recessFromBedEdge"],
  ["wedge.angle", "wedgeAngle wedgeButt", ""],
  ["wedge.tip", "wedgeTip wedgeButt wedgeAtPin pinV", "pinS pinFromEnd"],
  ["wedge.tipFromEdge", "wedgeTipFromEdge pinS", "wedgeAtPin wedgeBelowPin pinV"],
  ["wedge.length", "wedgeLength wedgeButt wedgeAbovePin", ""],
  ["wedge.clearance", "", "wedgeWidth"],
  ["pin.height", "pinY pinS pinV wedgeAtPin wedgeBelowPin pinOverBlankSole", "wedgeAbovePin"],
  ["pin.diameter", "pinDiameter pinV", "pinS pinFromEnd"],
  ["pin.tenon", "pinHoleDiameter tenonDiameter", "woodOverPinHole shearOut"],
  ["pin.tenonClearance", "pinHoleDiameter", "woodOverPinHole shearOut"],
  ["pin.tenonLength", "tenonLength", ""],
  ["shop.kerf", "billetWidth setInToe setInHeel", ""],
  ["shop.millingAllowance", "roughCore roughCheek fenceCore fenceLeftCheek billetWidth", ""],
  ["shop.jointingPass", "billetWidth fenceCore", ""],
];

test.each(WAYS)("%s up: up go %s; down go %s", (path, grows, shrinks) => {
  const row = rowAt(path);
  if (row.kind !== "number") throw new Error(path);
  const moved = new Set<string>();
  for (const design of designs) {
    if (path === "ramp.angle" && design.ramp.shape !== "straight") continue;
    const [here, more] = [design, withValue(design, path, (valueAt(design, path) as number) + row.step)].map(elevation);
    for (const [sense, keys] of [
      [1, grows],
      [-1, shrinks],
    ] as const)
      for (const key of keys.split(" ").filter(Boolean) as FigureKey[]) {
        const [was, is] = [figureValue(here!, key), figureValue(more!, key)];
        if (was === undefined || is === undefined) continue;
        expect(sense * (is - was), `${key}: ${was} to ${is}`).toBeGreaterThan(-1e-9);
        if (sense * (is - was) > 1e-6) moved.add(key);
      }
  }
  expect([...moved].sort()).toEqual(`${grows} ${shrinks}`.split(" ").filter(Boolean).sort());
});

/** The same for what rests on wood and friction. */
const BENCH_WAYS: readonly (readonly [parameter: string, grows: string, shrinks: string])[] = [
  [
    "iron.width",
    "cuttingForce clampWanted drivingForce pinBendingStress tenonShearStress",
    "pinBendingFactor tenonShearFactor",
  ],
  [
    "hold.forcePerMm",
    "cuttingForce clampWanted drivingForce pinBendingStress pinSag",
    "pinBendingFactor shearOutFactor",
  ],
  ["hold.catchPerMm", "cuttingForceInCatch clampWantedInCatch", "smallestFactorInCatch"],
  ["hold.friction.steel", "lockingMargin", "clampWanted"],
  ["hold.friction.wood", "holdMargin lockingMargin", "clampWanted"],
  ["wedge.angle", "clampWanted", "holdMargin holdMarginLeast lockingMargin lockingMarginLeast"],
  ["pin.tenon", "tenonShearFactor tenonBearingFactor cheekBearingFactor", "tenonShearStress bearingStress"],
  ["pin.tenonClearance", "tenonGapLeast", ""],
  ["pin.endClearance", "pinEndGapLeast", ""],
  ["body.sideClearance", "sideGapLeast coreWidthDriest coreWidthDampest", ""],
  ["body.height", "heightChange", ""],
  ["wedge.clearance", "wedgeGapLeast", ""],
  ["wood.driest.humidity", "moistureDriest moistureAsCut", "heightChange"],
  ["wood.dampest.humidity", "moistureDampest moistureAsCut heightChange", ""],
];

test.each(BENCH_WAYS)("%s up: up go %s; down go %s", (path, grows, shrinks) => {
  const row = rowAt(path);
  if (row.kind !== "number") throw new Error(path);
  const moved = new Set<string>();
  const valuesOf = (design: Design) => new Map(allFigures(elevation(design)).map(({ key, value }) => [key, value]));
  for (const design of designs.slice(0, 25)) {
    const [here, more] = [
      valuesOf(design),
      valuesOf(withValue(design, path, (valueAt(design, path) as number) + row.step)),
    ];
    for (const [sense, keys] of [
      [1, grows],
      [-1, shrinks],
    ] as const)
      for (const key of keys.split(" ").filter(Boolean)) {
        const [was, is] = [here.get(key), more.get(key)];
        if (was === undefined || is === undefined) continue;
        expect(sense * (is - was), `${key}: ${was} to ${is}`).toBeGreaterThan(-1e-9);
        if (sense * (is - was) > 1e-6) moved.add(key);
      }
  }
  expect([...moved].sort()).toEqual(`${grows} ${shrinks}`.split(" ").filter(Boolean).sort());
});

test("the ways name most figures that a length or an angle decides", () => {
  const named = new Set(WAYS.flatMap(([, grows, shrinks]) => `${grows} ${shrinks}`.split(" ")));
  const unnamed = Object.keys(FIGURES).filter((key) => !named.has(key));
  // Given as they are, or of two minds: a wider throat at the top may come of either slope, a turning pin's room of the pin's place.
  const GIVEN: Changes = {
    bedAngle: 1,
    rampAngle: 1,
    rampRadius: 1,
    throatAtTop: 1,
    throatNarrowing: 1,
    pinToRampTurning: 1,
    // Of a tapered iron alone.
    edgeThickness: 1,
    faceAngle: 1,
    ironTaper: 1,
    thicknessAtTop: 1,
    // Of a billet wider than needed alone.
    fenceRightCheek: 1,
    // Of a core in layers alone.
    bedAllowance: 1,
    layerCount: 1,
    layerPegLength: 1,
    layerPegWood: 1,
    outerLayer: 1,
    recessLayer: 1,
  };
  expect(unnamed.sort()).toEqual(Object.keys(GIVEN).sort());
});
