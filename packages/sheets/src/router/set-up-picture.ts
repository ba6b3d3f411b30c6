// A router's set-up seen from above: stock, part, where the cutter goes, its way, the bridges, zero.
import { line, type Outline, type Point, point, type Segment } from "@lamplane/geometry";
import { LETTERING, Marks } from "../picture/marks.ts";
import type { Picture } from "../picture/picture.ts";
import { framePicture } from "../picture/picture-frame.ts";

export interface SetUpDrawing {
  readonly name: string;
  readonly title: string;
  /** Corners of the stock. */
  readonly stock: { readonly min: Point; readonly max: Point };
  readonly outlines: readonly Outline[];
  /** The cutters' ways through wood, each with its width. */
  readonly ways: readonly { readonly path: readonly Segment[]; readonly width: number }[];
  readonly tabs: readonly Point[];
}

const TAB = 2; // mm: half a cross
const AXIS = 12; // mm
const SWEPT = 0.12;

/** @param scale of the drawing; letters keep their height */
export function setUpPicture({ name, title, stock, outlines, ways, tabs }: SetUpDrawing, scale: number): Picture {
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
  drawZero(marks);
  return framePicture({ name, title }, marks.all);
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

/** What a round cutter covers along a segment; its chord stands for an arc, in parts of a few degrees. */
function band(segment: Segment, half: number): Segment[] {
  const chord = segment.kind === "line" ? segment : line(segment.from, segment.to);
  const [dx, dy] = [chord.to.x - chord.from.x, chord.to.y - chord.from.y];
  const length = Math.hypot(dx, dy) || 1;
  const [nx, ny] = [(-dy / length) * half, (dx / length) * half];
  const arcOf = (from: Point, to: Point, centre: Point): Segment => ({
    kind: "arc",
    from,
    to,
    centre,
    radius: half,
    sweep: 180,
  });
  const [a, b] = [point(chord.from.x - nx, chord.from.y - ny), point(chord.to.x - nx, chord.to.y - ny)];
  const [c, d] = [point(chord.to.x + nx, chord.to.y + ny), point(chord.from.x + nx, chord.from.y + ny)];
  return [line(a, b), arcOf(b, c, chord.to), line(c, d), arcOf(d, a, chord.from)];
}
