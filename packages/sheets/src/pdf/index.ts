// Door: PDF. Kept apart, so that only who makes a PDF loads pdfkit and the typefaces.
export { createPdf, type Pdf, pdfBytes } from "./document.ts";
export { drawPicture, type PicturePlacement } from "./draw-picture.ts";
export { installedTypefaces, measureText, parseTypefaces, type Typefaces, toDrawableText } from "./typefaces.ts";
