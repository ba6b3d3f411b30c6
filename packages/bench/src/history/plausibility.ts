// Whether a reading is likely to be a slip: far further from what was to come out than hands are off at that step.
import { rowAt, valueAt } from "@lamplane/parameters/design";
import type { Design } from "@lamplane/parameters/table";
import { fromMillimetres, toMillimetres } from "@lamplane/parameters/units";
import { MEASURED_ROWS, type MeasuredKey, measuredUnit } from "../measured-values.ts";
import { ERROR_ROWS } from "../plan/sources-of-error.ts";
import { DOUBT, RANGE, type SlipCode } from "../words/history.ts";
import { designBeforeStep } from "./as-built.ts";
import { expectedValue } from "./expected.ts";

/** A reading that is taken for a slip until it is entered again. Lengths mm, angles degrees. */
export interface Doubt {
  readonly key: MeasuredKey;
  readonly unit: "mm" | "°";
  readonly reading: number;
  /** What was to come out: one value, or any from `min` to `max`. */
  readonly min: number;
  readonly max: number;
  /** How far off it may be without a word. */
  readonly within: number;
  /** What was likely meant, and how the slip came about. */
  readonly likelyMeant?: { readonly value: number; readonly slip: SlipCode };
}

/** A reading may be this many times further off than the step is held to: two standard deviations times 20 is no hand's work. */
const TIMES = 20;
/** An iron is bought, not planed to a size: the file may hold what its seller says of it. */
const TIMES_BOUGHT = 50;

/** A guess at what was meant must come this much nearer than is let pass, or it would be one among many. */
const GUESS = 4;

/**
 * How far a reading may be off without a word, mm or degrees: the loosest error that the step makes, as this maker holds it
 * or, where that is finer, as most do.
 */
function plausibleDeviation({ hand }: Design, key: MeasuredKey): number {
  const { errors = [], held, isBought } = MEASURED_ROWS[key];
  const names = [...errors.map((error) => ERROR_ROWS[error].tolerance), ...(held ? [held] : [])];
  const tolerances = names.map((name) => {
    const row = rowAt(`hand.${name}`);
    return Math.max(Number(hand[name]), row.kind === "number" ? Number(row.default) : 0);
  });
  return Math.max(...tolerances) * (isBought ? TIMES_BOUGHT : TIMES);
}

/** The doubt that a value measured at the bench raises; undefined where it is plausible, or this plane has no such thing. */
export function findDoubt(design: Design, key: MeasuredKey, got = design.measured[key]): Doubt | undefined {
  const expected = expectedValue(design, key);
  if (got === undefined || expected === undefined) return undefined;
  const { least, most } = plausibleRange(design, key, expected);
  const within = plausibleDeviation(design, key);
  const isNear = (value: number, by: number) => value >= least - by && value <= most + by;
  if (isNear(got, within)) return undefined;
  const meant = SLIPS.map(({ slip, meant: of, when }) => ({ slip, value: of(got, design), when })).find(
    ({ value, when }) => isNear(value, within / GUESS) && (when?.(key, design) ?? true),
  );
  return {
    key,
    unit: measuredUnit(key),
    reading: got,
    min: least,
    max: most,
    within,
    ...(meant ? { likelyMeant: { value: meant.value, slip: meant.slip } } : {}),
  };
}

/** On the way to what is wanted any reading between nothing and all is right. */
function plausibleRange(design: Design, key: MeasuredKey, expected: number) {
  const { upTo, at, parameter } = MEASURED_ROWS[key];
  if (upTo === undefined) return { least: expected, most: expected };
  const all = valueAt(upTo === "planned" ? design : designBeforeStep(design, at), parameter);
  return { least: 0, most: Number(all) };
}

interface Slip {
  readonly slip: SlipCode;
  readonly meant: (got: number, design: Design) => number;
  readonly when?: (key: MeasuredKey, design: Design) => boolean;
}
const isLength = (key: MeasuredKey) => measuredUnit(key) === "mm";

const SLIPS: readonly Slip[] = [
  {
    slip: "mm-as-inches",
    meant: (got) => fromMillimetres(got, "in"),
    when: (key, { units }) => isLength(key) && units === "in",
  },
  {
    slip: "inches-as-mm",
    meant: (got) => toMillimetres(got, "in"),
    when: (key, { units }) => isLength(key) && units === "mm",
  },
  { slip: "decimal-point", meant: (got) => got / 10 },
  { slip: "decimal-point", meant: (got) => got * 10 },
  { slip: "from-square", meant: (got) => 90 - got, when: (key) => !isLength(key) },
  {
    slip: "from-finished-toe",
    meant: (got, { body }) => got + body.trim / 2,
    when: (key) => MEASURED_ROWS[key].isFromEnd === true,
  },
];

/** A doubt in words; `format` gives a value with its unit. */
export function doubtText(
  { reading, min, max, unit, likelyMeant }: Doubt,
  format: (value: number, unit: string) => string,
): string {
  const [least, most] = [format(min, unit), format(max, unit)];
  return DOUBT({
    reading: format(reading, unit),
    expected: min === max ? least : RANGE({ min: least, max: most }),
    ...(likelyMeant && { meant: format(likelyMeant.value, unit), slip: likelyMeant.slip }),
  });
}
