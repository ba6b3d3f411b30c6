// What joins tiles: the line at which one is trimmed and laid over its neighbour, register marks on it, and words beside it.
import { line, point } from "@lamplane/parameters/elevation";
import { arrowHead, Marks } from "@lamplane/parameters/pictures";
import type { Size } from "./paper.ts";
import { OVERLAP, type Tile, type Tiling } from "./tiling.ts";

/** Shares of a joint's length at which its register marks stand. */
const REGISTER_AT = [0.15, 0.5, 0.85];
const REGISTER = { radius: 2, arm: 3.5 };
const SIZE = 2.5;

/** A joint as it is seen on one tile's page. Positions in mm from the tile's upper left corner. */
interface Joint {
  readonly upright: boolean;
  /** Across the joint, from the tile's left (or upper) edge. */
  readonly at: number;
  readonly words: string;
  readonly trimmed: boolean;
}

function jointsOf({ columns, rows }: Tiling, { row, column, width, height }: Tile): Joint[] {
  const name = (r: number, c: number) => `${String.fromCharCode(65 + r)}${c + 1}`;
  const joints: (Joint | false)[] = [
    column > 0 && { upright: true, at: 0, trimmed: true, words: `trim here, lay over ${name(row, column - 1)}` },
    column < columns - 1 && {
      upright: true,
      at: width - OVERLAP,
      trimmed: false,
      words: `edge of ${name(row, column + 1)} lies here`,
    },
    row > 0 && { upright: false, at: 0, trimmed: true, words: `trim here, lay over ${name(row - 1, column)}` },
    row < rows - 1 && {
      upright: false,
      at: height - OVERLAP,
      trimmed: false,
      words: `edge of ${name(row + 1, column)} lies here`,
    },
  ];
  return joints.filter((joint) => joint !== false);
}

/** Joints of a tile on a page `page`, the tile's upper left corner at (`left`, `top`) from the page's. */
export function tileMarks(tiling: Tiling, tile: Tile, page: Size): Marks {
  const { left, top } = tiling.room;
  const marks = new Marks({ shift: point(left, page.height - top) });
  for (const joint of jointsOf(tiling, tile)) {
    const along = joint.upright ? tile.height : tile.width;
    const at = (across: number, share: number) =>
      joint.upright ? point(across, -share * along) : point(share * along, -across);
    marks.line(joint.trimmed ? "thin" : "hidden", line(at(joint.at, 0), at(joint.at, 1)));
    for (const share of REGISTER_AT) register(marks, at(joint.at, share));
    words(marks, joint);
  }
  return marks;
}

function register(marks: Marks, centre: { x: number; y: number }): void {
  const { radius, arm } = REGISTER;
  marks.circle("thin", centre, radius);
  marks.line("thin", line(point(centre.x - arm, centre.y), point(centre.x + arm, centre.y)));
  marks.line("thin", line(point(centre.x, centre.y - arm), point(centre.x, centre.y + arm)));
}

/** In the strip outside the tile, with an arrow to the line. */
function words(marks: Marks, { upright, at, trimmed, words: text }: Joint): void {
  if (upright) {
    arrowHead(marks, point(at, 0.4), -90);
    marks.text(text, point(at + (trimmed ? 1.2 : -1.2), 1), { size: SIZE, anchor: trimmed ? "start" : "end" });
    return;
  }
  arrowHead(marks, point(-0.4, -at), 0);
  marks.text(text, point(-1, -at - (trimmed ? 1.2 : -1.2)), {
    size: SIZE,
    turn: 90,
    anchor: trimmed ? "end" : "start",
  });
}
