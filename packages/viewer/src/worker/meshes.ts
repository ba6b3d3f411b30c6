// Solids → what the 3D drawing needs: corners, the edges that a draughtsman would draw, the section at the centre plane.

import { cosDeg, sinDeg } from "@lamplane/geometry";
import type { Elevation } from "@lamplane/parameters/elevation";
import { ironSolids, partFaces, type Triangle, type Vec3 } from "@lamplane/parameters/solids";
import type { PartMesh } from "../protocol/body-data.ts";
import type { StageName } from "../protocol/sheet-data.ts";
import { CornerNumbers } from "./corner-numbers.ts";
import { plainCheeks, sawnPieces } from "./stock-pieces.ts";
import { withFlatTop } from "./views/stage-plane.ts";

/** Two faces that turn by less than this are one curved face: facets of arcs turn by far less. cos 20°. */
const SAME_FACE = 0.94;
/** The cut lies this far off the centre plane, mm, so that no corner lies in it. */
const OFF_CENTRE = 1e-3;

/** Parts of the plane as they stand at a stage, iron and cap iron with them once it is glued. */
export function partMeshes(plane: Elevation, stage: StageName): PartMesh[] {
  const isApart = stage === "core" || stage === "bed";
  return partsAt(plane, stage).map(({ name, triangles }) =>
    makePartMesh(name, slideApart(name, triangles, plane, isApart), grainOf(name, plane)),
  );
}

function partsAt(plane: Elevation, stage: StageName): readonly { name: string; triangles: readonly Triangle[] }[] {
  if (stage === "billet") return sawnPieces(plane);
  const isTrued = stage === "shaped" || stage === "trued";
  const wooden = partFaces(stage === "trued" ? withFlatTop(plane) : plane, isTrued ? "trued" : "blank");
  const blocks = wooden.filter(({ name }) => name === "front-block" || name === "bed-block");
  if (stage === "core") return [...blocks, ...plainCheeks(plane)];
  if (stage === "bed") return [...blocks, ...wooden.filter(({ name }) => name.startsWith("cheek"))];
  return [...wooden, ...ironSolids(plane)];
}

/** Before glue-up the blocks stand where they were sawn out of the core. */
function slideApart(name: string, triangles: readonly Triangle[], { cuts }: Elevation, isApart: boolean) {
  const by = !isApart ? 0 : name === "front-block" ? -cuts.setInToe : name === "bed-block" ? cuts.setInHeel : 0;
  if (by === 0) return triangles;
  const move = ([x, y, z]: Vec3): Vec3 => [x + by, y, z];
  return triangles.map(([a, b, c]): Triangle => [move(a), move(b), move(c)]);
}

/** Along the blocks and cheeks x, along the wedge s, along the pin z; a bought part has none. */
function grainOf(name: string, { frame }: Elevation): [number, number, number] {
  if (name === "wedge") return [cosDeg(frame.bedAngle), sinDeg(frame.bedAngle), 0];
  if (name === "cross-pin") return [0, 0, 1];
  return name === "iron" || name.startsWith("cap") ? [0, 0, 0] : [1, 0, 0];
}

function makePartMesh(name: string, triangles: readonly Triangle[], grain: [number, number, number]): PartMesh {
  const corners = new Float32Array(triangles.length * 9);
  const [low, high] = [new Float64Array(3).fill(1e9), new Float64Array(3).fill(-1e9)];
  let n = 0;
  for (const triangle of triangles)
    for (const corner of triangle)
      for (let k = 0; k < 3; k++) {
        const v = corner[k]!;
        corners[n++] = v;
        if (v < low[k]!) low[k] = v;
        if (v > high[k]!) high[k] = v;
      }
  const middle: [number, number, number] = [
    (low[0]! + high[0]!) / 2,
    (low[1]! + high[1]!) / 2,
    (low[2]! + high[2]!) / 2,
  ];
  return { name, corners, edges: edgesOf(triangles), section: sectionOf(triangles), grain, middle };
}

/** Edges at which two faces meet at an angle. Neighbours share their corners to the last bit. */
function edgesOf(triangles: readonly Triangle[]): Float32Array {
  const numbers = new CornerNumbers(3 * triangles.length);
  const span = 3 * triangles.length + 1;
  const first = new Map<number, Vec3>();
  const drawn: number[] = [];
  for (const [a, b, c] of triangles) {
    const normal = normalOf(a, b, c);
    const [ia, ib, ic] = [numbers.of(a), numbers.of(b), numbers.of(c)];
    meet(a, b, ia, ib, normal);
    meet(b, c, ib, ic, normal);
    meet(c, a, ic, ia, normal);
  }
  return Float32Array.from(drawn);

  function meet(p: Vec3, q: Vec3, ip: number, iq: number, normal: Vec3) {
    const key = ip < iq ? ip * span + iq : iq * span + ip;
    const other = first.get(key);
    if (!other) first.set(key, normal);
    else if (other[0] * normal[0] + other[1] * normal[1] + other[2] * normal[2] < SAME_FACE) drawn.push(...p, ...q);
  }
}

function normalOf(a: Vec3, b: Vec3, c: Vec3): Vec3 {
  const [ux, uy, uz] = [b[0] - a[0], b[1] - a[1], b[2] - a[2]];
  const [wx, wy, wz] = [c[0] - a[0], c[1] - a[1], c[2] - a[2]];
  const [x, y, z] = [uy * wz - uz * wy, uz * wx - ux * wz, ux * wy - uy * wx];
  const length = Math.hypot(x, y, z) || 1;
  return [x / length, y / length, z / length];
}

/** Where the faces cross the centre plane: two corners to a line. */
function sectionOf(triangles: readonly Triangle[]): Float32Array {
  const lines: number[] = [];
  for (const triangle of triangles) {
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
