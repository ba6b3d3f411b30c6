// What comes after the last step: jigs in use, plots, strength, and where the cautions come from.
import type { Traveller } from "../../traveller/index.ts";
import { type PageBlock, sideBySide, stackBlocks } from "../blocks/block.ts";
import type { BlockGroup } from "../blocks/flow.ts";
import { SMALL_TEXT_SIZE } from "../blocks/page-writer.ts";
import { pictureBlock } from "../blocks/picture.ts";
import { headingBlock, paragraphBlock } from "../blocks/text.ts";
import { numbersBlock } from "./step-tables.ts";

export function backGroups(traveller: Traveller, width: number): BlockGroup[] {
  const { plots, strength, strengthCaution, cautions, defer } = traveller;
  return [
    ...jigGroups(traveller, width),
    ...plots.map(
      ({ words, picture }, i): BlockGroup => ({
        startsColumn: i === 0,
        blocks: [
          stackBlocks(
            ...(i === 0 ? [headingBlock("Plots", width, 4.6)] : []),
            paragraphBlock(words, width, { bold: true }),
            pictureBlock(picture, width),
          ),
        ],
      }),
    ),
    {
      blocks: [
        stackBlocks(
          headingBlock("Hold and strength, indicative", width, 4.6),
          paragraphBlock(strengthCaution, width, { bold: true }),
          numbersBlock(strength, width),
        ),
      ],
    },
    {
      blocks: [
        headingBlock("Where the cautions come from", width, 4.6),
        paragraphBlock(defer, width, { size: SMALL_TEXT_SIZE }),
        ...cautions
          .filter(({ source }) => source !== "from memory")
          .map(({ source, text }) =>
            paragraphBlock(`“${cautionSubject(text)} …”: ${source}.`, width, { size: SMALL_TEXT_SIZE }),
          ),
        paragraphBlock("The other cautions: trade practice, from memory.", width, { size: SMALL_TEXT_SIZE }),
      ],
    },
  ];
}

/** As much of a caution as tells it from the others. */
const cautionSubject = (text: string): string => text.split(/[.:,;]/)[0]!;

function jigGroups({ jigs }: Traveller, width: number): BlockGroup[] {
  return jigs.map(({ title, use, against, picture }, i): BlockGroup => {
    const words = (room: number): PageBlock =>
      stackBlocks(headingBlock(title, room), paragraphBlock(against, room), paragraphBlock(use, room));
    const half = picture ? Math.min(picture.width + 4, 0.48 * width) : 0;
    const body = picture ? sideBySide(4, words(width - half - 4), pictureBlock(picture, half)) : words(width);
    return {
      startsColumn: i === 0,
      blocks: i === 0 ? [stackBlocks(headingBlock("The jigs in use", width, 4.6), body)] : [body],
    };
  });
}
