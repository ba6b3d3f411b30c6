// Where the two matching marks stand on core and cheeks: on the top edge, each in the middle of what stays of its block.
import { blocksAt } from "../../elevation/blocks.ts";
import type { Elevation } from "../../elevation/elevation.ts";
import { line, point } from "../../elevation/outline.ts";
import type { Marks } from "../marks.ts";

/** A mark across the billet before it is sawn: how far from its toe end, and by how many strokes it is told. */
export interface OrientationMark {
  readonly end: "front" | "back";
  readonly fromToeEnd: number;
  readonly strokes: 1 | 2;
}

/** One stroke on the front block, two on the bed block, half way from the end to where the saw comes out of the top. mm. */
export function orientationMarks(e: Elevation): OrientationMark[] {
  const { rampChain, bedChain } = blocksAt(e, "blank");
  const over = e.design.body.trim / 2;
  const length = e.widths.blankLength;
  const rampOut = Math.min(...rampChain.map((s) => Math.min(s.from.x, s.to.x))) + over - e.cuts.setInToe;
  const bedOut = bedChain.at(-1)!.to.x + over + e.cuts.setInHeel;
  return [
    { end: "front", fromToeEnd: rampOut / 2, strokes: 1 },
    { end: "back", fromToeEnd: (bedOut + length) / 2, strokes: 2 },
  ];
}

const STROKE = 9; // mm down from the top edge: long enough to be found again
const BETWEEN = 3; // mm between two strokes

/** Draws the marks on a piece whose toe end stands at `toeEnd` and whose top edge at `top`. */
export function drawOrientationMarks(marks: Marks, e: Elevation, toeEnd: number, top: number): void {
  for (const { fromToeEnd, strokes } of orientationMarks(e))
    for (let i = 0; i < strokes; i++) {
      const x = toeEnd + fromToeEnd + (i - (strokes - 1) / 2) * BETWEEN;
      marks.line("mark", line(point(x, top), point(x, top - STROKE)));
    }
}
