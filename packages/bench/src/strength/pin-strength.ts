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
  /** Undefined with the strength, or where no clamp is enough; infinite without a load. */
  readonly factor: number | undefined;
}

/** Lengths mm, angles degrees. */
export interface PinLoad {
  /** Force square on the iron, which the pin takes up, N; infinite where no clamp is enough. */
  readonly clamp: number;
  readonly section: "flatted" | "round";
  readonly diameter: number;
  readonly tenon: number;
  /** Between the middles of the tenons' bearings: the safe side, for a stiff tenon bears more at the cheek's inner face. */
  readonly span: number;
  /** Length of pin that the wedge presses on: its width. */
  readonly loaded: number;
  /** From the middle of a tenon's bearing to its shoulder. */
  readonly tenonArm: number;
  /** Length of tenon that bears in each cheek. */
  readonly bearing: number;
  readonly cheek: number;
  /** Between the thrust and the cheek's grain, 0 … 90. */
  readonly thrustToGrain: number;
  /** From the hole's rim to the nearest edge in the thrust's line. */
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
  /** The tenon bent where it leaves its shoulder. */
  readonly tenonBending: Margin;
  /** The tenon pressed across its own grain. */
  readonly tenonCrushing: Margin;
  /** The cheek pressed at an angle to its grain. */
  readonly cheekBearing: Margin;
  readonly cheekShearOut: Margin;
  /** Sag at mid-span, mm; undefined without a modulus of elasticity. */
  readonly sag: PinSag | undefined;
}

/** Every margin of the pin under the clamping force. @see plane geometry: Strength */
export function pinStrength(pin: PinLoad, pinWood: PinWood, cheekWood: CheekWood): PinStrength {
  const margin = (stress: number, strength: number | undefined) =>
    Number.isFinite(pin.clamp) ? strengthMargin(stress, strength) : { stress, strength, factor: undefined };
  return {
    bending: margin(bendingStress(pin), pinWood.bending),
    tenonShear: margin(tenonShearStress(pin), pinWood.shearAlong),
    tenonBending: margin(tenonBendingStress(pin), pinWood.bending),
    tenonCrushing: margin(bearingStress(pin), pinWood.compressionAcross),
    cheekBearing: margin(bearingStress(pin), bearingStrength(cheekWood, pin.thrustToGrain)),
    cheekShearOut: margin(shearOutStress(pin), cheekWood.shearAlong),
    sag: Number.isFinite(pin.clamp) ? pinSag(pin, pinWood) : undefined,
  };
}

/** Stress against strength, both MPa. */
export const strengthMargin = (stress: number, strength: number | undefined): Margin => ({
  stress,
  strength,
  factor: strength === undefined ? undefined : strength / stress,
});

/** Bending at mid-span, at the fibre further from the centroid. MPa. */
export const bendingStress = (pin: PinLoad): number =>
  bendingMoment(beamLoad(pin)) / pinSectionProperties(pin.section, pin.diameter).modulus;

/** Greatest shear in a round tenon, 4·V/(3·A). MPa. @see any beam table */
export const tenonShearStress = (pin: PinLoad): number =>
  (4 * reaction(beamLoad(pin))) / (3 * roundSection(pin.tenon).area);

/** Bending of a round tenon at its shoulder, the cheek's push taken in the middle of its bearing: V·arm/W. MPa. */
export const tenonBendingStress = (pin: PinLoad): number =>
  (reaction(beamLoad(pin)) * pin.tenonArm) / roundSection(pin.tenon).modulus;

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
