// A small drawing of a step: the plane's own outlines scaled to the page, words and arrows at their own size, nothing over anything else.
import {
  arc,
  boundsOf,
  type Circle,
  circleOutline,
  cosDeg,
  line,
  type Point,
  point,
  polygon,
  type Segment,
  sinDeg,
} from "@lamplane/geometry";
import { drawArrowHead, drawDimension, fitsDimension } from "../picture/dimensions.ts";
import { LETTERING, Marks } from "../picture/marks.ts";
import type { LineKind, Shade } from "../picture/picture.ts";
import { marksBounds } from "../picture/picture-frame.ts";
import { textWidth } from "../picture/text-metrics.ts";
import { NOT_BEFORE_UNIT, wrapText } from "../picture/text-wrap.ts";

/** mm between an outline, or what is dimensioned already, and the next dimension line. */
const ROW = 5.6;
const COLUMN = 5;
/** mm from one line of words to the next. */
const LEADING = 4.4;
/** mm between a drawing and the words that name its parts, so that leaders lean but little. */
const ASIDE = 7;
/** Head of a stout arrow, mm. */
const HEAD = { length: 3.4, half: 1.3 };

type Side = "left" | "right";
/** Words with the place that they name, in the thing's own frame. */
export interface NamedPoint {
  readonly words: string;
  readonly point: Point;
}

/** Where the names of parts stand: beside the drawing, or under it, each by a letter. */
export type NamePlace = "beside" | "below";

/** A drawing under way; places are in the thing's own frame and true size, distances in mm are of the paper. */
export class Sketch {
  readonly marks = new Marks();
  readonly scale: number;
  readonly #names: NamePlace;
  /** Names that stand below, in the order of their letters. */
  readonly #key: string[] = [];

  constructor(scale: number, names: NamePlace = "beside") {
    this.scale = scale;
    this.#names = names;
  }

  at = (p: Point): Point => point(p.x * this.scale, p.y * this.scale);

  segment = (s: Segment): Segment => {
    const ends = { from: this.at(s.from), to: this.at(s.to) };
    if (s.kind === "line") return { ...s, ...ends };
    return { ...s, ...ends, centre: this.at(s.centre), radius: s.radius * this.scale };
  };

  line(kind: LineKind, ...segments: readonly Segment[]): this {
    this.marks.line(kind, ...segments.map(this.segment));
    return this;
  }

  outline(kind: LineKind, outline: readonly Segment[]): this {
    this.marks.outline(kind, outline.map(this.segment));
    return this;
  }

  area(shade: Shade, ...boundaries: (readonly Segment[])[]): this {
    this.marks.area(shade, ...boundaries.map((boundary) => boundary.map(this.segment)));
    return this;
  }

  circle(kind: LineKind, circle: Circle): this {
    return this.outline(kind, circleOutline(circle));
  }

  cross({ centre, radius }: Circle): this {
    this.marks.cross(this.at(centre), radius * this.scale);
    return this;
  }

  /** Words at a place, in the middle of it; `up` mm over it on the paper. Left out where they would lie over others. */
  words(text: string, place: Point, { up = 0, right = 0, bold = false } = {}): this {
    const size = LETTERING.small;
    const { y } = this.at(place);
    const x = this.at(place).x + right;
    const at = point(x, y + up - 0.36 * size);
    const half = textWidth(text, size, bold) / 2 + 0.8;
    const isFree = this.marks.all.every(
      (mark) =>
        mark.kind !== "text" || !boxesOverlap(wordBox(mark.text, mark.at, mark), { at: point(x, y + up), half }),
    );
    if (isFree) this.marks.label(text, at, { size, bold, anchor: "middle" });
    return this;
  }

  /** Words in a box of the thing, only where they fit into it. */
  wordsWithin(text: string, place: Point, room: number, options: { up?: number; bold?: boolean } = {}): this {
    const wide = textWidth(text, LETTERING.small, options.bold) + 1;
    return wide <= room * this.scale ? this.words(text, place, options) : this;
  }

