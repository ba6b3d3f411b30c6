// The plane's frame and the iron's: x along the sole from the toe, y up from the trued sole; s up the iron's face, v off it.
import { cosDeg, cotDeg, type Point, point, sinDeg } from "@lamplane/geometry";

/** The cutting edge at the trued sole, and the bed's angle: all that the iron's own coordinates need. */
export interface Frame {
  readonly mouthX: number;
  readonly bedAngle: number;
}

/** Place in the plane of a point s up the iron's face and v square off it, toward the toe and up. mm. */
export const ironToPlane = ({ mouthX, bedAngle }: Frame, s: number, v: number): Point =>
  point(mouthX + s * cosDeg(bedAngle) - v * sinDeg(bedAngle), s * sinDeg(bedAngle) + v * cosDeg(bedAngle));

/** The iron's own coordinates of a point in the plane. mm. */
export function planeToIron({ mouthX, bedAngle }: Frame, p: Point): { s: number; v: number } {
  const [dx, c, k] = [p.x - mouthX, cosDeg(bedAngle), sinDeg(bedAngle)];
  return { s: dx * c + p.y * k, v: p.y * c - dx * k };
}

/** x of the bed's line at a height over the trued sole: mouthX + t / sin β + y·cot β. */
export const bedXAt = ({ mouthX, bedAngle }: Frame, thickness: number, y: number): number =>
  mouthX + thickness / sinDeg(bedAngle) + y * cotDeg(bedAngle);
