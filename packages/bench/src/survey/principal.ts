// The two directions, square to each other, in which a bed curves most and least; signs as for a sagitta, hollow positive.
import { atan2Deg, cosDeg, sinDeg } from "@lamplane/geometry";
import type { Interval } from "@lamplane/geometry/numerics";
import type { BedCurvature } from "./curvature.ts";
import type { Direction } from "./direction.ts";
import type { Bed } from "./readings.ts";

export interface PrincipalDirection {
  /** From straight up the bed toward its right edge, degrees, over −90 up to 90. */
  readonly angle: number;
  /** Second derivative of the surface in this direction, 1/mm: positive hollow. */
  readonly curvature: number;
  /** Sagitta over the bed's extent through its centre in this direction, mm, with its 95 % range. */
  readonly hollow: number;
  readonly likely: Interval;
}

/**
 * The greater curvature (the more hollow) first. Only for a bed whose whole curvature is determined.
 * @see plane geometry: eigenvectors of the symmetric 2 × 2 matrix of second derivatives
 */
export function principalDirections(
  curvature: BedCurvature,
  bed: Bed,
): readonly [PrincipalDirection, PrincipalDirection] {
  const [a, b, c] = curvature.coefficients;
  const alongAlong = (2 * a) / bed.length ** 2;
  const alongAcross = b / (bed.length * bed.width);
  const acrossAcross = (2 * c) / bed.width ** 2;
  const angle = atan2Deg(2 * alongAcross, alongAlong - acrossAcross) / 2;
  const at = (turn: number): PrincipalDirection => {
    const [cos, sin] = [cosDeg(turn), sinDeg(turn)];
    const bend = alongAlong * cos * cos + 2 * alongAcross * cos * sin + acrossAcross * sin * sin;
    const { hollow, likely } = curvature.sagitta(chordThroughCentre(cos, sin, bed))!;
    return { angle: turn, curvature: bend, hollow, likely };
  };
  return [at(angle), at(angle > 0 ? angle - 90 : angle + 90)];
}

/** The chord through the bed's centre that runs (cos, sin) in mm, as shares of length and width. */
function chordThroughCentre(cos: number, sin: number, bed: Bed): Direction {
  const [along, across] = [cos / bed.length, sin / bed.width];
  const reach = Math.max(Math.abs(along), Math.abs(across));
  return [along / reach, across / reach];
}
