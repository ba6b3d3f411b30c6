// A build as the bench screens show it: plain data, every word of it made where `next` and the traveller have theirs.
import type { LengthStyle } from "@lamplane/parameters/units";
import type { Picture } from "@lamplane/sheets";

/** What is entered at the bench: a measured value, or a step that is done without one. */
export interface BenchEntry {
  /** `measured.…`, a row of the table; `measured.done` for a step that is done. */
  readonly path: string;
  /** mm, degrees or a step's name; undefined takes the value back. */
  readonly value: number | string | undefined;
  /** Whether the maker has been asked about a reading far from the plan, or about steps passed over, and it is so. */
  readonly isConfirmed?: boolean;
}

export interface BenchBlank {
  readonly path: string;
  readonly label: string;
  readonly expected: string;
  readonly unit: "mm" | "°";
  /** What came out, in the maker's unit. */
  readonly value?: string;
  readonly times?: number;
}

export interface BenchScreen {
  readonly key: string;
  readonly title: string;
  readonly task: string;
  readonly why?: string;
  readonly numbers: readonly { readonly label: string; readonly value: string; readonly was?: string }[];
  readonly instructions: readonly string[];
  readonly checks: readonly string[];
  readonly cautions: readonly string[];
  readonly blanks: readonly BenchBlank[];
  readonly picture: Picture;
  readonly isDone: boolean;
  /** Whether nothing is missing that is to be measured at it. */
  readonly isComplete: boolean;
  /** Whether the design file keeps that it is done. */
  readonly isKept: boolean;
}

/** A value that came out otherwise, and what it costs. */
export interface BenchLoss {
  readonly name: string;
  readonly came: string;
  readonly costs: readonly string[];
}

export interface BenchNews {
  /** Title of the step that brought it. */
  readonly from: string;
  readonly values: readonly BenchLoss[];
  readonly moved: readonly { readonly name: string; readonly now: string; readonly planned: string }[];
}

export interface BenchBuild {
  readonly name: string;
  /** How the maker reads lengths. */
  readonly style: LengthStyle;
  /** The design file, with what was entered. */
  readonly text: string;
  readonly screens: readonly BenchScreen[];
  /** The step to do now; absent once all is done. */
  readonly next?: string;
  /** Checks that fail as the plane stands. */
  readonly stops: readonly string[];
  readonly news?: BenchNews;
  readonly earlier: readonly BenchLoss[];
  /** Values of steps that are done that were not read, with what they are taken for. */
  readonly unread: string;
  /** How much wider than wanted the mouth is. */
  readonly tooWideBy?: string;
}

export type BenchAnswer =
  | { readonly kind: "build"; readonly build: BenchBuild }
  /** No design, or no value that the table allows: nothing was entered. */
  | { readonly kind: "refused"; readonly words: readonly string[] }
  /** A reading so far from the plan that it is likely a slip: nothing was entered yet. */
  | { readonly kind: "doubt"; readonly words: string }
  /** Steps that would be passed over with nothing measured, by title: nothing was entered yet. */
  | { readonly kind: "skips"; readonly titles: readonly string[] };
