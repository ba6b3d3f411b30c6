// The plane as it comes out with given errors: exact geometry in closed form, by the same functions as the elevation's.

import { cosDeg, cotDeg, point, sinDeg, tanDeg } from "@lamplane/geometry";
import {
  bedXAt,
  chamferGain,
  curvedRamp,
  distanceToRamp,
  type Frame,
  ironToPlane,
  mouthGrowth,
  planeToIron,
  type Ramp,
} from "@lamplane/parameters/elevation";
import type { TolerancePlan } from "../plan/plan.ts";
import type { Errors } from "../plan/sources-of-error.ts";

/** What the errors are judged by, mm. */
export interface Results {
  /** Cutting edge to ramp at the trued sole, the iron set to it, once the planned allowance is off; below 0 still closed. */
  mouthOpening: number;
  /** Between the blocks' tips on the blank's sole at glue-up, before the feather chamfer; below 0 they collide without it. */
  glueGap: number;
  /** Cross pin to ramp, square to it. */
  pinToRamp: number;
  /** Thickness of wedge that fills what is left between cap iron and pin. */
  wedgeAtPin: number;
  /** Where the wedge's tip then comes to rest, up the iron from the edge. */
  wedgeTipFromEdge: number;
}
export type ResultKey = keyof Results;

export interface MadePlane extends Results {
  /** In the plan's frame. */
  readonly ramp: Ramp;
  /** How far the mouth opens for each further mm off the sole. */
  readonly mouthGrowth: number;
  /** Room between the blocks at glue-up, feather chamfer counted; below 0 they collide. */
  readonly roomAtTips: number;
}

/**
 * The plane with these errors. All lie in the frame of the plan: the blank's sole is y = −allowance whatever happens, and
 * the sole as trued is y = `soleTaken`.
 * - The bed block stands by its tip; the iron lies on the bed.
 * - By contact, the front block stands where its ramp meets the edge, clamped `edgeHeight` over the blank's sole. What
 *   moves the bed moves both, so that the mouth does not know of it. By marks, each block stands by its own mark.
 * - The pin's hole is bored in the cheeks, apart from the blocks. The wedge is driven until it fills what is left.
 * @see plane geometry: elevation, and stack, wedge and cross pin
 */
export function applyErrors(plan: TolerancePlan, errors: Readonly<Errors>): MadePlane {
  const { allowance } = plan;
  const frame = madeFrame(plan, errors);
  const ramp = madeRamp(plan, errors, frame);
  const growth = mouthGrowth({ frame, ramp });
  const tipX = ramp.foot.x + allowance * cotDeg(ramp.angle);
  const glueGap = plan.bedTipX + errors.bedPlace - tipX;
  const pin = point(plan.pinX + errors.pinHoleAlong, plan.pinY + errors.pinHoleUp);
  const depth = plan.pinDepth + errors.pinDepth;
  const wedgeAngle = plan.wedgeAngle + errors.wedgeTaper;
  const { s, v } = planeToIron(frame, pin);
  const wedgeAtPin = v - plan.capIron - errors.capIronThickness - depth / 2 / cosDeg(wedgeAngle);
  const edgeS = errors.soleTaken / sinDeg(frame.bedAngle);
  const wedgeTip = plan.wedgeTip + errors.wedgeThickness;
  return {
    mouthOpening: frame.mouthX - ramp.foot.x + errors.soleTaken * growth,
    glueGap,
    pinToRamp: distanceToRamp(ramp, pin) - errors.rampForm - depth / 2,
    wedgeAtPin,
    wedgeTipFromEdge: s - edgeS - (wedgeAtPin - wedgeTip) / tanDeg(wedgeAngle),
    ramp,
    mouthGrowth: growth,
    roomAtTips: glueGap + chamferGain({ design: plan.design, frame }),
  };
}

/** The frame whose edge stands where the iron's face meets the sole as planned, y = 0. */
export function madeFrame(plan: TolerancePlan, { bedPlace, bedAngle, ironThickness }: Readonly<Errors>): Frame {
  const atToe: Frame = { mouthX: 0, bedAngle: plan.bedAngle + bedAngle };
  const bedTipX = bedXAt(atToe, plan.thickness + ironThickness, -plan.allowance);
  return { mouthX: plan.bedTipX + bedPlace - bedTipX, bedAngle: atToe.bedAngle };
}

function madeRamp(plan: TolerancePlan, errors: Readonly<Errors>, frame: Frame): Ramp {
  const angle = plan.rampAngle + errors.rampAngle;
  const tipX =
    errors.creep +
    (plan.placing === "marks" ? plan.rampTipX + errors.frontPlace : tipAtContact(plan, errors, frame, angle));
  const foot = point(tipX - plan.allowance * cotDeg(angle), 0);
  return plan.curve ? curvedRamp(angle, foot, plan.curve) : { shape: "straight", angle, foot };
}

/** x of the front block's tip when its ramp meets the edge at its height over the blank's sole. */
function tipAtContact(plan: TolerancePlan, errors: Readonly<Errors>, frame: Frame, angle: number): number {
  const height = plan.edgeHeight + errors.edgeHeight;
  const edge = ironToPlane(frame, (height - plan.allowance) / sinDeg(frame.bedAngle), 0);
  return edge.x + height * cotDeg(angle);
}
