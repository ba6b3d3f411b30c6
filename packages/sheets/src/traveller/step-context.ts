// Numbers in the maker's words: each figure knows which way it is safe to round, and is told with what it was planned to be.
import {
  BENCH_FIGURES,
  type BenchFigureKey,
  expectedValue,
  formatMeasuredValue,
  isSignificant,
  MEASURED_ROWS,
  measuredUnit,
  planeBeforeStep,
  plannedPlane,
  readingMode,
  STEPS,
  type Step,
  stepIndex,
  stepsDone,
  wantedText,
} from "@lamplane/bench";
import { BENCH_TOLERANCE } from "@lamplane/geometry";
import { rowAt } from "@lamplane/parameters/design";
import { type Elevation, FIGURES, type FigureKey, type FigureRow } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import {
  formatAngle,
  formatDecimal,
  formatDecimalLength,
  formatFineLength,
  formatOnRule,
  formatThousandths,
  formatValue,
  type RoundingDirection,
  roundToRule,
} from "@lamplane/parameters/units";
import type { Blank, StepNumber } from "./step.ts";

/** Everything that a step's words and pictures are made from. */
export interface StepContext {
  /** As it stands in the file, measured values and all. */
  readonly design: Design;
  /** The plane as it stands when the step begins. */
  readonly plane: Elevation;
  /** A length on the maker's rule, in a sentence. */
  readonly mm: (lengthRow: number, way?: RoundingDirection) => string;
  /** A length finer than a rule shows. */
  readonly fine: (lengthRow: number) => string;
  /** Of one length gained for another taken off, each in the maker's fine unit. */
  readonly perFine: string;
  readonly deg: (angle: number) => string;
  /** A length beside a dimension: bare mm in a metric design. */
  readonly ruled: (lengthRow: number, way?: RoundingDirection) => string;
  readonly figure: (key: FigureKey) => number;
  readonly figureRow: (key: FigureKey | BenchFigureKey, label?: string) => StepNumber[];
  readonly lengthRow: (label: string, value: number, way?: RoundingDirection) => StepNumber;
  readonly fineRow: (label: string, value: number) => StepNumber;
  /** From one length to another, in the maker's unit alone. */
  readonly range: (least: number, most: number) => string;
}

export function stepContext(design: Design, step: Step): StepContext {
  const plane = planeBeforeStep(design, step);
  const plan = plannedPlane(design);
  const { units, shop } = design;
  const { smallestFraction } = shop;
  const figure = (key: FigureKey) => (FIGURES[key].of as FigureRow["of"])(plane) ?? Number.NaN;
  const row = (key: FigureKey | BenchFigureKey, label?: string): StepNumber[] => {
    const row: FigureRow = { ...FIGURES, ...BENCH_FIGURES }[key];
    const value = row.of(plane);
    if (value === undefined) return [];
    const before = row.of(plan);
    const cells = (v: number) => figureCells(design, key, row.unit, v);
    const moved = before !== undefined && key in FIGURES && isSignificant(key, row.unit, value - before);
    return [{ label: label ?? shortHelp(row.help), ...cells(value), ...(moved ? { was: cells(before).value } : {}) }];
  };
  return {
    design,
    plane,
    mm: (value, rounding) => formatOnRule(value, { units, smallestFraction, rounding, smallInThousandths: false }),
    fine: (value) => formatFineLength(value, units),
    perFine: units === "mm" ? "for each mm off the sole, by mm" : "for each thousandth off the sole, by thousandths",
    deg: (angle) => formatAngle(angle),
    ruled: (value, rounding) => formatOnRule(value, { units, smallestFraction, rounding, caliper: "none", bare: true }),
    figure,
    figureRow: row,
    fineRow: (label, value) => ({ label, ...fineCells(design, value) }),
    range: (least, most) => {
      const format = { units, decimals: { mm: 2, in: 3 } };
      return `${formatDecimalLength(least, { ...format, bare: true })} to ${formatDecimalLength(most, format)}`;
    },
    lengthRow: (label, value, way = "nearest") => ({ label, ...lengthCells(design, value, way) }),
  };
}

/** A figure's cells: on the rule, finer, or as its unit is told everywhere. */
function figureCells(design: Design, key: string, unit: string, value: number): Omit<StepNumber, "label"> {
  if (unit !== "mm") return { value: formatValue(value, unit, design.units, design.shop.smallestFraction) };
  const way = readingMode(key);
  if (way === "fine") return fineCells(design, value);
  return lengthCells(design, value, way);
}

/** A length finer than a rule shows: thousandths of an inch, or hundredths of a mm. */
function fineCells({ units }: Design, value: number): Omit<StepNumber, "label"> {
  if (units === "mm") return { value: formatFineLength(value, units) };
  return { value: formatFineLength(value, units).replace(/ \(.*/, ""), exact: formatFineLength(value, "mm") };
}

function lengthCells({ units, shop }: Design, value: number, way: RoundingDirection): Omit<StepNumber, "label"> {
  const { text, over } = roundToRule(value, units, shop.smallestFraction, way);
  const felt = Math.abs(over) > BENCH_TOLERANCE / 2;
  return {
    value: text,
    ...(felt ? { caliper: formatThousandths(value) } : {}),
    ...(units === "in" ? { exact: `${formatDecimal(value, 2)} mm` } : {}),
  };
}

const shortHelp = (help: string): string => help.replace(/\.$/, "").replace(/\. Indicative$/, " (indicative)");

/** Blanks of a step, each with what is expected there and, where it is measured already, what came out. */
export const stepBlanks = (design: Design, step: Step): Blank[] =>
  STEPS[step].measures.flatMap((key) => {
    const expected = expectedValue(design, key);
    if (expected === undefined) return [];
    const measured = design.measured[key];
    const { times } = MEASURED_ROWS[key];
    const format = (value: number) => formatMeasuredValue(design, value, measuredUnit(key));
    return [
      {
        key,
        label: shortHelp(rowAt(`measured.${key}`).help),
        expected: wantedText(design, key) ?? format(expected),
        ...(times === undefined ? {} : { times }),
        ...(measured === undefined ? {} : { measured: format(measured) }),
      },
    ];
  });

export const isDone = (design: Design, step: Step): boolean => stepIndex(step) < stepsDone(design);
