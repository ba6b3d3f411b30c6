// A design's boards with its body on them, or what is missing.
import type { Design } from "@lamplane/parameters/table";
import { planeBeforeStep } from "../history/as-built.ts";
import { type Board, type BoardBox, volumeOf, wholeBoard } from "./board.ts";
import { boardsAtHand } from "./boards-at-hand.ts";
import { type BodyLayout, type BodyWood, bodyWood, layOutBody } from "./plane-boards.ts";
import type { Cut, Lay, SawnPart } from "./sawing.ts";
import { type BoardRemedy, boardRemedies, type Shortage, shortages } from "./shortage.ts";

export interface BoardPlan {
  readonly boards: readonly Board[];
  readonly wood: BodyWood;
  /** Undefined where the body does not come out of the boards by any cuts. */
  readonly layout: BodyLayout | undefined;
  readonly missing: readonly Shortage[];
  readonly remedies: readonly BoardRemedy[];
}

/** Undefined for a design without boards. */
export function boardPlan(design: Design): BoardPlan | undefined {
  const boards = boardsAtHand(design.boards);
  if (boards.length === 0) return undefined;
  const wood = bodyWood(planeBeforeStep(design, "core"));
  const layout = layOutBody(wood, boards, boards.map(wholeBoard));
  const [missing, remedies] = layout ? [[], []] : [shortages(wood, boards), boardRemedies(design, boards)];
  return { boards, wood, layout, missing, remedies };
}

/** What is cut out of one board: of one plane, or of many. */
export interface BoardCuts {
  readonly board: number;
  /** `name` says which plane's part it is. */
  readonly parts: readonly { readonly name: string; readonly lay: Lay; readonly box: BoardBox }[];
  /** In the order of sawing. */
  readonly cuts: readonly Cut[];
  readonly rest: readonly BoardBox[];
  /** What of the board is dust and offcut, of one. */
  readonly waste: number;
}

/**
 * All cuts by their boards.
 * @param bodies laid out one after the other, each with its parts and what stands before their names
 */
export function cutsByBoard(
  boards: readonly Board[],
  bodies: readonly { readonly layout: BodyLayout; readonly parts: readonly SawnPart[]; readonly prefix: string }[],
): BoardCuts[] {
  return boards.flatMap((board, index): BoardCuts[] => {
    const own = bodies.flatMap(({ layout, parts, prefix }) =>
      layout.cuttings.filter(({ slab }) => slab.board === index).map((cutting) => ({ cutting, parts, prefix })),
    );
    if (own.length === 0) return [];
    const placed = own.flatMap(({ cutting, parts, prefix }) =>
      cutting.placed.map(({ part, lay, box }) => ({ name: `${prefix}${parts[part]!.name}`, lay, box })),
    );
    const used = placed.reduce((sum, { box }) => sum + volumeOf(box), 0);
    return [
      {
        board: index,
        parts: placed,
        cuts: own.flatMap(({ cutting }) => cutting.cuts),
        rest: own.at(-1)!.cutting.rest,
        waste: 1 - used / volumeOf(wholeBoard(board, index).box),
      },
    ];
  });
}

/** Angle of the rings to the sole, degrees, of a part as it lies in its board. */
export const ringsToSole = ({ rings }: Board, lay: Lay): number => (lay === "ripped" ? rings : 90 - rings);
