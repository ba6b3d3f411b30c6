// Faces of what runs straight up from a flat drawing: walls, caps, prisms. Arcs become cylinders.
import { type Outline, type Point, reverseOutline, type Segment } from "../outline.ts";
import { type Edge, type Face, placeSegment, polyline, reverseEdge, type Surface } from "./face.ts";
import { normalize, type Vec3 } from "./vectors.ts";

const UP: Vec3 = [0, 0, 1];

/** A point of the drawing at a level. */
export const atLevel = ({ x, y }: Point, z: number): Vec3 => [x, y, z];

/** A flat segment as an edge at a level. */
export const edgeAtLevel = (segment: Segment, z: number): Edge =>
  placeSegment(segment, { place: (p) => atLevel(p, z), axis: UP });

/**
 * The wall over a segment; its outside lies to the right of the way along it.
 * @param froms levels at which corners lie over the segment's beginning, ascending: the lowest, the highest, any between
 * @param tos the same over its end
 */
export function wallFace(segment: Segment, froms: readonly number[], tos: readonly number[] = froms): Face {
  const [low, high] = [tos[0]!, tos.at(-1)!];
  const rises = polyline(tos.map((z) => atLevel(segment.to, z)));
  const falls = polyline([...froms].reverse().map((z) => atLevel(segment.from, z)));
  const loop = [edgeAtLevel(segment, low), ...rises, reverseEdge(edgeAtLevel(segment, high)), ...falls];
  return { surface: wallSurface(segment, low), loops: [loop] };
}

function wallSurface(segment: Segment, low: number): Surface {
  const { from, to } = segment;
  if (segment.kind === "line") return { kind: "plane", normal: normalize([to.y - from.y, from.x - to.x, 0]) };
  const { centre, radius, sweep } = segment;
  return { kind: "cylinder", origin: atLevel(centre, low), axis: UP, radius, convex: sweep > 0 };
}

/** Walls over a chain, as `wallFace`. */
export const wallFaces = (chain: readonly Segment[], low: number, high: number): Face[] =>
  chain.map((segment) => wallFace(segment, [low, high]));

/** A level face within rings, each with the solid to its left; its outside above or below. */
export const levelFace = (rings: readonly Outline[], z: number, outside: "above" | "below"): Face => ({
  surface: { kind: "plane", normal: outside === "above" ? UP : [0, 0, -1] },
  loops: rings.map((ring) =>
    (outside === "above" ? ring : reverseOutline(ring)).map((segment) => edgeAtLevel(segment, z)),
  ),
});

/** Faces of a prism between two levels over rings, each with the solid to its left. */
export const prismFaces = (rings: readonly Outline[], low: number, high: number): Face[] => [
  ...rings.flatMap((ring) => wallFaces(ring, low, high)),
  levelFace(rings, high, "above"),
  levelFace(rings, low, "below"),
];
