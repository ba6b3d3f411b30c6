// Door: printed sheets.
export { classPdf } from "./class/class-pdf.ts";
export { type LayoutOptions, layoutPdf } from "./layout-pdf.ts";
export { BARS, type PageLabels, pageFurniture } from "./page-furniture.ts";
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
export { type TravellerOptions, travellerPdf } from "./traveller/traveller-pdf.ts";
