// What a solid part is, as the exporters receive it.
import type { Geom3 } from "@jscad/modeling/src/geometries/types.js";
import {
  type Face,
  type Mesh,
  type Motion,
  mapFaces,
  mapVertices,
  meshBounds,
  subtract,
} from "@lamplane/geometry/mesh";
import type { Drawing } from "../drawings/drawing.ts";
import type { Pose } from "../jigs/jig.ts";
import { toGeom3 } from "./geom3.ts";

export interface Part {
  /** Kebab-case name, which is also its file's: "front-block". */
  readonly name: string;
  /** As it lies on the machine's table: lowest corner at 0, 0, 0. */
  readonly lying: Geom3;
  readonly lyingMesh: Mesh;
  /** The exact faces that the mesh stands for, as it lies. */
  readonly lyingFaces: readonly Face[];
  /** As it stands in the plane, in the plane's frame. */
  readonly inPlace: Geom3;
  readonly inPlaceMesh: Mesh;
  /** Where the lying part stands in the plane. */
  readonly pose: Pose;
  /** Volume from the outlines its mesh was made from, mm³; the mesh must have it too. */
  readonly volume: number;
  /** The part in 2D; a prism's outline lies under its solid. */
  readonly drawing: Drawing;
}

/** What a part is before it is laid on the table: its exact faces in place and the mesh that passed the gate. */
export interface PlacedSolid {
  readonly name: string;
  readonly faces: readonly Face[];
  readonly mesh: Mesh;
  readonly volume: number;
  readonly drawing: Drawing;
}

/** The part in its place and on the table. @param turn what lays it flat; where on the table follows from its box */
export function layPart({ name, faces, mesh, volume, drawing }: PlacedSolid, turn: Motion): Part {
  const { min } = meshBounds(mapVertices(mesh, turn.point));
  const toTable: Motion = { point: (p) => subtract(turn.point(p), min), direction: turn.direction };
  const lyingMesh = mapVertices(mesh, toTable.point);
  return {
    name,
    lyingMesh,
    get lying() {
      return toGeom3(lyingMesh);
    },
    lyingFaces: mapFaces(faces, toTable),
    inPlaceMesh: mesh,
    get inPlace() {
      return toGeom3(mesh);
    },
    pose: invertMotion(toTable),
    volume,
    drawing,
  };
}

/** Where a motion's own axes and zero come from. */
function invertMotion({ point, direction }: Motion): Pose {
  const images = [direction([1, 0, 0]), direction([0, 1, 0]), direction([0, 0, 1])] as const;
  const own = (k: 0 | 1 | 2) => [images[0][k], images[1][k], images[2][k]] as const;
  const zero = point([0, 0, 0]);
  const back = (k: 0 | 1 | 2) => -(images[k][0] * zero[0] + images[k][1] * zero[1] + images[k][2] * zero[2]);
  return { x: own(0), y: own(1), z: own(2), origin: [back(0), back(1), back(2)] };
}
