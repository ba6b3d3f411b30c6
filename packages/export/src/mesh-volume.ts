// The volume of a mesh against its outlines, and what writing it may change.
import {
  assertFinite,
  assertVolume,
  FLOAT32_ROUNDING,
  type Mesh,
  maxAbsCoordinate,
  meshArea,
} from "@lamplane/geometry/mesh";

/** Relative: faces summed in doubles agree to 1e-10; a hole of 0.1 mm³ left out of a block of 100 cm³ shows. */
const MODEL_VOLUME = 1e-6;

/** The model against what its outlines say. @throws our bug: a corner that is no number, inside out, or of another volume */
export function assertModelVolume(what: string, mesh: Mesh, expected: number): void {
  assertFinite(what, mesh);
  assertVolume(what, "as modelled", mesh, expected, expected * MODEL_VOLUME);
}

/**
 * How much volume the writing may add or take, mm³, where it rounds each coordinate to a grid and float32 rounds it once more:
 * a face moves along its normal by at most √3 times both, over its whole area.
 */
export function writingAllowance(written: Mesh, grid: number): number {
  const moved = grid / 2 + maxAbsCoordinate(written) * FLOAT32_ROUNDING;
  return meshArea(written) * Math.sqrt(3) * moved;
}
