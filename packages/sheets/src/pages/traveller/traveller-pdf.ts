// The traveller as a PDF: a page before the work, then a page for every step; the same content gives the same bytes.
import type { Traveller } from "../../traveller/index.ts";
import { PAPER } from "../../words/papers.ts";
import { columnLayout } from "./columns.ts";
import { frontGroups } from "./front.ts";
import { columnsPdf, type TravellerOptions } from "./page-frame.ts";
import { stepGroup } from "./step-group.ts";

/** A3 and Tabloid lie across, two steps to a page, each as wide as A4's or Letter's. */
export function travellerPdf(traveller: Traveller, options: TravellerOptions): Promise<Uint8Array> {
  const columns = columnLayout(options.paper);
  const { name, steps } = traveller;
  const groups = [
    ...frontGroups(traveller, columns),
    ...steps.map((step, i) => stepGroup(step, i + 1, i === steps.length - 1, columns)),
  ];
  return columnsPdf({ name, paper: PAPER.traveller, subject: PAPER.travellerSubject }, groups, columns, options);
}
