// Whether the two blocks and the throat between them can be: tips, chamfer, ends, arch and curve.

import { BENCH_TOLERANCE, sinDeg } from "@lamplane/geometry";
import type { Elevation } from "@lamplane/parameters/elevation";
import { archClearance, bedXAt, figureValue, ROOM_WANTED, rampXAt, tipGap } from "@lamplane/parameters/elevation";
import { decrease, GEOMETRY, increase, type Judgement, judgeAtLeast, judgeAtMost } from "./judgement.ts";

/** Least length that a block may have along its top, mm: less splits at glue-up. */
const BLOCK_TOP = 15;
/** What must be left to trim off a block's end, mm: one clean saw cut. */
const TRIM_LEFT = 1;

/** Blocks collide at glue-up. */
export function checkTips(plane: Elevation): Judgement[] {
  return judgeAtLeast(plane, {
    code: "blocks-collide",
    what: "The room between the blocks' tips on the blank's sole, feather chamfer counted,",
    value: tipGap(plane),
    stop: BENCH_TOLERANCE,
    unit: "mm",
    parameters: ["sole.allowance", "bed.featherChamfer", "iron.thickness", "mouth.opening"],
    place: "rampTip",
    advice: "Take the feather off the bed's tip higher up, or leave less wood under the sole.",
    remedies: [increase("bed.featherChamfer"), decrease("sole.allowance"), increase("mouth.opening")],
    source: `${GEOMETRY}: the blocks' corners on the blank's sole`,
  });
}

/** As built, the front block may stand so near that no sane truing opens the mouth. */
export function checkMouthOpens(plane: Elevation): Judgement[] {
  return judgeAtLeast(plane, {
    code: "mouth-closed",
    what: "The mouth's opening once the sole is trued",
    value: plane.design.mouth.opening,
    stop: 0,
    unit: "mm",
    parameters: ["mouth.opening"],
    place: "edge",
    advice: "The front block stands too far back: see whether a measured place was misread, or plane its ramp.",
    source: GEOMETRY,
  });
}

/** A chamfer that outlives the truing takes support from under the iron. */
export function checkChamfer(plane: Elevation): Judgement[] {
  const { bed, sole } = plane.design;
  const left = Math.max(0, bed.featherChamfer - sole.allowance) / sinDeg(plane.frame.bedAngle);
  return judgeAtMost(plane, {
    code: "chamfer-under-iron",
    what: "What is left of the feather chamfer after truing, along the bed,",
    value: left,
    warn: Math.max(BENCH_TOLERANCE, figureValue(plane, "unsupported")!),
    unit: "mm",
    parameters: ["bed.featherChamfer", "sole.allowance"],
    place: "bedChamfer",
    advice: "Make the feather chamfer no higher than the sole's allowance, so that the bevel's heel is borne.",
    remedies: [decrease("bed.featherChamfer")],
    source: `${GEOMETRY}: t·(cot τ − cot β)`,
  });
}

/** Slid together, the blocks must still reach past the finished ends. */
export function checkEnds(plane: Elevation): Judgement[] {
  const { trim } = plane.design.body;
  return judgeAtLeast(plane, {
    code: "blank-too-short",
    what: "What is left to trim off each block's end once the blocks are slid together",
    value: trim / 2 - plane.cuts.setInToe,
    stop: TRIM_LEFT,
    unit: "mm",
    parameters: ["body.trim", "shop.kerf"],
    place: "toe",
    advice: "Begin with a longer blank.",
    remedies: [increase("body.trim")],
    source: GEOMETRY,
  });
}

/**
 * Ramp and bed must come out of the top well within the ends. The flat top of the glued blank decides, from which the
 * finished one is shaped: both lean outward on their way up, and none is higher.
 */
export function checkBlockTops(plane: Elevation): Judgement[] {
  const { design, frame, ramp, recess } = plane;
  const { height, length } = design.body;
  const deep = design.iron.thickness + (recess?.depth ?? 0);
  return [
    ...judgeAtLeast(plane, {
      code: "front-block-too-short",
      what: "The front block's length along its top",
      value: rampXAt(ramp, height),
      stop: BLOCK_TOP,
      unit: "mm",
      parameters: ["mouth.fromToe", "ramp.angle", "body.length", "body.height"],
      place: "rampTop",
      advice: "Set the mouth further back, or make the plane longer.",
      remedies: [increase("mouth.fromToe"), increase("body.length"), increase("ramp.angle")],
    }),
    ...judgeAtLeast(plane, {
      code: "bed-block-too-short",
      what: "The bed block's length along its top, behind bed and recess,",
      value: length - bedXAt(frame, deep, height),
      stop: BLOCK_TOP,
      unit: "mm",
      parameters: ["mouth.fromToe", "bed.angle", "body.length", "body.height"],
      place: "bedTop",
      advice: "Make the plane longer, or set the mouth nearer to the toe.",
      remedies: [increase("body.length"), decrease("mouth.fromToe")],
    }),
  ];
}

/** An arched top must be possible, and a curved ramp must lean to the toe. */
export const checkShapes = (plane: Elevation): Judgement[] => [
  ...(plane.top.outline === "arched" ? judgeArch(plane) : []),
  ...(plane.ramp.shape === "curved" ? judgeRampCurve(plane) : []),
];

const judgeRampCurve = (plane: Elevation): Judgement[] =>
  judgeAtLeast(plane, {
    code: "ramp-does-not-curve",
    what: "The turn of the curved ramp from its wear to its exit",
    value: plane.design.ramp.wearAngle - plane.design.ramp.exitAngle,
    stop: 1,
    unit: "°",
    parameters: ["ramp.exitAngle", "ramp.wearAngle"],
    place: "rampTop",
    advice: "The ramp's exit must lie flatter than its wear.",
    remedies: [decrease("ramp.exitAngle"), increase("ramp.wearAngle")],
    source: GEOMETRY,
  });

const judgeArch = (plane: Elevation): Judgement[] =>
  judgeAtLeast(plane, {
    code: "arch-impossible",
    what: "What the top's shorter arc has in length over its fall",
    value: archClearance(plane.top),
    stop: 0,
    unit: "mm",
    parameters: ["body.crown", "body.toeHeight", "body.heelHeight", "body.height"],
    place: "crown",
    advice: "Neither end may be higher than the crown, nor fall more than it is long.",
    remedies: [
      increase("body.toeHeight"),
      decrease("body.toeHeight"),
      increase("body.heelHeight"),
      decrease("body.heelHeight"),
      increase("body.crown"),
      decrease("body.crown"),
    ],
    source: GEOMETRY,
  });

/** A throat that narrows on its way up catches shavings. */
export function checkThroat(plane: Elevation): Judgement[] {
  const { by, left } = plane.throat;
  if (left >= ROOM_WANTED) return [];
  return judgeAtMost(plane, {
    code: "throat-chokes",
    what: "The throat's narrowing on its way up",
    value: by,
    ...(by > left ? { stop: BENCH_TOLERANCE } : { warn: BENCH_TOLERANCE }),
    unit: "mm",
    parameters: ["ramp.angle", "ramp.wearAngle", "ramp.radius", "capIron.hump", "wedge.tipFromEdge", "pin.height"],
    place: "throatNarrowest",
    advice: "Lean the ramp further to the toe, or bring the wedge's tip and the pin further up.",
    remedies: [
      decrease("ramp.angle"),
      decrease("ramp.wearAngle"),
      decrease("ramp.radius"),
      increase("wedge.tipFromEdge"),
      increase("pin.height"),
      decrease("wedge.tip"),
    ],
  });
}
