// The report as lines for a terminal: first the maker's question in words, then each result with what moves it. Maker's unit.
import type { Design } from "@lamplane/parameters/table";
import {
  formatDecimal,
  formatDecimalLength,
  formatPercent,
  fromMillimetres,
  type Units,
} from "@lamplane/parameters/units";
import { type Budget, type BudgetLine, compareShares } from "./budget.ts";
import type { NoTolerance, ResultTolerance, ToleranceReport } from "./tolerances.ts";

/** What the figures stand on, and what they leave out. */
export const TOLERANCE_NOTES: readonly string[] = [
  "A tolerance ± is two standard deviations of a normal error, about 95 %; errors do not know of each other.",
  "Put together by root-sum-square: JCGM 100:2008 (GUM), 5.1.2 and 6.2. Runs: JCGM 101:2008, exact geometry, not linear.",
  "Tolerances are the rows `hand.…` of the design: common practice, no published source, or an assumption of ours, which is named. Set them to your own.",
  "Not counted: a bed that is not flat, an edge out of square, play of the pin in its holes, the seasons' movement.",
  "A part that is measured before the next is cut (order of the work) takes its error out of all that follows.",
];

/** Words first, then figures. */
export function toleranceText(report: ToleranceReport, design: Design): string[] {
  const { units } = design;
  return [
    ...(report.placingNote === undefined ? [] : [report.placingNote, ""]),
    ...mouthWords(report, design),
    "",
    ...report.results.flatMap((result) => [...resultLines(result, report, units), ""]),
    ...trialWords(report, design),
    "",
    ...TOLERANCE_NOTES,
  ];
}

/** The maker's question: how wide the mouth will be, which step decides, how well it must be done, what a second try leaves. */
export function mouthWords(report: ToleranceReport, design: Design): string[] {
  const { units } = design;
  const { mouth, placing } = report;
  const result = report.results.find(({ key }) => key === "mouthOpening") as ResultTolerance;
  const planned = fineLengthText(result.planned, units);
  if (!result.deciding) return [`The mouth will be ${planned}: every tolerance that moves it is 0.`];
  const { label, step, share, tolerance, unit } = result.deciding;
  const otherwise = placing === "contact" ? "set to its mark" : "slid back until it touches the iron";
  return [
    `The mouth will be ${planned} within ${plusMinusText(result.within, units)} (95 %) if you take off the planned allowance of ${fineLengthText(mouth.allowance, units)}.`,
    `The step that decides is ${step}: ${label}, held to ${heldText(tolerance, unit, units)} (${percentText(share)}).`,
    neededWords(report, result.deciding, units),
    ...(mouth.placedOtherwise === undefined
      ? []
      : [
          `With the front block ${otherwise} instead, it would be within ${plusMinusText(mouth.placedOtherwise, units)}.`,
        ]),
    ...repeatWords(report, units, result.within),
  ];
}

function neededWords(
  { mouth, ...report }: ToleranceReport,
  { label, tolerance, unit }: BudgetLine,
  units: Units,
): string {
  const { needed, target } = mouth;
  const aim = `To bring the mouth within ${plusMinusText(target, units)}`;
  const result = report.results.find(({ key }) => key === "mouthOpening") as ResultTolerance;
  if (needed?.tolerance === undefined)
    return `${aim}, ${label} alone is not enough: the rest leaves ${plusMinusText(needed?.others ?? 0, units)}. Hold every step to ${formatDecimal((needed?.allTimes ?? 1) * 100, 0)} % of its tolerance, or set, read and repeat.`;
  if (result.within <= target)
    return `It lies within ${plusMinusText(target, units)} already; ${label} may be held to ${heldText(needed.tolerance, unit, units)} instead of ${heldText(tolerance, unit, units)}.`;
  return `${aim}, ${label} must be held to ${heldText(needed.tolerance, unit, units)}.`;
}

function repeatWords({ mouth }: ToleranceReport, units: Units, mouthWithin: number): string[] {
  const { allowance, afterRepeat, stopShort, mouthGrowth } = mouth;
  const isShort = stopShort < mouthWithin / mouthGrowth;
  const stop = isShort
    ? `The whole allowance of ${fineLengthText(allowance, units)} is too little to stop short of: leave more wood under the sole.`
    : `Stop ${fineLengthText(stopShort, units)} short of the planned allowance, set the iron, read the mouth, take off (wanted - seen) / ${formatDecimal(mouthGrowth, 2)}, and repeat.`;
  return [`Set, read and repeat leaves ${plusMinusText(afterRepeat.within, units)}. ${stop}`];
}

