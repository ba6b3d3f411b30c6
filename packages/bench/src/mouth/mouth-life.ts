// What each later truing of the sole costs: the mouth and all that the sole carries, by how much wood is off. Plane geometry.

import { cotDeg, EPSILON, sinDeg } from "@lamplane/geometry";
import {
  bedToIron,
  type Elevation,
  figureValue,
  mouthGrowthAt,
  mouthOpeningAt,
  removalForOpening,
} from "@lamplane/parameters/elevation";
import { toMillimetres, type Units } from "@lamplane/parameters/units";

/**
 * Where a plane's life with its first mouth is taken to end: `depth` mm off the trued sole, or sooner where the mouth is
 * `times` the one wanted, but never before `shown` mm. Estimates: a sole trued twice a year loses less in thirty years.
 */
export const LIFE = { depth: 3, times: 10, least: 1 } as const;

/** Wood between two rows, in a round number of the maker's unit, mm. */
const STEP: Record<Units, number> = { mm: 0.25, in: toMillimetres(0.01, "in") };

/** The plane with its sole further down and its edge set to it. Lengths mm. */
export interface MouthLifeRow {
  /** Wood off the sole after it was first trued. */
  readonly takenOff: number;
  readonly opening: number;
  /** How far the mouth opens there for each mm more. */
  readonly growth: number;
  readonly edgeFromToe: number;
  /** Bed left below the bevel's heel, which the iron does not touch. */
  readonly bedBelowHeel: number;
  /** Bed left between the bevel's heel and the recess; undefined without a recess. */
  readonly bedToRecess: number | undefined;
  /**
   * From the cutting edge up the iron to the wedge's tip, which stays where it is in the body; an iron thicker at its edge lifts
   * its face toward the pin as it is set up the bed, and sends the wedge out.
   */
  readonly wedgeTipFromEdge: number;
  /** Straight wear left over the sole; undefined for a straight ramp. */
  readonly wearLeft: number | undefined;
  readonly pinHeight: number;
  readonly height: number;
}

/** Wood off the trued sole at which the table ends, mm: see LIFE. @param wanted mouth wanted, where the plane's is another */
export function lifeDepth(plane: Elevation, wanted = plane.design.mouth.opening): number {
  const worn = removalForOpening(plane, LIFE.times * wanted);
  return Math.min(LIFE.depth, Math.max(LIFE.least, worn));
}

/** Rows from the trued sole on, `step` mm apart, to the first at or past the end of the plane's life. */
export function mouthLife(plane: Elevation, step = STEP[plane.design.units], wanted?: number): MouthLifeRow[] {
  const count = Math.ceil(lifeDepth(plane, wanted) / step - EPSILON);
  return Array.from({ length: count + 1 }, (_, i) => mouthLifeAt(plane, i * step));
}

/** One row. @param off mm off the trued sole */
export function mouthLifeAt(plane: Elevation, off: number): MouthLifeRow {
  const { design, frame, ramp } = plane;
  const up = off / sinDeg(frame.bedAngle);
  const edgeUp = bedToIron(frame, { s: up, v: 0 });
  const chamferLeft = Math.max(0, design.bed.featherChamfer - design.sole.allowance - off);
  const below = figureValue(plane, "unsupported")! - chamferLeft / sinDeg(frame.bedAngle);
  const pad = figureValue(plane, "recessPad");
  return {
    takenOff: off,
    opening: mouthOpeningAt(plane, off),
    growth: mouthGrowthAt(plane, off),
    edgeFromToe: frame.mouthX + off * cotDeg(frame.bedAngle),
    bedBelowHeel: Math.max(0, below),
    bedToRecess: pad === undefined ? undefined : pad - up,
    wedgeTipFromEdge: design.wedge.tipFromEdge - edgeUp.s + edgeUp.v * cotDeg(design.wedge.angle),
    wearLeft: ramp.shape === "curved" ? Math.max(0, design.ramp.wearHeight - off) : undefined,
    pinHeight: plane.pin.centre.y - off,
    height: design.body.height - off,
  };
}
