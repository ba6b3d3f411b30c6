// One step on its page: heading to tick off, numbers beside blanks, cautions, what to do, its jigs, what to check, and as large a drawing as they leave room for.
import type { TravellerStep } from "../../traveller/step.ts";
import { STEP_PAGE } from "../../words/papers.ts";
import { EMPTY_BLOCK, type PageBlock, scaledBlock, sideBySide, stackBlocks } from "../blocks/block.ts";
import type { BlockGroup } from "../blocks/flow.ts";
import { drawOnPage } from "../blocks/page-writer.ts";
import { pictureBlock } from "../blocks/picture.ts";
import { checklistBlock, drawTickBox, headingBlock, paragraphBlock, wrapOnSheet } from "../blocks/text.ts";
import type { Columns } from "./columns.ts";
import { filledBlocks, hasRoom, LEAST_PICTURE } from "./filled-page.ts";
import { jigsBlock } from "./jigs.ts";
import { notesBlock } from "./notes.ts";
import { readingsBlock } from "./readings.ts";
import { blanksBlock, cautionsBlock, numbersBlock } from "./step-tables.ts";

const APART = 6;

type ColumnSize = Pick<Columns, "width" | "height">;

/** How a step's words are set, and how high a drawing must be left room for, mm: closer and smaller where it would else be small. */
const SETTINGS: readonly { readonly gap: number; readonly scale: number; readonly picture: number }[] = [
  { gap: 1.1, scale: 1, picture: 85 },
  { gap: 0.3, scale: 1, picture: 66 },
  { gap: 0.3, scale: 0.95, picture: 58 },
  ...[0.9, 0.85, 0.8].map((scale) => ({ gap: 0.3, scale, picture: LEAST_PICTURE })),
];

/** A step stands on a page of its own. */
export function stepGroup(step: TravellerStep, number: number, last: boolean, size: ColumnSize): BlockGroup {
  const { width } = size;
  const { above, below } = firstFitting(step, number, last, size);
  const blocks = filledBlocks(above, (room) => pictureBlock(step.draw(room), width), below, size);
  return {
    startsColumn: true,
    blocks: [...blocks, ...notesBlock(blocks, size)],
    continuation: paragraphBlock(STEP_PAGE.continued({ number, title: step.title }), width, { bold: true, size: 4 }, 2),
  };
}

/** What stands over and under a step's drawing, in the first setting that leaves the drawing its room. */
function firstFitting(step: TravellerStep, number: number, last: boolean, size: ColumnSize) {
  let set: { readonly above: readonly PageBlock[]; readonly below: readonly PageBlock[] } = { above: [], below: [] };
  for (const { gap, scale, picture } of SETTINGS) {
    const width = size.width / scale;
    const scaled = (blocks: readonly PageBlock[]) => blocks.map((block) => scaledBlock(block, scale));
    set = { above: scaled(blocksAbove(step, number, width)), below: scaled(blocksBelow(step, last, width, gap)) };
    if (hasRoom([...set.above, ...set.below], size, picture)) break;
  }
  return set;
}

function blocksAbove(step: TravellerStep, number: number, width: number): PageBlock[] {
  const { title, task, why, cautions, done } = step;
  return [
    stackBlocks(
      stepHeading(`${number}`, title, width, done),
      paragraphBlock(task, width, { bold: true }),
      ...(why === undefined ? [] : [paragraphBlock(STEP_PAGE.why({ why }), width)]),
      ...(cautions.length > 0 ? [cautionsBlock(cautions, width)] : []),
      numbersAndBlanks(step, width),
    ),
  ];
}

function blocksBelow(step: TravellerStep, last: boolean, width: number, gap: number): PageBlock[] {
  const { instructions, checks, jigs, readings } = step;
  return [
    ...(readings ? [readingsBlock(readings, width)] : []),
    stackBlocks(headingBlock(STEP_PAGE.do, width), checklistBlock(instructions, width, { numbered: true, gap })),
    ...(jigs.length > 0 ? [jigsBlock(jigs, width)] : []),
    stackBlocks(
      headingBlock(last ? STEP_PAGE.lastCheck : STEP_PAGE.check, width),
      checklistBlock(checks, width, { gap }),
    ),
  ];
}

function stepHeading(number: string, title: string, width: number, done: boolean): PageBlock {
  const size = 5.2;
  const lines = wrapOnSheet(title, width - 24, { size, bold: true });
  return {
    width,
    height: lines.length * size * 1.38 + 3.5,
    draw: (page, { left, top }) =>
      drawOnPage(page, (put) => {
        put.fill({ left, top }, width, lines.length * size * 1.38 + 1.5, 0.12);
        put.text(number, { left: left + 1.5, top: top + 1.8 }, { size, bold: true });
        put.lines(lines, { left: left + 11, top: top + 1.8 }, { size, bold: true });
        drawTickBox(put, { left: left + width - 5, top: top + 3 }, done);
        put.text(STEP_PAGE.done, { left: left + width - 6.5, top: top + 2.3 }, { anchor: "end" });
      }),
  };
}

/** Numbers on the left, blanks on the right where there are any. */
function numbersAndBlanks({ numbers, blanks }: TravellerStep, width: number): PageBlock {
  if (numbers.length === 0) return EMPTY_BLOCK;
  if (blanks.length === 0) return numbersBlock(numbers, Math.min(width, NUMBERS));
  const right = 0.36 * width;
  const left = width - right - APART;
  return sideBySide(APART, numbersBlock(numbers, left), blanksBlock(blanks, right));
}
/** Wider than this the eye loses the row between label and value, mm. */
const NUMBERS = 150;
