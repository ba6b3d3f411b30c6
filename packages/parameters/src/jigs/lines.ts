// What a jig says on its face, and the shapes that several jigs share.

import { arc, FAR, line, type Outline, type Point, point, type Segment, splitAtIntersection } from "@lamplane/geometry";
import type { DrawingEntry } from "../drawings/drawing.ts";
import type { Design } from "../table/index.ts";
import { formatAngle } from "../units.ts";
import type { JigLabel } from "./jig.ts";

export const degreesText = (angle: number): string => formatAngle(angle, { decimals: 2, halves: "scaled" });

/** Longest lines that a name is broken into, in letters, and how many are kept where it must be shortened, best first. */
const BROKEN = [24, 16, 12] as const;
const KEPT = [16, 12, 10, 8, 6, 4] as const;
/** Letters kept of the end of a shortened name at the most: a number or a letter there tells two planes apart. */
const END = 4;

/**
 * A jig's own words and the plane's name, in ever fewer letters; the plane's name is shortened in its middle, the jig's
 * words never.
 */
export function nameLabel(words: readonly string[], design: Design, near: Point): JigLabel {
  return { near, choices: nameChoices(words, nameVariants(design)) };
}

function nameChoices(words: readonly string[], variants: readonly string[][]): readonly string[][] {
  const own = words.join(" ");
  const singly = words.flatMap((word) => word.split(" "));
  const apart = variants.flatMap((lines) => [
    [...words, ...lines],
    [own, ...lines],
    ...(lines.length === 1 ? [[`${own} ${lines[0]}`]] : []),
    [...singly, ...lines],
  ]);
  return [...apart, [...words], [own], singly];
}

/** A plane's name in lines, whole at first, then in ever fewer letters. */
function nameVariants({ name }: Design): string[][] {
  const pieces = name.split(/(?<=[-._])/);
  const longest = Math.max(...pieces.map((piece) => piece.length));
  const broken = BROKEN.filter((width) => width >= longest && width < name.length).map((width) =>
    wrapPieces(pieces, width),
  );
  const shortened = KEPT.filter((letters) => letters < name.length).map((letters) => shortenName(name, letters));
  return [[name], ...broken, ...shortened.map((short) => [short])];
}

/** A name in so many letters: its beginning, a dot, and its end. */
function shortenName(name: string, letters: number): string {
  const end = name.slice(-Math.min(END, Math.ceil(letters / 2)));
  return `${name.slice(0, letters - end.length - 1)}.${end}`;
}

/** Pieces of a name in as few lines of at most `width` letters as they go into. */
function wrapPieces(pieces: readonly string[], width: number): string[] {
  const lines: string[] = [];
  for (const piece of pieces) {
    const last = lines.at(-1);
    if (last === undefined || last.length + piece.length > width) lines.push(piece);
    else lines[lines.length - 1] = last + piece;
  }
  return lines;
}

/** Words that must fit as they are. */
export const plainLabel = (text: string, near: Point, within: number): JigLabel => ({
  choices: [[text]],
  near,
  within,
});

/** An upright rectangle. */
export const boxOutline = (left: number, low: number, right: number, high: number): Outline =>
  roundedBoxOutline(left, low, right, high, 0);

/** An upright rectangle with rounded corners, counter-clockwise. */
export function roundedBoxOutline(left: number, low: number, right: number, high: number, radius: number): Outline {
  const [l, b, r, t, k] = [left, low, right, high, radius];
  const sides: Segment[] = [
    line(point(l + k, b), point(r - k, b)),
    arc(point(r - k, b), point(r, b + k), point(r - k, b + k), 90),
    line(point(r, b + k), point(r, t - k)),
    arc(point(r, t - k), point(r - k, t), point(r - k, t - k), 90),
    line(point(r - k, t), point(l + k, t)),
    arc(point(l + k, t), point(l, t - k), point(l + k, t - k), 90),
    line(point(l, t - k), point(l, b + k)),
    arc(point(l, b + k), point(l + k, b), point(l + k, b + k), 90),
  ];
  return sides.filter((s) => Math.hypot(s.to.x - s.from.x, s.to.y - s.from.y) > 1e-9);
}

/** The part of a rising chain between two heights, ends exact. */
export function clipChainToHeights(chain: readonly Segment[], low: number, high: number): Segment[] {
  const level = (y: number) => [line(point(-FAR, y), point(FAR, y))];
  const fromLow = splitAtIntersection(chain, level(low))?.after ?? [...chain];
  return splitAtIntersection(fromLow, level(high))?.before ?? fromLow;
}

export const cutEntry = (outline: Outline): DrawingEntry => ({ kind: "outline", work: "CUT", outline });
export const noteEntry = (text: string, at: Point): DrawingEntry => ({
  kind: "note",
  work: "NOTE",
  at,
  text,
  height: 3,
});
export const markEntry = (segments: readonly Segment[]): DrawingEntry => ({ kind: "path", work: "MARK", segments });
