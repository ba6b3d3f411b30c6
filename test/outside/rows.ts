// Rows of facts and sizes, shortly written.
import type { OutsideCheck, Provenance } from "./check.ts";

export type Citation = readonly [from: string, told: Provenance];
/** A row of a fact that is told in a word or a count. */
export const fact = (
  what: string,
  [from, told]: Citation,
  theirs: OutsideCheck["theirs"],
  ours: OutsideCheck["ours"],
): OutsideCheck => ({
  what,
  from,
  told,
  theirs,
  ours,
});
/** A row of a size, with how near it must be. */
export const size = (
  what: string,
  [from, told]: Citation,
  unit: string,
  theirs: number,
  ours: OutsideCheck["ours"],
  within: number,
): OutsideCheck => ({ what, from, told, unit, theirs, ours, within });
