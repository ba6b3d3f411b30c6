// Door: pictures for the sheets, the plots and the page.

export { arrowHead, dimension, grainArrow, leader } from "./dimensions.ts";
export { drawingPicture } from "./drawing-picture.ts";
export { framed, shiftedMark, textCorners } from "./framed.ts";
export { layoutPictures } from "./layout/index.ts";
export { LETTERING, Marks } from "./marks.ts";
export type { LineKind, Picture, PictureMark, Shade, TextMark } from "./picture.ts";
export { wordsWidth } from "./words-width.ts";
