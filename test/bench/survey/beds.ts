// Beds made up for the tests: a known curve, read with known errors. Seeded: the same seed gives the same readings.

import type { Bed, BedPoint, BoundedReading, SurveyReadings } from "../../../packages/bench/src/survey/index.ts";
import { toMillimetres } from "../../../packages/parameters/src/units.ts";

export const BED: Bed = { length: 80, width: 50 };

/** Height of a bed whose sagittas along and across are given, and that rises by `twist` on one diagonal; mm, hollow positive. */
export interface BedForm {
  readonly along: number;
  readonly across: number;
  readonly twist: number;
}

export const heightOf = ({ along, across, twist }: BedForm, place: BedPoint, bed = BED) => {
  const [u, v] = [place.along / bed.length - 0.5, place.across / bed.width - 0.5];
  return 4 * (along * u * u + twist * u * v + across * v * v);
};

/** Sagitta over the rising (+1) or falling (−1) diagonal. */
export const diagonalOf = ({ along, across, twist }: BedForm, side: 1 | -1) => along + across + side * twist;

/** Even numbers from 0 up to 1. @see mulberry32, public domain */
export function seededUniform(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

export const randomBetween = (random: () => number, low: number, high: number) => low + (high - low) * random();

const grid = (rows: number, columns: number, bed = BED): BedPoint[] =>
  Array.from({ length: rows * columns }, (_, i) => ({
    along: (bed.length * Math.floor(i / columns)) / (rows - 1),
    across: (bed.width * (i % columns)) / (columns - 1),
  }));

/** A height gauge over a tilted bed: each height off by up to `error` either way, times `worse` for a gauge that lies. */
export function heightsOf(
  shape: BedForm,
  error: number,
  random: () => number,
  worse = 1,
  rows = 5,
  columns = 3,
): SurveyReadings {
  const heights = grid(rows, columns).map((place): BoundedReading => {
    const tilt = 3 + 0.02 * place.along - 0.01 * place.across;
    const read = tilt + heightOf(shape, place) + randomBetween(random, -error, error) * worse;
    return { place, low: read - error, high: read + error, line: 1, column: 1 };
  });
  return { units: "mm", straightedges: [], heights };
}

/** Eight usual placements: three along, three across, both diagonals. */
export const PLACEMENTS: readonly (readonly [BedPoint, BedPoint])[] = [
  ...[5, 25, 45].map(
    (across) =>
      [
        { along: 0, across },
        { along: 80, across },
      ] as const,
  ),
  ...[5, 40, 75].map(
    (along) =>
      [
        { along, across: 0 },
        { along, across: 50 },
      ] as const,
  ),
  [
    { along: 0, across: 0 },
    { along: 80, across: 50 },
  ],
  [
    { along: 0, across: 50 },
    { along: 80, across: 0 },
  ],
];

/** Feeler gauges, leaves in steps of `leaf`, without an error of the feel, under a straightedge that lies on two stations. */
export function gapsOf(
  shape: BedForm,
  leaf: number,
  random: () => number,
  stations = 5,
  placements = PLACEMENTS,
): SurveyReadings {
  const straightedges = placements.map(([from, to]) => {
    const { places, gaps } = restingGaps(shape, from, to, stations, random);
    return { from, to, gaps: places.map((place, i) => feeler(place, gaps[i]!, leaf)) };
  });
  return { units: "mm", straightedges, heights: [] };
}

function restingGaps(shape: BedForm, from: BedPoint, to: BedPoint, stations: number, random: () => number) {
  const shares = Array.from({ length: stations }, (_, i) => i / (stations - 1));
  const places = shares.map((share) => ({
    along: from.along + share * (to.along - from.along),
    across: from.across + share * (to.across - from.across),
  }));
  const bed = places.map((place) => heightOf(shape, place));
  const [one, two] = restingStations(bed, random);
  const slope = (bed[two]! - bed[one]!) / (shares[two]! - shares[one]!);
  const gaps = shares.map((share, i) => bed[one]! + slope * (share - shares[one]!) - bed[i]!);
  return { places, gaps, one, two };
}

/** The blank sheet's five: up the middle, across near tip and top, both diagonals. */
export const FIVE_PLACEMENTS: readonly (readonly [BedPoint, BedPoint])[] = [1, 3, 5, 6, 7].map((i) => PLACEMENTS[i]!);

/** How a gap is misjudged: normal, or evenly up to √3 standard deviations. */
export type Noise = "normal" | "even";

/** A usual set of leaves, mm; beyond them in steps of 0.05, by leaves laid together. Common practice, no published source. */
const LEAVES = [0, 0.02, 0.03, 0.04, 0.05, 0.06, 0.07, 0.08, 0.09, 0.1, 0.12, 0.15];
const BEYOND = 0.05;

/**
 * Five stations a placement under a straightedge that lies on two of them, an edge of the bed's upper hull. Their gap is 0 exactly; every other one is misjudged by `feel`, two standard deviations.
 */
export function feeledGaps(
  shape: BedForm,
  feel: number,
  noise: Noise,
  random: () => number,
  placements = FIVE_PLACEMENTS,
): SurveyReadings {
  const straightedges = placements.map(([from, to]) => {
    const { places, gaps: exact, one, two } = restingGaps(shape, from, to, 5, random);
    const gaps = places.map((place, i) => {
      const felt = i === one || i === two ? 0 : Math.max(0, exact[i]! + (feel / 2) * deviate(noise, random));
      return leafReading(place, felt);
    });
    return { from, to, gaps };
  });
  return { units: "mm", straightedges, heights: [] };
}

/** The ends of a hollow line; two neighbours of a humped one, any two, as it rocks and is held somewhere. */
function restingStations(bed: readonly number[], random: () => number): readonly [number, number] {
  const last = bed.length - 1;
  const isHollow = bed[0]! + bed[last]! >= bed[1]! + bed[last - 1]! - 1e-12;
  if (isHollow) return [0, last];
  const one = Math.floor(random() * last);
  return [one, one + 1];
}

/** Mean 0 and standard deviation 1. Normal by the central limit of twelve. */
function deviate(noise: Noise, random: () => number): number {
  if (noise === "even") return Math.sqrt(3) * (2 * random() - 1);
  let sum = -6;
  for (let i = 0; i < 12; i++) sum += random();
  return sum;
}

function leafReading(place: BedPoint, gap: number): BoundedReading {
  const refused = LEAVES.findIndex((leaf) => leaf > gap + 1e-9);
  if (refused < 0) {
    const low = Math.floor(gap / BEYOND + 1e-9) * BEYOND;
    return { place, low, high: low + BEYOND, line: 1, column: 1 };
  }
  return { place, low: LEAVES[refused - 1]!, high: LEAVES[refused]!, line: 1, column: 1 };
}

function feeler(place: BedPoint, gap: number, leaf: number): BoundedReading {
  const fits = Math.floor(toMillimetres(gap, "mm") / leaf + 1e-9) * leaf;
  return { place, low: fits, high: fits + leaf, line: 1, column: 1 };
}
