// What each measured value is expected to be, read off the plane as it stands when its step begins.
import { type Elevation, mouthGrowth } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import { type MeasuredKey, measuringStep } from "../steps.ts";
import { planeBeforeStep } from "./as-built.ts";
import { allowanceAtMouthOpening } from "./step-effects.ts";

interface MeasuredRow {
  readonly unit: "mm" | "°";
  /** Undefined where the plane has no such thing. */
  readonly expected: (plane: Elevation) => number | undefined;
  /** The parameter that asked for it. */
  readonly parameter: string;
}

const mm = (parameter: string, expected: MeasuredRow["expected"]): MeasuredRow => ({ unit: "mm", parameter, expected });
const degrees = (parameter: string, expected: MeasuredRow["expected"]): MeasuredRow => ({
  unit: "°",
  parameter,
  expected,
});

/** The sole is trued until the mouth begins to open, so that wood is left to read it by; a shut mouth shows nothing. */
export const MEASURED: Readonly<Record<MeasuredKey, MeasuredRow>> = {
  ironThickness: mm("iron.thickness", ({ design }) => design.iron.thickness),
  ironWidth: mm("iron.width", ({ design }) => design.iron.width),
  coreWidth: mm("body.sideClearance", ({ widths }) => widths.core),
  cheekThickness: mm("body.cheek", ({ widths }) => widths.cheek),
  rampAngle: degrees("ramp.angle", ({ ramp }) => ramp.angle),
  rampRadius: mm("ramp.radius", ({ ramp }) => ramp.curve?.radius),
  bedAngle: degrees("bed.angle", ({ frame }) => frame.bedAngle),
  recessWidth: mm("recess.width", ({ recess }) => recess?.width),
  recessDepth: mm("recess.depth", ({ recess }) => recess?.depth),
  pinHoleFromToe: mm("pin.height", ({ pin }) => pin.centre.x),
  pinHoleHeight: mm("pin.height", ({ pin, design }) => pin.centre.y + design.sole.allowance),
  wedgeAngle: degrees("wedge.angle", ({ design }) => design.wedge.angle),
  wedgeTip: mm("wedge.tip", ({ design }) => design.wedge.tip),
  wedgeLength: mm("wedge.length", (plane) => plane.wedgeLength),
  bedTipX: mm("mouth.fromToe", ({ points }) => points.bedTip.x),
  rampTipX: mm("mouth.opening", ({ points }) => points.rampTip.x),
  allowanceLeft: mm("sole.allowance", ({ design }) => allowanceAtMouthOpening(design)),
  mouthSeen: mm("mouth.opening", (plane) =>
    Math.max(0, plane.design.mouth.opening - plane.design.sole.allowance * mouthGrowth(plane)),
  ),
};

/** What a value is expected to be when it is measured, from all that was measured before; mm or degrees. */
export const expectedValue = (design: Design, key: MeasuredKey): number | undefined =>
  MEASURED[key].expected(planeBeforeStep(design, measuringStep(key)));
