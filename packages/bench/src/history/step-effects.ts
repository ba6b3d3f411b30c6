// What each finished step fixes: measured values take the plan's place, and what was `auto` stays as it was cut.

import { cosDeg, cotDeg, sinDeg, tanDeg } from "@lamplane/geometry";
import { lengthsText, valueAt, withValue } from "@lamplane/parameters/design";
import {
  figureValue,
  frameOf,
  layersOf,
  layersOfRecess,
  layersOfStack,
  layerThickness,
  mouthOpeningAt,
  type PinSize,
  pinAxisOffset,
  planeToIron,
  rampAngle,
  recessOf,
  removalForOpening,
  setBackLayers,
} from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import { MEASURED_ROWS } from "../measured-values.ts";
import { mouthSeenInMiddle, readUnevenness } from "../mouth/mouth-skew.ts";
import { STEPS, type Step } from "../steps.ts";
import { type BuildSnapshot, type Measured, replaceSection } from "./build-snapshot.ts";
import { mouthSides, planeOf } from "./planes.ts";

type StepEffect = (snapshot: BuildSnapshot, measured: Measured) => BuildSnapshot;

/** What a step makes of what stands: its readings take their parameters' places, and the rest follows. */
export const applyStep = (snapshot: BuildSnapshot, step: Step, measured: Measured): BuildSnapshot =>
  STEP_EFFECTS[step](replaceByReadings(snapshot, step, measured), measured);

/** Values that take a parameter's place and do nothing else; what was `auto` there stays as it came out. */
function replaceByReadings(snapshot: BuildSnapshot, step: Step, measured: Measured): BuildSnapshot {
  const design = STEPS[step].measures.reduce((so, key) => {
    const { replaces, parameter, figure } = MEASURED_ROWS[key];
    if (!replaces) return so;
    const cameOutAs =
      valueAt(so, parameter) === "auto" && figure ? figureValue(planeOf(snapshot.design), figure) : undefined;
    const value = measured[key] ?? cameOutAs;
    return value === undefined ? so : withValue(so, parameter, value);
  }, snapshot.design);
  return design === snapshot.design ? snapshot : { ...snapshot, design };
}

/** What a step does beside that. Until the hole is bored that is a design and nothing else. */
const STEP_EFFECTS: Readonly<Record<Step, StepEffect>> = {
  iron: ({ design }, { ironThicknessAtTop }) => ({
    // A thickness that is measured near the top takes the place of an angle that was entered.
    design:
      ironThicknessAtTop === undefined
        ? design
        : replaceSection(design, "iron", { thicknessAtTop: ironThicknessAtTop, taper: "auto" }),
  }),
  core: applyCore,
  cuts: applyCuts,
  bed: (snapshot) => snapshot,
  recess: applyRecess,
  "pin-hole": applyPinHole,
  wedge: (snapshot) => seatWedge({ ...snapshot, isWedgeMade: true }),
  "dry-fit": (snapshot) => snapshot,
  "glue-up": applyGlueUp,
  sole: ({ design, ...rest }, { allowanceLeft }) => ({
    ...rest,
    design: setAllowance(design, allowanceLeft ?? allowanceAtMouthOpening(design)),
  }),
  mouth: applyMouth,
  shaping: (snapshot) => snapshot,
};

/** Layers stay as they were planed; a stack that came out wider or narrower has it in its outer layers. */
function applyCore({ design }: BuildSnapshot, { coreWidth }: Measured): BuildSnapshot {
  const milled =
    coreWidth === undefined ? design : replaceSection(design, "body", { sideClearance: coreWidth - design.iron.width });
  if (design.core.layers === "whole") return { design: milled };
  const layers = layersOf(planeOf(design))!;
  const thicknesses = coreWidth === undefined ? layers.map(layerThickness) : layersOfStack(layers, coreWidth);
  return { design: replaceSection(milled, "core", { layers: lengthsText(thicknesses) }) };
}

/**
 * Ramp, its curve and the mouth's place stay as they were cut. A curve whose radius was solved was solved for the pin's
 * place, so that the pin keeps it.
 */
