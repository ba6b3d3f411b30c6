// The plane as it stands: planned where nothing is cut yet, as it came out where it is. A measured value changes nothing before its step.
import type { Elevation } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import { type Step, stepIndex } from "../steps.ts";
import { history } from "./history.ts";
import { planeOf } from "./planes.ts";

/** The design as it was planned, with nothing measured. */
export const plannedDesign = (design: Design): Design => history(design)[0]?.before.design ?? design;

/** The design as it stands when a step begins: what earlier steps measured and settled, and no more. */
export const designBeforeStep = (design: Design, step: Step): Design =>
  history(design)[stepIndex(step)]?.before.design ?? asBuiltDesign(design);

/** The design as it stands after every step that is done. Asking it again of the result changes nothing. */
export const asBuiltDesign = (design: Design): Design => history(design).at(-1)?.after.design ?? design;

/** Elevation of the plane as it was planned. */
export const plannedPlane = (design: Design): Elevation => planeOf(plannedDesign(design));

/** Elevation of the plane as it stands. */
export const asBuiltPlane = (design: Design): Elevation => planeOf(asBuiltDesign(design));

/** Elevation of the plane as it stands when a step begins. */
export const planeBeforeStep = (design: Design, step: Step): Elevation => planeOf(designBeforeStep(design, step));
