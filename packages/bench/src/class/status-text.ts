// Where one build of a class stands, in words.
import type { Design } from "@lamplane/parameters/table";
import { formatValue } from "@lamplane/parameters/units";
import { findingSentence } from "../checks/index.ts";
import { doubtText } from "../history/plausibility.ts";
import { MEASURED_ROWS, measuredUnit } from "../measured-values.ts";
import { JOB_STEPS, jobNumber, stepWords } from "../steps.ts";
import { STATUS_WORDS } from "../words/class.ts";
import type { Obstacle, PlaneStatus } from "./class-status.ts";

/** The step to do next, or that the plane is built. */
export const stepText = (design: Design, { step }: PlaneStatus): string =>
  step
    ? STATUS_WORDS.step({ number: jobNumber(step), of: JOB_STEPS.length, title: stepWords(design, step).title })
    : STATUS_WORDS.built;

/** How many values are measured, and the last of them. */
export function measuredText(design: Design, { measured }: PlaneStatus): string {
  const key = measured.at(-1);
  const value = key && design.measured[key];
  const latest =
    key === undefined || value === undefined
      ? undefined
      : `${MEASURED_ROWS[key].name} ${formatValue(value, measuredUnit(key), design)}`;
  return STATUS_WORDS.measured({ count: measured.length, latest });
}

/** That a build is stuck, or how many values were passed over; "" where it goes on. */
export function hurdleText({ stuckOn, unread }: PlaneStatus): string {
  if (stuckOn.length > 0) return STATUS_WORDS.stuck({ count: stuckOn.length });
  return unread.length > 0 ? STATUS_WORDS.unread({ count: unread.length }) : "";
}

export function obstacleText(design: Design, obstacle: Obstacle): string {
  switch (obstacle.code) {
    case "check-fails":
      return findingSentence(design, obstacle.finding);
    case "doubtful":
      return STATUS_WORDS.doubtful({
        name: MEASURED_ROWS[obstacle.doubt.key].name,
        text: doubtText(obstacle.doubt, (value, unit) => formatValue(value, unit, design)),
      });
    case "mouth-too-wide":
      return STATUS_WORDS.tooWide({ by: formatValue(obstacle.by, "mm", design) });
  }
}
