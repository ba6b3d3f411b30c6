// The bench steps of a stage, with their numbers and what was measured: as the plane stands when each step begins.
import {
  doubtText,
  expectationText,
  expectedValue,
  findDoubt,
  formatFigure,
  measuredUnit,
  planeBeforeStep,
  STEPS,
  type Step,
  stepIndex,
  stepsDone,
  stepWords,
} from "@lamplane/bench";
import { FIGURES, figureValue } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import { formatValue } from "@lamplane/parameters/units";
import { JOB_OF, type StageName } from "../protocol/build-steps.ts";
import type { BenchStep } from "../protocol/sheet-data.ts";

/** @param design as planned, with what was measured */
export function benchSteps(design: Design, stage: StageName): BenchStep[] {
  const done = stepsDone(design);
  const format = (value: number, unit: string) => formatValue(value, unit, design);
  return stepsOf(stage).map((step): BenchStep => {
    const { figures, measures } = STEPS[step];
    const plane = planeBeforeStep(design, step);
    return {
      ...stepWords(design, step),
      isDone: stepIndex(step) < done,
      figures: figures.flatMap((key) => {
        const value = figureValue(plane, key);
        const { name, unit } = FIGURES[key];
        return value === undefined ? [] : [{ key, name, text: formatFigure(design, key, value, unit) }];
      }),
      measures: measures.flatMap((key) => {
        const expected = expectedValue(design, key);
        if (expected === undefined) return [];
        const doubt = findDoubt(design, key);
        const unit = measuredUnit(key);
        const wanted = expectationText(design, key) ?? formatValue(expected, unit, design);
        return [
          {
            path: `measured.${key}`,
            expected,
            value: design.measured[key],
            unit,
            wanted,
            ...(doubt ? { doubt: doubtText(doubt, format) } : {}),
          },
        ];
      }),
    };
  });
}

/** Steps of the bench among those of the job: what comes before the first and after the last has no measures. */
const stepsOf = (stage: StageName): Step[] =>
  JOB_OF[stage].flatMap((job) => (Object.hasOwn(STEPS, job) ? [job as Step] : []));
