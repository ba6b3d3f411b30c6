// Whether each jig can be made, and whether the maker's printer holds it; no jig keeps a plane from being built.
import type { Elevation } from "@lamplane/parameters/elevation";
import { jigPlans, omittedJigs, printedSize, printerOverhang } from "@lamplane/parameters/jigs";
import { formatValue } from "@lamplane/parameters/units";
import { GEOMETRY, type Judgement } from "./judgement.ts";

const PRINTER = ["shop.printer.width", "shop.printer.depth", "shop.printer.height"];

/** Jigs too large for the printer, and those left out. The plane must be one that nothing else stops. */
export function checkJigs(plane: Elevation): Judgement[] {
  return [...jigPlans(plane).map((plan) => judgePrintSize(plane, plan)), ...noteOmittedJigs(plane)];
}

function judgePrintSize(plane: Elevation, plan: ReturnType<typeof jigPlans>[number]): Judgement {
  const over = printerOverhang(plan, plane.design);
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
    message: `The ${plan.name} is ${[x, y, z].map((side) => formatLimitValue(plane, side)).join(" × ")} as it is printed; at most the printer's ${[width, depth, height].map((side) => formatLimitValue(plane, side)).join(" × ")} is wanted.${over > 0 ? ` ${cut} it printed on a larger one.` : ""}`,
    place: "heel",
    remedies: [],
    source: GEOMETRY,
  };
}

const noteOmittedJigs = (plane: Elevation): Judgement[] =>
  omittedJigs(plane).map(({ name, what, value, limit, unit, parameters, advice }) => ({
    code: `${name}-left-out`,
    severity: "note",
    parameters,
    value,
    limit,
    unit,
    message: `${what} is ${formatLimitValue(plane, value, unit)}${value === limit ? "" : `; at least ${formatLimitValue(plane, limit, unit)} is wanted`}, so there is no ${name}. ${advice}`,
    place: "bedTop",
    remedies: [],
    source: GEOMETRY,
  }));

const formatLimitValue = ({ design }: Elevation, value: number, unit: "mm" | "°" = "mm"): string =>
  formatValue(value, unit, design.units, design.shop.smallestFraction);
