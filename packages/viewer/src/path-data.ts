// Exact outlines → SVG path data, mm with y down; arcs stay arcs. Rounded to a thousandth: far below a pixel.
import { type Circle, circleOutline, type Outline, type Point, type Segment } from "@lamplane/geometry";

const formatNumber = (mm: number): string => String(Math.round(mm * 1000) / 1000);
const formatPoint = ({ x, y }: Point): string => `${formatNumber(x)} ${formatNumber(-y)}`;

/** A chain of segments; a new subpath wherever one does not begin at the end of the one before. */
export function pathOf(segments: readonly Segment[], closed = false): string {
  let last: Point | undefined;
  const parts = segments.map((s) => {
    const move = last && Math.hypot(last.x - s.from.x, last.y - s.from.y) < 1e-3 ? "" : `M${formatPoint(s.from)}`;
    last = s.to;
    if (s.kind === "line") return `${move}L${formatPoint(s.to)}`;
    const large = Math.abs(s.sweep) > 180 ? 1 : 0;
    return `${move}A${formatNumber(s.radius)} ${formatNumber(s.radius)} 0 ${large} ${s.sweep > 0 ? 0 : 1} ${formatPoint(s.to)}`;
  });
  return parts.join("") + (closed ? "Z" : "");
}

export const outlinePath = (outline: Outline): string => pathOf(outline, true);
export const circlePath = (circle: Circle): string => pathOf(circleOutline(circle), true);
export const linePath = (...points: Point[]): string => `M${points.map(formatPoint).join("L")}`;
