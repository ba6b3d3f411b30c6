// Door: what the maker meets at the bench: hold, strength, seasons and the bed's survey.
export * from "./friction-hold.ts";
export * from "./mouth.ts";
export * from "./mouth-life.ts";
export * from "./mouth-opening.ts";
export type { MouthPatch } from "./mouth-patch.ts";
export * from "./mouth-text.ts";
export type { Packing } from "./packing.ts";
export * from "./pin-strength.ts";
export * from "./seasons.ts";
export * from "./survey/index.ts";
