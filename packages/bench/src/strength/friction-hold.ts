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
}

/**
 * Share of the clamp that the wedge can hold the iron back by. The iron drags the wedge up with it, and only the pin holds
 * the wedge: no more passes than friction on the iron allows, nor more than the pin's reaction, inclined by its friction
 * angle against the wedge's slope, has along the iron. 0 or less: the pin cannot hold the wedge.
 * @see statics of the wedge, each body's balance of forces (standard texts, from memory)
 */
export const wedgeGrip = ({ angle, alongIron, atPin }: WedgeContact): number =>
  Math.min(tanDeg(alongIron), tanDeg(atPin - angle));

/**
 * Least force pressed square on the iron for which iron, wedge and pin stay where they are, N.
 * The cutting force F pushes F·cos β up the bed and presses F·sin β into it; 0 where the bed alone holds it; infinite
 * where the pin cannot hold the wedge.
 * @see plane geometry: Strength
 */
export function requiredClamp(force: number, bedAngle: number, { upper, bed }: IronFriction): number {
  const push = force * (cosDeg(bedAngle) - bed * sinDeg(bedAngle));
  if (upper <= 0) return Number.POSITIVE_INFINITY;
  return Math.max(0, push / (bed + upper));
}

/** Degrees by which the friction angle at the pin exceeds the wedge angle: above 0 the pin can hold a wedge that is pulled. */
export const holdMargin = ({ angle, atPin }: Pick<WedgeContact, "angle" | "atPin">): number => atPin - angle;

/** The wedge and the friction angles on its two sides, all degrees. */
export interface WedgeContact {
  readonly angle: number;
  /** On the side that slides along the cap iron. */
  readonly alongIron: number;
  /** On the side under the cross pin. */
  readonly atPin: number;
}

/** Degrees by which friction exceeds the wedge angle: above 0 the wedge stays where it was driven. */
export const lockingMargin = ({ angle, alongIron, atPin }: WedgeContact): number => alongIron + atPin - angle;

/**
 * Push on the wedge's butt that presses the iron with `clamp`, N. @param clamp N
 * @see plane geometry: Strength; statics of the wedge (standard, from memory)
 */
export const drivingForce = (clamp: number, { angle, alongIron, atPin }: WedgeContact): number =>
  clamp * (tanDeg(angle + atPin) + tanDeg(alongIron));

/** What decides the hold. Forces N/mm of edge, lengths mm, angles degrees. */
export interface HoldInput {
  readonly forcePerMm: number;
  readonly ironWidth: number;
  readonly bedAngle: number;
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
  const wedge = { angle: input.wedgeAngle, alongIron: frictionAngle(steel), atPin: frictionAngleAtPin(input, wood) };
  const cutting = cuttingForce(input.forcePerMm, input.ironWidth);
  const clamp = requiredClamp(cutting, input.bedAngle, { upper: wedgeGrip(wedge), bed: steel });
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
