// The wood before it is shaped: three pieces as they come off the saw, and cheeks that are not bored yet.
import { point, polygon } from "@lamplane/geometry";
import { type Face, prismFaces } from "@lamplane/geometry/mesh";
import { blocksAt, type Elevation, layersOf, stageExtent } from "@lamplane/parameters/elevation";
import type { NamedFaces } from "@lamplane/parameters/solids";

/** Cheek, core and cheek, as wide as they are sawn, a kerf and its jointing pass apart. */
export function sawnPieces(plane: Elevation): NamedFaces[] {
  if (layersOf(plane)) return strips(plane, plane.design.shop.kerf);
  const { widths, design } = plane;
  const { kerf, jointingPass } = design.shop;
  const { fence } = widths;
  const half = fence.core / 2;
  const apart = kerf + jointingPass;
  return [
    { name: "core", faces: boardFaces(plane, -half, half) },
    { name: "cheek-left", faces: boardFaces(plane, half + apart, half + apart + fence.leftCheek) },
    { name: "cheek-right", faces: boardFaces(plane, -half - apart - fence.rightCheek, -half - apart) },
  ];
}

/** The billet before anything is sawn off it. */
export function wholeBillet(plane: Elevation): NamedFaces {
  if (layersOf(plane)) return { name: "billet", faces: strips(plane, 0).flatMap(({ faces }) => faces) };
  const half = plane.widths.billet / 2;
  return { name: "billet", faces: boardFaces(plane, -half, half) };
}

/** Layers and cheeks as they are ripped, each as thick as the board, stood on edge side by side. */
function strips(plane: Elevation, apart: number): NamedFaces[] {
  const count = layersOf(plane)!.length + 2;
  const { board } = plane.design.core;
  const pitch = board + Math.max(apart, LEAST_APART);
  const stripAt = (i: number) => {
    const near = (i - count / 2) * pitch;
    return boardFaces(plane, near, near + board);
  };
  const layers = Array.from({ length: count - 2 }, (_, i) => stripAt(i + 1));
  return [
    { name: "core", faces: layers.flat() },
    { name: "cheek-left", faces: stripAt(count - 1) },
    { name: "cheek-right", faces: stripAt(0) },
  ];
}
/** Between strips that touch, mm: faces that coincide would belong to neither. */
const LEAST_APART = 0.2;

/** Front and bed block as the saw leaves them, with no recess yet. */
export function plainBlocks(plane: Elevation): NamedFaces[] {
  const half = plane.widths.core / 2;
  const { front, bed } = blocksAt(plane, "blank");
  return [
    { name: "front-block", faces: prismFaces([front], -half, half) },
    { name: "bed-block", faces: prismFaces([bed], -half, half) },
  ];
}

/** Both cheeks milled to their width, with no hole in them. */
export function plainCheeks(plane: Elevation): NamedFaces[] {
  const [inside, outside] = [plane.widths.core / 2, plane.widths.body / 2];
  return [
    { name: "cheek-left", faces: boardFaces(plane, inside, outside) },
    { name: "cheek-right", faces: boardFaces(plane, -outside, -inside) },
  ];
}

/** A board of the blank's length and height between two places across the width. */
function boardFaces(plane: Elevation, near: number, far: number): Face[] {
  const { toe, heel, sole } = stageExtent(plane, "blank");
  const { height } = plane.design.body;
  return prismFaces([polygon(point(toe, sole), point(heel, sole), point(heel, height), point(toe, height))], near, far);
}