function applyCuts({ design }: BuildSnapshot, { rampAngle, rampRadius }: Measured): BuildSnapshot {
  const { ramp, frame, pin } = planeOf(design);
  const angle = rampAngle ?? ramp.angle;
  const cut = replaceSection(design, "ramp", {
    shape: ramp.shape,
    ...(ramp.shape === "straight" ? { angle } : { wearAngle: angle }),
    ...(ramp.curve ? { radius: rampRadius ?? ramp.curve.radius } : {}),
  });
  const placed =
    ramp.curve && design.ramp.radius === "auto" ? replaceSection(cut, "pin", { height: pin.centre.y }) : cut;
  return { design: replaceSection(placed, "mouth", { fromToe: frame.mouthX }) };
}

function applyRecess({ design }: BuildSnapshot, { recessWidth, recessDepth }: Measured): BuildSnapshot {
  const recess = recessOf(design);
  if (!recess) return { design };
  const made = { width: recessWidth ?? recess.width, depth: recessDepth ?? recess.depth };
  const recessed = replaceSection(design, "recess", made);
  if (recess.madeBy === "router" || recessWidth === undefined) return { design: recessed };
  const plane = planeOf(design);
  const layers = lengthsText(layersOfRecess(layersOf(plane)!, setBackLayers(plane)!, recessWidth));
  return { design: replaceSection(recessed, "core", { layers }) };
}

function applyPinHole({ design }: BuildSnapshot, { pinHoleFromEnd, pinHoleHeight }: Measured): BuildSnapshot {
  const { pin, pinSize } = planeOf(design);
  const { centre } = pin;
  const hole = {
    x: pinHoleFromEnd === undefined ? centre.x : pinHoleFromEnd - design.body.trim / 2,
    y: pinHoleHeight === undefined ? centre.y : pinHoleHeight - design.sole.allowance,
  };
  return seatWedge({ design: replaceSection(design, "pin", pinSize), pinHole: hole });
}

/**
 * Iron, wedge and pin brought together again round a hole that stays where it was bored: a wedge still to be made is
 * made thicker or thinner, a wedge that is made goes in further or less far.
 * @see plane geometry: v(s) = c₁ + w(s) + e / cos ω
 */
function seatWedge(snapshot: BuildSnapshot): BuildSnapshot {
  const { design, pinHole } = snapshot;
  if (!pinHole) return snapshot;
  const { s, v } = planeToIron(frameOf(design), pinHole);
  const { wedge, capIron } = design;
  const thickness = v - capIron.thickness - pinAxisOffset(pinSizeOf(design)) / cosDeg(wedge.angle);
  const slope = tanDeg(wedge.angle);
  const values = snapshot.isWedgeMade
    ? { tipFromEdge: s - (thickness - wedge.tip) / slope }
    : { tip: thickness - (s - wedge.tipFromEdge) * slope };
  return { ...snapshot, design: replaceSection(replaceSection(design, "pin", { height: pinHole.y }), "wedge", values) };
}

/** Sizes of the cross pin, which are the design's own once its hole is bored. */
const pinSizeOf = (design: Design): PinSize => {
  const { diameter, tenon } = design.pin;
  return diameter === "auto" || tenon === "auto" ? planeOf(design).pinSize : { diameter, tenon };
};

/** Where the blocks came to stand; the sole still to be trued takes up what the front block is off. */
function applyGlueUp(snapshot: BuildSnapshot, { bedTipFromEnd, rampTipFromEnd }: Measured): BuildSnapshot {
  const { design } = snapshot;
  const frame = frameOf(design);
  const { allowance } = design.sole;
  const [bedCot, rampCot] = [cotDeg(frame.bedAngle), cotDeg(rampAngle(design))];
  const toeLine = design.body.trim / 2;
  const mouthX =
    bedTipFromEnd === undefined
      ? frame.mouthX
      : bedTipFromEnd - toeLine - frame.thickness / sinDeg(frame.bedAngle) + allowance * bedCot;
  const wanted = design.mouth.opening;
  const opening = rampTipFromEnd === undefined ? wanted : mouthX + allowance * rampCot + toeLine - rampTipFromEnd;
  const glued = replaceSection(design, "mouth", { fromToe: mouthX, opening });
  const wantedDeeper = removalForOpening(mouthSides(glued), wanted);
  const deeper = Math.max(-allowance, Math.min(wantedDeeper, design.body.height * MAX_PLANED_SHARE));
  return seatWedge(lowerSole({ ...snapshot, design: glued }, deeper));
}

