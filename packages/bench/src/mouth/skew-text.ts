// A mouth that is not alike at both cheeks, in words: what to do, and what the iron's tilt wants.
import type { Elevation } from "@lamplane/parameters/elevation";
import { formatFineLength } from "@lamplane/parameters/units";
import { mouthSkew, worstTilt } from "./mouth-skew.ts";

/** Less than this between the cheeks is not seen, mm. */
const SEEN_FROM = 0.005;

/** Sentences for the maker; before both cheeks are read, what to read and what may come. */
export function skewText(plane: Elevation): string[] {
  const { left, right, uneven, isRead } = mouthSkew(plane);
  const fine = (mm: number) => formatFineLength(mm, plane.design.units);
  if (!isRead)
    return [
      `Read it beside both cheeks too, the edge even with the sole: one side may come out wider than the other by ${fine(uneven)}.`,
    ];
  if (uneven < SEEN_FROM) return [`The mouth is alike at both cheeks: ${fine(left)}.`];
  const narrow = left < right ? "left" : "right";
  const { lean, room } = worstTilt(plane);
  return [
    `Mouth as wanted in its middle: left ${fine(left)}, right ${fine(right)}, uneven by ${fine(uneven)}; truing the sole does not change that.`,
    `With the edge even with the sole, plane the ramp's foot back by that at the ${narrow} cheek, down to nothing at the other.`,
    room < 0
      ? `If it is the bed that is out of square, the cheeks stop the iron ${fine(-room)} short of cutting even: true the bed square first.`
      : `If it is the bed that is out of square, the iron leans ${fine(lean)} to one side at the bed's top to cut even; ${fine(room)} of side clearance is left.`,
  ];
}
