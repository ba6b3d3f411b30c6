// Every figure of the plane as it stands; what a step was done by stays what it was when that step began.
import { type Figure, type FigureKey, figureValue } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import { allFigures } from "../figures.ts";
import { type Step, stepIndex, stepsDone } from "../steps.ts";
import { asBuiltPlane, planeBeforeStep } from "./as-built.ts";

/** Figures that are spent once their step is done: marks, settings of a saw, places at glue-up. Every plane has them. */
export const SPENT_AT: Readonly<Partial<Record<FigureKey, Step>>> = {
  billetWidth: "core",
  billetWidthByRule: "core",
  roughCore: "core",
  roughCheek: "core",
  blankLength: "core",
  blankHeight: "core",
  greatestAllowance: "core",
  sawBed: "cuts",
  sawRamp: "cuts",
  rampMark: "cuts",
  bedMark: "cuts",
  pinOverBlankSole: "pin-hole",
  setInToe: "glue-up",
  setInHeel: "glue-up",
  edgeHeightAtContact: "glue-up",
  bedTipX: "glue-up",
  rampTipX: "glue-up",
  glueGap: "glue-up",
};

/** Figures as the plane stands, in the order of the table. @param plane asBuiltPlane(design), where it is known already. */
export function figuresAsBuilt(design: Design, plane = asBuiltPlane(design)): Figure[] {
  const now = allFigures(plane);
  const done = stepsDone(design);
  return now.map((each) => {
    const step = SPENT_AT[each.key as FigureKey];
    if (step === undefined || stepIndex(step) >= done) return each;
    return { ...each, value: figureValue(planeBeforeStep(design, step), each.key as FigureKey)! };
  });
}
