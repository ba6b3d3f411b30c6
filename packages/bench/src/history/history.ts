// The build folded once: what each finished step found and what it left. Every question about a build reads this.
import { memoizeByDesign } from "@lamplane/parameters/elevation";
import { type Design, STEP_NAMES } from "@lamplane/parameters/table";
import { type Step, stepsDone } from "../steps.ts";
import { type BuildSnapshot, NOTHING_MEASURED, snapshotMeasurements } from "./build-snapshot.ts";
import { applyStep } from "./step-effects.ts";

/** A step that is done. What one step leaves is what the next one finds. */
export interface StepRecord {
  readonly step: Step;
  readonly before: BuildSnapshot;
  readonly after: BuildSnapshot;
}

/** Every step that is done, in the order of the work. */
export const history: (design: Design) => readonly StepRecord[] = memoizeByDesign((design) =>
  foldSteps(snapshotOfPlan(design), design.measured, 0, stepsDone(design)),
);

/**
 * The steps from one place in the order of the work up to another, begun with what `start` has made.
 * @param measured what came out at the bench; what earlier steps measured is in `start` already
 */
export function foldSteps(
  start: BuildSnapshot,
  measured: Design["measured"],
  from: number,
  to: number,
): readonly StepRecord[] {
  let before = start;
  return STEP_NAMES.slice(from, to).map((step) => {
    const changed = applyStep(before, step, measured);
    const after = { ...changed, design: { ...changed.design, measured: snapshotMeasurements(changed, step) } };
    const record = { step, before, after };
    before = after;
    return record;
  });
}

const snapshotOfPlan = (design: Design): BuildSnapshot => ({
  design: { ...design, measured: { ...NOTHING_MEASURED } },
});
