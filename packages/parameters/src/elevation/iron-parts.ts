// Cap iron and its screw's head from the side, for pictures and for what must pass them; the iron itself is in `stack.ts`.

import { type Outline, point, polygon } from "@lamplane/geometry";
import type { Design } from "../table/index.ts";
import { bedToPlane, type Frame, ironToPlane } from "./frame.ts";

/**
 * The cap iron from the side, counter-clockwise from its working edge; undefined for a single iron. A design does not say
 * how long it is: it is drawn as long as the iron.
 */
export function capIronOutline({ capIron, iron }: Design, frame: Frame): Outline | undefined {
  const { thickness, hump, humpEnd, setback } = capIron;
  if (thickness === 0) return undefined;
  const peak = thickness + hump;
  const corners = [
    point(setback, 0),
    point(iron.length, 0),
    point(iron.length, thickness),
    point(Math.max(setback + humpEnd, setback + peak), thickness),
    point(setback + peak, peak),
  ];
  return polygon(...corners.map(({ x, y }) => ironToPlane(frame, x, y)));
}

/** The screw's head behind the iron, from the side; undefined where there is none. */
export function screwHeadOutline({ capIron }: Design, frame: Frame): Outline | undefined {
  const { diameter, height, fromEdge } = capIron.screwHead;
  if (capIron.thickness === 0 || diameter === 0 || height === 0) return undefined;
  const [low, high, back] = [fromEdge - diameter / 2, fromEdge + diameter / 2, -frame.thickness];
  return polygon(
    bedToPlane(frame, low, back - height),
    bedToPlane(frame, high, back - height),
    bedToPlane(frame, high, back),
    bedToPlane(frame, low, back),
  );
}
