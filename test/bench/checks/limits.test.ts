// Every check on both sides of each of its limits: a hair within it says nothing, a hair beyond it complains, there and so.
// Each row makes a design whose judged value is a number of the test's own, from the definition, turned about by hand.
import {
  clampThroughYear,
  planeHold,
  planePinStrength,
  planeSeasons,
  weakestPlace,
  wedgeHoldOfYear,
  yearlyMaximum,
  yearlyMinimum,
} from "@lamplane/bench";
import { withValue } from "@lamplane/parameters/design";
import { type Elevation, elevation } from "@lamplane/parameters/elevation";
import { expect, test } from "vitest";
import type { Judgement } from "../../../packages/bench/src/checks/judgement.ts";
import { judgeChecks } from "../../../packages/bench/src/checks/judgements.ts";
import { type Changes, designWith, randomDesigns, WORKED } from "../../support/designs.ts";

const cos = (deg: number) => Math.cos((deg * Math.PI) / 180);
const sin = (deg: number) => Math.sin((deg * Math.PI) / 180);
const tan = (deg: number) => Math.tan((deg * Math.PI) / 180);
const cot = (deg: number) => 1 / tan(deg);
const atan = (x: number) => (Math.atan(x) * 180) / Math.PI;

/** The worked set with changes; a value a hair outside its row's limits is wanted at some of them. */
const planeWith = (changes: Changes): Elevation =>
  elevation(
    Object.entries(changes).reduce((design, [path, value]) => withValue(design, path, value), designWith(WORKED)),
  );

/** The pin of the worked set: s·sin β + v(s)·cos β = pinY with v = c₁ + w₀ + (s − s₀)·tan ω + e / cos ω. */
function pinAt({ bed = 47, height = 36 } = {}) {
  const atEdge = 3.2 + 3 - 22 * tan(6) + 6.35 / cos(6);
  const s = (height - atEdge * cos(bed)) / (sin(bed) + tan(6) * cos(bed));
  const v = atEdge + s * tan(6);
  return { s, v, ahead: s * cos(bed) - v * sin(bed), contact: s + 6.35 * sin(6), wedge: 3 + (s - 22) * tan(6) };
}
const PIN = pinAt();

/** What opening gives the pin so much room, square to the ramp: (x − m + g)·sin ρ + pinY·cos ρ − r. */
const openingFor = (room: number, ramp: number, radius: number) =>
  (room + radius - 36 * cos(ramp)) / sin(ramp) - PIN.ahead;

/** What a parameter must be for a value that grows evenly with it; for values whose formula has tests of its own. */
function evenly(changes: Changes, parameter: string, [a, b]: readonly [number, number], of: (p: Elevation) => number) {
  const [atA, atB] = [a, b].map((value) => of(planeWith({ ...changes, [parameter]: value }))) as [number, number];
  return (value: number): Changes => ({ ...changes, [parameter]: a + ((value - atA) * (b - a)) / (atB - atA) });
}

interface Row {
  readonly code: string;
  readonly of: string;
  /** Changes, or a plane, whose judged value is this one. */
  readonly at: (value: number) => Changes | Elevation;
  readonly sense: "at least" | "at most";
  readonly stop?: number;
  readonly warn?: number;
  /** What is said within both, of another value that the check judges; nothing unless told. */
  readonly within?: "warning";
  readonly unit: string;
}

const COLLIDING = { "bed.angle": 45, "iron.thickness": 3.175, "ramp.angle": 62 };
const collides = (chamfer: number, allowance: number) => (room: number) => ({
  ...COLLIDING,
  "bed.featherChamfer": chamfer,
  "sole.allowance": allowance,
  "mouth.opening": room - 3.175 * Math.SQRT2 - chamfer * cot(45) + allowance * (cot(45) + cot(62)),
});
const COLLIDE = {
  code: "block-tip-gap",
  sense: "at least",
  stop: 0.1,
  unit: "mm",
} as const;

const CHAMFER = {
  code: "feather-chamfer",
  sense: "at most",
  unit: "mm",
} as const;

