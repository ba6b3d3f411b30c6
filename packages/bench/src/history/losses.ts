// Measured values that came out otherwise, and what each costs in the finished plane.
import { figureRow } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import { isInterim, MEASURED_KEYS, type MeasuredKey, measuredUnit } from "../measured-values.ts";
import { measuringStep, type Step, stepIndex, stepsDone } from "../steps.ts";
import { asBuiltPlane } from "./as-built.ts";
import { type FigureChange, figuresByKey, findChanges, isSignificant } from "./changes.ts";
import { expectedValue } from "./expected.ts";
import { foldSteps, history } from "./history.ts";
import { planeOf } from "./planes.ts";

/** A measured value off what was asked for, and what it costs in the finished plane. */
export interface Loss {
  readonly key: MeasuredKey;
  /** Step at which it was measured. */
  readonly step: Step;
  readonly unit: "mm" | "°";
  readonly asked: number;
  readonly got: number;
  readonly costs: readonly FigureChange[];
}

/** Every measured value that came out otherwise, in the order of the work. */
export const findLosses = (design: Design): readonly Loss[] => MEASURED_KEYS.flatMap((key) => findLoss(design, key));

/** Whether a maker feels in this figure that something came out otherwise. */
export const affectsUse = (key: string): boolean => figureRow(key)?.feltFrom !== undefined;

const hasCost = (key: string, unit: string, difference: number): boolean =>
  isSignificant(key, unit, difference) && Math.abs(difference) > figureRow(key)!.feltFrom!;

/**
 * What one measured value costs: the plane as it stands beside the plane had that value come out as expected. The work
 * up to its step is the same.
 */
function findLoss(design: Design, key: MeasuredKey): Loss[] {
  if (isInterim(key)) return [];
  const got = design.measured[key];
  const asked = got === undefined ? undefined : expectedValue(design, key);
  if (got === undefined || asked === undefined || !isSignificant(key, measuredUnit(key), got - asked)) return [];
  const step = measuringStep(key);
  const { [key]: _, ...others } = design.measured;
  const { before } = history(design)[stepIndex(step)]!;
  const without = foldSteps(before, others as Design["measured"], stepIndex(step), stepsDone(design));
  const planeWithout = planeOf(without.at(-1)!.after.design);
  const paid = findChanges(figuresByKey(planeWithout), asBuiltPlane(design), affectsUse, hasCost);
  return [{ key, step, unit: measuredUnit(key), asked, got, costs: paid }];
}
