// The stock plan in words, in the order of the work. Every number is read off the plan.
import {
  CLEAR_OF_CUTS,
  type FromOffcut,
  GRAIN_RUN_OUT,
  GRAIN_RUN_OUT_SOURCE,
  type PieceSize,
  type StockPlan,
} from "@lamplane/bench";
import { BILLET_OVER_IRON } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import { formatAngle, formatBareLength, formatLength, type Units } from "@lamplane/parameters/units";
import { listText } from "@lamplane/parameters/words";
import { alignColumns } from "./text.ts";
import { MORE } from "./words/commands.ts";
import { STOCK } from "./words/stock.ts";

/** Lengths in a sentence, and in a table whose head says the unit. */
interface LengthFormatters {
  readonly mm: (value: number) => string;
  readonly cell: (value: number) => string;
  readonly head: { readonly units: Units };
}

/**
 * The plan as text.
 * @param all kerfs, every piece, the throat offcut, finished sizes, woods and grain too
 */
export function stockText(design: Design, plan: StockPlan, all: boolean): string {
  const bare = design.shop.bothUnits === "no";
  const formatters: LengthFormatters = {
    mm: (value) => formatLength(value, design),
    cell: (value) => (bare ? formatBareLength(value, design) : formatLength(value, design)),
    head: { units: design.units },
  };
  const parts = [
    ...(plan.layers ? [boardText] : [billetText, ripText]),
    ...(all && !plan.layers ? [kerfText] : []),
    markText,
    coreText,
    stockListText,
    ...(all ? [offcutText, finishedText] : []),
  ];
  const texts = parts.map((part) => part(plan, formatters, all));
  return [...texts, ...(all ? [] : [MORE.stock]), STOCK.caution].join("\n\n");
}

const SIDES = ["length", "width", "height"] as const;

function billetText({ billet, rip }: StockPlan, { mm, cell }: LengthFormatters, all: boolean): string {
  const { needed, measured, fits } = billet;
  const rule = all ? [STOCK.rule({ added: mm(BILLET_OVER_IRON), width: mm(rip.byRule) })] : [];
  const size = STOCK.billet({ length: mm(needed.length), width: mm(needed.width), height: mm(needed.height) });
  if (fits === undefined) return [size, ...rule].join("\n");
  const rows = SIDES.map((side) => [
    STOCK.sides[side],
    cell(needed[side]),
    cell(measured[side]),
    ...(billet.short[side] > 0
      ? [STOCK.tooSmall({ by: cell(billet.short[side]) })]
      : [billet.spare[side] > 0 ? STOCK.leftOver({ by: cell(billet.spare[side]) }) : ""]),
  ]);
  const asItLies = billet.lay === "on its side" ? STOCK.asItLies : "";
  const table = alignColumns([["", STOCK.needed, STOCK.measured, asItLies], ...rows]);
  return [size, verdictText(billet), table, ...rule].join("\n");
}

function boardText({ layers }: StockPlan, { mm, cell, head }: LengthFormatters): string {
  const { strips, count, board, length, width, running, boardRings, thickest } = layers!;
  const rows = strips.map((strip) => [
    STOCK.strip({ piece: strip.piece, numbers: strip.numbers.map(String) }),
    `${strip.count}`,
    cell(strip.thickness),
  ]);
  return [
    STOCK.boardFor({ count, length: mm(length), width: mm(width), board: mm(board), running: mm(running) }),
    STOCK.strips(head),
    alignColumns([STOCK.stripHeads, ...rows]),
    STOCK.planed({ thickest: mm(thickest) }),
    STOCK.rings({ board: boardRings, sole: 90 - boardRings }),
  ].join("\n");
}

function verdictText({ fits, lay, rings, planes, boards }: StockPlan["billet"]): string {
  if (!fits) return STOCK.noFit;
  const laid = lay === "on its side" ? STOCK.fitsOnSide({ rings, before: 90 - rings }) : STOCK.fits({ rings });
  const more = planes.total > 1 ? STOCK.planes(planes) : "";
  const left = boards.length > 0 ? `\n${STOCK.boards({ from: boards.map((board) => board.from) })}` : "";
  return `${laid}${more}${left}`;
}

function ripText({ rip, core }: StockPlan, { mm, cell, head }: LengthFormatters): string {
  const rows = rip.strips.map(({ piece, finished }, i) => {
    const cut = rip.sawLines[i];
    return [piece, cut ? cell(cut.fence) : STOCK.rest, cell(finished)];
  });
  return [
    STOCK.saw(head),
    alignColumns([STOCK.sawHeads, ...rows]),
    STOCK.reference({ pass: mm(rip.referencePass), height: mm(core.height) }),
    STOCK.jointBetween,
    ...(rip.spare > 0 && rip.sawLines.length === 2 ? [STOCK.thickerCheek({ by: mm(rip.spare) })] : []),
  ].join("\n");
}

