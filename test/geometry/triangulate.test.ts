// A flat area between rings, however its corners lie in line.
import { triangulate } from "@lamplane/geometry/mesh";
import { expect, test } from "vitest";

const box = (x: number, y: number, w: number, h: number) => [
  { x, y },
  { x: x + w, y },
  { x: x + w, y: y + h },
  { x, y: y + h },
];

test("corners of three holes in one sloping line leave no flat triangle and none turned over", () => {
  // Corners of three holes of a printed jig, in line but for the last bit of a double
  const inLine = [
    { x: 21.38525749399704, y: 9.787494191026935 },
    { x: 21.485129144714147, y: 25.782429274143066 },
    { x: 21.585000795431252, y: 41.777364357259195 },
  ];
  const holes = inLine.map(({ x, y }) => [
    { x, y },
    { x: x - 7, y: y + 4 },
    { x: x - 7, y: y - 4 },
  ]);
  const rings = [box(0, 0, 40, 100), ...holes.map((ring) => [...ring].reverse())];
  const points = rings.flat();
  let next = 0;
  const numbers = rings.map((ring) => ring.map(() => next++));
  const triangles = triangulate(points, numbers);
  const areas = triangles.map(([a, b, c]) => {
    const [p, q, r] = [points[a]!, points[b]!, points[c]!];
    return ((q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x)) / 2;
  });
  expect(triangles).toHaveLength(points.length + 2 * holes.length - 2);
  expect(Math.min(...areas)).toBeGreaterThan(0.1);
  expect(areas.reduce((sum, area) => sum + area, 0)).toBeCloseTo(40 * 100 - 3 * 28, 9);
});
