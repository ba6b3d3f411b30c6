// Where on a flat face a rectangle has room: the face in cells, each free only where it lies wholly inside, clear of every edge.
import { boundsOf, type Point, point } from "@lamplane/geometry";

/** Side of a cell, mm. */
const CELL = 1;
/** Half a cell's diagonal, mm: what a cell reaches beyond its middle. */
const REACH = CELL * Math.SQRT1_2;

export interface FreeGrid {
  readonly min: Point;
  readonly columns: number;
  readonly rows: number;
  /** 1 where a cell is taken. */
  readonly taken: Uint8Array;
}

/** Free cells of a face within its boundary and outside its holes, `clear` from every edge. mm */
export function makeFreeGrid(rings: readonly (readonly Point[])[], clear: number): FreeGrid {
  const { min, max } = boundsOf(rings.flat());
  const [columns, rows] = [Math.ceil((max.x - min.x) / CELL), Math.ceil((max.y - min.y) / CELL)];
  const room = { min, columns, rows, taken: new Uint8Array(columns * rows) };
  blockOutside(room, rings);
  for (const ring of rings)
    for (const [i, a] of ring.entries()) blockNear(room, a, ring[(i + 1) % ring.length]!, clear + REACH);
  return room;
}

/** A cell is inside where a level ray to its left meets the rings an odd number of times. */
function blockOutside({ min, columns, rows, taken }: FreeGrid, rings: readonly (readonly Point[])[]): void {
  for (let row = 0; row < rows; row++) {
    const y = min.y + (row + 0.5) * CELL;
    const meets = rings
      .flatMap((ring) =>
        ring.flatMap((a, i) => {
          const b = ring[(i + 1) % ring.length]!;
          return a.y > y === b.y > y ? [] : [a.x + ((y - a.y) * (b.x - a.x)) / (b.y - a.y)];
        }),
      )
      .sort((a, b) => a - b);
    let left = 0;
    for (let column = 0; column < columns; column++) {
      const x = min.x + (column + 0.5) * CELL;
      while (left < meets.length && meets[left]! <= x) left++;
      if (left % 2 === 0) taken[row * columns + column] = 1;
    }
  }
}

function blockNear({ min, columns, rows, taken }: FreeGrid, a: Point, b: Point, within: number): void {
  const span = (low: number, high: number, from: number, count: number) => [
    Math.max(0, Math.floor((low - within - from) / CELL)),
    Math.min(count - 1, Math.ceil((high + within - from) / CELL)),
  ];
  const [c0, c1] = span(Math.min(a.x, b.x), Math.max(a.x, b.x), min.x, columns) as [number, number];
  const [r0, r1] = span(Math.min(a.y, b.y), Math.max(a.y, b.y), min.y, rows) as [number, number];
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const square = dx * dx + dy * dy;
  for (let row = r0; row <= r1; row++)
    for (let column = c0; column <= c1; column++) {
      const [x, y] = [min.x + (column + 0.5) * CELL - a.x, min.y + (row + 0.5) * CELL - a.y];
      const share = square === 0 ? 0 : Math.max(0, Math.min(1, (x * dx + y * dy) / square));
      if ((x - share * dx) ** 2 + (y - share * dy) ** 2 < within * within) taken[row * columns + column] = 1;
    }
}

/** Middle of the free rectangle nearest to a place; undefined where there is none. */
export function findFreeMiddle(room: FreeGrid, width: number, height: number, near: Point): Point | undefined {
  const { columns, rows, min } = room;
  const [w, h] = [Math.ceil(width / CELL), Math.ceil(height / CELL)];
  const sums = summedArea(room);
  const stride = columns + 1;
  let best: { at: Point; off: number } | undefined;
  for (let row = 0; row + h <= rows; row++)
    for (let column = 0; column + w <= columns; column++) {
      const [low, high] = [row * stride + column, (row + h) * stride + column];
      if (sums[high + w]! - sums[high]! - sums[low + w]! + sums[low]! > 0) continue;
      const at = point(min.x + (column + w / 2) * CELL, min.y + (row + h / 2) * CELL);
      const off = Math.hypot(at.x - near.x, at.y - near.y);
      if (best === undefined || off < best.off) best = { at, off };
    }
  return best?.at;
}

const summedAreas = new WeakMap<FreeGrid, Uint32Array>();

/** Taken cells below and left of each cell's corner. */
function summedArea(room: FreeGrid): Uint32Array {
  const found = summedAreas.get(room);
  if (found) return found;
  const { columns, rows, taken } = room;
  const stride = columns + 1;
  const sums = new Uint32Array(stride * (rows + 1));
  for (let row = 0; row < rows; row++)
    for (let column = 0; column < columns; column++)
      sums[(row + 1) * stride + column + 1] =
        taken[row * columns + column]! +
        sums[row * stride + column + 1]! +
        sums[(row + 1) * stride + column]! -
        sums[row * stride + column]!;
  summedAreas.set(room, sums);
  return sums;
}
