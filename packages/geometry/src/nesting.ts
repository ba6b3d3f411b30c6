// True outlines laid on sheets: each as near the sheet's left end as the ones before it let it, a gap between any two.
import { offsetOutline } from "./offset.ts";
import { boundsOf, type Outline, outlineArea, type Point, point, tessellate } from "./outline.ts";
import {
  type BoxedPolygon,
  boxedPolygon,
  extremeCorners,
  movePolygon,
  notchCorners,
  polygonsOverlap,
  slideRoom,
} from "./polygon-contact.ts";
import { type Transform2, transformOutline, transformPoint } from "./transform.ts";

export interface ShapeToNest<T> {
  readonly item: T;
  /** Its outer outline, counter-clockwise. */
  readonly outline: Outline;
  /** Degrees by which it may lie turned: 0 and 180 where grain runs along the sheet. */
  readonly turns: readonly number[];
}

/** mm; the sheet's lower left corner is 0, 0. */
export interface NestingSheet {
  readonly width: number;
  readonly depth: number;
  /** From any outline to the sheet's edge. */
  readonly edge: number;
  /** Between two outlines, and between one and what is kept clear of. */
  readonly gap: number;
  /** Knots and the like that no outline may come near. */
  readonly keepOuts?: readonly Outline[];
}

export interface NestedShape<T> {
  readonly item: T;
  readonly transform: Transform2;
}

export interface Nesting<T> {
  readonly placed: readonly NestedShape<T>[];
  /** What has no room on this sheet, in the order in which it was given. */
  readonly left: readonly T[];
}

/** Chords stand off an arc by no more than this, mm: a shape takes up a little more than its true outline. */
const CHORD = 0.4;
/** The same for the box about an outline, which decides how near the sheet's edge it comes. */
const BOX_CHORD = 0.0005;
/** By how much the shape that is tried is narrower than the space it finds its place by, mm: what touches does not overlap. */
const SLACK = 0.004;
/** So many of the best places are slid into their corners. */
const TRIED_PLACES = 12;
/** Directions in which shapes are laid against each other. */
const DIRECTIONS = 24;

/** A shape in one of its turns: the space that it takes up with its half of the gap, and the same drawn a hair narrower. */
interface Pose {
  readonly turn: number;
  /** About the outline itself. */
  readonly box: { readonly min: Point; readonly max: Point };
  readonly space: BoxedPolygon;
  readonly core: BoxedPolygon;
  readonly extremes: readonly Point[];
}
interface Candidate<T> {
  readonly item: T;
  readonly area: number;
  readonly reach: number;
  readonly height: number;
  readonly poses: readonly Pose[];
}
interface Place {
  readonly pose: Pose;
  readonly shift: Point;
}

/** As many shapes on one sheet as a few orders of laying them find room for. The same shapes and sheet give the same places. */
export function nestOutlines<T>(shapes: readonly ShapeToNest<T>[], sheet: NestingSheet): Nesting<T> {
  const candidates = shapes.map((shape) => candidateOf(shape, sheet.gap));
  const tries = ORDERS.map((order) => layInOrder(candidates.toSorted(order), sheet));
  const best = tries.reduce((a, b) => (isBetter(b, a) ? b : a));
  const laid = new Set(best.placed.map(({ item }) => item));
  return { placed: best.placed, left: shapes.map(({ item }) => item).filter((item) => !laid.has(item)) };
}

type Order = <T>(a: Candidate<T>, b: Candidate<T>) => number;
const ORDERS: readonly Order[] = [
  (a, b) => b.area - a.area,
  (a, b) => b.reach - a.reach || b.area - a.area,
  (a, b) => b.height - a.height || b.area - a.area,
];

interface Laid<T> {
  readonly placed: readonly NestedShape<T>[];
  readonly area: number;
  readonly end: number;
}

/** More of the shapes, or else all of them in less of the sheet's length. */
const isBetter = <T>(a: Laid<T>, b: Laid<T>): boolean =>
  a.area > b.area + 1e-6 || (a.area > b.area - 1e-6 && a.end < b.end - 1e-6);

function candidateOf<T>({ item, outline, turns }: ShapeToNest<T>, gap: number): Candidate<T> {
  const own = spaceOf(outline, gap);
  const poses = turns.map((turn): Pose => {
    const turned = ({ corners }: BoxedPolygon) => boxedPolygon(corners.map((p) => transformPoint(p, { turn })));
    const [space, core] = [turned(own.space), turned(own.core)];
    const box = boundsOf(tessellate(transformOutline(outline, { turn }), BOX_CHORD));
    return { turn, box, space, core, extremes: extremeCorners(space.corners, DIRECTIONS) };
  });
  const { min, max } = boundsOf(tessellate(outline));
  const [x, y] = [max.x - min.x, max.y - min.y];
  return { item, area: Math.abs(outlineArea(outline)), reach: Math.max(x, y), height: y, poses };
}

