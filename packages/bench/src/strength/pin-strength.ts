// Whether the cross pin and the cheeks bear the wedge. Indicative: averages of clear wood at 12 % moisture, no design values.
import { type BeamLoad, bendingMoment, bendingSag, reaction, shearSag } from "./beam.ts";
import { strengthAtAngle } from "./bearing.ts";
import { pinSectionProperties, roundSection } from "./section.ts";

/** Shear modulus as a share of the modulus of elasticity: 1/16, a common rule for wood, from memory. */
export const SHEAR_MODULUS_SHARE = 1 / 16;

/** What the wedge does to the wood at one place. Stresses MPa; the factor is strength over stress. */
export interface Margin {
  readonly stress: number;
  /** Undefined where the tables give no strength for the species; nothing stands in for it. */
  readonly strength: number | undefined;
  /** Undefined with the strength; infinite without a load. */
  readonly factor: number | undefined;
}

/** Lengths mm, angles degrees. */
export interface PinLoad {
  /** Force square on the iron, which the pin takes up, N. */
  readonly clamp: number;
  readonly section: "flatted" | "round";
  readonly diameter: number;
  readonly tenon: number;
  /** Between the supports; the core's width, where the cheeks bear at their inner faces. */
  readonly span: number;
  /** Length of pin that the wedge presses on; the span, where it is spread over all of it. */
  readonly loaded: number;
  /** Length of tenon that bears in each cheek. */
  readonly bearing: number;
  readonly cheek: number;
  /** Between the thrust and the cheek's grain, 0 … 90. */
  readonly thrustToGrain: number;
  /** From the hole's rim to the nearest edge in the thrust's way. */
  readonly shearOut: number;
}

/** Handbook values at 12 % moisture, MPa; undefined where the tables lack them. */
export interface PinWood {
  readonly bending: number | undefined;
  readonly elasticity: number | undefined;
  readonly shearAlong: number | undefined;
  readonly compressionAcross: number | undefined;
}
export interface CheekWood {
  readonly compressionAlong: number | undefined;
  readonly compressionAcross: number | undefined;
  readonly shearAlong: number | undefined;
}

export interface PinStrength {
  readonly bending: Margin;
  readonly tenonShear: Margin;
  /** The tenon pressed across its own grain. */
  readonly tenonCrushing: Margin;
  /** The cheek pressed at an angle to its grain. */
  readonly cheekBearing: Margin;
  readonly cheekShearOut: Margin;
  /** Sag at mid-span, mm; undefined without a modulus of elasticity. */
  readonly sag: PinSag | undefined;
}

/** Every margin of the pin under the clamping force. @see plane geometry: Strength */
export const pinStrength = (pin: PinLoad, pinWood: PinWood, cheekWood: CheekWood): PinStrength => ({
  bending: bendingMargin(pin, pinWood),
  tenonShear: tenonShearMargin(pin, pinWood),
  tenonCrushing: strengthMargin(bearingStress(pin), pinWood.compressionAcross),
  cheekBearing: strengthMargin(bearingStress(pin), bearingStrength(cheekWood, pin.thrustToGrain)),
  cheekShearOut: strengthMargin(shearOutStress(pin), cheekWood.shearAlong),
  sag: pinSag(pin, pinWood),
});

/** Stress against strength, both MPa. */
export const strengthMargin = (stress: number, strength: number | undefined): Margin => ({
  stress,
  strength,
  factor: strength === undefined ? undefined : strength / stress,
});

/** Bending at mid-span against the modulus of rupture, at the fibre further from the centroid. */
export function bendingMargin(pin: PinLoad, wood: Pick<PinWood, "bending">): Margin {
  const { modulus } = pinSectionProperties(pin.section, pin.diameter);
  return strengthMargin(bendingMoment(beamLoad(pin)) / modulus, wood.bending);
}

/** Greatest shear in a round tenon, 4·V/(3·A), against shear along its grain. @see any beam table */
export function tenonShearMargin(pin: PinLoad, wood: Pick<PinWood, "shearAlong">): Margin {
  const { area } = roundSection(pin.tenon);
  return strengthMargin((4 * reaction(beamLoad(pin))) / (3 * area), wood.shearAlong);
}

/** Mean pressure of a tenon on its half of the hole, spread over tenon's diameter times bearing length. MPa. */
export const bearingStress = (pin: PinLoad): number => reaction(beamLoad(pin)) / (pin.tenon * pin.bearing);

/** Shear on the two planes that run from the hole's sides to the edge, MPa; infinite where no wood is left. */
export const shearOutStress = (pin: PinLoad): number =>
  pin.shearOut > 0 ? reaction(beamLoad(pin)) / (2 * pin.shearOut * pin.cheek) : Number.POSITIVE_INFINITY;

/** Sag at mid-span, mm. The shear's part rests on a rule for the shear modulus: without it the sag is a lower bound. */
export interface PinSag {
  readonly bending: number;
  readonly shear: number;
  readonly total: number;
}

export function pinSag(pin: PinLoad, wood: Pick<PinWood, "elasticity">): PinSag | undefined {
  if (wood.elasticity === undefined) return undefined;
  const section = pinSectionProperties(pin.section, pin.diameter);
  const stiffness = { ...section, elasticity: wood.elasticity, shearModulus: wood.elasticity * SHEAR_MODULUS_SHARE };
  const bending = bendingSag(beamLoad(pin), stiffness);
  const shear = shearSag(beamLoad(pin), stiffness);
  return { bending, shear, total: bending + shear };
}

const beamLoad = ({ clamp, span, loaded }: PinLoad): BeamLoad => ({ load: clamp, span, loaded });

function bearingStrength({ compressionAlong, compressionAcross }: CheekWood, angle: number): number | undefined {
  if (compressionAlong === undefined || compressionAcross === undefined) return undefined;
  return strengthAtAngle(compressionAlong, compressionAcross, angle);
}
