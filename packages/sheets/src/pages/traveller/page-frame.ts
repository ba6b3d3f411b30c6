// The pages of card, traveller and appendix: blocks flowed into columns, each page with its head and its foot.
import { POINTS_PER_MM } from "@lamplane/parameters/units";
import { createPdf, type Pdf, pdfBytes } from "../../pdf/document.ts";
import type { Typefaces } from "../../pdf/typefaces.ts";
import { DEFER_FOOT, PAPER } from "../../words/papers.ts";
import type { SheetPage } from "../blocks/block.ts";
import { type BlockGroup, flowBlocks } from "../blocks/flow.ts";
import { headBlock } from "../blocks/head.ts";
import { drawOnPage, SMALL_TEXT_SIZE } from "../blocks/page-writer.ts";
import type { Paper } from "../paper.ts";
import type { Columns } from "./columns.ts";

export interface TravellerOptions {
  readonly paper: Paper;
  readonly version: string;
  readonly typefaces?: Typefaces;
}

export interface PaperAbout {
  /** The plane's name. */
  readonly name: string;
  readonly paper: string;
  readonly subject: string;
}

/** Groups as a PDF, column by column. @see ISO 32000-1:2008 for the format */
export async function columnsPdf(
  about: PaperAbout,
  groups: readonly BlockGroup[],
  columns: Columns,
  { version, typefaces }: TravellerOptions,
): Promise<Uint8Array> {
  const filled = flowBlocks(groups, columns.height);
  const { name, paper, subject } = about;
  const pdf = createPdf({ title: PAPER.title({ name, paper }), subject, ...(typefaces ? { typefaces } : {}) });
  const pages = Math.ceil(filled.length / columns.lefts.length);
  for (let i = 0; i < pages; i++) {
    const page = addPage(pdf, columns, about, PAPER.page({ page: i + 1, pages, version }));
    columns.lefts.forEach((left, k) => {
      for (const { block, top } of filled[i * columns.lefts.length + k] ?? [])
        block.draw(page, { left, top: columns.top + top });
    });
  }
  return pdfBytes(pdf);
}

function addPage(pdf: Pdf, { size, lefts, top }: Columns, about: PaperAbout, number: string): SheetPage {
  pdf.doc.addPage({ size: [size.width * POINTS_PER_MM, size.height * POINTS_PER_MM], margin: 0 });
  const page = { pdf, size };
  const left = lefts[0]!;
  headBlock({ name: about.name, what: about.paper, number }, size.width - 2 * left).draw(page, {
    left,
    top: top - HEAD_HEIGHT,
  });
  drawOnPage(page, (put) => put.text(DEFER_FOOT, { left, top: size.height - 12.5 }, { size: SMALL_TEXT_SIZE }));
  return page;
}

/** mm over a column for its page's head. */
const HEAD_HEIGHT = 8.4;
