// The wood before it is shaped: three pieces as they come off the saw, and cheeks that are not bored yet.
import { type Elevation, stageExtent } from "@lamplane/parameters/elevation";
import type { PartFaces, Triangle, Vec3 } from "@lamplane/parameters/solids";

/** Cheek, core and cheek, as wide as they are sawn, a kerf and its jointing pass apart. */
export function sawnPieces(plane: Elevation): PartFaces[] {
  const { widths, design } = plane;
  const { kerf, jointingPass } = design.shop;
  const half = widths.roughCore / 2;
  const apart = kerf + jointingPass;
  return [
    { name: "core", triangles: boardTriangles(plane, -half, half) },
    { name: "cheek-left", triangles: boardTriangles(plane, half + apart, half + apart + widths.roughCheek) },
    { name: "cheek-right", triangles: boardTriangles(plane, -half - apart - widths.roughCheek, -half - apart) },
  ];
}

/** Both cheeks milled to their width, with no hole in them. */
export function plainCheeks(plane: Elevation): PartFaces[] {
  const [inside, outside] = [plane.widths.core / 2, plane.widths.body / 2];
  return [
    { name: "cheek-left", triangles: boardTriangles(plane, inside, outside) },
    { name: "cheek-right", triangles: boardTriangles(plane, -outside, -inside) },
  ];
}

/** A board of the blank's length and height between two places across the width. */
function boardTriangles(plane: Elevation, near: number, far: number): Triangle[] {
  const { toe, heel, sole } = stageExtent(plane, "blank");
  const [xs, ys, zs] = [[toe, heel] as const, [sole, plane.design.body.height] as const, [near, far] as const];
  const corner = (i: number): Vec3 => [xs[(i & 1) as 0 | 1], ys[((i >> 1) & 1) as 0 | 1], zs[((i >> 2) & 1) as 0 | 1]];
  return FACES.flatMap(([a, b, c, d]): Triangle[] => [
    [corner(a), corner(b), corner(c)],
    [corner(a), corner(c), corner(d)],
  ]);
}

/** Faces of a box by its corners, counter-clockwise from outside; a corner's bits tell its far x, y and z. */
const FACES = [
  [0, 2, 3, 1],
  [4, 5, 7, 6],
  [0, 1, 5, 4],
  [2, 6, 7, 3],
  [0, 4, 6, 2],
  [1, 3, 7, 5],
] as const;
