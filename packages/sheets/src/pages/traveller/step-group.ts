// One step on the page: heading to tick off, numbers beside blanks and cautions, its drawing, what to do, what to check.

import { drawPicture } from "../../pdf/draw-picture.ts";
import type { Picture } from "../../picture/picture.ts";
import type { TravellerStep } from "../../traveller/step.ts";
import type { Block, Columns, Group } from "./flow.ts";
import { blanksTable, cautionsBox, numbersTable } from "./tables.ts";
import { beside, heading, onPage, paragraph, stacked, tickBox, toTick, wrapped } from "./words.ts";

const APART = 6;

type Column = Pick<Columns, "width" | "height">;

/** How a step is set: as usual, or closer where it would else run over its column's foot. mm. */
interface Spacing {
  /** Between two sentences to tick. */
  readonly gap: number;
  /** Under a picture. */
  readonly under: number;
}
const USUAL: Spacing = { gap: 1.1, under: 1.5 };
const CLOSE: Spacing = { gap: 0.3, under: 0.5 };

/** A step's checks stand on the step's own page: one that runs over its column by a little is set closer. */
export function stepGroup(step: TravellerStep, number: number, last: boolean, { width, height }: Column): Group {
  const usual = blocksOf(step, number, last, width, USUAL);
  const whole = usual.reduce((sum, block) => sum + block.height, 0);
  return {
    blocks: whole <= height ? usual : blocksOf(step, number, last, width, CLOSE),
    again: paragraph(`${number}  ${step.title}, continued`, width, { bold: true, size: 4 }, 2),
  };
}

function blocksOf(step: TravellerStep, number: number, last: boolean, width: number, { gap, under }: Spacing): Block[] {
  const { title, task, why, cautions, instructions, checks, picture, jigs, done } = step;
  return [
    stacked(
      stepHeading(`${number}`, title, width, done),
      paragraph(task, width, { bold: true }),
      ...(why === undefined ? [] : [paragraph(`Why: ${why}`, width)]),
      ...(cautions.length > 0 ? [cautionsBox(cautions, width)] : []),
      numbersAndBlanks(step, width),
    ),
    pictureBlock(picture, width, under),
    stacked(
      heading(jigs.length > 0 ? `Do (jigs, pictured at the end: ${jigs.join(", ")})` : "Do", width),
      toTick(instructions, width, { numbered: true, ticked: done, gap }),
    ),
    stacked(heading(last ? "Check" : "Check before going on", width), toTick(checks, width, { ticked: done, gap })),
  ];
}

function stepHeading(number: string, title: string, width: number, done: boolean): Block {
  const size = 5.2;
  const lines = wrapped(title, width - 24, { size, bold: true });
  return {
    height: lines.length * size * 1.38 + 3.5,
    draw: (page, { left, top }) =>
      onPage(page, (put) => {
        put.fill({ left, top }, width, lines.length * size * 1.38 + 1.5, 0.12);
        put.text(number, { left: left + 1.5, top: top + 1.8 }, { size, bold: true });
        put.lines(lines, { left: left + 11, top: top + 1.8 }, { size, bold: true });
        tickBox(put, { left: left + width - 5, top: top + 3 }, done);
        put.text("done", { left: left + width - 6.5, top: top + 2.3 }, { anchor: "end" });
      }),
  };
}

/** Numbers on the left, blanks on the right where there are any. */
function numbersAndBlanks({ numbers, blanks }: TravellerStep, width: number): Block {
  if (numbers.length === 0) return { height: 0, draw: () => {} };
  if (blanks.length === 0) return numbersTable(numbers, Math.min(width, NUMBERS));
  const right = 0.36 * width;
  const left = width - right - APART;
  return beside(
    { block: numbersTable(numbers, left), left: 0 },
    { block: blanksTable(blanks, right), left: left + APART },
  );
}
/** Wider than this the eye loses the row between label and value, mm. */
const NUMBERS = 130;

/** A picture in the middle of its column, true to its scale; one that is too wide is drawn as wide as the column. */
export function pictureBlock(picture: Picture, width: number, under = USUAL.under): Block {
  const scale = Math.min(1, width / picture.width);
  return {
    height: picture.height * scale + 2 + under,
    draw: ({ pdf }, { left, top }) =>
      drawPicture(pdf, picture, { left: left + (width - picture.width * scale) / 2, top: top + 2, scale }),
  };
}
