// Where every build of a class stands, as text for a terminal or as data.
import { doubtText, JOB_STEPS, jobNumber, MEASURED_ROWS, measuredUnit, stepWords } from "@lamplane/bench";
import { findingSentence } from "@lamplane/bench/checks";
import { type Obstacle, type PlaneStatus, planeStatus } from "@lamplane/bench/class";
import type { Design } from "@lamplane/parameters/table";
import { formatValue } from "@lamplane/parameters/units";
import { alignColumns } from "../text.ts";
import { CLASS, STATUS } from "../words/class.ts";
import type { ClassPlane } from "./plane-files.ts";

export function statusText(planes: readonly ClassPlane[]): string {
  const states = planes.map(({ design }) => design && planeStatus(design));
  const built = states.filter((state) => state && state.step === undefined).length;
  const stuck = states.filter((state) => state && state.stuckOn.length > 0).length;
  const rows = planes.map((plane, i) => planeRow(plane, states[i], i + 1));
  const notes = planes.flatMap((plane, i) => noteLines(plane, states[i]));
  return [
    STATUS.head({ planes: planes.length, built, stuck }),
    "",
    alignColumns([[...STATUS.columns], ...rows]),
    ...(notes.length > 0 ? ["", ...notes] : []),
    "",
  ].join("\n");
}

function planeRow({ name, design }: ClassPlane, state: PlaneStatus | undefined, number: number): string[] {
  if (!design || !state) return [`${number}`, name, "", "", CLASS.failed];
  const { step, measured, unread, stuckOn } = state;
  const latest = measured.at(-1);
  const value = latest === undefined ? undefined : design.measured[latest];
  const latestText =
    latest === undefined || value === undefined
      ? undefined
      : `${MEASURED_ROWS[latest].name} ${formatValue(value, measuredUnit(latest), design)}`;
  return [
    `${number}`,
    name,
    step
      ? STATUS.step({ number: jobNumber(step), of: JOB_STEPS.length, title: stepWords(design, step).title })
      : STATUS.built,
    STATUS.measured({ count: measured.length, latest: latestText }),
    stuckOn.length > 0
      ? STATUS.stuck({ count: stuckOn.length })
      : unread.length > 0
        ? STATUS.unread({ count: unread.length })
        : "",
  ];
}

function noteLines({ name, design, before, file, faults }: ClassPlane, state: PlaneStatus | undefined): string[] {
  if (!design || !state) return [...faults];
  return [
    ...(before ? [] : [STATUS.missing({ file })]),
    ...state.stuckOn.map((obstacle) => CLASS.stop({ name, text: obstacleText(design, obstacle) })),
  ];
}

function obstacleText(design: Design, obstacle: Obstacle): string {
  switch (obstacle.code) {
    case "check-fails":
      return findingSentence(design, obstacle.finding);
    case "doubtful":
      return STATUS.doubtful({
        name: MEASURED_ROWS[obstacle.doubt.key].name,
        text: doubtText(obstacle.doubt, (value, unit) => formatValue(value, unit, design)),
      });
    case "mouth-too-wide":
      return STATUS.tooWide({ by: formatValue(obstacle.by, "mm", design) });
  }
}

/** The same as data, lengths in mm and angles in degrees. */
export function statusJson(planes: readonly ClassPlane[]): string {
  const states = planes.map(({ name, file, design, faults }) =>
    design ? { file, ...planeStatus(design) } : { name, file, faults },
  );
  return `${JSON.stringify({ planes: states }, null, 2)}\n`;
}
