// A JSCAD solid's faces as a mesh, in doubles.
import modeling from "@jscad/modeling";
import type { Geom3 } from "@jscad/modeling/src/geometries/types.js";
import {
  assertFinite,
  assertVolume,
  FLOAT32_ROUNDING,
  type Mesh,
  maxAbsCoordinate,
  meshArea,
  weld,
} from "@lamplane/geometry/mesh";

/** Relative: faces summed in doubles agree to 1e-10; a hole of 0.1 mm³ left out of a block of 100 cm³ shows. */
const MODEL_VOLUME = 1e-6;

/**
 * The solid's mesh. Its faces may meet in T-junctions, for which only the written mesh is judged.
 * @throws our bug: a corner that is no finite number
 */
export function meshOf(what: string, solid: Geom3): Mesh {
  const mesh = weld(
    modeling.geometries.geom3
      .toPolygons(solid)
      .flatMap(({ vertices }) => vertices.slice(2).flatMap((v, i) => [...vertices[0]!, ...vertices[i + 1]!, ...v])),
  );
  assertFinite(what, mesh);
  return mesh;
}

/** The model against what its outlines say. @throws our bug: inside out, or of another volume */
export const assertModelVolume = (what: string, mesh: Mesh, expected: number): void =>
  assertVolume(what, "as modelled", mesh, expected, expected * MODEL_VOLUME);

/**
 * How much volume the writing may add or take, mm³, where it rounds each coordinate to a grid and float32 rounds it once more:
 * a face moves along its normal by at most √3 times both, over its whole area.
 */
export function writingAllowance(written: Mesh, grid: number): number {
  const moved = grid / 2 + maxAbsCoordinate(written) * FLOAT32_ROUNDING;
  return meshArea(written) * Math.sqrt(3) * moved;
}
