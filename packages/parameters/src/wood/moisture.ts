// Air to moisture, moisture to size. Moisture is percent of the ovendry weight, and no wood moves above fibre saturation.
import { cosDeg, sinDeg } from "@lamplane/geometry";
import type { AcrossGrain, Species } from "./species.ts";

/** Moisture between which the change per percent may be taken as constant, %. @see Wood Handbook, eq. 13-2 */
export const CONSTANT_FROM = 6;
export const CONSTANT_TO = 14;
/** Moisture above which wood no longer moves, %. @see Wood Handbook, eq. 13-3, which takes 30 for all woods */
export const FIBRE_SATURATION = 30;

/**
 * Moisture at which wood comes to rest in air of this temperature (°C) and relative humidity (%, 0 … 100), %.
 * @see Wood Handbook (FPL-GTR-190, 2010), eq. 4-5
 */
export function equilibriumMoisture(temperature: number, relativeHumidity: number): number {
  const t = temperature;
  const w = 349 + 1.29 * t + 0.0135 * t * t;
  const k = 0.805 + 0.000736 * t - 0.00000273 * t * t;
  const k1 = 6.27 - 0.00938 * t - 0.000303 * t * t;
  const k2 = 1.91 + 0.0407 * t - 0.000293 * t * t;
  const kh = k * (relativeHumidity / 100);
  const bound = (k1 * kh + 2 * k1 * k2 * kh * kh) / (1 + k1 * kh + k1 * k2 * kh * kh);
  return (1800 / w) * (kh / (1 - kh) + bound);
}

/**
 * A coefficient or a shrinkage in the direction that makes this angle with the rings' tangent: 0 tangential, 90 radial.
 * @see standard plane-strain transformation
 */
export const acrossRings = ({ radial, tangential }: AcrossGrain, angle: number): number =>
  tangential * cosDeg(angle) ** 2 + radial * sinDeg(angle) ** 2;

/** What is known of a wood's movement in one direction; either may be missing from the tables. */
export interface Movement {
  /** Change per percent of moisture. */
  readonly coefficient: number | undefined;
  /** Percent, green to ovendry. */
  readonly shrinkage: number | undefined;
}

/** A species' movement in the direction at an angle to the rings' tangent (0 tangential, 90 radial). */
export const movementOf = (
  { coefficient, shrinkage }: Pick<Species, "coefficient" | "shrinkage">,
  angle: number,
): Movement => ({
  coefficient: coefficient && acrossRings(coefficient, angle),
  shrinkage: shrinkage && acrossRings(shrinkage, angle),
});

/** How sizes follow moisture. */
export interface MovementLaw {
  /** False where a moisture lies outside what the equations used were published for: the figures are then a guide only. */
  readonly valid: boolean;
  /** Change of a size (mm) that was taken at one moisture when the wood comes to another (%). mm. */
  readonly change: (size: number, from: number, to: number) => number;
}

/**
 * One law for every moisture: eq. 13-2 for what lies within 6 … 14 %, eq. 13-3 for what lies outside; whichever is known
 * where the other is not; nothing where neither is. Each adds to the other, so that drier is never wider, though the two
 * tables disagree for some woods. @param moistures all that are to be compared
 */
export function movementLaw(movement: Movement, moistures: readonly number[]): MovementLaw | undefined {
  const { coefficient, shrinkage } = movement;
  if (coefficient === undefined && shrinkage === undefined) return undefined;
  const constant = moistures.every((m) => m >= CONSTANT_FROM && m <= CONSTANT_TO);
  const change = (size: number, from: number, to: number): number => {
    const total = clampTo(to, 0, FIBRE_SATURATION) - clampTo(from, 0, FIBRE_SATURATION);
    const within = clampTo(to, CONSTANT_FROM, CONSTANT_TO) - clampTo(from, CONSTANT_FROM, CONSTANT_TO);
    const outside = shrinkage === undefined ? coefficient! : shrinkageRate(shrinkage, from);
    return size * (within * (coefficient ?? outside) + (total - within) * outside);
  };
  return { valid: shrinkage === undefined ? constant : moistures.every((m) => m <= FIBRE_SATURATION), change };
}

/** Change per percent of a size taken at this moisture. @see Wood Handbook, eq. 13-3: ΔD = D·(M₂ − M₁)/(3000/S − 30 + M₁) */
const shrinkageRate = (shrinkage: number, from: number): number =>
  1 / ((FIBRE_SATURATION * 100) / shrinkage - FIBRE_SATURATION + Math.min(from, FIBRE_SATURATION));

const clampTo = (value: number, low: number, high: number): number => Math.min(Math.max(value, low), high);
