// The traveller as a PDF: front matter, a group for every step, jigs, plots and sources; the same content gives the same bytes.

import { POINTS_PER_MM } from "@lamplane/parameters/units";
import { createPdf, type Pdf, pdfBytes } from "../../pdf/document.ts";
import { measureText, type Typefaces } from "../../pdf/typefaces.ts";
import type { Traveller } from "../../traveller/index.ts";
import type { SheetPage } from "../blocks/block.ts";
import { flowBlocks } from "../blocks/flow.ts";
import { drawOnPage, SMALL_TEXT_SIZE } from "../blocks/page-writer.ts";
import type { Paper } from "../paper.ts";
import { backGroups } from "./back.ts";
import { type Columns, columnLayout } from "./columns.ts";
import { frontGroups } from "./front.ts";
import { stepGroup } from "./step-group.ts";

export interface TravellerOptions {
  readonly paper: Paper;
  readonly version: string;
  readonly typefaces?: Typefaces;
}

/** @see ISO 32000-1:2008 for the format. A3 and Tabloid lie across, two columns to a page, each as wide as A4's or Letter's. */
export async function travellerPdf(
  traveller: Traveller,
  { paper, version, typefaces }: TravellerOptions,
): Promise<Uint8Array> {
  const columns = columnLayout(paper);
  const groups = [
    ...frontGroups(traveller, columns.width),
    ...traveller.steps.map((step, i) => ({
      ...stepGroup(step, i + 1, i === traveller.steps.length - 1, columns),
      ...(i === 0 ? { startsColumn: true } : {}),
    })),
    ...backGroups(traveller, columns.width),
  ];
  const filled = flowBlocks(groups, columns.height);
  const about = { title: `${traveller.name}: traveller`, subject: "The build in order, to take to the bench" };
  const pdf = createPdf({ ...about, ...(typefaces ? { typefaces } : {}) });
  const pages = Math.ceil(filled.length / columns.lefts.length);
  for (let i = 0; i < pages; i++) {
    const page = addTravellerPage(pdf, columns, traveller.name, `page ${i + 1} of ${pages} · lamplane ${version}`);
    columns.lefts.forEach((left, k) => {
      for (const { block, top } of filled[i * columns.lefts.length + k] ?? [])
        block.draw(page, { left, top: columns.top + top });
    });
  }
  return pdfBytes(pdf);
}

const FOOT_WORDS =
  "Follow each machine's manual, local rules and trained practice; where they differ from this sheet, they hold.";

function addTravellerPage(pdf: Pdf, { size, lefts, top }: Columns, name: string, number: string): SheetPage {
  pdf.doc.addPage({ size: [size.width * POINTS_PER_MM, size.height * POINTS_PER_MM], margin: 0 });
  const page = { pdf, size };
  const [left, right] = [lefts[0]!, size.width - lefts[0]!];
  const room = right - left - measureText(number, SMALL_TEXT_SIZE) - 30;
  const nameSize = Math.min(3.8, room / measureText(name, 1, true));
  drawOnPage(page, (put) => {
    put.text(name, { left, top: top - 8.4 }, { size: nameSize, bold: true });
    put.text("traveller", { left: left + measureText(name, nameSize, true) + 4, top: top - 8.2 }, { size: 3.4 });
    put.text(number, { left: right, top: top - 8 }, { size: SMALL_TEXT_SIZE, anchor: "end" });
    put.rule({ left, top: top - 3 }, { left: right, top: top - 3 }, "outline");
    put.text(FOOT_WORDS, { left, top: size.height - 12.5 }, { size: SMALL_TEXT_SIZE });
  });
  return page;
}
