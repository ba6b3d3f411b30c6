// How far each result moves for each mm or degree of each error, worked out by hand: a second way to the derivatives.

import {
  applyErrors,
  type ErrorKey,
  type Gradient,
  type Gradients,
  NO_ERRORS,
  type TolerancePlan,
} from "@lamplane/bench";
import { arcLength, atan2Deg, cosDeg, type Point, point, pointsEqual, sinDeg, tanDeg } from "@lamplane/geometry";
import { bedXAt, planeToIron, type Ramp } from "@lamplane/parameters/elevation";

/** A derivative by radians times this is one by degrees. */
const PER_DEGREE = arcLength(1, 1);

/**
 * All derivatives at the plan. β bed, ρ ramp or wear, ω wedge angle; t iron, a allowance, h edge height at contact, d pin;
 * m where the iron's face meets the sole, r the ramp's tip, (X, Y) the pin's axis, (s, v) the same on the iron.
 * @see plane geometry: partial derivatives of the formulas in `applyErrors`
 */
export function gradientsByHand(plan: TolerancePlan): Gradients {
  const face = faceGradient(plan);
  const tip = rampTipGradient(plan, face);
  const wedge = wedgeGradient(plan, face);
  return {
    mouthOpening: mouthGradient(plan, face, tip),
    mouthUneven: plan.mouthUneven === undefined ? { bedSkew: 1, frontSkew: -1 } : {},
    glueGap: sumGradients([1, { bedPlace: 1 }], [-1, tip]),
    pinToRamp: pinToRampGradient(plan, tip),
    wedgeAtPin: wedge,
    wedgeTipFromEdge: wedgeTipGradient(plan, face, wedge),
  };
}

/** m = x_B − t / sin β + a·cot β */
function faceGradient({ bedAngle, thickness, allowance }: TolerancePlan): Gradient {
  const sin = sinDeg(bedAngle);
  return {
    bedPlace: 1,
    ironThickness: -1 / sin,
    bedAngle: ((thickness * cosDeg(bedAngle) - allowance) / sin ** 2) * PER_DEGREE,
  };
}

/** By contact r = m + (h − a)·cot β + h·cot ρ, moved by creep; by marks only what the block is off by. */
function rampTipGradient(
  { placing, bedAngle, rampAngle, allowance, edgeHeight, mouthGrowth }: TolerancePlan,
  face: Gradient,
): Gradient {
  if (placing === "marks") return { frontPlace: 1, creep: 1 };
  return sumGradients(
    [1, face],
    [
      1,
      {
        bedAngle: (-(edgeHeight - allowance) / sinDeg(bedAngle) ** 2) * PER_DEGREE,
        rampAngle: (-edgeHeight / sinDeg(rampAngle) ** 2) * PER_DEGREE,
        edgeHeight: mouthGrowth,
        creep: 1,
      },
    ],
  );
}

/** g = m − (r − a·cot ρ) + soleTaken·(cot β + cot ρ) */
function mouthGradient({ rampAngle, allowance, mouthGrowth }: TolerancePlan, face: Gradient, tip: Gradient): Gradient {
  const foot: Gradient = { rampAngle: (allowance / sinDeg(rampAngle) ** 2) * PER_DEGREE };
  return sumGradients([1, face], [-1, tip], [-1, foot], [1, { soleTaken: mouthGrowth }]);
}

/** v = −(X − m)·sin β + Y·cos β, and of it w = v − c₁ − d / (2 cos ω) */
function wedgeGradient(plan: TolerancePlan, face: Gradient): Gradient {
  const { bedAngle, wedgeAngle, pinDepth } = plan;
  const { s } = pinOnIron(plan);
  return sumGradients(
    [sinDeg(bedAngle), face],
    [
      1,
      {
        pinHoleAlong: -sinDeg(bedAngle),
        pinHoleUp: cosDeg(bedAngle),
        bedAngle: -s * PER_DEGREE,
        capIronThickness: -1,
        pinDepth: -1 / (2 * cosDeg(wedgeAngle)),
        wedgeTaper: ((-pinDepth * sinDeg(wedgeAngle)) / (2 * cosDeg(wedgeAngle) ** 2)) * PER_DEGREE,
      },
    ],
  );
}

