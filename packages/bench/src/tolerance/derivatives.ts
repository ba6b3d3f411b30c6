// How far each result moves for each mm or degree of each error; the sign says which way.

import { pointsEqual } from "@lamplane/geometry";
import { type Dual, dualArithmetic, dualVariable } from "@lamplane/geometry/numerics";
import type { TolerancePlan } from "../plan/plan.ts";
import { type ErrorKey, NO_ERRORS } from "../plan/sources-of-error.ts";
import { type MadePlaneOf, madePlaneOver, type ResultKey } from "./made-plane.ts";

/** Derivatives by error, mm for each mm or degree; an error that is absent does not move the result. */
export type Gradient = Readonly<Partial<Record<ErrorKey, number>>>;

/** Undefined where a result has no derivative: the pin's axis on the centre of the ramp's curve. */
export type Gradients = Readonly<Record<ResultKey, Gradient | undefined>>;

const KEYS = Object.keys(NO_ERRORS) as ErrorKey[];
const makePlane = madePlaneOver(dualArithmetic(KEYS.length));
const NO_DUAL_ERRORS = Object.fromEntries(
  KEYS.map((key, index) => [key, dualVariable(NO_ERRORS[key], index, KEYS.length)]),
) as Record<ErrorKey, Dual>;

/** Below this, mm for each mm or degree, a derivative is rounding alone. */
const ROUNDING = 1e-12;

/** All derivatives at the plan: those of the plane as made, where there are no errors. */
export function gradients(plan: TolerancePlan): Gradients {
  const made = makePlane(plan, NO_DUAL_ERRORS);
  return {
    mouthOpening: gradientOf(made.mouthOpening),
    mouthUneven: gradientOf(made.mouthUneven),
    glueGap: gradientOf(made.glueGap),
    pinToRamp: isOnCentre(plan, made) ? undefined : gradientOf(made.pinToRamp),
    wedgeAtPin: gradientOf(made.wedgeAtPin),
    wedgeTipFromEdge: gradientOf(made.wedgeTipFromEdge),
  };
}

const gradientOf = ({ partials }: Dual): Gradient =>
  Object.fromEntries(KEYS.flatMap((key, i) => (Math.abs(partials[i]!) > ROUNDING ? [[key, partials[i]!]] : [])));

function isOnCentre({ pinX, pinY }: TolerancePlan, { ramp }: MadePlaneOf<Dual>): boolean {
  const centre = ramp.curve?.centre;
  return centre !== undefined && pointsEqual({ x: pinX, y: pinY }, { x: centre.x.value, y: centre.y.value });
}