/** What an outline takes up with its half of the gap, and the same a hair narrower. */
function spaceOf(outline: Outline, gap: number): { space: BoxedPolygon; core: BoxedPolygon } {
  const grown = (by: number) => boxedPolygon(tessellate(offsetOutline(outline, gap / 2 + CHORD + by)[0]!, CHORD));
  return { space: grown(SLACK), core: grown(0) };
}

/** What lies on the sheet already. */
interface Obstacle {
  readonly space: BoxedPolygon;
  readonly extremes: readonly Point[];
  readonly notches: readonly Point[];
}
const obstacleOf = (space: BoxedPolygon): Obstacle => ({
  space,
  extremes: extremeCorners(space.corners, DIRECTIONS),
  notches: notchCorners(space.corners),
});

function layInOrder<T>(candidates: readonly Candidate<T>[], sheet: NestingSheet): Laid<T> {
  const walls = freeBox(sheet);
  const blocked = (sheet.keepOuts ?? []).map((outline) => obstacleOf(spaceOf(outline, sheet.gap).space));
  const placed: NestedShape<T>[] = [];
  let [area, end] = [0, 0];
  for (const candidate of candidates) {
    const place = findPlace(candidate.poses, blocked, walls);
    if (!place) continue;
    const { pose, shift } = place;
    placed.push({ item: candidate.item, transform: { turn: pose.turn, shift } });
    blocked.push(obstacleOf(movePolygon(pose.space, shift)));
    area += candidate.area;
    end = Math.max(end, pose.box.max.x + shift.x);
  }
  return { placed, area, end };
}

/** Where a shape's box may lie. */
const freeBox = ({ width, depth, edge }: NestingSheet): { min: Point; max: Point } => ({
  min: point(edge, edge),
  max: point(width - edge, depth - edge),
});

type Blocked = readonly Obstacle[];
type Walls = ReturnType<typeof freeBox>;

/** The place farthest to the left, and of those the lowest. */
function findPlace(poses: readonly Pose[], blocked: Blocked, walls: Walls): Place | undefined {
  const starts = poses
    .flatMap((pose) => startingShifts(pose, blocked, walls).map((shift): Place => ({ pose, shift })))
    .sort(compareEnds);
  const found: Place[] = [];
  for (const start of starts) {
    if (found.length >= TRIED_PLACES) break;
    if (isFree(start, blocked)) found.push(slideHome(start, blocked, walls));
  }
  return found.sort(compareEnds)[0];
}

const SAME_END = 0.05; // mm
function compareEnds(a: Place, b: Place): number {
  const right = ({ pose, shift }: Place) => Math.round((pose.box.max.x + shift.x) / SAME_END);
  return right(a) - right(b) || a.pose.box.min.y + a.shift.y - b.pose.box.min.y - b.shift.y;
}

const isFree = ({ pose, shift }: Place, blocked: Blocked): boolean =>
  !blocked.some((other) => polygonsOverlap(pose.core, other.space, shift));

/** Shifts that lay a shape into the sheet's corners, against another in every direction or in its notches, or beside it along a wall. */
function startingShifts({ space, box, extremes }: Pose, blocked: Blocked, walls: Walls): Point[] {
  const [left, low] = [walls.min.x - box.min.x, walls.min.y - box.min.y];
  const [right, high] = [walls.max.x - box.max.x, walls.max.y - box.max.y];
  if (right < left || high < low) return [];
  const shifts = [point(left, low), point(left, high)];
  const apart = (q: Point, p: Point) => point(q.x - p.x, q.y - p.y);
  for (const other of blocked) {
    const { min, max } = other.space;
    const beside = max.x - space.min.x;
    shifts.push(point(beside, low), point(beside, high), point(left, max.y - space.min.y));
    shifts.push(point(beside, min.y - space.min.y), point(beside, max.y - space.max.y));
    shifts.push(point(min.x - space.min.x, max.y - space.min.y));
    shifts.push(...other.extremes.map((q, i) => apart(q, extremes[(i + DIRECTIONS / 2) % DIRECTIONS]!)));
    for (const q of other.notches) for (const p of extremes) shifts.push(apart(q, p));
  }
  return shifts.filter(({ x, y }) => x >= left && x <= right && y >= low && y <= high);
}

/** Down and to the left as far as it goes, twice. */
function slideHome(start: Place, blocked: Blocked, walls: Walls): Place {
  let place = start;
  for (const way of ["down", "left", "down", "left"] as const) {
    const space = movePolygon(place.pose.space, place.shift);
    const { x, y } = place.shift;
    const { min } = place.pose.box;
    const toWall = way === "left" ? min.x + x - walls.min.x : min.y + y - walls.min.y;
    const room = blocked.reduce((least, other) => Math.min(least, slideRoom(space, other.space, way)), toWall);
    const slid = { ...place, shift: way === "left" ? point(x - room, y) : point(x, y - room) };
    if (isFree(slid, blocked)) place = slid;
  }
  return place;
}
