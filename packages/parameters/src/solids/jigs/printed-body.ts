// A jig's body as a closed solid made of its faces: plate chamfered at the table, holes, risers, letters sunk in the upper face.
import { line, type Outline, type Point, polygonArea, reverseOutline, ringPairs, tessellate } from "@lamplane/geometry";
import { type Face, levelFace, wallFaces } from "@lamplane/geometry/mesh";
import { INSIDE_FACE, type JigBody, LEAST_WALL, TABLE_CHAMFER } from "../../jigs/jig.ts";
import { chordArea } from "../part-faces.ts";
import { type LabelLayout, layOutLabels } from "./label.ts";
import { type Glyph, isInsideRing } from "./lettering.ts";
import { distanceToSide, type Stroke } from "./level-lines.ts";
import { chamferRing } from "./table-chamfer.ts";

/** How deep letters are sunk, mm: three layers of 0.2, which no wall under them misses. */
const SUNK = 0.6;

/** A ring of the plate with its edge at the table: the solid lies to its left. */
interface Ring {
  readonly outline: Outline;
  /** Its corners once arcs are cut into chords. */
  readonly points: readonly Point[];
  readonly chamfer: number;
}

const makeRing = (outline: Outline, chamfer = TABLE_CHAMFER): Ring => ({
  outline,
  points: tessellate(outline),
  chamfer,
});

export interface PrintedBody {
  readonly faces: readonly Face[];
  /** The same without letters. */
  readonly plainFaces: readonly Face[];
  readonly volume: number;
  /** What can be read on it, line by line. */
  readonly reads: readonly string[];
  /** Middle lines of its letters. */
  readonly strokes: readonly Stroke[];
}

/**
 * Faces and volume of a body as it lies, its lower face at z = 0, and what is readable on it.
 * @throws Error (our bug) where its labels find no room, or a letter stands out of its face
 */
export function printedBody(body: JigBody): PrintedBody {
  const { rings, label } = letterPlate(body);
  const pieces = label.letters.flatMap((letter) => letter.pieces);
  assertInside(rings, [...pieces.map((p) => p.boundary), ...body.risers.map((r) => tessellate(r.outline))]);
  const top = body.thickness;
  const chamfered = rings.map(({ outline, chamfer }) => chamferRing(outline, chamfer, top));
  const outlines = chamfered.map(({ ring }) => ring);
  const risen = body.risers.map(({ outline }) => reverseOutline(outline));
  const below = [
    levelFace(
      chamfered.map(({ low }) => low),
      0,
      "below",
    ),
    ...chamfered.flatMap(({ faces }) => faces),
  ];
  const risers = body.risers.flatMap(({ outline, height }) => [
    ...wallFaces(outline, top, top + height),
    levelFace([outline], top + height, "above"),
  ]);
  const topAround = (letters: readonly Outline[]) => levelFace([...outlines, ...letters, ...risen], top, "above");
  const letters = pieces.map(({ boundary }) => ringOutline([...boundary].reverse()));
  return {
    faces: [...below, topAround(letters), ...pieces.flatMap((piece) => letterFaces(piece, top)), ...risers],
    plainFaces: [...below, topAround([]), ...risers],
    volume:
      chamfered.reduce((sum, { ring, removed }) => sum + chordArea(ring) * top - removed, 0) +
      body.risers.reduce((sum, { outline, height }) => sum + chordArea(outline) * height, 0) -
      pieces.reduce((sum, piece) => sum + SUNK * pieceArea(piece), 0),
    reads: label.lines.flat(),
    strokes: label.letters.flatMap((letter) => letter.strokes),
  };
}