function resultLines(result: ResultTolerance | NoTolerance, { trial }: ToleranceReport, units: Units): string[] {
  const { low, middle, high, deviation } = trial.results[result.key];
  const runs = `  runs: 95 of 100 from ${fineLengthText(low, units)} to ${fineLengthText(high, units)}, half below ${fineLengthText(middle, units)}, standard deviation ${fineLengthText(deviation, units)}`;
  const head = `${result.label}: ${fineLengthText(result.planned, units)}`;
  if ("undefinedBecause" in result) return [`${head}; no derivative: ${result.undefinedBecause}`, runs];
  return [
    `${head} ${plusMinusText(result.within, units)}; at worst, all errors together, ${plusMinusText(result.worst, units)}`,
    ...budgetLines(result, units),
    ...assumptionLines(result, units),
    runs,
  ];
}

/** One line an error, largest share first: how well it is held, what that makes of the result, its share, its step. */
function budgetLines({ lines }: Budget, units: Units): string[] {
  const sorted = lines.toSorted(compareShares);
  const cells = sorted.map((line) => [
    line.label,
    heldText(line.tolerance, line.unit, units),
    effectText(line.effect, units),
    percentText(line.share),
    line.step,
  ]);
  const widths = [0, 1, 2, 3].map((k) => Math.max(0, ...cells.map((row) => row[k]!.length)));
  return cells.map((row) => `  ${row.map((cell, k) => cell.padEnd(widths[k] ?? 0)).join("  ")}`.trimEnd());
}

/** A sentence for each assumption that the result rests on. */
export const assumptionLines = ({ assumptions }: Pick<ResultTolerance, "assumptions">, units: Units): string[] =>
  assumptions.map(
    ({ label, parameter, tolerance, unit, share, withinAtHalf, withinAtDouble }) =>
      `  ${label}, ${heldText(tolerance, unit, units)}, ${percentText(share)} of it, is an assumption of ours without a source: at half of it the result is within ${plusMinusText(withinAtHalf, units)}, at double within ${plusMinusText(withinAtDouble, units)}; \`${parameter}\` sets your own.`,
  );

/** The same in short, beside a plot; empty where the result rests on none. */
export const assumptionCaption = ({ assumptions }: Pick<ResultTolerance, "assumptions">, units: Units): string =>
  assumptions
    .map(
      ({ label, withinAtHalf, withinAtDouble }) =>
        ` Assumed by us, without a source: ${label}; within ${plusMinusText(withinAtHalf, units)} at half of it, ${plusMinusText(withinAtDouble, units)} at double.`,
    )
    .join("");

function trialWords({ trial }: ToleranceReport, { units }: Design): string[] {
  const { low, high } = trial.mouthAfterRepeat;
  return [
    `Of ${trial.runs} planes made by chance (seed ${trial.seed}), the blocks' tips collide at glue-up in ${percentText(trial.collide)};`,
    `the mouth is still closed once the planned allowance is off in ${percentText(trial.closed)} (a mouth below 0 is wood still to come off);`,
    `set, read and repeat comes too late, the mouth already wider than wanted, in ${percentText(trial.tooLate)};`,
    `after it 95 of 100 mouths are ${fineLengthText(low, units)} to ${fineLengthText(high, units)}.`,
  ];
}

const fineLengthText = (mm: number, units: Units): string =>
  formatDecimalLength(mm, { units, decimals: { mm: 2, in: 4 }, fixed: true, halves: "binary" });
const effectText = (mm: number, units: Units): string => {
  const least = units === "mm" ? 0.01 : 0.0001;
  return fromMillimetres(mm, units) < least / 2 ? `under ${least} ${units}` : plusMinusText(mm, units);
};
const plusMinusText = (mm: number, units: Units): string => `±${fineLengthText(mm, units)}`;
const heldText = (tolerance: number, unit: string, units: Units): string =>
  unit === "mm" ? plusMinusText(tolerance, units) : `±${formatDecimal(tolerance, 2)}${unit}`;
const percentText = (share: number): string => formatPercent(share, share * 100 < 10 ? 1 : 0, 0.001);
