// A remedy: which parameter to move, and in which direction. A check's row lists its own in order of preference.
import type { Elevation } from "@lamplane/parameters/elevation";

export interface Remedy {
  readonly parameter: string;
  readonly toward: "up" | "down";
  /** The one value that will do, where that is known; else the smallest step that does is searched for. */
  readonly target?: (plane: Elevation) => number;
}
export const increase = (parameter: string): Remedy => ({ parameter, toward: "up" });
export const decrease = (parameter: string): Remedy => ({ parameter, toward: "down" });
export const changeTo = (parameter: string, target: (plane: Elevation) => number): Remedy => ({
  parameter,
  toward: "up",
  target,
});
