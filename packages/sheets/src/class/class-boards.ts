// A class's bodies on its boards: what comes out of which.
import { asBuiltPlane, lockedParameters } from "@lamplane/bench";
import { boardsAtHand, bodyWood, type ClassLayout, cutsByBoard, layOutClass } from "@lamplane/bench/boards";
import type { BoardEntry, Design } from "@lamplane/parameters/table";
import type { BoardSheet } from "../boards/board-sheet.ts";

export interface ClassBoards {
  readonly layout: ClassLayout;
  readonly sheet: BoardSheet;
}

/**
 * Undefined without boards, or where every core is milled.
 * @param numbers of the designs in the roster
 */
export function classBoards(
  name: string,
  designs: readonly Design[],
  numbers: readonly number[],
  entries: readonly BoardEntry[],
): ClassBoards | undefined {
  const toSaw = designs.flatMap((design, i) =>
    lockedParameters(design).has("body.cheek") ? [] : [{ design, prefix: `${numbers[i]} ` }],
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
  return { layout, sheet: { design: first.design, name, boards, cuts } };
}
