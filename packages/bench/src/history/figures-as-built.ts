// Every figure of the plane as it stands; what a step was done by stays what it was when that step began.
import {
  type Elevation,
  evaluateFigure,
  type Figure,
  type FigureKey,
  figureRow,
  figureValue,
} from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import { allFigures, anyFigureRow } from "../figures.ts";
import { stepIndex, stepsDone } from "../steps.ts";
import { asBuiltPlane, planeBeforeStep } from "./as-built.ts";

/**
 * Figures as the plane stands, in the order of the table.
 * @param plane asBuiltPlane(design), where it is known already
 */
export const figuresAsBuilt = (design: Design, plane = asBuiltPlane(design)): Figure[] =>
  allFigures(plane).map((figure) => {
    const value = valueWhenSpent(design, figure.key);
    return value === undefined ? figure : { ...figure, value };
  });

/** One of them; undefined where the plane has no such figure. @param plane asBuiltPlane(design) */
export function figureAsBuilt(design: Design, plane: Elevation, key: string): number | undefined {
  const row = anyFigureRow(key);
  const value = row && evaluateFigure(row, plane);
  return value === undefined ? undefined : (valueWhenSpent(design, key) ?? value);
}

/** What a figure was when the step began that it is spent at; undefined until that step is done. */
function valueWhenSpent(design: Design, key: string): number | undefined {
  const step = figureRow(key)?.spentAt;
  if (step === undefined || stepIndex(step) >= stepsDone(design)) return undefined;
  return figureValue(planeBeforeStep(design, step), key as FigureKey);
}
