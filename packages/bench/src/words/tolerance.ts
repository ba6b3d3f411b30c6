// Words of the tolerance report.
import { listText, sentence } from "@lamplane/parameters/words";

const MOUTH = { planned: "0.15 mm", within: "±0.15 mm", allowance: "3 mm" };
const DECIDING = { step: "glue-up", label: "creep under clamps", held: "±0.1 mm", share: "47 %" };

const ASSUMED = {
  label: "creep under clamps",
  held: "±0.1 mm",
  share: "47 %",
  half: "±0.12 mm",
  double: "±0.23 mm",
  parameter: "hand.creep",
};

export const TOLERANCE = {
  exact: sentence(
    ({ planned }: { planned: string }) => `Mouth ${planned}, exactly: every tolerance that moves it is 0.`,
    {
      planned: "0.15 mm",
    },
  ),
  mouth: sentence(
    ({ planned, within, allowance }: typeof MOUTH) =>
      `Mouth ${planned} ${within}, in 19 planes of 20, once ${allowance} is planed off the sole.`,
    MOUTH,
  ),
  deciding: sentence(
    ({ step, label, held, share }: typeof DECIDING) => `Deciding step: ${step}, ${label} ${held} (${share}).`,
    DECIDING,
  ),
  notEnough: sentence(
    ({ target, label, percent }: { target: string; label: string; percent: string }) =>
      `To come within ${target}: less ${label} alone is not enough. Hold every step to ${percent} % of its tolerance, or set, read and repeat.`,
    { target: "±0.1 mm", label: "creep under clamps", percent: "68" },
  ),
  alreadyWithin: sentence(
    ({ target, label, needed, held }: { target: string; label: string; needed: string; held: string }) =>
      `Better than the ${target} wanted: ${label} may be ${needed} instead of ${held}.`,
    { target: "±0.5 mm", label: "creep under clamps", needed: "±0.4 mm", held: "±0.1 mm" },
  ),
  needed: sentence(
    ({ target, label, needed }: { target: string; label: string; needed: string }) =>
      `To come within ${target}: hold ${label} to ${needed}.`,
    { target: "±0.1 mm", label: "creep under clamps", needed: "±0.05 mm" },
  ),
  otherPlacing: sentence(
    ({ to, within }: { to: "marks" | "contact"; within: string }) =>
      to === "marks"
        ? `Front block set to its mark instead: mouth ${within}.`
        : `Front block slid back until it touches the iron instead: mouth ${within}.`,
    { to: "marks", within: "±0.31 mm" },
    { to: "contact", within: "±0.15 mm" },
  ),
  repeat: sentence(
    ({ within, short, growth }: { within: string; short: string; growth: string }) =>
      `Set, read and repeat: ${within}. Stop ${short} short of the allowance, set the iron, read the mouth, take off (wanted − read) / ${growth}, and repeat.`,
    { within: "±0.08 mm", short: "0.1 mm", growth: "1.51" },
  ),
  tooLittle: sentence(
    ({ within, allowance }: { within: string; allowance: string }) =>
      `Set, read and repeat: ${within}, but the allowance of ${allowance} is too small to stop short of. Leave more wood under the sole.`,
    { within: "±0.08 mm", allowance: "0.05 mm" },
  ),
  heads: sentence(({ units }: { units: string }) => `planned, ${units}`, { units: "mm" }),
  withinHead: "19 of 20",
  stepHead: "deciding step",
  shared: sentence(({ step, share }: { step: string; share: string }) => `${step} ${share}`, {
    step: "glue-up",
    share: "74 %",
  }),
  triedBriefly: sentence(
    ({ runs, closed, tooLate, collide }: { runs: number; closed: string; tooLate: string; collide: string }) =>
      `Of ${runs} planes tried: ${closed} still closed after the allowance, ${tooLate} too wide before the first reading, ${collide} with colliding block tips.`,
    { runs: 100000, closed: "2 %", tooLate: "2.3 %", collide: "0 %" },
  ),
  assumedBriefly: sentence(
    ({ labels, parameters }: { labels: readonly string[]; parameters: readonly string[] }) =>
      `Our assumptions, without a source: ${listText(labels)}. Set your own: ${parameters.join(", ")}.`,
    { labels: ["creep under clamps", "bed out of square"], parameters: ["hand.creep", "hand.bedSkew"] },
  ),
  worst: sentence(({ worst }: { worst: string }) => `at worst ${worst}`, { worst: "±0.25 mm" }),
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
      `trial: 19 planes of 20 from ${low} to ${high}, half below ${middle}, standard deviation ${deviation}`,
    { low: "0.01 mm", high: "0.29 mm", middle: "0.15 mm", deviation: "0.07 mm" },
  ),
  trial: sentence(({ runs, seed }: { runs: number; seed: number }) => `Trial of ${runs} planes (seed ${seed}):`, {
    runs: 100000,
    seed: 1,
  }),
  collide: "block tips collide at glue-up",
  closed: "mouth still closed after the allowance: more wood must come off",
  tooLate: "mouth too wide before the first reading",
  afterRepeat: sentence(
    ({ low, high }: { low: string; high: string }) =>
      `mouth after set, read and repeat: 19 planes of 20 from ${low} to ${high}`,
    { low: "0.07 mm", high: "0.23 mm" },
  ),
  under: sentence(({ least, unit }: { least: number; unit: string }) => `under ${least} ${unit}`, {
    least: 0.01,
    unit: "mm",
  }),
  pinOnCentre: "the pin axis lies on the centre of the ramp's curve",
  setToMark: "Set the front block to its mark, not to the iron: the edge would stand below the sole of the blank.",
} as const;

/** What the figures stand on, and what they leave out. */
export const TOLERANCE_NOTES: readonly string[] = [
  "± holds for 19 planes of 20 (95 %): two standard deviations of independent, normal errors.",
  "Combined by root-sum-square: JCGM 100:2008 (GUM), 5.1.2 and 6.2. Trial: JCGM 101:2008, exact geometry.",
  "Tolerances are the `hand` parameters: common practice, no published source, or our assumption where it says so. Set your own.",
  "Left out: a bed out of flat, an edge out of square, play of the pin in its holes, the seasons.",
  "Measure each part before you cut the next: what you have measured no longer counts as an error.",
];
