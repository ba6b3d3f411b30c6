// A list of exact faces → the mesh that stands for it: arcs in chords, each edge cut once for both faces that meet in it.
import { CHORD_ERROR, chordCount, type Point } from "../outline.ts";
import { cosDeg, sinDeg } from "../trig.ts";
import { type ArcEdge, type Edge, type Face, type Loop, type PlaneSurface, reverseEdge } from "./face.ts";
import type { Mesh } from "./mesh.ts";
import { type Numbers, triangulate } from "./triangulate.ts";
import { add, cross, dot, scale, subtract, type Vec3 } from "./vectors.ts";
import { VertexTable } from "./vertex-table.ts";

/** Mesh of a face list. Corners in the middle of a straight side stay corners, so that neighbours close to the last bit. */
export function tessellateFaces(faces: readonly Face[], chordError = CHORD_ERROR): Mesh {
  const edges = new EdgeTable(chordError);
  for (const { surface, loops } of faces) if (surface.kind === "cone") edges.cutAlike(loops[0]!);
  const areas = new AreaTable();
  const indices = faces.flatMap(({ surface, loops }) =>
    surface.kind === "plane" ? planeTriangles(surface, loops, edges, areas) : ruledTriangles(loops, edges),
  );
  return { positions: edges.vertices.positions(), indices: new Uint32Array(indices) };
}

/** Points of an arc from its first to its last, both included. */
function divideArc({ from, to, centre, axis, sweep }: ArcEdge, chords: number): Vec3[] {
  const spoke = subtract(from, centre);
  const square = cross(axis, spoke);
  return Array.from({ length: chords + 1 }, (_, i): Vec3 => {
    if (i === 0 || i === chords) return i === 0 ? from : to;
    const turn = (sweep * i) / chords;
    return add(centre, add(scale(spoke, cosDeg(turn)), scale(square, sinDeg(turn))));
  });
}

/** Vertices along edges, the same ones whichever way an edge is run. */
class EdgeTable {
  readonly vertices = new VertexTable();
  readonly #chordError: number;
  readonly #arcs = new Map<string, readonly number[]>();

  constructor(chordError: number) {
    this.#chordError = chordError;
  }

  /** Vertices from the edge's first to its last, both included. */
  along(edge: Edge): readonly number[] {
    const [first, last] = [this.vertices.numberOf(...edge.from), this.vertices.numberOf(...edge.to)];
    if (edge.kind === "line") return [first, last];
    const known = this.#arcs.get(arcKey(first, last, edge));
    if (known) return known;
    return this.#divide(edge, chordCount(edge.radius, edge.sweep, this.#chordError));
  }

  /** A cone's arcs have as many chords as the one that its cylinder shares needs. */
  cutAlike([first, , third]: Loop): void {
    this.#divide(first as ArcEdge, this.along(third!).length - 1);
  }

  #divide(edge: ArcEdge, chords: number): readonly number[] {
    const back = reverseEdge(edge) as ArcEdge;
    // Counter-clockwise whichever way it is run, so that arcs over each other are cut at the very same places.
    const isForward = turnOf(edge) > 0;
    const made = divideArc(isForward ? edge : back, chords).map((p) => this.vertices.numberOf(...p));
    const numbers = isForward ? made : [...made].reverse();
    const [first, last] = [numbers[0]!, numbers.at(-1)!];
    this.#arcs.set(arcKey(first, last, edge), numbers);
    this.#arcs.set(arcKey(last, first, back), [...numbers].reverse());
    return numbers;
  }
}

/** Two arcs between the same ends differ in the side to which they bulge. */
const arcKey = (first: number, last: number, edge: ArcEdge): string => `${first},${last},${turnOf(edge)}`;

/** Whether an arc turns counter-clockwise, +1, or clockwise, −1, about its axis pointed one way. */
const turnOf = ({ axis, sweep }: ArcEdge): number =>
  Math.sign(sweep) * Math.sign(axis.find((k) => Math.abs(k) > 1e-6) ?? 1);

