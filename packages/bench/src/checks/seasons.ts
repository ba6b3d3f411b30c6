// What a year's air does to core, tenons and wedge; what the wood's movement is not known for is not judged.

import { BENCH_TOLERANCE } from "@lamplane/geometry";
import type { Elevation } from "@lamplane/parameters/elevation";
import { LEAST_GAP, planeSeasons, yearlyMaximum, yearlyMinimum } from "../seasons/plane-seasons.ts";
import { clampThroughYear, wedgeHoldOfYear, yearlyCup } from "../seasons/plane-shape.ts";
import { planeHold } from "../strength/plane-hold.ts";
import { planePinStrength, weakestPlace } from "../strength/plane-pin-strength.ts";
import type { CheckRow, Judgement } from "./judgement.ts";
import { decrease, increase } from "./remedy.ts";

const MOVEMENT = "Wood Handbook (FPL-GTR-190, 2010), eq. 4-5, 13-2 and 13-3, tables 4-3, 4-4 and 13-5";
/** What a fine plane's sole may be out, mm: as much as the room that a maker can hold. Common practice, no published source. */
const CUP_FELT = BENCH_TOLERANCE;
const AIR = ["wood.driest.humidity", "wood.dampest.humidity"];

/** The core must not close on what stands in it. */
const CLOSING = { relation: "at least", stop: 0, warn: LEAST_GAP, unit: "mm", source: MOVEMENT } as const;

/** Strength of the weakest place over the load of a wedge left alone on its tightest days. */
function strengthWhenTightest(plane: Elevation): number | undefined {
  const clamp = clampThroughYear(plane);
  const weakest = weakestPlace(planePinStrength(plane, "fine"));
  if (clamp === undefined || weakest === undefined || !(clamp.most > 0)) return undefined;
  return (weakest.factor * planeHold(plane).fine.clamp) / clamp.most;
}

export const SEASON_CHECKS: readonly CheckRow[] = [
  {
    ...CLOSING,
    code: "iron-play-over-year",
    subject: "side-gap-of-year",
    value: (plane) => yearlyMinimum(plane, "sideGap"),
    parameters: ["body.sideClearance", "wood.rings", ...AIR],
    place: "edge",
    advice: "plan-more-side-clearance",
    remedies: [increase("body.sideClearance")],
  },
  {
    ...CLOSING,
    code: "pin-gap-over-year",
    subject: "pin-end-gap-of-year",
    value: (plane) => yearlyMinimum(plane, "pinEndGap"),
    parameters: ["pin.endClearance", "wood.rings", ...AIR],
    place: "pinCentre",
    advice: "plan-more-end-gap",
    remedies: [increase("pin.endClearance")],
  },
  {
    ...CLOSING,
    code: "wedge-play-over-year",
    subject: "wedge-gap-of-year",
    value: (plane) => yearlyMinimum(plane, "wedgeGap"),
    parameters: ["wedge.clearance", "wood.rings", ...AIR],
    place: "wedgeTip",
    advice: "narrow-wedge",
    remedies: [increase("wedge.clearance")],
  },
  {
    // Tenons must turn in their holes on damp days.
    code: "tenon-play-over-year",
    subject: "tenon-gap-of-year",
    relation: "at least",
    value: (plane) => yearlyMinimum(plane, "tenonGap"),
    warn: 0,
    unit: "mm",
    parameters: ["pin.tenonClearance", ...AIR],
    place: "pinCentre",
    advice: "bore-larger-holes",
    remedies: [increase("pin.tenonClearance")],
    source: MOVEMENT,
  },
  {
    code: "tenon-projection-over-year",
    subject: "tenon-proud-of-year",
    relation: "at most",
    value: (plane) => yearlyMaximum(plane, "tenonProud"),
    warn: BENCH_TOLERANCE,
    unit: "mm",
    parameters: ["pin.tenonLength", "pin.endClearance", "wood.rings", ...AIR],
    place: "pinCentre",
    advice: "shorten-tenons-for-dry-days",
    remedies: [decrease("pin.tenonLength")],
    source: MOVEMENT,
  },
  {
    // No remedy among the dimensions: what lets the pin sag further weakens it.
    code: "wedge-hold-over-year",
    subject: "wedge-hold-of-year",
    relation: "at most",
    value: (plane) => wedgeHoldOfYear(plane)?.opens,
    warn: (plane) => wedgeHoldOfYear(plane)?.sag,
    unit: "mm",
    parameters: ["wood.body", "wood.pin", "wood.wedge", "wood.rings", "wood.wedgeRings", "wood.pinRings", ...AIR],
    place: "pinCentre",
    advice: "tap-wedge-in-on-dry-days",
    remedies: [],
    source: MOVEMENT,
  },
  {
    code: "wedge-load-over-year",
    subject: "strength-over-wedge-of-year",
    relation: "at least",
    value: strengthWhenTightest,
    warn: 1,
    unit: "×",
    parameters: ["wood.pin", "wood.wedge", "pin.diameter", "pin.tenon", ...AIR],
    place: "pinCentre",
    advice: "ease-wedge-before-damp-days",
    remedies: [increase("pin.tenon")],
    source: MOVEMENT,
  },
  {
    // The driest days must be the drier ones, or every figure of the year is of the wrong season.
    code: "season-order",
    subject: "moisture-dampest-over-driest",
    relation: "at least",
    value: (plane) => {
      const { driest, dampest } = planeSeasons(plane);
      return dampest.moisture - driest.moisture;
    },
    warn: 0,
    unit: "%",
    parameters: AIR,
    place: "edge",
    advice: "exchange-seasons",
    remedies: [increase("wood.dampest.humidity"), decrease("wood.driest.humidity")],
    source: MOVEMENT,
  },
];

/** What the note on cupping is, without a plane. */
export const CUP_NOTE = {
  code: "sole-cup",
  parameters: ["wood.rings", "wood.pith", "wood.body", ...AIR],
  source: MOVEMENT,
} as const;

/** A cup of more than a fine shaving is felt: the iron cuts at the edges only, or in the middle. */
export function noteCup(plane: Elevation): Judgement[] {
  const [sole, bed] = [yearlyCup(plane, "soleCup"), yearlyCup(plane, "bedCup")];
  if (sole === undefined || bed === undefined) return [];
  const value = Math.max(sole, bed);
  if (value <= CUP_FELT) return [];
  return [
    {
      ...CUP_NOTE,
      subject: "cup-of-year",
      severity: "note",
      relation: "at most",
      value,
      limit: CUP_FELT,
      unit: "mm",
      data: { pithDistance: plane.design.wood.pith },
      place: "edge",
      remedies: [],
    },
  ];
}
