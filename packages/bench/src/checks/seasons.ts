// Whether the core keeps clear of iron, pin and wedge all year; what the wood's movement is not known for is not judged.

import { BENCH_TOLERANCE } from "@lamplane/geometry";
import { LEAST_GAP, planeSeasons, yearlyMaximum, yearlyMinimum } from "../seasons/plane-seasons.ts";
import type { CheckRow } from "./judgement.ts";
import { decrease, increase } from "./remedy.ts";

const MOVEMENT = "Wood Handbook (FPL-GTR-190, 2010), eq. 4-5, 13-2 and 13-3, tables 4-3, 4-4 and 13-5";
const AIR = ["wood.driest.humidity", "wood.dampest.humidity"];

/** The core must not close on what stands in it. */
const CLOSING = { relation: "at least", stop: 0, warn: LEAST_GAP, unit: "mm", source: MOVEMENT } as const;

export const SEASON_CHECKS: readonly CheckRow[] = [
  {
    ...CLOSING,
    code: "core-closes-on-iron",
    subject: "side-gap-of-year",
    value: (plane) => yearlyMinimum(plane, "sideGap"),
    parameters: ["body.sideClearance", "wood.rings", ...AIR],
    place: "edge",
    advice: "plan-more-side-clearance",
    remedies: [increase("body.sideClearance")],
  },
  {
    ...CLOSING,
    code: "core-closes-on-pin",
    subject: "pin-end-gap-of-year",
    value: (plane) => yearlyMinimum(plane, "pinEndGap"),
    parameters: ["pin.endClearance", "wood.rings", ...AIR],
    place: "pinCentre",
    advice: "plan-more-end-gap",
    remedies: [increase("pin.endClearance")],
  },
  {
    ...CLOSING,
    code: "core-closes-on-wedge",
    subject: "wedge-gap-of-year",
    value: (plane) => yearlyMinimum(plane, "wedgeGap"),
    parameters: ["wedge.clearance", "wood.rings", ...AIR],
    place: "wedgeTip",
    advice: "narrow-wedge",
    remedies: [increase("wedge.clearance")],
  },
  {
    // Tenons must turn in their holes on damp days.
    code: "tenon-binds",
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
    code: "tenon-proud-when-dry",
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
    // The driest days must be the drier ones, or every figure of the year is of the wrong season.
    code: "seasons-out-of-order",
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
