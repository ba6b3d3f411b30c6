// Which cross pin goes where: as given, or where the smallest of its margins is largest; and the curved ramp's radius with it.

import {
  cosDeg,
  distanceAlongRay,
  distanceToChain,
  line,
  type Point,
  point,
  type Segment,
  sinDeg,
} from "@lamplane/geometry";
import type { Design } from "../table/index.ts";
import { TABLE } from "../table/index.ts";
import type { Frame } from "./frame.ts";
import { pinFits, pinSizesToTry, type SizedDesign } from "./pin-size.ts";
import { fullHeightRadius, isCurvePossible, type Ramp, rampAtOpening, rampShape } from "./ramp.ts";
import { distanceToRamp } from "./ramp-formulas.ts";
import { type PinPosition, pinHalfCover, pinHoleRadius, pinPositions } from "./stack.ts";

/** Room between pin and ramp in which fingers reach a jammed shaving, mm (common practice, no published source). */
export const ROOM_WANTED = 16;
/** Wood over the hole: one tenon's diameter, near the 1.5 D to a free edge of NDS table 12.5.1 (from memory). */
export const WOOD_OVER_HOLE_PER_TENON = 1;
/** Wood in the line of the wedge's thrust: half as much again, for the thrust goes that way. */
export const SHEAR_OUT_PER_TENON = 1.5;
/** Wedge below the pin's contact, mm: enough that the tip does not bear alone. */
export const WEDGE_BELOW_WANTED = 6;
/** Wedge above the pin's contact, mm: enough to tap it on as it wears. */
export const WEDGE_ABOVE_WANTED = 12;

/** What surrounds the pin once it has a place, mm. */
export interface PinMargins {
  readonly roomToRamp: number;
  readonly woodOverHole: number;
  readonly shearOut: number;
  readonly wedgeBelow: number;
  readonly wedgeAbove: number;
}

/** The elevation as far as it is known before the pin is placed. */
export interface PinContext {
  readonly frame: Frame;
  readonly top: readonly Segment[];
  readonly wedgeLength: number;
}

/** The margins of a design's pin, wherever it stands. */
function marginsAround(
  design: SizedDesign,
  { frame, top, wedgeLength }: PinContext,
  ramp: Ramp,
): (pin: PinPosition) => PinMargins {
  const hole = pinHoleRadius(design);
  const covered = pinHalfCover(design);
  const thrustLength = thrustLengths(design, top, frame);
  const { tipFromEdge } = design.wedge;
  return ({ centre, contactS }) => {
    const thrust = thrustLength(centre);
    return {
      roomToRamp: distanceToRamp(ramp, centre) - design.pin.diameter / 2,
      // Where no wood is met in the line of the thrust, the point lies above the top.
      woodOverHole: distanceToChain(centre, top) * (thrust > 0 ? 1 : -1) - hole,
      shearOut: thrust - hole,
      wedgeBelow: contactS - covered - tipFromEdge,
      wedgeAbove: tipFromEdge + wedgeLength - contactS - covered,
    };
  };
}

/**
 * From any point in the line of the wedge's thrust, square off its upper side, to the nearest edge of the finished cheek: its
 * top, or its toe's end; 0 where the point already lies outside and no wood is met.
 */
function thrustLengths({ wedge }: Design, top: readonly Segment[], { faceAngle }: Frame): (p: Point) => number {
  const slope = faceAngle + wedge.angle;
  const thrust = point(-sinDeg(slope), cosDeg(slope));
  const toe = top.at(-1)!.to;
  const edges = [...top, line(toe, point(toe.x, 0))];
  return (p) => {
    let nearest = Infinity;
    for (const edge of edges) nearest = Math.min(nearest, distanceAlongRay(p, thrust, edge));
    return nearest < Infinity ? nearest : 0;
  };
}

/** The smallest of the margins, each as a share of what is wanted of it; 1 is just enough. */
function smallestMarginShare(design: SizedDesign, m: PinMargins): number {
  const tenon = design.pin.tenon;
  return Math.min(
    m.roomToRamp / ROOM_WANTED,
    m.woodOverHole / (WOOD_OVER_HOLE_PER_TENON * tenon),
    m.shearOut / (SHEAR_OUT_PER_TENON * tenon),
    m.wedgeBelow / WEDGE_BELOW_WANTED,
    m.wedgeAbove / WEDGE_ABOVE_WANTED,
  );
}

