// What was read off a bed. Every reading is two values that the truth lies between; lengths mm.
import type { Units } from "@lamplane/parameters/units";

/** The bed: a rectangle `length` long, up from its tip, and `width` wide; mm. */
export interface Bed {
  readonly length: number;
  readonly width: number;
}

/** A place on the bed: `along` it up from its tip, `across` it from the left edge (left of the maker behind the heel); mm. */
export interface BedPoint {
  readonly along: number;
  readonly across: number;
}

/** One reading, known to lie between two values; mm. */
export interface BoundedReading {
  readonly place: BedPoint;
  readonly low: number;
  readonly high: number;
  /** Where it stands in the file, both from 1. */
  readonly line: number;
  readonly column: number;
}

/** One placement of the straightedge; it stays put while its gaps are read. */
export interface Straightedge {
  readonly from: BedPoint;
  readonly to: BedPoint;
  readonly gaps: readonly BoundedReading[];
}

/** All that was read, in mm, whatever the file's unit. */
export interface SurveyReadings {
  readonly units: Units;
  readonly straightedges: readonly Straightedge[];
  /** Heights square off the bed over any level plane, read in one setting of the gauge. */
  readonly heights: readonly BoundedReading[];
}
