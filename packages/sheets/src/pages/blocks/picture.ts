// A picture as a block.
import { drawPicture } from "../../pdf/draw-picture.ts";
import type { Picture } from "../../picture/picture.ts";
import type { PageBlock } from "./block.ts";

/** mm under a picture. */
const USUAL_GAP = 1.5;

/** A picture in the middle of its column, true to its scale; one that is too wide is drawn as wide as the column. */
export function pictureBlock(picture: Picture, width: number, under = USUAL_GAP): PageBlock {
  const scale = Math.min(1, width / picture.width);
  return {
    width,
    height: picture.height * scale + 2 + under,
    draw: ({ pdf }, { left, top }) =>
      drawPicture(pdf, picture, { left: left + (width - picture.width * scale) / 2, top: top + 2, scale }),
  };
}
