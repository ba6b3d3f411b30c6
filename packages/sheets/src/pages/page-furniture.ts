// The foot of every sheet at true size: two bars to measure before it is used.
import { toMillimetres } from "@lamplane/parameters/units";
import { BAR_WORDS, CHECK_PRINT } from "../words/sheets.ts";
import { type PageBlock, sideBySide } from "./blocks/block.ts";
import { drawOnPage, type PageWriter, SMALL_TEXT_SIZE } from "./blocks/page-writer.ts";
import { linesBlock } from "./blocks/text.ts";
import { FOOT_HEIGHT } from "./paper.ts";

/** Lengths of the two bars, mm, and what is written at their ends. */
export const BARS = [
  { words: BAR_WORDS.mm, length: 100, step: 10 },
  { words: BAR_WORDS.in, length: toMillimetres(4, "in"), step: toMillimetres(0.5, "in") },
] as const;
const BAR = { line: 0.5, end: 3.6, step: 2, tick: 0.25 } as const;
const BAR_ROW = 6;
/** From a bar's end to the words beside both, mm. */
const ASIDE = 18;

export const printCheckBlock = (): PageBlock =>
  sideBySide(ASIDE, barsBlock(), linesBlock(CHECK_PRINT, 60, { size: SMALL_TEXT_SIZE }));

function barsBlock(): PageBlock {
  return {
    width: Math.max(...BARS.map(({ length }) => length)),
    height: FOOT_HEIGHT,
    draw: (page, { left, top }) =>
      drawOnPage(page, (put) => {
        BARS.forEach((bar, i) => {
          drawBar(put, bar, left, top + FOOT_HEIGHT - 1 - (BARS.length - 1 - i) * BAR_ROW);
        });
      }),
  };
}

/** A bar that is as long as it says from the outside of its left end to the outside of its right one. @param foot its lower edge */
function drawBar(put: PageWriter, { words, length, step }: (typeof BARS)[number], left: number, foot: number): void {
  const box = (x: number, width: number, height: number) => put.fill({ left: x, top: foot - height }, width, height, 1);
  box(left, length, BAR.line);
  box(left, BAR.tick, BAR.end);
  box(left + length - BAR.tick, BAR.tick, BAR.end);
  for (let x = step; x < length - 1e-6; x += step) box(left + x - BAR.tick / 2, BAR.tick, BAR.step);
  put.text(words, { left: left + length + 2, top: foot - 3.2 }, { size: 3.2 });
}
