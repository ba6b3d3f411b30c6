// Door: what lies on the shop's sheets and how it is cut, as data, and why something lies on none.
export { type ClassNesting, nestClass } from "./class-nesting.ts";
export { type Nested, nestPlane } from "./nested-sheets.ts";
export { nestingLines } from "./nesting-text.ts";
export { type NotNested, notNested, notNestedRows, sheetLimitDescriptions } from "./not-nested.ts";
export { NESTED_FOLDER, type SheetProgram, type SheetPrograms, sheetPrograms } from "./sheet-programs.ts";
