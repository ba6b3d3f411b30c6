// Words of the tolerance report.
import { sentence } from "@lamplane/parameters/words";

const MOUTH = { planned: "0.15 mm", within: "±0.15 mm", allowance: "3.00 mm" };
const DECIDING = { step: "glue-up", label: "creep under clamps", held: "±0.10 mm", share: "47 %" };

const ASSUMED = {
  label: "creep under clamps",
  held: "±0.10 mm",
  share: "47 %",
  half: "±0.12 mm",
  double: "±0.23 mm",
  parameter: "hand.creep",
};

export const TOLERANCE = {
  exact: sentence(({ planned }: { planned: string }) => `Mouth: ${planned}. Every tolerance that moves it is 0.`, {
    planned: "0.15 mm",
  }),
  mouth: sentence(
    ({ planned, within, allowance }: typeof MOUTH) =>
      `Mouth: ${planned} ${within} (95 %), once ${allowance} is planed off the sole as planned.`,
    MOUTH,
  ),
  deciding: sentence(
    ({ step, label, held, share }: typeof DECIDING) => `Deciding step: ${step}, ${label} ${held} (${share}).`,
    DECIDING,
  ),
  notEnough: sentence(
    ({ target, label, others, percent }: { target: string; label: string; others: string; percent: string }) =>
      `For ${target}, ${label} alone is not enough: the other errors leave ${others}. Hold every step to ${percent} % of its tolerance, or set, read and repeat.`,
    { target: "±0.10 mm", label: "creep under clamps", others: "±0.11 mm", percent: "68" },
  ),
  alreadyWithin: sentence(
    ({ target, label, needed, held }: { target: string; label: string; needed: string; held: string }) =>
      `${target} is reached already. ${label} may be ${needed} instead of ${held}.`,
    { target: "±0.50 mm", label: "creep under clamps", needed: "±0.40 mm", held: "±0.10 mm" },
  ),
  needed: sentence(
    ({ target, label, needed }: { target: string; label: string; needed: string }) =>
      `For ${target}, hold ${label} to ${needed}.`,
    { target: "±0.10 mm", label: "creep under clamps", needed: "±0.05 mm" },
  ),
  otherPlacing: sentence(
    ({ to, within }: { to: "marks" | "contact"; within: string }) =>
      to === "marks"
        ? `Front block set to its mark instead: ${within}.`
        : `Front block slid back until it touches the iron instead: ${within}.`,
    { to: "marks", within: "±0.31 mm" },
    { to: "contact", within: "±0.15 mm" },
  ),
  repeat: sentence(({ within }: { within: string }) => `Set, read and repeat leaves ${within}.`, {
    within: "±0.08 mm",
  }),
  stopShort: sentence(
    ({ short, growth }: { short: string; growth: string }) =>
      `Stop ${short} short of the planned allowance, set the iron, read the mouth, take off (wanted - read) / ${growth}, and repeat.`,
    { short: "0.10 mm", growth: "1.51" },
  ),
  tooLittle: sentence(
    ({ allowance }: { allowance: string }) =>
      `The allowance of ${allowance} is too small to stop short of. Leave more wood under the sole.`,
    { allowance: "0.05 mm" },
  ),
  worst: sentence(({ worst }: { worst: string }) => `worst case ${worst}`, { worst: "±0.25 mm" }),
  noDerivative: sentence(({ because }: { because: string }) => `no tolerance: ${because}`, {
    because: "the pin axis lies on the centre of the ramp's curve",
  }),
  assumed: sentence(
    ({ label, held, share, half, double, parameter }: typeof ASSUMED) =>
      `${label} ${held} (${share}) is our assumption, without a source. At half of it: ${half}; at double: ${double}. Set your own: ${parameter}.`,
    ASSUMED,
  ),
  assumedShort: sentence(
    ({ label, half, double }: { label: string; half: string; double: string }) =>
      `Our assumption, without a source: ${label}. At half of it ${half}, at double ${double}.`,
    ASSUMED,
  ),
  runs: sentence(
    ({ low, high, middle, deviation }: { low: string; high: string; middle: string; deviation: string }) =>
      `trial: 95 of 100 from ${low} to ${high}, median ${middle}, standard deviation ${deviation}`,
    { low: "0.01 mm", high: "0.29 mm", middle: "0.15 mm", deviation: "0.07 mm" },
  ),
  trial: sentence(({ runs, seed }: { runs: number; seed: number }) => `Trial of ${runs} planes (seed ${seed}):`, {
    runs: 100000,
    seed: 1,
  }),
  collide: "block tips collide at glue-up",
  closed: "mouth still closed after the planned allowance (below 0: wood still to come off)",
  tooLate: "set, read and repeat too late: mouth already too wide",
  afterRepeat: sentence(
    ({ low, high }: { low: string; high: string }) =>
      `mouth after set, read and repeat: 95 of 100 from ${low} to ${high}`,
    { low: "0.07 mm", high: "0.23 mm" },
  ),
  under: sentence(({ least, unit }: { least: number; unit: string }) => `under ${least} ${unit}`, {
    least: 0.01,
    unit: "mm",
  }),
  pinOnCentre: "the pin axis lies on the centre of the ramp's curve",
  setToMark:
    "Contact cannot be read: the edge would stand below the sole of the blank. Set the front block to its mark.",
} as const;

/** What the figures stand on, and what they leave out. */
export const TOLERANCE_NOTES: readonly string[] = [
  "± is two standard deviations of a normal error, about 95 %. Errors are independent.",
  "Combined by root-sum-square: JCGM 100:2008 (GUM), 5.1.2 and 6.2. Trial: JCGM 101:2008, exact geometry.",
  "Tolerances are the `hand` parameters: common practice, no published source, or our assumption where one is named. Set them to your own.",
  "Not counted: a bed out of flat, an edge out of square, play of the pin in its holes, the seasons.",
  "Measure a part before you cut the next: its error is then known and drops out.",
];
