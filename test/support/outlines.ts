// Outlines read back from other formats as dense chains of points, and how far one lies from another.
import * as dxfParser from "dxf-parser";
import { svgPathProperties } from "svg-path-properties";

export interface PathPoint {
  readonly x: number;
  readonly y: number;
}

const SPACING = 1; // mm; on a radius of 100 mm a chord so long lies 0.00125 mm off its arc

/** Points along an SVG path with all of its corners, in the path's own unit. */
export function samplePath(d: string): PathPoint[] {
  const parts = new svgPathProperties(d).getParts();
  const points = parts.flatMap((part) => {
    const count = Math.ceil(part.length / SPACING);
    return Array.from({ length: count }, (_, i) => {
      const { x, y } = part.getPointAtLength((part.length * i) / count);
      return { x, y };
    });
  });
  const { x, y } = parts.at(-1)!.end;
  return [...points, { x, y }];
}

const Parser = dxfParser.default as unknown as typeof dxfParser.DxfParser;
interface Vertex extends PathPoint {
  bulge?: number;
}

/** Corner points, and points along the bulges, of the first polyline on a layer of a DXF. */
export function sampleDxf(text: string, layer: string): PathPoint[] {
  const entities = new Parser().parseSync(text)!.entities as unknown as {
    type: string;
    layer: string;
    vertices: Vertex[];
  }[];
  const { vertices } = entities.find((entity) => entity.type === "LWPOLYLINE" && entity.layer === layer)!;
  const points = vertices.flatMap((from, i) => sampleBulge(from, vertices[(i + 1) % vertices.length]!));
  return [...points, points[0]!];
}

/** @see Autodesk, DXF reference, LWPOLYLINE: bulge = tan(sweep / 4) */
function sampleBulge(from: Vertex, to: Vertex): PathPoint[] {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const parts = Math.max(1, Math.ceil(Math.hypot(dx, dy) / SPACING));
  const sweep = 4 * Math.atan(from.bulge ?? 0);
  return Array.from({ length: parts }, (_, i) => {
    const share = i / parts;
    if (Math.abs(sweep) < 1e-9) return { x: from.x + dx * share, y: from.y + dy * share };
    const reach = 1 / Math.tan(sweep / 2) / 2; // from the chord's middle to the centre, in chords, to its left
    const centre = { x: from.x + dx / 2 - dy * reach, y: from.y + dy / 2 + dx * reach };
    const [c, s] = [Math.cos(sweep * share), Math.sin(sweep * share)];
    const [rx, ry] = [from.x - centre.x, from.y - centre.y];
    return { x: centre.x + rx * c - ry * s, y: centre.y + rx * s + ry * c };
  });
}

/** Furthest that any of some points lies from a chain, mm. */
export const greatestDistance = (points: readonly PathPoint[], chain: readonly PathPoint[]): number =>
  Math.max(...points.map((p) => Math.min(...chain.slice(1).map((to, i) => fromChord(p, chain[i]!, to)))));

function fromChord(p: PathPoint, a: PathPoint, b: PathPoint): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const square = dx * dx + dy * dy;
  const share = square === 0 ? 0 : Math.max(0, Math.min(1, ((p.x - a.x) * dx + (p.y - a.y) * dy) / square));
  return Math.hypot(p.x - a.x - dx * share, p.y - a.y - dy * share);
}
