// An iron whose face is not parallel to its back: its taper as entered or from two thicknesses, and how thick it is where.
import { atanDeg, tanDeg } from "@lamplane/geometry";
import type { Design } from "../table/index.ts";

/** How far apart the two places are at which the iron's thickness is measured, along it. mm. */
export const gaugeLength = ({ iron }: Design): number => topFromEdge({ iron }) - iron.thicknessFromEdge;

/** From the cutting edge up to where the thickness near the top is measured. mm. */
export const topFromEdge = ({ iron }: Pick<Design, "iron">): number =>
  iron.topFromEdge === "auto" ? iron.length : iron.topFromEdge;

/**
 * Angle from the iron's back to its face, above 0 where it is thicker at the edge, degrees: as entered, or with tan taper =
 * (t₁ − t₂) / distance. Two places in the wrong order make none; the checks say so.
 */
export function ironTaper(design: Design): number {
  const { taper, thickness, thicknessAtTop } = design.iron;
  if (taper !== "auto") return taper;
  const apart = gaugeLength(design);
  return thicknessAtTop === "auto" || apart <= 0 ? 0 : atanDeg((thickness - thicknessAtTop) / apart);
}

/** Thickness of the iron `s` up its back from under the cutting edge, square to its back. mm. */
export const thicknessAt = (design: Design, s: number): number =>
  design.iron.thickness + (design.iron.thicknessFromEdge - s) * tanDeg(ironTaper(design));

/** Angle of the bevel from the iron's back, degrees: it is ground at its own angle from the face. */
export const bevelToBack = (design: Design): number => design.iron.bevel + ironTaper(design);
