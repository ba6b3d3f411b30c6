// Mends a flat face's triangulation: a triangle nearly without height gives its long side away, so that rounding cannot flatten it.
import type { Triangle } from "./faces.ts";
import { cross, norm, subtract, type Vec3, vectorsEqual } from "./vectors.ts";

/**
 * Height, as a share of the face's size, under which a triangle is a sliver: the STL serializer snaps corners to a grid
 * of 1e-5 of the solid's size, so two corners may move by that much towards each other.
 */
const SLIVER = 3e-5;

/** The same face with slivers turned over into their neighbours; its corners and outer sides stay. */
export function removeSlivers(triangles: readonly Triangle[], size: number): Triangle[] {
  const result = [...triangles];
  const sides = new Map<string, number>();
  const keep = (k: number) => {
    for (const [a, b] of triangleSides(result[k]!)) sides.set(sideKey(a, b), k);
  };
  const waiting = result.map((_, k) => k);
  for (const k of waiting) keep(k);
  for (let turns = 4 * result.length; waiting.length > 0 && turns > 0; turns--) {
    const k = waiting.pop()!;
    const [a, b, apex] = longestSideFirst(result[k]!);
    const low = triangleHeight(result[k]!);
    const other = sides.get(sideKey(b, a));
    if (low >= SLIVER * size || other === undefined) continue;
    const far = result[other]!.find((p) => !vectorsEqual(p, a) && !vectorsEqual(p, b))!;
    const turned: [Triangle, Triangle] = [
      [a, far, apex],
      [far, b, apex],
    ];
    if (Math.min(...turned.map(triangleHeight)) <= Math.min(low, triangleHeight(result[other]!))) continue;
    for (const [p, q] of [
      [a, b],
      [b, a],
    ] as const)
      sides.delete(sideKey(p, q));
    [result[k], result[other]] = turned;
    for (const t of [k, other]) {
      keep(t);
      waiting.push(t);
    }
  }
  return result;
}

const triangleSides = ([a, b, c]: Triangle) =>
  [
    [a, b],
    [b, c],
    [c, a],
  ] as const;
const sideKey = (a: Vec3, b: Vec3): string => `${a.join()};${b.join()}`;
const sideLength = (a: Vec3, b: Vec3): number => norm(subtract(a, b));

function longestSideFirst([a, b, c]: Triangle): Triangle {
  const [ab, bc, ca] = [sideLength(a, b), sideLength(b, c), sideLength(c, a)];
  return ab >= bc && ab >= ca ? [a, b, c] : bc >= ca ? [b, c, a] : [c, a, b];
}

/** Height of a triangle over its longest side, mm. */
function triangleHeight(t: Triangle): number {
  const [a, b, c] = longestSideFirst(t);
  return norm(cross(subtract(b, a), subtract(c, a))) / sideLength(a, b);
}
