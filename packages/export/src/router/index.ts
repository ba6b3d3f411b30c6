// Door: router programs as data, and what a router cannot cut.
export { type LimitCode, limitCode, type RouterLimit, routerLimitDescriptions } from "./limit.ts";
export { hasRouter, limitText, type PlanePrograms, planePrograms } from "./plane-programs.ts";
export type { Program } from "./program.ts";
export { type ProgramFile, programFiles } from "./program-files.ts";
export { featureOutline } from "./set-up.ts";
export { type CutRole, type Move, moveMinutes, moveSegment, type Point3D, type Toolpath } from "./toolpath.ts";
