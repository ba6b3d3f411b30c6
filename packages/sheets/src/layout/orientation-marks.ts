// The matching marks on core and cheeks, where the stock plan puts them: outside every kerf.
import { matchingMarks } from "@lamplane/bench";
import { line, point } from "@lamplane/geometry";
import type { Elevation } from "@lamplane/parameters/elevation";
import type { Marks } from "../picture/marks.ts";

const STROKE = 9; // mm down from the top edge: long enough to be found again

/** Draws the marks on a piece whose toe end stands at `toeEnd` and whose top edge at `top`. */
export function drawOrientationMarks(marks: Marks, e: Elevation, toeEnd: number, top: number): void {
  for (const { at } of matchingMarks(e).marks)
    for (const fromToeEnd of at) {
      const x = toeEnd + fromToeEnd;
      marks.line("mark", line(point(x, top), point(x, top - STROKE)));
    }
}
