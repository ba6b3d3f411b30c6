// Door to the design: what the maker typed → plain numbers, or every fault with its place.
export type { Design } from "../table/index.ts";
export { rowAt, valueAt, withValue } from "./at.ts";
export type { DesignReading } from "./complete.ts";
export type { Fault } from "./given.ts";
export { parameterTable, starterDesign } from "./guide.ts";
export { completeDesign, readDesign } from "./read.ts";
export { designSchema } from "./schema.ts";
export { LARGEST_FILE, plainText } from "./source.ts";
export { takenBack } from "./taken-back.ts";
export { writtenBack } from "./written-back.ts";
