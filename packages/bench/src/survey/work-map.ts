// Where to work: what to take off for the bed to have no hump and not too much hollow. Wood is only ever taken off.
import { type Coefficients, curveHeight } from "./curvature.ts";
import type { Bed } from "./readings.ts";

/** Wood to take off at the crossings of `along` and `across`; mm. */
export interface WorkMap {
  /** Up from the bed's tip. */
  readonly along: readonly number[];
  /** From the left edge. */
  readonly across: readonly number[];
  /** `takeOff[i][j]` at `along[i]`, `across[j]`; never negative. */
  readonly takeOff: readonly (readonly number[])[];
}

/** A point of the grid over the bed's centre: x along, y across, z up, mm. */
type GridPoint = readonly [x: number, y: number, z: number];
/** z = level + alongSlope·x + acrossSlope·y. */
type HeightPlane = readonly [level: number, alongSlope: number, acrossSlope: number];

const ROWS = 9; // every tenth of a bed's length or so: as close as a cabinet scraper can be aimed
const COLUMNS = 5;
const TOUCHING = 1e-9; // mm: rounding

/**
 * The least to take off. The highest surface without a hump that lies nowhere above the bed is its lower convex hull;
 * where that is more hollow than allowed, its rim is cut level at `hollowLimit` over its lowest point. The best plane
 * through a plain curve about the bed's centre is level, so tilt plays no part.
 * @param hollowLimit greatest hollow that may stay, mm
 */
export function workMap(coefficients: Coefficients, bed: Bed, hollowLimit: number): WorkMap {
  const along = stations(bed.length, ROWS);
  const across = stations(bed.width, COLUMNS);
  const crossings = along.flatMap((x) =>
    across.map((y): GridPoint => [x, y, curveHeight(coefficients, bed, { along: x, across: y })]),
  );
  const planes = lowerHullPlanes(crossings);
  const hull = crossings.map((crossing) => Math.max(...planes.map((plane) => planeHeight(plane, crossing))));
  const rim = Math.min(...hull) + hollowLimit;
  const off = crossings.map(([, , z], i) => zeroIfTiny(z - Math.min(hull[i]!, rim)));
  return { along, across, takeOff: along.map((_, i) => off.slice(i * COLUMNS, (i + 1) * COLUMNS)) };
}

const stations = (extent: number, count: number) => Array.from({ length: count }, (_, i) => (extent * i) / (count - 1));

const planeHeight = ([level, alongSlope, acrossSlope]: HeightPlane, [x, y]: GridPoint) =>
  level + alongSlope * x + acrossSlope * y;

const zeroIfTiny = (height: number) => (Math.abs(height) < TOUCHING ? 0 : height);

/** Every plane through three crossings that has no crossing under it: the facets of the hull from below. */
function lowerHullPlanes(crossings: readonly GridPoint[]): HeightPlane[] {
  const planes: HeightPlane[] = [];
  for (let i = 0; i < crossings.length; i++)
    for (let j = i + 1; j < crossings.length; j++)
      for (let k = j + 1; k < crossings.length; k++) {
        const plane = planeThrough(crossings[i]!, crossings[j]!, crossings[k]!);
        if (plane && crossings.every((crossing) => crossing[2] >= planeHeight(plane, crossing) - TOUCHING))
          planes.push(plane);
      }
  return planes;
}

/** Absent where the three stand in line. */
function planeThrough(a: GridPoint, b: GridPoint, c: GridPoint): HeightPlane | undefined {
  const [ux, uy, uz] = [b[0] - a[0], b[1] - a[1], b[2] - a[2]];
  const [vx, vy, vz] = [c[0] - a[0], c[1] - a[1], c[2] - a[2]];
  const area = ux * vy - uy * vx;
  if (Math.abs(area) < 1e-9 * (Math.hypot(ux, uy) * Math.hypot(vx, vy))) return;
  const alongSlope = (uz * vy - uy * vz) / area;
  const acrossSlope = (ux * vz - uz * vx) / area;
  return [a[2] - alongSlope * a[0] - acrossSlope * a[1], alongSlope, acrossSlope];
}
