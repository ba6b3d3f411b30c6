// What every step's content is made from and what it gives; the frame round it (title, blanks, done) is added once for all.
import type { CautionKey, StockPlan, ToleranceReport } from "@lamplane/bench";
import type { Picture } from "../../picture/picture.ts";
import type { ReadingRow, StepNumber } from "../step.ts";
import type { StepContext } from "../step-context.ts";
import type { PictureRoom } from "../views.ts";

export interface ContentInput {
  readonly t: StepContext;
  readonly plan: StockPlan;
  readonly report: ToleranceReport;
  /** Whether a jig can be made for this plane. */
  readonly hasJig: (name: string) => boolean;
}

export interface StepContent {
  /** Only where the bench's own step has none. */
  readonly title?: string;
  readonly task?: string;
  readonly why?: string;
  readonly numbers: readonly StepNumber[];
  readonly instructions: readonly string[];
  readonly checks: readonly string[];
  readonly readings?: readonly ReadingRow[];
  readonly cautions: readonly CautionKey[];
  readonly draw: (room: PictureRoom) => Picture;
  readonly jigs?: readonly string[];
}

/** Sentences of which some hold of some planes only. */
export const keepSentences = (...sentences: readonly (string | false)[]): string[] =>
  sentences.filter((sentence): sentence is string => sentence !== false);
