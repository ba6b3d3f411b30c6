// Door: every sentence on the papers, each from data, with examples.
export * from "./appendix.ts";
export * from "./blocks.ts";
export * from "./card.ts";
export * from "./drawings.ts";
export * from "./front.ts";
export * from "./layers.ts";
export * from "./layout.ts";
export * from "./papers.ts";
export * from "./plots.ts";
export * from "./sheets.ts";
export * from "./together.ts";
export * from "./use.ts";
export * from "./wood.ts";
