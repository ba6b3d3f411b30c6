// Letters as rings round the strokes of a single-line alphabet, each as wide as a nozzle can sink; made once and kept.
import modeling from "@jscad/modeling";
import { cosDeg, type Point, point, polygonArea, sinDeg } from "@lamplane/geometry";
import { type Stroke, strokeRings } from "./level-lines.ts";

const { vectorChar } = modeling.text;

/** Heights of capital letters, best first, mm: under 6 a stroke of 0.9 fills the letter. */
export const LETTER_HEIGHTS = [8, 7, 6] as const;
/** Width of a stroke, mm: two lines of a 0.4 nozzle and some. */
export const STROKE = 0.9;
/** Smallest island left standing in a letter, mm²: a lesser one breaks off. */
const LEAST_COUNTER = 0.2;
/** The library's capital letters are 1.5 times as high as the height asked for. */
const CAPITAL = 1.5;

/** Letters as narrow as this beside the library's: a name must go on a jig the size of a hand. */
const NARROW = 0.74;
/** Between two letters' outermost places, mm: what a nozzle can leave standing. */
const BETWEEN_LETTERS = 0.7;
/** Width of a space, as a share of the letters' height. */
const SPACE = 0.45;

/** A letter with its outermost left at x = 0, on the baseline. */
export interface Glyph {
  /** Counter-clockwise boundaries, each with the clockwise rings of what stays standing within it. */
  readonly pieces: readonly { readonly boundary: readonly Point[]; readonly counters: readonly (readonly Point[])[] }[];
  /** Middle lines of its strokes, for a tool that follows them. */
  readonly strokes: readonly Stroke[];
}

/** A letter elsewhere. */
export const moveGlyph = ({ pieces, strokes }: Glyph, move: (p: Point) => Point): Glyph => ({
  pieces: pieces.map(({ boundary, counters }) => ({
    boundary: boundary.map(move),
    counters: counters.map((ring) => ring.map(move)),
  })),
  strokes: strokes.map((stroke) => stroke.map(move)),
});

const glyphCache = new Map<string, Glyph>();

/** A capital letter, digit or sign of a height, mm. */
export function cachedGlyph(letter: string, height: number): Glyph {
  const key = `${letter} ${height}`;
  const found = glyphCache.get(key);
  if (found) return found;
  const made = makeGlyph(letter, height);
  glyphCache.set(key, made);
  return made;
}

const advanceCache = new Map<string, number>();

/** How far the letter after this one stands from it, mm: their inks never overlap. */
export function letterAdvance(letter: string, height: number): number {
  const key = `${letter} ${height}`;
  const advance = advanceCache.get(key) ?? strokeAdvance(strokesOf(letter, height), height);
  advanceCache.set(key, advance);
  return advance;
}

function strokeAdvance(strokes: readonly Stroke[], height: number): number {
  return strokes.length === 0 ? SPACE * height : STROKE + Math.max(...strokes.flat().map((p) => p.x)) + BETWEEN_LETTERS;
}

function makeGlyph(letter: string, height: number): Glyph {
  const strokes = strokesOf(letter, height).map((stroke) => stroke.map((p) => point(p.x + STROKE / 2, p.y)));
  return { pieces: strokePieces(strokes), strokes };
}

/** Middle lines of a letter's strokes, the leftmost at x = 0. */
function strokesOf(letter: string, height: number): Stroke[] {
  const strokes = letter === "°" ? degreeSign(height) : letterStrokes(letter, height);
  const left = Math.min(...strokes.flat().map((p) => p.x));
  return strokes.map((stroke) => stroke.map((p) => point(p.x - left, p.y)));
}

function letterStrokes(letter: string, height: number): Stroke[] {
  const { segments } = vectorChar({ height: height / CAPITAL, input: letter } as never);
  return (segments as unknown as (readonly [number, number])[][]).map((stroke) =>
    stroke.map(([x, y]) => point(x * NARROW, y)),
  );
}

/** The library has no degree sign: a ring at the letters' upper edge. */
function degreeSign(height: number): Stroke[] {
  const [radius, sides] = [Math.max(0.14 * height, STROKE), 16];
  return [
    Array.from({ length: sides + 1 }, (_, i) => {
      const turn = (360 * (i % sides)) / sides;
      return point(height * 0.28 + radius * cosDeg(turn), height - radius + radius * sinDeg(turn));
    }),
  ];
}

function strokePieces(strokes: readonly Stroke[]): Glyph["pieces"] {
  if (strokes.length === 0) return [];
  const rings = strokeRings(strokes, STROKE / 2);
  const boundaries = rings.filter((ring) => polygonArea(ring) > 0);
  const counters = rings.filter((ring) => polygonArea(ring) < -LEAST_COUNTER);
  return boundaries.map((boundary) => ({
    boundary,
    counters: counters.filter((ring) => isInsideRing(ring[0]!, boundary)),
  }));
}

/** Whether a point lies within a ring, by how often a level ray from it meets the ring. */
export function isInsideRing({ x, y }: Point, ring: readonly Point[]): boolean {
  let within = false;
  ring.forEach((a, i) => {
    const b = ring[(i + 1) % ring.length]!;
    if (a.y > y !== b.y > y && x < a.x + ((y - a.y) * (b.x - a.x)) / (b.y - a.y)) within = !within;
  });
  return within;
}
