// A mouth that is not alike at both cheeks, in words: what to do, and what the iron's tilt wants.
import type { Elevation } from "@lamplane/parameters/elevation";
import { formatLength } from "@lamplane/parameters/units";
import { MOUTH } from "../words/mouth.ts";
import { mouthSkew, worstTilt } from "./mouth-skew.ts";

/** Less than this between the cheeks is not seen, mm. */
const SEEN_FROM = 0.005;

/** Sentences for the maker; before both cheeks are read, what to read and what may come. */
export function skewText(plane: Elevation): string[] {
  const { left, right, uneven, isRead } = mouthSkew(plane);
  const fine = (mm: number) => formatLength(mm, plane.design);
  if (!isRead) return [MOUTH.readBothCheeks({ uneven: fine(uneven) })];
  if (uneven < SEEN_FROM) return [MOUTH.even({ opening: fine(left) })];
  const narrow = left < right ? "left" : "right";
  const { lean, room } = worstTilt(plane);
  return [
    MOUTH.uneven({ left: fine(left), right: fine(right), by: fine(uneven), middle: fine(plane.design.mouth.opening) }),
    MOUTH.planeRamp({ narrow }),
    room < 0 ? MOUTH.tiltStopped({ short: fine(-room) }) : MOUTH.tilt({ lean: fine(lean), room: fine(room) }),
  ];
}
