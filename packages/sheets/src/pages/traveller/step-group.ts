// One step on the page: heading to tick off, numbers beside blanks and cautions, its drawing, what to do, what to check.

import type { TravellerStep } from "../../traveller/step.ts";
import { EMPTY_BLOCK, type PageBlock, sideBySide, stackBlocks } from "../blocks/block.ts";
import type { BlockGroup } from "../blocks/flow.ts";
import { drawOnPage } from "../blocks/page-writer.ts";
import { pictureBlock, USUAL_GAP } from "../blocks/picture.ts";
import { checklistBlock, drawTickBox, headingBlock, paragraphBlock, wrapOnSheet } from "../blocks/text.ts";
import type { Columns } from "./columns.ts";
import { readingsBlock } from "./readings.ts";
import { blanksBlock, cautionsBlock, numbersBlock } from "./step-tables.ts";

const APART = 6;

type ColumnSize = Pick<Columns, "width" | "height">;

/** How a step is set: as usual, or closer where it would else run over its column's foot. mm. */
interface Spacing {
  /** Between two sentences to tick. */
  readonly gap: number;
  /** Under a picture. */
  readonly under: number;
}
const USUAL: Spacing = { gap: 1.1, under: USUAL_GAP };
const CLOSE: Spacing = { gap: 0.3, under: 0.5 };

/** A step's checks stand on the step's own page: one that runs over its column by a little is set closer. */
export function stepGroup(
  step: TravellerStep,
  number: number,
  last: boolean,
  { width, height }: ColumnSize,
): BlockGroup {
  const usual = blocksOf(step, number, last, width, USUAL);
  const whole = usual.reduce((sum, block) => sum + block.height, 0);
  return {
    blocks: whole <= height ? usual : blocksOf(step, number, last, width, CLOSE),
    continuation: paragraphBlock(`${number}  ${step.title}, continued`, width, { bold: true, size: 4 }, 2),
  };
}

function blocksOf(
  step: TravellerStep,
  number: number,
  last: boolean,
  width: number,
  { gap, under }: Spacing,
): PageBlock[] {
  const { title, task, why, cautions, instructions, checks, picture, jigs, done, readings } = step;
  return [
    stackBlocks(
      stepHeading(`${number}`, title, width, done),
      paragraphBlock(task, width, { bold: true }),
      ...(why === undefined ? [] : [paragraphBlock(`Why: ${why}`, width)]),
      ...(cautions.length > 0 ? [cautionsBlock(cautions, width)] : []),
      numbersAndBlanks(step, width),
    ),
    pictureBlock(picture, width, under),
    ...(readings ? [readingsBlock(readings, width)] : []),
    stackBlocks(
      headingBlock(jigs.length > 0 ? `Do (jigs, pictured at the end: ${jigs.join(", ")})` : "Do", width),
      checklistBlock(instructions, width, { numbered: true, ticked: done, gap }),
    ),
    stackBlocks(
      headingBlock(last ? "Check" : "Check before going on", width),
      checklistBlock(checks, width, { ticked: done, gap }),
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
        put.text("done", { left: left + width - 6.5, top: top + 2.3 }, { anchor: "end" });
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
const NUMBERS = 130;
