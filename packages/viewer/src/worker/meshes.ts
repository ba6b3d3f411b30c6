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
  const corners = Float32Array.from(unweld(mesh));
  const { lines, cap } = sectionAt(mesh, OFF_CENTRE);
  return { name, corners, edges: Float32Array.from(edgesOf(mesh).concat(glue)), section: lines, cap, grain, middle };
}

/** Edges at which two faces meet at an angle. */
function edgesOf(mesh: Mesh): number[] {
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
  return drawn;
}