const FRONT = {
  code: "front-block-length",
  sense: "at least",
  stop: 15,
  unit: "mm",
} as const;

const BED = {
  code: "bed-block-length",
  sense: "at least",
  stop: 15,
  unit: "mm",
} as const;

const ARCH = {
  code: "top-arcs",
  sense: "at least",
  stop: 0,
  unit: "mm",
} as const;
const arched = (crown: number, toeHeight: number, heelHeight: number): Changes => ({
  "body.outline": "arched",
  "body.crown": crown,
  "body.toeHeight": toeHeight,
  "body.heelHeight": heelHeight,
});

const CHOKE = {
  code: "throat-narrowing",
  sense: "at most",
  unit: "mm",
} as const;
const choked = (by: number, left: number): Elevation => {
  const plane = planeWith({});
  return { ...plane, throat: { ...plane.throat, by, left } };
};

const PASS = {
  code: "iron-passage",
  sense: "at least",
  stop: 0,
  warn: 0.5,
  unit: "mm",
} as const;

const IN_WOOD = {
  code: "pin-hole-wood",
  sense: "at least",
  unit: "mm",
} as const;
const HOLE = (9.5 + 0.2) / 2;

const OFF_PIN = {
  code: "wedge-under-pin",
  sense: "at least",
  stop: 0,
  unit: "mm",
} as const;
/** The tip further up on the same line of the wedge. */
const tipAt = (s0: number): Changes => ({ "wedge.tipFromEdge": s0, "wedge.tip": 3 + (s0 - 22) * tan(6) });
const COVERED = 6.35 * cos(6);

const HUMP = {
  code: "wedge-tip-place",
  sense: "at least",
  unit: "mm",
} as const;

const NEAR_RAMP = {
  code: "pin-to-ramp",
  sense: "at least",
  stop: 4,
  warn: 16,
  unit: "mm",
} as const;

const RECESS = { sense: "at least", unit: "mm" } as const;
const PAD = {
  ...RECESS,
  code: "recess-pad",
  stop: 4,
  warn: 12,
} as const;
/** The screw's head lies where the recess's lower end (head's middle − radius − travel) comes to s. */
const headFor = (s: number) => s + 8 + 6;

/** Layers of the worked core, 49.6, about a middle one, for boards that give any of them. */
const layers = (...thicknesses: number[]): Changes => ({
  "core.layers": thicknesses.map((thickness) => `${thickness} mm`).join(" + "),
  "core.board": 80,
});
const LAYERS = { sense: "at most", unit: "mm" } as const;

const PEGS = {
  code: "peg-room",
  sense: "at least",
  stop: 0,
  unit: "mm",
} as const;
/** Half of what the two blocks of the worked set are slid together by: 3.2 / sin 47 + 1 between the kerfs, less glueGap 0.5428. */
const SET_IN = (3.2 / sin(47) + 1 - (3.6 / sin(47) + 0.15 - 3 * (cot(47) + cot(60)))) / 2;

const billet = (name: "length" | "width" | "height", needed: number): Row => ({
  code: `billet-${name}`,
  of: `the ${name}`,
  at: (value) => ({ [`billet.${name}`]: value }),
  sense: "at least",
  stop: needed,
  unit: "mm",
});

const LOCK = {
  code: "wedge-self-locking",
  sense: "at least",
  unit: "°",
} as const;
const frictions = (steelLow: number, steelHigh: number, woodLow: number, woodHigh: number): Changes => ({
  "hold.friction.steelLow": steelLow,
  "hold.friction.steelHigh": steelHigh,
  "hold.friction.woodLow": woodLow,
  "hold.friction.woodHigh": woodHigh,
});
const FRICTION = {
  code: "friction-order",
  sense: "at least",
  warn: 0,
  unit: "",
} as const;

