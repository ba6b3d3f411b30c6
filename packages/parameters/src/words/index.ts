// Door: every sentence of parameters, and what the words of all packages are made with.
export * from "./design-faults.ts";
export * from "./drawings.ts";
export * from "./figures.ts";
export * from "./jigs.ts";
export * from "./number-faults.ts";
export * from "./number-spans.ts";
export * from "./plane-file.ts";
export * from "./purposes.ts";
export * from "./roster-faults.ts";
export * from "./sentence.ts";
export * from "./steps.ts";
export * from "./text-faults.ts";
