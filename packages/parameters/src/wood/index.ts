// Door: species of the handbook's tables, and moisture.
export * from "./moisture.ts";
export * from "./species.ts";
export type { StrengthName } from "./species-data.ts";
