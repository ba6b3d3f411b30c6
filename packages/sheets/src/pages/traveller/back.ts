// What comes after the last step: jigs in use, plots, strength, and where the cautions come from.
import type { Traveller } from "../../traveller/index.ts";
import type { Block, Group } from "./flow.ts";
import { pictureBlock } from "./step-group.ts";
import { numbersTable } from "./tables.ts";
import { beside, heading, paragraph, SMALL, stacked } from "./words.ts";

export function backGroups(traveller: Traveller, width: number): Group[] {
  const { plots, strength, strengthCaution, cautions, defer } = traveller;
  return [
    ...jigGroups(traveller, width),
    ...plots.map(({ words, picture }, i) => ({
      fresh: i === 0,
      blocks: [
        stacked(
          ...(i === 0 ? [heading("Plots", width, 4.6)] : []),
          paragraph(words, width, { bold: true }),
          pictureBlock(picture, width),
        ),
      ],
    })),
    {
      blocks: [
        stacked(
          heading("Hold and strength, indicative", width, 4.6),
          paragraph(strengthCaution, width, { bold: true }),
          numbersTable(strength, width),
        ),
      ],
    },
    {
      blocks: [
        heading("Where the cautions come from", width, 4.6),
        paragraph(defer, width, { size: SMALL }),
        ...cautions
          .filter(({ source }) => source !== "from memory")
          .map(({ source, text }) => paragraph(`“${firstWords(text)} …”: ${source}.`, width, { size: SMALL })),
        paragraph("The other cautions: trade practice, from memory.", width, { size: SMALL }),
      ],
    },
  ];
}

/** As much of a caution as tells it from the others. */
const firstWords = (text: string): string => text.split(/[.:,;]/)[0]!;

function jigGroups({ jigs }: Traveller, width: number): Group[] {
  return jigs.map(({ title, use, against, picture }, i) => {
    const words = (room: number): Block =>
      stacked(heading(title, room), paragraph(against, room), paragraph(use, room));
    const half = picture ? Math.min(picture.width + 4, 0.48 * width) : 0;
    const body = picture
      ? beside({ block: words(width - half - 4), left: 0 }, { block: pictureBlock(picture, half), left: width - half })
      : words(width);
    return { fresh: i === 0, blocks: i === 0 ? [stacked(heading("The jigs in use", width, 4.6), body)] : [body] };
  });
}
