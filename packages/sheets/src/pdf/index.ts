// Door: PDF. Kept apart, so that only who makes a PDF loads pdfkit and the typefaces.
export { newPdf, type Pdf, pdfBytes } from "./document.ts";
export { drawPicture, type PicturePlace } from "./draw-picture.ts";
export { drawable, installedTypefaces, type Typefaces, textWidth, typefacesOf } from "./typefaces.ts";
