// Faces of a solid as exact surfaces within loops of exact edges: planes, cylinders and cones, lines and circular arcs. Lengths mm.

import type { Segment } from "../outline.ts";
import { ringPairs } from "../ring.ts";
import type { Vec3 } from "./vectors.ts";

export interface PlaneSurface {
  readonly kind: "plane";
  /** Unit vector out of the solid. */
  readonly normal: Vec3;
}
export interface CylinderSurface {
  readonly kind: "cylinder";
  /** A point on the axis, and the axis as a unit vector. */
  readonly origin: Vec3;
  readonly axis: Vec3;
  readonly radius: number;
  /** Whether the outside of the solid lies away from the axis. */
  readonly convex: boolean;
}
export interface ConeSurface {
  readonly kind: "cone";
  /** A point on the axis, and the axis as a unit vector towards where the cone grows. */
  readonly origin: Vec3;
  readonly axis: Vec3;
  /** Radius at the origin. */
  readonly radius: number;
  /** Between axis and surface, degrees. */
  readonly halfAngle: number;
  /** Whether the outside of the solid lies away from the axis. */
  readonly convex: boolean;
}
export type Surface = PlaneSurface | CylinderSurface | ConeSurface;

export interface LineEdge {
  readonly kind: "line";
  readonly from: Vec3;
  readonly to: Vec3;
}
/** Part of a circle; `sweep` in degrees, counter-clockwise about the axis where positive. */
export interface ArcEdge {
  readonly kind: "arc";
  readonly from: Vec3;
  readonly to: Vec3;
  readonly centre: Vec3;
  readonly axis: Vec3;
  readonly radius: number;
  readonly sweep: number;
}
export type Edge = LineEdge | ArcEdge;

/** A closed chain of edges, counter-clockwise seen from outside the solid; clockwise round a hole. */
export type Loop = readonly Edge[];

/**
 * One face of a solid. Neighbours share the very same corners, and on an edge that both have the same line or arc.
 * A cylinder's face has one loop: an arc, lines along the axis, an arc back, lines along the axis. A cone's face has one loop
 * of four: an arc, a line up the cone, an arc back, a line down; the third is the arc of the cylinder that the cone adjoins.
 */
export interface Face {
  readonly surface: Surface;
  readonly loops: readonly Loop[];
}

/** Closed chain of lines through corners. */
export const polygonLoop = (corners: readonly Vec3[]): Loop =>
  ringPairs(corners).map(([from, to]) => ({ kind: "line", from, to }));

/** Open chain of lines through corners. */
export const polyline = (corners: readonly Vec3[]): LineEdge[] =>
  corners.slice(1).map((to, i) => ({ kind: "line", from: corners[i]!, to }));

export const reverseEdge = (edge: Edge): Edge =>
  edge.kind === "line"
    ? { kind: "line", from: edge.to, to: edge.from }
    : { ...edge, from: edge.to, to: edge.from, sweep: -edge.sweep };

export const reverseLoop = (loop: Loop): Loop => loop.map(reverseEdge).reverse();

/** Where a flat drawing stands in space: its points, and the direction about which its arcs turn. */
export interface Placement {
  readonly place: (p: { readonly x: number; readonly y: number }) => Vec3;
  readonly axis: Vec3;
}

/** A flat segment as an edge in space. */
export function placeSegment(segment: Segment, { place, axis }: Placement): Edge {
  const [from, to] = [place(segment.from), place(segment.to)];
  if (segment.kind === "line") return { kind: "line", from, to };
  return { kind: "arc", from, to, centre: place(segment.centre), axis, radius: segment.radius, sweep: segment.sweep };
}

/** A rigid motion: what it does to points and to directions. */
export interface Motion {
  readonly point: (p: Vec3) => Vec3;
  readonly direction: (d: Vec3) => Vec3;
}

/** The same faces moved; the motion must not mirror. */
export const mapFaces = (faces: readonly Face[], motion: Motion): Face[] =>
  faces.map(({ surface, loops }) => ({
    surface: mapSurface(surface, motion),
    loops: loops.map((loop) => loop.map((edge) => mapEdge(edge, motion))),
  }));

const mapSurface = (surface: Surface, { point, direction }: Motion): Surface =>
  surface.kind === "plane"
    ? { ...surface, normal: direction(surface.normal) }
    : { ...surface, origin: point(surface.origin), axis: direction(surface.axis) };

const mapEdge = (edge: Edge, { point, direction }: Motion): Edge =>
  edge.kind === "line"
    ? { kind: "line", from: point(edge.from), to: point(edge.to) }
    : {
        ...edge,
        from: point(edge.from),
        to: point(edge.to),
        centre: point(edge.centre),
        axis: direction(edge.axis),
      };
