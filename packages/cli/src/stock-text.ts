// The stock plan in words, in the order of the work. Every number is read off the plan.
import {
  CLEAR_OF_CUTS,
  type FromOffcut,
  GRAIN_RUN_OUT,
  GRAIN_RUN_OUT_SOURCE,
  type PieceSize,
  type StockPlan,
} from "@lamplane/bench";
import type { Design } from "@lamplane/parameters/table";
import { formatAngle, formatLength } from "@lamplane/parameters/units";
import { alignColumns } from "./text.ts";

type LengthFormatter = (mm: number) => string;

/** The whole plan as text. */
export function stockText(design: Design, plan: StockPlan): string {
  const mm: LengthFormatter = (value) => formatLength(value, design);
  const parts = [billetText, ripText, markText, coreText, offcutText, listText].map((part) => part(plan, mm));
  return [...parts, CAUTION].join("\n\n");
}

const CAUTION =
  "Short and small pieces are dangerous at a machine: follow its manual, local rules and trained practice, or saw them by hand.";

const sizeText = (piece: PieceSize, format: LengthFormatter): string =>
  (["length", "width", "thickness"] as const).map((side) => format(piece[side])).join(" × ");

const SIDES = ["length", "width", "height"] as const;

function billetText({ billet, rip }: StockPlan, mm: LengthFormatter): string {
  const { needed, measured } = billet;
  const rows = SIDES.map((side) => [
    side,
    mm(needed[side]),
    measured[side] === 0 ? "not given" : mm(measured[side]),
    ...(billet.short[side] > 0
      ? [`too small by ${mm(billet.short[side])}`]
      : [billet.spare[side] > 0 ? `left over ${mm(billet.spare[side])}` : ""]),
  ]);
  const rule = `The rule of thumb for the width, iron and ${mm(38.1)}, says ${mm(rip.byRule)} (common practice, no published source).`;
  const asItLies = billet.lay === "on its side" ? "as it lies" : "";
  return [
    "BILLET",
    alignColumns([["", "needed, no less", "measured", asItLies], ...rows]),
    rule,
    verdictText(billet),
  ].join("\n");
}

function verdictText({ fits, lay, rings, planes, boards }: StockPlan["billet"]): string {
  if (fits === undefined) return "No billet is given: these are the sizes to look for.";
  if (!fits)
    return "The plane does not come out of it, either way round: take another billet, or plan a smaller plane.";
  const turned = `The plane comes out of it only with the billet on its side: its height becomes the width. That turns the rings by 90°: they stand at ${rings}° to the sole, not at ${90 - rings}°.`;
  const laid =
    lay === "on its side" ? turned : `The plane comes out of it as measured, rings at ${rings}° to the sole.`;
  const more =
    planes.total > 1
      ? ` It holds ${planes.total} planes: ${planes.along} along, ${planes.across} across, ${planes.up} up.`
      : "";
  const left =
    boards.length > 0
      ? `\nLeft over as boards from its ${boards.map((b) => b.from).join(" and its ")}; see below.`
      : "";
  return `${laid}${more}${left}`;
}

function ripText({ rip, core }: StockPlan, mm: LengthFormatter): string {
  const lines = rip.sawLines.map(({ frees, kerf, fence }, i) => [
    `${i + 1}`,
    frees,
    `${mm(kerf.from)} to ${mm(kerf.to)}`,
    mm(fence),
  ]);
  const strips = rip.strips.map(({ piece, sawn, rough, finished }) => [piece, mm(sawn), mm(rough), mm(finished)]);
  return [
    "SAW LINES ACROSS THE WIDTH",
    `Joint first the face that becomes the left cheek's outside: the reference face. Take no more than ${mm(rip.referencePass)} off it.`,
    `Then surface the sole square to it, and the top parallel to the sole, ${mm(core.height)} apart, before the first cut.`,
    "Kerfs are measured from that face before it is jointed; the fence is set from the face jointed last.",
    "Joint the fresh face of what is left after every cut, before the next.",
    alignColumns([["", "frees", "kerf", "fence"], ...lines]),
    alignColumns([["strip", "as sawn, no less", "rough", "finished"], ...strips]),
    ...(rip.spare > 0 && rip.sawLines.length === 2
      ? [`The right cheek comes out ${mm(rip.spare)} thicker: too little to saw off; plane it down.`]
      : []),
  ].join("\n");
}

