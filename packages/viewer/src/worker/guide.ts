// The guide to a step of the strip: its picture and what the traveller says of it; and a small drawing of every step.

import type { Elevation } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import { type TravellerStep, travellerSteps } from "@lamplane/sheets";
import { JOB_OF, STAGES, type StageName } from "../protocol/build-steps.ts";
import type { Guide, StripDrawing } from "../protocol/sheet-data.ts";
import { stepRoom } from "./step-room.ts";
import { elevationView } from "./views/elevation-view.ts";

/** The traveller of the design asked about last: the same for every step of it. */
let last: { key: string; steps: readonly TravellerStep[] } | undefined;

/**
 * What cannot be made of a plane that will not work is left out.
 * @param width of the step's drawing, mm
 */
export function makeGuide(design: Design, plane: Elevation, stage: StageName, width: number): Guide {
  const jobs: readonly string[] = JOB_OF[stage];
  const steps = stepsOf(design).filter(({ key }) => jobs.includes(key));
  const pictured = steps.at(stage === "dry-fit" ? -1 : 0);
  return {
    stage,
    picture: pictured?.draw(stepRoom(width)),
    steps: steps.map(({ key, title, task, numbers }) => ({
      key,
      title,
      task,
      numbers: numbers.map(({ label, value }) => ({ label, value })),
    })),
    strip: STAGES.flatMap((name) => stripDrawing(plane, name)),
  };
}

function stepsOf(design: Design): readonly TravellerStep[] {
  const key = JSON.stringify(design);
  if (last?.key !== key) last = { key, steps: attempt(() => travellerSteps(design)) ?? [] };
  return last.steps;
}

function stripDrawing(plane: Elevation, stage: StageName): StripDrawing[] {
  const view = attempt(() => elevationView({ plane, solved: {} }, stage));
  if (!view) return [];
  return [{ stage, box: view.box, marks: view.marks.flatMap(({ d, area }) => (area ? [{ d, area }] : [])) }];
}

function attempt<T>(make: () => T): T | undefined {
  try {
    return make();
  } catch {
    return undefined;
  }
}
