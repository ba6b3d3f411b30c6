// The plan that the maker works to: every number fixed before the first cut, so that no `auto` moves with an error.

import { withValue } from "@lamplane/parameters/design";
import { type Elevation, figureValue, ironTaper, mouthGrowth, topFromEdge } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import { type AutoPath, autoValue } from "../auto-values.ts";
import { readUnevenness } from "../mouth/mouth-skew.ts";

/** mm and degrees; places in the plane's frame, y from the sole as it was to be trued. */
export interface TolerancePlan {
  /** The design with every `auto` that bears on the results replaced by what it came out as. */
  readonly design: Design;
  readonly placing: Design["hand"]["placing"];
  /** Of the iron at its cutting edge. */
  readonly thickness: number;
  /** Of the iron, above 0 where it is thicker at its edge. */
  readonly taper: number;
  /** Where a tapered iron's thicknesses are read, up from its edge; absent for a parallel iron. */
  readonly gauge: { readonly low: number; readonly high: number } | undefined;
  readonly capIron: number;
  readonly bedAngle: number;
  readonly rampAngle: number;
  /** Absent for a straight ramp, and for a curve that cannot be. */
  readonly curve: { readonly wearHeight: number; readonly exitAngle: number; readonly radius: number } | undefined;
  readonly allowance: number;
  readonly edgeHeight: number;
  readonly bedTipX: number;
  readonly rampTipX: number;
  readonly pinX: number;
  readonly pinY: number;
  readonly pinDepth: number;
  readonly wedgeAngle: number;
  readonly wedgeTip: number;
  /** Mouth at the left cheek less that at the right, as read; undefined until both are. */
  readonly mouthUneven: number | undefined;
  /** Mouth opening wanted, and how far it opens for each mm off the sole. */
  readonly opening: number;
  readonly mouthGrowth: number;
}

/**
 * What the maker works to. Where the edge would have to stand below the blank's sole at contact, nothing can be read
 * there: such a front block is set to its mark, whatever `hand.placing` says.
 */
export function tolerancePlan(e: Elevation): TolerancePlan {
  const { design, ramp, pin, points, frame } = e;
  const edgeHeight = figureValue(e, "edgeHeightAtContact");
  return {
    design: freezeAutoValues(e),
    placing: edgeHeight < 0 ? "marks" : design.hand.placing,
    thickness: frame.thickness,
    taper: ironTaper(design),
    gauge:
      frame.faceAngle === frame.bedAngle
        ? undefined
        : { low: design.iron.thicknessFromEdge, high: topFromEdge(design) },
    capIron: design.capIron.thickness,
    bedAngle: frame.bedAngle,
    rampAngle: ramp.angle,
    curve: ramp.curve && { ...ramp.curve, wearHeight: ramp.curve.begin.y },
    allowance: design.sole.allowance,
    edgeHeight,
    bedTipX: points.bedTip.x,
    rampTipX: points.rampTip.x,
    pinX: pin.centre.x,
    pinY: pin.centre.y,
    pinDepth: e.pinSize.diameter,
    wedgeAngle: design.wedge.angle,
    wedgeTip: design.wedge.tip,
    mouthUneven: readUnevenness(design.measured),
    opening: design.mouth.opening,
    mouthGrowth: mouthGrowth(e),
  };
}

/** What may be `auto` and bears on the results. */
const BEARING: readonly AutoPath[] = [
  "mouth.fromToe",
  "ramp.shape",
  "pin.diameter",
  "pin.tenon",
  "pin.height",
  "wedge.length",
  "ramp.angle",
  "ramp.radius",
];

const freezeAutoValues = (plane: Elevation): Design =>
  BEARING.reduce((design, path) => {
    const value = autoValue(plane, path);
    return value === undefined ? design : withValue(design, path, value);
  }, plane.design);
