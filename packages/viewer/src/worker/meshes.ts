// Solids → what the 3D drawing needs: corners, the edges that a draughtsman would draw, the section at the centre plane.

import { cosDeg, sinDeg } from "@lamplane/geometry";
import {
  type Mesh,
  mapVertices,
  meshBounds,
  tessellateFaces,
  triangleAt,
  triangleCount,
  unitNormal,
  unweld,
} from "@lamplane/geometry/mesh";
import { type Elevation, layersOf } from "@lamplane/parameters/elevation";
import { ironSolids, type NamedFaces, partFaces } from "@lamplane/parameters/solids";
import type { PartMesh } from "../protocol/body-data.ts";
import { hasStack, type StageName, WORK_OF } from "../protocol/build-steps.ts";
import { layerLines } from "./layer-lines.ts";
import { sectionAt } from "./section.ts";
import { plainBlocks, plainCheeks, sawnPieces, wholeBillet } from "./stock-pieces.ts";
import { withFlatTop } from "./views/stage-plane.ts";

/** Two faces that turn by less than this are one curved face: facets of arcs turn by far less. cos 20°. */
const SAME_FACE = 0.94;
/** Of an arc to its chords, mm: less than a pixel however near one goes; files are cut finer. */
const DRAWN_CHORD_ERROR = 0.02;
/** The cut lies this far off the centre plane, mm, so that no corner lies in it. */
const OFF_CENTRE = 1e-3;

/** Parts of the plane as they stand at a stage, iron and cap iron with them once it is glued. */
export function partMeshes(plane: Elevation, stage: StageName): PartMesh[] {
  const isSawn = WORK_OF[stage] === "core" || WORK_OF[stage] === "bed";
  return partsAt(plane, stage).map(({ name, faces }) => {
    const by = slideOf(name, plane, isSawn);
    const glue = layerLines(plane, name, drawnStage(stage)).map((value, i) => (i % 3 === 0 ? value + by : value));
    return makePartMesh(name, slideApart(tessellateFaces(faces, DRAWN_CHORD_ERROR), by), grainOf(name, plane), glue);
  });
}

function partsAt(plane: Elevation, stage: StageName): readonly NamedFaces[] {
  if (stage === "billet") return [wholeBillet(plane)];
  if (stage === "ripped") return sawnPieces(plane);
  const work = WORK_OF[stage];
  const wooden = partFaces(work === "trued" ? withFlatTop(plane) : plane, drawnStage(stage));
  const named = (...names: string[]) => wooden.filter(({ name }) => names.includes(name));
  if (stage === "cuts" || stage === "bed") {
    // layers are cut with their recess in them
    const blocks = layersOf(plane) ? named("front-block", "bed-block") : plainBlocks(plane);
    return [...blocks, ...plainCheeks(plane)];
  }
  if (stage === "recess") return [...named("front-block", "bed-block"), ...plainCheeks(plane)];
  if (stage === "pin") return named("front-block", "bed-block", "cheek-left", "cheek-right");
  return hasStack(stage) ? [...wooden, ...ironSolids(plane)] : wooden.filter(({ name }) => name !== "wedge");
}

const drawnStage = (stage: StageName): "trued" | "blank" =>
  WORK_OF[stage] === "shaped" || WORK_OF[stage] === "trued" ? "trued" : "blank";

/** Before glue-up the blocks stand where they were sawn out of the core. mm along the sole */
const slideOf = (name: string, { cuts }: Elevation, isApart: boolean): number =>
  !isApart ? 0 : name === "front-block" ? -cuts.setInToe : name === "bed-block" ? cuts.setInHeel : 0;

const slideApart = (mesh: Mesh, by: number): Mesh =>
  by === 0 ? mesh : mapVertices(mesh, ([x, y, z]) => [x + by, y, z]);

/** Along the blocks and cheeks x, along the wedge s, along the pin z; a bought part has none. */
function grainOf(name: string, { frame }: Elevation): [number, number, number] {
  if (name === "wedge") return [cosDeg(frame.faceAngle), sinDeg(frame.faceAngle), 0];
  if (name === "cross-pin") return [0, 0, 1];
  return name === "iron" || name.startsWith("cap") ? [0, 0, 0] : [1, 0, 0];
}

/** @param glue ends of its glue lines, which are drawn as edges are */
function makePartMesh(name: string, mesh: Mesh, grain: [number, number, number], glue: readonly number[]): PartMesh {
  const { min, max } = meshBounds(mesh);
  const middle: [number, number, number] = [(min[0] + max[0]) / 2, (min[1] + max[1]) / 2, (min[2] + max[2]) / 2];
  const corners = new Float32Array(unweld(mesh));
  const { lines, cap } = sectionAt(mesh, OFF_CENTRE);
  return { name, corners, edges: new Float32Array(edgesOf(mesh).concat(glue)), section: lines, cap, grain, middle };
}

/** Edges at which two faces meet at an angle, two corners each. */
function edgesOf(mesh: Mesh): number[] {
  const { positions, indices } = mesh;
  const span = positions.length / 3;
  const normals = triangleNormals(mesh);
  const owner = new Map<number, number>(); // side p – q, the smaller number first, as p·span + q → the triangle that has it
  const drawn: number[] = [];
  for (let i = 0; i < indices.length; i++) {
    const [p, q] = [indices[i]!, indices[i % 3 === 2 ? i - 2 : i + 1]!];
    const key = p < q ? p * span + q : q * span + p;
    const other = owner.get(key);
    if (other === undefined) owner.set(key, Math.floor(i / 3));
    else if (cosineBetween(normals, other, Math.floor(i / 3)) < SAME_FACE)
      for (const n of [p, q]) drawn.push(positions[3 * n]!, positions[3 * n + 1]!, positions[3 * n + 2]!);
  }
  return drawn;
}

/** Unit normals, three numbers a triangle. */
function triangleNormals(mesh: Mesh): Float64Array {
  const normals = new Float64Array(mesh.indices.length);
  for (let t = 0; t < triangleCount(mesh); t++) normals.set(unitNormal(...triangleAt(mesh, t)), 3 * t);
  return normals;
}

const cosineBetween = (normals: Float64Array, t: number, u: number): number =>
  normals[3 * t]! * normals[3 * u]! +
  normals[3 * t + 1]! * normals[3 * u + 1]! +
  normals[3 * t + 2]! * normals[3 * u + 2]!;
