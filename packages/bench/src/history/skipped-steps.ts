// Steps that a change to the measured values would pass over: they count as done from then on, and nothing is known of them.
import { type Design, STEP_NAMES } from "@lamplane/parameters/table";
import { STEPS, type Step, stepsDone } from "../steps.ts";
import { unreadValues } from "./build-state.ts";

/**
 * Steps before the latest that are done after a change and were not before, with something to measure and nothing measured.
 * A step that measures nothing on this plane leaves nothing unknown, and is not among them.
 */
export function skippedSteps(before: Design, after: Design): readonly Step[] {
  const unread = new Set(unreadValues(after).map(({ step }) => step));
  return STEP_NAMES.slice(stepsDone(before), Math.max(0, stepsDone(after) - 1)).filter(
    (step) => unread.has(step) && STEPS[step].measures.every((key) => after.measured[key] === undefined),
  );
}
