// Whether the cross pin has wood round it, room beside it and wedge under it.
import type { Elevation } from "@lamplane/parameters/elevation";
import {
  figureValue,
  pinLengths,
  ROOM_WANTED,
  SHEAR_OUT_PER_TENON,
  WEDGE_ABOVE_WANTED,
  WEDGE_BELOW_WANTED,
  WOOD_OVER_HOLE_PER_TENON,
} from "@lamplane/parameters/elevation";
import { TABLE } from "@lamplane/parameters/table";
import { decrease, GEOMETRY, increase, type Judgement, judgeAtLeast, judgeAtMost, pickWorst } from "./judgement.ts";

/** Least wood on any side of the pin's hole, mm: less breaks out as it is bored. */
const ROUND_THE_HOLE = 3;
/** Room under which not even a shaving goes through, mm. */
const SHAVING_ROOM = 4;
const EDGE_DISTANCE = "common practice; NDS table 12.5.1 asks 1.5 D to a free edge (from memory)";

/** Pin out of the wood: over it, before it, under it. */
export function checkPinWood(plane: Elevation): Judgement[] {
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
  const over = judgeAtLeast(plane, {
    ...wood,
    what: "The wood over the pin's hole",
    value: woodOverHole,
    warn: tenon * WOOD_OVER_HOLE_PER_TENON,
    advice: "Set the pin lower, or make the plane higher.",
    remedies: [decrease("pin.height"), increase("body.height"), decrease("pin.tenon")],
  });
  const thrust = judgeAtLeast(plane, {
    ...wood,
    what: "The wood before the pin's hole, in the line of the wedge's thrust,",
    value: shearOut,
    warn: tenon * SHEAR_OUT_PER_TENON,
    advice: "Set the pin lower, or make the plane higher.",
    remedies: [decrease("pin.height"), increase("body.height"), decrease("pin.tenon")],
  });
  const under = judgeAtLeast(plane, {
    ...wood,
    what: "The wood under the pin's hole",
    value: plane.pin.centre.y - plane.pinHole.radius,
    advice: "Set the pin higher.",
    remedies: [increase("pin.height")],
  });
  return pickWorst(...over, ...thrust, ...under);
}

/** Room for shavings and fingers. */
export function checkPinRoom(plane: Elevation): Judgement[] {
  return [
    ...judgeAtLeast(plane, {
      code: "pin-near-ramp",
      what: "The room between cross pin and ramp",
      value: plane.pinMargins.roomToRamp,
      stop: SHAVING_ROOM,
      warn: ROOM_WANTED,
      unit: "mm",
      parameters: ["pin.height", "ramp.angle", "ramp.radius", "pin.diameter"],
      place: "pinCentre",
      advice: "Fingers must reach a jammed shaving: lean the ramp further to the toe, or set the pin higher.",
      remedies: [
        decrease("ramp.angle"),
        decrease("ramp.radius"),
        increase("pin.height"),
        decrease("ramp.wearAngle"),
        decrease("ramp.exitAngle"),
        increase("bed.angle"),
        decrease("pin.diameter"),
      ],
    }),
    ...judgePinTurning(plane),
  ];
}

/** A round pin takes up no more room as it turns. */
function judgePinTurning(plane: Elevation): Judgement[] {
  if (plane.design.pin.section === "round") return [];
  return judgeAtLeast(plane, {
    code: "pin-cannot-turn",
    what: "The room to the ramp that is left as the flatted pin turns",
    value: plane.pinToRampTurning,
    warn: 1,
    unit: "mm",
    parameters: ["pin.height", "pin.diameter", "ramp.angle"],
    place: "pinCentre",
    advice: "The pin must turn to find the wedge.",
    remedies: [decrease("ramp.angle"), increase("pin.height"), decrease("pin.diameter")],
    source: GEOMETRY,
  });
}

