// What the latest step brought that the maker should know at the next: the values that are off, and the numbers that moved with them.
import { STEP_NAMES } from "@lamplane/parameters/table";
import { STEPS, type Step, stepIndex } from "../steps.ts";
import type { BuildState } from "./build-state.ts";
import type { FigureChange } from "./changes.ts";
import type { Loss } from "./losses.ts";

export interface BuildNews {
  readonly step: Step;
  /** Values of that step that came out otherwise. */
  readonly values: readonly Loss[];
  /** Numbers of later steps that moved with it; those of the step to do now are shown with that step. */
  readonly moved: readonly FigureChange[];
}

/** @returns undefined where nothing is done, or all of the latest step came out as asked */
export function buildNews({ latest, step, lost, changed }: BuildState): BuildNews | undefined {
  const values = lost.filter((loss) => loss.step === latest);
  if (latest === undefined || values.length === 0) return undefined;
  const shownWithStep = new Set<string>(step ? STEPS[step].figures : []);
  const later = new Set<string>(STEP_NAMES.slice(stepIndex(latest) + 1).flatMap((name) => STEPS[name].figures));
  const moved = changed.filter(({ key, isNew }) => isNew && later.has(key) && !shownWithStep.has(key));
  return { step: latest, values, moved };
}

/** What came out otherwise at steps before the latest: every number allows for it. */
export const earlierLosses = ({ latest, lost }: BuildState): readonly Loss[] =>
  lost.filter((loss) => loss.step !== latest);
