// The cross pin's section as a beam sees it: bent about the axis that lies along its flat. Lengths mm, so mm², mm³, mm⁴.

export interface SectionProperties {
  readonly area: number;
  /** Height of the centroid over the pin's axis; below 0 it lies toward the flat. */
  readonly centroid: number;
  /** Second moment of area about the centroidal axis parallel to the flat. */
  readonly secondMoment: number;
  /** From the centroid to the extreme fibres: the round back, the flat. */
  readonly toBack: number;
  readonly toFlat: number;
  /** The smaller section modulus, at the fibre further from the centroid. */
  readonly modulus: number;
  /** Mean shear stress times this is what shear deflection follows. @see Timoshenko beam theory */
  readonly shearFactor: number;
}

/** @see Timoshenko: 10/9 for a round, 6/5 for a rectangle; a flatted section takes the greater. From memory. */
const ROUND_SHEAR_FACTOR = 10 / 9;
const FLATTED_SHEAR_FACTOR = 6 / 5;

/** A round pin, or a tenon. @param diameter mm. @see any beam table: π·d⁴/64, π·d³/32 */
export function roundSection(diameter: number): SectionProperties {
  const radius = diameter / 2;
  return bentSection({
    area: Math.PI * radius ** 2,
    centroid: 0,
    secondMoment: (Math.PI * radius ** 4) / 4,
    toBack: radius,
    toFlat: radius,
    shearFactor: ROUND_SHEAR_FACTOR,
  });
}

/**
 * A flatted pin: half a round of radius d/2 above the axis, a rectangle d wide and d/2 deep below it.
 * @param diameter mm, the section's width and depth
 * @see any beam table: half round A = π·r²/2, centroid 4·r/(3·π), I about its base π·r⁴/8; parallel axes
 */
export function flattedSection(diameter: number): SectionProperties {
  const radius = diameter / 2;
  const halfRound = { area: (Math.PI * radius ** 2) / 2, centroid: (4 * radius) / (3 * Math.PI) };
  const rectangle = { area: diameter * radius, centroid: -radius / 2 };
  const area = halfRound.area + rectangle.area;
  const centroid = (halfRound.area * halfRound.centroid + rectangle.area * rectangle.centroid) / area;
  const aboutAxis = (Math.PI * radius ** 4) / 8 + (diameter * radius ** 3) / 3;
  return bentSection({
    area,
    centroid,
    secondMoment: aboutAxis - area * centroid ** 2,
    toBack: radius - centroid,
    toFlat: radius + centroid,
    shearFactor: FLATTED_SHEAR_FACTOR,
  });
}

/** The section of a pin's body. @param diameter mm */
export const pinSectionProperties = (section: "flatted" | "round", diameter: number): SectionProperties =>
  section === "flatted" ? flattedSection(diameter) : roundSection(diameter);

const bentSection = (section: Omit<SectionProperties, "modulus">): SectionProperties => ({
  ...section,
  modulus: section.secondMoment / Math.max(section.toBack, section.toFlat),
});
