// The plane as far as it is built, between one step and the next.
import type { Point } from "@lamplane/geometry";
import { mouthOpeningAt } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import { type Step, stepIndex } from "../steps.ts";
import { mouthSides } from "./planes.ts";

/** The plane as far as it is built; `pinHole` once it is bored. */
export interface BuildSnapshot {
  readonly design: Design;
  readonly pinHole?: Point;
  readonly isWedgeMade?: true;
  /** Mouth seen beside the left cheek less that beside the right, mm, where both were read. */
  readonly mouthUneven?: number;
}
export type Measured = Design["measured"];

export const NOTHING_MEASURED: Measured = { done: "nothing" } as Measured;

/** What the result must remember of the bench, so that it can be taken further: where the hole is, what is left of the sole, and how far the mouth is open. */
export function snapshotMeasurements({ design, pinHole, mouthUneven }: BuildSnapshot, done: Step): Measured {
  const { allowance } = design.sole;
  const opens = () => mouthOpeningAt(mouthSides(design), -allowance);
  return {
    ...NOTHING_MEASURED,
    done,
    ...(pinHole ? { pinHoleFromEnd: pinHole.x + design.body.trim / 2, pinHoleHeight: pinHole.y + allowance } : {}),
    ...(stepIndex(done) >= stepIndex("sole") ? { allowanceLeft: allowance } : {}),
    ...(stepIndex(done) >= stepIndex("mouth") && allowance > 0 ? { mouthSeen: opens() } : {}),
    ...(mouthUneven === undefined
      ? {}
      : { mouthSeenLeft: opens() + mouthUneven / 2, mouthSeenRight: opens() - mouthUneven / 2 }),
  };
}

/** A design with some keys of some sections replaced. */
export function replaceSection<
  S extends "iron" | "body" | "ramp" | "bed" | "mouth" | "sole" | "core" | "recess" | "wedge" | "pin",
>(design: Design, section: S, values: Partial<Design[S]>): Design {
  return { ...design, [section]: { ...design[section], ...values } };
}
