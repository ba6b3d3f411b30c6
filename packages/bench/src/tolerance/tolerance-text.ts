// The report as lines for a terminal: first the maker's question in words, then each result with what moves it. Maker's unit.
import type { Design } from "@lamplane/parameters/table";
import {
  formatBareLength,
  formatDecimal,
  formatDecimalLength,
  formatLength,
  formatPercent,
  fromMillimetres,
  type Units,
} from "@lamplane/parameters/units";
import { TOLERANCE, TOLERANCE_NOTES } from "../words/tolerance.ts";
import { type Budget, type BudgetLine, compareShares } from "./budget.ts";
import type { NoTolerance, ResultTolerance, ToleranceReport } from "./tolerances.ts";

/**
 * The maker's question answered, then a row for each result.
 * @param all every error of each result, the trial and the sources too
 */
export function toleranceText(report: ToleranceReport, design: Design, all = false): string[] {
  return [
    ...(report.placingNote === undefined ? [] : [report.placingNote]),
    ...mouthWords(report, design),
    "",
    ...(all ? detailLines(report, design) : [...resultRows(report, design), "", ...briefLines(report)]),
  ];
}

function detailLines(report: ToleranceReport, design: Design): string[] {
  return [
    ...report.results.flatMap((result) => [...resultLines(result, report, design), ""]),
    ...trialWords(report, design),
    "",
    ...TOLERANCE_NOTES,
  ];
}

/** A row for each result: planned, how far off, and the step with the largest share. */
function resultRows({ results }: ToleranceReport, design: Design): string[] {
  const { units } = design;
  const cells = results.map((result) => {
    const planned = formatBareLength(result.planned, design);
    if ("undefinedBecause" in result)
      return [result.label, planned, "", TOLERANCE.noDerivative({ because: result.undefinedBecause })];
    const step = result.steps.toSorted((a, b) => b.share - a.share)[0];
    const decides = step ? TOLERANCE.shared({ step: step.step, share: percentText(step.share) }) : "";
    return [result.label, planned, plusMinusText(result.within, units), decides];
  });
  return alignCells([["", TOLERANCE.heads({ units }), TOLERANCE.withinHead, TOLERANCE.stepHead], ...cells]);
}

function briefLines({ results, trial }: ToleranceReport): string[] {
  const assumed = results.flatMap((result) => ("assumptions" in result ? result.assumptions : []));
  const distinct = [...new Map(assumed.map((assumption) => [assumption.parameter, assumption])).values()];
  const [closed, tooLate, collide] = [trial.closed, trial.tooLate, trial.collide].map(percentText) as [
    string,
    string,
    string,
  ];
  return [
    TOLERANCE.triedBriefly({ runs: trial.runs, closed, tooLate, collide }),
    ...(distinct.length === 0
      ? []
      : [
          TOLERANCE.assumedBriefly({
            labels: distinct.map(({ label }) => label),
            parameters: distinct.map(({ parameter }) => parameter),
          }),
        ]),
  ];
}

/** The maker's question: how wide the mouth will be, which step decides, how well it must be done, what a second try leaves. */
export function mouthWords(report: ToleranceReport, design: Design): string[] {
  const { units } = design;
  const { mouth, placing } = report;
  const result = report.results.find(({ key }) => key === "mouthOpening") as ResultTolerance;
  const planned = formatLength(result.planned, design);
  if (!result.deciding) return [TOLERANCE.exact({ planned })];
  const { label, step, share, tolerance, unit } = result.deciding;
  const { allowance, placedOtherwise } = mouth;
  const to = placing === "contact" ? "marks" : "contact";
  return [
    TOLERANCE.mouth({
      planned,
      within: plusMinusText(result.within, units),
      allowance: formatLength(allowance, design),
    }),
    TOLERANCE.deciding({ step, label, held: heldText(tolerance, unit, units), share: percentText(share) }),
    neededWords(report, result.deciding, units),
    ...(placedOtherwise === undefined
      ? []
      : [TOLERANCE.otherPlacing({ to, within: plusMinusText(placedOtherwise, units) })]),
    repeatWords(report, design, result.within),
  ];
}

function neededWords({ mouth, ...report }: ToleranceReport, line: BudgetLine, units: Units): string {
  const { label, tolerance, unit } = line;
  const { needed } = mouth;
  const target = plusMinusText(mouth.target, units);
  const result = report.results.find(({ key }) => key === "mouthOpening") as ResultTolerance;
  if (needed?.tolerance === undefined) {
    return TOLERANCE.notEnough({ target, label, percent: formatDecimal((needed?.allTimes ?? 1) * 100, 0) });
  }
  const asNeeded = heldText(needed.tolerance, unit, units);
  return result.within <= mouth.target
    ? TOLERANCE.alreadyWithin({ target, label, needed: asNeeded, held: heldText(tolerance, unit, units) })
    : TOLERANCE.needed({ target, label, needed: asNeeded });
}

