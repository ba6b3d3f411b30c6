// Numbers in the maker's words: each figure knows which way it is safe to round, and comes with what it was planned to be.
import {
  BENCH_FIGURES,
  type BenchFigureKey,
  expectationText,
  expectedValue,
  formatFigure,
  isSignificant,
  isSignificantLength,
  MEASURED_ROWS,
  measuredUnit,
  oneWayText,
  planeBeforeStep,
  plannedPlane,
  readingMode,
  STEPS,
  type Step,
  stepIndex,
  stepsDone,
} from "@lamplane/bench";
import { rowAt } from "@lamplane/parameters/design";
import {
  type Elevation,
  FIGURES,
  type FigureKey,
  type FigureRow,
  type ReadingMode,
} from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import {
  formatAngle,
  formatBareLength,
  formatDecimalLength,
  formatDimension,
  formatLength,
  formatValue,
} from "@lamplane/parameters/units";
import type { Blank, StepNumber } from "./step.ts";

/** Everything that a step's words and pictures are made from. */
export interface StepContext {
  /** As it stands in the file, measured values and all. */
  readonly design: Design;
  /** The plane as it stands when the step begins. */
  readonly plane: Elevation;
  /** A length in a sentence. */
  readonly mm: (length: number) => string;
  readonly deg: (angle: number) => string;
  /** A length beside a dimension: bare mm in a metric design. */
  readonly ruled: (length: number) => string;
  readonly figure: (key: FigureKey) => number;
  readonly figureRow: (key: FigureKey | BenchFigureKey, label?: string) => StepNumber[];
  /** @param mode the way in which the length may err, which then stands behind it in words */
  readonly lengthRow: (label: string, value: number, mode?: ReadingMode) => StepNumber;
  /** A length of the plane that is no figure, with what it was planned to be. */
  readonly planeRow: (label: string, of: (plane: Elevation) => number, mode?: ReadingMode) => StepNumber;
  /** From one length to another, in the maker's unit alone. */
  readonly range: (least: number, most: number) => string;
  /** The same as a caliper reads it, in decimals of either unit. */
  readonly caliperRange: (least: number, most: number) => string;
}

/** A caliper's reading in decimals, without its unit. */
const caliperText = (length: number, units: Design["units"]): string =>
  formatDecimalLength(length, { units, decimals: { mm: 2, in: 3 }, fixed: units === "in", bare: true });

export function stepContext(design: Design, step: Step): StepContext {
  const plane = planeBeforeStep(design, step);
  const plan = plannedPlane(design);
  const { units } = design;
  const figure = (key: FigureKey) => (FIGURES[key].of as FigureRow["of"])(plane) ?? Number.NaN;
  const row = (key: FigureKey | BenchFigureKey, label?: string): StepNumber[] => {
    const row: FigureRow = { ...FIGURES, ...BENCH_FIGURES }[key];
    const value = row.of(plane);
    if (value === undefined) return [];
    const before = row.of(plan);
    const text = (v: number) => formatFigure(design, key, v, row.unit);
    const moved = before !== undefined && key in FIGURES && isSignificant(key, row.unit, value - before);
    return [
      {
        label: label ?? shortHelp(row.help),
        value: text(value) + oneWayText(readingMode(key)),
        ...(moved ? { was: text(before) } : {}),
      },
    ];
  };
  const lengthRow: StepContext["lengthRow"] = (label, value, mode = "nearest") => ({
    label,
    value: formatLength(value, design) + oneWayText(mode),
  });
  return {
    design,
    plane,
    mm: (value) => formatLength(value, design),
    deg: (angle) => formatAngle(angle),
    ruled: (value) => formatDimension(value, design),
    figure,
    figureRow: row,
    range: (least, most) => `${formatBareLength(least, design)} to ${formatLength(most, design)}`,
    caliperRange: (least, most) => `${caliperText(least, units)} to ${caliperText(most, units)} ${units}`,
    lengthRow,
    planeRow: (label, of, mode) => {
      const [value, before] = [of(plane), of(plan)];
      const moved = isSignificantLength(value - before);
      return { ...lengthRow(label, value, mode), ...(moved ? { was: formatLength(before, design) } : {}) };
    },
  };
}

/** Rows that are read again at the bench, each with a line to write on. */
export const readAgain = (...rows: readonly StepNumber[]): StepNumber[] =>
  rows.map((row) => ({ ...row, isRead: true }));

const shortHelp = (help: string): string => help.replace(/\.$/, "").replace(/\. Indicative$/, " (indicative)");

/** Blanks of a step, each with what is expected there and, where it is measured already, what came out. */
export const stepBlanks = (design: Design, step: Step): Blank[] =>
  STEPS[step].measures.flatMap((key) => {
    const expected = expectedValue(design, key);
    if (expected === undefined) return [];
    const measured = design.measured[key];
    const { times } = MEASURED_ROWS[key];
    const format = (value: number) => formatValue(value, measuredUnit(key), design);
    return [
      {
        key,
        label: shortHelp(rowAt(`measured.${key}`).help),
        expected: expectationText(design, key) ?? format(expected),
        ...(times === undefined ? {} : { times }),
        ...(measured === undefined ? {} : { measured: format(measured) }),
      },
    ];
  });

export const isDone = (design: Design, step: Step): boolean => stepIndex(step) < stepsDone(design);
