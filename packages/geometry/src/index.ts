// Door: plane geometry that knows no plane.
export * from "./intersection.ts";
export * from "./outline.ts";
export * from "./rectangle-packing.ts";
export * from "./tolerances.ts";
export * from "./transform.ts";
export * from "./trig.ts";
