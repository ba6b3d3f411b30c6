// The plane as it comes out with given errors: exact geometry in closed form, by the same functions as the elevation's.

import { type Arithmetic, cotOver, REAL, tanOver } from "@lamplane/geometry/numerics";
import { type FrameOf, frameOver, type RampOf, rampOver } from "@lamplane/parameters/elevation";
import type { TolerancePlan } from "../plan/plan.ts";
import { type ErrorsOf, madeBlocksOver } from "./made-blocks.ts";

/** What the errors are judged by, mm. */
export interface ResultsOf<N> {
  /** Cutting edge to ramp at the trued sole, the iron set to it, once the planned allowance is off; below 0 still closed. */
  mouthOpening: N;
  /** Mouth at the left cheek less that at the right, the edge even with the sole. */
  mouthUneven: N;
  /** Between the blocks' tips on the blank's sole at glue-up, before the feather chamfer; below 0 they collide without it. */
  glueGap: N;
  /** Cross pin to ramp, square to it. */
  pinToRamp: N;
  /** Thickness of wedge that fills what is left between cap iron and pin. */
  wedgeAtPin: N;
  /** Where the wedge's tip then comes to rest, up the iron from the edge. */
  wedgeTipFromEdge: N;
}
export type Results = ResultsOf<number>;
export type ResultKey = keyof Results;

export interface MadePlaneOf<N> extends ResultsOf<N> {
  /** In the plan's frame. */
  readonly ramp: RampOf<N>;
  /** How far the mouth opens for each further mm off the sole. */
  readonly mouthGrowth: N;
  /** Room between the blocks at glue-up, feather chamfer counted; below 0 they collide. */
  readonly roomAtTips: N;
}

/**
 * The plane with given errors, over any kind of number. All lie in the frame of the plan: the blank's sole is y = −allowance whatever happens, and
 * the sole as trued is y = `soleTaken`.
 * - The bed block stands by its tip; the iron lies on the bed.
 * - By contact, the front block stands where its ramp meets the edge, clamped `edgeHeight` over the blank's sole. What
 *   moves the bed moves both, so that the mouth does not know of it. By marks, each block stands by its own mark.
 * - The pin's hole is bored in the cheeks, apart from the blocks. The wedge is driven until it fills what is left.
 * @see plane geometry: elevation, and stack, wedge and cross pin
 */
export function madePlaneOver<N>(on: Arithmetic<N>) {
  const { constant, add, subtract, multiply } = on;
  const { madeFrame, madeRamp } = madeBlocksOver(on);
  const { distanceToRamp, besideWear } = rampOver(on);
  const madeWedge = madeWedgeOver(on);

  /** Front block's tip on the blank's sole. */
  function rampTipX({ allowance }: TolerancePlan, ramp: RampOf<N>, rampCot: N): N {
    const onWear = add(ramp.foot.x, multiply(constant(allowance), rampCot));
    return add(onWear, besideWear(ramp, constant(-allowance)).x);
  }

  return (plan: TolerancePlan, errors: ErrorsOf<N>): MadePlaneOf<N> => {
    const frame = madeFrame(plan, errors);
    const ramp = madeRamp(plan, errors, frame);
    const bedCot = cotOver(on, frame.bedAngle);
    const rampCot = cotOver(on, ramp.angle);
    const onWear = add(subtract(frame.mouthX, ramp.foot.x), multiply(errors.soleTaken, add(bedCot, rampCot)));
    const atSole = besideWear(ramp, errors.soleTaken);
    const glueGap = subtract(add(constant(plan.bedTipX), errors.bedPlace), rampTipX(plan, ramp, rampCot));
    const { pin, pinRadius, wedgeAtPin, wedgeTipFromEdge } = madeWedge(plan, errors, frame);
    return {
      mouthOpening: subtract(onWear, atSole.x),
      mouthUneven: add(constant(plan.mouthUneven ?? 0), subtract(errors.bedSkew, errors.frontSkew)),
      glueGap,
      pinToRamp: subtract(subtract(distanceToRamp(ramp, pin), errors.rampForm), pinRadius),
      wedgeAtPin,
      wedgeTipFromEdge,
      ramp,
      mouthGrowth: add(bedCot, atSole.cot),
      roomAtTips: add(glueGap, multiply(constant(plan.design.bed.featherChamfer), bedCot)),
    };
  };
}

/** Cross pin and wedge with given errors: the wedge driven until it fills what is left between cap iron and pin. */
function madeWedgeOver<N>(on: Arithmetic<N>) {
  const { constant, add, subtract, divide, sinDeg, cosDeg } = on;
  const { bedToIron, planeToIron } = frameOver(on);

  return (plan: TolerancePlan, errors: ErrorsOf<N>, frame: FrameOf<N>) => {
    const pin = { x: add(constant(plan.pinX), errors.pinHoleAlong), y: add(constant(plan.pinY), errors.pinHoleUp) };
    const pinRadius = divide(add(constant(plan.pinDepth), errors.pinDepth), constant(2));
    const wedgeAngle = add(constant(plan.wedgeAngle), errors.wedgeTaper);
    // The edge is set up the bed to the sole as it is; a tapered iron's face comes nearer to the pin by it.
    const edgeUp = bedToIron(frame, { s: divide(errors.soleTaken, sinDeg(frame.bedAngle)), v: constant(0) });
    const { s, v } = planeToIron(frame, pin);
    const overIrons = subtract(subtract(v, constant(plan.capIron)), errors.capIronThickness);
    const wedgeAtPin = subtract(subtract(overIrons, divide(pinRadius, cosDeg(wedgeAngle))), edgeUp.v);
    const wedgeTip = add(constant(plan.wedgeTip), errors.wedgeThickness);
    const upWedge = divide(subtract(wedgeAtPin, wedgeTip), tanOver(on, wedgeAngle));
    return { pin, pinRadius, wedgeAtPin, wedgeTipFromEdge: subtract(subtract(s, edgeUp.s), upWedge) };
  };
}

/** The plane with these errors, in plain numbers. */
export const applyErrors = madePlaneOver(REAL);
