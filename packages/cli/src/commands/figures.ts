// `lamplane figures`: every figure with its unit, formula and source.

import { figuresAsBuilt, STRENGTH_CAUTION } from "@lamplane/bench";
import type { Design } from "@lamplane/parameters/table";
import { formatValue } from "@lamplane/parameters/units";
import { EXIT, type Exit, type Io } from "../io.ts";
import { alignColumns } from "../text.ts";

export function figuresCommand(io: Io, design: Design, json: boolean): Exit {
  const found = figuresAsBuilt(design);
  if (json) {
    const keyed = Object.fromEntries(found.map(({ key, ...figure }) => [key, figure]));
    io.out(`${JSON.stringify({ name: design.name, caution: STRENGTH_CAUTION, figures: keyed }, null, 2)}\n`);
  } else {
    const rows = found.map(({ key, value, unit, formula, source }) => [
      key,
      formatValue(value, unit, design),
      formula,
      source,
    ]);
    io.out(`${alignColumns([["figure", "value", "formula", "source"], ...rows])}\n\n${STRENGTH_CAUTION}\n`);
  }
  return EXIT.done;
}
