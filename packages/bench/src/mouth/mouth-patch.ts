// A slip of wood let into the sole before the mouth. It fades into the ramp at its top, so that no step catches a shaving.

import { atan2Deg, cotDeg } from "@lamplane/geometry";
import { type Elevation, rampXAt } from "@lamplane/parameters/elevation";
import { LIFE } from "./mouth-life.ts";

/** Lengths mm, angles degrees. */
export interface MouthPatch {
  /** Least thickness, square to the sole. */
  readonly thickness: number;
  /** Least length along the sole, from the mouth toward the toe. */
  readonly length: number;
  /** The front block's own, between the cheeks. */
  readonly width: number;
  /** Angle from the sole of the patch's end at the mouth. */
  readonly endAngle: number;
  /** How far the mouth opens for each mm taken off while the patch lasts. */
  readonly growth: number;
  /** Whether the front block is longer than the patch. */
  readonly fits: boolean;
}

/** Wood that must still lie over the glue when the sole has been trued as often as it will be, mm: an estimate. */
const HELD = 1;
/** Glued length for each mm of thickness: an estimate, that of a short scarf. */
const GLUED_PER_THICKNESS = 5;

/**
 * The least patch that brings the sole before the mouth `by` mm nearer to the edge. Its thickness is what later truings take
 * and what must still hold; its length is the ramp's run over that thickness, `by`, and the joint beyond.
 * @param off where the sole stands, mm above the trued sole as planned
 */
export function mouthPatch(plane: Elevation, off: number, by: number): MouthPatch {
  const thickness = LIFE.depth + HELD;
  const foot = rampXAt(plane.ramp, off);
  const run = by + foot - rampXAt(plane.ramp, off + thickness);
  const length = run + GLUED_PER_THICKNESS * thickness;
  return {
    thickness,
    length,
    width: plane.widths.core,
    endAngle: atan2Deg(thickness, run),
    growth: cotDeg(plane.frame.bedAngle) + run / thickness,
    fits: length < foot + by,
  };
}
