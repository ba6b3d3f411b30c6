// The jigs of a step: what each lies against and how it is used, beside its picture.
import type { JigInUse } from "../../traveller/step.ts";
import { type PageBlock, sideBySide, stackBlocks } from "../blocks/block.ts";
import { SMALL_TEXT_SIZE } from "../blocks/page-writer.ts";
import { pictureBlock } from "../blocks/picture.ts";
import { headingBlock, paragraphBlock } from "../blocks/text.ts";

/** A jig's picture takes this share of the width, and is as high as its words, or this high, mm. */
const PICTURE = { share: 0.3, least: 15 };
const APART = 4;

export const jigsBlock = (jigs: readonly JigInUse[], width: number): PageBlock =>
  stackBlocks(...jigs.map((jig) => jigBlock(jig, width)));

function jigBlock({ title, against, use, draw }: JigInUse, width: number): PageBlock {
  const words = (room: number): PageBlock =>
    stackBlocks(headingBlock(title, room, 3.3), paragraphBlock(`${against} ${use}`, room, { size: SMALL_TEXT_SIZE }));
  const beside = PICTURE.share * width;
  const height = Math.max(PICTURE.least, words(width - beside - APART).height - 3);
  const picture = draw({ width: beside, height });
  if (!picture) return words(width);
  return sideBySide(APART, words(width - picture.width - APART), pictureBlock(picture, picture.width, 0));
}
