// A readings file becomes readings in mm, or every fault in it at once. A file is never half accepted.
import { EPSILON } from "@lamplane/geometry";
import type { Units } from "@lamplane/parameters/units";
import { READING_NAMES } from "../words/readings.ts";
import { DocumentReader, type NodeLocation } from "./document-reader.ts";
import type { ReadingFault } from "./reading-fault.ts";
import type { Bed, BedPoint, BoundedReading, Straightedge, SurveyReadings } from "./readings.ts";

export type SurveyResult =
  | { readonly readings: SurveyReadings; readonly faults?: undefined }
  | { readonly faults: readonly ReadingFault[]; readonly readings?: undefined };

const MOST_READINGS = 200; // four times what anyone takes; the fit's work grows with the cube
const LARGEST_GAP = 10; // mm: beyond it a rule is laid on, not a feeler
const LARGEST_ERROR = 1; // mm: a worse gauge tells nothing of a bed
const LARGEST_HEIGHT = 500; // mm
const FEWEST_GAPS = 3; // two stations always lie on a line, wherever the straightedge stands
const FEWEST_HEIGHTS = 4; // three always lie on a plane

/**
 * Reads the survey of a bed. Own plain format, YAML:
 *
 *     units: mm                  # or in; mm when left out. A length may carry its own: 0.0015 in
 *     straightedge:              # a list, one entry for each placement
 *       - from: [0, 10]          # where the straightedge begins: along the bed up from its tip, across from the left edge
 *         to: [80, 10]           # where it ends
 *         gaps:                  # three stations at least; it must not move between them
 *           - { at: 0, refuses: 0.04 }               # `at`: distance from `from`; the smallest leaf does not go in
 *           - { at: 40, fits: 0.10, refuses: 0.12 }  # largest leaf that goes in, smallest that does not
 *           - { at: 80, fits: 0, refuses: 0.04 }     # `fits: 0` says the same as leaving it out
 *     heights:                   # a height gauge over the bed held level; instead of, or beside, the straightedge
 *       error: 0.01              # each height is true within plus or minus this
 *       points: [[0, 0, 0.00], [20, 0, 0.01], [40, 0, 0.02], [0, 25, 0.00]]   # along, across, height; four at least
 *
 * @param source the file's text, or its bytes
 * @param bed its size in mm; stations must lie on it
 * @param file its name, for the faults only; nothing is opened
 */
export function parseSurvey(source: string | Uint8Array, bed: Bed, file = ""): SurveyResult {
  const reader = new DocumentReader(source, file);
  if (!reader.isSound) return { faults: reader.faults() };
  const keys = reader.readMap(reader.root, ["units", "straightedge", "heights"]);
  const readings = keys && new SurveyFile(reader, bed, keys.units).readings(keys.straightedge, keys.heights);
  return readings && reader.isSound ? { readings } : { faults: reader.faults() };
}

/** The format's own rules, on top of the reader's. Lengths are read in the file's unit and leave in mm. */
class SurveyFile {
  readonly #reader: DocumentReader;
  readonly #bed: Bed;
  readonly #units: Units;

  constructor(reader: DocumentReader, bed: Bed, units: NodeLocation) {
    this.#reader = reader;
    this.#bed = bed;
    this.#units = (units.node && reader.readWord(units, ["mm", "in"])) ?? "mm";
  }

