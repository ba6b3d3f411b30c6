// Whether friction holds this plane's iron: the design's forces, frictions and angles put to the statics. Indicative.
import type { Elevation } from "@lamplane/parameters/elevation";
import { memoizeByPlane } from "@lamplane/parameters/elevation";
import { frictionAngleAtPin, type Hold, type HoldInput, holdAt } from "./friction-hold.ts";

/** A fine shaving and a catch, each at the frictions as given and at the lowest. */
export interface PlaneHold {
  readonly fine: Hold;
  readonly inCatch: Hold;
  readonly fineAtLowest: Hold;
  readonly inCatchAtLowest: Hold;
  /** A fine shaving where friction is best. */
  readonly fineAtHighest: Hold;
  /** Friction angle between wedge and pin at the friction given, degrees. */
  readonly angleAtPin: number;
}

/** @see plane geometry: Strength */
export const planeHold = memoizeByPlane((plane): PlaneHold => {
  const { friction, forcePerMm, catchPerMm } = plane.design.hold;
  const given = { steel: friction.steel, wood: friction.wood };
  const lowest = { steel: friction.steelLow, wood: friction.woodLow };
  const highest = { steel: friction.steelHigh, wood: friction.woodHigh };
  const [fine, caught] = [holdInput(plane, forcePerMm), holdInput(plane, catchPerMm)];
  return {
    fine: holdAt(fine, given),
    inCatch: holdAt(caught, given),
    fineAtLowest: holdAt(fine, lowest),
    inCatchAtLowest: holdAt(caught, lowest),
    fineAtHighest: holdAt(fine, highest),
    angleAtPin: frictionAngleAtPin(fine, friction.wood),
  };
});

function holdInput({ design, frame, pinSize }: Elevation, forcePerMm: number): HoldInput {
  const { iron, wedge } = design;
  const pin = { section: design.pin.section, ...pinSize };
  const { bedAngle, faceAngle } = frame;
  return { forcePerMm, ironWidth: iron.width, bedAngle, taper: bedAngle - faceAngle, wedgeAngle: wedge.angle, pin };
}
