// What the waste between the core's two cuts is still good for: the wedge, or the pin, never across the grain.

import { type Outline, type Point, point, polygon, transformOutline } from "@lamplane/geometry";
import type { Elevation } from "@lamplane/parameters/elevation";
import { figureValue, layersOf, layerThickness, pinLengths, wedgeOutline } from "@lamplane/parameters/elevation";
import { type CoreSawing, outlineOfCorners } from "./core-sawing.ts";
import { offsetPolygon } from "./inner-fit.ts";
import { findPlacement, type PartByLength, type PartFit } from "./placement.ts";

/** How far a wedge's length may lie from the grain, degrees: about 1 in 12. Common practice, no published source. */
export const GRAIN_RUN_OUT = 5;
export const GRAIN_RUN_OUT_SOURCE = "common practice, no published source: slope of grain about 1 in 12";

/** One part that may come out of the offcut. Places and outlines are in the core's frame. */
export interface FromOffcut extends PartFit {
  /** As it is sawn, with its allowance, where it lies; undefined where it does not go in. */
  readonly sawn: Outline | undefined;
  /** Its size across the core, sawn, and whether the core is that wide. mm. */
  readonly across: number;
  readonly acrossFits: boolean;
  /** Whether it can be cut out: placed, and the core wide enough. */
  readonly fits: boolean;
}

export interface ThroatOffcut {
  readonly outline: readonly Point[];
  /** Along the top, and up from its lower end to the top. */
  readonly length: number;
  readonly height: number;
  /** Across the core, as milled. */
  readonly width: number;
  /** Wood left on every sawn face of a part cut out of it. */
  readonly allowance: number;
  /** The one or the other, not both. `place` lays `Elevation.wedge` into the core's frame. */
  readonly wedge: FromOffcut;
  readonly pin: FromOffcut;
}

/** The offcut of a plane's core and what can be cut out of it with its grain along its length. All mm. */
export function throatOffcut(plane: Elevation, { offcut }: Pick<CoreSawing, "offcut">): ThroatOffcut {
  const xs = offcut.map((p) => p.x);
  const ys = offcut.map((p) => p.y);
  const allowance = plane.design.shop.millingAllowance;
  return {
    outline: offcut,
    length: offcut.length > 0 ? Math.max(...xs) - Math.min(...xs) : 0,
    height: offcut.length > 0 ? Math.max(...ys) - Math.min(...ys) : 0,
    width: offcutWidth(plane),
    allowance,
    // The core's faces are milled already: the wedge is planed down to its width from them, without an allowance.
    wedge: fromOffcut(plane, offcut, wedgePart(plane, allowance), figureValue(plane, "wedgeWidth")),
    pin: fromOffcut(plane, offcut, pinPart(plane, allowance), plane.pinSize.diameter + 2 * allowance),
  };
}

/** Across the core, or across the thickest of its layers: each is cut by itself. mm */
const offcutWidth = (plane: Elevation): number =>
  Math.max(...(layersOf(plane)?.map(layerThickness) ?? [plane.widths.core]));

function fromOffcut(plane: Elevation, offcut: readonly Point[], part: PartByLength, across: number): FromOffcut {
  const placed = findPlacement(offcut, part);
  const sawn = placed.place && transformOutline(outlineOfCorners(part.corners(part.length)), placed.place);
  const acrossFits = across <= offcutWidth(plane);
  return { ...placed, sawn, across, acrossFits, fits: placed.place !== undefined && acrossFits };
}

/** The wedge from the side, sawn with its allowance; its length is its lower side's, which lies on the cap iron. */
const wedgePart = (plane: Elevation, allowance: number): PartByLength => ({
  corners: (length) => offsetPolygon(cornersOf(wedgeOutline(plane.design, plane.frame, length)), allowance),
  lies: plane.frame.faceAngle,
  length: plane.wedgeLength,
  runOut: GRAIN_RUN_OUT,
});

/** The pin's blank along the grain: a square stick from one tenon's end to the other's, sawn with its allowance. */
function pinPart(plane: Elevation, allowance: number): PartByLength {
  const { diameter } = plane.pinSize;
  return {
    corners: (length) =>
      offsetPolygon(
        cornersOf(polygon(point(0, 0), point(length, 0), point(length, diameter), point(0, diameter))),
        allowance,
      ),
    lies: 0,
    length: 2 * pinLengths(plane).end,
    runOut: 0,
  };
}

const cornersOf = (outline: Outline): Point[] => outline.map((s) => s.from);