/** Every stress grows as the force on the edge does, so that force times factor stays: how strong the pin is. */
const STRENGTHS = planePinStrength(planeWith({}), "fine");
const WEAKEST = weakestPlace(STRENGTHS)!.factor;
const strong = (
  code: string,
  place: "bending" | "tenonShear" | "tenonBending" | "tenonCrushing" | "cheekBearing" | "cheekShearOut",
): Row[] => {
  const held = STRENGTHS[place].factor! * 5;
  const row = { code, sense: "at least", unit: "×" } as const;
  return [
    {
      ...row,
      of: "a fine shaving",
      at: (factor) => ({ "hold.forcePerMm": held / factor, "hold.catchPerMm": 0.1 }),
      stop: 1,
      warn: 3,
    },
    {
      ...row,
      of: "a catch",
      at: (factor) => ({ "hold.forcePerMm": 0.1, "hold.catchPerMm": held / factor }),
      warn: 1,
    },
  ];
};

const closes = (
  code: string,
  gap: "sideGap" | "pinEndGap" | "wedgeGap",
  parameter: string,
  changes: Changes = {},
): Row => ({
  code,
  of: "the worst of the year",
  at: evenly(changes, parameter, [0.3, 0.8], (plane) => yearlyMinimum(plane, gap)!),
  sense: "at least",
  stop: 0,
  warn: 0.1,
  unit: "mm",
});

