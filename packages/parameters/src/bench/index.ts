// Door: what the maker meets at the bench: hold, strength, seasons and the bed's survey.
export * from "./caution.ts";
export * from "./figures.ts";
export * from "./friction-hold.ts";
export * from "./hold-of-plane.ts";
export * from "./pin-strength.ts";
export * from "./seasons.ts";
export * from "./seasons-of-plane.ts";
export * from "./strength-of-pin.ts";
export * from "./survey/index.ts";
export * from "./woods-of-plane.ts";
