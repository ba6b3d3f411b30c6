// Door: plane geometry that knows no plane.
export * from "./crossing.ts";
export * from "./outline.ts";
export * from "./place.ts";
export * from "./tolerances.ts";
export * from "./trig.ts";
