// Every figure of the plane as it stands; what a step was done by stays what it was when that step began.
import { type Figure, type FigureKey, figureRow, figureValue } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import { allFigures } from "../figures.ts";
import { stepIndex, stepsDone } from "../steps.ts";
import { asBuiltPlane, planeBeforeStep } from "./as-built.ts";

/**
 * Figures as the plane stands, in the order of the table.
 * @param plane asBuiltPlane(design), where it is known already
 * @param keys of those wanted; all without it
 */
export function figuresAsBuilt(design: Design, plane = asBuiltPlane(design), keys?: readonly string[]): Figure[] {
  const now = allFigures(plane, keys);
  const done = stepsDone(design);
  return now.map((each) => {
    const step = figureRow(each.key)?.spentAt;
    if (step === undefined || stepIndex(step) >= done) return each;
    return { ...each, value: figureValue(planeBeforeStep(design, step), each.key as FigureKey)! };
  });
}
