// How thick a jig cut from sheet may be, and which of the shop's plates makes it: one, or a few glued face to face.
import { parseLengths } from "../design/lengths.ts";
import type { Drawing } from "../drawings/drawing.ts";
import type { Design, Sheet } from "../table/index.ts";
import { formatLength } from "../units.ts";
import { JIG } from "../words/jigs.ts";
import type { JigPlan } from "./jig.ts";
import { noteEntry } from "./lines.ts";

/** Thickness that serves a jig, and the best, mm. */
export interface PlateRange {
  readonly least: number;
  readonly best: number;
  readonly most: number;
}

/** So many plates of one thickness, mm, glued face to face. */
export interface PlateChoice {
  readonly thickness: number;
  readonly layers: number;
}

/** More plates than these are not glued to one. */
const MOST_LAYERS = 6;

/** A sheet's thickness by the caliper, mm. */
export const sheetThickness = ({ thickness, measured }: Sheet): number => (measured === "auto" ? thickness : measured);

/** Thicknesses that jigs are cut from, mm; undefined where the shop names none. */
export function plateThicknesses({ jigs, sheets }: Design): readonly number[] | undefined {
  const given = parseLengths(jigs.plate) ?? sheets.filter(({ material }) => material === "ply").map(sheetThickness);
  return given.length > 0 ? given : undefined;
}

/** The fewest plates that make a thickness that serves, of those the nearest to the best; undefined where none does. */
export function choosePlate({ least, best, most }: PlateRange, plates: readonly number[]): PlateChoice | undefined {
  const choices = plates.flatMap((thickness) =>
    Array.from({ length: MOST_LAYERS }, (_, i): PlateChoice => ({ thickness, layers: i + 1 })),
  );
  const off = ({ thickness, layers }: PlateChoice): number => Math.abs(layers * thickness - best);
  return choices
    .filter(({ thickness, layers }) => layers * thickness >= least - 1e-9 && layers * thickness <= most + 1e-9)
    .toSorted((a, b) => a.layers - b.layers || off(a) - off(b) || a.thickness - b.thickness)[0];
}

/** The plate that a jig of this design is cut from; undefined where the shop names none, or none serves. */
export function plateOf(range: PlateRange, design: Design): PlateChoice | undefined {
  const plates = plateThicknesses(design);
  return plates && choosePlate(range, plates);
}

/** Of a jig made of plates, mm. */
export const plateTotal = ({ thickness, layers }: PlateChoice): number => thickness * layers;

/** The plan with the plate that its sheet form is cut from, where the shop names plates. */
export function withPlate(plan: JigPlan, design: Design): JigPlan {
  const { plateRange } = plan;
  if (!plateThicknesses(design) || !plateRange) return plan;
  const plate = plateOf(plateRange, design);
  const mm = (value: number) => formatLength(value, design);
  if (!plate) {
    const none = JIG.noPlate({ least: mm(plateRange.least), most: mm(plateRange.most) });
    return { ...plan, printed: `${plan.printed} ${none}` };
  }
  const words = JIG.plate({ layers: plate.layers, thick: mm(plate.thickness) });
  return { ...plan, plate, printed: `${plan.printed} ${words}`, drawing: drawingOnPlate(plan.drawing!, plate, words) };
}

function drawingOnPlate(drawing: Drawing, { thickness }: PlateChoice, words: string): Drawing {
  const first = drawing.entries.find((entry) => entry.kind === "note");
  if (!first) return { ...drawing, thickness };
  const { at } = first;
  return { ...drawing, thickness, entries: [...drawing.entries, noteEntry(words, { x: at.x, y: at.y - 5 })] };
}
