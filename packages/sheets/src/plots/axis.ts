// A plot's axes: ticks on round numbers of the maker's unit. Lengths stay mm; only what is written is not.
import {
  formatBareLength,
  formatDecimalLength,
  formatNumber,
  fromMillimetres,
  toMillimetres,
  type Units,
} from "@lamplane/parameters/units";

export interface Tick {
  /** In the data's own unit: mm for a length. */
  readonly at: number;
  readonly text: string;
}

export interface Axis {
  readonly label: string;
  /** As written behind the label. */
  readonly unit: string;
  readonly from: number;
  readonly to: number;
  readonly ticks: readonly Tick[];
}

/** What an axis must show. */
export interface AxisRequest {
  readonly label: string;
  readonly least: number;
  readonly greatest: number;
  /** Most intervals between ticks. */
  readonly most?: number;
  /** Ends where the data end, between two ticks. */
  readonly tight?: boolean;
}

const MOST = 6;
/** Steps of a rule in inches, where the axis is an inch long or longer. */
const RULE_STEPS = [1 / 8, 1 / 4, 1 / 2, 1, 2, 5, 10, 20, 50];
const ON_A_TICK = 1e-9; // of a step: a value that is a tick needs no further one

/** Smallest of 1, 2 and 5 times a power of ten that divides `range` into `most` steps or fewer. */
export function niceStep(range: number, most: number): number {
  const power = 10 ** Math.floor(Math.log10(range / most));
  return [1, 2, 5, 10].map((times) => times * power).find((step) => range / step <= most * (1 + ON_A_TICK))!;
}

/** Axis of a plain number. */
export function numberAxis(need: AxisRequest, unit: string): Axis {
  const { label, least, greatest, most = MOST } = need;
  const step = niceStep(widenRange(least, greatest), most);
  return { label, unit, ...makeTicks(need, step, (count) => decimals(count * step, step)) };
}

const EIGHTHS = { units: "in", shop: { smallestFraction: "1/8", bothUnits: "no" } } as const;

/** Axis of a length, mm inside; ticks in mm, in decimal inches under an inch, in fractions of an inch over it. */
export function lengthAxis(need: AxisRequest, units: Units): Axis {
  const { label, least, greatest, most = MOST } = need;
  const range = widenRange(least, greatest);
  const inUnit = fromMillimetres(range, units);
  if (units === "mm" || inUnit < 1) {
    const step = niceStep(inUnit, most);
    const text = (count: number) => decimals(count * step, step);
    return { label, unit: units, ...makeTicks(need, toMillimetres(step, units), text) };
  }
  const step = toMillimetres(RULE_STEPS.find((s) => inUnit / s <= most) ?? niceStep(inUnit, most), "in");
  const text = (count: number) => formatBareLength(count * step, EIGHTHS);
  return { label, unit: units, ...makeTicks(need, step, text) };
}

/** A range is never nothing: one value alone is shown in a range of its own size. */
const widenRange = (least: number, greatest: number): number =>
  greatest > least ? greatest - least : Math.max(Math.abs(greatest), 1);

function makeTicks({ least, greatest, tight = false }: AxisRequest, step: number, text: (count: number) => string) {
  const first = Math.floor(least / step + ON_A_TICK);
  const last = Math.max(Math.ceil(greatest / step - ON_A_TICK), first + 1);
  const counts = Array.from({ length: last - first + 1 }, (_, i) => first + i);
  const ticks = counts.map((count): Tick => ({ at: count * step, text: text(count) }));
  if (!tight || !(greatest > least)) return { from: first * step, to: last * step, ticks };
  const slack = ON_A_TICK * step;
  return { from: least, to: greatest, ticks: ticks.filter(({ at }) => at >= least - slack && at <= greatest + slack) };
}

/** As many decimals as the step has, on every tick alike. */
function decimals(value: number, step: number): string {
  const places = Math.max(0, -Math.floor(Math.log10(step) + ON_A_TICK));
  return Math.abs(value) < step / 2 ? "0" : formatNumber(value, { decimals: places, fixed: true, halves: "binary" });
}

/** A small length in the maker's unit alone: a plot has no room for both. */
export const formatPlotLength = (mm: number, units: Units): string =>
  formatDecimalLength(mm, { units, decimals: { mm: 2, in: 3 } });
