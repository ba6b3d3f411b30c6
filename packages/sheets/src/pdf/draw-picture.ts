// A picture on a page of a PDF: its upper left corner at a place in mm from the page's, true to scale by default.
import type { Point, Segment } from "@lamplane/geometry";
import { pointAlong, pointsEqual, tanDeg } from "@lamplane/geometry";
import { POINTS_PER_MM } from "@lamplane/parameters/units";
import { grey } from "../grey.ts";
import { LINE_STYLES } from "../line-styles.ts";
import type { Picture, PictureMark, TextMark } from "../picture/picture.ts";
import type { Pdf } from "./document.ts";
import type { PdfPages } from "./pages.ts";
import { measureText, toDrawableText } from "./typefaces.ts";

/** Where a picture goes: its upper left corner in mm from the page's upper left corner; 1:1 unless scaled. */
export interface PicturePlacement {
  readonly left: number;
  readonly top: number;
  readonly scale?: number;
}

/** Most that a Bézier may lie off its arc, mm: a tenth of what a fine printer resolves. */
const BEZIER_ERROR = 0.0005;
/** How far a Bézier of a quarter turn lies off a circle of radius 1; the error falls with the turn's sixth power (from memory; tested). */
const QUARTER_ERROR = 2.73e-4;

/** Draws a picture's marks, in order. Nothing is clipped; the page's state is as it was. */
export function drawPicture(pdf: Pdf, picture: Pick<Picture, "height" | "marks">, place: PicturePlacement): void {
  const { scale = 1, left, top } = place;
  const onPage: PageTransform = {
    at: ({ x, y }) => [(left + x * scale) * POINTS_PER_MM, (top + (picture.height - y) * scale) * POINTS_PER_MM],
    scale,
  };
  for (const mark of picture.marks) {
    if (mark.kind === "text") drawText(pdf, mark, onPage);
    else if (mark.kind === "area") drawArea(pdf, mark, onPage);
    else drawLine(pdf, mark, onPage);
  }
}

interface PageTransform {
  readonly at: (p: Point) => [number, number];
  readonly scale: number;
}

function drawLine({ doc }: Pdf, mark: Extract<PictureMark, { kind: "line" }>, page: PageTransform): void {
  if (mark.segments.length === 0) return;
  const { width, dashes, shade } = LINE_STYLES[mark.line];
  const unit = POINTS_PER_MM * page.scale;
  doc.save();
  doc
    .lineWidth(width * unit)
    .lineJoin("round")
    .lineCap("butt")
    .strokeColor(grey(shade));
  if (dashes.length > 0)
    doc.dash(
      dashes.map((d) => d * unit),
      {},
    );
  tracePath(doc, mark.segments, page);
  if (mark.closed) doc.closePath();
  doc.stroke();
  doc.restore();
}

function drawArea(
  { doc }: Pdf,
  { boundaries, shade }: Extract<PictureMark, { kind: "area" }>,
  page: PageTransform,
): void {
  const filled = boundaries.filter((segments) => segments.length > 0);
  if (filled.length === 0) return;
  doc.save();
  for (const segments of filled) {
    tracePath(doc, segments, page);
    doc.closePath();
  }
  doc.fillColor(grey(shade)).fill("even-odd");
  doc.restore();
}

function drawText({ doc, typefaces }: Pdf, mark: TextMark, page: PageTransform): void {
  const { text, size, turn = 0, anchor = "start", bold = false, shade = 1 } = mark;
  const drawable = toDrawableText(text, bold ? typefaces.bold : typefaces.plain);
  if (drawable.trim() === "") return;
  const points = size * page.scale * POINTS_PER_MM;
  const back = measureText(text, points, bold, typefaces) * { start: 0, middle: 0.5, end: 1 }[anchor];
  const [x, y] = page.at(mark.at);
  doc.save();
  doc
    .font(bold ? "bold" : "plain")
    .fontSize(points)
    .fillColor(grey(shade));
  if (turn !== 0) doc.rotate(-turn, { origin: [x, y] });
  // Laid out word by word, as it was measured; the library remembers each word.
  doc.text(drawable, x - back, y, { lineBreak: false, baseline: "alphabetic" });
  doc.restore();
}

/** Puts a chain on the page as a path; one that breaks off begins anew where its next segment does. */
function tracePath(doc: PdfPages, segments: readonly Segment[], page: PageTransform): void {
  segments.forEach((segment, i) => {
    const before = segments[i - 1];
    if (!before || !pointsEqual(before.to, segment.from)) doc.moveTo(...assertFinitePoint(page.at(segment.from)));
    if (segment.kind === "line") doc.lineTo(...assertFinitePoint(page.at(segment.to)));
    else
      for (const curve of arcToBeziers(segment))
        doc.bezierCurveTo(...(curve.flatMap((p) => assertFinitePoint(page.at(p))) as Curve));
  });
}
type Curve = [number, number, number, number, number, number];

/** Bézier curves that follow an arc within `BEZIER_ERROR`, each by its two controls and its end. */
export function arcToBeziers(arc: Extract<Segment, { kind: "arc" }>): [Point, Point, Point][] {
  const { centre, radius, sweep } = arc;
  const largest = 90 * Math.min(1, (BEZIER_ERROR / (QUARTER_ERROR * radius)) ** (1 / 6));
  const parts = Math.max(1, Math.ceil(Math.abs(sweep) / largest));
  const reach = (4 / 3) * tanDeg(sweep / parts / 4); // of the radius, along the tangent
  const along = (p: Point, by: number): Point => ({
    x: p.x - (p.y - centre.y) * by,
    y: p.y + (p.x - centre.x) * by,
  });
  return Array.from({ length: parts }, (_, i) => {
    const [from, to] = [pointAlong(arc, i / parts), pointAlong(arc, (i + 1) / parts)];
    return [along(from, reach), along(to, -reach), to];
  });
}

function assertFinitePoint(numbers: [number, number]): [number, number] {
  if (!numbers.every(Number.isFinite)) throw new Error(`a picture has the numbers ${numbers.join(", ")} in it`);
  return numbers;
}
