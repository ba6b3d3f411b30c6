// Whether the cross pin has wood round it, room beside it and wedge under it.
import type { Elevation } from "@lamplane/parameters/elevation";
import {
  figure,
  pinLengths,
  ROOM_WANTED,
  SHEAR_OUT_PER_TENON,
  WEDGE_ABOVE_WANTED,
  WEDGE_BELOW_WANTED,
  WOOD_OVER_HOLE_PER_TENON,
} from "@lamplane/parameters/elevation";
import { TABLE } from "@lamplane/parameters/table";
import { atLeast, atMost, type Draft, down, GEOMETRY, up, worstOf } from "./draft.ts";

/** Least wood on any side of the pin's hole, mm: less breaks out as it is bored. */
const ROUND_THE_HOLE = 3;
/** Room under which not even a shaving goes through, mm. */
const SHAVING_ROOM = 4;
const EDGE_DISTANCE = "common practice; NDS table 12.5.1 asks 1.5 D to a free edge (from memory)";

/** Pin out of the wood: over it, before it, under it. */
export function checkPinWood(plane: Elevation): Draft[] {
  const { tenon } = plane.design.pin;
  const { woodOverHole, shearOut } = plane.pinMargins;
  const wood = {
    code: "pin-out-of-wood",
    unit: "mm",
    parameters: ["pin.height", "pin.tenon", "body.height"],
    place: "pinCentre",
    stop: ROUND_THE_HOLE,
    source: EDGE_DISTANCE,
  } as const;
  const over = atLeast(plane, {
    ...wood,
    what: "The wood over the pin's hole",
    value: woodOverHole,
    warn: tenon * WOOD_OVER_HOLE_PER_TENON,
    advice: "Set the pin lower, or make the plane higher.",
    mends: [down("pin.height"), up("body.height"), down("pin.tenon")],
  });
  const thrust = atLeast(plane, {
    ...wood,
    what: "The wood before the pin's hole, square off the bed,",
    value: shearOut,
    warn: tenon * SHEAR_OUT_PER_TENON,
    advice: "Set the pin lower, or make the plane higher.",
    mends: [down("pin.height"), up("body.height"), down("pin.tenon")],
  });
  const under = atLeast(plane, {
    ...wood,
    what: "The wood under the pin's hole",
    value: plane.pin.centre.y - plane.pinHole.radius,
    advice: "Set the pin higher.",
    mends: [up("pin.height")],
  });
  return worstOf(...over, ...thrust, ...under);
}

/** Room for shavings and fingers. */
export function checkPinRoom(plane: Elevation): Draft[] {
  return [
    ...atLeast(plane, {
      code: "pin-near-ramp",
      what: "The room between cross pin and ramp",
      value: plane.pinMargins.roomToRamp,
      stop: SHAVING_ROOM,
      warn: ROOM_WANTED,
      unit: "mm",
      parameters: ["pin.height", "ramp.angle", "ramp.radius", "pin.diameter"],
      place: "pinCentre",
      advice: "Fingers must reach a jammed shaving: lean the ramp further to the toe, or set the pin higher.",
      mends: [
        down("ramp.angle"),
        down("ramp.radius"),
        up("pin.height"),
        down("ramp.wearAngle"),
        down("ramp.exitAngle"),
        up("bed.angle"),
        down("pin.diameter"),
      ],
    }),
    ...pinTurns(plane),
  ];
}

/** A round pin takes up no more room as it turns. */
function pinTurns(plane: Elevation): Draft[] {
  if (plane.design.pin.section === "round") return [];
  return atLeast(plane, {
    code: "pin-cannot-turn",
    what: "The room to the ramp that is left as the flatted pin turns",
    value: plane.pinToRampTurning,
    warn: 1,
    unit: "mm",
    parameters: ["pin.height", "pin.diameter", "ramp.angle"],
    place: "pinCentre",
    advice: "The pin must turn to find the wedge.",
    mends: [down("ramp.angle"), up("pin.height"), down("pin.diameter")],
    source: GEOMETRY,
  });
}

