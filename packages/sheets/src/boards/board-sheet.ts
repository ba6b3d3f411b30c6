// The boards of a plane or a class as plain data for their pages.
import { type Board, type BoardCuts, boardPlan, cutsByBoard } from "@lamplane/bench/boards";
import type { Design } from "@lamplane/parameters/table";

export interface BoardSheet {
  /** In whose unit lengths are written. */
  readonly design: Design;
  readonly name: string;
  readonly boards: readonly Board[];
  readonly cuts: readonly BoardCuts[];
}

/** Undefined for a design without boards, or whose body does not come out of them. */
export function boardSheet(design: Design): BoardSheet | undefined {
  const plan = boardPlan(design);
  if (!plan?.layout) return undefined;
  const { boards, wood, layout } = plan;
  const cuts = cutsByBoard(boards, [{ layout, parts: wood.parts, prefix: "" }]);
  return { design, name: design.name, boards, cuts };
}
