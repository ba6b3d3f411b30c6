// The traveller's first page: the plane with its parts named, how to use the sheets, wood and tools, and the fit test of the jigs.
import type { Traveller } from "../../traveller/index.ts";
import { FRONT } from "../../words/papers.ts";
import { type PageBlock, stackBlocks } from "../blocks/block.ts";
import type { BlockGroup } from "../blocks/flow.ts";
import { SMALL_TEXT_SIZE } from "../blocks/page-writer.ts";
import { pictureBlock } from "../blocks/picture.ts";
import { tableBlock } from "../blocks/table.ts";
import { checklistBlock, headingBlock, paragraphBlock } from "../blocks/text.ts";
import type { Columns } from "./columns.ts";
import { filledBlocks } from "./filled-page.ts";

/** The section's drawing takes what the words leave. */
export function frontGroups(traveller: Traveller, { width, height }: Pick<Columns, "width" | "height">): BlockGroup[] {
  const { design, section, tools, fitTest, name } = traveller;
  const above = [paragraphBlock(name, width, { size: 6, bold: true }, 1), paragraphBlock(FRONT.task, width)];
  const below = [
    stackBlocks(
      headingBlock(FRONT.howToUse, width),
      ...[...FRONT.howTo, FRONT.rounding[design.units]].map((text) => paragraphBlock(text, width)),
    ),
    stackBlocks(headingBlock(stockHeading(traveller), width), stockBlock(traveller, width)),
    stackBlocks(headingBlock(FRONT.tools, width), checklistBlock(tools, width, { gap: 0.4 })),
    ...(fitTest
      ? [stackBlocks(headingBlock(`${FRONT.jigs}: ${fitTest.title}`, width), paragraphBlock(fitTest.use, width))]
      : []),
  ];
  const blocks = filledBlocks(above, (room) => pictureBlock(section(room), width), below, { width, height });
  return [{ blocks }];
}

const stockHeading = ({ design }: Traveller): string => FRONT.stock({ unit: design.units === "mm" ? "mm" : "inches" });

/** Shares of the width for the stock list's columns. */
const SHARES = [0.11, 0.05, 0.2, 0.2, 0.12, 0.14, 0.18];

function stockBlock({ stock: { head, rows } }: Traveller, width: number): PageBlock {
  if (rows.length === 0) return paragraphBlock(FRONT.noPieces, width);
  const cells = [
    head.map((text) => ({ text, bold: true, size: SMALL_TEXT_SIZE })),
    ...rows.map((row) => row.map((text) => ({ text, size: SMALL_TEXT_SIZE }))),
  ];
  return tableBlock(
    cells,
    SHARES.map((share) => share * width),
  );
}
