// A drawing to DXF: lines stay lines, arcs stay arcs and circles stay circles; every number is rounded before it is written.

import {
  type Arc,
  type Outline,
  type Point,
  pointAlong,
  pointsEqual,
  ringTriples,
  type Segment,
  tanDeg,
} from "@lamplane/geometry";
import {
  type Drawing,
  type DrawingEntry,
  drawingBounds,
  moveToOrigin,
  polarAngle,
  scaleDrawing,
  type WorkKind,
} from "@lamplane/parameters/drawings";
import { fromMillimetres, type Units as LengthUnit } from "@lamplane/parameters/units";
import { DxfWriter, type Entity, LWPolylineFlags, type LWPolylineVertex, Units, type vec3_t } from "@tarikjabiri/dxf";
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
  ENGRAVE: { colour: 2, lineType: "Continuous", strokes: [] },
  NOTE: { colour: 8, lineType: "DOTS", strokes: [0, -1] },
};
/** Code of a file's unit, and $MEASUREMENT: metric or imperial hatches and line types. */
const UNITS = {
  mm: { code: Units.Millimeters, measurement: 1 },
  in: { code: Units.Inches, measurement: 0 },
} as const;
/** Whose extended data an entity carries: "depth" or "thickness", then the length. */
const APPLICATION = "LAMPLANE";

/** Decimals of a length: a nanometre in mm. */
const LENGTH_DECIMALS = 6;
/** Decimals of a bulge and of an angle in degrees: over a radius of 1 m they move a point by less than a nanometre or two. */
const TURN_DECIMALS = 9;

/**
 * DXF of a drawing (AutoCAD 2007 format, text), the lower left corner of its work at 0, 0. The same drawing gives the same text.
 * Work of a depth has a layer of its own, which names it ("ROUT-4.8MM"); depth, or the thickness that is cut through, also
 * stands in the entity's extended data.
 */
export function dxfText(drawing: Drawing, unit: LengthUnit = "mm"): string {
  const placed = moveToOrigin(drawing);
  const inUnit = scaleDrawing(placed, fromMillimetres(1, unit));
  const dxf = new DxfWriter();
  setHeader(dxf, inUnit, unit);
  dxf.tables.addAppId(APPLICATION);
  for (const { lineType, strokes } of Object.values(PENS))
    dxf.addLType(
      lineType,
      "",
      strokes.map((mm) => roundLength(fromMillimetres(mm, unit))),
    );
  for (const layer of Object.keys(PENS) as WorkKind[]) addLayer(dxf, layer, layer);
  for (const [layer, work] of depthLayers(inUnit, unit)) addLayer(dxf, layer, work);
  for (const entry of inUnit.entries) addEntry(dxf, entry, inUnit, unit);
  return `${dxf.stringify()}\n`;
}

const addLayer = (dxf: DxfWriter, name: string, work: WorkKind) =>
  dxf.addLayer(name, PENS[work].colour, PENS[work].lineType);

/** Layers of work that has a depth, each with the kind of work on it. */
const depthLayers = ({ entries }: Drawing, unit: LengthUnit): Map<string, WorkKind> =>
  new Map(
    entries.flatMap((entry) => (depthOf(entry) === undefined ? [] : [[layerOf(entry, unit), entry.work] as const])),
  );

const depthOf = (entry: DrawingEntry): number | undefined => (entry.kind === "note" ? undefined : entry.depth);

/** Unit and extents; the view too, which the library would set by its own guess at how large texts are. */
function setHeader(dxf: DxfWriter, drawing: Drawing, unit: LengthUnit): void {
  const { min, max } = drawingBounds(drawing);
  dxf.setUnits(UNITS[unit].code);
  dxf.setVariable("$MEASUREMENT", { 70: UNITS[unit].measurement });
  dxf.setVariable("$LASTSAVEDBY", { 1: "lamplane" });
  dxf.setVariable("$EXTMIN", { 10: roundLength(min.x), 20: roundLength(min.y), 30: 0 });
  dxf.setVariable("$EXTMAX", { 10: roundLength(max.x), 20: roundLength(max.y), 30: 0 });
  const centre = toVec3({ x: (min.x + max.x) / 2, y: (min.y + max.y) / 2 });
  const height = roundLength(Math.max(max.y - min.y, (max.x - min.x) / 2)); // the library's window is twice as wide as high
  dxf.modelSpace.centerView = () => centre;
  dxf.modelSpace.viewHeight = () => height;
}

function addEntry(dxf: DxfWriter, entry: DrawingEntry, { thickness }: Drawing, unit: LengthUnit): void {
  const layer = { layerName: layerOf(entry, unit) };
  if (entry.kind === "note") {
    dxf.addText(toVec3(entry.at), roundLength(entry.height), encodeDxfString(entry.text), layer);
    return;
  }
  const isThrough = entry.work === "CUT" || entry.work === "DRILL";
  for (const entity of addWork(dxf, entry, layer)) {
    if (entry.depth !== undefined) addData(entity, "depth", entry.depth);
    else if (isThrough && thickness !== undefined) addData(entity, "thickness", thickness);
  }
}

function addWork(dxf: DxfWriter, entry: Exclude<DrawingEntry, { kind: "note" }>, layer: Layer): Entity[] {
  if (entry.kind === "outline") return [addOutline(dxf, entry.outline, layer)];
  if (entry.kind === "path") return entry.segments.map((segment) => addSegment(dxf, segment, layer));
  return [dxf.addCircle(toVec3(entry.circle.centre), roundLength(entry.circle.radius), layer)];
}

function addData(entity: Entity, name: string, length: number): void {
  const data = entity.addXData(APPLICATION);
  data.string(`${name}.`); // the library loses a string's last character
  data.distance(roundLength(length));
}

/** The library takes any layer name and says nothing, and the entity then lies on a layer that isn't there. */
function layerOf(entry: DrawingEntry, unit: LengthUnit): string {
  const { work } = entry;
  if (!Object.hasOwn(PENS, work)) throw new Error(`no layer for the work "${work}"`);
  const depth = depthOf(entry);
  return depth === undefined ? work : `${work}-${Number(depth.toFixed(unit === "mm" ? 2 : 3))}${unit.toUpperCase()}`;
}

interface Layer {
  layerName: string;
}

function addOutline(dxf: DxfWriter, outline: Outline, layer: Layer): Entity {
  ringTriples(outline).forEach(([before, segment], i) => {
    if (!pointsEqual(before.to, segment.from))
      throw new Error(`an outline on ${layer.layerName} is open before its segment ${i}`);
  });
  return dxf.addLWPolyline(outline.flatMap(polylineVertices), { ...layer, flags: LWPolylineFlags.Closed });
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

function addSegment(dxf: DxfWriter, segment: Segment, layer: Layer): Entity {
  if (segment.kind === "line") return dxf.addLine(toVec3(segment.from), toVec3(segment.to), layer);
  if (Math.abs(segment.sweep) >= 360) return dxf.addCircle(toVec3(segment.centre), roundLength(segment.radius), layer);
  return addArc(dxf, segment, layer);
}

/** An ARC always runs counter-clockwise, so an arc that runs the other way is written from its end. */
function addArc(dxf: DxfWriter, { centre, radius, sweep, from, to }: Arc, layer: Layer): Entity {
  const start = polarAngle(centre, sweep > 0 ? from : to);
  const end = start + Math.abs(sweep);
  return dxf.addArc(
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
