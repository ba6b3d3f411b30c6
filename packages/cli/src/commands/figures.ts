// `lamplane figures`: every figure with its key, value and name; `all` adds formula and source.
import { figuresAsBuilt, STRENGTH_CAUTION } from "@lamplane/bench";
import type { Design } from "@lamplane/parameters/table";
import { formatValue } from "@lamplane/parameters/units";
import { EXIT, type Exit, type Io } from "../io.ts";
import { alignColumns } from "../text.ts";

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
    const rows = found.map(({ key, name, value, unit, formula, source }) => [
      key,
      formatValue(value, unit, design),
      name,
      ...(all ? [formula, source] : []),
    ]);
    io.out(`${alignColumns(rows)}\n\n${STRENGTH_CAUTION}\n`);
  }
  return EXIT.done;
}