  /** A level dimension below, or above, all that is drawn. */
  level(words: string, from: Point, to: Point, side: "below" | "above" = "below"): this {
    const { min, max } = marksBounds(this.marks.all);
    const at = side === "below" ? min.y - ROW : max.y + ROW - 1.5;
    const length = Math.abs(to.x - from.x) * this.scale;
    drawDimension(this.marks, this.#shortened(words, length), { from: this.at(from), to: this.at(to), level: at });
    return this;
  }

  /** An upright dimension left, or right, of all that is drawn. */
  upright(words: string, from: Point, to: Point, side: Side): this {
    const { min, max } = marksBounds(this.marks.all);
    const at = side === "left" ? min.x - COLUMN : max.x + COLUMN;
    const length = Math.abs(to.y - from.y) * this.scale;
    drawDimension(this.marks, this.#shortened(words, length), { from: this.at(from), to: this.at(to), upright: at });
    return this;
  }

  /** An angle at a corner between two directions (degrees, counter-clockwise), its words beyond the arc. `radius` mm of paper. */
  angle(words: string, corner: Point, from: number, to: number, radius: number): this {
    const c = this.at(corner);
    const on = (direction: number, r = radius) => point(c.x + r * cosDeg(direction), c.y + r * sinDeg(direction));
    this.marks.line("thin", arc(on(from), on(to), c));
    drawArrowHead(this.marks, on(to), to + 90);
    drawArrowHead(this.marks, on(from), from - 90);
    const middle = (from + to) / 2;
    const beyond = on(middle, radius + 1.5);
    const anchor = cosDeg(middle) > 0.3 ? "start" : cosDeg(middle) < -0.3 ? "end" : "middle";
    if (words !== "") this.marks.label(words, point(beyond.x, beyond.y - 0.9), { size: LETTERING.usual, anchor });
    return this;
  }

  /** A stout arrow of the paper's own size with its point at a place, or `off` mm off it; `toward` is where it points. */
  arrow(place: Point, toward: number, { length = 9, off = point(0, 0) } = {}): this {
    const at = this.at(place);
    const [c, s] = [cosDeg(toward), sinDeg(toward)];
    const on = (back: number, aside: number) =>
      point(at.x + off.x - back * c - aside * s, at.y + off.y - back * s + aside * c);
    this.marks.line("strong", line(on(length, 0), on(HEAD.length / 2, 0)));
    this.marks.area(1, polygon(on(0, 0), on(HEAD.length, HEAD.half), on(HEAD.length, -HEAD.half)));
    return this;
  }

  /** Words in a column beside all that is drawn, each with a line to what it names; from the top down in the places' order. */
  name(side: Side, named: readonly NamedPoint[]): this {
    if (named.length === 0) return this;
    const { min, max } = marksBounds(this.marks.all);
    const sorted = named
      .map(({ words, point: place }) => ({ words, at: this.at(place) }))
      .sort((a, b) => b.at.y - a.at.y)
      .map(({ words, at }) => ({
        lines: this.#names === "beside" ? wrapName(words, NAME_WIDTH) : [this.#letter(words)],
        at,
      }));
    const middles = spreadHeights(sorted.map(({ lines, at }) => ({ wanted: at.y, height: nameHeight(lines) })));
    const aside = this.#names === "beside" ? ASIDE : LETTER_ASIDE;
    const x = side === "left" ? min.x - aside : max.x + aside;
    sorted.forEach(({ lines, at }, i) => {
      const y = middles[i]!;
      this.marks.line("thin", line(point(x, y), at));
      this.marks.area(1, circleOutline({ centre: at, radius: 0.45 }));
      const anchor = side === "left" ? "end" : "start";
      lines.forEach((words, k) => {
        const up = ((lines.length - 1) / 2 - k) * NAME_LEADING - 0.36 * LETTERING.small;
        this.marks.text(words, point(x + (side === "left" ? -0.8 : 0.8), y + up), { size: LETTERING.small, anchor });
      });
    });
    return this;
  }

  /** The names that stand below, each behind its letter, under all that is drawn. @param width mm that they may take */
  nameBelow(width: number): this {
    const { min } = marksBounds(this.marks.all);
    let y = min.y - LEADING;
    this.#key.forEach((words, i) => {
      for (const [k, row] of wrapName(words, width - BEHIND_LETTER).entries()) {
        if (k === 0) this.marks.text(letterOf(i), point(min.x, y), { size: LETTERING.small, bold: true });
        this.marks.text(row, point(min.x + BEHIND_LETTER, y), { size: LETTERING.small });
        y -= NAME_LEADING;
      }
    });
    return this;
  }

