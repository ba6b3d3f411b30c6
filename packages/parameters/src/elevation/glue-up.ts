// How the blocks find their place at the glue-up, and where no glue goes.
import {
  cosDeg,
  FAR,
  line,
  type Outline,
  point,
  reverseOutline,
  sinDeg,
  splitAtIntersection,
} from "@lamplane/geometry";
import { stageExtent } from "./blocks.ts";
import type { Elevation } from "./elevation.ts";
import { bedXAt } from "./frame.ts";
import { removalForOpening } from "./mouth-opening.ts";
import { type Ramp, rampPath } from "./ramp.ts";

/** Left without glue along bed and ramp, mm: what is spread nearer comes out in the throat (common practice). */
export const GLUE_FREE = { least: 3, most: 5 } as const;
/** As it is drawn, mm. */
const DRAWN = (GLUE_FREE.least + GLUE_FREE.most) / 2;

/** Height of the edge over the blank's sole when the front block is slid back until it touches the iron; below 0 it never does so. mm */
export const edgeHeightAtContact = (e: Elevation): number => e.design.sole.allowance + removalForOpening(e, 0);

/** Whether the front block is slid back until it touches the iron; otherwise it is set to its mark. */
export const isPlacedByContact = (e: Elevation): boolean =>
  e.design.hand.placing === "contact" && edgeHeightAtContact(e) >= 0;

/** What of each cheek's inside takes no glue: the throat, and a strip of the blocks along bed and ramp. Counter-clockwise. */
export function glueFreeArea(plane: Elevation): Outline {
  const { sole } = stageExtent(plane, "blank");
  const { height } = plane.design.body;
  const top = [line(point(-FAR, height), point(FAR, height))];
  const path = rampPath(rampInside(plane.ramp, DRAWN), sole, 2 * height);
  const ramp = splitAtIntersection(path, top)?.before ?? path;
  const onBed = (y: number) => point(bedXAt(plane.frame, y) + DRAWN / sinDeg(plane.frame.bedAngle), y);
  return [
    line(ramp[0]!.from, onBed(sole)),
    line(onBed(sole), onBed(height)),
    line(onBed(height), ramp.at(-1)!.to),
    ...reverseOutline(ramp),
  ];
}

/** A line as far inside the front block all along, mm. */
function rampInside({ shape, angle, foot, curve }: Ramp, by: number): Ramp {
  const moved = { shape, angle, foot: point(foot.x - by / sinDeg(angle), foot.y) };
  if (!curve) return moved;
  const radius = curve.radius - by;
  const on = (slope: number) => point(curve.centre.x + radius * sinDeg(slope), curve.centre.y + radius * cosDeg(slope));
  return { ...moved, curve: { ...curve, radius, begin: on(angle), end: on(curve.exitAngle) } };
}
