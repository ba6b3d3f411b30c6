// Door: what lies on the shop's sheets, as data, and why something lies on none.
export { type NestedPlane, nestPlane } from "./nested-sheets.ts";
export { noPlaceText } from "./no-place-text.ts";
