// Door to the design: what the maker typed → plain numbers, or every fault with its place.
export type { Design } from "../table/index.ts";
export { LARGEST_FILE } from "../yaml/source.ts";
export type { DesignResult, OldWord } from "./decode.ts";
export type { Fault } from "./fault.ts";
export { faultText } from "./fault-text.ts";
export { parameterTable } from "./guide.ts";
export { formatParameter } from "./parameter-text.ts";
export { rowAt, valueAt, withValue } from "./path.ts";
export { PURPOSE_NAMES, PURPOSE_SOURCE, PURPOSES, type Purpose, type PurposeRow } from "./purposes.ts";
export { completeDesign, readDesign } from "./read.ts";
export { designSchema } from "./schema.ts";
export { type Starter, shortStarter, starterDesign } from "./starter.ts";
export { knownPaths, nearNames } from "./suggest.ts";
export { otherUnitText, type UnitSlip, unitSlipText } from "./unit-slip.ts";
export { removeValue } from "./value-removal.ts";
export { setValue } from "./value-update.ts";
