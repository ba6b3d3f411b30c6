// A page filled by its drawing: what stands over and under it is measured first, the drawing takes what is left.
import type { PictureRoom } from "../../traveller/views.ts";
import type { PageBlock } from "../blocks/block.ts";

/** Least height of a drawing, mm; where less is left, the page runs over. */
export const LEAST_PICTURE = 50;
/** mm over and under a drawing. */
const ROUND_PICTURE = 5;

const heightOf = (blocks: readonly PageBlock[]): number => blocks.reduce((sum, { height }) => sum + height, 0);

/** Height that blocks leave for a drawing, mm. */
const heightLeft = (blocks: readonly PageBlock[], { height }: PictureRoom): number =>
  height - heightOf(blocks) - ROUND_PICTURE;

export const hasRoom = (blocks: readonly PageBlock[], page: PictureRoom, wanted = LEAST_PICTURE): boolean =>
  heightLeft(blocks, page) >= wanted;

export function filledBlocks(
  above: readonly PageBlock[],
  picture: (room: PictureRoom) => PageBlock,
  below: readonly PageBlock[],
  page: PictureRoom,
  least = LEAST_PICTURE,
): PageBlock[] {
  const height = Math.max(least, heightLeft([...above, ...below], page));
  return [...above, picture({ width: page.width, height }), ...below];
}
