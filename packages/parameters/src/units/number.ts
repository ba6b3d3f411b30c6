// Numbers as text for people, whatever they measure: decimals, sign, angle, share. Lengths are in format.ts.

/**
 * What becomes of a half at the last decimal. `tolerant`: away from zero, also where a sum's noise has left it just short;
 * `scaled`: up, if it is a half once scaled; `binary`: by the digits of the double itself.
 */
export type Halves = "tolerant" | "scaled" | "binary";

export interface NumberFormat {
  /** Most decimals. */
  readonly decimals: number;
  /** All of them, zeros too. */
  readonly fixed?: boolean;
  /** With a + where it is not below zero. */
  readonly signed?: boolean;
  /** With a − also where all decimals of a number below zero are zeros. */
  readonly minusOnZero?: boolean;
  readonly halves?: Halves;
}

/** A number in decimals; without trailing zeros and without a minus on zero unless the format asks for them. */
export function formatNumber(value: number, format: NumberFormat): string {
  const { decimals, fixed = false, signed = false, minusOnZero = false } = format;
  const rounded = roundToDecimals(value, format);
  const below = value < 0 && (signed || minusOnZero || rounded < 0);
  const figure = fixed ? Math.abs(rounded).toFixed(decimals) : String(Math.abs(rounded));
  return `${below ? "-" : signed ? "+" : ""}${figure}`;
}

function roundToDecimals(value: number, { decimals, halves = "tolerant" }: NumberFormat): number {
  const scale = 10 ** decimals;
  if (halves === "binary") return Number(value.toFixed(decimals));
  if (halves === "scaled") return Math.round(value * scale) / scale;
  return (Math.sign(value) * Math.round(Math.abs(value) * scale + 1e-7)) / scale; // 1e-7: 0.125 is a half, also after a sum
}

/** Decimal number without trailing zeros and without a minus on zero. */
export const formatDecimal = (value: number, decimals: number): string => formatNumber(value, { decimals });

/** Degrees, to a hundredth: "47.5°". */
export const formatAngle = (degrees: number, format: NumberFormat = { decimals: 2 }): string =>
  `${formatNumber(degrees, format)}°`;

/** A share of one, in percent: "12 %"; a share over zero under `least` (of one) as "under 0.1 %". */
export const formatPercent = (share: number, decimals: number, least = 0): string =>
  share > 0 && share < least ? `under ${formatDecimal(least * 100, 2)} %` : `${formatDecimal(share * 100, decimals)} %`;

/** A scale of drawing: "2:1", "1:2.5". */
export const formatScale = (scale: number, colon = ":", halves: Halves = "tolerant"): string =>
  scale >= 1
    ? `${formatNumber(scale, { decimals: 2, halves })}${colon}1`
    : `1${colon}${formatNumber(1 / scale, { decimals: 2, halves })}`;

/**
 * Decimals worth showing, by unit; two for the rest. Forces and stresses rest on estimates, and a meter shows no more of
 * moisture. A number without a unit has four below one.
 */
const DECIMALS: Readonly<Record<string, number>> = { N: 0, MPa: 1, "%": 1 };
const decimalsWorth = (value: number, unit: string) => (unit === "" && Math.abs(value) < 1 ? 4 : (DECIMALS[unit] ?? 2));

/** A value that is no length, with its unit: "47°", "120 N", "3.5 MPa"; as many decimals as its unit is worth. */
export function formatQuantity(value: number, unit: string, decimals = decimalsWorth(value, unit)): string {
  const apart = /^(|°|×)$/.test(unit) ? "" : " "; // only degrees and times stand close to their number
  return `${formatDecimal(value, decimals)}${apart}${unit}`;
}
