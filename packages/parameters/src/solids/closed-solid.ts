// From faces to a solid, through a gate that is always on: every edge has its one opposite and the volume is the expected one.
import modeling from "@jscad/modeling";
import type { Geom3 } from "@jscad/modeling/src/geometries/types.js";
import type { Triangle, Vec3 } from "./faces.ts";

const { geom3, poly3 } = modeling.geometries;

/** Largest share by which a mesh's volume may differ from the one computed from its outlines: rounding, nothing else. */
const VOLUME_ROUNDING = 1e-9;

/**
 * A solid made of its faces.
 * @param volume what the outlines say it must hold, mm³.
 * @throws Error (our bug) naming the part where an edge is open or doubled, a corner not finite, or the volume another.
 */
export function makeClosedSolid(name: string, triangles: readonly Triangle[], volume: number): Geom3 {
  const open = countOpenEdges(triangles);
  if (open > 0) throw new Error(`${name}: ${open} edges of its solid are open or doubled`);
  const found = trianglesVolume(triangles);
  if (!(found > 0 && Math.abs(found - volume) <= VOLUME_ROUNDING * Math.max(volume, 1)))
    throw new Error(`${name}: its solid holds ${found} mm³ where its outlines say ${volume}`);
  return geom3.create(triangles.map((t) => poly3.create(t as never)));
}

/** Directed edges that do not have exactly one opposite; corners that are not finite count too. */
export function countOpenEdges(triangles: readonly Triangle[]): number {
  const ids = new Map<number, Map<number, Map<number, number>>>();
  let count = 0;
  const idOf = ([x, y, z]: Vec3) => {
    const alongZ = getOrCreate(getOrCreate(ids, x), y);
    const known = alongZ.get(z) ?? count++;
    alongZ.set(z, known);
    return Number.isFinite(x + y + z) ? known : Number.NaN;
  };
  const seen = new Map<number, number>();
  const base = 3 * triangles.length + 1;
  for (const t of triangles) {
    const [a, b, c] = t.map(idOf) as [number, number, number];
    for (const [p, q] of [
      [a, b],
      [b, c],
      [c, a],
    ] as const)
      seen.set(p * base + q, (seen.get(p * base + q) ?? 0) + 1);
  }
  let open = 0;
  for (const [edge, times] of seen) {
    const opposite = (edge % base) * base + Math.floor(edge / base);
    if (times !== 1 || seen.get(opposite) !== 1) open++;
  }
  return open;
}

function getOrCreate<V>(map: Map<number, Map<number, V>>, key: number): Map<number, V> {
  const known = map.get(key) ?? new Map<number, V>();
  map.set(key, known);
  return known;
}

/** Volume within triangles that look outward, mm³. */
export function trianglesVolume(triangles: readonly Triangle[]): number {
  const [ox, oy, oz] = triangles[0]?.[0] ?? [0, 0, 0];
  return triangles.reduce((sum, [a, b, c]) => {
    const [ax, ay, az, bx, by, bz, cx, cy, cz] = [
      a[0] - ox,
      a[1] - oy,
      a[2] - oz,
      b[0] - ox,
      b[1] - oy,
      b[2] - oz,
      c[0] - ox,
      c[1] - oy,
      c[2] - oz,
    ];
    return sum + (ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx)) / 6;
  }, 0);
}
