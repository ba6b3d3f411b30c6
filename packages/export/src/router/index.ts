// Door: router programs as data, and what a router cannot cut.
export { type LimitCode, limitCode, type RouterLimit, routerLimitDescriptions } from "./limit.ts";
export { hasRouter, limitText, type PlanePrograms, planePrograms } from "./plane-programs.ts";
