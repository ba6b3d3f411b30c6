// `lamplane figures`: every figure with its key, value and name; `all` adds formula and source.
import { figuresAsBuilt, formatFigure, STRENGTH_CAUTION } from "@lamplane/bench";
import type { Design } from "@lamplane/parameters/table";
import { EXIT, type Exit, type Io } from "../io.ts";
import { alignWithText, breakText, WIDEST } from "../text.ts";
import { FIGURE_ROW } from "../words/reports.ts";

export interface FiguresOptions {
  readonly json: boolean;
  /** Formulas and sources too. */
  readonly all: boolean;
}

export function figuresCommand(io: Io, design: Design, { json, all }: FiguresOptions): Exit {
  const found = figuresAsBuilt(design);
  if (json) {
    const keyed = Object.fromEntries(found.map(({ key, ...figure }) => [key, figure]));
    io.out(`${JSON.stringify({ name: design.name, caution: STRENGTH_CAUTION, figures: keyed }, null, 2)}\n`);
  } else {
    const rows = alignWithText(
      found.map(({ key, name, value, unit }) => [key, formatFigure(design, key, value, unit), name]),
    );
    const lines = rows.flatMap((row, i) => (all ? [...row, ...originLines(found[i]!)] : row));
    io.out(`${[...lines, "", ...breakText(STRENGTH_CAUTION)].join("\n")}\n`);
  }
  return EXIT.done;
}

const INDENT = "    ";

/** Formula and source, below the figure. */
const originLines = (figure: { readonly formula: string; readonly source: string }): string[] =>
  breakText(FIGURE_ROW.origin(figure), WIDEST - INDENT.length).map((line) => INDENT + line);
