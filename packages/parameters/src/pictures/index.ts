// Door: pictures for the sheets, the plots and the page.
export type { LineKind, Picture, PictureMark, Shade, TextMark } from "./picture.ts";
