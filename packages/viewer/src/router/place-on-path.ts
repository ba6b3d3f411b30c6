// Where the cutter is at a time, and which step that is.
import type { Point3D } from "@lamplane/export/router";
import type { PathStep } from "./router-paths.ts";

/** The step that runs at a time, by halving; the last one at and after the end. */
export function stepAt(steps: readonly PathStep[], seconds: number): number {
  let [low, high] = [0, steps.length - 1];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (steps[middle]!.end > seconds) high = middle;
    else low = middle + 1;
  }
  return low;
}

/** The cutter's tip at a time within a step. */
export function pointAt({ from, to, centre, sweep, begin, end }: PathStep, seconds: number): Point3D {
  const share = end > begin ? Math.min(1, Math.max(0, (seconds - begin) / (end - begin))) : 1;
  const z = from.z + (to.z - from.z) * share;
  if (!centre || sweep === undefined)
    return { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share, z };
  const radius = Math.hypot(from.x - centre.x, from.y - centre.y);
  const angle = Math.atan2(from.y - centre.y, from.x - centre.x) + (sweep * share * Math.PI) / 180;
  return { x: centre.x + radius * Math.cos(angle), y: centre.y + radius * Math.sin(angle), z };
}

/** "2:04" */
export function formatTime(seconds: number): string {
  const whole = Math.round(seconds);
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, "0")}`;
}