const ROWS: readonly Row[] = [
  { ...COLLIDE, of: "a chamfer within the allowance", at: collides(1, 4) },
  {
    ...COLLIDE,
    of: "a chamfer taller than the allowance, which stands whole until the sole is trued",
    at: collides(5, 4),
  },
  {
    code: "mouth-opening",
    of: "the opening",
    at: (opening) => ({ "mouth.opening": opening }),
    sense: "at least",
    stop: 0,
    unit: "mm",
  },
  {
    ...CHAMFER,
    of: "what the iron never touches, t·(cot τ − cot β)",
    at: (left) => ({ "bed.featherChamfer": 3 + left * sin(47) }),
    warn: 3.6 * (cot(28) - cot(47)),
  },
  {
    ...CHAMFER,
    of: "what a maker can hold, where the bevel lies on the bed",
    at: (left) => ({ "iron.bevel": 45, "bed.angle": 45, "bed.featherChamfer": 3 + left * sin(45) }),
    warn: 0.1,
  },
  {
    code: "blank-trim",
    of: "half the trim less what the blocks are set in",
    at: (left) => ({ "body.trim": 2 * (left + SET_IN) }),
    sense: "at least",
    stop: 1,
    unit: "mm",
  },
  { ...FRONT, of: "the mouth less the ramp's lean", at: (top) => ({ "mouth.fromToe": top + 0.15 + 58 * cot(60) }) },
  {
    ...FRONT,
    of: "the flat top of a glued blank that is arched later",
    at: (top) => ({ ...arched(100, 45, 45), "mouth.fromToe": top + 0.15 + 58 * cot(60) }),
  },
  {
    ...BED,
    of: "the recess's floor, t and the head's height and 1.6 under the iron's face",
    at: (top) => ({ "body.length": top + 78 + (3.6 + 3.4 + 1.6) / sin(47) + 58 * cot(47) }),
  },
  {
    ...BED,
    of: "the bed where there is no recess",
    at: (top) => ({ "capIron.screwHead.height": 0, "body.length": top + 78 + 3.6 / sin(47) + 58 * cot(47) }),
  },
  {
    ...BED,
    of: "the flat top of a glued blank that is arched later",
    at: (top) => ({
      ...arched(100, 45, 45),
      "capIron.screwHead.height": 0,
      "body.length": top + 78 + 3.6 / sin(47) + 58 * cot(47),
    }),
  },
  {
    code: "ramp-curve",
    of: "wear less exit",
    at: (turn) => ({ "ramp.shape": "curved", "ramp.wearAngle": 70, "ramp.exitAngle": 70 - turn }),
    sense: "at least",
    stop: 1,
    unit: "°",
  },
  { ...ARCH, of: "a toe higher than the crown", at: (left) => arched(100, 58 - left, 40) },
  { ...ARCH, of: "a heel higher than the crown", at: (left) => arched(100, 40, 58 - left) },
  { ...ARCH, of: "a toe that falls more than it is long", at: (left) => arched(20 + left, 38, 40) },
  { ...ARCH, of: "a heel that falls more than it is long", at: (left) => arched(210 - left, 40, 38) },
  { ...ARCH, of: "a crown that is no way from the toe", at: (left) => arched(0.1 + left, 58, 40) },
  { ...ARCH, of: "a crown that is no way from the heel", at: (left) => arched(229.9 - left, 40, 58) },
  { ...CHOKE, of: "no more than is left", at: (by) => choked(by, 15.9), warn: 0.1 },
  { ...CHOKE, of: "more than is left", at: (by) => choked(by, 0.05), stop: 0.1 },
  {
    ...PASS,
    of: "w(s) + e / cos ω − e less the hump",
    at: (room) => ({ "capIron.hump": PIN.wedge + 6.35 / cos(6) - 6.35 - room }),
  },
  {
    ...PASS,
    of: "a single iron, whose cap iron has no hump",
    at: (room) => ({
      "capIron.thickness": 0,
      "capIron.hump": 5,
      "wedge.angle": 6,
      "wedge.tipFromEdge": 22,
      // Without the cap iron the same line of the wedge's upper side, 3.2 lower: s from the same height.
      ...singleIron(room),
    }),
  },
  {
    code: "mouth-evenness",
    of: "front block's and bed's skew, a right triangle's sides of 3 and 4, against twice ± 0.1",
    at: (value) => ({ "hand.frontSkew": 0.6 * value, "hand.bedSkew": 0.8 * value }),
    sense: "at most",
    warn: 0.2,
    unit: "mm",
  },
  {
    code: "iron-tilt-room",
    of: "a bed that turns 1 in 100: core less the turned iron's reach across, between the cheeks up to the top",
    at: (room) => {
      const [turn, between] = [atan(0.01), (58 + 3.6 * cos(47)) / sin(47)];
      const core = room + 48 * cos(turn) + (between * cos(47) + 3.6 * sin(47)) * sin(turn);
      return { "body.sideClearance": core - 48, "hand.bedSkew": core / 100, "hand.frontSkew": 0 };
    },
    sense: "at least",
    warn: 0,
    unit: "mm",
  },
  {
    code: "iron-side-play",
    of: "the side clearance",
    at: (clearance) => ({ "body.sideClearance": clearance }),
    sense: "at least",
    stop: 0.1,
    warn: 0.8,
    unit: "mm",
  },
  {
    code: "clearance-angle",
    of: "bed less bevel",
    at: (clearance) => ({ "iron.bevel": 47 - clearance }),
    sense: "at least",
    stop: 3,
    warn: 10,
    unit: "°",
  },
  {
    code: "iron-above-bed",
    of: "the iron less the bed's way to the top, (H + t·cos β) / sin β",
    at: (out) => ({ "iron.length": out + (58 + 3.6 * cos(47)) / sin(47) }),
    sense: "at least",
    warn: 5,
    unit: "mm",
  },
  {
    code: "bed-saw-angle",
    of: "90 − β",
    at: (angle) => ({ "bed.angle": 90 - angle }),
    sense: "at most",
    warn: 45,
    unit: "°",
  },
  {
    code: "ramp-saw-angle",
    of: "90 − ρ",
    at: (angle) => ({ "ramp.angle": 90 - angle }),
    sense: "at most",
    warn: 45,
    unit: "°",
  },
  {
    code: "iron-gauge-length",
    of: "from the one place to the other",
    at: (apart) => ({
      "iron.thicknessAtTop": 3.6,
      "iron.thicknessFromEdge": 12,
      "iron.topFromEdge": 12 + apart,
    }),
    sense: "at least",
    stop: 10,
    warn: 50,
    unit: "mm",
  },
  {
    code: "iron-taper-entered-twice",
    of: "3.6 − 150·tan 0.5 at the top, less what is entered there",
    at: (off) => ({ "iron.taper": 0.5, "iron.thicknessAtTop": 3.6 - 150 * tan(0.5) - off }),
    sense: "at most",
    stop: 0.1,
    warn: 0.02,
    unit: "mm",
  },
  {
    code: "iron-thin-end",
    of: "3.6 − 150·tan taper",
    at: (thick) => ({ "iron.taper": atan((3.6 - thick) / 150) }),
    sense: "at least",
    stop: 0.5,
    warn: 1,
    unit: "mm",
  },
  {
    ...IN_WOOD,
    of: "over the hole: H − pinY − r",
    at: (wood) => ({ "body.height": wood + HOLE + 36, "recess.travel": 0 }),
    stop: 3,
    warn: 9.5,
  },
  {
    ...IN_WOOD,
    of: "in the thrust's way, on a low bed: (H − pinY) / cos (β + ω) − r",
    at: (wood) => ({ "bed.angle": 35, "body.height": (wood + HOLE) * cos(41) + 36 }),
    warn: 1.5 * 9.5,
  },
  {
    ...IN_WOOD,
    of: "under the hole: pinY − r",
    at: (wood) => ({ "pin.height": wood + HOLE }),
    stop: 3,
  },
  {
    ...NEAR_RAMP,
    of: "square to a straight ramp",
    at: (room) => ({ "ramp.angle": 70, "mouth.opening": openingFor(room, 70, 6.35) }),
  },
  {
    code: "pin-turning",
    of: "the corner's radius, half a diameter times √2",
    at: (room) => ({ "ramp.angle": 70, "mouth.opening": openingFor(room, 70, 6.35 * Math.SQRT2) }),
    sense: "at least",
    warn: 1,
    unit: "mm",
  },
  {
    ...OFF_PIN,
    of: "below the flat",
    at: (below) => tipAt(PIN.contact - COVERED - below),
    warn: 3,
  },
  {
    ...OFF_PIN,
    of: "above the flat",
    at: (above) => ({ "wedge.length": above + PIN.contact + COVERED - 22 }),
    warn: 12,
  },
  { ...HUMP, of: "set back and the hump's end", at: (tip) => ({ "capIron.hump": 1, ...tipAt(tip) }), stop: 0.4 + 18 },
  { ...HUMP, of: "no hump", at: (tip) => tipAt(tip), stop: 0 },
  {
    code: "wedge-tip-thickness",
    of: "the tip",
    at: (tip) => ({ "wedge.tip": tip }),
    sense: "at least",
    stop: 0.5,
    unit: "mm",
  },
  {
    code: "wedge-width",
    of: "core less clearance",
    at: (width) => ({ "wedge.clearance": 49.6 - width }),
    sense: "at least",
    stop: 5,
    warn: 36,
    unit: "mm",
  },
  {
    code: "pin-shoulder",
    of: "(d − tenon) / 2",
    at: (shoulder) => ({ "pin.tenon": 12.7 - 2 * shoulder }),
    sense: "at least",
    stop: 0.5,
    warn: 1,
    unit: "mm",
  },
  {
    code: "pin-length",
    of: "core less the gap at each end",
    at: (length) => ({ "pin.endClearance": (49.6 - length) / 2 }),
    sense: "at least",
    stop: 5,
    unit: "mm",
  },
  {
    code: "tenon-length",
    of: "the tenon less the gap before the cheek",
    at: (inside) => ({ "pin.tenonLength": inside + 0.5 }),
    sense: "at least",
    stop: 1,
    warn: 4,
    unit: "mm",
  },
  {
    code: "tenon-projection",
    of: "the tenon less the gap before the cheek",
    at: (inside) => ({ "pin.tenonLength": inside + 0.5 }),
    sense: "at most",
    warn: 8,
    unit: "mm",
  },
  {
    code: "guide-hole-play",
    of: "a guide's pegs and drill in their holes, over the 0.15 that the pin's hole may be off",
    at: (play) => ({ "jigs.holeClearance": play / 2 }),
    sense: "at most",
    warn: 0.15,
    unit: "mm",
  },
  {
    code: "cheek-thickness",
    of: "the cheek; 5/16 in is enough",
    at: (cheek) => ({ "body.cheek": cheek }),
    sense: "at least",
    stop: 4,
    warn: 7.9,
    unit: "mm",
  },
  {
    ...RECESS,
    code: "recess-land",
    of: "half of what the core is wider",
    at: (land) => ({ "recess.width": 49.6 - 2 * land }),
    stop: 3,
    warn: 8,
  },
  {
    ...PAD,
    of: "from the bevel's heel, t·cot τ",
    at: (pad) => ({ "bed.featherChamfer": 0, "capIron.screwHead.fromEdge": headFor(pad + 3.6 * cot(28)) }),
  },
  {
    ...PAD,
    of: "from a chamfer that is taller than the sole's allowance",
    at: (pad) => ({
      "bed.featherChamfer": 10,
      // The chamfer's end: at height c − a on the bed's line, whose foot lies t·cot β up the iron.
      "capIron.screwHead.fromEdge": headFor(pad + 3.6 * cot(47) + 7 / sin(47)),
    }),
  },
  {
    ...RECESS,
    code: "recess-width",
    of: "width less head",
    at: (room) => ({ "recess.width": 16 + room }),
    stop: 0.2,
  },
  {
    ...RECESS,
    code: "recess-depth",
    of: "depth less head",
    at: (room) => ({ "recess.depth": 3.4 + room }),
    stop: 0.2,
    warn: 0.5,
  },
  {
    ...RECESS,
    code: "recess-cutter",
    of: "width less cutter",
    at: (room) => ({ "recess.width": 20, "recess.cutter": 20 - room }),
    stop: 0,
  },
  {
    ...RECESS,
    code: "recess-end",
    of: "the bed's top less the recess's rounded end",
    at: (left) => ({
      "capIron.screwHead.fromEdge": headFor((58 + 3.6 * cos(47)) / sin(47) - 12.7 / 2 - left),
    }),
    stop: 2,
  },
  {
    ...LAYERS,
    code: "layer-sum",
    of: "the core, 48 and the side play, less 15.3 + 19 + 15.3",
    at: (off) => ({ ...layers(15.3, 19, 15.3), "body.sideClearance": 1.6 + off }),
    stop: 0.1,
  },
  {
    ...LAYERS,
    sense: "at least",
    code: "layer-thickness",
    of: "the outer ones of five",
    at: (thin) => layers(thin, 15.3 - thin, 19, 15.3 - thin, thin),
    stop: 5,
  },
  {
    ...LAYERS,
    sense: "at least",
    code: "layer-board",
    of: "a board less a pass of 0.8 on each face, over a layer of 19",
    at: (over) => ({ ...layers(15.3, 19, 15.3), "core.board": 19 + 1.6 + over }),
    stop: 0,
  },
  {
    ...LAYERS,
    code: "layer-recess",
    of: "half of what the middle layer is short of head and clearance, 16 + 3",
    at: (inside) => layers(15.3 + inside, 19 - 2 * inside, 15.3 + inside),
    stop: 0.5,
  },
  {
    ...LAYERS,
    code: "layer-middle",
    of: "what one side is thicker and the other thinner",
    at: (off) => layers(15.3 + off, 19, 15.3 - off),
    stop: 0.01,
  },
  {
    ...LAYERS,
    sense: "at least",
    code: "layer-corner",
    of: "a recess of 5 over a drill's reach, its radius times the root of two",
    at: (room) => ({ ...layers(15.3, 19, 15.3), "core.cornerCutter": (5 - room) * Math.SQRT2 }),
    stop: 0,
  },
  {
    ...LAYERS,
    sense: "at least",
    code: "layer-pegs",
    of: "half the height less the pegs' radius, where both blocks are long",
    at: (wood) => ({
      ...layers(15.3, 19, 15.3),
      "body.length": 700,
      "mouth.fromToe": 300,
      "core.pegDiameter": 58 - 2 * wood,
    }),
    stop: 1.5,
    warn: 3,
  },
  {
    ...PEGS,
    of: "the waste's length, with 1.5 round the peg",
    at: (left) => ({ "body.trim": 2 * (left + 6 + 3 + SET_IN) }),
  },
  {
    ...PEGS,
    of: "a quarter of the blank's height, with 1.5 round the peg",
    at: (left) => ({ "body.trim": 120, "pegs.diameter": 2 * (61 / 4 - 1.5 - left) }),
  },
  billet("length", 230 + 25.4),
  // Two cheeks of 8 and a core of 49.6, 1.5 milled off both sides of each, two kerfs of 3.2, four passes of 0.8.
  billet("width", 2 * (8 + 3) + (49.6 + 3) + 2 * 3.2 + 4 * 0.8),
  billet("height", 58 + 3 + 2 * 1.5),
  {
    ...LOCK,
    of: "the lowest friction of a flatted pin: atan − ω",
    at: (left) => ({ ...frictions(0.1, 0.9, 0.12, 0.9), "wedge.angle": atan(0.12) - left }),
    warn: 0,
  },
  {
    ...LOCK,
    of: "the lowest friction of a round pin, which rolls on its tenons",
    at: (left) => ({
      ...frictions(0.1, 0.9, 0.12, 0.9),
      "pin.section": "round",
      "wedge.angle": atan((0.12 * 9.5) / 12.7) - left,
    }),
    warn: 0,
  },
  {
    ...LOCK,
    of: "the friction given, whatever the highest",
    at: (left) => ({ ...frictions(0.05, 0.9, 0.05, 0.9), "wedge.angle": atan(0.35) - left }),
    stop: 0,
    within: "warning",
  },
  { ...FRICTION, of: "steel over its lowest", at: (room) => ({ "hold.friction.steelLow": 0.25 - room }) },
  { ...FRICTION, of: "steel under its highest", at: (room) => ({ "hold.friction.steelHigh": 0.25 + room }) },
  { ...FRICTION, of: "wood over its lowest", at: (room) => ({ "hold.friction.woodLow": 0.35 - room }) },
  { ...FRICTION, of: "wood under its highest", at: (room) => ({ "hold.friction.woodHigh": 0.35 + room }) },
  ...strong("pin-bending", "bending"),
  ...strong("tenon-shear", "tenonShear"),
  ...strong("tenon-bending", "tenonBending"),
  ...strong("tenon-bearing", "tenonCrushing"),
  ...strong("cheek-bearing", "cheekBearing"),
  ...strong("cheek-shear", "cheekShearOut"),
  {
    code: "pin-sag",
    of: "the sag, which grows as the force does",
    at: (sag) => ({ "hold.forcePerMm": (5 * sag) / STRENGTHS.sag!.total }),
    sense: "at most",
    warn: 0.1,
    unit: "mm",
  },
  closes("iron-play-over-year", "sideGap", "body.sideClearance"),
  closes("pin-gap-over-year", "pinEndGap", "pin.endClearance"),
  closes("wedge-play-over-year", "wedgeGap", "wedge.clearance", { "wood.wedge": "cherry, black" }),
  {
    code: "tenon-play-over-year",
    of: "the worst of the year",
    at: evenly({}, "pin.tenonClearance", [0.3, 0.8], (plane) => yearlyMinimum(plane, "tenonGap")!),
    sense: "at least",
    warn: 0,
    unit: "mm",
  },
  {
    code: "tenon-projection-over-year",
    of: "the worst of the year",
    at: evenly({}, "pin.tenonLength", [7, 9], (plane) => yearlyMaximum(plane, "tenonProud")!),
    sense: "at most",
    warn: 0.1,
    unit: "mm",
  },
  {
    code: "wedge-hold-over-year",
    of: "what opens over the wedge at the loosest of the year against the pin's sag at the clamp wanted",
    at: evenly({}, "wood.driest.humidity", [13.5, 13.7], (plane) => wedgeHoldOfYear(plane)!.opens),
    sense: "at most",
    warn: planePinStrength(planeWith({}), "fine").sag!.total,
    unit: "mm",
  },
  {
    code: "wedge-load-over-year",
    of: "the weakest place under the clamp at the tightest of the year",
    // What the year adds to the clamp, and what the weakest place bears, stay as the force on the edge grows.
    at: (factor) => {
      const { clamp } = planeHold(planeWith({})).fine;
      const [bears, added] = [WEAKEST * clamp, clampThroughYear(planeWith({}))!.most - clamp];
      return { "hold.forcePerMm": (5 * (bears / factor - added)) / clamp };
    },
    sense: "at least",
    warn: 1,
    unit: "×",
  },
  {
    code: "season-order",
    of: "the dampest days' moisture less the driest days'",
    at: evenly({}, "wood.driest.humidity", [64.999, 65.001], (plane) => {
      const { driest, dampest } = planeSeasons(plane);
      return dampest.moisture - driest.moisture;
    }),
    sense: "at least",
    warn: 0,
    unit: "%",
  },
];

