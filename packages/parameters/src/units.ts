// Text ⇄ numbers with units, at the border only. Inside, every length is mm; units/inch.ts alone knows 25.4.
export { type Fraction, inMillimetres, inUnits, POINTS_PER_MM, trimmed, type Units } from "./units/inch.ts";
export { type Reading, readLength, readNumberText } from "./units/reading.ts";
export * from "./units/telling.ts";
