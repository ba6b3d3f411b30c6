// The throat spacer's outline: flanks on bed and ramp, a slot for the cross pin, a flange on the blank's top and a tab to draw it by.

import {
  arc,
  cosDeg,
  FAR,
  line,
  type Outline,
  type Point,
  point,
  reverseOutline,
  type Segment,
  sinDeg,
  splitAtIntersection,
  tessellate,
} from "@lamplane/geometry";
import { blocksAt } from "../elevation/blocks.ts";
import type { Elevation } from "../elevation/elevation.ts";
import { figureValue } from "../elevation/figures.ts";
import { bedXAt } from "../elevation/frame.ts";
import { pinSweepRadius } from "../elevation/pin-section.ts";
import { rampPath } from "../elevation/ramp.ts";
import { corneredPath, roundInnerCorner, windowOutline } from "./cornered-outline.ts";
import type { NoJig } from "./jig.ts";
import { clipChainToHeights, roundedBoxOutline } from "./lines.ts";
import { cornerRelief } from "./relief.ts";

/** Narrowest end of a leg, mm: where the throat leaves less between block and pin, the V is cut off. */
const LEG_END = 2.4;
/** Room that the leg on the ramp leaves before the bed at its lower end, mm. */
const OFF_BED = 0.6;
/** Room between the turning pin and the spacer, mm. */
const ROUND_PIN = 1.5;
/** Over the blank's sole, mm: glue gathers there. */
const OVER_SOLE = 2;
/** Flange over each block's top, and its thickness, mm. */
const FLANGE = 14;
const FLANGE_THICK = 8;
/** How far under the flange the flanks end, mm: the blocks' upper arrises stand free. */
export const NECK = 6;
/** Least length of each flank, mm: a shorter one does not hold a block square. */
const LEAST_FLANK = 10;
/** Least wood of the spacer beside its slot where the legs meet the flange, and over it under the flange, mm. */
const LEAST_LEG = 10;
const OVER_SLOT = 1.5;
/** The tab that it is drawn by, and half the width of the hole for a finger; the letters are under the hole. */
const TAB = { width: 46, height: 36, hole: 9 };
/** Left round the hole that saves material, mm. */
const RIM = 7;

/** The spacer's places in the plane's frame. mm */
export interface SpacerLayout {
  readonly top: number;
  readonly bedLow: number;
  readonly rampLow: number;
  readonly neck: number;
  readonly slot: { readonly left: number; readonly right: number; readonly half: number };
  /** Up the ramp, from the leg's end to the neck. */
  readonly ramp: readonly Segment[];
  /** Width of the legs on bed and ramp under the flange. */
  readonly legs: readonly [number, number];
  readonly bedTop: Point;
  readonly rampTop: Point;
}

export function spacerLayout(plane: Elevation): SpacerLayout {
  const { design, frame, pin } = plane;
  const [top, low] = [design.body.height, -design.sole.allowance];
  const half = pinSweepRadius(design.pin, plane.pinSize) + ROUND_PIN;
  const slot = { left: pin.centre.x - half, right: pin.centre.x + half, half };
  const neck = top - NECK;
  const path = rampPath(plane.ramp, low, 2 * top);
  const upright = (x: number) => [line(point(x, low), point(x, FAR))];
  const bedPath = [line(point(bedXAt(frame, low), low), point(bedXAt(frame, FAR), FAR))];
  const bedMeets = splitAtIntersection(bedPath, upright(slot.right + LEG_END))?.at.y ?? low;
  const rampMeets =
    slot.left - LEG_END > path[0]!.from.x
      ? low
      : (splitAtIntersection(path, upright(slot.left - LEG_END))?.at.y ?? FAR);
  const bedLow = Math.max(bedMeets, low + Math.max(OVER_SOLE, design.bed.featherChamfer));
  const clearOfBed = splitAtIntersection(bedPath, upright(slot.left + OFF_BED))?.at.y ?? low;
  const rampLow = Math.max(rampMeets, clearOfBed, low + OVER_SOLE);
  const ramp = clipChainToHeights(path, rampLow, neck);
  const blocks = blocksAt(plane, "blank");
  return {
    top,
    bedLow,
    rampLow,
    neck,
    slot,
    ramp,
    legs: [bedXAt(frame, neck) - slot.right, slot.left - ramp.at(-1)!.to.x],
    bedTop: blocks.bedChain.at(-1)!.to,
    rampTop: blocks.rampChain.at(-1)!.to,
  };
}

