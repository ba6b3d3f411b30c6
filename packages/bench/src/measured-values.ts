// Every measured value's row as the bench reads it. A figure, an error or a rule that does not exist fails to compile here.
import type { FigureKey } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import { type Measurement, STEP_NAMES, TABLE } from "@lamplane/parameters/table";
import type { ErrorKey } from "./error-keys.ts";

export type MeasuredKey = Exclude<keyof Design["measured"], "done">;

/** What a value is expected to be, where no figure of the plane says it. */
export type ExpectationRule = "soleWhereMouthOpens" | "mouthAtSole";

export interface MeasuredRow extends Measurement {
  readonly quantity: string;
  readonly name: string;
  readonly help: string;
  readonly figure?: FigureKey;
  readonly rule?: ExpectationRule;
  readonly readingOf?: FigureKey;
  readonly errors?: readonly ErrorKey[];
  readonly impliedBy?: readonly MeasuredKey[];
}

const { done: _, ...rows } = TABLE.measured;

/** Rows of the parameter table under `measured`. */
export const MEASURED_ROWS: Readonly<Record<MeasuredKey, MeasuredRow>> = rows;

/** Every measured value's key, in the order of the work. */
export const MEASURED_KEYS: readonly MeasuredKey[] = STEP_NAMES.flatMap((step) =>
  (Object.keys(rows) as MeasuredKey[]).filter((key) => rows[key].at === step),
);

/** Unit in which a value is kept. */
export const measuredUnit = (key: MeasuredKey): "mm" | "°" => (MEASURED_ROWS[key].quantity === "angle" ? "°" : "mm");

/** Whether it is read on the way to what is wanted, so that nothing is lost by it. */
export const isInterim = (key: MeasuredKey): boolean => MEASURED_ROWS[key].upTo !== undefined;

export const isMeasuredKey = (key: string): key is MeasuredKey => Object.hasOwn(MEASURED_ROWS, key);
