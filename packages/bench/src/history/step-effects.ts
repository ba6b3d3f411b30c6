// What each finished step fixes: measured values take the plan's place, and what was `auto` stays as it was cut.

import type { Point } from "@lamplane/geometry";
import { cosDeg, cotDeg, sinDeg, tanDeg } from "@lamplane/geometry";
import { frameOf, mouthGrowth, pinAxisOffset, planeToIron, rampAngle, recessOf } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import type { Step } from "../steps.ts";
import { planeOf } from "./planes.ts";

/** The plane as far as it is built; `hole` once the pin's is bored, `applyWedge` once the wedge is cut. */
export interface BuildSnapshot {
  readonly design: Design;
  readonly pinHole?: Point;
  readonly isWedgeMade?: true;
}
type Measured = Design["measured"];
type StepEffect = (snapshot: BuildSnapshot, measured: Measured) => BuildSnapshot;

/** How far the mouth of a design opens for each mm taken off its sole. */
export const mouthGrowthOf = (design: Design): number =>
  mouthGrowth({ frame: frameOf(design), ramp: { angle: rampAngle(design) } });

/** A design with some keys of some sections replaced. */
function replaceSection<S extends "iron" | "body" | "ramp" | "bed" | "mouth" | "sole" | "recess" | "wedge" | "pin">(
  design: Design,
  section: S,
  values: Partial<Design[S]>,
): Design {
  return { ...design, [section]: { ...design[section], ...values } };
}

/** What each step makes of what stands. Until the hole is bored that is a design and nothing else. */
export const STEP_EFFECTS: Readonly<Record<Step, StepEffect>> = {
  iron: ({ design }, { ironThickness, ironWidth }) => ({
    design: replaceSection(design, "iron", {
      thickness: ironThickness ?? design.iron.thickness,
      width: ironWidth ?? design.iron.width,
    }),
  }),
  core: ({ design }, { coreWidth, cheekThickness }) => ({
    design: replaceSection(design, "body", {
      sideClearance: coreWidth === undefined ? design.body.sideClearance : coreWidth - design.iron.width,
      cheek: cheekThickness ?? design.body.cheek,
    }),
  }),
  cuts: applyCuts,
  bed: ({ design }, { bedAngle }) => ({
    design: replaceSection(design, "bed", { angle: bedAngle ?? design.bed.angle }),
  }),
  recess: applyRecess,
  "pin-hole": applyPinHole,
  wedge: applyWedge,
  "dry-fit": (snapshot) => snapshot,
  "glue-up": applyGlueUp,
  sole: ({ design, ...rest }, { allowanceLeft }) => ({
    ...rest,
    design: setAllowance(design, allowanceLeft ?? allowanceAtMouthOpening(design)),
  }),
  mouth: applyMouth,
  shaping: (snapshot) => snapshot,
};

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
  return { design: replaceSection(design, "recess", made) };
}

function applyPinHole({ design }: BuildSnapshot, { pinHoleFromToe, pinHoleHeight }: Measured): BuildSnapshot {
  const { centre } = planeOf(design).pin;
  const hole = {
    x: pinHoleFromToe ?? centre.x,
    y: pinHoleHeight === undefined ? centre.y : pinHoleHeight - design.sole.allowance,
  };
  return seatWedge({ design, pinHole: hole });
}

function applyWedge(snapshot: BuildSnapshot, { wedgeAngle, wedgeTip, wedgeLength }: Measured): BuildSnapshot {
  const { design } = snapshot;
  const cut = replaceSection(design, "wedge", {
    angle: wedgeAngle ?? design.wedge.angle,
    tip: wedgeTip ?? design.wedge.tip,
    length: wedgeLength ?? planeOf(design).wedgeLength,
  });
  return seatWedge({ ...snapshot, design: cut, isWedgeMade: true });
}

/**
 * Iron, wedge and pin brought together again round a hole that stays where it was bored: a wedge still to be made is
 * made thicker or thinner, a wedge that is made goes in further or less far.
 * @see plane geometry: v(s) = c₁ + w(s) + e / cos ω
 */
