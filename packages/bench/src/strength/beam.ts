// A beam on two free supports under a load spread over its middle. Newtons and millimetres; small deflections.

/** Load N spread evenly over `loaded` mm in the middle of a span of `span` mm; loaded no longer than the span. */
export interface BeamLoad {
  readonly load: number;
  readonly span: number;
  readonly loaded: number;
}

/** Stiffness of the beam: moduli MPa, second moment mm⁴, area mm². */
export interface BeamStiffness {
  readonly elasticity: number;
  readonly shearModulus: number;
  readonly secondMoment: number;
  readonly area: number;
  readonly shearFactor: number;
}

/** Push on each support, N. */
export const reaction = ({ load }: BeamLoad): number => load / 2;

/** Bending moment at mid-span, N·mm: W·(2·L − b)/8, and W·L/8 where the load covers the span. @see beam tables, from memory */
export const bendingMoment = ({ load, span, loaded }: BeamLoad): number => (load * (2 * span - loaded)) / 8;

/** Sag at mid-span from bending, mm: W·(8·L³ − 4·b²·L + b³)/(384·E·I), 5·W·L³/(384·E·I) when b = L. @see beam tables */
export const bendingSag = ({ load, span, loaded }: BeamLoad, { elasticity, secondMoment }: BeamStiffness): number =>
  (load * (8 * span ** 3 - 4 * loaded ** 2 * span + loaded ** 3)) / (384 * elasticity * secondMoment);

/** Sag at mid-span from shear, mm: shear factor·M/(G·A), for M is what the shear force adds up to. @see Timoshenko beam theory */
export const shearSag = (load: BeamLoad, { shearModulus, area, shearFactor }: BeamStiffness): number =>
  (shearFactor * bendingMoment(load)) / (shearModulus * area);
