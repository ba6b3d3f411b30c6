// Holes by a drill of their own size: in steps, drawn out over the wood after each.
import type { Circle } from "@lamplane/geometry";
import { passDepths } from "./passes.ts";
import type { ToolpathWriter } from "./toolpath.ts";

/** How far a drill's diameter may be off a hole's, mm: as near as any wall is cut. */
export const DRILL_FIT = 0.01;

export function drillHole(to: ToolpathWriter, { centre }: Circle, depth: number): void {
  to.goOver(centre);
  let reached = 0;
  for (const z of passDepths(depth, to.cutter.step)) {
    to.riseTo(reached);
    to.plungeTo(z);
    reached = z;
    to.riseTo(CLEARED);
  }
  to.lift();
}
/** Height over the stock at which chips fall off a drill, mm. */
const CLEARED = 1;
