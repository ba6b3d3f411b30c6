// The build folded once: what each finished step found and what it left. Every question about a build reads this.
import { type Design, STEP_NAMES } from "@lamplane/parameters/table";
import { type Step, stepIndex, stepsDone } from "../steps.ts";
import { type BuildSnapshot, mouthGrowthOf, STEP_EFFECTS } from "./step-effects.ts";

/** A step that is done. What one step leaves is what the next one finds. */
export interface StepRecord {
  readonly step: Step;
  readonly before: BuildSnapshot;
  readonly after: BuildSnapshot;
}

const known = new WeakMap<Design, readonly StepRecord[]>();

/** Every step that is done, in the order of the work. */
export function history(design: Design): readonly StepRecord[] {
  const records = known.get(design) ?? foldSteps(snapshotOfPlan(design), design.measured, 0, stepsDone(design));
  known.set(design, records);
  return records;
}

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
    const changed = STEP_EFFECTS[step](before, measured);
    const after = { ...changed, design: { ...changed.design, measured: snapshotMeasurements(changed, step) } };
    const record = { step, before, after };
    before = after;
    return record;
  });
}

const NOTHING_MEASURED: Design["measured"] = { done: "nothing" } as Design["measured"];

const snapshotOfPlan = (design: Design): BuildSnapshot => ({ design: { ...design, measured: { ...NOTHING_MEASURED } } });

/** What the result must remember of the bench, so that it can be taken further: where the hole is, what is left of the sole, and how far the mouth is open. */
function snapshotMeasurements({ design, pinHole }: BuildSnapshot, done: Step): Design["measured"] {
  const { allowance } = design.sole;
  const opens = design.mouth.opening - allowance * mouthGrowthOf(design);
  return {
    ...NOTHING_MEASURED,
    done,
    ...(pinHole ? { pinHoleFromToe: pinHole.x, pinHoleHeight: pinHole.y + allowance } : {}),
    ...(stepIndex(done) >= stepIndex("sole") ? { allowanceLeft: allowance } : {}),
    ...(stepIndex(done) >= stepIndex("mouth") && allowance > 0 ? { mouthSeen: opens } : {}),
  };
}
