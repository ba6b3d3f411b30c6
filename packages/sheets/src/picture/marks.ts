// Building a picture: lines, areas and words put down in a drawing's own frame, which may be mirrored and shifted onto the picture.
import {
  circleOutline,
  line,
  type Point,
  point,
  polygon,
  type Segment,
  type Transform2,
  transformPoint,
  transformSegment,
} from "@lamplane/geometry";
import type { LineKind, PictureMark, Shade, TextMark } from "./picture.ts";
import { textWidth } from "./text-metrics.ts";

/** Heights of lettering, mm. @see ISO 3098-1:2015: capitals of 2.5 mm for what is read on paper in the hand (from memory) */
export const LETTERING = { small: 2.7, usual: 3.2, heading: 4.5 } as const;

/** Greys of filled areas on the layout: what the saw turns to dust, and what falls out between the cuts. */
export const SHADES = { kerf: 0.45, waste: 0.1 } as const;

type TextOptions = Omit<TextMark, "kind" | "text" | "at">;

/** Marks being put down; `place` carries the drawing's frame to the picture's. Words are never mirrored, only moved. */
export class Marks {
  readonly all: PictureMark[] = [];
  readonly transform: Transform2;

  constructor(transform: Transform2 = {}) {
    this.transform = transform;
  }

  line(kind: LineKind, ...segments: Segment[]): this {
    this.all.push({ kind: "line", line: kind, segments: segments.map((s) => transformSegment(s, this.transform)) });
    return this;
  }

  outline(kind: LineKind, outline: readonly Segment[]): this {
    const segments = outline.map((s) => transformSegment(s, this.transform));
    this.all.push({ kind: "line", line: kind, segments, closed: true });
    return this;
  }

  area(shade: Shade, ...boundaries: (readonly Segment[])[]): this {
    const placed = boundaries.map((segments) => segments.map((s) => transformSegment(s, this.transform)));
    this.all.push({ kind: "area", shade, boundaries: placed });
    return this;
  }

  /** Words at a place of the drawing; "start" means toward its own +x, and `turn` is in its own frame. */
  text(words: string, at: Point, { anchor = "start", turn = 0, ...rest }: Partial<TextOptions> = {}): this {
    const mirrored = this.transform.mirrored === true;
    const flipped = { start: "end", middle: "middle", end: "start" } as const;
    const mark: TextMark = {
      kind: "text",
      text: words,
      at: transformPoint(at, this.transform),
      size: LETTERING.usual,
      anchor: mirrored ? flipped[anchor] : anchor,
      turn: (mirrored ? -turn : turn) + (this.transform.turn ?? 0),
      ...rest,
    };
    this.all.push(mark);
    return this;
  }

  /** The same on a patch of white, so that lines beneath do not run through it. */
  label(words: string, at: Point, options: Partial<TextOptions> = {}): this {
    const before = this.all.length;
    this.text(words, at, options);
    const mark = this.all[before] as TextMark;
    this.all.splice(before, 0, { kind: "area", shade: 0, boundaries: [backgroundPatch(mark)] });
    return this;
  }

  circle(kind: LineKind, centre: Point, radius: number): this {
    return this.outline(kind, circleOutline({ centre, radius }));
  }

  /** A circle's centre lines, a little longer than the circle. */
  cross(centre: Point, radius: number): this {
    const reach = radius + 2.5;
    return this.line("axis", line(point(centre.x - reach, centre.y), point(centre.x + reach, centre.y))).line(
      "axis",
      line(point(centre.x, centre.y - reach), point(centre.x, centre.y + reach)),
    );
  }
}

/** White patch behind a text, a little larger. */
function backgroundPatch({ text, at, size, anchor = "start", turn = 0, bold = false }: TextMark): Segment[] {
  const width = textWidth(text, size, bold);
  const left = { start: 0, middle: -width / 2, end: -width }[anchor];
  const [low, high, over] = [-0.2 * size, 0.82 * size, 0.25 * size];
  const box = polygon(
    point(left - over, low),
    point(left + width + over, low),
    point(left + width + over, high),
    point(left - over, high),
  );
  return box.map((s) => transformSegment(s, { turn, shift: at }));
}
