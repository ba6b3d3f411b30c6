// What stands before the first step: key figures, tools, and the stock list as a table.
import type { StockPlan } from "@lamplane/bench";
import type { Elevation } from "@lamplane/parameters/elevation";
import { formatBareLength, formatDrill } from "@lamplane/parameters/units";
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
    t.lengthRow("Length", design.body.length),
    ...t.figureRow("bodyHeight", "Height"),
    ...t.figureRow("bodyWidth", "Width"),
    ...t.figureRow("bedAngle", "Bed"),
    ...t.figureRow("faceAngle", "Iron's face"),
    { label: ramp.curve ? "Ramp's wear" : "Ramp", value: t.deg(ramp.angle) },
    ...t.figureRow("mouthX", "Edge from the toe"),
    ...t.figureRow("mouthOpening", "Mouth wanted"),
    ...t.figureRow("mouthGrowth", `Mouth opens, ${t.perFine}`),
    ...t.figureRow("soleToTake", "Sole still to take off"),
    ...t.figureRow("coreWidth", "Core"),
    t.lengthRow("Each cheek", t.plane.widths.cheek),
    ...t.figureRow("wedgeAngle", "Wedge"),
    t.lengthRow("Cross pin", t.plane.pinSize.diameter),
    ...t.figureRow("pinToRamp", "Room from pin to ramp"),
  ];
}

/** What must be at hand before the first step. */
export function toolsFor(plane: Elevation, t: StepContext): string[] {
  const { design, recess } = plane;
  return [
    "rule, caliper, square, bevel or protractor, straightedge, winding sticks, feeler leaves, pencil and knife",
    `saw for ripping; mitre saw, bandsaw or handsaw for the two cuts (kerf entered as ${t.mm(design.shop.kerf)})`,
    "bench plane and block plane, sharp; scraper, rasp or spokeshave",
    ...(recess ? [`router with a cutter ⌀ ${t.mm(design.recess.cutter)}, or chisels`] : []),
    `drill ⌀ ${formatDrill(2 * plane.pinHole.radius, design)}${design.pegs.perEnd > 0 ? ` and ⌀ ${t.mm(design.pegs.diameter)}` : ""}, square to the table`,
    "six clamps or more with cauls, glue, wax, oil, a small hammer",
    "eye, ear and dust protection as the machine's manual asks",
  ];
}

/** Every piece, rough and finished. */
export function stockTable(t: StepContext, { list }: StockPlan): StockTable {
  type Size = (typeof list.rows)[number]["rough"];
  const size = (of: Size) =>
    (["length", "width", "thickness"] as const).map((side) => formatBareLength(of[side], t.design)).join(" × ");
  return {
    head: ["Piece", "No.", "Rough, no less", "Finished", "From", "Wood", "Grain"],
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
