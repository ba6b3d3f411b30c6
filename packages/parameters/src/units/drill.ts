// Which drill bores a hole of a wanted size, in the maker's unit: the nearest that is sold at or over it.
import { LETTER_DRILLS, NUMBER_DRILLS } from "./drill-chart.ts";
import { formatLength, type LengthStyle } from "./format.ts";
import { INCH, roundToNanometre, type Units } from "./inch.ts";
import { formatDecimal } from "./number.ts";

/** A drill as it is sold. */
export interface Drill {
  /** "9.7 mm", "25/64 in", "No. 7 (0.201 in)", "letter X (0.397 in)". */
  readonly name: string;
  /** mm. */
  readonly diameter: number;
}

/** What a drill may be under the size wanted and still be it, mm: half of what a caliper shows. */
const SAME: Readonly<Record<Units, number>> = { mm: 0.005, in: INCH / 2000 };
const LARGEST = 2 * INCH; // mm: what a hand-held or pillar drill turns
/** Where metric drills go on by halves. @see BS 328 (quoted): by 0.1 from 3 to 13.9 mm; common practice above */
const BY_HALVES = 14;

/** The smallest drill that is sold at or over a diameter; undefined over the largest, 2 in. @param mm over 0 */
export function drillFor(mm: number, units: Units): Drill | undefined {
  return CHARTS[units].find(({ diameter }) => diameter >= mm - SAME[units]);
}

/** The drill's name; over the largest that is sold the length itself. */
export const formatDrill = (mm: number, style: LengthStyle): string =>
  drillFor(mm, style.units)?.name ?? formatLength(mm, style);

const fractions: readonly Drill[] = Array.from({ length: 128 }, (_, i) => {
  const diameter = ((i + 1) / 64) * INCH;
  const style = { units: "in", shop: { smallestFraction: "1/64", bothUnits: "no" } } as const;
  return { name: formatLength(diameter, style), diameter };
});
const gauge = (name: string, inches: number): Drill => ({
  name: `${name} (${formatDecimal(inches, 4)} in)`,
  diameter: inches * INCH,
});
const letters = LETTER_DRILLS.map((inches, i) => gauge(`letter ${String.fromCharCode(65 + i)}`, inches));
const numbers = NUMBER_DRILLS.map((inches, i) => gauge(`No. ${i + 1}`, inches));

const metric: readonly Drill[] = Array.from({ length: 1000 }, (_, i) => (i + 1) / 10)
  .filter((size) => size <= LARGEST && (size < BY_HALVES || (size * 2) % 1 === 0))
  .map((size) => ({ name: `${formatDecimal(size, 1)} mm`, diameter: size }));

/** By rising diameter; of two alike the fraction, which more shops have. */
const CHARTS: Readonly<Record<Units, readonly Drill[]>> = {
  mm: metric,
  in: [...fractions, ...letters, ...numbers].sort(
    (a, b) => roundToNanometre(a.diameter) - roundToNanometre(b.diameter),
  ),
};
