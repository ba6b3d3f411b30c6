// A picture cut to what is drawn: every mark, words too, lies inside its frame.
import {
  atan2Deg,
  boundsOf,
  type Point,
  point,
  pointAlong,
  type Segment,
  transformPoint,
  transformSegment,
} from "@lamplane/geometry";
import type { Picture, PictureMark, TextMark } from "./picture.ts";
import { textWidth } from "./text-metrics.ts";

/** Room left round everything, mm: half a wide line and a little. */
const ROUND = 0.5;

/** The picture of marks laid anywhere: shifted so that its lower left corner is the origin, and as large as they need. */
export function framePicture(
  about: Pick<Picture, "name" | "title" | "description">,
  marks: readonly PictureMark[],
): Picture {
  const { min, max } = marksBounds(marks);
  const shift = point(ROUND - min.x, ROUND - min.y);
  return {
    ...about,
    width: max.x - min.x + 2 * ROUND,
    height: max.y - min.y + 2 * ROUND,
    marks: marks.map((mark) => translateMark(mark, shift)),
  };
}

interface Bounds {
  readonly min: Point;
  readonly max: Point;
}

/** The box that holds every mark, letters too. */
export function marksBounds(marks: readonly PictureMark[]): Bounds {
  let [left, low, right, high] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const mark of marks) {
    const { min, max } = markBounds(mark);
    [left, low] = [Math.min(left, min.x), Math.min(low, min.y)];
    [right, high] = [Math.max(right, max.x), Math.max(high, max.y)];
  }
  return { min: point(left, low), max: point(right, high) };
}

/** Boxes found before: a drawing under way asks for its bounds after every few marks. */
const FOUND = new WeakMap<PictureMark, Bounds>();

function markBounds(mark: PictureMark): Bounds {
  const known = FOUND.get(mark);
  if (known) return known;
  const bounds = boundsOf(markExtremes(mark));
  FOUND.set(mark, bounds);
  return bounds;
}

/** A mark moved by so much. */
export function translateMark(mark: PictureMark, shift: Point): PictureMark {
  const moved = (segments: readonly Segment[]) => segments.map((s) => transformSegment(s, { shift }));
  if (mark.kind === "text") return { ...mark, at: transformPoint(mark.at, { shift }) };
  if (mark.kind === "area") return { ...mark, boundaries: mark.boundaries.map(moved) };
  return { ...mark, segments: moved(mark.segments) };
}

/** Points whose box holds a mark. */
function markExtremes(mark: PictureMark): Point[] {
  if (mark.kind === "text") return textCorners(mark);
  return (mark.kind === "area" ? mark.boundaries.flat() : mark.segments).flatMap(segmentExtremes);
}

/** Corners of the box that a text's letters lie in. */
export function textCorners({ text, at, size, anchor = "start", turn = 0, bold = false }: TextMark): Point[] {
  const width = textWidth(text, size, bold);
  const left = { start: 0, middle: -width / 2, end: -width }[anchor];
  const corners = [left, left + width].flatMap((x) => [point(x, -0.25 * size), point(x, 0.8 * size)]);
  return corners.map((corner) => transformPoint(corner, { turn, shift: at }));
}

/** Ends of a segment, and of an arc where it runs level or upright. */
function segmentExtremes(segment: Segment): Point[] {
  const ends = [segment.from, segment.to];
  if (segment.kind === "line") return ends;
  const { centre, from, sweep } = segment;
  const start = atan2Deg(from.y - centre.y, from.x - centre.x);
  const passed = [0, 90, 180, 270].map((quarter) => {
    const turn = sweep > 0 ? quarter - start : start - quarter;
    return (((turn % 360) + 360) % 360) / Math.abs(sweep);
  });
  return [...ends, ...passed.filter((share) => share <= 1).map((share) => pointAlong(segment, share))];
}
