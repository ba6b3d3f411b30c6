// Door: what lies on the shop's sheets and how it is cut, as data, and why something lies on none.
export { type NestedPlane, nestPlane } from "./nested-sheets.ts";
export { type NotNested, notNested, sheetLimitDescriptions } from "./not-nested.ts";
export { NESTED_FOLDER, type SheetProgram, type SheetPrograms, sheetPrograms } from "./sheet-programs.ts";
