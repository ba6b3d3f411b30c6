// Pictures onto pages: each lies on a shelf, beside others where they fit; the tallest are laid first. Nothing is turned or scaled.
import { type Orientation, type Paper, pageRoom, type Size } from "./paper.ts";

/** Room between two pictures, mm: to cut them apart. */
const BETWEEN = 6;

/** A page being filled: what lies on it, and its shelves from the top of its room down. */
export interface FilledPage<T> {
  readonly orientation: Orientation;
  readonly placed: { readonly item: T; readonly left: number; readonly top: number }[];
  readonly shelves: { readonly top: number; readonly height: number; used: number }[];
}

export const emptyPage = <T>(orientation: Orientation): FilledPage<T> => ({ orientation, placed: [], shelves: [] });

/**
 * Puts every item on a page, opening pages as they are needed.
 * @param pages with room left over, which is used first. @throws our bug: an item larger than any page
 */
export function pack<T extends Size>(items: readonly T[], paper: Paper, pages: FilledPage<T>[]): void {
  const waiting = [...items].sort((a, b) => b.height - a.height || b.width - a.width);
  for (const page of pages) fill(page, waiting, paper);
  while (waiting.length > 0) {
    const trials = (["landscape", "portrait"] as const).map((orientation) => {
      const page = emptyPage<T>(orientation);
      const rest = [...waiting];
      fill(page, rest, paper);
      return { page, rest, covered: page.placed.reduce((sum, { item }) => sum + item.width * item.height, 0) };
    });
    const best = trials.reduce((a, b) => (b.covered > a.covered ? b : a));
    if (best.page.placed.length === 0) throw new Error("a picture fits no page");
    pages.push(best.page);
    waiting.splice(0, waiting.length, ...best.rest);
  }
}

/** Lays as many of the waiting items on a page as it takes, and takes them off the list. */
function fill<T extends Size>(page: FilledPage<T>, waiting: T[], paper: Paper): void {
  for (let i = 0; i < waiting.length; ) {
    if (lay(page, waiting[i]!, paper)) waiting.splice(i, 1);
    else i++;
  }
}

function lay<T extends Size>(page: FilledPage<T>, item: T, paper: Paper): boolean {
  const room = pageRoom(paper, page.orientation);
  const shelf = page.shelves.find(({ height, used }) => item.height <= height && used + item.width <= room.width);
  if (shelf) {
    page.placed.push({ item, left: room.left + shelf.used, top: room.top + shelf.top });
    shelf.used += item.width + BETWEEN;
    return true;
  }
  const last = page.shelves.at(-1);
  const top = last ? last.top + last.height + BETWEEN : 0;
  if (top + item.height > room.height || item.width > room.width) return false;
  page.shelves.push({ top, height: item.height, used: item.width + BETWEEN });
  page.placed.push({ item, left: room.left, top: room.top + top });
  return true;
}
