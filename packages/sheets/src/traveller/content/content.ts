// What every step's content is made from and what it gives; the frame round it (title, blanks, done) is added once for all.
import type { CautionKey, StockPlan, ToleranceReport } from "@lamplane/bench";
import type { Picture } from "../../picture/picture.ts";
import type { NumberRow } from "../step.ts";
import type { Telling, Times } from "../telling.ts";

export interface Known {
  readonly t: Telling;
  readonly plan: StockPlan;
  readonly report: ToleranceReport;
}

export interface Content {
  /** Only where the bench's own step has none. */
  readonly title?: string;
  readonly task?: string;
  readonly why?: string;
  readonly numbers: readonly NumberRow[];
  readonly instructions: readonly string[];
  readonly checks: readonly string[];
  readonly cautions: readonly CautionKey[];
  readonly picture: Picture;
  readonly jigs?: readonly string[];
  /** How often a value is read before the step is done, where that is more than once. */
  readonly times?: Times;
}

/** Sentences of which some are only said of some planes. */
export const said = (...sentences: readonly (string | false)[]): string[] =>
  sentences.filter((sentence): sentence is string => sentence !== false);
