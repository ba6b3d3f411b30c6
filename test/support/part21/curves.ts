// Edges and the surfaces that they bound, as ISO 10303-42 defines them.
import { type Axes, booleanIn, type Entities, type Entity, realIn } from "./entities.ts";
import { inner, minus, outer, plus, size, times, type Vector } from "./vectors.ts";

export interface Vertex {
  readonly number: number;
  readonly point: Vector;
}

/** An edge from its start to its end. An arc turns counter-clockwise about its axis. */
export type EdgeCurve = { readonly number: number; readonly start: Vertex; readonly end: Vertex } & (
  | { readonly kind: "line"; readonly origin: Vector; readonly along: Vector }
  | {
      readonly kind: "arc";
      readonly centre: Vector;
      readonly axis: Vector;
      readonly radius: number;
      readonly sweep: number;
    }
);

export type Surface =
  | { readonly kind: "plane"; readonly axes: Axes }
  | { readonly kind: "cylinder"; readonly axes: Axes; readonly radius: number }
  /** The radius at its origin grows along the axis by `slope`, the tangent of its semi-angle. */
  | { readonly kind: "cone"; readonly axes: Axes; readonly radius: number; readonly slope: number };

/** @see ISO 10303-42: edge_curve, line, circle. Its same_sense false: the curve runs from the end to the start */
export function edgeCurve(entities: Entities, entity: Entity): EdgeCurve {
  const [start, end] = [1, 2].map((place) => {
    const vertex = entities.referred(entity, place, "VERTEX_POINT");
    return { number: vertex.number, point: entities.point(vertex, 1) };
  }) as [Vertex, Vertex];
  const curve = entities.referred(entity, 3, "LINE", "CIRCLE");
  const way = booleanIn(entity, 4) ? 1 : -1;
  const ends = { number: entity.number, start, end };
  if (curve.keyword === "LINE") {
    const vector = entities.referred(curve, 2, "VECTOR");
    if (!(realIn(vector, 2) > 0)) throw new Error(`#${vector.number} VECTOR: no magnitude`);
    return {
      ...ends,
      kind: "line",
      origin: entities.point(curve, 1),
      along: times(way, entities.direction(vector, 1)),
    };
  }
  const { origin, z } = entities.axes(curve, 1);
  const axis = times(way, z);
  return { ...ends, kind: "arc", centre: origin, axis, radius: positive(curve, 2), sweep: sweepOf(ends, origin, axis) };
}

/** Turn from start to end, more than 0, at most a whole one. */
function sweepOf({ start, end }: { start: Vertex; end: Vertex }, centre: Vector, axis: Vector): number {
  if (start.number === end.number) return 2 * Math.PI;
  const [from, to] = [minus(start.point, centre), minus(end.point, centre)];
  const turn = Math.atan2(inner(axis, outer(from, to)), inner(from, to));
  return turn > 0 ? turn : turn + 2 * Math.PI;
}

/** @see ISO 10303-42: plane, cylindrical_surface, conical_surface; a plane's normal is its z, the others' leads away from the axis */
export function surfaceOf(entities: Entities, entity: Entity): Surface {
  const axes = entities.axes(entity, 1);
  if (entity.keyword === "PLANE") return { kind: "plane", axes };
  if (entity.keyword === "CYLINDRICAL_SURFACE") return { kind: "cylinder", axes, radius: positive(entity, 2) };
  return { kind: "cone", axes, radius: positive(entity, 2), slope: Math.tan(realIn(entity, 3)) };
}

function positive(entity: Entity, place: number): number {
  const value = realIn(entity, place);
  if (!(value > 0)) throw new Error(`#${entity.number} ${entity.keyword}: ${value} is no radius`);
  return value;
}

/** How far the ends of an edge lie from its curve, mm; infinite for a line that runs the other way. */
export function edgeMiss(edge: EdgeCurve): number {
  if (edge.kind === "line") {
    if (!(inner(minus(edge.end.point, edge.start.point), edge.along) > 0)) return Infinity;
    return Math.max(...ends(edge).map((p) => size(outer(minus(p, edge.origin), edge.along))));
  }
  return Math.max(
    ...ends(edge).map((p) => {
      const d = minus(p, edge.centre);
      const height = inner(d, edge.axis);
      return Math.hypot(height, size(minus(d, times(height, edge.axis))) - edge.radius);
    }),
  );
}

const ends = ({ start, end }: EdgeCurve): Vector[] => [start.point, end.point];

/** How far an edge strays from a surface at most, mm, over its whole length: a line by its ends and its middle, an arc by its circle. */
export function surfaceMiss(edge: EdgeCurve, surface: Surface): number {
  const { origin, z } = surface.axes;
  if (edge.kind === "line") {
    const middle = times(0.5, plus(edge.start.point, edge.end.point));
    return Math.max(...[...ends(edge), middle].map((p) => Math.abs(distanceFrom(surface, p))));
  }
  const tilt = edge.radius * size(outer(edge.axis, z));
  const d = minus(edge.centre, origin);
  const height = inner(d, z);
  if (surface.kind === "plane") return Math.abs(height) + tilt;
  const aside = size(minus(d, times(height, z)));
  return aside + tilt + Math.abs(edge.radius - radiusAt(surface, height));
}

/** Radius of a cylinder or cone at a height over its origin. */
export const radiusAt = (surface: Exclude<Surface, { kind: "plane" }>, height: number): number =>
  surface.radius + (surface.kind === "cone" ? height * surface.slope : 0);

/** From a surface to a point, mm, outward positive; on a cone square to its axis. */
function distanceFrom(surface: Surface, p: Vector): number {
  const { origin, z } = surface.axes;
  const d = minus(p, origin);
  const height = inner(d, z);
  if (surface.kind === "plane") return height;
  return size(minus(d, times(height, z))) - radiusAt(surface, height);
}

/** Points of an arc that reach furthest along an axis of the place into which it is moved: up to six. */
export function extremesOf(edge: EdgeCurve, place: (p: Vector) => Vector): Vector[] {
  if (edge.kind === "line") return [];
  const { centre, axis, radius, sweep, start } = edge;
  const from = minus(start.point, centre);
  // Components of a vector after the move, as a vector before it: rows of the rotation.
  const columns = (
    [
      [1, 0, 0],
      [0, 1, 0],
      [0, 0, 1],
    ] as const
  ).map((e) => minus(place(plus(centre, e)), place(centre)));
  return [0, 1, 2].flatMap((k) => {
    const along = columns.map((column) => column[k]!) as unknown as Vector;
    const inPlane = minus(along, times(inner(along, axis), axis));
    if (size(inPlane) < 1e-9) return [];
    return [radius, -radius].flatMap((r) => {
      const to = times(r / size(inPlane), inPlane);
      const turn = Math.atan2(inner(axis, outer(from, to)), inner(from, to));
      return (turn < 0 ? turn + 2 * Math.PI : turn) <= sweep ? [plus(centre, to)] : [];
    });
  });
}
