// Whether friction holds the iron, and what it takes to drive the wedge. Indicative: it sends the maker back to the bench.
import { atanDeg, cosDeg, sinDeg, tanDeg } from "@lamplane/geometry";

/** Force on the whole edge, N, from the force per mm of edge (N/mm, an engineering estimate) and the iron's width (mm). */
export const cuttingForce = (forcePerMm: number, ironWidth: number): number => forcePerMm * ironWidth;

/** Friction angle of a coefficient, degrees. */
export const frictionAngle = (friction: number): number => atanDeg(friction);

/**
 * Friction angle of a round pin under the wedge, degrees: it rolls, so that only its tenons rub, on a shorter arm.
 * @param friction between tenon and cheek. @param tenon, diameter mm
 */
export const rollingFrictionAngle = (friction: number, tenon: number, diameter: number): number =>
  atanDeg((friction * tenon) / diameter);

/** What resists the iron on its two faces. */
export interface IronFriction {
  /** Largest share of the clamp that the wedge can pass on as a pull down the bed; see `wedgeGrip`. */
  readonly upper: number;
  readonly bed: number;
  /** Taper of the iron, degrees: above 0 where it is thicker at the edge. */
  readonly taper: number;
}

/**
 * Share of the clamp that the wedge can hold the iron back by. The iron drags the wedge up with it, and only the pin holds
 * the wedge: no more passes than friction on the iron allows, nor more than the pin's reaction, inclined by its friction
 * angle against the wedge's slope, has along the iron. 0 or less: the pin cannot hold the wedge.
 * @see statics of the wedge, each body's balance of forces (standard texts, from memory)
 */
export const wedgeGrip = ({ angle, alongIron, atPin }: Omit<WedgeContact, "taper">): number =>
  Math.min(tanDeg(alongIron), tanDeg(atPin - angle));

/**
 * Least force pressed square on the iron's face for which iron, wedge and pin stay where they are, N.
 * The cutting force F pushes F·cos β up the bed and presses F·sin β into it. The clamp N and the wedge's pull T = upper·N
 * stand square on and along the face, which leans from the bed by the taper: down the bed they give N·sin taper + T·cos taper,
 * into it N·cos taper − T·sin taper. 0 where the bed alone holds the iron; infinite where the two give nothing down the bed.
 * @see plane geometry: Strength
 */
export function requiredClamp(force: number, bedAngle: number, { upper, bed, taper }: IronFriction): number {
  const push = force * (cosDeg(bedAngle) - bed * sinDeg(bedAngle));
  const [sin, cos] = [sinDeg(taper), cosDeg(taper)];
  const downBed = sin + upper * cos;
  if (downBed <= 0) return Number.POSITIVE_INFINITY;
  return Math.max(0, push / (bed * (cos - upper * sin) + downBed));
}

/**
 * Degrees by which the friction angle at the pin exceeds the angle between the bed and the wedge's upper side: above 0 the
 * pin can hold iron and wedge that are pulled up the bed. An iron thicker at its edge takes its taper off the wedge angle.
 */
export const holdMargin = ({ angle, atPin, taper }: Pick<WedgeContact, "angle" | "atPin" | "taper">): number =>
  atPin - angle + taper;

/** The wedge, the iron's taper under it, and the friction angles on the wedge's two sides, all degrees. */
export interface WedgeContact {
  readonly angle: number;
  readonly taper: number;
  /** On the side that slides along the cap iron. */
  readonly alongIron: number;
  /** On the side under the cross pin. */
  readonly atPin: number;
}

/**
 * Degrees by which friction exceeds the wedge angle: above 0 the wedge stays where it was driven. It slides out over the
 * iron or, under an iron thinner at its edge, together with it over the bed, whose friction is the same.
 */
export const lockingMargin = ({ angle, taper, alongIron, atPin }: WedgeContact): number =>
  alongIron + atPin - angle + Math.min(0, taper);

/**
 * Push on the wedge's butt that presses the iron with `clamp`, N. @param clamp N
 * @see plane geometry: Strength; statics of the wedge (standard, from memory)
 */
export const drivingForce = (clamp: number, { angle, alongIron, atPin }: Omit<WedgeContact, "taper">): number =>
  clamp * (tanDeg(angle + atPin) + tanDeg(alongIron));

/** What decides the hold. Forces N/mm of edge, lengths mm, angles degrees. */
export interface HoldInput {
  readonly forcePerMm: number;
  readonly ironWidth: number;
  readonly bedAngle: number;
  /** Of the iron, above 0 where it is thicker at its edge. */
  readonly taper: number;
  readonly wedgeAngle: number;
  readonly pin: { readonly section: "flatted" | "round"; readonly diameter: number; readonly tenon: number };
}

/** Friction: wood on the iron or cap iron, wood on wood. */
export interface Friction {
  readonly steel: number;
  readonly wood: number;
}

/** N and degrees. Clamp and driving force are infinite where the pin cannot hold the wedge. */
export interface Hold {
  readonly cutting: number;
  readonly clamp: number;
  readonly driving: number;
  /** See `holdMargin`. */
  readonly holdMargin: number;
  /** See `lockingMargin`. */
  readonly lockingMargin: number;
}

/**
 * The hold at one friction. A flatted pin's flat slides on the wedge, a round pin rolls. More friction, on steel or on wood,
 * never asks for more clamp nor makes a margin smaller, so that the lowest frictions are the worst of all.
 */
export function holdAt(input: HoldInput, { steel, wood }: Friction): Hold {
  const { taper, wedgeAngle: angle } = input;
  const wedge = { angle, taper, alongIron: frictionAngle(steel), atPin: frictionAngleAtPin(input, wood) };
  const cutting = cuttingForce(input.forcePerMm, input.ironWidth);
  const clamp =
    lockingMargin(wedge) > 0
      ? requiredClamp(cutting, input.bedAngle, { upper: wedgeGrip(wedge), bed: steel, taper })
      : Number.POSITIVE_INFINITY;
  return {
    cutting,
    clamp,
    driving: drivingForce(clamp, wedge),
    holdMargin: holdMargin(wedge),
    lockingMargin: lockingMargin(wedge),
  };
}

/** Friction angle between wedge and pin, degrees: a flatted pin slides, a round one rolls. @param wood friction */
export const frictionAngleAtPin = ({ pin }: HoldInput, wood: number): number =>
  pin.section === "round" ? rollingFrictionAngle(wood, pin.tenon, pin.diameter) : frictionAngle(wood);
