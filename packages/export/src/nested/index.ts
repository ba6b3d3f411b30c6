// Door: what lies on the shop's sheets, as data, and why something lies on none.
export { type ClassNesting, nestClass } from "./class-nesting.ts";
export { type Nested, type NoPlace, nestPlane } from "./nested-sheets.ts";
export { nestingLines } from "./nesting-text.ts";
export { noPlaceRows, noPlaceText } from "./no-place-text.ts";
