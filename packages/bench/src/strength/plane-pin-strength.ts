// Whether this plane's cross pin and cheeks bear the wedge, with the maker's woods. Indicative, in a fine shaving and a catch.
import type { Elevation } from "@lamplane/parameters/elevation";
import { pinLengths } from "@lamplane/parameters/elevation";
import { memoizeByPlane } from "../memoize.ts";
import { speciesFor } from "../plane-woods.ts";
import { thrustToGrain } from "./bearing.ts";
import { type CheekWood, type PinLoad, type PinStrength, type PinWood, pinStrength } from "./pin-strength.ts";
import { planeHold } from "./plane-hold.ts";

export interface PlanePinStrength {
  /** Under the clamp wanted in a fine shaving and in a catch, at the frictions as given. */
  readonly fine: PinStrength;
  readonly inCatch: PinStrength;
}

/** The five ways in which the wedge may be too much for the wood. */
export const WEAK_PLACES = ["bending", "tenonShear", "tenonCrushing", "cheekBearing", "cheekShearOut"] as const;
export type WeakPlace = (typeof WEAK_PLACES)[number];

/**
 * Every margin of the pin; one whose strength the tables lack, or whose wood they do not know, has no factor.
 * @see plane geometry: Strength
 */
export const planePinStrength = memoizeByPlane((plane): PlanePinStrength => {
  const { fine, inCatch } = planeHold(plane);
  const woods = [pinWood(plane), cheekWood(plane)] as const;
  return {
    fine: pinStrength(pinLoad(plane, fine.clamp), ...woods),
    inCatch: pinStrength(pinLoad(plane, inCatch.clamp), ...woods),
  };
});

/** Smallest factor over the load of a catch, of those that are known; undefined where none is. */
export function smallestFactorInCatch(plane: Elevation): number | undefined {
  const { inCatch } = planePinStrength(plane);
  const factors = WEAK_PLACES.flatMap((place) => inCatch[place].factor ?? []);
  return factors.length > 0 ? Math.min(...factors) : undefined;
}

/** The wedge presses over the whole core, and its thrust stands square off the pin's flat. */
function pinLoad(plane: Elevation, clamp: number): PinLoad {
  const { design, widths, frame, pinMargins } = plane;
  const { pin, wedge } = design;
  const inCheek = pinLengths(plane).end - widths.core / 2;
  return {
    clamp,
    section: pin.section,
    diameter: pin.diameter,
    tenon: pin.tenon,
    span: widths.core,
    loaded: widths.core,
    bearing: Math.max(0, Math.min(inCheek, widths.cheek)),
    cheek: widths.cheek,
    thrustToGrain: thrustToGrain(frame.bedAngle + wedge.angle),
    shearOut: pinMargins.shearOut,
  };
}

function pinWood(plane: Elevation): PinWood {
  const strength = speciesFor(plane, "pin")?.strength;
  return {
    bending: strength?.bending,
    elasticity: strength?.elasticity,
    shearAlong: strength?.shearAlong,
    compressionAcross: strength?.compressionAcross,
  };
}

function cheekWood(plane: Elevation): CheekWood {
  const strength = speciesFor(plane, "body")?.strength;
  return {
    compressionAlong: strength?.compressionAlong,
    compressionAcross: strength?.compressionAcross,
    shearAlong: strength?.shearAlong,
  };
}
