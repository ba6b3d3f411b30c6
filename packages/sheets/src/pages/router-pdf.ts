// Sheets for a router as a PDF: a page a set-up, then what is not cut; the same content gives the same bytes.
import { POINTS_PER_MM } from "@lamplane/parameters/units";
import { createPdf, pdfBytes } from "../pdf/document.ts";
import type { Typefaces } from "../pdf/typefaces.ts";
import { type SetUpDrawing, setUpPicture } from "../router/set-up-picture.ts";
import type { PageBlock } from "./blocks/block.ts";
import { flowBlocks } from "./blocks/flow.ts";
import { drawOnPage, SMALL_TEXT_SIZE } from "./blocks/page-writer.ts";
import { pictureBlock } from "./blocks/picture.ts";
import { tableBlock, tableRows } from "./blocks/table.ts";
import { checklistBlock, headingBlock, paragraphBlock, wrapOnSheet } from "./blocks/text.ts";
import { type Paper, pageSize } from "./paper.ts";

/** A set-up's page: what to do before the program runs, the cutters, the drawing. */
export interface SetUpPage {
  readonly title: string;
  readonly files: readonly string[];
  readonly steps: readonly string[];
  /** Rows of cells under a head; none where no router cuts. */
  readonly cutters: readonly (readonly string[])[];
  readonly caution: string;
  readonly drawing: SetUpDrawing;
  readonly drawingKey: string;
}

export interface RouterSheets {
  readonly plane: string;
  readonly title: string;
  readonly subject: string;
  readonly pages: readonly SetUpPage[];
  /** What has no program, and why; under a heading. */
  readonly notCut: { readonly heading: string; readonly rows: readonly (readonly [string, string])[] };
}

interface RouterPdfOptions {
  readonly paper: Paper;
  readonly version: string;
  readonly typefaces?: Typefaces;
}

const MARGIN = 12;
const HEAD = 10;

/** @see ISO 32000-1:2008 for the format */
export async function routerPdf(
  sheets: RouterSheets,
  { paper, version, typefaces }: RouterPdfOptions,
): Promise<Uint8Array> {
  const size = pageSize(paper, "portrait");
  const [width, height] = [size.width - 2 * MARGIN, size.height - 2 * MARGIN - HEAD];
  const last = notCutBlocks(sheets, width);
  const groups = [
    ...sheets.pages.map((page) => setUpPageBlocks(page, width, height)),
    ...(last.length > 0 ? [last] : []),
  ];
  const pdf = createPdf({ title: sheets.title, subject: sheets.subject, ...(typefaces ? { typefaces } : {}) });
  const columns = flowBlocks(
    groups.map((blocks) => ({ blocks, startsColumn: true })),
    height,
  );
  columns.forEach((blocks, i) => {
    pdf.doc.addPage({ size: [size.width * POINTS_PER_MM, size.height * POINTS_PER_MM], margin: 0 });
    const page = { pdf, size };
    drawOnPage(page, (put) => {
      put.text(sheets.title, { left: MARGIN, top: MARGIN }, { size: 3.4, bold: true });
      const number = `page ${i + 1} of ${columns.length} · lamplane ${version}`;
      put.text(number, { left: size.width - MARGIN, top: MARGIN }, { size: SMALL_TEXT_SIZE, anchor: "end" });
      put.rule({ left: MARGIN, top: MARGIN + 6 }, { left: size.width - MARGIN, top: MARGIN + 6 }, "outline");
    });
    for (const { block, top } of blocks) block.draw(page, { left: MARGIN, top: MARGIN + HEAD + top });
  });
  return pdfBytes(pdf);
}

/** All of one set-up, its drawing as large as the height leaves it. */
export function setUpPageBlocks(page: SetUpPage, width: number, height: number): PageBlock[] {
  const words = [
    headingBlock(page.title, width, 5),
    paragraphBlock(page.files.join(", "), width, { size: SMALL_TEXT_SIZE }),
    checklistBlock(page.steps, width, { numbered: true }),
    ...(page.cutters.length > 0 ? [cutterTable(page.cutters, width)] : []),
    ...(page.caution === "" ? [] : [paragraphBlock(page.caution, width, { bold: true }, 3)]),
  ];
  const room = height - words.reduce((sum, block) => sum + block.height, 0) - 16;
  const { stock } = page.drawing;
  const [x, y] = [stock.max.x - stock.min.x, stock.max.y - stock.min.y];
  const scale = Math.min(1, (width - 14) / x, Math.max(20, room) / y);
  return [
    ...words,
    pictureBlock(setUpPicture(page.drawing, scale), width),
    paragraphBlock(page.drawingKey, width, { size: SMALL_TEXT_SIZE }),
  ];
}

/** What is not cut, and why; nothing where all is. */
export function notCutBlocks({ notCut: { heading, rows } }: RouterSheets, width: number): PageBlock[] {
  if (rows.length === 0) return [];
  const cells = rows.flatMap(([what, why]) =>
    splitList(what).map((text, i) => [{ text, bold: true }, { text: i === 0 ? why : "" }]),
  );
  return [headingBlock(heading, width, 4.5), ...tableRows(cells, [NAMES_WIDTH, width - NAMES_WIDTH])];
}
const NAMES_WIDTH = 60; // mm
const NAMES_AT_ONCE = 20; // lines of names: a row fits what is left of most pages

/** A long list in pieces of so many lines that a page may end between two. */
function splitList(names: string): string[] {
  const lines = wrapOnSheet(names, NAMES_WIDTH - 2, { bold: true });
  const count = Math.ceil(lines.length / NAMES_AT_ONCE);
  return Array.from({ length: count }, (_, i) => lines.slice(i * NAMES_AT_ONCE, (i + 1) * NAMES_AT_ONCE).join(" "));
}

function cutterTable(rows: readonly (readonly string[])[], width: number): PageBlock {
  const columns = rows[0]!.length;
  const widths = rows[0]!.map((_, i) =>
    i === 0 ? width / columns + 12 : (width - width / columns - 12) / (columns - 1),
  );
  return tableBlock(
    rows.map((cells, i) => cells.map((text) => ({ text, bold: i === 0, size: SMALL_TEXT_SIZE }))),
    widths,
  );
}
