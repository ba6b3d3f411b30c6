// Printed jigs laid out on the printer's bed: each full plate is one file to slice.
import { packRectangles } from "@lamplane/geometry";
import { type Mesh, mapVertices, meshBounds } from "@lamplane/geometry/mesh";
import type { Jig } from "@lamplane/parameters/solids";
import type { Design } from "@lamplane/parameters/table";
import type { StandingSolid } from "../threemf.ts";

/** Left free between two jigs, for their brims, and along the bed's edges, for the printer's own lines. mm */
const GAP = 6;
const MARGIN = 5;

/** Jigs as they lie on each plate; one that is larger than the bed is on none. */
export function printPlates(jigs: readonly Jig[], { shop }: Design): StandingSolid[][] {
  const { width, depth, height } = shop.printer;
  const rectangles = jigs
    .map((jig) => ({ item: jig, size: meshBounds(jig.lyingMesh).max }))
    .filter(({ size }) => size[2] <= height)
    .map(({ item, size }) => ({ item, width: size[0], depth: size[1] }));
  const { sheets } = packRectangles(rectangles, { width, depth, margin: MARGIN, gap: GAP, mayTurn: true });
  return sheets.map((sheet) =>
    sheet.map(({ item, x, y, turned }) => ({
      name: item.name,
      mesh: moveMesh(item.lyingMesh, x, y, turned),
      volume: item.volume,
    })),
  );
}

/** A mesh whose box begins at 0, 0, turned within that box's corner and moved. */
function moveMesh(mesh: Mesh, x: number, y: number, turned: boolean): Mesh {
  const depth = meshBounds(mesh).max[1];
  return mapVertices(mesh, ([a, b, c]) => (turned ? [x + depth - b, y + a, c] : [x + a, y + b, c]));
}
