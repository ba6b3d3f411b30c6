// Whether a tapered iron is entered so that it can be: two places apart, one taper, steel left at both ends.

import { type Elevation, gaugeLength, ironTaper, thicknessAt, topFromEdge } from "@lamplane/parameters/elevation";
import { PLANE_GEOMETRY } from "@lamplane/parameters/table";
import type { CheckRow } from "./judgement.ts";
import { decrease, increase } from "./remedy.ts";

const isTapered = ({ design }: Elevation): boolean => ironTaper(design) !== 0;
const isMeasuredTwice = ({ design }: Elevation): boolean => design.iron.thicknessAtTop !== "auto";

/** By how much the thickness near the top and a taper entered beside it disagree, mm; undefined where only one is entered. */
function disagreement({ design }: Elevation): number | undefined {
  const { taper, thicknessAtTop } = design.iron;
  if (taper === "auto" || thicknessAtTop === "auto") return undefined;
  return Math.abs(thicknessAt(design, topFromEdge(design)) - thicknessAtTop);
}

export const IRON_TAPER_CHECKS: readonly CheckRow[] = [
  {
    // Over 50 mm a caliper that is off by 0.02 at each place still gives the taper within 0.05 degrees.
    code: "iron-gauge-length",
    subject: "iron-gauge-length",
    appliesTo: isMeasuredTwice,
    relation: "at least",
    value: ({ design }) => gaugeLength(design),
    stop: 10,
    warn: 50,
    unit: "mm",
    parameters: ["iron.topFromEdge", "iron.thicknessFromEdge"],
    place: "edge",
    advice: "measure-iron-further-apart",
    remedies: [increase("iron.topFromEdge"), decrease("iron.thicknessFromEdge")],
    source: PLANE_GEOMETRY,
  },
  {
    code: "iron-taper-entered-twice",
    subject: "taper-against-thickness",
    relation: "at most",
    value: disagreement,
    stop: 0.1,
    warn: 0.02,
    unit: "mm",
    parameters: ["iron.taper", "iron.thicknessAtTop", "iron.thickness"],
    place: "edge",
    advice: "enter-taper-once",
    remedies: [increase("iron.taper"), decrease("iron.taper")],
    source: PLANE_GEOMETRY,
  },
  {
    code: "iron-thin-end",
    subject: "iron-at-thin-end",
    appliesTo: isTapered,
    relation: "at least",
    value: ({ design }) => Math.min(thicknessAt(design, 0), thicknessAt(design, design.iron.length)),
    stop: 0.5,
    warn: 1,
    unit: "mm",
    parameters: ["iron.taper", "iron.thickness", "iron.thicknessAtTop"],
    place: "edge",
    advice: "measure-taper-again",
    remedies: [
      decrease("iron.taper"),
      increase("iron.taper"),
      increase("iron.thicknessAtTop"),
      increase("iron.thickness"),
    ],
    source: PLANE_GEOMETRY,
  },
];
