// Straight-sided outlines by their corners: set in from their sides, corners relieved for a cutter or rounded.
import {
  acosDeg,
  arc,
  atan2Deg,
  distance,
  isInnerCorner,
  line,
  type Outline,
  type Point,
  point,
  pointsEqual,
  reverseSegment,
  type Segment,
  sinDeg,
  tanDeg,
} from "@lamplane/geometry";

/** A corner, and how it is made: left sharp, rounded, or relieved into one of its sides. */
export interface OutlineCorner {
  readonly at: Point;
  /** Radius of a rounded corner, mm. */
  readonly round?: number;
  /** Radius of the cutter whose relief an inner corner gets, mm, and the side that gives way to it: never the one that registers. */
  readonly relief?: { readonly radius: number; readonly into: "before" | "after" };
}

/** Closed outline through corners in order, counter-clockwise. */
export function corneredOutline(corners: readonly OutlineCorner[]): Outline {
  const chains = corners.map((corner, i) =>
    cornerChain(corner, corners.at(i - 1)!.at, corners[(i + 1) % corners.length]!.at),
  );
  return chains.flatMap((chain, i) => {
    const next = chains[(i + 1) % chains.length]!;
    const [from, to] = [chain.at(-1)!.to, next[0]!.from];
    return [...chain.filter((s) => !pointsEqual(s.from, s.to)), ...(pointsEqual(from, to) ? [] : [line(from, to)])];
  });
}

/** The same open, from the first corner to the last. */
export const corneredPath = (corners: readonly OutlineCorner[]): Segment[] => corneredOutline(corners).slice(0, -1);

/** The same corner, an inner one rounded as far as its sides allow by the radius of the cutter that goes round it. */
export function roundInnerCorner(before: Point, at: Point, after: Point, radius: number): OutlineCorner {
  return isInnerCorner(line(before, at), line(at, after))
    ? { at, round: fittingRadius(radius, before, at, after) }
    : { at };
}

function cornerChain({ at, round, relief }: OutlineCorner, before: Point, after: Point): Segment[] {
  if (relief && relief.radius > 0)
    return relief.into === "after"
      ? [reliefArc(at, before, after, relief.radius)]
      : [reverseSegment(reliefArc(at, after, before, relief.radius))];
  if (round && round > 0) return [roundedCorner(at, before, after, round)];
  return [line(at, at)];
}

const unitVector = (from: Point, to: Point): Point => {
  const d = distance(from, to);
  return point((to.x - from.x) / d, (to.y - from.y) / d);
};

/**
 * Relief of an inner corner: the cutter's circle touches the registering side (toward `kept`) just in the corner and
 * goes wholly into the other side (toward `given`), where it ends 2·r·sin φ from the corner, φ the corner's angle.
 */
function reliefArc(at: Point, kept: Point, cut: Point, radius: number): Segment {
  const [k, g] = [unitVector(at, kept), unitVector(at, cut)];
  const side = Math.sign(k.x * g.y - k.y * g.x);
  const off = point(-k.y * side, k.x * side);
  const centre = point(at.x + off.x * radius, at.y + off.y * radius);
  const along = 2 * radius * (g.x * off.x + g.y * off.y);
  const end = point(at.x + g.x * along, at.y + g.y * along);
  const bend = atan2Deg(end.y - centre.y, end.x - centre.x) - atan2Deg(at.y - centre.y, at.x - centre.x);
  const sweep = side > 0 ? -(((-bend % 360) + 360) % 360 || 360) : ((bend % 360) + 360) % 360 || 360;
  return arc(at, end, centre, sweep);
}

function roundedCorner(at: Point, before: Point, after: Point, radius: number): Segment {
  const [b, a] = [unitVector(at, before), unitVector(at, after)];
  const angle = acosDeg(Math.max(-1, Math.min(1, b.x * a.x + b.y * a.y)));
  const back = radius / tanDeg(angle / 2);
  const [from, to] = [point(at.x + b.x * back, at.y + b.y * back), point(at.x + a.x * back, at.y + a.y * back)];
  const half = unitVector(point(0, 0), point(b.x + a.x, b.y + a.y));
  const toCentre = radius / sinDeg(angle / 2);
  return arc(from, to, point(at.x + half.x * toCentre, at.y + half.y * toCentre));
}

