// Whether the recess holds the screw's head and leaves the bed its lands and pad; a plane without one is not judged.

import type { Elevation, Recess } from "@lamplane/parameters/elevation";
import { figureValue, planeToBed } from "@lamplane/parameters/elevation";
import { COMMON_PRACTICE, PLANE_GEOMETRY } from "@lamplane/parameters/table";
import type { CheckRow } from "./judgement.ts";
import { decrease, increase } from "./remedy.ts";

const RECESS = { relation: "at least", unit: "mm", place: "recessLow" } as const;

/** A value of the recess; undefined where there is none. */
const ofRecess =
  (value: (recess: Recess, plane: Elevation) => number | undefined) =>
  (plane: Elevation): number | undefined =>
    plane.recess && value(plane.recess, plane);

export const RECESS_CHECKS: readonly CheckRow[] = [
  {
    ...RECESS,
    code: "recess-land",
    subject: "recess-land",
    value: (plane) => figureValue(plane, "recessLand"),
    stop: 3,
    warn: 8,
    parameters: ["recess.width", "iron.width"],
    advice: "narrow-recess",
    remedies: [decrease("recess.width"), decrease("recess.clearance")],
    source: COMMON_PRACTICE,
  },
  {
    ...RECESS,
    code: "recess-pad",
    subject: "recess-pad",
    value: ofRecess((recess, plane) =>
      Math.min(figureValue(plane, "recessPad")!, recess.low - planeToBed(plane.frame, plane.points.bedChamfer).s),
    ),
    stop: 4,
    warn: 12,
    parameters: ["recess.travel", "capIron.screwHead.fromEdge", "bed.featherChamfer"],
    advice: "lessen-head-travel",
    remedies: [decrease("recess.travel"), decrease("bed.featherChamfer")],
    source: COMMON_PRACTICE,
  },
  {
    ...RECESS,
    code: "recess-width",
    subject: "recess-width-over-head",
    value: ofRecess(({ width }, { design }) => width - design.capIron.screwHead.diameter),
    stop: 0.2,
    parameters: ["recess.width"],
    advice: "let-head-in",
    remedies: [increase("recess.width")],
    source: PLANE_GEOMETRY,
  },
  {
    ...RECESS,
    code: "recess-depth",
    subject: "recess-depth-over-head",
    value: ofRecess(({ depth }, { design }) => depth - design.capIron.screwHead.height),
    stop: 0.2,
    warn: 0.5,
    parameters: ["recess.depth"],
    advice: "keep-head-off-floor",
    remedies: [increase("recess.depth")],
    source: COMMON_PRACTICE,
  },
  {
    ...RECESS,
    code: "recess-cutter",
    subject: "recess-width-over-cutter",
    value: ofRecess(({ width, madeBy }, { design }) =>
      madeBy === "router" ? width - design.recess.cutter : undefined,
    ),
    stop: 0,
    parameters: ["recess.cutter", "recess.width"],
    advice: "take-smaller-cutter",
    remedies: [decrease("recess.cutter"), increase("recess.width"), increase("recess.clearance")],
    source: PLANE_GEOMETRY,
  },
  {
    ...RECESS,
    code: "recess-end",
    subject: "bed-above-recess",
    value: ofRecess(({ low, cornerRadius }, { bedTopS }) => bedTopS - low - cornerRadius),
    stop: 2,
    parameters: ["capIron.screwHead.fromEdge", "recess.travel", "body.height"],
    advice: "omit-recess-or-raise-plane",
    remedies: [increase("body.height"), increase("recess.travel")],
    source: PLANE_GEOMETRY,
  },
];
