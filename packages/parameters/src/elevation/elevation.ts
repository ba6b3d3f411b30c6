// From a design to the plane seen from the side: one pure function. Nothing given is ever clamped; the checks judge it.

import { type Circle, cotDeg, type Outline, type Point, point, type Segment } from "@lamplane/geometry";
import type { Design } from "../table/index.ts";
import { bedToPlane, bedXAt, type Frame, ironToPlane } from "./frame.ts";
import { bevelToBack, ironTaper, thicknessAt } from "./iron-taper.ts";
import { type PinMargins, placePinAndRamp } from "./pin-placement.ts";
import { pinSection, pinSweepRadius } from "./pin-section.ts";
import type { PinSize } from "./pin-size.ts";
import { type Ramp, rampXAt } from "./ramp.ts";
import { distanceToRamp } from "./ramp-formulas.ts";
import { type Recess, recessOf } from "./recess.ts";
import { bedLineTopS, ironOutline, type PinPosition, pinHole, wedgeLength, wedgeOutline } from "./stack.ts";
import { rampToTop, throatSeries, worstNarrowing } from "./throat.ts";
import { finishedTop, type Top, topOf } from "./top-outline.ts";
import { type CoreCuts, coreCuts, type Widths, widthsOf } from "./widths.ts";

export interface Elevation {
  readonly design: Design;
  readonly frame: Frame;
  readonly widths: Widths;
  readonly cuts: CoreCuts;
  readonly top: Top;
  /** The finished top, heel to toe. */
  readonly topChain: readonly Segment[];
  readonly ramp: Ramp;
  readonly pin: PinPosition;
  readonly pinSize: PinSize;
  readonly pinMargins: PinMargins;
  readonly pinToRampTurning: number;
  readonly pinHole: Circle;
  readonly pinSection: Outline;
  readonly wedgeLength: number;
  readonly wedge: Outline;
  readonly iron: Outline;
  readonly recess: Recess | undefined;
  /** s up the iron at which the bed comes out of the finished top. */
  readonly bedTopS: number;
  readonly throat: { readonly by: number; readonly left: number; readonly at: Point };
  readonly points: Points;
}

/** Named places on the elevation, mm in the plane's frame. */
export interface Points {
  readonly edge: Point;
  readonly rampFoot: Point;
  readonly bedFoot: Point;
  readonly rampTip: Point;
  readonly bedTip: Point;
  readonly bedChamfer: Point;
  readonly rampTop: Point;
  readonly bedTop: Point;
  readonly pinCentre: Point;
  readonly wedgeTip: Point;
  readonly crown: Point;
  readonly recessLow: Point;
  readonly bevelHeel: Point;
  readonly throatNarrowest: Point;
  readonly toe: Point;
  readonly heel: Point;
}

/**
 * The whole elevation of a design.
 * @see plane geometry: every definition and formula stands beside its figure in `figures`.
 */
export function elevation(design: Design): Elevation {
  const frame = frameOf(design);
  const top = topOf(design, bedXAt(frame, design.body.height / 2));
  const topChain = finishedTop(top);
  const length = wedgeLength(design, frame, topChain);
  const around = { frame, top: topChain, wedgeLength: length };
  const { sized, pin, margins, ramp } = placePinAndRamp(design, around);
  const bedTopS = bedLineTopS(design, frame, topChain, -frame.thickness);
  const recess = recessOf(design);
  const tips = blockTips(design, frame, ramp);
  const pinSize = { diameter: sized.pin.diameter, tenon: sized.pin.tenon };
  const sides = { design, frame, ramp, topChain, pin, pinSize, wedgeLength: length };
  const throat = worstNarrowing(throatSeries(sides));
  return {
    design,
    frame,
    widths: widthsOf(design),
    cuts: coreCuts(design, ramp.angle, tips.rampTip.x, tips.bedTip.x),
    top,
    topChain,
    ramp,
    pin,
    pinSize,
    pinMargins: margins,
    pinToRampTurning: distanceToRamp(ramp, pin.centre) - pinSweepRadius(design.pin, pinSize),
    pinHole: pinHole(sized, pin.centre),
    pinSection: pinSection(sized, frame, pin.centre),
    wedgeLength: length,
    wedge: wedgeOutline(design, frame, length),
    iron: ironOutline(design, frame),
    recess,
    bedTopS,
    throat,
    points: {
      ...tips,
      edge: point(frame.mouthX, 0),
      rampFoot: point(rampXAt(ramp, 0), 0),
      bedFoot: point(bedXAt(frame, 0), 0),
      rampTop: rampToTop(sides).at(-1)!.to,
      bedTop: bedToPlane(frame, bedTopS, -frame.thickness),
      pinCentre: pin.centre,
      wedgeTip: ironToPlane(frame, design.wedge.tipFromEdge, design.capIron.thickness),
      crown: point(top.crownX, top.height),
      recessLow: bedToPlane(frame, recess?.low ?? bedTopS, -frame.thickness),
      bevelHeel: bedToPlane(frame, frame.thickness * cotDeg(bevelToBack(design)), -frame.thickness),
      throatNarrowest: throat.at,
      toe: point(0, 0),
      heel: point(design.body.length, 0),
    },
  };
}

/** Mouth a third from the toe by default: common practice, no published source. */
const MOUTH_SHARE = 1 / 3;

/** Frame of a design: it follows from the design alone, before anything is placed in it. */
export function frameOf(design: Design): Frame {
  const { mouth, body, bed } = design;
  const mouthX = mouth.fromToe === "auto" ? body.length * MOUTH_SHARE : mouth.fromToe;
  return { mouthX, bedAngle: bed.angle, faceAngle: bed.angle - ironTaper(design), thickness: thicknessAt(design, 0) };
}

/** The blocks' tips on the blank's sole; the bed's as it is before the feather chamfer, and where the chamfer ends. */
function blockTips({ sole, bed }: Design, frame: Frame, ramp: Ramp) {
  const low = -sole.allowance;
  const chamferTop = low + bed.featherChamfer;
  return {
    rampTip: point(rampXAt(ramp, low), low),
    bedTip: point(bedXAt(frame, low), low),
    bedChamfer: point(bedXAt(frame, chamferTop), chamferTop),
  };
}
