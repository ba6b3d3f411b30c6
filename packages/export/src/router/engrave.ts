// Marks and names along their lines, shallow: sinking along the line, never straight down.
import { circleOutline, type Segment } from "@lamplane/geometry";
import type { Drawing } from "@lamplane/parameters/drawings";
import type { Cutter, Design } from "@lamplane/parameters/table";
import { pathLength } from "./loop.ts";
import { passDepths, rampDown } from "./passes.ts";
import type { Engraving } from "./set-up.ts";
import type { ToolpathWriter } from "./toolpath.ts";

/** Widest end mill that engraves where there is no cutter for it, mm: letters of 5 mm stay letters. */
export const WIDEST_ENGRAVER = 2;

/** The finest cutter for engraving, or end mill that is fine enough; or the finest that there is. */
export function engraverOf(cutters: readonly Cutter[]): { cutter: Cutter } | { finest: number } {
  const finest = (kind: Cutter["kind"]) =>
    cutters.filter((cutter) => cutter.kind === kind).toSorted((a, b) => a.diameter - b.diameter)[0];
  const engraver = finest("engrave");
  if (engraver) return { cutter: engraver };
  const mill = finest("end");
  return mill && mill.diameter <= WIDEST_ENGRAVER ? { cutter: mill } : { finest: mill?.diameter ?? 0 };
}

/** What of a drawing is engraved; undefined where nothing is asked for. */
export function engravingOf({ entries }: Drawing, { router }: Design): Engraving | undefined {
  if (router.engraving === 0) return undefined;
  const paths = entries.flatMap((entry): (readonly Segment[])[] => {
    if (entry.work !== "MARK" && entry.work !== "ENGRAVE") return [];
    if (entry.kind === "path") return [entry.segments];
    return entry.kind === "circle" ? [circleOutline(entry.circle)] : [];
  });
  return { paths: paths.filter((path) => pathLength(path) > 0), depth: router.engraving };
}

export function engrave(to: ToolpathWriter, { paths, depth }: Engraving, rampAngle: number): void {
  for (const path of paths)
    for (const z of passDepths(depth, to.cutter.step)) {
      to.goOver(path[0]!.from);
      rampDown(to, path, z, rampAngle, pathLength(path));
      to.follow(path);
    }
  to.lift();
}
