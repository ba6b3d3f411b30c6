// Iron and blocks as they come out with given errors: the frame, and the ramp where the front block was placed.

import { type Arithmetic, cotOver, tanOver } from "@lamplane/geometry/numerics";
import { type FrameOf, frameOver, type RampOf, rampOver } from "@lamplane/parameters/elevation";
import type { TolerancePlan } from "../plan/plan.ts";
import type { ErrorKey } from "../plan/sources-of-error.ts";

/** What is off, over any kind of number; mm, degrees. */
export type ErrorsOf<N> = Readonly<Record<ErrorKey, N>>;

/** Frame and ramp of the plane with given errors, over any kind of number. */
export function madeBlocksOver<N>(on: Arithmetic<N>) {
  const { constant, add, subtract, multiply, divide, sinDeg } = on;
  const { bedToPlane, bedXAt } = frameOver(on);
  const { curvedRamp, besideWear } = rampOver(on);

  /** The frame whose edge stands where the iron's face meets the sole as planned, y = 0. */
  function madeFrame(plan: TolerancePlan, errors: ErrorsOf<N>): FrameOf<N> {
    const bedAngle = add(constant(plan.bedAngle), errors.bedAngle);
    const lies = { bedAngle, ...madeIron(plan, errors, bedAngle) };
    const bedTipX = bedXAt({ mouthX: constant(0), ...lies }, constant(-plan.allowance));
    return { mouthX: subtract(add(constant(plan.bedTipX), errors.bedPlace), bedTipX), ...lies };
  }

  /** Thickness at the edge and the face's angle; a tapered iron misread at one of its two places has another taper. */
  function madeIron(plan: TolerancePlan, { ironThickness, ironTopThickness }: ErrorsOf<N>, bedAngle: N) {
    const atPlace = add(constant(plan.thickness), ironThickness);
    if (!plan.gauge) return { thickness: atPlace, faceAngle: subtract(bedAngle, constant(plan.taper)) };
    const { low, high } = plan.gauge;
    const slope = divide(subtract(ironThickness, ironTopThickness), constant(high - low));
    const taper = on.atanDeg(add(tanOver(on, constant(plan.taper)), slope));
    return { thickness: add(atPlace, multiply(constant(low), slope)), faceAngle: subtract(bedAngle, taper) };
  }

  function madeRamp(plan: TolerancePlan, errors: ErrorsOf<N>, frame: FrameOf<N>): RampOf<N> {
    const angle = add(constant(plan.rampAngle), errors.rampAngle);
    const placed =
      plan.placing === "marks"
        ? add(constant(plan.rampTipX), errors.frontPlace)
        : tipAtContact(plan, errors, frame, angle);
    const tipX = add(errors.creep, placed);
    const foot = { x: subtract(tipX, multiply(constant(plan.allowance), cotOver(on, angle))), y: constant(0) };
    if (!plan.curve) return { shape: "straight", angle, foot };
    const { wearHeight, exitAngle, radius } = plan.curve;
    const shape = { wearHeight: constant(wearHeight), exitAngle: constant(exitAngle), radius: constant(radius) };
    const ramp = curvedRamp(angle, foot, shape);
    const placedAt = plan.placing === "marks" ? constant(-plan.allowance) : contactHeight(plan, errors);
    return curvedRamp(angle, { x: subtract(foot.x, besideWear(ramp, placedAt).x), y: foot.y }, shape);
  }

  /** Height over the sole as planned at which the ramp meets the edge at glue-up. */
  const contactHeight = (plan: TolerancePlan, errors: ErrorsOf<N>): N =>
    subtract(add(constant(plan.edgeHeight), errors.edgeHeight), constant(plan.allowance));

  /** x of the front block's tip when its ramp meets the edge at its height over the blank's sole. */
  function tipAtContact(plan: TolerancePlan, errors: ErrorsOf<N>, frame: FrameOf<N>, angle: N): N {
    const height = add(constant(plan.edgeHeight), errors.edgeHeight);
    const up = divide(subtract(height, constant(plan.allowance)), sinDeg(frame.bedAngle));
    return add(bedToPlane(frame, up, constant(0)).x, multiply(height, cotOver(on, angle)));
  }

  return { madeFrame, madeRamp };
}