  /** Words of a dimension; a letter for what would stand out far beside it, where the names stand below. */
  #shortened(words: string, length: number): string {
    if (this.#names === "beside" || fitsDimension(words, length)) return words;
    return textWidth(words, LETTERING.usual) > SHORT ? this.#letter(words) : words;
  }

  /** The letter by which a name stands below; words that stand there already keep theirs. */
  #letter(words: string): string {
    if (!this.#key.includes(words)) this.#key.push(words);
    return letterOf(this.#key.indexOf(words));
  }
}

const letterOf = (i: number): string => String.fromCharCode("a".charCodeAt(0) + i);

/** A name beside a drawing takes no more of its width than this, mm, where its words allow. */
const NAME_WIDTH = 27;
/** mm from a letter to the name behind it. */
const BEHIND_LETTER = 3.4;
/** Words of a dimension no wider than this, mm, may stand out beside it. */
const SHORT = 10;
/** mm between a drawing and the letters beside it. */
const LETTER_ASIDE = 4;
/** mm from one line of a name to the next, and from one name to the next. */
const NAME_LEADING = 3.5;

const wrapName = (words: string, width: number): string[] =>
  wrapText(words, width, { measure: textWidth, size: LETTERING.small, breakAt: NOT_BEFORE_UNIT });
const nameHeight = (lines: readonly string[]): number => (lines.length - 1) * NAME_LEADING + LEADING;

/** Middles of names that stand no nearer to one another than their heights ask, as near to those wanted as that allows. Falling. */
function spreadHeights(names: readonly { readonly wanted: number; readonly height: number }[]): number[] {
  const down: number[] = [];
  names.forEach(({ wanted, height }, i) => {
    const above = names[i - 1];
    down.push(above ? Math.min(wanted, down[i - 1]! - (above.height + height) / 2) : wanted);
  });
  const mean = (values: readonly number[]) => values.reduce((sum, y) => sum + y, 0) / values.length;
  const shift = mean(names.map(({ wanted }) => wanted)) - mean(down);
  return down.map((y) => y + shift);
}

const wordBox = (text: string, at: Point, { size, anchor = "start", bold = false, turn = 0 }: TextLike) => {
  const width = textWidth(text, size, bold);
  const left = { start: 0, middle: -width / 2, end: -width }[anchor];
  const corners = [left, left + width].flatMap((x) => [point(x, -0.25 * size), point(x, 0.8 * size)]);
  const [c, s] = [cosDeg(turn), sinDeg(turn)];
  return boundsOf(corners.map((p) => point(at.x + p.x * c - p.y * s, at.y + p.x * s + p.y * c)));
};
interface TextLike {
  readonly size: number;
  readonly anchor?: "start" | "middle" | "end";
  readonly bold?: boolean;
  readonly turn?: number;
}

const boxesOverlap = (box: { min: Point; max: Point }, { at, half }: { at: Point; half: number }): boolean =>
  box.min.x < at.x + half && box.max.x > at.x - half && box.min.y < at.y + 2 && box.max.y > at.y - 2;
