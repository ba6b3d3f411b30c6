// A class's bodies on its boards: what comes out of which, in words and for the sheets.
import { asBuiltPlane, lockedParameters } from "@lamplane/bench";
import { boardsAtHand, bodyWood, type ClassLayout, cutsByBoard, layOutClass } from "@lamplane/bench/boards";
import type { BoardEntry, Design } from "@lamplane/parameters/table";
import type { BoardSheet } from "@lamplane/sheets";
import { classBoardsText } from "../boards-text.ts";

export interface ClassBoards {
  readonly layout: ClassLayout;
  readonly sheet: BoardSheet;
  readonly text: string;
}

/**
 * Undefined without boards, or where every core is milled or in layers.
 * @param numbers of the designs in the roster
 */
export function classBoards(
  name: string,
  designs: readonly Design[],
  numbers: readonly number[],
  entries: readonly BoardEntry[],
): ClassBoards | undefined {
  const toSaw = designs.flatMap((design, i) =>
    lockedParameters(design).has("body.cheek") || design.core.layers !== "whole"
      ? []
      : [{ design, prefix: `${numbers[i]} ` }],
  );
  const [first] = toSaw;
  if (entries.length === 0 || !first) return undefined;
  const boards = boardsAtHand(entries);
  const woods = toSaw.map(({ design }) => bodyWood(asBuiltPlane(design)));
  const layout = layOutClass(woods, boards);
  const cuts = cutsByBoard(
    boards,
    layout.order.flatMap((i) => {
      const body = layout.bodies[i];
      return body ? [{ layout: body, parts: woods[i]!.parts, prefix: toSaw[i]!.prefix }] : [];
    }),
  );
  const text = classBoardsText(first.design, boards, layout, cuts);
  return { layout, sheet: { design: first.design, name, boards, cuts }, text };
}
