// Whether the mouth comes out alike at both cheeks, and whether the iron can be tilted to cut even.
import { PLANE_GEOMETRY } from "@lamplane/parameters/table";
import { mouthSkew, worstTilt } from "../mouth/mouth-skew.ts";
import type { CheckRow } from "./judgement.ts";
import { decrease, increase } from "./remedy.ts";

export const SKEW_CHECKS: readonly CheckRow[] = [
  {
    // Each cheek's mouth lies half of it off the middle's.
    code: "mouth-evenness",
    subject: "mouth-unevenness",
    relation: "at most",
    value: (plane) => mouthSkew(plane).uneven,
    warn: ({ design }) => 2 * design.hand.mouthWithin,
    unit: "mm",
    parameters: ["hand.frontSkew", "hand.bedSkew", "hand.mouthWithin"],
    place: "rampFoot",
    advice: "square-blocks-or-plane-ramp",
    remedies: [decrease("hand.frontSkew"), decrease("hand.bedSkew")],
    source: PLANE_GEOMETRY,
  },
  {
    code: "iron-tilt-room",
    subject: "side-clearance-at-tilt",
    relation: "at least",
    value: (plane) => worstTilt(plane).room,
    warn: 0,
    unit: "mm",
    parameters: ["body.sideClearance", "hand.bedSkew"],
    place: "edge",
    advice: "true-bed-square-or-widen-core",
    remedies: [increase("body.sideClearance"), decrease("hand.bedSkew")],
    source: PLANE_GEOMETRY,
  },
];
