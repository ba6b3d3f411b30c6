// Door: every sentence of the command, each from data, with examples.
export * from "./check.ts";
export * from "./class.ts";
export * from "./commands.ts";
export * from "./explain.ts";
export * from "./measured.ts";
export * from "./new.ts";
export * from "./reports.ts";
export * from "./router.ts";
export * from "./stock.ts";
export * from "./view.ts";
