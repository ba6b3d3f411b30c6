// Pictures of a sweep, read off its table: a figure over the first number varied, a line for each value of the second.

import { rowAt } from "@lamplane/parameters/design";
import type { Design } from "@lamplane/parameters/table";
import { UNIT_OF } from "@lamplane/parameters/table";
import { formatDecimalLength, formatQuantity } from "@lamplane/parameters/units";
import { type Picture, type SweptLine, type SweptPoint, sweepPlot } from "@lamplane/sheets";
import { InputRefused } from "../io.ts";
import { SWEEP } from "../words/reports.ts";
import type { Sweep } from "./rows.ts";
import { countDesigns, type Variation, variationValues } from "./variation.ts";

/** Lines that one picture can tell apart. */
const MOST_LINES = 12;
/** Pictures of one sweep that anyone looks at. */
const MOST_PICTURES = 60;

/** What a figure is, for its plot. */
export interface PlottedFigure {
  readonly key: string;
  readonly unit: string;
  readonly help: string;
}

/** What runs along x, what tells the lines apart, and what is held in each picture. */
interface PlotRoles {
  readonly across: number;
  readonly lines: number | undefined;
  readonly fixed: readonly number[];
}

/** Which parameter goes where. @throws InputRefused where none is a number with two values, or the pictures would be too many */
export function assignPlotRoles({ variations, figures }: Sweep): PlotRoles {
  const several = variations.map((_, k) => k).filter((k) => variations[k]!.values.length > 1);
  const across = several.find((k) => variations[k]!.values.every((value) => typeof value === "number"));
  if (across === undefined) throw new InputRefused(SWEEP.needsNumbers);
  const [lines, ...held] = several.filter((k) => k !== across);
  const pictures = figures.length * held.reduce((product, k) => product * variations[k]!.values.length, 1);
  if (pictures > MOST_PICTURES) throw new InputRefused(SWEEP.tooManyPlots({ count: pictures, most: MOST_PICTURES }));
  return { across, lines, fixed: held };
}

/** The plots of a sweep's table. A figure that no two designs of a picture have gives none. */
export function sweepPictures(sweep: Sweep, table: string, descriptions: readonly PlottedFigure[]): Picture[] {
  const roles = assignPlotRoles(sweep);
  const rows = parseTableRows(sweep, table);
  return descriptions.flatMap((figure, k) =>
    [...groupBy(rows, ({ values }) => roles.fixed.map((h) => values[h]!)).values()].flatMap((group, i, all) => {
      const name = `sweep-${toKebabCase(figure.key)}${all.length > 1 ? `-${i + 1}` : ""}`;
      return makeSweepPlot(sweep, roles, { figure, name, column: k, rows: group }) ?? [];
    }),
  );
}

interface TableRow {
  readonly values: readonly (number | string)[];
  readonly figures: readonly (number | undefined)[];
  readonly stops: readonly string[];
}

/** The table's rows. Its last cells are numbers and codes, in which there is no comma; the values are known from their place. */
function parseTableRows({ variations, figures }: Sweep, table: string): TableRow[] {
  const lines = table.trimEnd().split("\r\n").slice(1);
  if (lines.length !== countDesigns(variations)) throw new Error(`a sweep's table has ${lines.length} rows`);
  return lines.map((line, index) => {
    const cells = line.split(",").slice(-(figures.length + 2));
    return {
      values: variationValues(variations, index),
      figures: figures.map((_, k) => (cells[k] === "" ? undefined : Number(cells[k]))),
      stops: cells.at(-2)!.split(" ").filter(Boolean),
    };
  });
}

interface SweepPlotRequest {
  readonly figure: PlottedFigure;
  readonly name: string;
  /** Which of the figures. */
  readonly column: number;
  readonly rows: readonly TableRow[];
}

function makeSweepPlot({ design, variations }: Sweep, { across, lines, fixed }: PlotRoles, asked: SweepPlotRequest) {
  const { figure, name, column, rows } = asked;
  const x = variations[across]!;
  const point = ({ values, figures, stops }: TableRow): SweptPoint => ({
    x: Number(values[across]),
    y: figures[column],
    stops,
  });
  const groups = groupBy(rows, ({ values }) => (lines === undefined ? [] : [values[lines]!]));
  const all = [...groups.values()].map(
    (group): SweptLine => ({
      label: lines === undefined ? "" : valueLabel(design, variations[lines]!, group[0]!.values[lines]!),
      points: group.map(point),
    }),
  );
  const drawn = sampleEvenly(all, MOST_LINES);
  return sweepPlot({
    name,
    title: plotTitle(design, figure, {
      by: lines === undefined ? "" : variations[lines]!.path,
      of: drawn.length < all.length ? SWEEP.someLines({ drawn: drawn.length, all: all.length }) : "",
      at: fixed
        .map((h) => `${variations[h]!.path} ${valueLabel(design, variations[h]!, rows[0]!.values[h]!)}`)
        .join(", "),
      dashed: drawn.some((line) => line.points.some(({ stops }) => stops.length > 0)),
    }),
    x: { label: x.path, unit: unitOfPath(x.path) },
    y: { label: figure.key, unit: figure.unit },
    lines: drawn,
    units: design.units,
  });
}

interface TitleWords {
  /** What tells the lines apart, how many of its values are shown, what is held. */
  readonly by: string;
  readonly of: string;
  readonly at: string;
  readonly dashed: boolean;
}

function plotTitle({ name }: Design, { help }: PlottedFigure, { by, of, at, dashed }: TitleWords): string {
  return SWEEP.caption({ name, help, by, of, at, dashed });
}

const unitOfPath = (path: string): string => {
  const row = rowAt(path);
  return row.kind === "number" ? UNIT_OF[row.quantity] : "";
};

/** A value as a plot tells it: in the maker's unit alone. */
function valueLabel({ units }: Design, { path }: Variation, value: number | string): string {
  if (typeof value === "string") return value;
  const unit = unitOfPath(path);
  if (unit === "mm") return formatDecimalLength(value, { units, decimals: { mm: 3, in: 4 } });
  return formatQuantity(value, unit, 4);
}

/** So many of a list, evenly over it, the first and the last among them. */
function sampleEvenly<T>(list: readonly T[], most: number): readonly T[] {
  if (list.length <= most) return list;
  return Array.from({ length: most }, (_, i) => list[Math.round((i * (list.length - 1)) / (most - 1))]!);
}

function groupBy<T>(list: readonly T[], key: (each: T) => readonly unknown[]): Map<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const each of list) {
    const name = JSON.stringify(key(each));
    const group = groups.get(name);
    if (group) group.push(each);
    else groups.set(name, [each]);
  }
  return groups;
}

const toKebabCase = (key: string): string => key.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
