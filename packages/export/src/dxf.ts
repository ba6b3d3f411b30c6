// A drawing to DXF: lines stay lines, arcs stay arcs and circles stay circles; every number is rounded before it is written.

import { type Arc, type Outline, type Point, pointAlong, pointsEqual, type Segment, tanDeg } from "@lamplane/geometry";
import type { Drawing, DrawingEntry, WorkKind } from "@lamplane/parameters/drawings";
import { DxfWriter, LWPolylineFlags, type LWPolylineVertex, Units, type vec3_t } from "@tarikjabiri/dxf";
import { drawingBounds, polarAngle } from "./drawing-bounds.ts";
import { encodeDxfString } from "./dxf-text.ts";

interface Pen {
  /** AutoCAD colour index. */
  readonly colour: number;
  readonly lineType: string;
  /** Strokes (+), gaps (−) and dots (0) along the line, mm; none for a full line. */
  readonly strokes: readonly number[];
}

/** How each kind of work is drawn; told apart by line as well as by colour. */
const PENS: Readonly<Record<WorkKind, Pen>> = {
  CUT: { colour: 7, lineType: "Continuous", strokes: [] },
  DRILL: { colour: 1, lineType: "STROKE_DOT", strokes: [5, -1.5, 0, -1.5] },
  ROUT: { colour: 5, lineType: "STROKE_DOT_DOT", strokes: [9, -1.5, 0, -1.5, 0, -1.5] },
  MARK: { colour: 3, lineType: "STROKES", strokes: [3, -2] },
  NOTE: { colour: 8, lineType: "DOTS", strokes: [0, -1] },
};
const METRIC = 1; // $MEASUREMENT: metric hatches and line types

/** Decimals of a length in mm: a nanometre. */
const LENGTH_DECIMALS = 6;
/** Decimals of a bulge and of an angle in degrees: over a radius of 1 m they move a point by less than a nanometre or two. */
const TURN_DECIMALS = 9;

/** DXF of a drawing (AutoCAD 2007 format, text), in mm. The same drawing gives the same text. */
export function dxfText(drawing: Drawing): string {
  const dxf = new DxfWriter();
  setHeader(dxf, drawing);
  for (const [layer, { colour, lineType, strokes }] of Object.entries(PENS)) {
    dxf.addLType(lineType, "", [...strokes]);
    dxf.addLayer(layer, colour, lineType);
  }
  for (const entry of drawing.entries) addEntry(dxf, entry);
  return `${dxf.stringify()}\n`;
}

/** Unit and extents; the view too, which the library would set by its own guess at how large texts are. */
function setHeader(dxf: DxfWriter, drawing: Drawing): void {
  const { min, max } = drawingBounds(drawing);
  dxf.setUnits(Units.Millimeters);
  dxf.setVariable("$MEASUREMENT", { 70: METRIC });
  dxf.setVariable("$LASTSAVEDBY", { 1: "lamplane" });
  dxf.setVariable("$EXTMIN", { 10: roundLength(min.x), 20: roundLength(min.y), 30: 0 });
  dxf.setVariable("$EXTMAX", { 10: roundLength(max.x), 20: roundLength(max.y), 30: 0 });
  const centre = toVec3({ x: (min.x + max.x) / 2, y: (min.y + max.y) / 2 });
  const height = roundLength(Math.max(max.y - min.y, (max.x - min.x) / 2)); // the library's window is twice as wide as high
  dxf.modelSpace.centerView = () => centre;
  dxf.modelSpace.viewHeight = () => height;
}

function addEntry(dxf: DxfWriter, entry: DrawingEntry): void {
  const layer = { layerName: layerOf(entry.work) };
  if (entry.kind === "outline") addOutline(dxf, entry.outline, layer);
  else if (entry.kind === "circle") dxf.addCircle(toVec3(entry.circle.centre), roundLength(entry.circle.radius), layer);
  else if (entry.kind === "note")
    dxf.addText(toVec3(entry.at), roundLength(entry.height), encodeDxfString(entry.text), layer);
  else for (const segment of entry.segments) addSegment(dxf, segment, layer);
}

/** The library takes any layer name and says nothing, and the entity then lies on a layer that isn't there. */
function layerOf(work: WorkKind): string {
  if (!Object.hasOwn(PENS, work)) throw new Error(`no layer for the work "${work}"`);
  return work;
}

interface Layer {
  layerName: string;
}

function addOutline(dxf: DxfWriter, outline: Outline, layer: Layer): void {
  outline.forEach((segment, i) => {
    const before = outline.at(i - 1)!;
    if (!pointsEqual(before.to, segment.from))
      throw new Error(`an outline on ${layer.layerName} is open before its segment ${i}`);
  });
  dxf.addLWPolyline(outline.flatMap(polylineVertices), { ...layer, flags: LWPolylineFlags.Closed });
}

/**
 * Where a segment begins, with its bulge; an arc of more than half a turn in parts, since a bulge cannot tell it well.
 * @see Autodesk, DXF reference, LWPOLYLINE: bulge = tan(sweep / 4), 0 straight, 1 half a circle, negative clockwise
 */
function polylineVertices(segment: Segment): LWPolylineVertex[] {
  if (segment.kind === "line") return [{ point: roundPoint(segment.from) }];
  const parts = Math.max(1, Math.ceil(Math.abs(segment.sweep) / 180 - 1e-9));
  const bulge = roundTurn(tanDeg(segment.sweep / parts / 4));
  return Array.from({ length: parts }, (_, i) => ({ point: roundPoint(pointAlong(segment, i / parts)), bulge }));
}

function addSegment(dxf: DxfWriter, segment: Segment, layer: Layer): void {
  if (segment.kind === "line") dxf.addLine(toVec3(segment.from), toVec3(segment.to), layer);
  else if (Math.abs(segment.sweep) >= 360) dxf.addCircle(toVec3(segment.centre), roundLength(segment.radius), layer);
  else addArc(dxf, segment, layer);
}

/** An ARC always runs counter-clockwise, so an arc that runs the other way is written from its end. */
function addArc(dxf: DxfWriter, { centre, radius, sweep, from, to }: Arc, layer: Layer): void {
  const start = polarAngle(centre, sweep > 0 ? from : to);
  const end = start + Math.abs(sweep);
  dxf.addArc(
    toVec3(centre),
    roundLength(radius),
    roundTurn(normalizeAngle(start)),
    roundTurn(normalizeAngle(end)),
    layer,
  );
}

const normalizeAngle = (angle: number): number => ((angle % 360) + 360) % 360;

const roundPoint = (p: Point): Point => ({ x: roundLength(p.x), y: roundLength(p.y) });
const toVec3 = (p: Point): vec3_t => ({ ...roundPoint(p), z: 0 });
const roundLength = (mm: number): number => roundTo(mm, LENGTH_DECIMALS);
/** A bulge or an angle; one too small to be written without an exponent is 0. */
const roundTurn = (value: number): number => (Math.abs(value) < 1e-6 ? 0 : roundTo(value, TURN_DECIMALS));

function roundTo(value: number, decimals: number): number {
  if (!Number.isFinite(value)) throw new Error(`a drawing has the number ${value} in it`);
  return Number(value.toFixed(decimals)) + 0; // + 0 makes −0 a 0
}
