// Room between a jig and what goes into it or lies against it: a printed jig has the printer's, one cut from sheet none but its cutter's.
import type { Design } from "../table/index.ts";

/** mm on each side of wood between fences, and all round a drill or a peg. */
export interface JigRoom {
  readonly flanks: number;
  readonly holes: number;
}

/** Of a jig cut from sheet: saw and drill make it to size. */
export const SHEET_ROOM: JigRoom = { flanks: 0, holes: 0 };

/** Of a printed jig. Drill and pegs share what the pin's hole may be off. */
export const printedRoom = ({ jigs, hand }: Design): JigRoom => ({
  flanks: jigs.clearance,
  holes: jigs.holeClearance === "auto" ? hand.pinHole / 2 : jigs.holeClearance,
});

/** How far a printed guide lets the drill be off its place: its pegs in their holes, and the drill in its own. mm */
export const guidePlay = (design: Design): number => 2 * printedRoom(design).holes;
