// Pieces onto pages: each lies on a shelf, beside others where they fit; the tallest are laid first. Nothing is turned or scaled.
import { type Orientation, type Paper, printableArea, type Size } from "./paper.ts";

/** Room between two pieces, mm: to cut them apart. */
const BETWEEN = 5;

export interface FilledPage<T> {
  readonly orientation: Orientation;
  /** Where each piece's upper left corner lies from the page's, mm. */
  readonly placements: readonly { readonly item: T; readonly left: number; readonly top: number }[];
}

interface Shelf {
  readonly top: number;
  readonly height: number;
  used: number;
}

/**
 * Pages that hold every piece; each page is turned the way in which it takes more.
 * @throws our bug: a piece larger than any page
 */
export function packPages<T extends Size>(items: readonly T[], paper: Paper): FilledPage<T>[] {
  const pages: FilledPage<T>[] = [];
  let waiting = [...items].sort((a, b) => b.height - a.height);
  while (waiting.length > 0) {
    const [wide, tall] = [fillPage(waiting, paper, "landscape"), fillPage(waiting, paper, "portrait")];
    const best = area(tall) > area(wide) ? tall : wide;
    if (best.placements.length === 0) throw new Error("a picture fits no page");
    pages.push(best);
    const laid = new Set(best.placements.map(({ item }) => item));
    waiting = waiting.filter((item) => !laid.has(item));
  }
  return pages;
}

const area = <T extends Size>({ placements }: FilledPage<T>): number =>
  placements.reduce((sum, { item }) => sum + item.width * item.height, 0);

/** A page with as many of the waiting pieces as it takes, in their order. */
function fillPage<T extends Size>(waiting: readonly T[], paper: Paper, orientation: Orientation): FilledPage<T> {
  const room = printableArea(paper, orientation);
  const shelves: Shelf[] = [];
  const placed = waiting.flatMap((item) => {
    const shelf = findShelf(item, shelves, room);
    if (!shelf) return [];
    const at = { item, left: room.left + shelf.used, top: room.top + shelf.top };
    shelf.used += item.width + BETWEEN;
    return [at];
  });
  return { orientation, placements: placed };
}

/** The first shelf with room for a piece, or a new one below the others; none where the page is full. */
function findShelf(item: Size, shelves: Shelf[], room: Size): Shelf | undefined {
  const open = shelves.find(({ height, used }) => item.height <= height && used + item.width <= room.width);
  if (open) return open;
  const last = shelves.at(-1);
  const top = last ? last.top + last.height + BETWEEN : 0;
  if (top + item.height > room.height || item.width > room.width) return undefined;
  const shelf = { top, height: item.height, used: 0 };
  shelves.push(shelf);
  return shelf;
}
