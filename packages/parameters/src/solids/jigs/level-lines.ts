// Rings at a level distance round strokes, by marching over a grid: they always close and never meet, whatever the strokes do.
import { distance, type Point, point } from "@lamplane/geometry";

export type Stroke = readonly Point[];

/** Side of the grid's cells, mm, and how far a ring may leave its true line when points on it are dropped, mm. */
const CELL = 0.2;
const DROPPED = 0.03;
/** Where the grid begins, in cells: an odd share, so that no corner of it falls on a level line. */
const ODD = 2.3719;

/**
 * Rings of all places that lie within `radius` of the strokes: boundaries counter-clockwise, what is left out clockwise.
 * @see marching squares; W. E. Lorensen and H. E. Cline, "Marching cubes", 1987, in the plane
 */
export function strokeRings(strokes: readonly Stroke[], radius: number): Point[][] {
  const points = strokes.flat();
  const [xs, ys] = [points.map((p) => p.x), points.map((p) => p.y)];
  const from = point(Math.min(...xs) - radius - ODD * CELL, Math.min(...ys) - radius - ODD * CELL);
  const columns = Math.ceil((Math.max(...xs) + radius - from.x) / CELL) + 3;
  const rows = Math.ceil((Math.max(...ys) + radius - from.y) / CELL) + 3;
  const sides = strokes.flatMap((stroke) => stroke.slice(1).map((to, i) => [stroke[i]!, to] as const));
  const within = depthsWithin(sides, radius, { from, columns, rows });
  const crossing = (a: number, b: number): Point => {
    const share = within[a]! / (within[a]! - within[b]!);
    const [p, q] = [a, b].map((k) => gridCorner(from, k % columns, Math.floor(k / columns))) as [Point, Point];
    return point(p.x + (q.x - p.x) * share, p.y + (q.y - p.y) * share);
  };
  return chainEdges(nextEdges(within, columns, rows), crossing)
    .map(simplifyRing)
    .filter((ring) => ring.length > 2);
}

interface Grid {
  readonly from: Point;
  readonly columns: number;
  readonly rows: number;
}

const gridCorner = (from: Point, i: number, j: number): Point => point(from.x + i * CELL, from.y + j * CELL);

/** How deep each corner of the grid lies within `radius` of the nearest side, mm; −∞ for some of those that lie a cell outside. */
function depthsWithin(
  sides: readonly (readonly [Point, Point])[],
  radius: number,
  { from, columns, rows }: Grid,
): Float64Array {
  const depths = new Float64Array(columns * rows).fill(-Infinity);
  const reach = radius + 2 * CELL;
  const span = (a: number, b: number, low: number, count: number) => [
    Math.max(0, Math.floor((Math.min(a, b) - reach - low) / CELL)),
    Math.min(count - 1, Math.ceil((Math.max(a, b) + reach - low) / CELL)),
  ];
  for (const [a, b] of sides) {
    const [i0, i1] = span(a.x, b.x, from.x, columns) as [number, number];
    const [j0, j1] = span(a.y, b.y, from.y, rows) as [number, number];
    for (let j = j0; j <= j1; j++)
      for (let i = i0; i <= i1; i++) {
        const k = j * columns + i;
        depths[k] = Math.max(depths[k]!, radius - distanceToSide(gridCorner(from, i, j), a, b));
      }
  }
  return depths;
}

/** For each edge of the grid that a ring comes in by, where it goes out: the strokes' side on its left. */
function nextEdges(within: Float64Array, columns: number, rows: number): Map<string, string> {
  const next = new Map<string, string>();
  for (let j = 0; j + 1 < rows; j++)
    for (let i = 0; i + 1 < columns; i++) {
      const k = j * columns + i;
      const around = [k, k + 1, k + columns + 1, k + columns];
      const inside = around.map((c) => within[c]! > 0);
      if (inside.every((is) => is === inside[0])) continue;
      around.forEach((c, side) => {
        // Going round the cell, a ring leaves it where inside turns to outside and came in where outside last turned to inside.
        if (!inside[side] || inside[(side + 1) % 4]) return;
        let back = side;
        while (inside[(back + 3) % 4]) back = (back + 3) % 4;
        next.set(edgeKey(c, around[(side + 1) % 4]!), edgeKey(around[(back + 3) % 4]!, around[back]!));
      });
    }
  return next;
}

const edgeKey = (a: number, b: number): string => (a < b ? `${a} ${b}` : `${b} ${a}`);

function chainEdges(next: Map<string, string>, crossing: (a: number, b: number) => Point): Point[][] {
  const rings: Point[][] = [];
  for (const start of next.keys()) {
    if (!next.has(start)) continue;
    const ring: Point[] = [];
    let edge: string | undefined = start;
    while (edge !== undefined && next.has(edge)) {
      const [a, b] = edge.split(" ").map(Number) as [number, number];
      ring.push(crossing(a, b));
      const following: string = next.get(edge)!;
      next.delete(edge);
      edge = following;
    }
    rings.push(ring);
  }
  return rings;
}

/** The ring with every point left out that lies nearly on the straight way between those kept; its ends stand far apart, on bends. */
function simplifyRing(ring: readonly Point[]): Point[] {
  const first = furthestIndex(ring, ring[0]!);
  const around = [...ring.slice(first), ...ring.slice(0, first)];
  const far = furthestIndex(around, around[0]!);
  return [...simplifyChain(around.slice(0, far + 1)), ...simplifyChain([...around.slice(far), around[0]!])];
}

const furthestIndex = (ring: readonly Point[], from: Point): number =>
  ring.reduce((best, p, i) => (distance(p, from) > distance(ring[best]!, from) ? i : best), 0);

/** Points to keep of an open chain, the last left out. @see D. H. Douglas and T. K. Peucker, 1973 */
function simplifyChain(chain: readonly Point[]): Point[] {
  const [first, last] = [chain[0]!, chain.at(-1)!];
  let [worst, off] = [0, DROPPED];
  chain.forEach((p, i) => {
    const d = distanceToSide(p, first, last);
    if (d > off) [worst, off] = [i, d];
  });
  return worst === 0 ? [first] : [...simplifyChain(chain.slice(0, worst + 1)), ...simplifyChain(chain.slice(worst))];
}

/** Distance of a point from a straight side, mm. */
export function distanceToSide(p: Point, a: Point, b: Point): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const square = dx * dx + dy * dy;
  const share = square === 0 ? 0 : Math.max(0, Math.min(1, ((p.x - a.x) * dx + (p.y - a.y) * dy) / square));
  return Math.hypot(p.x - a.x - share * dx, p.y - a.y - share * dy);
}
