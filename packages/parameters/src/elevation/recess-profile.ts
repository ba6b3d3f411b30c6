// The recess of a layered core from the side: the bed line of its middle layers set back.

import { arc, line, type Point, type Segment } from "@lamplane/geometry";
import { bedToPlane, type Frame } from "./frame.ts";
import type { Recess } from "./recess.ts";

/**
 * From the top of the floor down to its corner, which is cleared by an arc where the recess has a relief, and up the lower end
 * to the bed. The wood lies to the left.
 * @param topOfFloor where the floor comes out of the top of the bed block
 * @param bedLevel v of the bed on which it ends
 */
export function recessProfile(
  frame: Frame,
  { low, depth, relief }: Recess,
  topOfFloor: Point,
  bedLevel: number,
): Segment[] {
  const floor = -frame.thickness - depth;
  const at = (s: number, v: number) => bedToPlane(frame, s, v);
  const onBed = at(low, bedLevel);
  if (relief === 0) return [line(topOfFloor, at(low, floor)), line(at(low, floor), onBed)];
  const reach = relief * Math.SQRT2;
  const [onFloor, onEnd] = [at(low + reach, floor), at(low, floor + reach)];
  const centre = at(low + reach / 2, floor + reach / 2);
  return [line(topOfFloor, onFloor), arc(onFloor, onEnd, centre, -180), line(onEnd, onBed)];
}
