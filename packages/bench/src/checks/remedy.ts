// A remedy: which parameter to move, and in which direction. A check's row lists its own in order of preference.

export interface Remedy {
  readonly parameter: string;
  readonly toward: "up" | "down";
}
export const increase = (parameter: string): Remedy => ({ parameter, toward: "up" });
export const decrease = (parameter: string): Remedy => ({ parameter, toward: "down" });