/** The wedge must lie under the whole of the pin, off the hump, and be narrower than the core but not by much. */
export function checkWedge(plane: Elevation): Draft[] {
  const { wedge, capIron, iron } = plane.design;
  const { wedgeBelow, wedgeAbove } = plane.pinMargins;
  const off = { code: "wedge-off-pin", unit: "mm", stop: 0, place: "pinCentre" } as const;
  const below = atLeast(plane, {
    ...off,
    what: "The wedge's length below its contact with the pin",
    value: wedgeBelow,
    warn: WEDGE_BELOW_WANTED / 2,
    parameters: ["wedge.tipFromEdge", "pin.height"],
    advice: "Bring the wedge's tip nearer to the edge, or set the pin higher.",
    mends: [down("wedge.tipFromEdge"), up("pin.height")],
  });
  const above = atLeast(plane, {
    ...off,
    what: "The wedge's length above its contact with the pin",
    value: wedgeAbove,
    warn: WEDGE_ABOVE_WANTED,
    parameters: ["wedge.length", "pin.height"],
    advice: "Make the wedge longer.",
    mends: [up("wedge.length"), down("pin.height")],
  });
  const humpEnd = capIron.thickness > 0 && capIron.hump > 0 ? capIron.setback + capIron.humpEnd : 0;
  return [
    ...worstOf(...below, ...above),
    ...atLeast(plane, {
      code: "wedge-on-hump",
      what: "The wedge's tip from the cutting edge",
      value: wedge.tipFromEdge,
      stop: humpEnd,
      unit: "mm",
      parameters: ["wedge.tipFromEdge", "capIron.humpEnd"],
      place: "wedgeTip",
      advice: "The wedge must lie on the flat of the cap iron, not on its hump.",
      mends: [up("wedge.tipFromEdge")],
      source: GEOMETRY,
    }),
    ...atLeast(plane, {
      code: "wedge-thin-at-tip",
      what: "The wedge's thickness at its tip",
      value: wedge.tip,
      stop: TABLE.wedge.tip.min,
      unit: "mm",
      parameters: ["wedge.tip", "wedge.tipFromEdge"],
      place: "wedgeTip",
      advice: "The pin's hole leaves the wedge no room there: end it further from the edge, or bore the hole anew.",
      mends: [up("wedge.tip"), up("wedge.tipFromEdge")],
      source: GEOMETRY,
    }),
    ...atLeast(plane, {
      code: "wedge-narrow",
      what: "The wedge's width",
      value: figure(plane, "wedgeWidth")!,
      stop: 5,
      warn: 0.75 * iron.width,
      unit: "mm",
      parameters: ["wedge.clearance"],
      place: "wedgeTip",
      advice: "A narrow wedge holds the iron in its middle only.",
      mends: [down("wedge.clearance")],
    }),
  ];
}

/** Shoulders, body and tenons of the pin itself. */
export function checkPinShape(plane: Elevation): Draft[] {
  const { pin } = plane.design;
  const { shoulder, end } = pinLengths(plane);
  return [
    ...atLeast(plane, {
      code: "pin-without-shoulder",
      what: "The pin's shoulder round its tenon",
      value: (pin.diameter - pin.tenon) / 2,
      stop: 0.5,
      warn: 1,
      unit: "mm",
      parameters: ["pin.diameter", "pin.tenon"],
      place: "pinCentre",
      advice: "Make the tenon thinner or the pin thicker.",
      mends: [down("pin.tenon"), up("pin.diameter")],
    }),
    ...atLeast(plane, {
      code: "pin-short",
      what: "The pin's length between its shoulders",
      value: 2 * shoulder,
      stop: 5,
      unit: "mm",
      parameters: ["pin.endClearance"],
      place: "pinCentre",
      advice: "Leave less gap at its ends.",
      mends: [down("pin.endClearance")],
    }),
    ...atLeast(plane, {
      code: "tenon-short",
      what: "The tenon's length in the cheek",
      value: end - plane.widths.core / 2,
      stop: 1,
      warn: plane.widths.cheek / 2,
      unit: "mm",
      parameters: ["pin.tenonLength", "pin.endClearance"],
      place: "pinCentre",
      advice: "Make the tenons longer.",
      mends: [up("pin.tenonLength"), down("pin.endClearance")],
    }),
    ...atMost(plane, {
      code: "tenon-stands-out",
      what: "The tenon's length in the cheek",
      value: end - plane.widths.core / 2,
      warn: plane.widths.cheek,
      unit: "mm",
      parameters: ["pin.tenonLength"],
      place: "pinCentre",
      advice: "It stands out of the cheek: shorten it.",
      mends: [down("pin.tenonLength")],
    }),
  ];
}
