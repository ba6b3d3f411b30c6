// One step on the page: heading to tick off, numbers beside blanks and cautions, its drawing, what to do, what to check.
import type { Picture, TravellerStep } from "@lamplane/parameters/pictures";
import { drawPicture } from "../../pdf/draw-picture.ts";
import type { Block, Group } from "./flow.ts";
import { blanksTable, cautionsBox, numbersTable } from "./tables.ts";
import { beside, heading, onPage, paragraph, stacked, tickBox, toTick, wrapped } from "./words.ts";

const APART = 6;

export function stepGroup(step: TravellerStep, number: number, width: number): Group {
  const { title, task, why, instructions, checks, picture, jigs, done } = step;
  return {
    blocks: [
      stacked(
        stepHeading(`${number}`, title, width, done),
        paragraph(task, width, { bold: true }),
        ...(why === undefined ? [] : [paragraph(`Why: ${why}`, width)]),
        numbersAndRest(step, width),
      ),
      pictureBlock(picture, width),
      stacked(
        heading("Do", width),
        ...(jigs.length > 0 ? [paragraph(`Jigs: ${jigs.join(", ")} (pictured at the end).`, width)] : []),
        toTick(instructions, width, true, done),
      ),
      stacked(heading("Check before going on", width), toTick(checks, width, false, done)),
    ],
    again: paragraph(`${number}  ${title}, continued`, width, { bold: true, size: 4 }, 2),
  };
}

function stepHeading(number: string, title: string, width: number, done: boolean): Block {
  const size = 5.2;
  const lines = wrapped(title, width - 24, { size, bold: true });
  return {
    height: lines.length * size * 1.38 + 3.5,
    draw: (page, { left, top }) =>
      onPage(page, (put) => {
        put.rule({ left, top }, { left: left + width, top }, "outline");
        put.text(number, { left, top: top + 1.8 }, { size, bold: true });
        put.lines(lines, { left: left + 11, top: top + 1.8 }, { size, bold: true });
        tickBox(put, { left: left + width - 3.4, top: top + 2.6 }, done);
        put.text("done", { left: left + width - 5, top: top + 2.6 }, { anchor: "end" });
      }),
  };
}

/** Numbers on the left; blanks and cautions on the right where there are any. */
function numbersAndRest({ numbers, blanks, cautions }: TravellerStep, width: number): Block {
  const right = 0.42 * width;
  const rest = [
    ...(blanks.length > 0 ? [blanksTable(blanks, right)] : []),
    ...(cautions.length > 0 ? [cautionsBox(cautions, right)] : []),
  ];
  if (numbers.length === 0) return rest.length > 0 ? stacked(...rest) : { height: 0, draw: () => {} };
  if (rest.length === 0) return numbersTable(numbers, width);
  const left = width - right - APART;
  return beside({ block: numbersTable(numbers, left), left: 0 }, { block: stacked(...rest), left: left + APART });
}

/** A picture in the middle of its column, true to its scale; one that is too wide is drawn as wide as the column. */
export function pictureBlock(picture: Picture, width: number): Block {
  const scale = Math.min(1, width / picture.width);
  return {
    height: picture.height * scale + 5,
    draw: ({ pdf }, { left, top }) =>
      drawPicture(pdf, picture, { left: left + (width - picture.width * scale) / 2, top: top + 2.5, scale }),
  };
}