/** The pin of a single iron, and the tip of a wedge that leaves so much room under it: w(s) + e / cos ω − e. */
function singleIron(room: number): Changes {
  const there = room - 6.35 / cos(6) + 6.35;
  const v = there + 6.35 / cos(6);
  const s = (36 - v * cos(47)) / sin(47);
  return { "wedge.tip": there - (s - 22) * tan(6) };
}

/** How far beyond a limit, or within it, a design is taken: less than anything a maker sees. */
const HAIR = 1e-4;

const judged = (row: Row, value: number): Judgement[] => {
  const made = row.at(value);
  const plane = "frame" in made ? (made as Elevation) : planeWith(made as Changes);
  return judgeChecks(plane).filter(({ code }) => code === row.code);
};

/** The severity of a value: the gravest limit that it lies beyond. */
const expectedSeverity = ({ sense, stop, warn, within }: Row, value: number) => {
  const beyond = (limit: number | undefined) =>
    limit !== undefined && (sense === "at least" ? value < limit : value > limit);
  return beyond(stop) ? "stop" : beyond(warn) ? "warning" : (within ?? "passed");
};

const EDGES = ROWS.flatMap((row) =>
  [row.stop, row.warn]
    .filter((limit) => limit !== undefined)
    .flatMap((limit) => [-HAIR, HAIR].map((hair) => [row.code, limit + hair, row.of, row] as const)),
);

