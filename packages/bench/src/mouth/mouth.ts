// The mouth as it is seen at the bench, and what to do for the one wanted. Wood is only ever taken off; no reading is bent to fit.

import { EPSILON } from "@lamplane/geometry";
import { type Elevation, mouthGrowthAt, mouthOpeningAt, removalForOpening } from "@lamplane/parameters/elevation";
import { type MouthPatch, mouthPatch } from "./mouth-patch.ts";
import { type Packing, packing } from "./packing.ts";

/** A sole is trued with fine shavings, mm: common practice, no published source. */
export const SHAVING = 0.05;

/**
 * `shut`: no light is seen, so that what is to be taken off is bounded from below only. `narrow`: take wood off.
 * `as-wanted`: as wanted, or wider by no more than one shaving opens. `wide`: no truing mends it.
 */
export type MouthVerdict = "shut" | "narrow" | "as-wanted" | "wide";

/** Lengths mm. */
export interface MouthReading {
  readonly seen: number;
  readonly wanted: number;
  readonly verdict: MouthVerdict;
  /** How far the mouth opens for each mm taken off, where it is seen. */
  readonly growth: number;
  /** What to take off the sole; at least that for a shut mouth, 0 for one that is wide enough. */
  readonly takeOff: number;
  readonly shaving: number;
  /** Whole shavings in what is to be taken off: with one more the mouth may be wider than wanted. */
  readonly shavings: number;
  /** How far one shaving opens the mouth. */
  readonly opensPerShaving: number;
  /** How much wider than wanted; 0 where it is not. */
  readonly tooWide: number;
  /** What would close a mouth that is too wide. */
  readonly packing?: Packing;
  readonly patch?: MouthPatch;
}

export interface MouthInput {
  /** Mouth seen with the edge at the sole, mm, 0 or more. */
  readonly seen: number;
  /** Mouth wanted, mm; the design's where absent. */
  readonly wanted?: number;
  /** Thickness of a shaving taken off the sole, mm, over 0. */
  readonly shaving?: number;
}

/**
 * What to take off the sole for the mouth wanted: (wanted − seen) / mouthGrowth while the sole lies within a straight ramp or
 * a wear, and by the curve beyond it. Where the sole now stands follows from the mouth seen, which is what was measured.
 */
export function mouthReading(plane: Elevation, { seen, wanted: asked, shaving = SHAVING }: MouthInput): MouthReading {
  const wanted = asked ?? plane.design.mouth.opening;
  const now = removalForOpening(plane, seen);
  const growth = mouthGrowthAt(plane, now);
  const takeOff = Math.max(0, removalForOpening(plane, wanted) - now);
  const tooWide = Math.max(0, seen - wanted);
  const opensPerShaving = mouthOpeningAt(plane, now + shaving) - seen;
  const verdict = mouthVerdict(seen, wanted, opensPerShaving);
  const base = { seen, wanted, verdict, growth, takeOff, shaving, opensPerShaving, tooWide };
  const reading = { ...base, shavings: Math.floor(takeOff / shaving + EPSILON) };
  if (verdict !== "wide") return reading;
  return { ...reading, packing: packing(plane, tooWide), patch: mouthPatch(plane, now, tooWide) };
}

function mouthVerdict(seen: number, wanted: number, opensPerShaving: number): MouthVerdict {
  if (seen > wanted + opensPerShaving) return "wide";
  if (seen >= wanted - EPSILON) return "as-wanted";
  return seen === 0 ? "shut" : "narrow";
}