/**
 * Corners of a convex outline, each side moved in by its own distance; fewer than three where nothing is left.
 * @param by distance by which the side that begins at a corner is moved in, mm
 */
export function insetPolygon(corners: readonly Point[], by: (side: number) => number): Point[] {
  return corners.reduce<Point[]>(
    (inside, from, i) => {
      const to = corners[(i + 1) % corners.length]!;
      const d = unitVector(from, to);
      return clipPolygon(inside, (p) => (p.y - from.y) * d.x - (p.x - from.x) * d.y - by(i));
    },
    [...corners],
  );
}

/** What of a polygon lies where `over` is positive. */
function clipPolygon(corners: readonly Point[], over: (p: Point) => number): Point[] {
  return corners.flatMap((p, i) => {
    const q = corners[(i + 1) % corners.length]!;
    const [a, b] = [over(p), over(q)];
    const crossing =
      a >= 0 === b >= 0 ? [] : [point(p.x + ((q.x - p.x) * a) / (a - b), p.y + ((q.y - p.y) * a) / (a - b))];
    return [...(a >= 0 ? [p] : []), ...crossing];
  });
}

/** Area and middle of a polygon. mm², mm. */
export function areaAndCentroid(corners: readonly Point[]): { area: number; middle: Point } {
  let [area, x, y] = [0, 0, 0];
  corners.forEach((p, i) => {
    const q = corners[(i + 1) % corners.length]!;
    const cross = p.x * q.y - q.x * p.y;
    [area, x, y] = [area + cross / 2, x + (p.x + q.x) * cross, y + (p.y + q.y) * cross];
  });
  return { area, middle: area === 0 ? point(0, 0) : point(x / (6 * area), y / (6 * area)) };
}

/** Least area of a hole that is cut out to save material, mm²: a smaller one saves less than its walls cost. */
const WORTH_A_HOLE = 250;

/** A hole with rounded corners left when a convex outline is set in; none where too little is left. */
export function windowOutline(corners: readonly Point[], by: (side: number) => number, round = 3): Outline[] {
  const left = mergeShortSides(insetPolygon(corners, by), 2.5 * round);
  if (left.length < 3 || areaAndCentroid(left).area < WORTH_A_HOLE) return [];
  return [
    corneredOutline(
      left.map((at, i) => ({ at, round: fittingRadius(round, left.at(i - 1)!, at, left[(i + 1) % left.length]!) })),
    ),
  ];
}

/** Radius, at most the one wanted, whose arc takes less than half of each of a corner's two sides. */
function fittingRadius(round: number, before: Point, at: Point, after: Point): number {
  const [b, a] = [unitVector(at, before), unitVector(at, after)];
  const angle = acosDeg(Math.max(-1, Math.min(1, b.x * a.x + b.y * a.y)));
  return Math.min(round, 0.45 * Math.min(distance(at, before), distance(at, after)) * tanDeg(angle / 2));
}

/** Short sides give rounded corners no room: both their ends become one corner between them. */
function mergeShortSides(corners: readonly Point[], least: number): Point[] {
  const short = corners.findIndex((p, i) => distance(p, corners[(i + 1) % corners.length]!) < least);
  if (short < 0 || corners.length < 3) return [...corners];
  const next = (short + 1) % corners.length;
  const kept = corners.filter((_, i) => i !== next);
  const a = corners[short]!;
  const b = corners[next]!;
  return mergeShortSides(
    kept.map((p) => (p === a ? point((a.x + b.x) / 2, (a.y + b.y) / 2) : p)),
    least,
  );
}

/** A cutter's radius where its relief leaves a stop something to bear on; 0 where the stop is too short for it. mm */
export const reliefRadius = (radius: number, stop: number): number => (2 * radius <= stop - 1.5 ? radius : 0);
