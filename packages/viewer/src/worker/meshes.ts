// Solids → what the 3D drawing needs: corners, the edges that a draughtsman would draw, the section at the centre plane.

import { cosDeg, sinDeg } from "@lamplane/geometry";
import {
  dot,
  type Mesh,
  mapVertices,
  meshBounds,
  tessellateFaces,
  triangleAt,
  triangleCount,
  unitNormal,
  unweld,
  type Vec3,
} from "@lamplane/geometry/mesh";
import type { Elevation } from "@lamplane/parameters/elevation";
import { ironSolids, type NamedFaces, partFaces } from "@lamplane/parameters/solids";
import type { PartMesh } from "../protocol/body-data.ts";
import type { StageName } from "../protocol/sheet-data.ts";
import { plainCheeks, sawnPieces } from "./stock-pieces.ts";
import { withFlatTop } from "./views/stage-plane.ts";

/** Two faces that turn by less than this are one curved face: facets of arcs turn by far less. cos 20°. */
const SAME_FACE = 0.94;
/** The cut lies this far off the centre plane, mm, so that no corner lies in it. */
const OFF_CENTRE = 1e-3;

/** Parts of the plane as they stand at a stage, iron and cap iron with them once it is glued. */
export function partMeshes(plane: Elevation, stage: StageName): PartMesh[] {
  const isApart = stage === "core" || stage === "bed";
  return partsAt(plane, stage).map(({ name, faces }) =>
    makePartMesh(name, slideApart(name, tessellateFaces(faces), plane, isApart), grainOf(name, plane)),
  );
}

function partsAt(plane: Elevation, stage: StageName): readonly NamedFaces[] {
  if (stage === "billet") return sawnPieces(plane);
  const isTrued = stage === "shaped" || stage === "trued";
  const wooden = partFaces(stage === "trued" ? withFlatTop(plane) : plane, isTrued ? "trued" : "blank");
  const blocks = wooden.filter(({ name }) => name === "front-block" || name === "bed-block");
  if (stage === "core") return [...blocks, ...plainCheeks(plane)];
  if (stage === "bed") return [...blocks, ...wooden.filter(({ name }) => name.startsWith("cheek"))];
  return [...wooden, ...ironSolids(plane)];
}

/** Before glue-up the blocks stand where they were sawn out of the core. */
function slideApart(name: string, mesh: Mesh, { cuts }: Elevation, isApart: boolean): Mesh {
  const by = !isApart ? 0 : name === "front-block" ? -cuts.setInToe : name === "bed-block" ? cuts.setInHeel : 0;
  return by === 0 ? mesh : mapVertices(mesh, ([x, y, z]) => [x + by, y, z]);
}

/** Along the blocks and cheeks x, along the wedge s, along the pin z; a bought part has none. */
function grainOf(name: string, { frame }: Elevation): [number, number, number] {
  if (name === "wedge") return [cosDeg(frame.faceAngle), sinDeg(frame.faceAngle), 0];
  if (name === "cross-pin") return [0, 0, 1];
  return name === "iron" || name.startsWith("cap") ? [0, 0, 0] : [1, 0, 0];
}

function makePartMesh(name: string, mesh: Mesh, grain: [number, number, number]): PartMesh {
  const { min, max } = meshBounds(mesh);
  const middle: [number, number, number] = [(min[0] + max[0]) / 2, (min[1] + max[1]) / 2, (min[2] + max[2]) / 2];
  const corners = Float32Array.from(unweld(mesh));
  return { name, corners, edges: edgesOf(mesh), section: sectionOf(mesh), grain, middle };
}

/** Edges at which two faces meet at an angle. */
function edgesOf(mesh: Mesh): Float32Array {
  const span = mesh.positions.length / 3;
  const first = new Map<number, Vec3>();
  const drawn: number[] = [];
  for (let t = 0; t < triangleCount(mesh); t++) {
    const corners = triangleAt(mesh, t);
    const normal = unitNormal(...corners);
    for (let k = 0; k < 3; k++) {
      const [p, q] = [mesh.indices[3 * t + k]!, mesh.indices[3 * t + ((k + 1) % 3)]!];
      const key = p < q ? p * span + q : q * span + p;
      const other = first.get(key);
      if (!other) first.set(key, normal);
      else if (dot(other, normal) < SAME_FACE) drawn.push(...corners[k]!, ...corners[(k + 1) % 3]!);
    }
  }
  return Float32Array.from(drawn);
}

/** Where the faces cross the centre plane: two corners to a line. */
function sectionOf(mesh: Mesh): Float32Array {
  const lines: number[] = [];
  for (let t = 0; t < triangleCount(mesh); t++) {
    const triangle = triangleAt(mesh, t);
    const crossing: number[] = [];
    for (let k = 0; k < 3; k++) {
      const [p, q] = [triangle[k]!, triangle[(k + 1) % 3]!];
      const [dp, dq] = [p[2] - OFF_CENTRE, q[2] - OFF_CENTRE];
      if (dp * dq >= 0) continue;
      const share = dp / (dp - dq);
      crossing.push(p[0] + (q[0] - p[0]) * share, p[1] + (q[1] - p[1]) * share, OFF_CENTRE);
    }
    if (crossing.length === 6) lines.push(...crossing);
  }
  return Float32Array.from(lines);
}