/** The wedge must lie under the whole of the pin, off the hump, and be narrower than the core but not by much. */
export function checkWedge(plane: Elevation): Judgement[] {
  const { wedge, capIron, iron } = plane.design;
  const { wedgeBelow, wedgeAbove } = plane.pinMargins;
  const off = { code: "wedge-off-pin", unit: "mm", stop: 0, place: "pinCentre" } as const;
  const below = judgeAtLeast(plane, {
    ...off,
    what: "The wedge's length below its contact with the pin",
    value: wedgeBelow,
    warn: WEDGE_BELOW_WANTED / 2,
    parameters: ["wedge.tipFromEdge", "pin.height"],
    advice: "Bring the wedge's tip nearer to the edge, or set the pin higher.",
    remedies: [decrease("wedge.tipFromEdge"), increase("pin.height")],
  });
  const above = judgeAtLeast(plane, {
    ...off,
    what: "The wedge's length above its contact with the pin",
    value: wedgeAbove,
    warn: WEDGE_ABOVE_WANTED,
    parameters: ["wedge.length", "pin.height"],
    advice: "Make the wedge longer.",
    remedies: [increase("wedge.length"), decrease("pin.height")],
  });
  const humpEnd = capIron.thickness > 0 && capIron.hump > 0 ? capIron.setback + capIron.humpEnd : 0;
  return [
    ...pickWorst(...below, ...above),
    ...judgeAtLeast(plane, {
      code: "wedge-on-hump",
      what: "The wedge's tip from the cutting edge",
      value: wedge.tipFromEdge,
      stop: humpEnd,
      unit: "mm",
      parameters: ["wedge.tipFromEdge", "capIron.humpEnd"],
      place: "wedgeTip",
      advice: "The wedge must lie on the flat of the cap iron, not on its hump.",
      remedies: [increase("wedge.tipFromEdge")],
      source: GEOMETRY,
    }),
    ...judgeAtLeast(plane, {
      code: "wedge-thin-at-tip",
      what: "The wedge's thickness at its tip",
      value: wedge.tip,
      stop: TABLE.wedge.tip.min,
      unit: "mm",
      parameters: ["wedge.tip", "wedge.tipFromEdge"],
      place: "wedgeTip",
      advice: "The pin's hole leaves the wedge no room there: end it further from the edge, or bore the hole anew.",
      remedies: [increase("wedge.tip"), increase("wedge.tipFromEdge")],
      source: GEOMETRY,
    }),
    ...judgeAtLeast(plane, {
      code: "wedge-narrow",
      what: "The wedge's width",
      value: figureValue(plane, "wedgeWidth")!,
      stop: 5,
      warn: 0.75 * iron.width,
      unit: "mm",
      parameters: ["wedge.clearance"],
      place: "wedgeTip",
      advice: "A narrow wedge holds the iron in its middle only.",
      remedies: [decrease("wedge.clearance")],
    }),
  ];
}

/** Shoulders, body and tenons of the pin itself. */
export function checkPinShape(plane: Elevation): Judgement[] {
  const { pin } = plane.design;
  const { shoulder, end } = pinLengths(plane);
  return [
    ...judgeAtLeast(plane, {
      code: "pin-without-shoulder",
      what: "The pin's shoulder round its tenon",
      value: (pin.diameter - pin.tenon) / 2,
      stop: 0.5,
      warn: 1,
      unit: "mm",
      parameters: ["pin.diameter", "pin.tenon"],
      place: "pinCentre",
      advice: "Make the tenon thinner or the pin thicker.",
      remedies: [decrease("pin.tenon"), increase("pin.diameter")],
    }),
    ...judgeAtLeast(plane, {
      code: "pin-short",
      what: "The pin's length between its shoulders",
      value: 2 * shoulder,
      stop: 5,
      unit: "mm",
      parameters: ["pin.endClearance"],
      place: "pinCentre",
      advice: "Leave less gap at its ends.",
      remedies: [decrease("pin.endClearance")],
    }),
    ...judgeAtLeast(plane, {
      code: "tenon-short",
      what: "The tenon's length in the cheek",
      value: end - plane.widths.core / 2,
      stop: 1,
      warn: plane.widths.cheek / 2,
      unit: "mm",
      parameters: ["pin.tenonLength", "pin.endClearance"],
      place: "pinCentre",
      advice: "Make the tenons longer.",
      remedies: [increase("pin.tenonLength"), decrease("pin.endClearance")],
    }),
    ...judgeAtMost(plane, {
      code: "tenon-stands-out",
      what: "The tenon's length in the cheek",
      value: end - plane.widths.core / 2,
      warn: plane.widths.cheek,
      unit: "mm",
      parameters: ["pin.tenonLength"],
      place: "pinCentre",
      advice: "It stands out of the cheek: shorten it.",
      remedies: [decrease("pin.tenonLength")],
    }),
  ];
}
