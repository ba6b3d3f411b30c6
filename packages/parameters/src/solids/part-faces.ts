// What a part's solid is made from: exact faces, and the volume within them once arcs are cut into chords.
import {
  type Circle,
  circleOutline,
  type Outline,
  type Point,
  polygonArea,
  reverseOutline,
  type Segment,
  type Shape,
  tessellate,
} from "@lamplane/geometry";
import { type Face, prismFaces } from "@lamplane/geometry/mesh";

export interface PartFaces {
  readonly faces: readonly Face[];
  /** Volume of the mesh that the faces become, from the same outlines in chords, mm³. */
  readonly volume: number;
}

/** Area within an outline whose arcs are cut into chords, mm². */
export const chordArea = (outline: Outline): number => polygonArea(tessellate(outline));

/** Rings of a shape, each with its material to the left: boundary counter-clockwise, holes clockwise. */
const shapeRings = ({ boundary, holes, circles }: Shape): Outline[] => [
  boundary,
  ...holes.map(reverseOutline),
  ...circles.map(holeOutline),
];

/** A round hole, run clockwise. */
export const holeOutline = (circle: Circle): Outline => reverseOutline(circleOutline(circle));

/** A plain shape without holes. */
export const plainShape = (boundary: Outline): Shape => ({ boundary, holes: [], circles: [] });

/** A prism between z = low and high. */
export function prism(shape: Shape, low: number, high: number): PartFaces {
  const rings = shapeRings(shape);
  const area = rings.reduce((sum, ring) => sum + chordArea(ring), 0);
  return { faces: prismFaces(rings, low, high), volume: area * (high - low) };
}

/** The open chain's corners in chords, both ends included. */
export const tessellateChain = (chain: readonly Segment[]): Point[] =>
  chain.length === 0 ? [] : [...tessellate(chain), chain.at(-1)!.to];
