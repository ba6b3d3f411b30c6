// Lengths in mm and in inches: the one file that knows 25.4. Inside, every length is mm.

/** Unit of a maker's file. */
export type Units = "mm" | "in";
/** Smallest division on the shop's rules. */
export type Fraction = "1/8" | "1/16" | "1/32" | "1/64";

export const INCH = 25.4; // mm, exactly: the international inch, agreed by six standards laboratories in 1959
const PER_MM = 1e6; // nanometres: far below what any tool measures, far above a double's noise

/** A length in mm as a bare number of the file's unit. */
export const fromMillimetres = (mm: number, units: Units): number => (units === "mm" ? mm : mm / INCH);

/** Points of a printer's page (72 to the inch) in a mm. @see ISO 32000-1:2008, 8.3.2.3: the default unit of user space */
export const POINTS_PER_MM = 72 / INCH;

/** A bare number of the file's unit in mm, rounded to a nanometre. */
export const toMillimetres = (value: number, units: Units): number =>
  roundToNanometre(units === "mm" ? value : value * INCH);

/** A length to a nanometre. */
export function roundToNanometre(mm: number): number {
  const nanometres = Math.round(mm * PER_MM);
  return Number.isFinite(nanometres) ? nanometres / PER_MM + 0 : mm;
}
