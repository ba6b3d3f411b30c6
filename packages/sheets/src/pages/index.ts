// Door: printed sheets.
export { boardsPdf } from "./boards/boards-pdf.ts";
export { classPdf } from "./class/class-pdf.ts";
export { type LayoutOptions, layoutPdf } from "./layout-pdf.ts";
export { BARS } from "./page-furniture.ts";
export {
  FOOT_HEIGHT,
  HEAD_HEIGHT,
  type Orientation,
  PAGE_MARGIN,
  type Paper,
  type PrintableArea,
  pageSize,
  printableArea,
  type Size,
} from "./paper.ts";
export { type RouterSheets, routerPdf, type SetUpPage } from "./router-pdf.ts";
export { appendixPdf } from "./traveller/appendix-pdf.ts";
export { cardPdf } from "./traveller/card-pdf.ts";
export type { TravellerOptions } from "./traveller/page-frame.ts";
export { travellerPdf } from "./traveller/traveller-pdf.ts";
