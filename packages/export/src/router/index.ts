// Door: router programs as data, what a router cannot cut, and what lies on the shop's sheets.
export { type NestedPlane, nestPlane } from "../nested/nested-sheets.ts";
export { noPlaceText } from "../nested/no-place-text.ts";
export { type LimitCode, limitCode, type RouterLimit, routerLimitDescriptions } from "./limit.ts";
export { hasRouter, limitText, type PlanePrograms, planePrograms } from "./plane-programs.ts";
