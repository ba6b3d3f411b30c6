// By how much the inner corners of flat jigs are cleared: the radius of the cutter that is to go into them, given or the shop's own.

import type { Design } from "../table/index.ts";
import { TABLE } from "../table/index.ts";
import { plateThicknesses } from "./plate.ts";

/** Radius of the relief in inner corners of flat jigs, mm; 0 leaves them sharp. */
export const cornerRelief = (design: Design): number =>
  design.jigs.relief === "auto" ? reliefOfCutters(design) : design.jigs.relief;

/**
 * The smallest relief that one of the shop's end mills clears, of those that cut through its thickest plate; 0 without router,
 * plates or such a mill. mm
 */
export function reliefOfCutters(design: Design): number {
  const { router, cutters } = design;
  const plates = plateThicknesses(design);
  if (router.area.width === 0 || !plates) return 0;
  const depth = Math.max(...plates) + router.through;
  const reliefs = cutters
    .filter(({ kind, cutting }) => kind === "end" && cutting >= depth)
    .map(({ diameter }) => clearedBy(diameter))
    .filter((relief) => relief <= TABLE.jigs.relief.max);
  return reliefs.length > 0 ? Math.min(...reliefs) : 0;
}

/** Relief that a cutter goes round without leaving wood: to the next tenth, half a tenth over its radius at least. mm */
export const clearedBy = (diameter: number): number => Math.ceil(5 * diameter + 0.5) / 10;
