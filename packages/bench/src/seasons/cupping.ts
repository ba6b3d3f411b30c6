// How a flat cups across the grain: rings are arcs, and wood moves more along them than square to them.
import { atan2Deg, cosDeg, sinDeg } from "@lamplane/geometry";

/** Relative changes square to the rings and along them. */
export interface RingStrains {
  readonly radial: number;
  readonly tangential: number;
}

const RADIANS_PER_DEGREE = Math.PI / 180;

/**
 * Cup of a flat of this width, mm: its middle off a straightedge over both its ends, above 0 where the middle comes nearer
 * to the pith. The rings have their centre `pith` mm from the flat's middle and make an angle with the flat there.
 *
 * A place at r and φ about the pith goes to r·(1 + ε_R) and φ·(1 + ε_T − ε_R): every ring grows by ε_T along itself and
 * every radius by ε_R, with no shear between them, so that nothing presses and the wood takes this shape by itself.
 * Off the flat, at h from the pith's own level, that is ε_R·h + (ε_T − ε_R)·z·φ.
 * @see polar strains: ε_φ = u_r/r + (∂u_φ/∂φ)/r, standard, from memory
 */
export function cup(width: number, { radial, tangential }: RingStrains, rings: number, pith: number): number {
  const height = pith * cosDeg(rings);
  const middle = -pith * sinDeg(rings);
  const turned = (z: number): number => (atan2Deg(middle, height) - atan2Deg(z, height)) * RADIANS_PER_DEGREE;
  const ends = [middle - width / 2, middle + width / 2];
  const offEnds = ends.reduce((sum, z) => sum + z * turned(z), 0) / ends.length;
  return (tangential - radial) * offEnds;
}