/** s = (X − m)·cos β + Y·sin β, and of it s₀ = s − soleTaken / sin β − (w − w₀) / tan ω */
function wedgeTipGradient(plan: TolerancePlan, face: Gradient, wedge: Gradient): Gradient {
  const { bedAngle, wedgeAngle, wedgeTip, capIron, pinDepth } = plan;
  const { v } = pinOnIron(plan);
  const rise = v - capIron - pinDepth / (2 * cosDeg(wedgeAngle)) - wedgeTip;
  return sumGradients(
    [-cosDeg(bedAngle), face],
    [-1 / tanDeg(wedgeAngle), wedge],
    [
      1,
      {
        pinHoleAlong: cosDeg(bedAngle),
        pinHoleUp: sinDeg(bedAngle),
        bedAngle: v * PER_DEGREE,
        soleTaken: -1 / sinDeg(bedAngle),
        wedgeThickness: 1 / tanDeg(wedgeAngle),
        wedgeTaper: (rise / sinDeg(wedgeAngle) ** 2) * PER_DEGREE,
      },
    ],
  );
}

/** The pin's axis moves square to the ramp by n; the ramp moves with its tip, and turns about it. */
function pinToRampGradient(plan: TolerancePlan, tip: Gradient): Gradient | undefined {
  const nearest = closestPointOnRamp(plan);
  if (!nearest) return undefined;
  const { normal, turning } = nearest;
  return sumGradients(
    [-normal.x, tip],
    [
      1,
      {
        pinHoleAlong: normal.x,
        pinHoleUp: normal.y,
        rampAngle: turning * PER_DEGREE,
        pinDepth: -1 / 2,
        ...(plan.curve ? { rampForm: -1 } : {}),
      },
    ],
  );
}

/**
 * Direction from the ramp to the pin, square to the ramp, and how far the ramp draws away for each radian that it is
 * steeper, its tip held. The wear turns about the tip. What lies above it moves with the curve's centre:
 * C = tip + ((−a − y)·cot ρ − R·sin ρ, a + y − R·cos ρ), y the wear's height.
 */
function closestPointOnRamp(plan: TolerancePlan): { normal: Point; turning: number } | undefined {
  const { rampAngle, rampTipX, allowance, curve } = plan;
  const pin = point(plan.pinX, plan.pinY);
  const { ramp } = applyErrors(plan, NO_ERRORS);
  if (ramp.curve && pointsEqual(pin, ramp.curve.centre)) return undefined;
  const slope = slopeFacing(ramp, pin);
  const normal = point(sinDeg(slope), cosDeg(slope));
  if (slope === rampAngle || !curve)
    return {
      normal,
      turning: (pin.x - rampTipX) * cosDeg(rampAngle) - (pin.y + allowance) * sinDeg(rampAngle),
    };
  const centreMoves = point(
    (allowance + curve.wearHeight) / sinDeg(rampAngle) ** 2 - curve.radius * cosDeg(rampAngle),
    curve.radius * sinDeg(rampAngle),
  );
  return { normal, turning: -(normal.x * centreMoves.x + normal.y * centreMoves.y) };
}

/** Slope of the ramp where it lies nearest to a point of the throat: the wear's, the exit's, or the arc's square to the point. */
function slopeFacing({ angle, curve }: Ramp, p: Point): number {
  if (!curve) return angle;
  const facing = atan2Deg(p.x - curve.centre.x, p.y - curve.centre.y);
  return Math.max(curve.exitAngle, Math.min(angle, facing));
}

/** The pin's axis on the iron: s up its face from the planned sole, v off it. */
function pinOnIron({ bedAngle, bedTipX, thickness, allowance, pinX, pinY }: TolerancePlan): { s: number; v: number } {
  const mouthX = bedTipX - bedXAt({ mouthX: 0, bedAngle, thickness }, -allowance);
  return planeToIron({ mouthX, bedAngle, faceAngle: bedAngle, thickness }, point(pinX, pinY));
}

/** Sum of gradients, each times its factor. */
function sumGradients(...parts: readonly (readonly [number, Gradient])[]): Gradient {
  const total: Partial<Record<ErrorKey, number>> = {};
  for (const [factor, gradient] of parts)
    for (const [key, value] of Object.entries(gradient) as [ErrorKey, number][])
      total[key] = (total[key] ?? 0) + factor * value;
  return total;
}