  readings(straightedge: NodeLocation, heights: NodeLocation): SurveyReadings | undefined {
    const reader = this.#reader;
    if (!straightedge.node && !heights.node) return reader.addFault(reader.root, { code: "some-readings" });
    const edges = straightedge.node && reader.readList(straightedge, 1, MOST_READINGS, READING_NAMES.placements);
    const readings = {
      units: this.#units,
      straightedges: (edges ?? []).flatMap((edge) => this.#straightedge(edge) ?? []),
      heights: heights.node ? this.#heights(heights) : [],
    };
    const count = readings.straightedges.reduce((sum, { gaps }) => sum + gaps.length, readings.heights.length);
    if (count > MOST_READINGS)
      return reader.addFault(reader.root, { code: "fewer-readings", most: MOST_READINGS, count });
    return readings;
  }

  #straightedge(spot: NodeLocation): Straightedge | undefined {
    const keys = this.#reader.readMap(spot, ["from", "to", "gaps"]);
    if (!keys) return;
    const from = this.#place(keys.from);
    const to = this.#place(keys.to);
    const entries = this.#reader.readList(keys.gaps, FEWEST_GAPS, MOST_READINGS, READING_NAMES.stations);
    // A bad end hides no fault in the gaps: they are read all the same, against the longest line on the bed.
    const span = from && to ? [to.along - from.along, to.across - from.across] : [this.#bed.length, this.#bed.width];
    const reach = Math.hypot(...span);
    if (reach === 0) return this.#reader.addFault(keys.to, { code: "another-end" });
    const placeAt = (distance: number): BedPoint => ({
      along: (from?.along ?? 0) + (span[0]! * distance) / reach,
      across: (from?.across ?? 0) + (span[1]! * distance) / reach,
    });
    const gaps = this.#oncePerStation(entries ?? [], (entry) => this.#gap(entry, reach, placeAt));
    return from && to && { from, to, gaps };
  }

  #gap(spot: NodeLocation, reach: number, placeAt: (distance: number) => BedPoint): BoundedReading | undefined {
    const keys = this.#reader.readMap(spot, ["at", "fits", "refuses"]);
    if (!keys) return;
    const at = this.#length(keys.at, 0, reach, READING_NAMES.at);
    const low = keys.fits.node ? this.#length(keys.fits, 0, LARGEST_GAP, READING_NAMES.fits) : 0;
    const high = this.#length(keys.refuses, 0, LARGEST_GAP, READING_NAMES.refuses);
    if (at === undefined || low === undefined || high === undefined) return;
    if (low >= high) return this.#reader.addFault(keys.refuses, { code: "thicker-leaf" });
    return { place: placeAt(at), low, high, ...spot.at };
  }

  #heights(spot: NodeLocation): BoundedReading[] {
    const keys = this.#reader.readMap(spot, ["error", "points"]);
    if (!keys) return [];
    const error = this.#length(keys.error, 0, LARGEST_ERROR, READING_NAMES.error);
    if (error === 0) this.#reader.addFault(keys.error, { code: "error-over-0" });
    const points = this.#reader.readList(keys.points, FEWEST_HEIGHTS, MOST_READINGS, READING_NAMES.points) ?? [];
    return this.#oncePerStation(points, (point) => this.#height(point, error ?? 0));
  }

  #height(spot: NodeLocation, error: number): BoundedReading | undefined {
    const parts = this.#reader.readList(spot, 3, 3, READING_NAMES.point);
    if (!parts) return;
    const place = this.#onBed(parts[0]!, parts[1]!);
    const height = this.#length(parts[2]!, -LARGEST_HEIGHT, LARGEST_HEIGHT, READING_NAMES.height);
    if (!place || height === undefined) return;
    return { place, low: height - error, high: height + error, ...spot.at };
  }

  #place(spot: NodeLocation): BedPoint | undefined {
    const parts = this.#reader.readList(spot, 2, 2, READING_NAMES.place);
    return parts && this.#onBed(parts[0]!, parts[1]!);
  }

  #onBed(alongSpot: NodeLocation, acrossSpot: NodeLocation): BedPoint | undefined {
    const along = this.#length(alongSpot, 0, this.#bed.length, READING_NAMES.along);
    const across = this.#length(acrossSpot, 0, this.#bed.width, READING_NAMES.across);
    return along === undefined || across === undefined ? undefined : { along, across };
  }

  #length(spot: NodeLocation, min: number, max: number, words: string): number | undefined {
    return this.#reader.readLength(spot, this.#units, { min, max, words });
  }

  /** The readings of the spots. A second one at the same station is refused: nobody can say which of the two holds. */
  #oncePerStation(
    spots: readonly NodeLocation[],
    read: (spot: NodeLocation) => BoundedReading | undefined,
  ): BoundedReading[] {
    const readings: BoundedReading[] = [];
    for (const spot of spots) {
      const reading = read(spot);
      if (!reading) continue;
      const twin = readings.find(({ place }) => samePlace(place, reading.place));
      if (twin) this.#reader.addFault(spot, { code: "one-reading", otherLine: twin.line, otherColumn: twin.column });
      readings.push(reading);
    }
    return readings;
  }
}

const samePlace = (a: BedPoint, b: BedPoint) => Math.hypot(a.along - b.along, a.across - b.across) <= EPSILON;