/** Share of the height that a sole may be planed off to open a mouth; beyond it the mouth stays closed, and a check says so. */
const MAX_PLANED_SHARE = 1 / 2;

/**
 * Wood left under the planned sole where the mouth begins to open, mm: as far as a sole is trued before the mouth is read;
 * none where a block was glued so far off that the mouth stays closed at the planned sole.
 */
export function allowanceAtMouthOpening(design: Design): number {
  const { allowance } = design.sole;
  return Math.max(0, Math.min(allowance, -removalForOpening(mouthSides(design), 0)));
}

/**
 * What the mouth shows at the sole as it is decides how far down the sole comes: in its middle, or midway between what it
 * shows beside the cheeks. One that was done and never read is taken
 * to be as wanted, at the planned sole.
 */
function applyMouth(before: BuildSnapshot, measured: Measured): BuildSnapshot {
  const mouthUneven = readUnevenness(measured);
  const snapshot = mouthUneven === undefined ? before : { ...before, mouthUneven };
  const seen = mouthSeenInMiddle(measured);
  if (seen === undefined) return { ...snapshot, design: setAllowance(snapshot.design, 0) };
  const { design } = snapshot;
  const wanted = design.mouth.opening;
  const left = design.sole.allowance;
  const opening = wanted + seen - mouthOpeningAt(mouthSides(design), -left);
  const atPlannedSole = replaceSection(design, "mouth", { opening });
  const wantedToTake = left + removalForOpening(mouthSides(atPlannedSole), wanted);
  const toTake = Math.max(0, Math.min(wantedToTake, design.body.height * MAX_PLANED_SHARE));
  return seatWedge(lowerSole({ ...snapshot, design: atPlannedSole }, toTake - left));
}

/**
 * The same wood with its finished sole `deeper` mm higher up in it: every height over the sole shrinks, the edge is set
 * down the bed to the new sole, and the mouth opens by what bed and ramp give. How far the wedge then stands from the edge
 * follows when it is seated.
 */
function lowerSole({ design, pinHole, ...rest }: BuildSnapshot, deeper: number): BuildSnapshot {
  const frame = frameOf(design);
  const bedCot = cotDeg(frame.bedAngle);
  const alongBed = deeper / sinDeg(frame.bedAngle);
  const less = <T>(height: T): T => (typeof height === "number" ? ((height - deeper) as T) : height);
  const { body, pin, sole, recess } = design;
  return {
    ...rest,
    ...(pinHole ? { pinHole: { x: pinHole.x, y: pinHole.y - deeper } } : {}),
    design: {
      ...design,
      body: {
        ...body,
        height: less(body.height),
        toeHeight: less(body.toeHeight),
        heelHeight: less(body.heelHeight),
      },
      pin: { ...pin, height: less(pin.height) },
      recess: { ...recess, travel: recess.travel + alongBed },
      ramp: { ...design.ramp, wearHeight: design.ramp.wearHeight - deeper },
      mouth: {
        fromToe: frame.mouthX + deeper * bedCot,
        opening: mouthOpeningAt(mouthSides(design), deeper),
      },
      sole: { allowance: sole.allowance + deeper },
    },
  };
}

/** The sole flat, with `left` still under the planned one; what is left of the feather chamfer goes down with it. */
function setAllowance(design: Design, left: number): Design {
  const gone = design.sole.allowance - left;
  const chamfer = Math.max(0, design.bed.featherChamfer - gone);
  return replaceSection(replaceSection(design, "sole", { allowance: left }), "bed", { featherChamfer: chamfer });
}
