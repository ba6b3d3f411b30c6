// What joins tiles: the line at which one is trimmed and laid over its neighbour, register marks on it, and words beside it.
import { arc, line, type Point, point } from "@lamplane/geometry";
import { drawArrowHead } from "../picture/dimensions.ts";
import { Marks } from "../picture/marks.ts";
import { SHEET } from "../words/sheets.ts";
import { OVERLAP } from "./seams.ts";
import { type Tile, type Tiling, tileName } from "./tiling.ts";

/** Shares of a joint's length at which its register marks stand. */
const REGISTER_AT = [0.15, 0.5, 0.85];
const REGISTER = { radius: 2, arm: 3.5 };
const SIZE = 2.5;

/** A joint as it is seen on one tile. */
interface Joint {
  readonly upright: boolean;
  /** From the tile's left (or upper) edge, mm. */
  readonly at: number;
  readonly trimmed: boolean;
  readonly words: string;
}

function jointsOf({ columns, rows }: Tiling, { row, column, width, height }: Tile, label: string): Joint[] {
  const over = (r: number, c: number) => SHEET.trimHere({ tile: label, other: tileName({ row: r, column: c }) });
  const under = (r: number, c: number) => SHEET.edgeHere({ tile: label, other: tileName({ row: r, column: c }) });
  const joints: (Joint | false)[] = [
    column > 0 && { upright: true, at: 0, trimmed: true, words: over(row, column - 1) },
    column < columns - 1 && { upright: true, at: width - OVERLAP, trimmed: false, words: under(row, column + 1) },
    row > 0 && { upright: false, at: 0, trimmed: true, words: over(row - 1, column) },
    row < rows - 1 && { upright: false, at: height - OVERLAP, trimmed: false, words: under(row + 1, column) },
  ];
  return joints.filter((joint) => joint !== false);
}

/** Joints of a tile. @param label that stands on it once it is cut out @param corner its upper left on a page with y up, mm */
export function makeTileMarks(tiling: Tiling, tile: Tile, label: string, corner: Point): Marks {
  const marks = new Marks({ shift: corner });
  for (const joint of jointsOf(tiling, tile, label)) {
    const along = joint.upright ? tile.height : tile.width;
    const at = (share: number) => (joint.upright ? point(joint.at, -share * along) : point(share * along, -joint.at));
    marks.line(joint.trimmed ? "thin" : "hidden", line(at(0), at(1)));
    for (const share of REGISTER_AT) drawRegisterMark(marks, at(share), joint);
    drawJointLabel(marks, joint);
  }
  return marks;
}

/** A circle with a cross on the joint; on the tile that is trimmed there, the half that stays. */
function drawRegisterMark(marks: Marks, { x, y }: Point, { upright, trimmed }: Joint): void {
  const { radius, arm } = REGISTER;
  const centre = point(x, y);
  const back = trimmed ? 0 : arm; // how far it reaches over the joint, out of a trimmed tile
  if (!trimmed) marks.circle("thin", centre, radius);
  else if (upright) marks.line("thin", arc(point(x, y - radius), point(x, y + radius), centre, 180));
  else marks.line("thin", arc(point(x - radius, y), point(x + radius, y), centre, 180));
  marks.line("thin", line(point(x - (upright ? back : arm), y), point(x + arm, y)));
  marks.line("thin", line(point(x, y - arm), point(x, y + (upright ? arm : back))));
}

/** In the strip outside the tile, with an arrow to the line. */
function drawJointLabel(marks: Marks, { upright, at, trimmed, words }: Joint): void {
  if (upright) {
    drawArrowHead(marks, point(at, 0.4), -90);
    marks.text(words, point(at + (trimmed ? 1.2 : -1.2), 1), { size: SIZE, anchor: trimmed ? "start" : "end" });
  } else {
    drawArrowHead(marks, point(-0.4, -at), 0);
    const beside = point(-1, -at - (trimmed ? 1.2 : -1.2));
    marks.text(words, beside, { size: SIZE, turn: 90, anchor: trimmed ? "end" : "start" });
  }
}
