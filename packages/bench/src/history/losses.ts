// Measured values that came out otherwise, and what each costs in the finished plane.
import { figureRow } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import { MEASURED_KEYS, type MeasuredKey, measuringStep, type Step } from "../steps.ts";
import { asBuiltPlane } from "./as-built.ts";
import { type FigureChange, figuresByKey, findChanges, isSignificant } from "./changes.ts";
import { expectedValue, lastDoneStep, MEASURED } from "./expected.ts";

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

/** Read on the way to the mouth wanted: more wood left, or a mouth still narrow, has cost nothing. */
const INTERMEDIATE_READINGS: ReadonlySet<MeasuredKey> = new Set(["allowanceLeft", "mouthSeen"]);

/** What one measured value costs: the plane as it stands beside the plane had that value come out as expected. */
function findLoss(design: Design, key: MeasuredKey): Loss[] {
  if (INTERMEDIATE_READINGS.has(key)) return [];
  const got = design.measured[key];
  const asked = got === undefined ? undefined : expectedValue(design, key);
  if (got === undefined || asked === undefined || !isSignificant(key, MEASURED[key].unit, got - asked)) return [];
  const { [key]: _, ...others } = design.measured;
  const without = { ...design, measured: { ...others, done: lastDoneStep(design) } as Design["measured"] };
  const paid = findChanges(figuresByKey(asBuiltPlane(without)), asBuiltPlane(design), affectsUse, hasCost);
  return [{ key, step: measuringStep(key), unit: MEASURED[key].unit, asked, got, costs: paid }];
}