function repeatWords({ mouth }: ToleranceReport, design: Design, mouthWithin: number): string {
  const { allowance, afterRepeat, stopShort, mouthGrowth } = mouth;
  const within = plusMinusText(afterRepeat.within, design.units);
  const short = formatLength(stopShort, design);
  return stopShort < mouthWithin / mouthGrowth
    ? TOLERANCE.tooLittle({ within, allowance: formatLength(allowance, design) })
    : TOLERANCE.repeat({ within, short, growth: formatDecimal(mouthGrowth, 2) });
}

function resultLines(result: ResultTolerance | NoTolerance, { trial }: ToleranceReport, design: Design): string[] {
  const { units } = design;
  const { low, middle, high, deviation } = trial.results[result.key];
  const text = (mm: number) => formatLength(mm, design);
  const runs = `  ${TOLERANCE.runs({ low: text(low), high: text(high), middle: text(middle), deviation: text(deviation) })}`;
  const head = `${result.label}: ${text(result.planned)}`;
  if ("undefinedBecause" in result)
    return [`${head}; ${TOLERANCE.noDerivative({ because: result.undefinedBecause })}`, runs];
  const worst = TOLERANCE.worst({ worst: plusMinusText(result.worst, units) });
  return [
    `${head} ${plusMinusText(result.within, units)}; ${worst}`,
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
  return alignCells(cells).map((line) => `  ${line}`);
}

/** A sentence for each assumption that the result rests on. */
const assumptionLines = ({ assumptions }: Pick<ResultTolerance, "assumptions">, units: Units): string[] =>
  assumptions.map(({ label, parameter, tolerance, unit, share, withinAtHalf, withinAtDouble }) => {
    const held = heldText(tolerance, unit, units);
    const [half, double] = [plusMinusText(withinAtHalf, units), plusMinusText(withinAtDouble, units)];
    return `  ${TOLERANCE.assumed({ label, held, share: percentText(share), half, double, parameter })}`;
  });

/** The same in short, beside a plot; empty where the result rests on none. */
export const assumptionCaption = ({ assumptions }: Pick<ResultTolerance, "assumptions">, units: Units): string =>
  assumptions
    .map(({ label, withinAtHalf, withinAtDouble }) => {
      const [half, double] = [plusMinusText(withinAtHalf, units), plusMinusText(withinAtDouble, units)];
      return ` ${TOLERANCE.assumedShort({ label, half, double })}`;
    })
    .join("");

function trialWords({ trial }: ToleranceReport, design: Design): string[] {
  const { low, high } = trial.mouthAfterRepeat;
  const shares = [
    [trial.collide, TOLERANCE.collide],
    [trial.closed, TOLERANCE.closed],
    [trial.tooLate, TOLERANCE.tooLate],
  ] as const;
  return [
    TOLERANCE.trial({ runs: trial.runs, seed: trial.seed }),
    ...shares.map(([share, words]) => `  ${percentText(share)} ${words}`),
    `  ${TOLERANCE.afterRepeat({ low: formatLength(low, design), high: formatLength(high, design) })}`,
  ];
}

function alignCells(cells: readonly (readonly string[])[]): string[] {
  const widths = [0, 1, 2, 3].map((k) => Math.max(0, ...cells.map((row) => row[k]!.length)));
  return cells.map((row) =>
    row
      .map((cell, k) => cell.padEnd(widths[k] ?? 0))
      .join("  ")
      .trimEnd(),
  );
}

const effectText = (mm: number, units: Units): string => {
  const least = units === "mm" ? 0.01 : 0.001;
  return fromMillimetres(mm, units) < least / 2 ? TOLERANCE.under({ least, unit: units }) : plusMinusText(mm, units);
};
/** In decimals, since no rule is read to it. */
const plusMinusText = (mm: number, units: Units): string =>
  `±${formatDecimalLength(mm, { units, decimals: { mm: 2, in: 3 }, fixed: units === "in" })}`;
const heldText = (tolerance: number, unit: string, units: Units): string =>
  unit === "mm" ? plusMinusText(tolerance, units) : `±${formatDecimal(tolerance, 2)}${unit}`;
const percentText = (share: number): string => formatPercent(share, share * 100 < 10 ? 1 : 0, 0.001);
