// Whether the iron can be put in, lies with clearance and reaches where it must; and what the saws must do for it.

import { SHOP } from "@lamplane/geometry";
import type { Elevation } from "@lamplane/parameters/elevation";
import { figure, pinAxisOffset } from "@lamplane/parameters/elevation";
import { stepPlace, stepsDone } from "../steps.ts";
import { atLeast, atMost, type Draft, down, GEOMETRY, up } from "./draft.ts";

/** Iron and cap iron must pass under the pin, hump and all, and between the cheeks. */
export function checkIronPasses(plane: Elevation): Draft[] {
  const { capIron, body } = plane.design;
  const hump = capIron.thickness > 0 ? capIron.hump : 0;
  return [
    ...atLeast(plane, {
      code: "iron-cannot-pass",
      what: `The room between the ${hump > 0 ? "cap iron's hump" : capIron.thickness > 0 ? "cap iron" : "iron"} and the cross pin as the iron is put in`,
      value: plane.pin.v - pinAxisOffset(plane.design) - capIron.thickness - hump,
      stop: 0,
      warn: 0.5,
      unit: "mm",
      parameters: ["capIron.hump", "wedge.tip", "wedge.angle", "pin.height"],
      place: "pinCentre",
      advice: "Make the wedge thicker at its tip.",
      mends: [up("wedge.tip"), up("pin.height"), up("wedge.angle")],
      source: GEOMETRY,
    }),
    ...atLeast(plane, {
      code: "iron-tight-in-core",
      what: "The core's side clearance over the iron",
      value: body.sideClearance,
      stop: SHOP,
      warn: 0.8,
      unit: "mm",
      parameters: ["body.sideClearance", "iron.width"],
      place: "edge",
      advice: "Leave room to set the iron square and for the core to shrink; 1.6 mm (1/16 in) is usual.",
      mends: [up("body.sideClearance")],
    }),
  ];
}

/** The bevel must clear the wood. */
export function checkClearanceAngle(plane: Elevation): Draft[] {
  return atLeast(plane, {
    code: "clearance-angle",
    what: "The clearance angle under the bevel",
    value: figure(plane, "clearanceAngle")!,
    stop: 3,
    warn: 10,
    unit: "°",
    parameters: ["bed.angle", "iron.bevel"],
    place: "edge",
    advice: "Grind the bevel lower, or bed the iron more steeply.",
    mends: [down("iron.bevel"), up("bed.angle")],
  });
}

/** The iron must stand out of the top to be tapped. */
export function checkIronLength(plane: Elevation): Draft[] {
  return atLeast(plane, {
    code: "iron-short",
    what: "What the iron stands out of the bed's top",
    value: plane.design.iron.length - plane.bedTopS,
    warn: 5,
    unit: "mm",
    parameters: ["iron.length", "body.height"],
    place: "bedTop",
    advice: "Make the plane lower; an iron that ends inside the body cannot be tapped.",
    mends: [down("body.height")],
  });
}

/** Angles that the shop's saw does not reach; nothing to say once they are cut. */
export function checkSaws(plane: Elevation): Draft[] {
  if (stepsDone(plane.design) > stepPlace("cuts")) return [];
  const { sawLimit } = plane.design.shop;
  const saw = (name: "bed" | "ramp", value: number) =>
    atMost(plane, {
      code: `saw-${name}`,
      what: `The angle from square at which the ${name} is sawn`,
      value,
      warn: sawLimit,
      unit: "°",
      parameters: [`${name}.angle`, "shop.sawLimit"],
      place: name === "bed" ? "bedTip" : "rampTip",
      advice: "The saw does not swing so far: use a hand saw or a bevelled fence, or another angle.",
      mends: [up(`${name}.angle`)],
    });
  return [...saw("bed", figure(plane, "sawBed")!), ...saw("ramp", figure(plane, "sawRamp")!)];
}
