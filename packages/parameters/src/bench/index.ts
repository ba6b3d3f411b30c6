// Door: what the maker meets at the bench: hold, strength, seasons and the bed's survey.
export * from "./friction-hold.ts";
export * from "./pin-strength.ts";
export * from "./seasons.ts";
export * from "./stock/index.ts";
export * from "./survey/index.ts";
