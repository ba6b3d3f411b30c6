// Whether the iron can be put in, lies with clearance and reaches where it must; and what the saws must do for it.

import { BENCH_TOLERANCE } from "@lamplane/geometry";
import type { Elevation } from "@lamplane/parameters/elevation";
import { figureValue, pinAxisOffset } from "@lamplane/parameters/elevation";
import { stepIndex, stepsDone } from "../steps.ts";
import { decrease, GEOMETRY, increase, type Judgement, judgeAtLeast, judgeAtMost } from "./judgement.ts";

/** Iron and cap iron must pass under the pin, hump and all, and between the cheeks. */
export function checkIronPasses(plane: Elevation): Judgement[] {
  const { capIron, body } = plane.design;
  const hump = capIron.thickness > 0 ? capIron.hump : 0;
  return [
    ...judgeAtLeast(plane, {
      code: "iron-cannot-pass",
      what: `The room between the ${hump > 0 ? "cap iron's hump" : capIron.thickness > 0 ? "cap iron" : "iron"} and the cross pin as the iron is put in`,
      value: plane.pin.v - pinAxisOffset(plane.design) - capIron.thickness - hump,
      stop: 0,
      warn: 0.5,
      unit: "mm",
      parameters: ["capIron.hump", "wedge.tip", "wedge.angle", "pin.height"],
      place: "pinCentre",
      advice: "Make the wedge thicker at its tip.",
      remedies: [increase("wedge.tip"), increase("pin.height"), increase("wedge.angle")],
      source: GEOMETRY,
    }),
    ...judgeAtLeast(plane, {
      code: "iron-tight-in-core",
      what: "The core's side clearance over the iron",
      value: body.sideClearance,
      stop: BENCH_TOLERANCE,
      warn: 0.8,
      unit: "mm",
      parameters: ["body.sideClearance", "iron.width"],
      place: "edge",
      advice: "Leave room to set the iron square and for the core to shrink; 1.6 mm (1/16 in) is usual.",
      remedies: [increase("body.sideClearance")],
    }),
  ];
}

/** The bevel must clear the wood. */
export function checkClearanceAngle(plane: Elevation): Judgement[] {
  return judgeAtLeast(plane, {
    code: "clearance-angle",
    what: "The clearance angle under the bevel",
    value: figureValue(plane, "clearanceAngle")!,
    stop: 3,
    warn: 10,
    unit: "°",
    parameters: ["bed.angle", "iron.bevel"],
    place: "edge",
    advice: "Grind the bevel lower, or bed the iron more steeply.",
    remedies: [decrease("iron.bevel"), increase("bed.angle")],
  });
}

/** The iron must stand out of the top to be tapped. */
export function checkIronLength(plane: Elevation): Judgement[] {
  return judgeAtLeast(plane, {
    code: "iron-short",
    what: "What the iron stands out of the bed's top",
    value: plane.design.iron.length - plane.bedTopS,
    warn: 5,
    unit: "mm",
    parameters: ["iron.length", "body.height"],
    place: "bedTop",
    advice: "Make the plane lower; an iron that ends inside the body cannot be tapped.",
    remedies: [decrease("body.height")],
  });
}

/** Angles that the shop's saw does not reach; nothing to say once they are cut. */
export function checkSaws(plane: Elevation): Judgement[] {
  if (stepsDone(plane.design) > stepIndex("cuts")) return [];
  const { sawLimit } = plane.design.shop;
  const saw = (name: "bed" | "ramp", value: number) =>
    judgeAtMost(plane, {
      code: `saw-${name}`,
      what: `The angle from square at which the ${name} is sawn`,
      value,
      warn: sawLimit,
      unit: "°",
      parameters: [`${name}.angle`, "shop.sawLimit"],
      place: name === "bed" ? "bedTip" : "rampTip",
      advice: "The saw does not swing so far: use a hand saw or a bevelled fence, or another angle.",
      remedies: [increase(`${name}.angle`)],
    });
  return [...saw("bed", figureValue(plane, "sawBed")!), ...saw("ramp", figureValue(plane, "sawRamp")!)];
}
