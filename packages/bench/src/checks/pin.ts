// Whether the cross pin has wood round it, room beside it, and shoulders and tenons of its own.

import type { Elevation } from "@lamplane/parameters/elevation";
import {
  PIN_LIMITS,
  pinLengths,
  pinShoulder,
  ROOM_WANTED,
  SHEAR_OUT_PER_TENON,
  WOOD_OVER_HOLE_PER_TENON,
} from "@lamplane/parameters/elevation";
import { COMMON_PRACTICE, PLANE_GEOMETRY } from "@lamplane/parameters/table";
import type { CheckRow } from "./judgement.ts";
import { decrease, increase } from "./remedy.ts";

const EDGE_DISTANCE = "common practice; NDS table 12.5.1 asks 1.5 D to a free edge (from memory)";

const AROUND_HOLE = {
  code: "pin-hole-wood",
  relation: "at least",
  stop: PIN_LIMITS.woodRoundHole,
  unit: "mm",
  parameters: ["pin.height", "pin.tenon", "body.height"],
  place: "pinCentre",
  source: EDGE_DISTANCE,
} as const;
const LOWER_PIN = {
  advice: "lower-pin-or-raise-plane",
  remedies: [decrease("pin.height"), increase("body.height"), decrease("pin.tenon")],
} as const;

const WOOD: readonly CheckRow[] = [
  {
    ...AROUND_HOLE,
    ...LOWER_PIN,
    subject: "wood-over-hole",
    value: ({ pinMargins }) => pinMargins.woodOverHole,
    warn: ({ pinSize }) => pinSize.tenon * WOOD_OVER_HOLE_PER_TENON,
  },
  {
    ...AROUND_HOLE,
    ...LOWER_PIN,
    subject: "wood-before-hole",
    value: ({ pinMargins }) => pinMargins.shearOut,
    warn: ({ pinSize }) => pinSize.tenon * SHEAR_OUT_PER_TENON,
  },
  {
    ...AROUND_HOLE,
    subject: "wood-under-hole",
    value: ({ pin, pinHole }) => pin.centre.y - pinHole.radius,
    advice: "raise-pin",
    remedies: [increase("pin.height")],
  },
];

/** Room for shavings and fingers, and for a flatted pin to turn; a round one takes up no more as it turns. */
const ROOM: readonly CheckRow[] = [
  {
    code: "pin-to-ramp",
    subject: "pin-to-ramp",
    relation: "at least",
    value: ({ pinMargins }) => pinMargins.roomToRamp,
    stop: PIN_LIMITS.roomToRamp,
    warn: ROOM_WANTED,
    unit: "mm",
    parameters: ["pin.height", "ramp.angle", "ramp.radius", "pin.diameter"],
    place: "pinCentre",
    advice: "make-room-for-fingers",
    remedies: [
      decrease("ramp.angle"),
      decrease("ramp.radius"),
      increase("pin.height"),
      decrease("ramp.wearAngle"),
      decrease("ramp.exitAngle"),
      increase("bed.angle"),
      decrease("pin.diameter"),
    ],
    source: COMMON_PRACTICE,
  },
  {
    code: "pin-turning",
    subject: "turning-pin-to-ramp",
    appliesTo: ({ design }) => design.pin.section !== "round",
    relation: "at least",
    value: ({ pinToRampTurning }) => pinToRampTurning,
    warn: 1,
    unit: "mm",
    parameters: ["pin.height", "pin.diameter", "ramp.angle"],
    place: "pinCentre",
    advice: "let-pin-turn",
    remedies: [decrease("ramp.angle"), increase("pin.height"), decrease("pin.diameter")],
    source: PLANE_GEOMETRY,
  },
];

const tenonInCheek = (plane: Elevation): number => pinLengths(plane).end - plane.widths.core / 2;

/** Shoulders, body and tenons of the pin itself. */
const SHAPE: readonly CheckRow[] = [
  {
    code: "pin-shoulder",
    subject: "pin-shoulder",
    relation: "at least",
    value: ({ pinSize }) => pinShoulder(pinSize),
    stop: PIN_LIMITS.shoulder,
    warn: 1,
    unit: "mm",
    parameters: ["pin.diameter", "pin.tenon"],
    place: "pinCentre",
    advice: "thin-tenon-or-thicken-pin",
    remedies: [decrease("pin.tenon"), increase("pin.diameter")],
    source: COMMON_PRACTICE,
  },
  {
    code: "pin-length",
    subject: "pin-between-shoulders",
    relation: "at least",
    value: (plane) => 2 * pinLengths(plane).shoulder,
    stop: 5,
    unit: "mm",
    parameters: ["pin.endClearance"],
    place: "pinCentre",
    advice: "lessen-end-gaps",
    remedies: [decrease("pin.endClearance")],
    source: COMMON_PRACTICE,
  },
  {
    code: "tenon-length",
    subject: "tenon-in-cheek",
    relation: "at least",
    value: tenonInCheek,
    stop: 1,
    warn: ({ widths }) => widths.cheek / 2,
    unit: "mm",
    parameters: ["pin.tenonLength", "pin.endClearance"],
    place: "pinCentre",
    advice: "lengthen-tenons",
    remedies: [increase("pin.tenonLength"), decrease("pin.endClearance")],
    source: COMMON_PRACTICE,
  },
  {
    code: "tenon-projection",
    subject: "tenon-through-cheek",
    relation: "at most",
    value: tenonInCheek,
    warn: ({ widths }) => widths.cheek,
    unit: "mm",
    parameters: ["pin.tenonLength"],
    place: "pinCentre",
    advice: "shorten-standing-tenon",
    remedies: [decrease("pin.tenonLength")],
    source: COMMON_PRACTICE,
  },
];

export const PIN_CHECKS: readonly CheckRow[] = [...WOOD, ...ROOM, ...SHAPE];
