// The sheet of a class as plain data: its planes, set-ups in the order of the work, jigs, and each pupil's own numbers.
import { asBuiltPlane } from "@lamplane/bench";
import { type MachineSetup, machineSetups, type SharedJig, sharedJigs } from "@lamplane/bench/class";
import type { Design } from "@lamplane/parameters/table";
import { type PupilSheet, pupilSheet } from "./pupil-sheet.ts";

export interface ClassSheet {
  /** The roster's name. */
  readonly name: string;
  readonly designs: readonly Design[];
  readonly setups: readonly MachineSetup[];
  readonly jigs: readonly SharedJig[];
  readonly pupils: readonly PupilSheet[];
}

/** @param designs with the shared numbers in them, by their numbers in the roster */
export const classSheet = (name: string, designs: readonly Design[]): ClassSheet => ({
  name,
  designs,
  setups: machineSetups(designs),
  jigs: sharedJigs(designs),
  pupils: designs.map(pupilSheet),
});

/** Core width and side play of a plane as it stands. mm. */
export function coreOf(design: Design): { readonly core: number; readonly sidePlay: number } {
  const plane = asBuiltPlane(design);
  return { core: plane.widths.core, sidePlay: plane.design.body.sideClearance };
}
