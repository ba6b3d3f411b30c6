// A closed outline as a mark: its path for the pen, and its course in chords for what must keep clear of it.
import { type Outline, tessellate } from "@lamplane/geometry";
import { outlinePath } from "../../path-data.ts";
import type { ViewMark } from "../../protocol/view.ts";

const CHORD = 0.4; // mm between an arc and its chord

export const outlineMark = (outline: Outline, more: Omit<ViewMark, "d" | "edge">): ViewMark => ({
  d: outlinePath(outline),
  line: "outline",
  edge: tessellate(outline, CHORD).map(({ x, y }) => ({ x, y })),
  ...more,
});
