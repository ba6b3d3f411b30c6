// How the cross pin settles in its holes when the wedge is driven: by the tenons' clearance, away from the wedge.

import { cosDeg, sinDeg } from "@lamplane/geometry";
import type { Elevation } from "@lamplane/parameters/elevation";

/** mm. */
export interface PinSeat {
  /** How far the pin gives way, square to the wedge's upper side, before both tenons bear. */
  readonly gives: number;
  /** So much thicker must the wedge be where it bears to come to rest where it is drawn. */
  readonly wedgeThicker: number;
  /** So much further in does a wedge made to its figures come to rest. */
  readonly wedgeFurtherIn: number;
  /** A wedge uneven by so much from side to side still bears across its width: the pin turns to it. */
  readonly follows: number;
}

/**
 * The figures of wedge and pin take the pin to lie in the middle of its holes. Driven, the wedge lifts it until both tenons
 * touch: by half the clearance c. The pin then lies c / 2 further off the wedge's upper side, which is c / (2 cos ω) of the
 * wedge's thickness and c / (2 sin ω) of its travel. With c 0.2 and ω 6 that is 0.1 of thickness, and 0.96 of travel.
 *
 * It is shown at the wedge's step and is no row of the tolerances, for it is no matter of chance: always there, always the
 * same way, and taken up by fitting the wedge a shaving at a time. The mouth does not know of it, since iron and bed do not
 * move; the room from pin to ramp loses c / 2 at most, 0.1 of a target of 16.
 *
 * Nor does a lean matter. The two ends can differ by c over the distance of the holes' middles, core and cheek: 0.2 in 57.6,
 * 0.2°, so that the pin follows a wedge uneven by c·core / (core + cheek), 0.17, across its width. One hole alone would let
 * a tenon of 7.5 lean by c / 7.5, 1.5°: the far hole stops it long before, and the cheek's thickness does not come into it.
 * @see plane geometry: a circle within a circle, and the wedge's upper side moved square to itself
 */
export function pinSeat({ design, widths }: Pick<Elevation, "design" | "widths">): PinSeat {
  const { pin, wedge } = design;
  const gives = pin.tenonClearance / 2;
  return {
    gives,
    wedgeThicker: gives / cosDeg(wedge.angle),
    wedgeFurtherIn: gives / sinDeg(wedge.angle),
    follows: (pin.tenonClearance * widths.core) / (widths.core + widths.cheek),
  };
}
