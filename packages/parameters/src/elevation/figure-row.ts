// What a figure is, in one row: its unit, formula and source, how it is read, when it is felt and when it is spent.
import { EPSILON } from "@lamplane/geometry";
import { PLANE_GEOMETRY, type Step } from "../table/index.ts";
import type { FigureWords } from "../words/figures.ts";
import type { Elevation } from "./elevation.ts";

/** Which way a figure may err without harm, up or down; that it is finer than a rule shows; or that it is the size of a drill. */
export type ReadingMode = "up" | "down" | "nearest" | "fine" | "drill";

export interface FigureRow extends FigureFormula {
  /** What a maker calls it, lower case, where prose names it. */
  readonly name: string;
  /** What it is, as a sentence. */
  readonly help: string;
}

/** How a figure is worked out and read; its words stand apart. */
export interface FigureFormula extends FigureUse {
  readonly unit: string;
  readonly formula: string;
  readonly source: string;
  /** Undefined where the design has no such thing (no recess). */
  readonly of: (e: Elevation) => number | undefined;
}

/** What a figure is to the maker. */
export interface FigureUse {
  /**
   * What is sawn or milled later is rounded up, what takes wood away for good is rounded down, the way that can still be
   * mended; a place on the wood is the nearest division, as is what has no mode; a hole has its drill's name.
   * Common practice, no published source.
   */
  readonly readingMode?: ReadingMode;
  /**
   * How far off it must be to be felt in the finished plane, where it is felt at all: rooms and outer sizes by half a
   * millimetre, the least that is seen without a rule, where a wedge sits by one, and a throat that narrows by a thick
   * shaving. Common practice, no published source.
   */
  readonly feltFrom?: number;
  /** Step after which it is spent: marks, settings of a saw, places at glue-up. Every plane has such a figure. */
  readonly spentAt?: Step;
}

/** A figure of one design. */
export interface Figure extends Pick<FigureRow, "name" | "unit" | "formula" | "help" | "source"> {
  readonly key: string;
  readonly value: number;
}

type RowExtra = FigureUse & Partial<Pick<FigureRow, "source">>;

const rowOf =
  (unit: string) =>
  <Of extends FigureRow["of"], const Extra extends RowExtra = RowExtra>(formula: string, of: Of, extra?: Extra) =>
    ({ unit, formula, source: PLANE_GEOMETRY, of, ...extra }) as Omit<FigureFormula, "of"> & {
      readonly of: Of;
    } & Extra;

export const mm = rowOf("mm");
export const degrees = rowOf("°");
export const ratio = rowOf("");
export const count = rowOf("");

type WithWords<Row> = Row & Pick<FigureRow, "name" | "help">;

/** Rows with the words of their keys. */
export const withWords = <Rows extends Readonly<Record<string, FigureFormula>>>(
  rows: Rows,
  words: Readonly<Record<keyof Rows, FigureWords>>,
): { readonly [Key in keyof Rows]: WithWords<Rows[Key]> } =>
  Object.fromEntries(
    Object.entries(rows).map(([key, row]) => [key, { name: words[key]![0], help: words[key]![1], ...row }]),
  ) as { readonly [Key in keyof Rows]: WithWords<Rows[Key]> };

/** The figures of an elevation by these rows, in their order; what is undefined is left out. */
export const evaluateFigures = (rows: Readonly<Record<string, FigureRow>>, e: Elevation): Figure[] =>
  Object.entries(rows).flatMap(([key, row]) => {
    const value = evaluateFigure(row, e);
    const { name, unit, formula, help, source } = row;
    return value === undefined ? [] : [{ key, name, value, unit, formula, help, source }];
  });

/** The value of one figure, without the noise of a sum that comes to nothing; undefined where the design has no such thing. */
export function evaluateFigure({ of }: FigureFormula, e: Elevation): number | undefined {
  const value = of(e);
  return value !== undefined && Math.abs(value) < EPSILON ** 2 ? 0 : value;
}
