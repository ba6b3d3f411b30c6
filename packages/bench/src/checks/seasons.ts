// Whether the core keeps clear of iron, pin and wedge all year; what the wood's movement is not known for is not judged.

import { BENCH_TOLERANCE } from "@lamplane/geometry";
import type { Elevation, Points } from "@lamplane/parameters/elevation";
import { LEAST_GAP, planeSeasons, yearlyMaximum, yearlyMinimum } from "../seasons/plane-seasons.ts";
import { clampThroughYear, PITH_DISTANCE, yearlyCup } from "../seasons/plane-shape.ts";
import type { Season } from "../seasons/seasons.ts";
import { planeHold } from "../strength/plane-hold.ts";
import { planePinStrength, weakestPlace } from "../strength/plane-pin-strength.ts";
import {
  decrease,
  formatJudgedValue,
  increase,
  type Judgement,
  judgeAtLeast,
  judgeAtMost,
  makeNote,
  type Remedy,
} from "./judgement.ts";

const MOVEMENT = "Wood Handbook (FPL-GTR-190, 2010), eq. 4-5, 13-2 and 13-3, tables 4-3, 4-4 and 13-5";
/** What a fine plane's sole may be out, mm: as much as the room that a maker can hold. Common practice, no published source. */
const CUP_FELT = BENCH_TOLERANCE;
const AIR = ["wood.driest.humidity", "wood.dampest.humidity"];

interface Closing {
  readonly code: string;
  readonly gap: "sideGap" | "pinEndGap" | "wedgeGap";
  readonly what: string;
  readonly parameter: string;
  readonly place: keyof Points;
  readonly advice: string;
}

const CLOSINGS: readonly Closing[] = [
  {
    code: "core-closes-on-iron",
    gap: "sideGap",
    what: "The core's room over the iron at the worst of the year",
    parameter: "body.sideClearance",
    place: "edge",
    advice: "The cheeks would bind the iron, or be split by it: plan more side clearance.",
  },
  {
    code: "core-closes-on-pin",
    gap: "pinEndGap",
    what: "The gap at each shoulder of the cross pin at the worst of the year",
    parameter: "pin.endClearance",
    place: "pinCentre",
    advice: "The pin's grain lies across, so that it does not shrink with the core: plan more gap at its ends.",
  },
  {
    code: "core-closes-on-wedge",
    gap: "wedgeGap",
    what: "The core's room over the wedge at the worst of the year",
    parameter: "wedge.clearance",
    place: "wedgeTip",
    advice: "The wedge would bind between the cheeks: make it narrower.",
  },
];

/** The core must not close on what stands in it. */
export const checkCores = (plane: Elevation): Judgement[] =>
  CLOSINGS.flatMap(({ gap, parameter, ...told }) =>
    judgeYear(plane, gap, (value) =>
      judgeAtLeast(plane, {
        ...told,
        value,
        stop: 0,
        warn: LEAST_GAP,
        unit: "mm",
        parameters: [parameter, "wood.rings", ...AIR],
        remedies: [increase(parameter)],
        source: MOVEMENT,
      }),
    ),
  );

/** Tenons must turn in their holes on damp days and not stand out of the cheeks on dry ones. */
export const checkTenons = (plane: Elevation): Judgement[] => [
  ...judgeYear(plane, "tenonGap", (value) =>
    judgeAtLeast(plane, {
      code: "tenon-binds",
      what: "The tenon's room in its hole at the worst of the year",
      value,
      warn: 0,
      unit: "mm",
      parameters: ["pin.tenonClearance", ...AIR],
      place: "pinCentre",
      advice: "The pin must turn to find the wedge: bore the holes larger.",
      remedies: [increase("pin.tenonClearance")],
      source: MOVEMENT,
    }),
  ),
  ...judgeYear(
    plane,
    "tenonProud",
    (value) =>
      judgeAtMost(plane, {
        code: "tenon-proud-when-dry",
        what: "What the tenons stand out of the cheeks at the worst of the year",
        value,
        warn: BENCH_TOLERANCE,
        unit: "mm",
        parameters: ["pin.tenonLength", "pin.endClearance", "wood.rings", ...AIR],
        place: "pinCentre",
        advice: "The body shrinks and the pin does not: shorten the tenons.",
        remedies: [decrease("pin.tenonLength")],
        source: MOVEMENT,
      }),
    yearlyMaximum,
  ),
];

/** An untouched wedge must not press what bears it to breaking on its tightest days. How far it loosens is a figure. */
export function checkWedgeThroughYear(plane: Elevation): Judgement[] {
  const clamp = clampThroughYear(plane);
  const weakest = weakestPlace(planePinStrength(plane).fine);
  if (clamp === undefined || weakest === undefined || !(clamp.most > 0)) return [];
  return judgeAtLeast(plane, {
    code: "wedge-crushes-when-damp",
    what: "Strength of pin and cheeks over the load of an untouched wedge at its tightest of the year (indicative)",
    value: (weakest.factor * planeHold(plane).fine.clamp) / clamp.most,
    warn: 1,
    unit: "×",
    parameters: ["wood.pin", "wood.wedge", "pin.diameter", "pin.tenon", ...AIR],
    place: "pinCentre",
    advice: "Ease the wedge before the damp days, or take woods that move less.",
    remedies: [increase("pin.tenon")],
    source: MOVEMENT,
  });
}

/** A cup of more than a fine shaving is felt: the iron cuts at the edges only, or in the middle. */
export function noteCup(plane: Elevation): Judgement[] {
  const cups = [yearlyCup(plane, "soleCup"), yearlyCup(plane, "bedCup")];
  if (cups.some((each) => each === undefined)) return [];
  const value = Math.max(...(cups as number[]));
  if (value <= CUP_FELT) return [];
  return makeNote({
    code: "sole-cups",
    value,
    limit: CUP_FELT,
    unit: "mm",
    parameters: ["wood.rings", "wood.body", ...AIR],
    place: "edge",
    message: `Sole or bed cups by up to ${formatJudgedValue(plane, value, "mm")} in a year, with the rings' centre ${formatJudgedValue(plane, PITH_DISTANCE, "mm")} away; more than ${formatJudgedValue(plane, CUP_FELT, "mm")} is felt. True the sole in the season of its use, or take wood nearer to quarter sawn.`,
    source: MOVEMENT,
  });
}

/** The driest days must be the drier ones, or every figure of the year is told of the wrong season. */
export function checkYear(plane: Elevation): Judgement[] {
  const { driest, dampest } = planeSeasons(plane);
  const mends: readonly Remedy[] = [increase("wood.dampest.humidity"), decrease("wood.driest.humidity")];
  return judgeAtLeast(plane, {
    code: "seasons-out-of-order",
    what: "The wood's moisture on the dampest days over that on the driest",
    value: dampest.moisture - driest.moisture,
    warn: 0,
    unit: "%",
    parameters: AIR,
    place: "edge",
    advice: "Exchange the driest and the dampest days.",
    remedies: mends,
    source: MOVEMENT,
  });
}

/** Judges a size of the year where it is known. */
function judgeYear(
  plane: Elevation,
  key: Exclude<keyof Season, "moisture">,
  judge: (value: number) => Judgement[],
  ofYear: typeof yearlyMinimum = yearlyMinimum,
): Judgement[] {
  const value = ofYear(plane, key);
  return value === undefined ? [] : judge(value);
}
