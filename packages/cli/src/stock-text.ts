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
import { formatAngle, formatLength } from "@lamplane/parameters/units";
import { listText } from "@lamplane/parameters/words";
import { alignColumns } from "./text.ts";
import { STOCK } from "./words/stock.ts";

type LengthFormatter = (mm: number) => string;

/** The whole plan as text. */
export function stockText(design: Design, plan: StockPlan): string {
  const mm: LengthFormatter = (value) => formatLength(value, design);
  const parts = [billetText, ripText, markText, coreText, offcutText, stockListText].map((part) => part(plan, mm));
  return [...parts, STOCK.caution].join("\n\n");
}

const sizeText = (piece: PieceSize, format: LengthFormatter): string =>
  (["length", "width", "thickness"] as const).map((side) => format(piece[side])).join(" × ");

const SIDES = ["length", "width", "height"] as const;

function billetText({ billet, rip }: StockPlan, mm: LengthFormatter): string {
  const { needed, measured } = billet;
  const rows = SIDES.map((side) => [
    side,
    mm(needed[side]),
    measured[side] === 0 ? STOCK.notEntered : mm(measured[side]),
    ...(billet.short[side] > 0
      ? [STOCK.tooSmall({ by: mm(billet.short[side]) })]
      : [billet.spare[side] > 0 ? STOCK.leftOver({ by: mm(billet.spare[side]) }) : ""]),
  ]);
  const rule = STOCK.rule({ added: mm(BILLET_OVER_IRON), width: mm(rip.byRule) });
  const asItLies = billet.lay === "on its side" ? STOCK.asItLies : "";
  return [
    STOCK.billet,
    alignColumns([["", STOCK.needed, STOCK.measured, asItLies], ...rows]),
    rule,
    verdictText(billet),
  ].join("\n");
}

function verdictText({ fits, lay, rings, planes, boards }: StockPlan["billet"]): string {
  if (fits === undefined) return STOCK.noBillet;
  if (!fits) return STOCK.noFit;
  const laid = lay === "on its side" ? STOCK.fitsOnSide({ rings, before: 90 - rings }) : STOCK.fits({ rings });
  const more = planes.total > 1 ? STOCK.planes(planes) : "";
  const left = boards.length > 0 ? `\n${STOCK.boards({ from: boards.map((board) => board.from) })}` : "";
  return `${laid}${more}${left}`;
}

function ripText({ rip, core }: StockPlan, mm: LengthFormatter): string {
  const lines = rip.sawLines.map(({ frees, kerf, fence }, i) => [
    `${i + 1}`,
    frees,
    STOCK.span({ from: mm(kerf.from), to: mm(kerf.to) }),
    mm(fence),
  ]);
  const strips = rip.strips.map(({ piece, sawn, rough, finished }) => [piece, mm(sawn), mm(rough), mm(finished)]);
  return [
    STOCK.sawLines,
    STOCK.reference({ pass: mm(rip.referencePass) }),
    STOCK.surface({ height: mm(core.height) }),
    STOCK.kerfs,
    STOCK.jointBetween,
    alignColumns([STOCK.sawHeads, ...lines]),
    alignColumns([STOCK.stripHeads, ...strips]),
    ...(rip.spare > 0 && rip.sawLines.length === 2 ? [STOCK.thickerCheek({ by: mm(rip.spare) })] : []),
  ].join("\n");
}

function markText({ marks }: StockPlan, mm: LengthFormatter): string {
  const rows = marks.marks.map(({ over, strokes, at }) => [
    over,
    STOCK.strokes[strokes],
    listText(at.map((x) => mm(x))),
  ]);
  return [
    STOCK.marks,
    STOCK.drawMarks,
    STOCK.marksClear({ clear: mm(CLEAR_OF_CUTS) }),
    alignColumns([STOCK.markHeads, ...rows]),
    ...marks.lacking.map((block) => STOCK.noRoom({ block })),
    STOCK.shift({ front: mm(marks.shift["front block"]), bed: mm(-marks.shift["bed block"]) }),
  ].join("\n");
}

function coreText({ core }: StockPlan, mm: LengthFormatter): string {
  const rows = core.cuts.map(({ name, saw, markAtSole, markAtTop, wasteTo, kerfAtSole }) => {
    const span = STOCK.span({ from: mm(kerfAtSole.from), to: mm(kerfAtSole.to) });
    const kerf = STOCK.kerf({ span, side: wasteTo });
    return [name, formatAngle(saw), mm(markAtSole), mm(markAtTop), kerf];
  });
  return [
    STOCK.cuts,
    alignColumns([STOCK.cutHeads, ...rows]),
    STOCK.between({ room: mm(core.roomBetweenMarks), overlaps: core.roomBetweenKerfs < 0 }),
    STOCK.setIn({ front: mm(core.setInToe), bed: mm(core.setInHeel) }),
  ].join("\n");
}

function offcutText({ offcut }: StockPlan, mm: LengthFormatter): string {
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

function partText(part: string, found: FromOffcut, mm: LengthFormatter): string {
  if (!found.acrossFits) return STOCK.tooWide({ part, width: mm(found.across) });
  const longest = mm(found.longest);
  if (found.fits) return STOCK.partFits({ part, angle: formatAngle(found.fromGrain), longest });
  return found.longest === 0 ? STOCK.noneFits({ part }) : STOCK.partTooLong({ part, by: mm(found.tooLongBy), longest });
}

function stockListText({ list, billet }: StockPlan, mm: LengthFormatter): string {
  const rows = list.rows.map((row) => [
    row.piece,
    `${row.count}`,
    sizeText(row.rough, mm),
    sizeText(row.finished, mm),
    row.from,
    row.species,
    row.grain,
  ]);
  const boards = billet.boards.map(({ from, ...board }) => STOCK.board({ from, size: sizeText(board, mm) }));
  const pieces = list.leftovers.map((taken) => STOCK.yield(taken));
  return [
    STOCK.list,
    alignColumns([STOCK.listHeads, ...rows]),
    ...boards,
    ...(boards.length > 0 && pieces.length > 0 ? [STOCK.yields({ pieces })] : []),
  ].join("\n");
}
