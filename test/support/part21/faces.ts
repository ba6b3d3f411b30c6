// What a face holds, in closed form over its loops: no face is cut into pieces.
// Area of a plane face: ½ ∮ n·(r × dr). On a cylinder or cone, with u about the axis and v along it, a line of either has du = 0 and
// an arc v = const, so by Green ∬ f(u) g(v) du dv = −∮ G(v) f(u) du is a sum over the arcs alone.

import { type EdgeCurve, edgeCurve, type Surface, surfaceOf } from "./curves.ts";
import { booleanIn, type Entities, type Entity } from "./entities.ts";
import { inner, minus, outer, times, type Vector } from "./vectors.ts";

/** An edge as a loop runs along it. */
export interface OrientedEdge {
  readonly edge: EdgeCurve;
  readonly forward: boolean;
}
export interface FaceBound {
  readonly isOuter: boolean;
  readonly edges: readonly OrientedEdge[];
}
export interface Face {
  readonly number: number;
  readonly surface: Surface;
  /** Whether the solid lies behind the surface's own normal. */
  readonly sameSense: boolean;
  readonly bounds: readonly FaceBound[];
}

export const startOf = ({ edge, forward }: OrientedEdge) => (forward ? edge.start : edge.end);
export const endOf = ({ edge, forward }: OrientedEdge) => (forward ? edge.end : edge.start);

/** @see ISO 10303-42: advanced_face (face_surface), face_bound, edge_loop, oriented_edge */
export function faceOf(entities: Entities, entity: Entity): Face {
  const surface = entities.referred(entity, 2, "PLANE", "CYLINDRICAL_SURFACE", "CONICAL_SURFACE");
  const bounds = entities.referredList(entity, 1, "FACE_BOUND", "FACE_OUTER_BOUND").map((bound) => {
    const edges = entities
      .referredList(entities.referred(bound, 1, "EDGE_LOOP"), 1, "ORIENTED_EDGE")
      .map((oriented) => ({
        edge: edgeCurve(entities, entities.referred(oriented, 3, "EDGE_CURVE")),
        forward: booleanIn(oriented, 4),
      }));
    const isOuter = bound.keyword === "FACE_OUTER_BOUND";
    if (booleanIn(bound, 2)) return { isOuter, edges };
    return { isOuter, edges: edges.reverse().map(({ edge, forward }) => ({ edge, forward: !forward })) };
  });
  return { number: entity.number, surface: surfaceOf(entities, surface), sameSense: booleanIn(entity, 3), bounds };
}

/** Axis and sweep of an arc as it is run, about a direction that is its axis or against it. */
const turnAbout = ({ edge, forward }: OrientedEdge, direction: Vector): number =>
  edge.kind === "line" ? 0 : edge.sweep * (forward ? 1 : -1) * Math.sign(inner(edge.axis, direction));

/** Area within a bound, mm², positive where it runs counter-clockwise about the surface's own normal. */
export function boundArea({ edges }: FaceBound, surface: Surface): number {
  const { axes } = surface;
  if (surface.kind === "plane")
    return edges.reduce((sum, oriented) => sum + planeMoment(oriented, axes.origin, axes.z), 0);
  const stretch = surface.kind === "cone" ? Math.hypot(1, surface.slope) : 1;
  return stretch * sumOverArcs(edges, surface, (turn) => turn);
}

/** ½ ∫ n·(r × dr) along an edge; for an arc about c that is ½ n·(c × chord) + ½ R² sweep. */
function planeMoment(oriented: OrientedEdge, origin: Vector, n: Vector): number {
  const [a, b] = [minus(startOf(oriented).point, origin), minus(endOf(oriented).point, origin)];
  const { edge } = oriented;
  if (edge.kind === "line") return inner(n, outer(a, b)) / 2;
  const centre = minus(edge.centre, origin);
  return inner(n, outer(centre, minus(b, a))) / 2 + (edge.radius ** 2 * turnAbout(oriented, n)) / 2;
}

/** −∮ G(v) f(u) du; G is the integral of the radius along the axis. @param whole the integral of f over an arc, by its turn and its ends */
function sumOverArcs(
  edges: readonly OrientedEdge[],
  surface: Exclude<Surface, { kind: "plane" }>,
  whole: (turn: number, from: Vector, to: Vector) => number,
): number {
  const { origin, z } = surface.axes;
  return edges.reduce((sum, oriented) => {
    const { edge } = oriented;
    if (edge.kind === "line") return sum;
    const v = inner(minus(edge.centre, origin), z);
    const along = surface.radius * v + (surface.kind === "cone" ? (surface.slope * v ** 2) / 2 : 0);
    const radial = (p: Vector) => times(1 / edge.radius, minus(p, edge.centre));
    const [from, to] = [radial(startOf(oriented).point), radial(endOf(oriented).point)];
    return sum - along * whole(turnAbout(oriented, z), from, to);
  }, 0);
}

/** ∬ r·n dA over a face, r from a point and n as its loops turn: three times its share of the volume, mm³. */
export function faceFlux({ surface, bounds }: Face, about: Vector): number {
  const { origin, z } = surface.axes;
  const w = minus(origin, about);
  if (surface.kind === "plane") {
    const area = bounds.reduce((sum, bound) => sum + boundArea(bound, surface), 0);
    return inner(w, z) * area;
  }
  // With e(u) away from the axis, r·n √(1 + slope²) = w·e − slope w·z + radius, and ∫ e du = (e at the end − e at the start) × z.
  const still = surface.radius - (surface.kind === "cone" ? surface.slope * inner(w, z) : 0);
  const flux = (turn: number, from: Vector, to: Vector) => still * turn + inner(w, outer(minus(to, from), z));
  return bounds.reduce((sum, bound) => sum + sumOverArcs(bound.edges, surface, flux), 0);
}

/** Turn of a bound about the axis of its cylinder or cone, in whole turns: 0, or ±1 for a ring. */
export const boundTurns = ({ edges }: FaceBound, surface: Surface): number =>
  edges.reduce((sum, oriented) => sum + turnAbout(oriented, surface.axes.z), 0) / (2 * Math.PI);
