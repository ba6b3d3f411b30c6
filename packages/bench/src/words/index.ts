// Door: every sentence of the bench, each from data, with examples.
export * from "./advice.ts";
export * from "./boards.ts";
export * from "./cautions.ts";
export * from "./class.ts";
export * from "./figures.ts";
export * from "./history.ts";
export * from "./mouth.ts";
export * from "./notes.ts";
export * from "./readings.ts";
export * from "./steps.ts";
export * from "./stock.ts";
export * from "./strength-caution.ts";
export * from "./subjects.ts";
export * from "./survey.ts";
export * from "./tolerance.ts";
