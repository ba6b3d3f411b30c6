// Whether each jig can be made, and whether the maker's printer holds it; no jig keeps a plane from being built.
import type { Elevation } from "@lamplane/parameters/elevation";
import { jigPlans, jigsLeftOut, overPrinter, printedSize } from "@lamplane/parameters/jigs";
import { valueText } from "@lamplane/parameters/units";
import { type Draft, GEOMETRY } from "./draft.ts";

const PRINTER = ["shop.printer.width", "shop.printer.depth", "shop.printer.height"];

/** Jigs too large for the printer, and those left out. The plane must be one that nothing else stops. */
export function checkJigs(plane: Elevation): Draft[] {
  return [...jigPlans(plane).map((plan) => printable(plane, plan)), ...leftOut(plane)];
}

function printable(plane: Elevation, plan: ReturnType<typeof jigPlans>[number]): Draft {
  const over = overPrinter(plan, plane.design);
  const { x, y, z } = printedSize(plan);
  const { width, depth, height } = plane.design.shop.printer;
  const cut = plan.drawing ? `Cut it from sheet by jigs/${plan.name}.dxf, or have` : "Have";
  return {
    code: `${plan.name}-printer`,
    severity: over > 0 ? "warning" : "passed",
    parameters: PRINTER,
    value: over,
    limit: 0,
    unit: "mm",
    message: `The ${plan.name} is ${[x, y, z].map((side) => shown(plane, side)).join(" × ")} as it is printed; at most the printer's ${[width, depth, height].map((side) => shown(plane, side)).join(" × ")} is wanted.${over > 0 ? ` ${cut} it printed on a larger one.` : ""}`,
    place: "heel",
    mends: [],
    source: GEOMETRY,
  };
}

const leftOut = (plane: Elevation): Draft[] =>
  jigsLeftOut(plane).map(({ name, what, value, limit, unit, parameters, advice }) => ({
    code: `${name}-left-out`,
    severity: "note",
    parameters,
    value,
    limit,
    unit,
    message: `${what} is ${shown(plane, value, unit)}${value === limit ? "" : `; at least ${shown(plane, limit, unit)} is wanted`}, so there is no ${name}. ${advice}`,
    place: "bedTop",
    mends: [],
    source: GEOMETRY,
  }));

const shown = ({ design }: Elevation, value: number, unit: "mm" | "°" = "mm"): string =>
  valueText(value, unit, design.units, design.shop.smallestFraction);