test.each(EDGES)("%s at %f: %s", (_, value, __, row) => {
  const expected = expectedSeverity(row, value);
  const [judgement, ...others] = judged(row, value);
  expect(others).toEqual([]);
  expect(judgement?.severity ?? "passed").toBe(expected);
  if (!judgement || expected === (row.within ?? "passed")) return;
  expect(judgement.value).toBeCloseTo(value, 6);
  expect(judgement.limit).toBeCloseTo(expected === "stop" ? row.stop! : row.warn!, 9);
  expect(judgement.unit).toBe(row.unit);
  expect(judgement.relation).toBe(row.sense);
});

test("every check that judges a value has its row here; jigs and notes have tests of their own", () => {
  const planes = [
    planeWith({ "billet.length": 300, "billet.width": 120, "billet.height": 90 }),
    planeWith({ "iron.taper": 0.5, "iron.thicknessAtTop": 2.3 }),
    planeWith({ "core.layers": "auto" }),
    ...randomDesigns(8, 60).map(({ design }) => elevation(design)),
  ];
  const codes = planes.flatMap((plane) =>
    judgeChecks(plane).flatMap(({ code, severity }) =>
      severity === "note" || code.endsWith("-print-size") ? [] : [code],
    ),
  );
  expect([...new Set(codes)].sort()).toEqual([...new Set(ROWS.map(({ code }) => code))].sort());
});
