// Whether the wedge lies under the whole of the pin, off the hump, and is narrower than the core but not by much.

import type { Elevation } from "@lamplane/parameters/elevation";
import { figureValue, PIN_LIMITS, WEDGE_ABOVE_WANTED, WEDGE_BELOW_WANTED } from "@lamplane/parameters/elevation";
import { COMMON_PRACTICE, PLANE_GEOMETRY, TABLE } from "@lamplane/parameters/table";
import type { CheckRow } from "./judgement.ts";
import { decrease, increase } from "./remedy.ts";

const UNDER_PIN = {
  code: "wedge-under-pin",
  relation: "at least",
  stop: PIN_LIMITS.wedgeBeyondPin,
  unit: "mm",
  place: "pinCentre",
  source: COMMON_PRACTICE,
} as const;

/** Where the cap iron's hump ends, from the cutting edge; 0 where there is none. mm */
const humpEnd = ({ design: { capIron } }: Elevation): number =>
  capIron.thickness > 0 && capIron.hump > 0 ? capIron.setback + capIron.humpEnd : 0;

export const WEDGE_CHECKS: readonly CheckRow[] = [
  {
    ...UNDER_PIN,
    subject: "wedge-below-pin",
    value: ({ pinMargins }) => pinMargins.wedgeBelow,
    warn: WEDGE_BELOW_WANTED / 2,
    parameters: ["wedge.tipFromEdge", "pin.height"],
    advice: "lower-wedge-tip-or-raise-pin",
    remedies: [decrease("wedge.tipFromEdge"), increase("pin.height")],
  },
  {
    ...UNDER_PIN,
    subject: "wedge-above-pin",
    value: ({ pinMargins }) => pinMargins.wedgeAbove,
    warn: WEDGE_ABOVE_WANTED,
    parameters: ["wedge.length", "pin.height"],
    advice: "lengthen-wedge",
    remedies: [increase("wedge.length"), decrease("pin.height")],
  },
  {
    code: "wedge-tip-place",
    subject: "wedge-tip-from-edge",
    appliesTo: ({ design }) => design.capIron.thickness > 0,
    relation: "at least",
    value: ({ design }) => design.wedge.tipFromEdge,
    stop: humpEnd,
    unit: "mm",
    parameters: ["wedge.tipFromEdge", "capIron.humpEnd"],
    place: "wedgeTip",
    advice: "keep-wedge-off-hump",
    remedies: [increase("wedge.tipFromEdge")],
    source: PLANE_GEOMETRY,
  },
  {
    code: "wedge-tip-thickness",
    subject: "wedge-tip-thickness",
    relation: "at least",
    value: ({ design }) => design.wedge.tip,
    stop: TABLE.wedge.tip.min,
    unit: "mm",
    parameters: ["wedge.tip", "wedge.tipFromEdge"],
    place: "wedgeTip",
    advice: "end-wedge-higher-or-bore-anew",
    remedies: [increase("wedge.tip"), increase("wedge.tipFromEdge")],
    source: PLANE_GEOMETRY,
  },
  {
    code: "wedge-width",
    subject: "wedge-width",
    relation: "at least",
    value: (plane) => figureValue(plane, "wedgeWidth"),
    stop: 5,
    warn: ({ design }) => 0.75 * design.iron.width,
    unit: "mm",
    parameters: ["wedge.clearance"],
    place: "wedgeTip",
    advice: "widen-wedge",
    remedies: [decrease("wedge.clearance")],
    source: COMMON_PRACTICE,
  },
];
