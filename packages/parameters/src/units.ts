// Text ⇄ numbers with units, at the border only. Inside, every length is mm; units/inch.ts alone knows 25.4.

export { type Drill, drillFor, formatDrill } from "./units/drill.ts";
export * from "./units/format.ts";
export {
  type Fraction,
  fromMillimetres,
  POINTS_PER_MM,
  toMillimetres,
  type Units,
} from "./units/inch.ts";
export * from "./units/number.ts";
export { isBareLength, type ParsedNumber, parseLength, parseNumber } from "./units/parse.ts";
