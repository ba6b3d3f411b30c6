// A router's set-up seen from above: stock, part, where the cutter goes, its way, the bridges, zero.
import { distance, line, type Outline, type Point, point, polygon, type Segment } from "@lamplane/geometry";
import { LETTERING, Marks } from "../picture/marks.ts";
import type { Picture } from "../picture/picture.ts";
import { framePicture } from "../picture/picture-frame.ts";
import { textWidth } from "../picture/text-metrics.ts";

export interface SetUpDrawing {
  readonly name: string;
  readonly title: string;
  /** Corners of the stock. */
  readonly stock: { readonly min: Point; readonly max: Point };
  readonly outlines: readonly Outline[];
  /** The cutters' ways through wood, each with its width. */
  readonly ways: readonly { readonly path: readonly Segment[]; readonly width: number }[];
  readonly tabs: readonly Point[];
  /** Names of what lies on a sheet, each in the middle of its place. */
  readonly names?: readonly {
    readonly text: string;
    readonly at: Point;
    readonly room: number;
    readonly isUpright: boolean;
  }[];
  /** Texts of the stock's sizes along x and y, and of the arrow along its grain. */
  readonly sizes?: { readonly width: string; readonly depth: string; readonly grain?: string };
  readonly keepOuts?: readonly Outline[];
}

const TAB = 2; // mm: half a cross
const AXIS = 12; // mm
const SWEPT = 0.12;
const KNOT = 0.3;
const SMALLEST_NAME = 1.6; // mm
const ARROW = 40; // mm
const BARB = 4; // mm

/** @param scale of the drawing; letters keep their height */
export function setUpPicture(drawing: SetUpDrawing, scale: number): Picture {
  const { name, title, stock, outlines, ways, tabs } = drawing;
  const marks = new Marks();
  const put = (p: Point): Point => point(p.x * scale, p.y * scale);
  const scaled = (path: readonly Segment[]): Segment[] => path.map((segment) => scaleSegment(segment, scale));
  for (const { path, width } of ways)
    for (const segment of path) marks.area(SWEPT, band(scaleSegment(segment, scale), (width / 2) * scale));
  const [min, max] = [put(stock.min), put(stock.max)];
  const corners = [min, point(max.x, min.y), max, point(min.x, max.y)];
  marks.outline(
    "hidden",
    corners.map((p, i) => line(p, corners[(i + 1) % 4]!)),
  );
  for (const outline of outlines) marks.outline("outline", scaled(outline));
  for (const { path } of ways) marks.line("thin", ...scaled(path));
  for (const tab of tabs.map(put))
    marks.line(
      "strong",
      line(point(tab.x - TAB, tab.y - TAB), point(tab.x + TAB, tab.y + TAB)),
      line(point(tab.x - TAB, tab.y + TAB), point(tab.x + TAB, tab.y - TAB)),
    );
  for (const knot of drawing.keepOuts ?? []) marks.area(KNOT, scaled(knot)).outline("thin", scaled(knot));
  drawZero(marks);
  drawNames(marks, drawing, scale);
  return framePicture({ name, title }, marks.all);
}

/** Names in their places, sizes along the stock's edges, an arrow along the grain. */
function drawNames(marks: Marks, { names = [], sizes, stock }: SetUpDrawing, scale: number): void {
  const put = (p: Point): Point => point(p.x * scale, p.y * scale);
  for (const { text, at, room, isUpright } of names) {
    const size = Math.max(SMALLEST_NAME, Math.min(LETTERING.usual, (0.85 * room * scale) / textWidth(text, 1, true)));
    const down = 0.35 * size;
    const middle = put(at);
    const base = isUpright ? point(middle.x + down, middle.y) : point(middle.x, middle.y - down);
    marks.label(text, base, { size, bold: true, anchor: "middle", turn: isUpright ? 90 : 0 });
  }
  if (!sizes) return;
  const [min, max] = [put(stock.min), put(stock.max)];
  const middle = point((min.x + max.x) / 2, (min.y + max.y) / 2);
  marks.text(sizes.width, point(middle.x, min.y - 6), { size: LETTERING.small, anchor: "middle" });
  marks.text(sizes.depth, point(min.x - 3, middle.y), { size: LETTERING.small, anchor: "middle", turn: 90 });
  if (sizes.grain === undefined) return;
  const [tail, tip] = [point(middle.x - ARROW / 2, max.y + 4), point(middle.x + ARROW / 2, max.y + 4)];
  const barb = (side: 1 | -1) => line(tip, point(tip.x - BARB, tip.y + (side * BARB) / 2));
  marks.line("strong", line(tail, tip), barb(1), barb(-1));
  marks.text(sizes.grain, point(tip.x + 2, tip.y - 1), { size: LETTERING.small });
}

function drawZero(marks: Marks): void {
  const zero = point(0, 0);
  marks.circle("strong", zero, 1.5).line("strong", line(zero, point(AXIS, 0)), line(zero, point(0, AXIS)));
  marks
    .label("x", point(AXIS + 1, -1), { size: LETTERING.small })
    .label("y", point(-1, AXIS + 1.5), { size: LETTERING.small });
  marks.label("0", point(-3.5, -3.5), { size: LETTERING.small });
}

function scaleSegment(segment: Segment, scale: number): Segment {
  const put = (p: Point): Point => point(p.x * scale, p.y * scale);
  const ends = { from: put(segment.from), to: put(segment.to) };
  return segment.kind === "line"
    ? { ...segment, ...ends }
    : { ...segment, ...ends, centre: put(segment.centre), radius: segment.radius * scale };
}

/** What a cutter covers beside a segment. Its round ends lie in the wood that the next segments cover. */
function band(segment: Segment, half: number): Segment[] {
  if (segment.kind === "line") {
    const length = distance(segment.from, segment.to) || 1;
    const [nx, ny] = [
      ((segment.from.y - segment.to.y) / length) * half,
      ((segment.to.x - segment.from.x) / length) * half,
    ];
    const beside = (p: Point, side: 1 | -1): Point => point(p.x + side * nx, p.y + side * ny);
    return polygon(
      beside(segment.from, 1),
      beside(segment.from, -1),
      beside(segment.to, -1),
      beside(segment.to, 1),
    ).slice();
  }
  const { centre, radius, sweep } = segment;
  const on = (p: Point, at: number): Point =>
    point(centre.x + ((p.x - centre.x) * at) / radius, centre.y + ((p.y - centre.y) * at) / radius);
  const ring = (at: number): Segment => ({
    ...segment,
    from: on(segment.from, at),
    to: on(segment.to, at),
    radius: at,
  });
  const [outer, inner] = [ring(radius + half), ring(Math.max(radius - half, 1e-3))];
  return [
    outer,
    line(outer.to, inner.to),
    { ...inner, from: inner.to, to: inner.from, sweep: -sweep } as Segment,
    line(inner.from, outer.from),
  ];
}
