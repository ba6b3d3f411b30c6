// The plane as it stands: planned where nothing is cut yet, as it came out where it is. A measured value changes nothing before its step.
import { type Elevation, elevation, mouthGrowth } from "@lamplane/parameters/elevation";
import { type Design, STEP_NAMES } from "@lamplane/parameters/table";
import { type Step, stepPlace, stepsDone } from "../steps.ts";
import { APPLY, type Standing } from "./apply.ts";

/** The design as it was planned, with nothing measured. */
export const planned = (design: Design): Design =>
  stepsDone(design) === 0 ? design : { ...design, measured: { ...NOTHING } };

const NOTHING: Design["measured"] = { done: "nothing" } as Design["measured"];

/** The design as it stands when a step begins: what earlier steps measured and settled, and no more. */
export const designAt = (design: Design, step: Step): Design =>
  standingAfter(design, Math.min(stepsDone(design), stepPlace(step)));

/** The design as it stands after every step that is done. Asking it again of the result changes nothing. */
export const asBuilt = (design: Design): Design => standingAfter(design, stepsDone(design));

/** Elevation of the plane as it stands. */
export const planeOf = (design: Design): Elevation => elevation(asBuilt(design));

/** Elevation of the plane as it stands when a step begins. */
export const planeAt = (design: Design, step: Step): Elevation => elevation(designAt(design, step));

function standingAfter(design: Design, count: number): Design {
  if (count === 0) return planned(design);
  const start: Standing = { design: planned(design) };
  const standing = STEP_NAMES.slice(0, count).reduce((so, step) => APPLY[step](so, design.measured), start);
  return { ...standing.design, measured: remembered(standing, STEP_NAMES[count - 1]!) };
}

/** What the result must remember of the bench, so that it can be taken further: where the hole is, what is left of the sole, and how far the mouth is open. */
function remembered({ design, hole }: Standing, done: Step): Design["measured"] {
  const { allowance } = design.sole;
  const opens = design.mouth.opening - allowance * mouthGrowth(elevation(design));
  return {
    ...NOTHING,
    done,
    ...(hole ? { pinHoleFromToe: hole.x, pinHoleHeight: hole.y + allowance } : {}),
    ...(stepPlace(done) >= stepPlace("sole") ? { allowanceLeft: allowance } : {}),
    ...(stepPlace(done) >= stepPlace("mouth") && allowance > 0 ? { mouthSeen: opens } : {}),
  };
}