export function seatWedge(snapshot: BuildSnapshot): BuildSnapshot {
  const { design, pinHole } = snapshot;
  if (!pinHole) return snapshot;
  const { s, v } = planeToIron(frameOf(design), pinHole);
  const { wedge, capIron } = design;
  const thickness = v - capIron.thickness - pinAxisOffset(design) / cosDeg(wedge.angle);
  const slope = tanDeg(wedge.angle);
  const values = snapshot.isWedgeMade
    ? { tipFromEdge: s - (thickness - wedge.tip) / slope }
    : { tip: thickness - (s - wedge.tipFromEdge) * slope };
  return { ...snapshot, design: replaceSection(replaceSection(design, "pin", { height: pinHole.y }), "wedge", values) };
}

/** Where the blocks came to stand; the sole still to be trued takes up what the front block is off. */
function applyGlueUp(snapshot: BuildSnapshot, { bedTipX, rampTipX }: Measured): BuildSnapshot {
  const { design } = snapshot;
  const frame = frameOf(design);
  const { allowance } = design.sole;
  const [bedCot, rampCot] = [cotDeg(frame.bedAngle), cotDeg(rampAngle(design))];
  const mouthX =
    bedTipX === undefined
      ? frame.mouthX
      : bedTipX - design.iron.thickness / sinDeg(frame.bedAngle) + allowance * bedCot;
  const wanted = design.mouth.opening;
  const opening = rampTipX === undefined ? wanted : mouthX + allowance * rampCot - rampTipX;
  const wantedDeeper = (wanted - opening) / (bedCot + rampCot);
  const deeper = Math.max(-allowance, Math.min(wantedDeeper, design.body.height * MAX_PLANED_SHARE));
  const glued = replaceSection(design, "mouth", { fromToe: mouthX, opening });
  return seatWedge(lowerSole({ ...snapshot, design: glued }, deeper));
}

/** Share of the height that a sole may be planed off to open a mouth; beyond it the mouth stays closed, and a check says so. */
const MAX_PLANED_SHARE = 1 / 2;

/**
 * Wood left under the planned sole where the mouth begins to open, mm: as far as a sole is trued before the mouth is read;
 * none where a block was glued so far off that the mouth stays closed at the planned sole.
 * @see plane geometry: the mouth opens by mouthGrowth for each mm
 */
export function allowanceAtMouthOpening(design: Design): number {
  const { allowance } = design.sole;
  return Math.max(0, Math.min(allowance, design.mouth.opening / mouthGrowthOf(design)));
}

/**
 * What the mouth shows at the sole as it is decides how far down the sole comes. One that was done and never read is taken
 * to be as wanted, at the planned sole.
 */
function applyMouth(snapshot: BuildSnapshot, { mouthSeen }: Measured): BuildSnapshot {
  if (mouthSeen === undefined) return { ...snapshot, design: setAllowance(snapshot.design, 0) };
  const { design } = snapshot;
  const growth = mouthGrowthOf(design);
  const left = design.sole.allowance;
  const atPlannedSole = replaceSection(design, "mouth", { opening: mouthSeen + left * growth });
  const toTake = Math.max(
    0,
    Math.min((design.mouth.opening - mouthSeen) / growth, design.body.height * MAX_PLANED_SHARE),
  );
  return seatWedge(lowerSole({ ...snapshot, design: atPlannedSole }, toTake - left));
}

/**
 * The same wood with its finished sole `deeper` mm higher up in it: every height over the sole shrinks, the edge is set
 * down the bed to the new sole, and the mouth opens by what the two slopes give. How far the wedge then stands from the edge
 * follows when it is seated.
 */
function lowerSole({ design, pinHole, ...rest }: BuildSnapshot, deeper: number): BuildSnapshot {
  const frame = frameOf(design);
  const [bedCot, rampCot] = [cotDeg(frame.bedAngle), cotDeg(rampAngle(design))];
  const alongBed = deeper / sinDeg(frame.bedAngle);
  const less = <T>(height: T): T => (typeof height === "number" ? ((height - deeper) as T) : height);
  const { body, pin, mouth, sole, recess } = design;
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
        opening: mouth.opening + deeper * (bedCot + rampCot),
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
