// Door: printed sheets.
export { type LayoutOptions, layoutPdf } from "./layout-pdf.ts";
export { BARS, type PageWords, pageFurniture } from "./page-furniture.ts";
export { FOOT, HEAD, MARGIN, type Orientation, type Paper, pageRoom, pageSize, type Room, type Size } from "./paper.ts";
export { type TravellerOptions, travellerPdf } from "./traveller/traveller-pdf.ts";
