// Whether the two blocks and the throat between them can be: tips, chamfer, ends, arch and curve.

import { BENCH_TOLERANCE, sinDeg } from "@lamplane/geometry";
import {
  archClearance,
  bedXAt,
  type Elevation,
  figureValue,
  ROOM_WANTED,
  rampXAt,
  tipGap,
} from "@lamplane/parameters/elevation";
import { COMMON_PRACTICE, PLANE_GEOMETRY } from "@lamplane/parameters/table";
import type { CheckRow } from "./judgement.ts";
import { decrease, increase } from "./remedy.ts";

/** Least length that a block may have along its top, mm: less splits at glue-up. */
const BLOCK_TOP = 15;
/** What must be left to trim off a block's end, mm: one clean saw cut. */
const TRIM_LEFT = 1;

/** An arched top must be possible, and a curved ramp must lean to the toe. */
const SHAPES: readonly CheckRow[] = [
  {
    code: "top-arcs",
    subject: "shorter-top-arc",
    appliesTo: ({ top }) => top.outline === "arched",
    relation: "at least",
    value: ({ top }) => archClearance(top),
    stop: 0,
    unit: "mm",
    parameters: ["body.crown", "body.toeHeight", "body.heelHeight", "body.height"],
    place: "crown",
    advice: "keep-ends-below-crown",
    remedies: [
      increase("body.toeHeight"),
      decrease("body.toeHeight"),
      increase("body.heelHeight"),
      decrease("body.heelHeight"),
      increase("body.crown"),
      decrease("body.crown"),
    ],
    source: PLANE_GEOMETRY,
  },
  {
    code: "ramp-curve",
    subject: "ramp-turn",
    appliesTo: ({ ramp }) => ramp.shape === "curved",
    relation: "at least",
    value: ({ design }) => design.ramp.wearAngle - design.ramp.exitAngle,
    stop: 1,
    unit: "°",
    parameters: ["ramp.exitAngle", "ramp.wearAngle"],
    place: "rampTop",
    advice: "flatten-ramp-exit",
    remedies: [decrease("ramp.exitAngle"), increase("ramp.wearAngle")],
    source: PLANE_GEOMETRY,
  },
];

/** Blocks must not collide at glue-up, and as built no truing opens a mouth whose front block stands too near. */
const MOUTH: readonly CheckRow[] = [
  {
    code: "block-tip-gap",
    subject: "room-between-tips",
    relation: "at least",
    value: tipGap,
    stop: BENCH_TOLERANCE,
    unit: "mm",
    parameters: ["sole.allowance", "bed.featherChamfer", "iron.thickness", "mouth.opening"],
    place: "rampTip",
    advice: "raise-feather-chamfer",
    remedies: [increase("bed.featherChamfer"), decrease("sole.allowance"), increase("mouth.opening")],
    source: `${PLANE_GEOMETRY}: the blocks' corners on the blank's sole`,
  },
  {
    code: "mouth-opening",
    subject: "mouth-opening",
    relation: "at least",
    value: ({ design }) => design.mouth.opening,
    stop: 0,
    unit: "mm",
    parameters: ["mouth.opening"],
    place: "edge",
    advice: "read-again-or-plane-ramp",
    remedies: [],
    source: PLANE_GEOMETRY,
  },
  {
    // A chamfer that outlives the truing takes support from under the iron.
    code: "feather-chamfer",
    subject: "chamfer-left",
    relation: "at most",
    value: ({ design: { bed, sole }, frame }) =>
      Math.max(0, bed.featherChamfer - sole.allowance) / sinDeg(frame.bedAngle),
    warn: (plane) => Math.max(BENCH_TOLERANCE, figureValue(plane, "unsupported")!),
    unit: "mm",
    parameters: ["bed.featherChamfer", "sole.allowance"],
    place: "bedChamfer",
    advice: "keep-chamfer-within-allowance",
    remedies: [decrease("bed.featherChamfer")],
    source: `${PLANE_GEOMETRY}: t·(cot(τ + taper) − cot β)`,
  },
];

