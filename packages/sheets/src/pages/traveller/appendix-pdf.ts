// The appendix as a PDF: what the checks found, plots, hold and strength, and where the cautions come from.
import type { Traveller } from "../../traveller/index.ts";
import { APPENDIX, PAPER } from "../../words/papers.ts";
import { stackBlocks } from "../blocks/block.ts";
import type { BlockGroup } from "../blocks/flow.ts";
import { SMALL_TEXT_SIZE } from "../blocks/page-writer.ts";
import { pictureBlock } from "../blocks/picture.ts";
import { headingBlock, paragraphBlock } from "../blocks/text.ts";
import { columnLayout } from "./columns.ts";
import { findingsBlock } from "./findings.ts";
import { columnsPdf, type TravellerOptions } from "./page-frame.ts";
import { numbersBlock } from "./step-tables.ts";

const HEADING = 4.6;

export function appendixPdf(traveller: Traveller, options: TravellerOptions): Promise<Uint8Array> {
  const columns = columnLayout(options.paper);
  const about = { name: traveller.name, paper: PAPER.appendix, subject: PAPER.appendixSubject };
  return columnsPdf(about, appendixGroups(traveller, columns.width), columns, options);
}

function appendixGroups(traveller: Traveller, width: number): BlockGroup[] {
  const { plots, strength, strengthCaution, findings } = traveller;
  return [
    { blocks: [findingsBlock(findings, width)] },
    ...plots.map(
      ({ words, picture }, i): BlockGroup => ({
        blocks: [
          stackBlocks(
            ...(i === 0 ? [headingBlock(APPENDIX.plots, width, HEADING)] : []),
            paragraphBlock(words, width, { bold: true }),
            pictureBlock(picture, width),
          ),
        ],
      }),
    ),
    {
      blocks: [
        stackBlocks(
          headingBlock(APPENDIX.strength, width, HEADING),
          paragraphBlock(strengthCaution, width, { bold: true }),
          numbersBlock(strength, width),
        ),
      ],
    },
    { blocks: sourceBlocks(traveller, width) },
  ];
}

function sourceBlocks({ cautions, defer }: Traveller, width: number) {
  const small = { size: SMALL_TEXT_SIZE };
  return [
    headingBlock(APPENDIX.sources, width, HEADING),
    paragraphBlock(defer, width, small),
    ...cautions
      .filter(({ source }) => source !== "from memory")
      .map(({ source, text }) =>
        paragraphBlock(APPENDIX.source({ subject: cautionSubject(text), source }), width, small),
      ),
    paragraphBlock(APPENDIX.otherSources, width, small),
  ];
}

/** As much of a caution as tells it from the others. */
const cautionSubject = (text: string): string => text.split(/[.:,;]/)[0]!;
