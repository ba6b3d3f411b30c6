// Vectors, meshes and exact faces with values worked by hand: boxes, a tetrahedron, and bodies of Euclid's Elements, book XII.
import { arc, type Circle, circleOutline, type Outline, point, polygon, reverseOutline } from "@lamplane/geometry";
import {
  add,
  countOpenEdges,
  cross,
  dot,
  facesVolume,
  joinMeshes,
  type Mesh,
  maxAbsCoordinate,
  measureMesh,
  meshArea,
  meshFaults,
  meshVolume,
  norm,
  normalize,
  prismFaces,
  roundToFloat32,
  scale,
  subtract,
  tessellateFaces,
  triangleHeight,
  unitNormal,
  unweld,
  type Vec3,
  weld,
} from "@lamplane/geometry/mesh";
import fc from "fast-check";
import { describe, expect, test } from "vitest";

const coordinate = fc.double({ min: -100, max: 100, noNaN: true });
const vectors = fc.tuple(coordinate, coordinate, coordinate);

describe("vectors", () => {
  test("the axes' products follow one another round", () => {
    const [x, y, z]: Vec3[] = [
      [1, 0, 0],
      [0, 1, 0],
      [0, 0, 1],
    ];
    expect([cross(x!, y!), cross(y!, z!), cross(z!, x!)]).toEqual([z, x, y]);
    expect(unitNormal([0, 0, 5], [3, 0, 5], [0, 2, 5])).toEqual(z);
  });
  test("a product is square to both, and as long as the area between them (Lagrange's identity)", () => {
    fc.assert(
      fc.property(vectors, vectors, (a, b) => {
        const product = cross(a, b);
        const size = 1 + norm(a) * norm(b);
        expect(Math.abs(dot(product, a)) / size).toBeLessThan(1e-9 * (1 + norm(a)));
        expect(Math.abs(dot(product, b)) / size).toBeLessThan(1e-9 * (1 + norm(b)));
        expect(Math.abs(dot(product, product) + dot(a, b) ** 2 - dot(a, a) * dot(b, b))).toBeLessThan(1e-9 * size ** 2);
        expect(subtract(add(a, b), b).map((c, k) => Math.abs(c - a[k]!) < 1e-9)).toEqual([true, true, true]);
        expect(norm(subtract(scale(a, 2), add(a, a)))).toBe(0);
        if (norm(a) > 1e-3) expect(norm(normalize(a))).toBeCloseTo(1, 12);
      }),
    );
  });
});

const square = (side: number, x = 0, y = 0): Outline =>
  polygon(point(x, y), point(x + side, y), point(x + side, y + side), point(x, y + side));

/** A prism of rings from z = low to high. */
const prism = (rings: readonly Outline[], low: number, high: number): Mesh =>
  tessellateFaces(prismFaces(rings, low, high));

const CORNER: Mesh = weld([
  ...[0, 0, 0, 0, 2, 0, 3, 0, 0],
  ...[0, 0, 0, 3, 0, 0, 0, 0, 4],
  ...[0, 0, 0, 0, 0, 4, 0, 2, 0],
  ...[3, 0, 0, 0, 2, 0, 0, 0, 4],
]);

