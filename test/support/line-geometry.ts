// Points and lines of the plane in homogeneous coordinates: join and meet are cross products. Knows no plane to be built.
// R. Hartley, A. Zisserman, "Multiple View Geometry in Computer Vision", 2nd ed. (2004), section 2.2 (from memory).

/** A point (x, y, 1) up to a factor, or a direction (x, y, 0); a line a·x + b·y + c = 0. */
export type Homogeneous = readonly [number, number, number];

export const at = (x: number, y: number): Homogeneous => [x, y, 1];

/** Line through two points, or meeting point of two lines. */
export const cross = ([a, b, c]: Homogeneous, [d, e, f]: Homogeneous): Homogeneous => [
  b * f - c * e,
  c * d - a * f,
  a * e - b * d,
];

/** A point's place. */
export const place = ([x, y, w]: Homogeneous): { x: number; y: number } => ({ x: x / w, y: y / w });

/** The direction at an angle from the x axis, degrees. */
export const direction = (angle: number): Homogeneous => [
  Math.cos((angle * Math.PI) / 180),
  Math.sin((angle * Math.PI) / 180),
  0,
];

/** Distance of a point from a line, above 0 on the left of its direction (b, −a). */
export function offLine([a, b, c]: Homogeneous, point: Homogeneous): number {
  const { x, y } = place(point);
  return (a * x + b * y + c) / Math.hypot(a, b);
}

/** The line parallel to another, so far to the left of its direction. */
export const parallel = ([a, b, c]: Homogeneous, left: number): Homogeneous => [a, b, c - left * Math.hypot(a, b)];

/** The line square to another through a point, toward the other's left. */
export function squareTo([a, b]: Homogeneous, point: Homogeneous): Homogeneous {
  const { x, y } = place(point);
  return cross(at(x, y), [a, b, 0]);
}

export function apart(p: Homogeneous, q: Homogeneous): number {
  const [from, to] = [place(p), place(q)];
  return Math.hypot(to.x - from.x, to.y - from.y);
}
