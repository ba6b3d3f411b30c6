// What stands before the first step: key figures, tools, and the stock list as a table.
import type { StockPlan } from "@lamplane/bench";
import type { Elevation } from "@lamplane/parameters/elevation";
import { formatBareLength, formatDrill } from "@lamplane/parameters/units";
import { KEY_FIGURES, STOCK_HEAD, TOOLS } from "../words/front.ts";
import type { StepNumber } from "./step.ts";
import type { StepContext } from "./step-context.ts";

export interface StockTable {
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** The figures that tell this plane from another. */
export function keyFigures(t: StepContext): StepNumber[] {
  const { design, ramp } = t.plane;
  return [
    t.lengthRow(KEY_FIGURES.length, design.body.length),
    ...t.figureRow("bodyHeight", KEY_FIGURES.height),
    ...t.figureRow("bodyWidth", KEY_FIGURES.width),
    ...t.figureRow("bedAngle", KEY_FIGURES.bed),
    ...(t.plane.frame.faceAngle === t.plane.frame.bedAngle ? [] : t.figureRow("faceAngle", KEY_FIGURES.face)),
    { label: ramp.curve ? KEY_FIGURES.wear : KEY_FIGURES.ramp, value: t.deg(ramp.angle) },
    ...t.figureRow("mouthX", KEY_FIGURES.edge),
    ...t.figureRow("mouthOpening", KEY_FIGURES.mouth),
    ...t.figureRow("soleToTake", KEY_FIGURES.soleToTake),
  ];
}

/** What must be at hand before the first step. */
export function toolsFor(plane: Elevation, t: StepContext): string[] {
  const { design, recess } = plane;
  return [
    TOOLS.measuring,
    TOOLS.saws({ kerf: t.mm(design.shop.kerf) }),
    TOOLS.planes,
    ...(recess?.madeBy === "router" ? [TOOLS.router({ cutter: t.mm(design.recess.cutter) })] : []),
    TOOLS.drills({
      pin: formatDrill(2 * plane.pinHole.radius, design),
      peg: design.pegs.perEnd > 0 ? formatDrill(design.pegs.diameter, design) : undefined,
    }),
    TOOLS.glueUp,
    TOOLS.protection,
  ];
}

/** Every piece, rough and finished. */
export function stockTable(t: StepContext, { list }: StockPlan): StockTable {
  type Size = (typeof list.rows)[number]["rough"];
  const size = (of: Size) =>
    (["length", "width", "thickness"] as const).map((side) => formatBareLength(of[side], t.design)).join(" × ");
  return {
    head: STOCK_HEAD,
    rows: list.rows.map((row) => [
      row.piece,
      String(row.count),
      size(row.rough),
      size(row.finished),
      row.from,
      row.species,
      row.grain,
    ]),
  };
}