function kerfText({ rip }: StockPlan, { cell, head }: LengthFormatters): string {
  const spanText = ({ from, to }: { from: number; to: number }) => STOCK.span({ from: cell(from), to: cell(to) });
  const rows = rip.strips.map(({ piece, at }, i) => {
    const cut = rip.sawLines[i];
    return [piece, spanText(at), cut ? spanText(cut.kerf) : ""];
  });
  return [STOCK.kerfs(head), alignColumns([STOCK.kerfHeads, ...rows])].join("\n");
}

function markText({ marks, layers }: StockPlan, { mm, cell, head }: LengthFormatters, all: boolean): string {
  const blocks = [...new Set(marks.marks.map(({ over }) => over))];
  const at = (block: string, count: number) =>
    listText(
      marks.marks
        .filter(({ over, strokes }) => over === block && strokes === count)
        .flatMap((mark) => mark.at.map(cell)),
    );
  const rows = blocks.map((block) => [block, at(block, 1), at(block, 2)]);
  return [
    layers ? STOCK.marksOnStack(head) : STOCK.marks(head),
    alignColumns([STOCK.markHeads, ...rows]),
    ...(all ? [STOCK.marksClear({ clear: mm(CLEAR_OF_CUTS) })] : []),
    ...marks.lacking.map((block) => STOCK.noRoom({ block })),
  ].join("\n");
}

function coreText({ core, layers }: StockPlan, { mm, cell, head }: LengthFormatters, all: boolean): string {
  const rows = core.cuts.map(({ name, saw, markAtSole, markAtTop, wasteTo, kerfAtSole }) => {
    const end = cell(wasteTo === "heel" ? kerfAtSole.to : kerfAtSole.from);
    const kerf = all ? STOCK.kerf({ end, side: wasteTo }) : STOCK.kerfSide({ side: wasteTo });
    return [name, formatAngle(saw), cell(markAtSole), cell(markAtTop), kerf];
  });
  return [
    layers ? STOCK.cutsOfLayers(head) : STOCK.cuts(head),
    alignColumns([[...STOCK.cutHeads, all ? STOCK.kerfAtSole : STOCK.kerfSideHead], ...rows]),
    ...(all
      ? [
          STOCK.between({ room: mm(core.roomBetweenMarks), overlaps: core.roomBetweenKerfs < 0 }),
          STOCK.setIn({ front: mm(core.setInToe), bed: mm(core.setInHeel) }),
        ]
      : []),
  ].join("\n");
}

function stockListText({ list, billet }: StockPlan, { cell, head }: LengthFormatters, all: boolean): string {
  const size = (piece: PieceSize) => STOCK.size(textsOf(piece, cell));
  const listed = all ? list.rows : list.rows.filter(({ piece }) => SMALL_PIECES.includes(piece));
  const rows = listed.map((row) => [row.piece, `${row.count}`, size(row.rough), row.from]);
  const boards = billet.boards.map(({ from, ...board }) => STOCK.board({ from, size: size(board) }));
  const pieces = list.leftovers.map((taken) => STOCK.yield(taken));
  return [
    all ? STOCK.list(head) : STOCK.smallPieces(head),
    alignColumns([STOCK.listHeads, ...rows]),
    ...boards,
    ...(boards.length > 0 && pieces.length > 0 ? [STOCK.yields({ pieces })] : []),
  ].join("\n");
}

/** Pieces whose sizes follow from no cut above. */
const SMALL_PIECES: readonly string[] = ["wedge", "cross pin", "peg"];

const textsOf = ({ length, width, thickness }: PieceSize, format: (mm: number) => string) => ({
  length: format(length),
  width: format(width),
  thickness: format(thickness),
});

function finishedText({ list }: StockPlan, { cell, head }: LengthFormatters): string {
  const rows = list.rows.map(({ piece, finished }) => [piece, STOCK.size(textsOf(finished, cell))]);
  return [STOCK.finished(head), alignColumns([STOCK.finishedHeads, ...rows]), ...list.rows.map(STOCK.wood)].join("\n");
}

function offcutText({ offcut }: StockPlan, { mm }: LengthFormatters): string {
  return [
    STOCK.offcut,
    STOCK.offcutSize({
      length: mm(offcut.length),
      height: mm(offcut.height),
      width: mm(offcut.width),
      allowance: mm(offcut.allowance),
    }),
    partText("wedge", offcut.wedge, mm),
    partText("cross pin", offcut.pin, mm),
    STOCK.grain({ runOut: GRAIN_RUN_OUT, source: GRAIN_RUN_OUT_SOURCE }),
    ...(offcut.wedge.fits && offcut.pin.fits ? [STOCK.oneOnly] : []),
  ].join("\n");
}

function partText(part: string, found: FromOffcut, mm: LengthFormatters["mm"]): string {
  if (!found.acrossFits) return STOCK.tooWide({ part, width: mm(found.across) });
  const longest = mm(found.longest);
  if (found.fits) return STOCK.partFits({ part, angle: formatAngle(found.fromGrain), longest });
  return found.longest === 0 ? STOCK.noneFits({ part }) : STOCK.partTooLong({ part, by: mm(found.tooLongBy), longest });
}