/** A cross pin in its place, what surrounds it there, and the ramp. */
export interface PlacedPin {
  readonly sized: SizedDesign;
  readonly pin: PinPosition;
  readonly margins: PinMargins;
  readonly ramp: Ramp;
}

/** Pin and ramp together: each is given, or solved for. */
export function placePinAndRamp(design: Design, around: PinContext): PlacedPin {
  const [usual, proportional] = pinSizesToTry(design);
  const placed = placePin(usual, around);
  const { diameter, tenon } = design.pin;
  const isGiven = diameter !== "auto" && tenon !== "auto";
  return isGiven || pinFits(usual, placed.pin, placed.margins) ? placed : placePin(proportional, around);
}

function placePin(design: SizedDesign, around: PinContext): PlacedPin {
  const { pin, ramp } = placeSizedPin(design, around);
  return { sized: design, pin, margins: marginsAround(design, around, ramp)(pin), ramp };
}

function placeSizedPin(design: SizedDesign, around: PinContext): { pin: PinPosition; ramp: Ramp } {
  const { frame } = around;
  const rampOf = (radius: number) => rampAtOpening(design, frame.mouthX, radius);
  const given = design.ramp.radius === "auto" ? undefined : design.ramp.radius;
  const tightest = rampOf(given ?? TABLE.ramp.radius.min);
  const height = design.pin.height === "auto" ? solvePinHeight(design, around, tightest) : design.pin.height;
  const pin = pinPositions(design, frame)(height);
  if (given !== undefined || rampShape(design) === "straight") return { pin, ramp: tightest };
  return { pin, ramp: rampOf(solveRadius(design, rampOf, pin)) };
}

/** Every margin is concave or monotone in the height, so their minimum has one peak: golden section finds it. */
function solvePinHeight(design: SizedDesign, around: PinContext, ramp: Ramp): number {
  const marginsOf = marginsAround(design, around, ramp);
  const positionAt = pinPositions(design, around.frame);
  const share = (height: number) => smallestMarginShare(design, marginsOf(positionAt(height)));
  const { min } = TABLE.pin.height;
  return roundToNanometre(maximizeUnimodal(share, min, Math.max(design.body.height, min + 1)));
}

const GOLDEN = (Math.sqrt(5) - 1) / 2;
const roundToNanometre = (x: number): number => Math.round(x * 1e6) / 1e6;

/** Where a function with one peak is largest between two ends, to a nanometre. */
function maximizeUnimodal(f: (x: number) => number, low: number, high: number): number {
  let [a, b] = [low, high];
  let [c, d] = [b - GOLDEN * (b - a), a + GOLDEN * (b - a)];
  let [atC, atD] = [f(c), f(d)];
  while (b - a > 1e-7) {
    if (atC >= atD) {
      [b, d, atD] = [d, c, atC];
      c = b - GOLDEN * (b - a);
      atC = f(c);
    } else {
      [a, c, atC] = [c, d, atD];
      d = a + GOLDEN * (b - a);
      atD = f(d);
    }
  }
  return (a + b) / 2;
}

/** Largest radius that leaves the room wanted, at most the one whose curve ends at the top; the tightest where none does. */
function solveRadius(design: SizedDesign, rampOf: (radius: number) => Ramp, pin: PinPosition): number {
  const { min, max } = TABLE.ramp.radius;
  if (!isCurvePossible(design)) return min;
  const room = (radius: number) => distanceToRamp(rampOf(radius), pin.centre) - design.pin.diameter / 2;
  let [tight, wide] = [min, Math.max(min, Math.min(max, fullHeightRadius(design)))];
  if (room(wide) >= ROOM_WANTED) return roundToNanometre(wide);
  while (wide - tight > 1e-7) {
    const middle = (tight + wide) / 2;
    if (room(middle) >= ROOM_WANTED) tight = middle;
    else wide = middle;
  }
  return roundToNanometre(tight);
}
