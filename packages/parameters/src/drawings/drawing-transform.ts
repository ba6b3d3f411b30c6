// A drawing moved or scaled as a whole.
import { type Point, point, type Segment, transformCircle, transformPoint, transformSegment } from "@lamplane/geometry";
import type { Drawing, DrawingEntry } from "./drawing.ts";
import { drawingBounds } from "./drawing-bounds.ts";

/** The same drawing with the lower left corner of its work at 0, 0, where a machine's zero is set. */
export function moveToOrigin(drawing: Drawing): Drawing {
  const { min } = drawingBounds(drawing);
  const shift = { shift: point(-min.x, -min.y) };
  const moveSegment = (s: Segment) => transformSegment(s, shift);
  const move = (entry: DrawingEntry): DrawingEntry => {
    if (entry.kind === "note") return { ...entry, at: transformPoint(entry.at, shift) };
    if (entry.kind === "circle") return { ...entry, circle: transformCircle(entry.circle, shift) };
    if (entry.kind === "path") return { ...entry, segments: entry.segments.map(moveSegment) };
    return { ...entry, outline: entry.outline.map(moveSegment) };
  };
  return { ...drawing, entries: drawing.entries.map(move) };
}

/** The same drawing in another unit: every length times `factor`. */
export function scaleDrawing(drawing: Drawing, factor: number): Drawing {
  const at = (p: Point) => point(p.x * factor, p.y * factor);
  const scaleSegment = (s: Segment): Segment =>
    s.kind === "line"
      ? { ...s, from: at(s.from), to: at(s.to) }
      : { ...s, from: at(s.from), to: at(s.to), centre: at(s.centre), radius: s.radius * factor };
  const scale = (entry: DrawingEntry): DrawingEntry => {
    if (entry.kind === "note") return { ...entry, at: at(entry.at), height: entry.height * factor };
    const depth = entry.depth === undefined ? {} : { depth: entry.depth * factor };
    if (entry.kind === "circle")
      return { ...entry, ...depth, circle: { centre: at(entry.circle.centre), radius: entry.circle.radius * factor } };
    if (entry.kind === "path") return { ...entry, ...depth, segments: entry.segments.map(scaleSegment) };
    return { ...entry, ...depth, outline: entry.outline.map(scaleSegment) };
  };
  const thickness = drawing.thickness === undefined ? {} : { thickness: drawing.thickness * factor };
  return { ...drawing, ...thickness, entries: drawing.entries.map(scale) };
}