function markText({ marks }: StockPlan, mm: LengthFormatter): string {
  const rows = marks.marks.map(({ over, strokes, at }) => [
    over,
    strokes === 1 ? "one stroke" : "two strokes",
    at.map((x) => mm(x)).join(" and "),
  ]);
  return [
    "MATCHING MARKS",
    "Draw them square across the whole top once it is surfaced, before the first cut, so far from the toe end; one stroke toward the toe, two toward the heel.",
    `They stand at least ${mm(CLEAR_OF_CUTS)} clear of every kerf and trim, and last until the top is shaped.`,
    alignColumns([["over the", "mark", "from the toe end"], ...rows]),
    ...marks.lacking.map((block) => `The top of the ${block} has no room for two marks: keep it beside its cheeks.`),
    `At glue-up the front block's strokes stand ${mm(marks.shift["front block"])} nearer to the heel than the cheeks', the bed block's ${mm(-marks.shift["bed block"])} nearer to the toe.`,
  ].join("\n");
}

function coreText({ core }: StockPlan, mm: LengthFormatter): string {
  const rows = core.cuts.map(({ name, saw, markAtSole, markAtTop, wasteTo, kerfAtSole }) => {
    const kerf = `${mm(kerfAtSole.from)} to ${mm(kerfAtSole.to)}, to the ${wasteTo}`;
    return [name, formatAngle(saw), mm(markAtSole), mm(markAtTop), kerf];
  });
  return [
    "THE TWO CUTS ON THE MILLED CORE, from its toe end",
    alignColumns([["cut", "saw from square", "mark on the sole", "mark on the top", "kerf on the sole"], ...rows]),
    `Between the marks on the sole: ${mm(core.roomBetweenMarks)}.${core.roomBetweenKerfs < 0 ? " The kerfs run into each other there, in the waste; neither reaches the other block." : ""}`,
    `At glue-up the front block stands ${mm(core.setInToe)} inside the cheeks' toe end, the bed block ${mm(core.setInHeel)} inside their heel end.`,
  ].join("\n");
}

function offcutText({ offcut }: StockPlan, mm: LengthFormatter): string {
  return [
    "THROAT OFFCUT",
    `The waste between the cuts: ${mm(offcut.length)} along the top, ${mm(offcut.height)} high, ${mm(offcut.width)} wide. Each part is sawn with ${mm(offcut.allowance)} on every sawn face.`,
    partText("wedge", offcut.wedge, mm),
    partText("cross pin", offcut.pin, mm),
    `Never across the grain. A wedge's grain may run ${GRAIN_RUN_OUT}° off its length (${GRAIN_RUN_OUT_SOURCE}); a pin's runs along it.`,
    ...(offcut.wedge.fits && offcut.pin.fits ? ["It yields the one or the other, not both."] : []),
  ].join("\n");
}

function partText(name: string, part: FromOffcut, mm: LengthFormatter): string {
  if (!part.acrossFits)
    return `The ${name} does not come out of it: it is ${mm(part.across)} across, wider than the core.`;
  if (part.fits)
    return `The ${name} comes out of it, its length at ${formatAngle(part.fromGrain)} to the grain; it could be ${mm(part.longest)} long.`;
  if (part.longest === 0) return `The ${name} does not come out of it, nor would a shorter one.`;
  return `The ${name} does not come out of it: it is ${mm(part.tooLongBy)} too long; one of ${mm(part.longest)} would come out.`;
}

function listText({ list, billet }: StockPlan, mm: LengthFormatter): string {
  const rows = list.rows.map((row) => [
    row.piece,
    `${row.count}`,
    sizeText(row.rough, mm),
    sizeText(row.finished, mm),
    row.from,
    row.species,
    row.grain,
  ]);
  const boards = billet.boards.map((board) => `From the billet's ${board.from}: ${sizeText(board, mm)}.`);
  const yields = list.leftovers.map(({ piece, wanted, count }) => `${piece} ${count} of ${wanted}`).join(", ");
  return [
    "STOCK LIST, length along the grain",
    alignColumns([["piece", "count", "rough, no less", "finished", "from", "species", "grain"], ...rows]),
    ...boards,
    ...(boards.length > 0 && yields !== "" ? [`They yield, taken in this order: ${yields}.`] : []),
  ].join("\n");
}
