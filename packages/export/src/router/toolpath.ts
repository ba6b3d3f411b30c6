// What a cutter does, as data: moves in mm, x and y from the set-up's zero, z up from the stock's top.
import { atan2Deg, cosDeg, type Point, type Segment, segmentLength, sinDeg, subsegment } from "@lamplane/geometry";
import type { Cutter } from "@lamplane/parameters/table";

export interface Point3D extends Point {
  readonly z: number;
}

/** What a cut is for: a pass with wood on its way, the last pass along a wall, the way to a wall and off it, down along a slope, straight down, straight up. */
export type CutRole = "pass" | "finish" | "lead" | "ramp" | "plunge" | "rise";

/** `feed` in mm/min; an arc turns about `centre` by `sweep` degrees, positive counter-clockwise, and rises or sinks evenly. */
export type Move =
  | { readonly kind: "rapid"; readonly to: Point3D }
  | { readonly kind: "line"; readonly to: Point3D; readonly feed: number; readonly role: CutRole }
  | {
      readonly kind: "arc";
      readonly to: Point3D;
      readonly centre: Point;
      readonly sweep: number;
      readonly feed: number;
      readonly role: CutRole;
    };

/** What one cutter does between two changes, from its park height back to it. */
export interface Toolpath {
  readonly cutter: Cutter;
  /** Where the first move begins. */
  readonly start: Point3D;
  readonly moves: readonly Move[];
}

/** Gap over the stock down to which the cutter goes fast, mm. */
const NEAR_TOP = 1;

/** Moves of one cutter as they are put down, from over the stock and back. */
export class ToolpathWriter {
  readonly #moves: Move[] = [];
  readonly #cutter: Cutter;
  readonly #rapidHeight: number;
  readonly #parkHeight: number;
  readonly #start: Point3D;
  #at: Point3D;
  #role: CutRole = "pass";

  /** Heights over the stock's top, mm: between cuts, and before the first and after the last. */
  constructor(cutter: Cutter, { rapidHeight, parkHeight }: { rapidHeight: number; parkHeight: number }) {
    this.#cutter = cutter;
    this.#rapidHeight = rapidHeight;
    this.#parkHeight = parkHeight;
    this.#start = { x: 0, y: 0, z: parkHeight };
    this.#at = this.#start;
  }

  get at(): Point3D {
    return this.#at;
  }

  get cutter(): Cutter {
    return this.#cutter;
  }

  /** What is cut within is for this. */
  inRole(role: CutRole, cut: () => void): void {
    const before = this.#role;
    this.#role = role;
    cut();
    this.#role = before;
  }

  /** Up out of the wood at the cutting feed, then fast; across, from its park height no lower; down to the stock's top. */
  goOver({ x, y }: Point): void {
    this.lift();
    this.#rapid({ x, y, z: this.#at.z });
    this.#rapid({ x, y, z: NEAR_TOP });
    this.plungeTo(0);
  }

  lift(): void {
    this.#liftTo(this.#rapidHeight);
  }

