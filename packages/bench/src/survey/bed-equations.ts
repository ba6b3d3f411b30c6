// The readings as equations. Tilt is no fault: each placement keeps its own, and only the curve is shared.
import type { Bed, BedPoint, BoundedReading, Straightedge, SurveyReadings } from "./readings.ts";

/** One reading: `row · unknowns` lies within it. The last three unknowns are the curve's. */
export interface Equation {
  /** `contact`: a station where the straightedge rests, so that its gap is 0 whatever the curve; its row is all 0. */
  readonly kind: "gap" | "height" | "contact";
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
 * - a gap under a straightedge that rests on its first and last station (`resting`): the surface's chord between the two
 *   stations, less the surface; nothing is free, and the gap of those two is 0;
 * - a height: height = p + q·u + r·v + (a·u² + b·u·v + c·v²), p, q, r free: the bed need not lie level to the gauge.
 */
export function bedEquations(
  { straightedges, heights }: SurveyReadings,
  bed: Bed,
  resting: ReadonlySet<Straightedge> = new Set(),
): Equation[] {
  const own = 2 * straightedges.length + (heights.length > 0 ? 3 : 0);
  const row = (at: number, placement: readonly number[], curve: readonly number[]) => {
    const parts = new Array<number>(own).fill(0);
    placement.forEach((part, k) => {
      parts[at + k] = part;
    });
    return [...parts, ...curve];
  };
  const gaps = straightedges.flatMap((edge, i) =>
    edge.gaps.map((reading): Equation => {
      if (resting.has(edge)) return restingEquation(edge, reading, bed, (curve) => row(0, [], curve));
      const share = interpolationShare(reading.place, edge.from, edge.to);
      const surface = curveTerms(reading.place, bed).map((term) => -term);
      return { kind: "gap", reading, row: row(2 * i, [1, share], surface) };
    }),
  );
  const levels = heights.map((reading): Equation => {
    const [u, v] = toCentred(reading.place, bed);
    return { kind: "height", reading, row: row(own - 3, [1, u, v], [u * u, u * v, v * v]) };
  });
  return [...gaps, ...levels];
}

function restingEquation(
  edge: Straightedge,
  reading: BoundedReading,
  bed: Bed,
  rowOf: (curve: readonly number[]) => readonly number[],
): Equation {
  const [first, last] = endStations(edge);
  if (reading === first || reading === last) return { kind: "contact", reading, row: rowOf([0, 0, 0]) };
  const share = interpolationShare(reading.place, first.place, last.place);
  const [start, end] = [curveTerms(first.place, bed), curveTerms(last.place, bed)];
  const chord = start.map((term, k) => term + (end[k]! - term) * share);
  return { kind: "gap", reading, row: rowOf(curveTerms(reading.place, bed).map((term, k) => chord[k]! - term)) };
}

/** The stations nearest to where the straightedge begins and ends. */
export function endStations({ from, gaps }: Straightedge): readonly [first: BoundedReading, last: BoundedReading] {
  const distance = ({ place }: BoundedReading) => Math.hypot(place.along - from.along, place.across - from.across);
  const inOrder = gaps.toSorted((a, b) => distance(a) - distance(b));
  return [inOrder[0]!, inOrder.at(-1)!];
}

/** How much of each of the curve's coefficients a, b, c is in its height at the place. */
function curveTerms(place: BedPoint, bed: Bed): readonly number[] {
  const [u, v] = toCentred(place, bed);
  return [u * u, u * v, v * v];
}

function interpolationShare(place: BedPoint, from: BedPoint, to: BedPoint): number {
  const reach = Math.hypot(to.along - from.along, to.across - from.across);
  return Math.hypot(place.along - from.along, place.across - from.across) / reach;
}

/** Place from the bed's centre, in bed lengths and widths: −½ to ½ each. */
export const toCentred = ({ along, across }: BedPoint, bed: Bed) =>
  [along / bed.length - 0.5, across / bed.width - 0.5] as const;
