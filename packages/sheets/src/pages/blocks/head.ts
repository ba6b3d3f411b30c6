// The head of every page: the plane's name, what is on the page, its number, and a rule under them.
import { measureText } from "../../pdf/typefaces.ts";
import type { PageBlock } from "./block.ts";
import { drawOnPage, SMALL_TEXT_SIZE } from "./page-writer.ts";

export interface HeadWords {
  /** The plane's name. */
  readonly name: string;
  readonly what: string;
  readonly number: string;
}

/** mm. */
const NAME = 3.8;
const WHAT = 3.4;
const APART = 4;
const RULE = 5.4;

/** Name and what is here are set smaller where there is much of them. */
export function headBlock({ name, what, number }: HeadWords, width: number): PageBlock {
  const room = width - measureText(number, SMALL_TEXT_SIZE) - 2 * APART;
  const fit = (text: string, wanted: number, within: number, bold = false) =>
    Math.min(wanted, within / measureText(text, 1, bold));
  const nameSize = fit(name, NAME, 0.8 * room, true);
  const nameWidth = measureText(name, nameSize, true);
  const whatSize = fit(what, WHAT, room - nameWidth);
  return {
    width,
    height: RULE + 1,
    draw: (page, { left, top }) =>
      drawOnPage(page, (put) => {
        put.text(name, { left, top }, { size: nameSize, bold: true });
        put.text(what, { left: left + nameWidth + APART, top: top + 0.2 }, { size: whatSize });
        put.text(number, { left: left + width, top: top + 0.4 }, { size: SMALL_TEXT_SIZE, anchor: "end" });
        put.rule({ left, top: top + RULE }, { left: left + width, top: top + RULE }, "outline");
      }),
  };
}
