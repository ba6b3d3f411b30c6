// The readings as equations. Tilt is no fault: each placement keeps its own, and only the curve is shared.
import type { Bed, BedPoint, BoundedReading, SurveyReadings } from "./readings.ts";

/** One reading: `row · unknowns` lies within it. The last three unknowns are the curve's. */
export interface Equation {
  readonly kind: "gap" | "height";
  readonly reading: BoundedReading;
  readonly row: readonly number[];
}

/**
 * One row for each reading: the placements' own unknowns first, then the curve's a, b, c. With u and v the station's place
 * from the bed's centre in bed lengths and widths:
 * - a gap under the straightedge: gap = p + q·t − (a·u² + b·u·v + c·v²), t the share of the straightedge's length;
 *   p and q are free for each placement, as a straightedge rests on a hollow bed's two ends but rocks on a hump, where
 *   nobody knows how it was held; the surface's own tilt is in them. The straightedge is taken as straight, and a gap is
 *   never less than 0, which is the lower bound where no leaf goes in;
 * - a height: height = p + q·u + r·v + (a·u² + b·u·v + c·v²), p, q, r free: the bed need not lie level to the gauge.
 */
export function bedEquations({ straightedges, heights }: SurveyReadings, bed: Bed): Equation[] {
  const own = 2 * straightedges.length + (heights.length > 0 ? 3 : 0);
  const row = (at: number, placement: readonly number[], curve: readonly number[]) => {
    const parts = new Array<number>(own).fill(0);
    placement.forEach((part, k) => {
      parts[at + k] = part;
    });
    return [...parts, ...curve];
  };
  const gaps = straightedges.flatMap(({ from, to, gaps }, i) =>
    gaps.map((reading): Equation => {
      const [u, v] = toCentred(reading.place, bed);
      return {
        kind: "gap",
        reading,
        row: row(2 * i, [1, interpolationShare(reading.place, from, to)], [-u * u, -u * v, -v * v]),
      };
    }),
  );
  const levels = heights.map((reading): Equation => {
    const [u, v] = toCentred(reading.place, bed);
    return { kind: "height", reading, row: row(own - 3, [1, u, v], [u * u, u * v, v * v]) };
  });
  return [...gaps, ...levels];
}

function interpolationShare(place: BedPoint, from: BedPoint, to: BedPoint): number {
  const reach = Math.hypot(to.along - from.along, to.across - from.across);
  return Math.hypot(place.along - from.along, place.across - from.across) / reach;
}

/** Place from the bed's centre, in bed lengths and widths: −½ to ½ each. */
export const toCentred = ({ along, across }: BedPoint, bed: Bed) =>
  [along / bed.length - 0.5, across / bed.width - 0.5] as const;
