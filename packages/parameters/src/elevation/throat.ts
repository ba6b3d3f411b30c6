// The throat: how wide the shaving's way is from the mouth to the top, and where it narrows.
import { type Point, point, pointAlong, type Segment, segmentLength } from "./outline.ts";
import { distanceToSegment } from "./top-outline.ts";

/** Width of the throat at a place on the ramp: to the nearest of iron, cap iron, wedge and pin, square to them. mm. */
export interface ThroatWidth {
  readonly at: Point;
  readonly width: number;
}

/** Stations along the ramp: a shaving is long beside their spacing of about half a millimetre. */
const STATIONS = 120;

/**
 * The throat's width at stations up the ramp, mouth first. All in one frame, mm.
 * @param ramp chain from the mouth to the top. @param stack chain over iron, cap iron and wedge. @param pin axis and radius.
 */
export function throatWidths(
  ramp: readonly Segment[],
  stack: readonly Segment[],
  pin: { readonly centre: Point; readonly radius: number },
): ThroatWidth[] {
  const total = ramp.reduce((sum, s) => sum + segmentLength(s), 0);
  return Array.from({ length: STATIONS + 1 }, (_, i) => {
    const at = pointAtLength(ramp, (total * i) / STATIONS);
    const toPin = Math.hypot(at.x - pin.centre.x, at.y - pin.centre.y) - pin.radius;
    return { at, width: Math.min(toPin, ...stack.map((s) => distanceToSegment(at, s))) };
  });
}

function pointAtLength(chain: readonly Segment[], along: number): Point {
  let left = along;
  for (const segment of chain) {
    const length = segmentLength(segment);
    if (left <= length) return pointAlong(segment, left / length);
    left -= length;
  }
  return chain.at(-1)?.to ?? point(0, 0);
}

/** Where the throat narrows most after having been wider: the narrowing, what is left there, and where. */
export function worstNarrowing(widths: readonly ThroatWidth[]): { by: number; left: number; at: Point } {
  let widest = 0;
  let worst = { by: 0, left: widths[0]?.width ?? 0, at: widths[0]?.at ?? point(0, 0) };
  for (const { at, width } of widths) {
    widest = Math.max(widest, width);
    if (widest - width > worst.by) worst = { by: widest - width, left: width, at };
  }
  return worst;
}