describe("a mesh's measures", () => {
  test("a corner of 3, 2 and 4 holds 3·2·4 / 6, and shows its three faces and the one across", () => {
    expect(meshVolume(CORNER)).toBeCloseTo(4, 12);
    // The squares of the faces' areas add up to that of the one across (de Gua's theorem).
    const faces = [3, 6, 4];
    expect(meshArea(CORNER)).toBeCloseTo(3 + 6 + 4 + Math.hypot(...faces), 12);
    expect(measureMesh(CORNER)).toEqual({
      triangles: 4,
      bounds: { min: [0, 0, 0], max: [3, 2, 4] },
      volume: expect.closeTo(4, 12),
    });
    expect(meshFaults(CORNER)).toEqual({ openEdges: 0, flatTriangles: 0, notFinite: 0 });
  });
  test("a box far from where it is counted from keeps its volume, surface and place", () => {
    const box = prism([square(2, -900, 400)], 7, 12);
    expect(measureMesh(box)).toMatchObject({ bounds: { min: [-900, 400, 7], max: [-898, 402, 12] } });
    expect(meshVolume(box)).toBeCloseTo(20, 9);
    expect(meshArea(box)).toBeCloseTo(2 * 4 + 4 * 10, 9);
    expect(maxAbsCoordinate(box)).toBe(900);
  });
  test("a triangle's height stands on its longest side: 3, 4, 5 is 2.4 high", () => {
    for (const corners of [
      [0, 1, 2],
      [1, 2, 0],
      [2, 0, 1],
    ]) {
      const places: Vec3[] = [
        [0, 0, 1],
        [3, 0, 1],
        [0, 4, 1],
      ];
      expect(triangleHeight(corners.map((k) => places[k]!) as [Vec3, Vec3, Vec3])).toBeCloseTo(2.4, 12);
    }
    expect(
      triangleHeight([
        [1, 1, 1],
        [1, 1, 1],
        [1, 1, 1],
      ]),
    ).toBe(0);
  });
  test("joined meshes keep their own vertices and triangles, and together hold what each holds", () => {
    const box = prism([square(2, 50, 0)], 0, 1);
    const both = joinMeshes([CORNER, box]);
    expect([both.positions.length, both.indices.length]).toEqual([
      CORNER.positions.length + box.positions.length,
      CORNER.indices.length + box.indices.length,
    ]);
    expect(meshVolume(both)).toBeCloseTo(4 + 4, 9);
    expect(countOpenEdges(both)).toBe(0);
    expect([...unweld(both)]).toEqual([...unweld(CORNER), ...unweld(box)]);
    expect(joinMeshes([]).indices).toHaveLength(0);
  });
  test("float32 lays vertices together that only a double tells apart", () => {
    const near = weld([...[0, 0, 0, 1, 0, 0, 0, 1, 0], ...[1 + 1e-12, 0, 0, 1, 1, 0, 0, 1, 0]]);
    expect(near.positions).toHaveLength(3 * 5);
    expect(roundToFloat32(near).positions).toHaveLength(3 * 4);
  });
});

describe("prisms with holes", () => {
  const hole: Circle = { centre: point(7, 7), radius: 2 };
  const rings = [square(20), reverseOutline(square(4, 12, 12)), reverseOutline(circleOutline(hole))];
  const area = 400 - 16 - 4 * Math.PI;

  test("hold base times height, exactly, wherever they stand", () => {
    for (const [low, high] of [
      [0, 3],
      [-5, 6],
      [100, 101],
    ] as const)
      expect(facesVolume(prismFaces(rings, low, high))).toBeCloseTo(area * (high - low), 8);
  });
  test("close, with a tunnel for each hole: vertices − edges + faces is 2 − 2·2 (Euler and Poincaré)", () => {
    const mesh = prism(rings, 0, 3);
    expect(meshFaults(mesh)).toEqual({ openEdges: 0, flatTriangles: 0, notFinite: 0 });
    const [vertices, triangles] = [mesh.positions.length / 3, mesh.indices.length / 3];
    expect(vertices - (3 * triangles) / 2 + triangles).toBe(-2);
    // Chords cut off the disc that is left out: the mesh holds a little more, by less than a two-hundredth of a mm all round.
    const more = meshVolume(mesh) / 3 - area;
    expect(more).toBeGreaterThan(0);
    expect(more).toBeLessThan(0.005 * 4 * Math.PI);
  });
  test("half a round bar: half of π r² h, its flat side open to neither", () => {
    const half: Outline = [
      { kind: "line", from: point(-2, 0), to: point(2, 0) },
      arc(point(2, 0), point(-2, 0), point(0, 0), 180),
    ];
    expect(facesVolume(prismFaces([half], 1, 11))).toBeCloseTo(2 * Math.PI * 10, 9);
    expect(countOpenEdges(prism([half], 1, 11))).toBe(0);
    expect(facesVolume(prismFaces([reverseOutline(half)], 1, 11))).toBeCloseTo(-2 * Math.PI * 10, 9);
  });
});
