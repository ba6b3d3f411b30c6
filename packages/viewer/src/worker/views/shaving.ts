// The shaving as it leaves a plane at work: up from the edge through the throat, curled over towards the toe. A picture, no figure.
import { type Point, point } from "@lamplane/geometry";
import { type Elevation, ironToPlane } from "@lamplane/parameters/elevation";
import { linePath } from "../../path-data.ts";
import type { ViewMark } from "../../protocol/view.ts";

const HALF = 0.34; // mm: drawn thicker than any shaving, so that it is seen
const OFF_STACK = 1; // mm between the shaving and what it slides along
const CURL = { first: 11, last: 3.6, turns: 2.3 }; // mm, mm, turns
const SAMPLES = { throat: 12, curl: 56 };

/** The shaving as a mark. */
export function shavingMark(plane: Elevation): ViewMark {
  const middle = [...throatWay(plane), ...curl(plane)];
  const sides = [1, -1].map((side) => middle.map((_, i) => offset(middle, i, side * HALF * taper(i, middle.length))));
  return { d: `${linePath(...sides[0]!, ...sides[1]!.reverse())}Z`, area: "shaving", line: "thin", edge: middle };
}

const mix = (a: Point, b: Point, share: number): Point => point(a.x + (b.x - a.x) * share, a.y + (b.y - a.y) * share);

/** Thin at both ends. */
const taper = (i: number, count: number): number => Math.min(1, 0.25 + i / 6, 0.2 + (count - 1 - i) / 5);

/** Middle of the throat at the height of its top, and the place on the stack that the shaving slides over first. */
function throatStations({ points, frame, design, pin, pinSize }: Elevation): [Point, Point, Point, Point] {
  const { thickness, hump, setback } = design.capIron;
  const v = thickness === 0 ? 0 : thickness + hump;
  const near = ironToPlane(frame, setback + v + 1, v + OFF_STACK);
  const ramp = (y: number) => mix(points.rampFoot, points.rampTop, y / Math.max(points.rampTop.y, 1));
  const left = point(pin.centre.x - pinSize.diameter / 2, pin.centre.y);
  const beside = mix(ramp(left.y), left, 0.62);
  const out = point(beside.x - 3, points.rampTop.y + 5);
  return [points.edge, near, beside, out];
}

/** From the edge to over the top: a smooth line through the stations. */
function throatWay(plane: Elevation): Point[] {
  const stations = throatStations(plane);
  const at = (i: number) => stations[Math.min(Math.max(i, 0), stations.length - 1)]!;
  return [0, 1, 2].flatMap((i) =>
    Array.from({ length: SAMPLES.throat }, (_, k) =>
      between(at(i - 1), at(i), at(i + 1), at(i + 2), k / SAMPLES.throat),
    ),
  );
}

/** A point of the Catmull-Rom curve through b and c. */
function between(a: Point, b: Point, c: Point, d: Point, t: number): Point {
  const along = (p: number, q: number, r: number, s: number) =>
    q + 0.5 * t * (r - p + t * (2 * p - 5 * q + 4 * r - s + t * (3 * (q - r) + s - p)));
  return point(along(a.x, b.x, c.x, d.x), along(a.y, b.y, c.y, d.y));
}

/** Round and round, narrower each time. */
function curl(plane: Elevation): Point[] {
  const start = throatStations(plane)[3];
  const heart = point(start.x - CURL.first, start.y + 1);
  return Array.from({ length: SAMPLES.curl }, (_, k) => {
    const share = k / (SAMPLES.curl - 1);
    const radius = CURL.first + (CURL.last - CURL.first) * share ** 0.8;
    const turn = share * CURL.turns * 2 * Math.PI;
    return point(heart.x + radius * Math.cos(turn), heart.y + radius * Math.sin(turn));
  });
}

function offset(line: readonly Point[], i: number, by: number): Point {
  const [from, to, here] = [line[Math.max(0, i - 1)]!, line[Math.min(line.length - 1, i + 1)]!, line[i]!];
  const long = Math.hypot(to.x - from.x, to.y - from.y) || 1;
  return point(here.x - ((to.y - from.y) / long) * by, here.y + ((to.x - from.x) / long) * by);
}
