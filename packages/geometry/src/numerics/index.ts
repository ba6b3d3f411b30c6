// Door: numerical methods.
export * from "./arithmetic.ts";
export * from "./dual.ts";
export * from "./interval.ts";
export * from "./least-squares.ts";
export * from "./linear-program.ts";
export * from "./probability.ts";
export * from "./random.ts";
