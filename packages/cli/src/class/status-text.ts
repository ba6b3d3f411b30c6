// Where every build of a class stands, as text for a terminal or as data.
import { hurdleText, measuredText, obstacleText, type PlaneStatus, planeStatus, stepText } from "@lamplane/bench/class";
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
  return [`${number}`, name, stepText(design, state), measuredText(design, state), hurdleText(state)];
}

function noteLines({ name, design, before, file, faults }: ClassPlane, state: PlaneStatus | undefined): string[] {
  if (!design || !state) return [...faults];
  return [
    ...(before ? [] : [STATUS.missing({ file })]),
    ...state.stuckOn.map((obstacle) => CLASS.stop({ name, text: obstacleText(design, obstacle) })),
  ];
}

/** The same as data, lengths in mm and angles in degrees. */
export function statusJson(planes: readonly ClassPlane[]): string {
  const states = planes.map(({ name, file, design, faults }) =>
    design ? { file, ...planeStatus(design) } : { name, file, faults },
  );
  return `${JSON.stringify({ planes: states }, null, 2)}\n`;
}
