// The plane as it stands: planned where nothing is cut yet, as it came out where it is. A measured value changes nothing before its step.
import { type Elevation, elevation, mouthGrowth } from "@lamplane/parameters/elevation";
import { type Design, STEP_NAMES } from "@lamplane/parameters/table";
import { type Step, stepIndex, stepsDone } from "../steps.ts";
import { type BuildSnapshot, STEP_EFFECTS } from "./step-effects.ts";

/** The design as it was planned, with nothing measured. */
export const plannedDesign = (design: Design): Design =>
  stepsDone(design) === 0 ? design : { ...design, measured: { ...NOTHING_MEASURED } };

const NOTHING_MEASURED: Design["measured"] = { done: "nothing" } as Design["measured"];

/** The design as it stands when a step begins: what earlier steps measured and settled, and no more. */
export const designBeforeStep = (design: Design, step: Step): Design =>
  designAfterSteps(design, Math.min(stepsDone(design), stepIndex(step)));

/** The design as it stands after every step that is done. Asking it again of the result changes nothing. */
export const asBuiltDesign = (design: Design): Design => designAfterSteps(design, stepsDone(design));

/** Elevation of the plane as it stands. */
export const asBuiltPlane = (design: Design): Elevation => elevation(asBuiltDesign(design));

/** Elevation of the plane as it stands when a step begins. */
export const planeBeforeStep = (design: Design, step: Step): Elevation => elevation(designBeforeStep(design, step));

function designAfterSteps(design: Design, count: number): Design {
  if (count === 0) return plannedDesign(design);
  const start: BuildSnapshot = { design: plannedDesign(design) };
  const snapshot = STEP_NAMES.slice(0, count).reduce((so, step) => STEP_EFFECTS[step](so, design.measured), start);
  return { ...snapshot.design, measured: snapshotMeasurements(snapshot, STEP_NAMES[count - 1]!) };
}

/** What the result must remember of the bench, so that it can be taken further: where the hole is, what is left of the sole, and how far the mouth is open. */
function snapshotMeasurements({ design, pinHole }: BuildSnapshot, done: Step): Design["measured"] {
  const { allowance } = design.sole;
  const opens = design.mouth.opening - allowance * mouthGrowth(elevation(design));
  return {
    ...NOTHING_MEASURED,
    done,
    ...(pinHole ? { pinHoleFromToe: pinHole.x, pinHoleHeight: pinHole.y + allowance } : {}),
    ...(stepIndex(done) >= stepIndex("sole") ? { allowanceLeft: allowance } : {}),
    ...(stepIndex(done) >= stepIndex("mouth") && allowance > 0 ? { mouthSeen: opens } : {}),
  };
}
