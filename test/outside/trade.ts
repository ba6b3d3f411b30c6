// The trade's rules, which no publication holds, and one plane worked by hand apart from the project.

import { outlineArea } from "@lamplane/geometry";
import { blocksAt, elevation, type FigureKey, figureValue } from "@lamplane/parameters/elevation";
import { type Changes, designWith, WORKED } from "../support/designs.ts";
import type { OutsideCheck } from "./check.ts";

const INCH = 25.4;
const figureOf = (changes: Changes, key: FigureKey) => (): number => figureValue(elevation(designWith(changes)), key)!;

const rule = (what: string, unit: string, theirs: number | string, ours: OutsideCheck["ours"], within = 1e-9) => ({
  what,
  from: "no published source",
  told: "common practice" as const,
  unit,
  theirs,
  ours,
  ...(typeof theirs === "number" ? { within } : {}),
});

const rules: readonly OutsideCheck[] = [
  ...(
    [
      [45, 62],
      [47, 60],
      [50, 57],
    ] as const
  ).map(([bed, ramp]) => rule(`Ramp for a bed of ${bed}°`, "°", ramp, figureOf({ "bed.angle": bed }, "rampAngle"))),
  ...(
    [
      [50, 40],
      [57, 33],
    ] as const
  ).flatMap(([angle, reading]) => [
    rule(`Saw's reading for a bed of ${angle}°`, "°", reading, figureOf({ "bed.angle": angle }, "sawBed")),
    rule(`Saw's reading for a ramp of ${angle}°`, "°", reading, figureOf({ "ramp.angle": angle }, "sawRamp")),
  ]),
  ...(
    [
      [45, "straight"],
      [50, "straight"],
      [50.5, "curved"],
      [57, "curved"],
    ] as const
  ).map(([bed, shape]) =>
    rule(
      `Shape of the ramp for a bed of ${bed}°`,
      "",
      shape,
      () => elevation(designWith({ "bed.angle": bed })).ramp.shape,
    ),
  ),
  rule(
    "Core over an iron of 2 in: 1/16 in wider",
    "mm",
    2 * INCH + INCH / 16,
    figureOf({ "iron.width": 50.8 }, "coreWidth"),
    0.05,
  ),
  rule("Blank of a plane of 260: 1 in longer", "mm", 260 + INCH, figureOf({ "body.length": 260 }, "blankLength")),
  rule(
    "Billet for an iron of 2 in: 1 1/2 in wider",
    "mm",
    3.5 * INCH,
    figureOf({ "iron.width": 50.8 }, "billetWidthByRule"),
  ),
  rule("Mouth of a plane of 270: a third from the toe", "mm", 90, figureOf({ "body.length": 270 }, "mouthX")),
  rule("Finished cheek: 5/16 in", "mm", (5 / 16) * INCH, () => elevation(designWith()).widths.cheek, 0.1),
  rule("Edge over the blank's sole at glue-up: about 1/8 in", "mm", INCH / 8, figureOf({}, "edgeHeightAtContact"), 0.5),
];

const APART = "plane geometry, worked by hand and in another program";
/** Places along the sole were worked from the finished toe; half a trim of 25.4 mm is added to each. */
const worked: readonly OutsideCheck[] = [
  ...(
    [
      ["mouthGrowth", "", 1.5099],
      ["bedTipFromEnd", "mm", 92.8248],
      ["rampTipFromEnd", "mm", 92.2821],
      ["glueGap", "mm", 0.5428],
      ["edgeHeightAtContact", "mm", 2.9007],
      ["unsupported", "mm", 3.4136],
      ["pinS", "mm", 36.1056],
      ["pinV", "mm", 14.0675],
      ["pinFromEnd", "mm", 105.0356],
      ["wedgeAtPin", "mm", 4.4826],
      ["pinToRamp", "mm", 24.1949],
      ["coreWidth", "mm", 49.6],
    ] as const
  ).map(([key, unit, theirs]) => ({
    what: `Worked plane: ${key}`,
    from: APART,
    told: "worked apart" as const,
    unit,
    theirs,
    ours: figureOf(WORKED, key),
    within: 5.0001e-5, // four decimals
  })),
  ...(
    [
      ["front", 175_792],
      ["bed", 345_316],
    ] as const
  ).map(([block, theirs]) => ({
    what: `Worked plane: finished ${block} block without a recess`,
    from: APART,
    told: "worked apart" as const,
    unit: "mm³",
    theirs,
    ours: () => {
      const plane = elevation(designWith({ ...WORKED, "capIron.screwHead.diameter": 0 }));
      return outlineArea(blocksAt(plane, "trued")[block]) * plane.widths.core;
    },
    within: 0.5,
  })),
  {
    what: "Thin iron: how far the blocks' tips collide",
    from: APART,
    told: "worked apart",
    unit: "mm",
    theirs: -0.22,
    ours: figureOf(
      {
        "iron.thickness": 3.175,
        "bed.angle": 45,
        "ramp.angle": 62,
        "mouth.opening": 0.15,
        "sole.allowance": 3.175,
        "bed.featherChamfer": 3.175,
      },
      "glueGap",
    ),
    within: 5e-3,
  },
];

export const TRADE_CHECKS: readonly OutsideCheck[] = [...rules, ...worked];
