// Whether friction holds the iron, and what it takes to drive the wedge. Indicative: it sends the maker back to the bench.
import { atanDeg, cosDeg, cotDeg, sinDeg, tanDeg } from "@lamplane/geometry";

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

/** Friction on the iron's two faces: wood or wedge above, bed below. */
export interface IronFriction {
  readonly upper: number;
  readonly bed: number;
}

/**
 * Least force pressed square on the iron for which friction on both its faces keeps it from being pushed up the bed, N.
 * The cutting force F pushes F·cos β up the bed and presses F·sin β into it; 0 where the bed alone holds it.
 * @see plane geometry: Strength
 */
export function requiredClamp(force: number, bedAngle: number, { upper, bed }: IronFriction): number {
  return Math.max(0, (force * (cosDeg(bedAngle) - bed * sinDeg(bedAngle))) / (upper + bed));
}

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

export const isSelfLocking = (wedge: WedgeContact): boolean => lockingMargin(wedge) > 0;

/**
 * Push on the wedge's butt that presses the iron with `clamp`, N. @param clamp N
 * @see plane geometry: Strength; statics of the wedge (standard, from memory)
 */
export const drivingForce = (clamp: number, { angle, alongIron, atPin }: WedgeContact): number =>
  clamp * (tanDeg(angle + atPin) + tanDeg(alongIron));

/** Pull that draws the wedge out again, N; negative where it does not lock and comes out by itself. @param clamp N */
export const withdrawingForce = (clamp: number, { angle, alongIron, atPin }: WedgeContact): number =>
  clamp * (tanDeg(alongIron) + tanDeg(atPin - angle));

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

export interface Hold {
  /** N. */
  readonly cutting: number;
  readonly clamp: number;
  readonly driving: number;
  readonly withdrawing: number;
  /** Degrees; see `lockingMargin`. */
  readonly lockingMargin: number;
}

/** The hold at one friction. A flatted pin's flat slides on the wedge, a round pin rolls. */
export function holdAt(input: HoldInput, { steel, wood }: Friction): Hold {
  const wedge = { angle: input.wedgeAngle, alongIron: frictionAngle(steel), atPin: frictionAngleAtPin(input, wood) };
  const cutting = cuttingForce(input.forcePerMm, input.ironWidth);
  const clamp = requiredClamp(cutting, input.bedAngle, { upper: steel, bed: steel });
  return {
    cutting,
    clamp,
    driving: drivingForce(clamp, wedge),
    withdrawing: withdrawingForce(clamp, wedge),
    lockingMargin: lockingMargin(wedge),
  };
}

/** Friction angle between wedge and pin, degrees: a flatted pin slides, a round one rolls. @param wood friction */
export const frictionAngleAtPin = ({ pin }: HoldInput, wood: number): number =>
  pin.section === "round" ? rollingFrictionAngle(wood, pin.tenon, pin.diameter) : frictionAngle(wood);

export interface HoldRange {
  readonly least: number;
  readonly most: number;
}

/**
 * Every figure of the hold from its least to its most while both frictions lie anywhere between low and high.
 * All are monotone in each friction, so that the corners hold the extremes; but for the withdrawing force, which may
 * turn once on the way from low to high steel.
 */
export function holdRange(input: HoldInput, low: Friction, high: Friction): Readonly<Record<keyof Hold, HoldRange>> {
  const holds = [low.wood, high.wood].flatMap((wood) => {
    const turn = Math.min(Math.max(maximizingFriction(input, wood), low.steel), high.steel);
    return [low.steel, turn, high.steel].map((steel) => holdAt(input, { steel, wood }));
  });
  const range = (key: keyof Hold): HoldRange => {
    const values = holds.map((hold) => hold[key]);
    return { least: Math.min(...values), most: Math.max(...values) };
  };
  return {
    cutting: range("cutting"),
    clamp: range("clamp"),
    driving: range("driving"),
    withdrawing: range("withdrawing"),
    lockingMargin: range("lockingMargin"),
  };
}

/** Friction μ on steel at which (cos β − μ·sin β)·(1 + tan(φ − ω)/μ) is largest; 0 where the pin alone locks the wedge. */
function maximizingFriction(input: HoldInput, wood: number): number {
  const slip = tanDeg(input.wedgeAngle - frictionAngleAtPin(input, wood));
  return Math.sqrt(Math.max(0, slip * cotDeg(input.bedAngle)));
}
