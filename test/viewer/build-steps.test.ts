// The strip shows the whole job, each step of it once and in the bench's order; older addresses still name their states.
import { JOB_STEPS } from "@lamplane/bench";
import { STEP_NAMES, WORK_AFTER, WORK_STAGES } from "@lamplane/parameters/table";
import { expect, test } from "vitest";
import { JOB_OF, STAGES, stageNamed, WORK_OF } from "../../packages/viewer/src/protocol/build-steps.ts";

test("every step of the job stands on the strip, in its order", () => {
  expect(STAGES.flatMap((stage): readonly string[] => JOB_OF[stage])).toEqual([...JOB_STEPS]);
});

test("the wood never goes back to an earlier state", () => {
  const reached = STAGES.map((stage) => WORK_STAGES.indexOf(WORK_OF[stage]));
  expect(reached).toEqual([...reached].sort((a, b) => a - b));
  expect(new Set(reached).size).toBe(WORK_STAGES.length);
});

test("the parts are never drawn with more wood after a later step", () => {
  const drawn = STEP_NAMES.map((step) => ["blank", "glued", "trued"].indexOf(WORK_AFTER[step].drawn));
  expect(drawn).toEqual([...drawn].sort((a, b) => a - b));
  expect(new Set(drawn).size).toBe(3);
});

test("a state of the work in an older address leads to a step that shows it", () => {
  for (const state of WORK_STAGES) expect(WORK_OF[stageNamed(state)!], state).toBe(state);
  expect(stageNamed("nowhere")).toBe(undefined);
  expect(stageNamed("__proto__")).toBe(undefined);
});