/**
 * Slid together, the blocks must still reach past the finished ends; ramp and bed must come out of the top well within
 * them. The flat top of the glued blank decides, from which the finished one is shaped: both lean outward on their way
 * up, and none is higher.
 */
const BLOCK_LENGTHS: readonly CheckRow[] = [
  {
    code: "blank-trim",
    subject: "trim-left",
    relation: "at least",
    value: ({ design, cuts }) => design.body.trim / 2 - cuts.setInToe,
    stop: TRIM_LEFT,
    unit: "mm",
    parameters: ["body.trim", "shop.kerf"],
    place: "toe",
    advice: "lengthen-blank",
    remedies: [increase("body.trim")],
    source: PLANE_GEOMETRY,
  },
  {
    code: "front-block-length",
    subject: "front-block-top",
    relation: "at least",
    value: ({ ramp, design }) => rampXAt(ramp, design.body.height),
    stop: BLOCK_TOP,
    unit: "mm",
    parameters: ["mouth.fromToe", "ramp.angle", "body.length", "body.height"],
    place: "rampTop",
    advice: "set-mouth-back-or-lengthen-plane",
    remedies: [increase("mouth.fromToe"), increase("body.length"), increase("ramp.angle")],
    source: COMMON_PRACTICE,
  },
  {
    code: "bed-block-length",
    subject: "bed-block-top",
    relation: "at least",
    value: ({ design, frame, recess }) =>
      design.body.length - bedXAt({ ...frame, thickness: frame.thickness + (recess?.depth ?? 0) }, design.body.height),
    stop: BLOCK_TOP,
    unit: "mm",
    parameters: ["mouth.fromToe", "bed.angle", "body.length", "body.height"],
    place: "bedTop",
    advice: "lengthen-plane-or-set-mouth-forward",
    remedies: [increase("body.length"), decrease("mouth.fromToe")],
    source: COMMON_PRACTICE,
  },
];

const THROAT = {
  code: "throat-narrowing",
  unit: "mm",
  parameters: ["ramp.angle", "ramp.wearAngle", "ramp.radius", "capIron.hump", "wedge.tipFromEdge", "pin.height"],
  place: "throatNarrowest",
  advice: "lean-ramp-or-raise-wedge-and-pin",
  remedies: [
    decrease("ramp.angle"),
    decrease("ramp.wearAngle"),
    decrease("ramp.radius"),
    increase("wedge.tipFromEdge"),
    increase("pin.height"),
    decrease("wedge.tip"),
  ],
  source: COMMON_PRACTICE,
} as const satisfies Partial<CheckRow>;

const narrows = ({ throat }: Pick<Elevation, "throat">): boolean => throat.by > BENCH_TOLERANCE;

/**
 * A throat that narrows on its way up catches shavings, of a straight ramp or a curved one, but not where it is so wide that
 * fingers reach them. It stops the plane where less room is left than it narrows by.
 */
const THROATS: readonly CheckRow[] = [
  {
    ...THROAT,
    subject: "throat-narrowing",
    appliesTo: (plane) => !(narrows(plane) && plane.throat.left >= ROOM_WANTED),
    relation: "at most",
    value: ({ throat }) => throat.by,
    stop: ({ throat }) => (throat.by > throat.left ? BENCH_TOLERANCE : undefined),
    warn: ({ throat }) => (throat.by > throat.left ? undefined : BENCH_TOLERANCE),
  },
  {
    ...THROAT,
    subject: "throat-where-it-narrows",
    appliesTo: narrows,
    relation: "at least",
    value: ({ throat }) => throat.left,
    warn: ROOM_WANTED,
  },
];

export const BLOCK_CHECKS: readonly CheckRow[] = [...SHAPES, ...MOUTH, ...BLOCK_LENGTHS, ...THROATS];
