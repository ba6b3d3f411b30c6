// A drawing moved or scaled as a whole.
import {
  type Circle,
  point,
  type Segment,
  type Transform2,
  transformCircle,
  transformPoint,
  transformSegment,
} from "@lamplane/geometry";
import type { Drawing, DrawingEntry } from "./drawing.ts";
import { drawingBounds } from "./drawing-bounds.ts";

/** What becomes of each thing in a drawing. */
interface DrawingMap {
  at(p: Circle["centre"]): Circle["centre"];
  segment(s: Segment): Segment;
  circle(circle: Circle): Circle;
  length(mm: number): number;
}

/** The same drawing with the lower left corner of its work at 0, 0, where a machine's zero is set. */
export function moveToOrigin(drawing: Drawing): Drawing {
  const { min } = drawingBounds(drawing);
  return moveDrawing(drawing, { shift: point(-min.x, -min.y) });
}

/** The same drawing turned and shifted. Words stay level. */
export const moveDrawing = (drawing: Drawing, transform: Pick<Transform2, "turn" | "shift">): Drawing =>
  mapDrawing(drawing, {
    at: (p) => transformPoint(p, transform),
    segment: (s) => transformSegment(s, transform),
    circle: (circle) => transformCircle(circle, transform),
    length: (mm) => mm,
  });

/** The same drawing in another unit: every length times `factor`. */
export function scaleDrawing(drawing: Drawing, factor: number): Drawing {
  const length = (mm: number) => mm * factor;
  const at = (p: Circle["centre"]) => point(length(p.x), length(p.y));
  return mapDrawing(drawing, {
    at,
    segment: (s) =>
      s.kind === "line"
        ? { ...s, from: at(s.from), to: at(s.to) }
        : { ...s, from: at(s.from), to: at(s.to), centre: at(s.centre), radius: length(s.radius) },
    circle: ({ centre, radius }) => ({ centre: at(centre), radius: length(radius) }),
    length,
  });
}

function mapDrawing(drawing: Drawing, map: DrawingMap): Drawing {
  const mapEntry = (entry: DrawingEntry): DrawingEntry => {
    if (entry.kind === "note") return { ...entry, at: map.at(entry.at), height: map.length(entry.height) };
    const depth = entry.depth === undefined ? {} : { depth: map.length(entry.depth) };
    if (entry.kind === "circle") return { ...entry, ...depth, circle: map.circle(entry.circle) };
    if (entry.kind === "path") return { ...entry, ...depth, segments: entry.segments.map(map.segment) };
    return { ...entry, ...depth, outline: entry.outline.map(map.segment) };
  };
  const thickness = drawing.thickness === undefined ? {} : { thickness: map.length(drawing.thickness) };
  return { ...drawing, ...thickness, entries: drawing.entries.map(mapEntry) };
}