  #liftTo(z: number): void {
    if (this.#at.z < NEAR_TOP) this.#line({ ...this.#at, z: NEAR_TOP }, this.#cutter.feed);
    if (this.#at.z < z) this.#rapid({ ...this.#at, z });
  }

  /** Straight down, at the plunge feed. */
  plungeTo(z: number): void {
    this.#line({ ...this.#at, z }, this.#cutter.plunge);
  }

  /** Straight up, at the cutting feed. */
  riseTo(z: number): void {
    this.#line({ ...this.#at, z }, this.#cutter.feed);
  }

  lineTo({ x, y }: Point): void {
    this.#line({ x, y, z: this.#at.z }, this.#cutter.feed);
  }

  /** Along a path that begins here, down or up evenly to `z`. */
  follow(path: readonly Segment[], z = this.#at.z, feed = this.#cutter.feed): void {
    const whole = path.reduce((sum, s) => sum + segmentLength(s), 0);
    const from = this.#at.z;
    let passed = 0;
    for (const segment of path.flatMap(halfTurns)) {
      passed += segmentLength(segment);
      const to = { ...segment.to, z: whole > 0 ? from + ((z - from) * passed) / whole : z };
      if (segment.kind === "line") this.#line(to, feed);
      else this.#arc(segment.centre, segment.sweep, to, feed);
    }
  }

  done(): Toolpath {
    this.#liftTo(this.#parkHeight);
    return { cutter: this.#cutter, start: this.#start, moves: this.#moves };
  }

  #rapid(to: Point3D): void {
    if (!isSame(this.#at, to)) this.#moves.push({ kind: "rapid", to });
    this.#at = to;
  }

  #line(to: Point3D, feed: number): void {
    if (!isSame(this.#at, to)) this.#moves.push({ kind: "line", to, feed, role: this.#roleOf(to) });
    this.#at = to;
  }

  #arc(centre: Point, sweep: number, to: Point3D, feed: number): void {
    this.#moves.push({ kind: "arc", to, centre, sweep, feed, role: this.#roleOf(to, true) });
    this.#at = to;
  }

  /** @param turns whether the cutter goes sideways though it ends where it begins */
  #roleOf(to: Point3D, turns = false): CutRole {
    const isSideways = turns || Math.hypot(to.x - this.#at.x, to.y - this.#at.y) > SAME;
    const drop = this.#at.z - to.z;
    if (isSideways) return drop > SAME ? "ramp" : this.#role;
    return drop > 0 ? "plunge" : "rise";
  }
}

/** An arc of more than half a turn in parts: its end and centre alone tell controls too little of it. */
function halfTurns(segment: Segment): Segment[] {
  const parts = segment.kind === "arc" ? Math.ceil(Math.abs(segment.sweep) / 180 - 1e-9) : 1;
  if (parts <= 1) return [segment];
  return Array.from({ length: parts }, (_, i) => subsegment(segment, i / parts, (i + 1) / parts));
}

/** Places nearer to each other are one, mm. */
const SAME = 1e-9;
const isSame = (a: Point3D, b: Point3D): boolean =>
  Math.max(Math.abs(a.x - b.x), Math.abs(a.y - b.y), Math.abs(a.z - b.z)) < SAME;

/** mm/min: how fast a small router is taken to travel between cuts. */
const RAPID = 3000;

/** Time that moves take, minutes, without the time to speed up and slow down. */
export function cuttingTime({ start, moves }: Toolpath): number {
  let [at, minutes] = [start, 0];
  for (const move of moves) {
    minutes += moveMinutes(at, move);
    at = move.to;
  }
  return minutes;
}

/** Time that one move takes, minutes. */
export function moveMinutes(from: Point3D, move: Move): number {
  const length = Math.hypot(segmentLength(moveSegment(from, move)), move.to.z - from.z);
  return length / (move.kind === "rapid" ? RAPID : move.feed);
}

/** A move seen from above. */
export const moveSegment = (from: Point3D, move: Move): Segment =>
  move.kind === "arc"
    ? {
        kind: "arc",
        from,
        to: move.to,
        centre: move.centre,
        radius: Math.hypot(from.x - move.centre.x, from.y - move.centre.y),
        sweep: move.sweep,
      }
    : { kind: "line", from, to: move.to };

/** Box that holds all moves. */
export function toolpathBounds(paths: readonly Toolpath[]): { min: Point3D; max: Point3D } {
  const [min, max] = [
    { x: Infinity, y: Infinity, z: Infinity },
    { x: -Infinity, y: -Infinity, z: -Infinity },
  ];
  for (const { start, moves } of paths) {
    let at = start;
    for (const move of moves) {
      for (const { x, y } of [move.to, ...arcSides(moveSegment(at, move))]) {
        [min.x, min.y] = [Math.min(min.x, x), Math.min(min.y, y)];
        [max.x, max.y] = [Math.max(max.x, x), Math.max(max.y, y)];
      }
      [min.z, max.z] = [Math.min(min.z, move.to.z), Math.max(max.z, move.to.z)];
      at = move.to;
    }
  }
  return { min, max };
}

/** Places at which an arc runs along an axis: its furthest to each side, where it comes so far round. */
function arcSides(segment: Segment): Point[] {
  if (segment.kind === "line") return [];
  const { from, centre, radius, sweep } = segment;
  const start = atan2Deg(from.y - centre.y, from.x - centre.x);
  return [0, 90, 180, 270]
    .filter((side) => ((((side - start) * Math.sign(sweep)) % 360) + 360) % 360 <= Math.abs(sweep))
    .map((side) => ({ x: centre.x + radius * cosDeg(side), y: centre.y + radius * sinDeg(side) }));
}
