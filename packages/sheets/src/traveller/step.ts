// What a step of the traveller is: plain data, the same for every page format. Every number is read off the plane once.
import type { JOB_STEPS, MeasuredKey } from "@lamplane/bench";
import type { Picture } from "../picture/picture.ts";
import type { PictureRoom } from "./views.ts";

/** Steps of the bench, with what comes before the first and after the last. */
export type TravellerKey = (typeof JOB_STEPS)[number];

/** One number of a step. */
export interface StepNumber {
  readonly label: string;
  /** In the maker's unit, and in words the way in which it may err. */
  readonly value: string;
  /** What was planned, where something measured has changed it. */
  readonly was?: string;
  /** Whether it is read again at this step, on a line of its own. */
  readonly isRead?: true;
}

/** A blank to write a measured value in, with the key to type it under. */
export interface Blank {
  readonly key: MeasuredKey;
  readonly label: string;
  readonly expected: string;
  /** How often it is read before the step is done, where that is more than once. */
  readonly times?: number;
  /** What came out, where the design says so. */
  readonly measured?: string;
}

/** A row to write the gaps under a straightedge in, laid in one place. */
export interface ReadingRow {
  /** Where it is laid: "1: up the middle of the bed, from the tip". */
  readonly placement: string;
  /** From where to where on the bed. */
  readonly ends: string;
  /** Where along it the gaps are read, from where it begins. */
  readonly stations: readonly string[];
}

/** A caution and where it comes from. */
export interface Caution {
  readonly text: string;
  readonly source: string;
}

/** A jig at the step where it serves. */
export interface JigInUse {
  readonly name: string;
  readonly title: string;
  /** What it lies against. */
  readonly against: string;
  readonly use: string;
  /** Where it is used, with the wood near it; a jig that is not tried on the plane has no picture. */
  readonly draw: (room: PictureRoom) => Picture | undefined;
}

export interface TravellerStep {
  readonly key: TravellerKey;
  readonly title: string;
  /** What is done, in a sentence or two. */
  readonly task: string;
  readonly why?: string;
  readonly numbers: readonly StepNumber[];
  /** In order. */
  readonly instructions: readonly string[];
  /** What must be true before the next step is begun. */
  readonly checks: readonly string[];
  readonly blanks: readonly Blank[];
  /** Only where a surface is surveyed. */
  readonly readings?: readonly ReadingRow[];
  readonly cautions: readonly Caution[];
  /** The step's drawing, as large as its room allows. */
  readonly draw: (room: PictureRoom) => Picture;
  readonly jigs: readonly JigInUse[];
  /** Whether the design says that it is done. */
  readonly done: boolean;
}
