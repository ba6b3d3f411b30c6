// The gate of STL files, one breakage after another: what the serializer might hand over is judged by its own bytes.
import { createRequire } from "node:module";
import modeling from "@jscad/modeling";
import { parseStl, stlBytes } from "@lamplane/export";
import { triangleCount, unweld } from "@lamplane/geometry/mesh";
import { afterEach, describe, expect, test, vi } from "vitest";
import { meshOf } from "../support/meshes.ts";

type Triangle = readonly (readonly [number, number, number])[];
type Serialize = (...args: unknown[]) => ArrayBuffer[];
const require = createRequire(new URL("../../packages/export/package.json", import.meta.url));
/** The very objects that the package calls: the whole serializer, and what it writes triangles with. */
const serializer: { serialize: Serialize } = require("@jscad/stl-serializer");
const binarySerializer: { serializeBinary: Serialize } = require("@jscad/stl-serializer/CSGToStlb.js");

/** P. Bourke, "STL format": 80 bytes, a count, then a normal, three corners and two bytes a facet. */
function serialised(triangles: readonly Triangle[]): ArrayBuffer[] {
  const facets = new DataView(new ArrayBuffer(50 * triangles.length));
  for (const [t, triangle] of triangles.entries())
    for (const [i, c] of triangle.flat().entries()) facets.setFloat32(50 * t + 12 + 4 * i, c, true);
  return [new ArrayBuffer(80), Uint32Array.of(triangles.length).buffer, facets.buffer];
}

const SIZE = [160, 60, 45] as const;
const VOLUME = 160 * 60 * 45;
const block = meshOf(modeling.primitives.cuboid({ size: [...SIZE], center: [80, 30, 22.5] }));
const sound: Triangle[] = trianglesIn(stlBytes(block, "block", VOLUME));

function trianglesIn(bytes: Uint8Array): Triangle[] {
  const mesh = parseStl(bytes);
  const [corners, count] = [unweld(mesh), triangleCount(mesh)];
  const corner = (i: number) => [corners[i]!, corners[i + 1]!, corners[i + 2]!] as const;
  return Array.from({ length: count }, (_, t) => [corner(9 * t), corner(9 * t + 3), corner(9 * t + 6)]);
}

/** Writes the block while the serializer hands over other triangles than its own. */
const written = (triangles: readonly Triangle[]) => () => {
  vi.spyOn(serializer, "serialize").mockReturnValue(serialised(triangles));
  vi.spyOn(binarySerializer, "serializeBinary").mockReturnValue(serialised(triangles));
  return stlBytes(block, "block", VOLUME);
};
afterEach(() => void vi.restoreAllMocks());

test("a sound block passes by hand too", () => {
  expect(trianglesIn(written(sound)())).toEqual(sound);
});

describe("refused", () => {
  const scaled = (by: number) => sound.map((t) => t.map(([x, y, z]) => [x * by, y, z] as const));

  test("a closed mesh of another volume than the solid's", () => {
    expect(written(scaled(1.001))).toThrow(/block: its volume in its STL is 43243.* where 432000 mm³ were expected/);
    expect(written(scaled(1 - 1e-4))).toThrow(/its volume in its STL/);
  });
  test("a closed mesh that looks inwards", () => {
    expect(written(sound.map(([a, b, c]) => [a!, c!, b!]))).toThrow(/in its STL is -43[12].*inwards/);
  });
  test("every face twice: edges doubled, none open", () => {
    expect(written([...sound, ...sound])).toThrow(/openEdges 72/); // 12 facets × 3 edges × 2
  });
  test("two blocks that share an edge", () => {
    const far = [0, 1].map((k) => Math.max(...sound.flat().map((corner) => corner[k]!)));
    const beside = sound.map((t) => t.map(([x, y, z]) => [x + far[0]!, y + far[1]!, z] as const));
    expect(written([...sound, ...beside])).toThrow(/openEdges/);
  });
  test("a flat facet let in along an edge, all edges closed", () => {
    const [[a, b, c], ...rest] = sound as [Triangle, ...Triangle[]];
    const middle = [0, 1, 2].map((k) => (a![k]! + b![k]!) / 2) as [number, number, number];
    const flat = [[a!, middle, b!] as const, [a!, b!, c!] as const];
    const neighbour = rest.findIndex((t) =>
      [0, 1, 2].some((i) => t[i] && same(t[i]!, b!) && same(t[(i + 1) % 3]!, a!)),
    );
    const [p, q, r] = turnedTo(rest[neighbour]!, b!);
    const closed = [...flat, ...rest.filter((_, i) => i !== neighbour), [p, middle, r], [middle, q, r]] as Triangle[];
    expect(written(closed)).toThrow(/^block: its mesh is no solid: flatTriangles 1$/);
  });
  test("a facet too thin for float32", () => {
    const thin: Triangle[] = sound.map((t) => t.map(([x, y, z]) => [x, y * 1e-7, z] as const));
    expect(written(thin)).toThrow(/flatTriangles/);
  });
  test("a corner that is no number", () => {
    const broken = sound.map((t, i) => (i === 0 ? [[Number.NaN, 0, 0] as const, t[1]!, t[2]!] : t));
    expect(written(broken)).toThrow(/notFinite/);
  });
  test("a facet missing", () => {
    expect(written(sound.slice(1))).toThrow(/openEdges 3/);
  });
});

const same = (a: readonly number[], b: readonly number[]): boolean => a.every((c, k) => c === b[k]);
/** A triangle begun at one of its corners. */
function turnedTo(triangle: Triangle, first: readonly number[]): Triangle {
  const at = triangle.findIndex((corner) => same(corner, first));
  return [0, 1, 2].map((i) => triangle[(at + i) % 3]!);
}
