// What a cutter does, as data: moves in mm, x and y from the set-up's zero, z up from the stock's top.
import { type Point, pointAlong, type Segment, segmentLength, subsegment } from "@lamplane/geometry";
import type { Cutter } from "@lamplane/parameters/table";

export interface Point3D extends Point {
  readonly z: number;
}

/** `feed` in mm/min; an arc turns about `centre` by `sweep` degrees, positive counter-clockwise, and rises or sinks evenly. */
export type Move =
  | { readonly kind: "rapid"; readonly to: Point3D }
  | { readonly kind: "line"; readonly to: Point3D; readonly feed: number }
  | {
      readonly kind: "arc";
      readonly to: Point3D;
      readonly centre: Point;
      readonly sweep: number;
      readonly feed: number;
    };

/** What one cutter does between two changes. */
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
  readonly #start: Point3D;
  #at: Point3D;

  constructor(cutter: Cutter, rapidHeight: number) {
    this.#cutter = cutter;
    this.#rapidHeight = rapidHeight;
    this.#start = { x: 0, y: 0, z: rapidHeight };
    this.#at = this.#start;
  }

  get at(): Point3D {
    return this.#at;
  }

  get cutter(): Cutter {
    return this.#cutter;
  }

  /** Up out of the wood at the cutting feed, then fast; across; down to the stock's top. */
  goOver({ x, y }: Point): void {
    this.lift();
    this.#rapid({ x, y, z: this.#rapidHeight });
    this.#rapid({ x, y, z: NEAR_TOP });
    this.plungeTo(0);
  }

  lift(): void {
    if (this.#at.z < NEAR_TOP) this.#line({ ...this.#at, z: NEAR_TOP }, this.#cutter.feed);
    this.#rapid({ ...this.#at, z: this.#rapidHeight });
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
    this.lift();
    return { cutter: this.#cutter, start: this.#start, moves: this.#moves };
  }

  #rapid(to: Point3D): void {
    if (!isSame(this.#at, to)) this.#moves.push({ kind: "rapid", to });
    this.#at = to;
  }

  #line(to: Point3D, feed: number): void {
    if (!isSame(this.#at, to)) this.#moves.push({ kind: "line", to, feed });
    this.#at = to;
  }

  #arc(centre: Point, sweep: number, to: Point3D, feed: number): void {
    this.#moves.push({ kind: "arc", to, centre, sweep, feed });
    this.#at = to;
  }
}

/** An arc of more than half a turn in parts: its end and centre alone tell controls too little of it. */
function halfTurns(segment: Segment): Segment[] {
  const parts = segment.kind === "arc" ? Math.ceil(Math.abs(segment.sweep) / 180 - 1e-9) : 1;
  if (parts <= 1) return [segment];
  return Array.from({ length: parts }, (_, i) => subsegment(segment, i / parts, (i + 1) / parts));
}

const isSame = (a: Point3D, b: Point3D): boolean =>
  Math.max(Math.abs(a.x - b.x), Math.abs(a.y - b.y), Math.abs(a.z - b.z)) < 1e-9;

/** mm/min: how fast a small router is taken to travel between cuts. */
const RAPID = 3000;

/** Time that moves take, minutes, without the time to speed up and slow down. */
export function cuttingTime({ start, moves }: Toolpath): number {
  let [at, minutes] = [start, 0];
  for (const move of moves) {
    minutes += moveLength(at, move) / (move.kind === "rapid" ? RAPID : move.feed);
    at = move.to;
  }
  return minutes;
}

function moveLength(from: Point3D, move: Move): number {
  const rise = move.to.z - from.z;
  const flat = segmentLength(moveSegment(from, move));
  return Math.hypot(flat, rise);
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

/** Box that holds all moves. Arcs count by points a few degrees apart. */
export function toolpathBounds(paths: readonly Toolpath[]): { min: Point3D; max: Point3D } {
  const points = paths.flatMap(({ start, moves }) => {
    let at = start;
    return moves.flatMap((move): Point3D[] => {
      const segment = moveSegment(at, move);
      at = move.to;
      if (segment.kind === "line") return [move.to];
      return Array.from({ length: 64 }, (_, i) => ({ ...pointAlong(segment, (i + 1) / 64), z: move.to.z }));
    });
  });
  const range = (pick: (p: Point3D) => number): [number, number] => {
    const values = points.map(pick);
    return [values.reduce((a, b) => Math.min(a, b)), values.reduce((a, b) => Math.max(a, b))];
  };
  const [x, y, z] = [range((p) => p.x), range((p) => p.y), range((p) => p.z)];
  return { min: { x: x[0], y: y[0], z: z[0] }, max: { x: x[1], y: y[1], z: z[1] } };
}
