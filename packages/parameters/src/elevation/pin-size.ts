// Diameter of the cross pin and of its tenons: as given, or the usual ones where they fit, or in proportion to the body.

import { type Design, TABLE } from "../table/index.ts";
import { toMillimetres } from "../units.ts";
import type { PinMargins } from "./pin-placement.ts";
import { type PinPosition, pinAxisOffset, pinHoleRadius } from "./stack.ts";

/** mm. */
export interface PinSize {
  readonly diameter: number;
  readonly tenon: number;
}

/** A design whose cross pin has its sizes. */
export type SizedDesign = Design & { readonly pin: PinSize };

/** What is left round a cross pin that can be made and used, mm at least. Common practice, no published source. */
export const PIN_LIMITS = {
  /** Wood on any side of its hole: less breaks out as it is bored. */
  woodRoundHole: 3,
  /** Room to the ramp: through less, not even a shaving goes. */
  roomToRamp: 4,
  /** Shoulder between body and tenon. */
  shoulder: 0.5,
  /** Room between pin and hump, where the iron passes. */
  overHump: 0,
  /** Wedge beyond the pin, to either side. */
  wedgeBeyondPin: 0,
} as const;

/** Pin and tenon of a common bench plane: common practice, no published source. */
const USUAL: Readonly<Record<Design["units"], PinSize>> = {
  mm: { diameter: 12.7, tenon: 9.5 },
  in: { diameter: toMillimetres(1 / 2, "in"), tenon: toMillimetres(3 / 8, "in") },
};

/** Pin as a share of the body's height, tenon as a share of the pin: common practice, no published source. */
const PIN_OF_HEIGHT = 2 / 9;
const TENON_OF_PIN = 3 / 4;
/** Steps in which dowels and drills are bought. */
const STEP: Readonly<Record<Design["units"], number>> = { mm: 0.5, in: 1 / 32 };

/** The design with the usual sizes where none are given, then with those in proportion to the body: in the order in which they are tried. */
export const pinSizesToTry = (design: Design): readonly [SizedDesign, SizedDesign] => [
  withPinSize(design, sizesGiven(design, USUAL[design.units])),
  withPinSize(design, sizesGiven(design, proportionalSize(design))),
];

const sizesGiven = ({ pin }: Design, otherwise: PinSize): PinSize => ({
  diameter: pin.diameter === "auto" ? otherwise.diameter : pin.diameter,
  tenon: pin.tenon === "auto" ? otherwise.tenon : pin.tenon,
});

/** In steps in which dowels and drills are bought, no more than usual. */
function proportionalSize({ body, pin, units }: Design): PinSize {
  const step = toMillimetres(STEP[units], units);
  const inSteps = (size: number, round: (steps: number) => number): number =>
    round(Number((size / step).toFixed(6))) * step;
  const fromHeight = inSteps(body.height * PIN_OF_HEIGHT, Math.floor);
  const diameter = Math.max(TABLE.pin.diameter.min, Math.min(USUAL[units].diameter, fromHeight));
  const fromPin = inSteps((pin.diameter === "auto" ? diameter : pin.diameter) * TENON_OF_PIN, Math.round);
  return { diameter, tenon: Math.max(TABLE.pin.tenon.min, Math.min(USUAL[units].tenon, fromPin)) };
}

const withPinSize = (design: Design, size: PinSize): SizedDesign => ({ ...design, pin: { ...design.pin, ...size } });

/** Shoulder of the pin, from its body down to its tenon. mm. */
export const pinShoulder = ({ diameter, tenon }: PinSize): number => (diameter - tenon) / 2;

/** Height of the iron's hump over its cap iron, mm; 0 for a single iron. */
export const humpHeight = ({ capIron }: Design): number => (capIron.thickness > 0 ? capIron.hump : 0);

/** From the top of the hump to the pin that the iron passes under, square to the face. mm. */
export const roomOverHump = (design: Design, size: PinSize, pin: Pick<PinPosition, "v">): number =>
  pin.v - pinAxisOffset(size) - design.capIron.thickness - humpHeight(design);

/** Whether a pin of this size, in its place, leaves as much round it as it needs. */
export function pinFits(design: SizedDesign, pin: PinPosition, margins: PinMargins): boolean {
  const wood = Math.min(margins.woodOverHole, margins.shearOut, pin.centre.y - pinHoleRadius(design));
  return (
    wood >= PIN_LIMITS.woodRoundHole &&
    margins.roomToRamp >= PIN_LIMITS.roomToRamp &&
    pinShoulder(design.pin) >= PIN_LIMITS.shoulder &&
    roomOverHump(design, design.pin, pin) >= PIN_LIMITS.overHump &&
    Math.min(margins.wedgeBelow, margins.wedgeAbove) >= PIN_LIMITS.wedgeBeyondPin
  );
}