/** Triangles of flat areas. The two ends of a prism have the same ones, which are found once. */
class AreaTable {
  readonly #areas: {
    points: readonly Point[];
    rings: readonly (readonly number[])[];
    triangles: readonly Numbers[];
  }[] = [];

  /** @param rings counter-clockwise, holes clockwise, each by the numbers of its points, which run on from ring to ring */
  triangulate(points: readonly Point[], rings: readonly (readonly number[])[]): readonly Numbers[] {
    const known = this.#areas.find(
      (area) =>
        area.points.length === points.length &&
        area.points.every(({ x, y }, i) => x === points[i]!.x && y === points[i]!.y) &&
        area.rings.every((ring, i) => ring.length === rings[i]?.length),
    );
    if (known) return known.triangles;
    const triangles = triangulate(points, rings);
    this.#areas.push({ points, rings, triangles });
    return triangles;
  }
}

/**
 * A plane in two of its three coordinates as they stand, so that points that lie in line stay in line; one whose outside
 * points down the third is seen from inside, its rings run backwards.
 */
function planeTriangles(
  { normal }: PlaneSurface,
  loops: readonly Loop[],
  edges: EdgeTable,
  areas: AreaTable,
): number[] {
  const largest = [0, 1, 2].reduce((best, k) => (Math.abs(normal[k]!) > Math.abs(normal[best]!) ? k : best), 0);
  const [u, v] = [(largest + 1) % 3, (largest + 2) % 3] as [0 | 1 | 2, 0 | 1 | 2];
  const isInside = normal[largest]! < 0;
  const rings = loops.map((loop) => {
    const numbers = loop.flatMap((edge) => edges.along(edge).slice(0, -1));
    return isInside ? [numbers[0]!, ...numbers.slice(1).reverse()] : numbers;
  });
  const numbers = rings.flat();
  const points = numbers.map((n) => {
    const p = edges.vertices.at(n);
    return { x: p[u], y: p[v] };
  });
  let first = 0;
  const local = rings.map((ring) => ring.map(() => first++));
  const corners: number[] = [];
  for (const [a, b, c] of areas.triangulate(points, local))
    corners.push(numbers[a]!, numbers[isInside ? c : b]!, numbers[isInside ? b : c]!);
  return corners;
}

/** Rulings of a cylinder or cone from arc to arc, a strip between each two. */
function ruledTriangles([loop]: readonly Loop[], edges: EdgeTable): number[] {
  const start = loop!.findIndex((edge) => edge.kind === "arc");
  const around = [...loop!.slice(start), ...loop!.slice(0, start)];
  const back = around.findIndex((edge, i) => i > 0 && edge.kind === "arc");
  const near = edges.along(around[0]!);
  const far = [...edges.along(around[back]!)].reverse();
  if (near.length !== far.length) throw new Error("two arcs of a curved face are cut into different numbers of chords");
  const between = (lines: readonly Edge[]) => lines.slice(1).map((edge) => edges.along(edge)[0]!);
  const rulings = near.map((n, i) => [n, far[i]!]);
  rulings[0]!.splice(1, 0, ...between(around.slice(back + 1)).reverse());
  rulings.at(-1)!.splice(1, 0, ...between(around.slice(1, back)));
  const { axis } = around[0] as ArcEdge;
  const height = (n: number) => Math.abs(dot(subtract(edges.vertices.at(n), around[0]!.from), axis));
  return rulings.slice(1).flatMap((ruling, i) => strip(rulings[i]!, ruling, height));
}

/** Triangles between two rulings: each has one side on one of them and its point on the other, so none is flat. */
function strip(as: readonly number[], bs: readonly number[], height: (n: number) => number): number[] {
  const triangles: number[] = [];
  const next = (ruling: readonly number[], i: number) => (i < ruling.length ? height(ruling[i]!) : Infinity);
  let [i, j] = [0, 0];
  while (i < as.length - 1 || j < bs.length - 1) {
    triangles.push(as[i]!, bs[j]!);
    triangles.push(next(bs, j + 1) <= next(as, i + 1) ? bs[++j]! : as[++i]!);
  }
  return triangles;
}
