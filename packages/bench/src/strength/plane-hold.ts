// Whether friction holds this plane's iron: the design's forces, frictions and angles put to the statics. Indicative.
import type { Elevation } from "@lamplane/parameters/elevation";
import { memoizeByPlane } from "../memoize.ts";
import { frictionAngleAtPin, type Hold, type HoldInput, type HoldRange, holdAt, holdRange } from "./friction-hold.ts";

export interface PlaneHold {
  /** In a fine shaving and in a catch, at the frictions as given. */
  readonly fine: Hold;
  readonly inCatch: Hold;
  /** In a fine shaving, from least to most over both frictions. */
  readonly range: Readonly<Record<keyof Hold, HoldRange>>;
  /** Friction angle between wedge and pin at the friction given, degrees. */
  readonly angleAtPin: number;
}

/** @see plane geometry: Strength */
export const planeHold = memoizeByPlane((plane): PlaneHold => {
  const { friction, forcePerMm, catchPerMm } = plane.design.hold;
  const given = { steel: friction.steel, wood: friction.wood };
  const low = { steel: friction.steelLow, wood: friction.woodLow };
  const high = { steel: friction.steelHigh, wood: friction.woodHigh };
  const fine = holdInput(plane, forcePerMm);
  return {
    fine: holdAt(fine, given),
    inCatch: holdAt(holdInput(plane, catchPerMm), given),
    range: holdRange(fine, low, high),
    angleAtPin: frictionAngleAtPin(fine, friction.wood),
  };
});

function holdInput({ design, frame }: Elevation, forcePerMm: number): HoldInput {
  const { iron, wedge, pin } = design;
  return { forcePerMm, ironWidth: iron.width, bedAngle: frame.bedAngle, wedgeAngle: wedge.angle, pin };
}
