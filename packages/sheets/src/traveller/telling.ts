// Numbers in the maker's words: each figure knows which way it is safe to round, and is told with what it was planned to be.
import {
  BENCH_FIGURES,
  type BenchFigureKey,
  expectedOf,
  isWorthAWord,
  MEASURED,
  type MeasuredKey,
  measuredTold,
  planeAt,
  planned,
  readOf,
  STEPS,
  type Step,
  stepPlace,
  stepsDone,
  wantedText,
} from "@lamplane/bench";
import { SHOP } from "@lamplane/geometry";
import { rowAt } from "@lamplane/parameters/design";
import { type Elevation, elevation, FIGURES, type FigureKey, type FigureRow } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import { fineText, inUnits, onRule, type SafeWay, thousandths, trimmed, valueText } from "@lamplane/parameters/units";
import type { Blank, NumberRow } from "./step.ts";

/** Everything that a step's words and pictures are made from. */
export interface Telling {
  /** As it stands in the file, measured values and all. */
  readonly design: Design;
  /** The plane as it stands when the step begins. */
  readonly plane: Elevation;
  /** A length on the maker's rule, in a sentence. */
  readonly mm: (length: number, way?: SafeWay) => string;
  /** A length finer than a rule shows. */
  readonly fine: (length: number) => string;
  /** Of one length gained for another taken off, each in the maker's fine unit. */
  readonly perFine: string;
  readonly deg: (angle: number) => string;
  /** A length beside a dimension: bare mm in a metric design. */
  readonly ruled: (length: number, way?: SafeWay) => string;
  readonly figure: (key: FigureKey) => number;
  readonly row: (key: FigureKey | BenchFigureKey, label?: string) => NumberRow[];
  readonly length: (label: string, value: number, way?: SafeWay) => NumberRow;
  readonly thin: (label: string, value: number) => NumberRow;
  /** From one length to another, in the maker's unit alone. */
  readonly range: (least: number, most: number) => string;
}

export function telling(design: Design, step: Step): Telling {
  const plane = planeAt(design, step);
  const plan = elevation(planned(design));
  const { units, shop } = design;
  const read = (value: number, way: SafeWay) => onRule(value, units, shop.smallestFraction, way);
  const mm = (value: number, way: SafeWay = "nearest") => {
    const { text, over } = read(value, way);
    return Math.abs(over) > SHOP / 2 ? `${text} (${thousandths(value)})` : text;
  };
  const figure = (key: FigureKey) => (FIGURES[key].of as FigureRow["of"])(plane) ?? Number.NaN;
  const row = (key: FigureKey | BenchFigureKey, label?: string): NumberRow[] => {
    const told: FigureRow = { ...FIGURES, ...BENCH_FIGURES }[key];
    const value = told.of(plane);
    if (value === undefined) return [];
    const before = told.of(plan);
    const shown = (v: number) => figureText(design, key, told.unit, v);
    const moved = before !== undefined && key in FIGURES && isWorthAWord(key, told.unit, value - before);
    return [{ label: label ?? bare(told.help), ...shown(value), ...(moved ? { was: shown(before).value } : {}) }];
  };
  return {
    design,
    plane,
    mm,
    fine: (value) => fineText(value, units),
    perFine: units === "mm" ? "for each mm off the sole, by mm" : "for each thousandth off the sole, by thousandths",
    deg: (angle) => `${trimmed(angle, 2)}°`,
    ruled: (value, way = "nearest") => (units === "mm" ? trimmed(value, 2) : read(value, way).text),
    figure,
    row,
    thin: (label, value) => ({ label, ...fineCells(design, value) }),
    range: (least, most) => {
      const shown = (value: number) => trimmed(inUnits(value, units), units === "mm" ? 2 : 3);
      return `${shown(least)} to ${shown(most)} ${units}`;
    },
    length: (label, value, way = "nearest") => ({ label, ...lengthCells(design, value, way) }),
  };
}

/** A figure's cells: on the rule, finer, or as its unit is told everywhere. */
function figureText(design: Design, key: string, unit: string, value: number): Omit<NumberRow, "label"> {
  if (unit !== "mm") return { value: valueText(value, unit, design.units, design.shop.smallestFraction) };
  const way = readOf(key);
  if (way === "fine") return fineCells(design, value);
  return lengthCells(design, value, way);
}

/** A length finer than a rule shows: thousandths of an inch, or hundredths of a mm. */
function fineCells({ units }: Design, value: number): Omit<NumberRow, "label"> {
  if (units === "mm") return { value: fineText(value, units) };
  return { value: fineText(value, units).replace(/ \(.*/, ""), exact: fineText(value, "mm") };
}

function lengthCells({ units, shop }: Design, value: number, way: SafeWay): Omit<NumberRow, "label"> {
  const { text, over } = onRule(value, units, shop.smallestFraction, way);
  const felt = Math.abs(over) > SHOP / 2;
  return {
    value: text,
    ...(felt ? { caliper: thousandths(value) } : {}),
    ...(units === "in" ? { exact: `${trimmed(value, 2)} mm` } : {}),
  };
}

const bare = (help: string): string => help.replace(/\.$/, "").replace(/\. Indicative$/, " (indicative)");

/** How often a value is read before its step is done, where that is more than once. */
export type Times = Readonly<Partial<Record<MeasuredKey, number>>>;

/** Blanks of a step, each with what is expected there and, where it is measured already, what came out. */
export const blanksOf = (design: Design, step: Step, times: Times = {}): Blank[] =>
  STEPS[step].measures.flatMap((key) => {
    const expected = expectedOf(design, key);
    if (expected === undefined) return [];
    const measured = design.measured[key];
    const shown = (value: number) => measuredTold(design, value, MEASURED[key].unit);
    return [
      {
        key,
        label: bare(rowAt(`measured.${key}`).help),
        expected: wantedText(design, key) ?? shown(expected),
        ...(times[key] === undefined ? {} : { times: times[key] }),
        ...(measured === undefined ? {} : { measured: shown(measured) }),
      },
    ];
  });

export const isDone = (design: Design, step: Step): boolean => stepPlace(step) < stepsDone(design);
