// What each measured value is expected to be, read off the plane as it stands when its step begins.
import { valueAt } from "@lamplane/parameters/design";
import { type Elevation, figureValue, mouthOpeningAt } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import { type ExpectationRule, MEASURED_ROWS, type MeasuredKey } from "../measured-values.ts";
import { planeBeforeStep } from "./as-built.ts";
import { allowanceAtMouthOpening } from "./step-effects.ts";

/** The sole is trued until the mouth begins to open, so that wood is left to read it by; a shut mouth shows nothing. */
const RULES: Readonly<Record<ExpectationRule, (plane: Elevation) => number>> = {
  soleWhereMouthOpens: ({ design }) => allowanceAtMouthOpening(design),
  mouthAtSole: (plane) => Math.max(0, mouthOpeningAt(plane, -plane.design.sole.allowance)),
};

/** What a value is expected to be when it is measured, from all that was measured before; mm or degrees. */
export function expectedValue(design: Design, key: MeasuredKey): number | undefined {
  const { at, figure, rule, parameter } = MEASURED_ROWS[key];
  const plane = planeBeforeStep(design, at);
  if (rule) return RULES[rule](plane);
  return figure ? figureValue(plane, figure) : Number(valueAt(plane.design, parameter));
}