/** Rings of the plate and its letters: lightened where the whole of every label still finds room, else left full. */
function letterPlate(body: JigBody): { rings: Ring[]; label: LabelLayout } {
  const hole = (outline: Outline, chamfer?: number) => makeRing(reverseOutline(outline), chamfer);
  const full = [makeRing(body.boundary), ...body.holes.map(({ outline, chamfer }) => hole(outline, chamfer))];
  const light = [...full, ...body.lightening.map((outline) => hole(outline))];
  const risers = body.risers.map(({ outline }) => tessellate(outline));
  const on = (rings: readonly Ring[]) => layOutLabels(body.labels, [...rings.map((r) => r.points), ...risers]);
  const [withHoles, without] = [on(light), body.lightening.length > 0 ? on(full) : undefined];
  const letters = (placed: LabelLayout) => placed.lines.flat().join("").length;
  if (withHoles && (!without || letters(withHoles) >= ENOUGH_LETTERS * letters(without)))
    return { rings: light, label: withHoles };
  if (without) return { rings: full, label: without };
  throw new Error(`no room for the letters ${body.labels.map((l) => l.choices.at(-1)!.join(" ")).join(", ")}`);
}

/** Share of its letters that a shortened name must keep for the sake of less material. */
const ENOUGH_LETTERS = 0.7;

type Piece = Glyph["pieces"][number];

/** Floor of a letter, its walls, and the tops of what stands within it. */
function letterFaces({ boundary, counters }: Piece, top: number): Face[] {
  const floor = top - SUNK;
  const rings = [boundary, ...counters].map(ringOutline);
  return [
    levelFace(rings, floor, "above"),
    ...rings.flatMap((ring) => wallFaces(reverseOutline(ring), floor, top)),
    ...counters.map((ring) => levelFace([ringOutline([...ring].reverse())], top, "above")),
  ];
}

const pieceArea = ({ boundary, counters }: Piece): number =>
  polygonArea(boundary) + counters.reduce((sum, ring) => sum + polygonArea(ring), 0);

/** A ring of corners as an outline; no corner is dropped, however near the next. */
const ringOutline = (points: readonly Point[]): Outline => ringPairs(points).map(([from, to]) => line(from, to));

/** Holes must leave walls; what stands on or is sunk in the upper face must lie in it, clear of its edges and of each other's. */
function assertInside(rings: readonly Ring[], inner: readonly (readonly Point[])[]): void {
  const edges = rings.map((ring) => ring.points);
  edges.forEach((points, k) => {
    const wall = leastDistance(points, edges.slice(k + 1), LEAST_WALL);
    if (wall < LEAST_WALL) throw new Error(`a wall between two edges is ${wall} mm`);
  });
  inner.forEach((points, k) => {
    const others = [...edges, ...inner.filter((_, i) => i !== k)];
    const near = leastDistance(points, others, INSIDE_FACE);
    const outside =
      !isInsideRing(points[0]!, edges[0]!) || edges.slice(1).some((hole) => isInsideRing(points[0]!, hole));
    if (outside || near < INSIDE_FACE)
      throw new Error(`a letter or riser stands ${near} mm from an edge of its face, or out of it`);
  });
}

/** Least distance from corners to sides of other rings, worked out only where it is about `matters` or less. mm */
function leastDistance(points: readonly Point[], rings: readonly (readonly Point[])[], matters: number): number {
  let least = Number.POSITIVE_INFINITY;
  const box = expandedBounds(points, 2 * matters);
  for (const ring of rings)
    ring.forEach((a, i) => {
      const b = ring[(i + 1) % ring.length]!;
      if (Math.max(a.x, b.x) < box.left || Math.min(a.x, b.x) > box.right) return;
      if (Math.max(a.y, b.y) < box.low || Math.min(a.y, b.y) > box.high) return;
      for (const p of points) least = Math.min(least, distanceToSide(p, a, b));
    });
  return least;
}

function expandedBounds(points: readonly Point[], more: number) {
  const [xs, ys] = [points.map((p) => p.x), points.map((p) => p.y)];
  return {
    left: Math.min(...xs) - more,
    right: Math.max(...xs) + more,
    low: Math.min(...ys) - more,
    high: Math.max(...ys) + more,
  };
}