/** What keeps a spacer from being made: the pin too near the top, or legs too weak or too short to hold a block square. */
export function spacerObstacle(plane: Elevation, places: SpacerLayout): NoJig | undefined {
  const { bedLow, rampLow, neck, legs, top, slot } = places;
  const overPin = top - plane.pin.centre.y - slot.half;
  const flanks = neck - Math.max(bedLow, rampLow);
  const obstacle = (
    [
      ["room-over-pin", overPin, OVER_SLOT],
      ["spacer-leg", Math.min(...legs), LEAST_LEG],
      ["spacer-flank", flanks, LEAST_FLANK],
      ["spacer-leg-below-pin", plane.pin.centre.y - Math.max(bedLow, rampLow), 0],
    ] as const
  ).find(([, value, limit]) => !(value >= limit));
  if (!obstacle) return undefined;
  const [subject, value, limit] = obstacle;
  return {
    name: "throat-spacer",
    subject,
    value,
    limit,
    unit: "mm",
    parameters: ["pin.height", "body.height"],
    advice: "set-blocks-by-iron",
    edgeHeight: figureValue(plane, "edgeHeightAtContact"),
  };
}

/** x of the tab's middle, mm. */
export const tabMiddle = ({ bedTop, rampTop }: SpacerLayout): number => (bedTop.x + rampTop.x) / 2;

/** The hole for a finger in the upper part of the tab. */
export function tabHole(places: SpacerLayout): Outline {
  const [middle, high] = [tabMiddle(places), places.top + FLANGE_THICK + TAB.height];
  return roundedBoxOutline(middle - TAB.hole, high - 20, middle + TAB.hole, high - 6, 5);
}

/** Round the spacer, counter-clockwise from the foot of its leg on the bed. `set`: how far the neck stands off the blocks. */
export function spacerOutline(plane: Elevation, places: SpacerLayout, set: number): Outline {
  const { frame, pin } = plane;
  const { top, bedLow, rampLow, neck, slot, ramp, bedTop, rampTop } = places;
  const onBed = (y: number) => point(bedXAt(frame, y), y);
  const beta = frame.bedAngle;
  const bedNeck = point(onBed(neck).x - set * sinDeg(beta), neck + set * cosDeg(beta));
  const end = ramp.at(-1)!;
  const rampSlope = directionAtEnd(end);
  const rampNeck = point(end.to.x + set * rampSlope.y, end.to.y - set * rampSlope.x);
  const high = top + FLANGE_THICK;
  const middle = tabMiddle(places);
  const tab = [middle + TAB.width / 2, middle - TAB.width / 2] as const;
  const corners: Point[] = [
    point(slot.right, bedLow),
    onBed(bedLow),
    onBed(neck),
    bedNeck,
    extendToHeight(bedNeck, point(cosDeg(beta), sinDeg(beta)), top),
    point(bedTop.x + FLANGE, top),
    point(bedTop.x + FLANGE, high),
    point(tab[0], high),
    point(tab[0] - 4, high + TAB.height),
    point(tab[1] + 4, high + TAB.height),
    point(tab[1], high),
    point(rampTop.x - FLANGE, high),
    point(rampTop.x - FLANGE, top),
    extendToHeight(rampNeck, rampSlope, top),
    rampNeck,
    end.to,
  ];
  const slotTop = { left: point(slot.left, pin.centre.y), right: point(slot.right, pin.centre.y) };
  const rounded = corners.map((at, i) =>
    roundInnerCorner(corners[i - 1] ?? at, at, corners[i + 1] ?? at, cornerRelief(plane.design)),
  );
  return [
    ...corneredPath(rounded),
    ...reverseOutline(ramp),
    line(ramp[0]!.from, point(slot.left, rampLow)),
    line(point(slot.left, rampLow), slotTop.left),
    arc(slotTop.left, slotTop.right, pin.centre, -180),
    line(slotTop.right, corners[0]!),
  ];
}

/** Direction in which a segment ends, of length 1. */
function directionAtEnd(s: Segment): Point {
  const [dx, dy] =
    s.kind === "line"
      ? [s.to.x - s.from.x, s.to.y - s.from.y]
      : [-(s.to.y - s.centre.y) * Math.sign(s.sweep), (s.to.x - s.centre.x) * Math.sign(s.sweep)];
  const length = Math.hypot(dx, dy);
  return point(dx / length, dy / length);
}

/** Where the way from a point in a direction reaches a height. */
const extendToHeight = (from: Point, direction: Point, y: number): Point =>
  point(from.x + ((y - from.y) * direction.x) / direction.y, y);

/** A hole in the leg on the ramp's side, clear of a curved ramp's bulge. */
export function legWindow(plane: Elevation, places: SpacerLayout): Outline[] {
  const { slot, ramp, rampLow, neck } = places;
  const [low, high] = [ramp[0]!.from, ramp.at(-1)!.to];
  const chord = Math.hypot(high.x - low.x, high.y - low.y);
  const bulge = Math.max(
    0,
    ...tessellate(ramp).map((p) => ((p.x - low.x) * (high.y - low.y) - (p.y - low.y) * (high.x - low.x)) / chord),
  );
  const corners = [low, point(slot.left, rampLow), point(slot.left, plane.pin.centre.y), point(slot.left, neck), high];
  if (slot.left <= low.x) return [];
  const [onTop, onRamp] = [3, 4];
  return windowOutline(corners, (side) => (side === onRamp ? RIM + bulge : side === onTop ? 2 : RIM));
}
