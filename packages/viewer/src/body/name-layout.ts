// Where the parts' names stand: in two columns beside the body, in the order of their heights, so that none covers another.
import { keyInWords } from "../state/format.ts";

/** A part's name and the pixels of its middle. */
export interface NamedPart {
  readonly name: string;
  readonly x: number;
  readonly y: number;
}

export interface PlacedName extends NamedPart {
  /** Height of the name's middle, px from the top. */
  readonly at: number;
  readonly isRight: boolean;
}

const LINE = 22; // px: a name's own height
const PER_CHARACTER = 6.4; // px
const EDGE = 8; // px from the canvas's edge to a name, with a gap before its line

/** @param width @param height of the canvas, px */
export function placeNames(parts: readonly NamedPart[], width: number, height: number): PlacedName[] {
  const [left, right] = splitInTwo(parts, width);
  return [
    ...spreadNames(left, height).map((name) => ({ ...name, isRight: false })),
    ...spreadNames(right, height).map((name) => ({ ...name, isRight: true })),
  ];
}

/** SVG path of the line from a name to its part, with a dot at the part. */
export function nameLinePath({ name, x, y, at, isRight }: PlacedName, width: number): string {
  const end = isRight ? width - EDGE - name.length * PER_CHARACTER : EDGE + name.length * PER_CHARACTER;
  return `M${end} ${at}L${x} ${y}m-2 0a2 2 0 1 0 4 0a2 2 0 1 0 -4 0`;
}

/** A part's name as the trade says it: `cheek-left` is the left cheek. */
export const partLabel = (name: string): string =>
  keyInWords(name.replaceAll("-", " ")).replace(/^(\w+) (left|right)$/, "$2 $1");

/** Half of the names to the left, half to the right, by where their parts stand. */
function splitInTwo(all: readonly NamedPart[], width: number): [NamedPart[], NamedPart[]] {
  const byX = [...all].sort((a, b) => a.x - b.x);
  const half = byX.filter(({ x }) => x < width / 2).length;
  const left = Math.min(Math.max(half, Math.floor(all.length / 2) - 1), Math.ceil(all.length / 2) + 1);
  return [byX.slice(0, left), byX.slice(left)];
}

/** Names one under another near their parts, kept on the canvas. */
function spreadNames(side: readonly NamedPart[], height: number): (NamedPart & { at: number })[] {
  const sorted = [...side].sort((a, b) => a.y - b.y);
  let last = 0;
  const down = sorted.map((part) => {
    last = Math.max(last + LINE, Math.min(part.y, height));
    return { ...part, at: last };
  });
  const over = Math.max(0, last + LINE / 2 - height);
  return down.map((part, i) => ({ ...part, at: Math.max(LINE * (i + 0.7), part.at - over) }));
}
