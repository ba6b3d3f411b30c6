// A page a board: its drawing, its cuts to tick in the order of sawing, and the parts that come out of it.
import { type BoardCuts, ringsToSole } from "@lamplane/bench/boards";
import { BOARDS, CAUTIONS } from "@lamplane/bench/words";
import { formatAngle, formatBareLength, formatLength, formatPercent } from "@lamplane/parameters/units";
import { boardPicture, partLetter } from "../../boards/board-picture.ts";
import type { BoardSheet } from "../../boards/board-sheet.ts";
import { sideBySide, stackBlocks } from "../blocks/block.ts";
import type { BlockGroup } from "../blocks/flow.ts";
import { pictureBlock } from "../blocks/picture.ts";
import { tableBlock } from "../blocks/table.ts";
import { checklistBlock, headingBlock, paragraphBlock } from "../blocks/text.ts";
import { columnLayout } from "../traveller/columns.ts";
import { columnsPdf, type TravellerOptions } from "../traveller/page-frame.ts";
import { cautionsBlock } from "../traveller/step-tables.ts";

const APART = 6;

/** Whether a piece is ripped or resawn after it was crosscut. */
const rippedShort = ({ cuts }: BoardCuts): boolean => {
  const first = cuts.findIndex(({ axis }) => axis === "x");
  return first >= 0 && cuts.slice(first).some(({ axis }) => axis !== "x");
};

export function boardsPdf(sheet: BoardSheet, options: TravellerOptions): Promise<Uint8Array> {
  const columns = columnLayout(options.paper);
  const about = { name: sheet.name, paper: BOARDS.paper, subject: BOARDS.sheet };
  return columnsPdf(about, boardGroups(sheet, columns.width), columns, options);
}

/** A group for each board that is cut. @param note under the cautions */
export function boardGroups({ design, boards, cuts }: BoardSheet, width: number, note?: string): BlockGroup[] {
  const length = (mm: number) => formatLength(mm, design);
  const size = ([first, second, last]: readonly [number, number, number]) =>
    `${formatBareLength(first, design)} × ${formatBareLength(second, design)} × ${length(last)}`;
  const half = (width - APART) / 2;
  return cuts.map((own): BlockGroup => {
    const board = boards[own.board]!;
    const { name, heart } = board;
    const whole = size([board.length, board.width, board.thickness]);
    const parts = own.parts.map(({ name: part, lay, box: { x, y, z } }, i) => [
      { text: partLetter(i), bold: true },
      { text: part },
      { text: size([x.to - x.from, y.to - y.from, z.to - z.from]) },
      { text: formatAngle(ringsToSole(board, lay)) },
    ]);
    const sawing = own.cuts.map(({ axis, kerf, piece }, i) =>
      BOARDS.cut[axis]({ number: i + 1, at: length(kerf.from - piece[axis].from) }).replace(/^\d+ +/, ""),
    );
    const heads = BOARDS.partHead.map((text) => ({ text, bold: true }));
    return {
      startsColumn: true,
      blocks: [
        headingBlock(BOARDS.board({ name, size: whole, heart, waste: formatPercent(own.waste, 0) }), width, 4.6),
        cautionsBlock([CAUTIONS.ripping, CAUTIONS.jointing], width),
        paragraphBlock(rippedShort(own) ? `${BOARDS.mark} ${BOARDS.short}` : BOARDS.mark, width),
        ...(note === undefined ? [] : [paragraphBlock(note, width)]),
        pictureBlock(boardPicture(board, own, width), width),
        sideBySide(
          APART,
          checklistBlock(sawing, half, { numbered: true }),
          stackBlocks(tableBlock([heads, ...parts], [0.08 * half, 0.3 * half, 0.48 * half, 0.14 * half])),
        ),
      ],
    };
  });
}
