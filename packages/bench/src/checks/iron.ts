// Whether the iron can be put in, lies with clearance and reaches where it must; and what the saws must do for it.

import { BENCH_TOLERANCE } from "@lamplane/geometry";
import type { Elevation } from "@lamplane/parameters/elevation";
import { figureValue, humpHeight, PIN_LIMITS, roomOverHump } from "@lamplane/parameters/elevation";
import { COMMON_PRACTICE, PLANE_GEOMETRY } from "@lamplane/parameters/table";
import { stepIndex, stepsDone } from "../steps.ts";
import type { CheckRow } from "./judgement.ts";
import { decrease, increase } from "./remedy.ts";

const areCutsToCome = ({ design }: Elevation): boolean => stepsDone(design) <= stepIndex("cuts");

/** Less side play than this leaves the iron no room to be tilted, mm. Common practice, no published source: 1/32 in. */
export const LEAST_SIDE_PLAY = 0.8;

export const IRON_CHECKS: readonly CheckRow[] = [
  {
    code: "iron-passage",
    subject: (plane) =>
      humpHeight(plane.design) > 0
        ? "hump-to-pin"
        : plane.design.capIron.thickness > 0
          ? "cap-iron-to-pin"
          : "iron-to-pin",
    relation: "at least",
    value: ({ design, pinSize, pin }) => roomOverHump(design, pinSize, pin),
    stop: PIN_LIMITS.overHump,
    warn: 0.5,
    unit: "mm",
    parameters: ["capIron.hump", "wedge.tip", "wedge.angle", "pin.height"],
    place: "pinCentre",
    advice: "thicken-wedge-tip",
    remedies: [increase("wedge.tip"), increase("pin.height"), increase("wedge.angle")],
    source: PLANE_GEOMETRY,
  },
  {
    code: "iron-side-play",
    subject: "side-clearance",
    relation: "at least",
    value: ({ design }) => design.body.sideClearance,
    stop: BENCH_TOLERANCE,
    warn: LEAST_SIDE_PLAY,
    unit: "mm",
    parameters: ["body.sideClearance", "iron.width"],
    place: "edge",
    advice: "widen-core",
    remedies: [increase("body.sideClearance")],
    source: COMMON_PRACTICE,
  },
  {
    code: "clearance-angle",
    subject: "clearance-angle",
    relation: "at least",
    value: (plane) => figureValue(plane, "clearanceAngle"),
    stop: 3,
    warn: 10,
    unit: "°",
    parameters: ["bed.angle", "iron.bevel"],
    place: "edge",
    advice: "grind-lower-or-bed-steeper",
    remedies: [decrease("iron.bevel"), increase("bed.angle")],
    source: COMMON_PRACTICE,
  },
  {
    // The iron must stand out of the top to be tapped.
    code: "iron-above-bed",
    subject: "iron-out-of-top",
    relation: "at least",
    value: ({ design, bedTopS }) => design.iron.length - bedTopS,
    warn: 5,
    unit: "mm",
    parameters: ["iron.length", "body.height"],
    place: "bedTop",
    advice: "lower-plane-for-tapping",
    remedies: [decrease("body.height")],
    source: COMMON_PRACTICE,
  },
  {
    code: "bed-saw-angle",
    subject: "bed-saw-angle",
    appliesTo: areCutsToCome,
    relation: "at most",
    value: (plane) => figureValue(plane, "sawBed"),
    warn: ({ design }) => design.shop.sawLimit,
    unit: "°",
    parameters: ["bed.angle", "shop.sawLimit"],
    place: "bedTip",
    advice: "saw-otherwise",
    remedies: [increase("bed.angle")],
    source: COMMON_PRACTICE,
  },
  {
    code: "ramp-saw-angle",
    subject: "ramp-saw-angle",
    appliesTo: areCutsToCome,
    relation: "at most",
    value: (plane) => figureValue(plane, "sawRamp"),
    warn: ({ design }) => design.shop.sawLimit,
    unit: "°",
    parameters: ["ramp.angle", "shop.sawLimit"],
    place: "rampTip",
    advice: "saw-otherwise",
    remedies: [increase("ramp.angle")],
    source: COMMON_PRACTICE,
  },
];
