// The sheet of a class as plain data: its planes, set-ups in the order of the work, jigs, and each pupil's own numbers.
import { asBuiltPlane } from "@lamplane/bench";
import { type MachineSetup, machineSetups, type SharedJig, sharedJigs } from "@lamplane/bench/class";
import type { Design } from "@lamplane/parameters/table";
import type { BoardSheet } from "../boards/board-sheet.ts";
import { type PupilSheet, pupilSheet } from "./pupil-sheet.ts";

export interface ClassSheet {
  /** The roster's name. */
  readonly name: string;
  readonly designs: readonly Design[];
  /** Of the designs in the roster. */
  readonly numbers: readonly number[];
  readonly setups: readonly MachineSetup[];
  readonly jigs: readonly SharedJig[];
  readonly pupils: readonly PupilSheet[];
  /** Absent without boards. */
  readonly boards?: BoardSheet | undefined;
}

/** @param designs with the shared numbers in them; numbered from 1 where no numbers are given */
export const classSheet = (
  name: string,
  designs: readonly Design[],
  numbers: readonly number[] = designs.map((_, i) => i + 1),
  boards?: BoardSheet,
): ClassSheet => ({
  name,
  designs,
  numbers,
  // The boards' own cuts bring the pieces to their length.
  setups: machineSetups(designs).filter(({ key }) => boards === undefined || key !== "blankLength"),
  jigs: sharedJigs(designs),
  pupils: designs.map(pupilSheet),
  boards,
});

/** Core width and side play of a plane as it stands. mm. */
export function coreOf(design: Design): { readonly core: number; readonly sidePlay: number } {
  const plane = asBuiltPlane(design);
  return { core: plane.widths.core, sidePlay: plane.design.body.sideClearance };
}
