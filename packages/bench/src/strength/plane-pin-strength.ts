// Whether this plane's cross pin and cheeks bear the wedge, with the maker's woods. Indicative, in a fine shaving and a catch.
import type { Elevation } from "@lamplane/parameters/elevation";
import { memoizeByPlane, pinLengths } from "@lamplane/parameters/elevation";
import { speciesFor } from "../plane-woods.ts";
import { thrustToGrain } from "./bearing.ts";
import { type CheekWood, type PinLoad, type PinStrength, type PinWood, pinStrength } from "./pin-strength.ts";
import { planeHold } from "./plane-hold.ts";

/** Which clamping force loads the pin: that for a fine shaving or for a catch, at the friction of the design or at the lowest. */
export type LoadCase = "fine" | "inCatch" | "fineAtLowest" | "inCatchAtLowest";

/** The six ways in which the wedge may be too much for the wood. */
export const WEAK_PLACES = [
  "bending",
  "tenonShear",
  "tenonBending",
  "tenonCrushing",
  "cheekBearing",
  "cheekShearOut",
] as const;
export type WeakPlace = (typeof WEAK_PLACES)[number];

const strengthUnder = (load: LoadCase) =>
  memoizeByPlane((plane) =>
    pinStrength(pinLoad(plane, planeHold(plane)[load].clamp), pinWood(plane), cheekWood(plane)),
  );

const UNDER: Readonly<Record<LoadCase, (plane: Elevation) => PinStrength>> = {
  fine: strengthUnder("fine"),
  inCatch: strengthUnder("inCatch"),
  fineAtLowest: strengthUnder("fineAtLowest"),
  inCatchAtLowest: strengthUnder("inCatchAtLowest"),
};

/**
 * Every margin of the pin under a load; one whose strength the tables lack, or whose wood they do not know, has no factor.
 * @see plane geometry: Strength
 */
export const planePinStrength = (plane: Elevation, load: LoadCase): PinStrength => UNDER[load](plane);

/** The place with the smallest factor of those that are known; undefined where none is. */
export function weakestPlace(
  strength: PinStrength,
): { readonly place: WeakPlace; readonly factor: number } | undefined {
  const known = WEAK_PLACES.flatMap((place) => {
    const { factor } = strength[place];
    return factor === undefined ? [] : [{ place, factor }];
  });
  return known.length === 0 ? undefined : known.reduce((least, each) => (each.factor < least.factor ? each : least));
}

/** Smallest factor over the load of a catch; undefined where none is known. */
export const smallestFactorInCatch = (plane: Elevation): number | undefined =>
  weakestPlace(planePinStrength(plane, "inCatch"))?.factor;

/** The wedge presses with its width, and its thrust stands square off the pin's flat. */
function pinLoad(plane: Elevation, clamp: number): PinLoad {
  const { design, widths, frame, pinMargins } = plane;
  const { pin, wedge } = design;
  const { shoulder, end } = pinLengths(plane);
  const bearing = Math.max(0, Math.min(end - widths.core / 2, widths.cheek));
  const span = widths.core + bearing;
  return {
    clamp,
    section: pin.section,
    ...plane.pinSize,
    span,
    loaded: widths.core - wedge.clearance,
    tenonArm: span / 2 - shoulder,
    bearing,
    cheek: widths.cheek,
    thrustToGrain: thrustToGrain(frame.faceAngle + wedge.angle),
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
