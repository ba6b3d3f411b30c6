// The bench steps of a stage, with their numbers and what was measured: as the plane stands when each step begins.
import {
  doubtText,
  expectedValue,
  findDoubt,
  formatMeasuredValue,
  MEASURED,
  planeBeforeStep,
  STEPS,
  type Step,
  stepIndex,
  stepsDone,
  wantedText,
} from "@lamplane/bench";
import { type Elevation, figureValue } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import { formatValue } from "@lamplane/parameters/units";
import type { BenchStep, StageName } from "../protocol/sheet-data.ts";

/** Which steps bring the work to each stage that the sheet shows. */
const STEPS_TO: Readonly<Record<StageName, readonly Step[]>> = {
  billet: ["iron", "core"],
  core: ["cuts"],
  bed: ["bed", "recess", "pin-hole"],
  glued: ["wedge", "dry-fit", "glue-up"],
  trued: ["sole", "mouth"],
  shaped: ["shaping"],
};

/**
 * @param design as planned, with what was measured
 * @param standing the plane as it stands now, used where nothing is done yet
 */
export function benchSteps(design: Design, builtPlane: Elevation, stage: StageName): BenchStep[] {
  const done = stepsDone(design);
  const format = (value: number, unit: string) => formatValue(value, unit, design.units, design.shop.smallestFraction);
  return STEPS_TO[stage].map((step): BenchStep => {
    const { title, task, figures, measures } = STEPS[step];
    const plane = done === 0 ? builtPlane : planeBeforeStep(design, step);
    return {
      title,
      task,
      isDone: stepIndex(step) < done,
      figures: figures.flatMap((key) => {
        const value = figureValue(plane, key);
        return value === undefined ? [] : [{ key, value }];
      }),
      measures: measures.flatMap((key) => {
        const expected = done === 0 ? MEASURED[key].expected(plane) : expectedValue(design, key);
        if (expected === undefined) return [];
        const doubt = findDoubt(design, key);
        const { unit } = MEASURED[key];
        const wanted = wantedText(design, key) ?? formatMeasuredValue(design, expected, unit);
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
