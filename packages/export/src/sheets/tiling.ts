// A picture too large for a page, cut into tiles that overlap; each tile is as large as the room, and the last ends with the picture.
import { type Orientation, type Paper, pageRoom, type Room, type Size } from "./paper.ts";

/** Least overlap of two tiles, mm: enough to glue and to find the register marks. */
export const OVERLAP = 12;
/** Strips above and beside a tile, mm, in which its edges are named. */
export const STRIP = 5;

export interface Tile extends Size {
  /** Row letter from the top and column number from the left: "A1". */
  readonly name: string;
  readonly row: number;
  readonly column: number;
  /** Left and upper edge in the picture, from its upper left corner. mm. */
  readonly left: number;
  readonly top: number;
}
export interface Tiling {
  readonly orientation: Orientation;
  readonly rows: number;
  readonly columns: number;
  readonly tiles: readonly Tile[];
  /** Where a tile's upper left corner lies on its page. */
  readonly room: Room;
}

/** Whether a picture fits a page whole. */
export const fitsPage = ({ width, height }: Size, room: Size): boolean => width <= room.width && height <= room.height;

/** The tiling with the fewest pages; on equal terms the wide page for a wide picture. */
export function tilingOf(picture: Size, paper: Paper): Tiling {
  const wide = picture.width >= picture.height;
  const orders: Orientation[] = wide ? ["landscape", "portrait"] : ["portrait", "landscape"];
  const [first, second] = orders.map((orientation) => tilingOn(picture, paper, orientation)) as [Tiling, Tiling];
  return second.tiles.length < first.tiles.length ? second : first;
}

function tilingOn(picture: Size, paper: Paper, orientation: Orientation): Tiling {
  const page = pageRoom(paper, orientation);
  const withTop = inset(page, 0, STRIP);
  const room = picture.height > withTop.height ? inset(page, STRIP, STRIP) : withTop;
  const across = spans(picture.width, room.width);
  const down = spans(picture.height, room.height);
  const tiles = down.flatMap((y, row) =>
    across.map((x, column) => ({
      name: `${String.fromCharCode(65 + row)}${column + 1}`,
      row,
      column,
      left: x.from,
      top: y.from,
      width: x.length,
      height: y.length,
    })),
  );
  return { orientation, rows: down.length, columns: across.length, tiles, room };
}

const inset = (room: Room, left: number, top: number): Room => ({
  left: room.left + left,
  top: room.top + top,
  width: room.width - left,
  height: room.height - top,
});

/** Equal spans that cover a length, each at most `room` long and none overlapping its neighbour by less than `OVERLAP`. */
export function spans(length: number, room: number): { from: number; length: number }[] {
  if (length <= room) return [{ from: 0, length }];
  const count = Math.ceil((length - OVERLAP) / (room - OVERLAP) - 1e-9);
  const each = (length + (count - 1) * OVERLAP) / count;
  return Array.from({ length: count }, (_, i) => ({ from: i * (each - OVERLAP), length: each }));
}
