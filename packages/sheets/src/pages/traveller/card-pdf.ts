// The card as a PDF, two pages in large type: key figures and every set-up in the order of the work; then the cautions, once.
import type { Traveller } from "../../traveller/index.ts";
import { CARD, FINDINGS, PAPER } from "../../words/papers.ts";
import { type PageBlock, sideBySide, stackBlocks } from "../blocks/block.ts";
import type { BlockGroup } from "../blocks/flow.ts";
import { pictureBlock } from "../blocks/picture.ts";
import { headingBlock, paragraphBlock } from "../blocks/text.ts";
import { type Columns, columnLayout } from "./columns.ts";
import { filledBlocks, hasRoom } from "./filled-page.ts";
import { columnsPdf, type TravellerOptions } from "./page-frame.ts";
import { numbersBlock } from "./step-tables.ts";

/** Heights of the letters' em, mm: the largest at which a page holds everything is taken. */
const SIZES = [4.6, 4.4, 4.2, 4, 3.8, 3.6, 3.4, 3.2, 3];
const APART = 8;
/** Least height of the section, mm: the type is what is read from afar. */
const SECTION = 38;

export function cardPdf(traveller: Traveller, options: TravellerOptions): Promise<Uint8Array> {
  const columns = columnLayout(options.paper);
  const groups = [setUpsPage(traveller, columns), cautionsPage(traveller, columns)];
  const about = { name: traveller.name, paper: PAPER.card, subject: PAPER.cardSubject };
  return columnsPdf(about, groups, columns, options);
}

/** Key figures, the section and every set-up on one page, as large as it holds them. @param head over all of it */
export function setUpsPage(
  { section, keyFigures, setUps }: Pick<Traveller, "section" | "keyFigures" | "setUps">,
  page: Columns,
  head: readonly PageBlock[] = [],
): BlockGroup {
  const { width } = page;
  const half = (width - APART) / 2;
  const alignedWith = setUps.flatMap(({ rows }) => rows);
  const tables = (size: number) => {
    const middle = Math.ceil(keyFigures.length / 2);
    const groups = setUps.map(({ step, title, hold, rows }) =>
      stackBlocks(
        headingBlock(`${step}  ${title}`, half, size),
        ...(hold === undefined ? [] : [paragraphBlock(hold, half, { size })]),
        numbersBlock(rows, half, { size, alignedWith }),
      ),
    );
    const above = stackBlocks(
      headingBlock(CARD.keyFigures, width, size + 0.6),
      sideBySide(
        APART,
        ...[keyFigures.slice(0, middle), keyFigures.slice(middle)].map((rows) =>
          numbersBlock(rows, half, { size, alignedWith: keyFigures }),
        ),
      ),
    );
    return { above: [...head, above], below: [headingBlock(CARD.setUps, width, size + 0.6), inTwoColumns(groups)] };
  };
  const { above, below } =
    SIZES.map(tables).find((each) => hasRoom([...each.above, ...each.below], page, SECTION)) ?? tables(SIZES.at(-1)!);
  return { blocks: filledBlocks(above, (room) => pictureBlock(section(room), width), below, page, SECTION) };
}

/** Blocks in two columns, in order down the first and then the second, parted where the higher one is lowest. */
function inTwoColumns(blocks: readonly PageBlock[]): PageBlock {
  const ways = blocks.map((_, i) => [blocks.slice(0, i + 1), blocks.slice(i + 1)] as const);
  const sides = ways.map(([left, right]) =>
    sideBySide(APART, stackBlocks(...left), ...(right.length > 0 ? [stackBlocks(...right)] : [])),
  );
  return sides.reduce((best, next) => (next.height < best.height ? next : best));
}

function cautionsPage({ defer, cautions, findings }: Traveller, { width, height }: Columns): BlockGroup {
  const warned = findings.filter(({ severity }) => severity !== "note");
  const pageAt = (size: number): PageBlock[] => [
    headingBlock(CARD.cautions, width, size + 0.6),
    paragraphBlock(defer, width, { bold: true, size }, 2),
    ...cautions.map(({ text }) => paragraphBlock(text, width, { size }, 1.6)),
    headingBlock(FINDINGS.heading, width, size + 0.6),
    ...(findings.length === 0 ? [paragraphBlock(FINDINGS.none, width, { size })] : []),
    ...warned.map(({ severity, message }) => paragraphBlock(`${FINDINGS[severity]} ${message}`, width, { size })),
    ...(warned.length < findings.length
      ? [paragraphBlock(FINDINGS.inAppendix({ count: findings.length - warned.length }), width, { size })]
      : []),
  ];
  const fits = (blocks: readonly PageBlock[]) => blocks.reduce((sum, block) => sum + block.height, 0) <= height;
  return { startsColumn: true, blocks: SIZES.map(pageAt).find(fits) ?? pageAt(SIZES.at(-1)!) };
}
