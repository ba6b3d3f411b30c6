// Outlines of the wooden parts and of the throat at each stage, counter-clockwise, all cut from the same chains.

import {
  type Circle,
  distance,
  EPSILON,
  line,
  type Outline,
  point,
  reverseOutline,
  type Segment,
  type Shape,
  splitAtIntersection,
} from "@lamplane/geometry";
import type { Stage } from "../table/index.ts";
import type { Elevation } from "./elevation.ts";
import { bedXAt, planeToBed } from "./frame.ts";
import { memoizeByPlane } from "./memoize.ts";
import { rampPath } from "./ramp.ts";
import { flatTop } from "./top-outline.ts";

/** What a stage leaves standing: height of the sole, ends of cheeks and blocks, and the top from heel to toe. */
export interface StageExtent {
  readonly sole: number;
  readonly toe: number;
  readonly heel: number;
  readonly blockToe: number;
  readonly blockHeel: number;
  readonly top: readonly Segment[];
}

export function stageExtent({ design, topChain, cuts }: Elevation, stage: Stage): StageExtent {
  const { length, height, trim } = design.body;
  const sole = stage === "trued" ? 0 : -design.sole.allowance;
  const over = stage === "blank" ? trim / 2 : 0;
  const [setToe, setHeel] = stage === "blank" ? [cuts.setInToe, cuts.setInHeel] : [0, 0];
  return {
    sole,
    toe: -over,
    heel: length + over,
    blockToe: setToe - over,
    blockHeel: length + over - setHeel,
    top: stage === "trued" ? topChain : flatTop(-over, length + over, height),
  };
}

/** The core's two blocks and the throat between them, each with its top's chain where it has one. */
export interface Blocks {
  readonly front: Outline;
  readonly bed: Outline;
  readonly throat: Outline;
  /** Chains that make them up, for the solids: ramp upward, bed upward (chamfer first), tops from heel to toe. */
  readonly rampChain: readonly Segment[];
  readonly bedChain: readonly Segment[];
  readonly topOverBed: readonly Segment[];
  readonly topOverThroat: readonly Segment[];
  readonly topOverFront: readonly Segment[];
}

const knownBlocks = memoizeByPlane(() => new Map<Stage, Blocks>());

/**
 * Front block, bed block and throat at a stage.
 * @throws Error (our bug) where ramp or bed miss the top; the checks stop such a design before.
 */
export function blocksAt(plane: Elevation, stage: Stage): Blocks {
  const known = knownBlocks(plane);
  const blocks = known.get(stage) ?? cutBlocks(plane, stage);
  known.set(stage, blocks);
  return blocks;
}

function cutBlocks(plane: Elevation, stage: Stage): Blocks {
  const stock = stageExtent(plane, stage);
  const cuts = topCuts(plane, stock);
  if (!cuts) throw new Error("ramp or bed does not come out of the top");
  const { ramp, bed, overBed, overThroat } = cuts;
  const topOverBed = snapEnds(overBed.before, undefined, bed.at);
  const topOverThroat = snapEnds(overThroat.before, bed.at, ramp.at);
  const topOverFront = snapEnds(overThroat.after, ramp.at, undefined);
  const bedTop = trimToEnd(topOverBed, stock.blockHeel, "heel");
  const frontTop = trimToEnd(topOverFront, stock.blockToe, "toe");
  const [bedFoot, rampFoot] = [bed.before[0]!.from, ramp.before[0]!.from];
  return {
    front: closeOutline([
      line(point(stock.blockToe, stock.sole), rampFoot),
      ...ramp.before,
      ...frontTop,
      line(frontTop.at(-1)!.to, point(stock.blockToe, stock.sole)),
    ]),
    bed: closeOutline([
      line(bedFoot, point(stock.blockHeel, stock.sole)),
      line(point(stock.blockHeel, stock.sole), bedTop[0]!.from),
      ...bedTop,
      ...reverseOutline(bed.before),
    ]),
    throat: closeOutline([line(rampFoot, bedFoot), ...bed.before, ...topOverThroat, ...reverseOutline(ramp.before)]),
    rampChain: ramp.before,
    bedChain: bed.before,
    topOverBed: bedTop,
    topOverThroat,
    topOverFront: frontTop,
  };
}

/** The bed from the sole upward: what is left of the feather chamfer stands square, then the bed's line. */
function bedPath({ design, frame }: Elevation, sole: number, to: number): Segment[] {
  const chamferTop = design.bed.featherChamfer - design.sole.allowance;
  const at = (y: number) => point(bedXAt(frame, y), y);
  if (chamferTop - sole < EPSILON) return [line(at(sole), at(to))];
  const shoulder = at(chamferTop);
  return [line(point(shoulder.x, sole), shoulder), line(shoulder, at(to))];
}

/** s of the bed's lower edge as it can be touched before the glue-up: where the feather chamfer leaves it, or its tip. mm */
export const bedLowerEdge = (plane: Elevation): number =>
  planeToBed(plane.frame, bedPath(plane, -plane.design.sole.allowance, plane.design.body.height).at(-1)!.from).s;

/** Ramp and bed as far as the top, and the top as far as bed and ramp; undefined where one misses the other. */
function topCuts(plane: Elevation, { sole, top }: StageExtent) {
  const { height } = plane.design.body;
  const ramp = splitAtIntersection(rampPath(plane.ramp, sole, 2 * height), top);
  const bed = splitAtIntersection(bedPath(plane, sole, 2 * height), top);
  const overBed = bed && splitAtIntersection(top, bed.before);
  const overThroat = ramp && overBed && splitAtIntersection(overBed.after, ramp.before);
  return overThroat && { ramp, bed, overBed, overThroat };
}

/** Whether ramp and bed come out of the top at a stage, so that the blocks can be cut. */
export const meetTop = (plane: Elevation, stage: Stage): boolean =>
  knownBlocks(plane).has(stage) || topCuts(plane, stageExtent(plane, stage)) !== undefined;

/** A chain with its ends laid on points found elsewhere, so that neighbours share them to the last bit. */
function snapEnds(
  chain: readonly Segment[],
  first: Segment["from"] | undefined,
  last: Segment["to"] | undefined,
): Segment[] {
  return chain.map((s, i) => ({
    ...s,
    ...(i === 0 && first ? { from: first } : {}),
    ...(i === chain.length - 1 && last ? { to: last } : {}),
  }));
}

/** A flat top shortened to where its block ends; an arched one is only met when the ends are trimmed. */
function trimToEnd(chain: readonly Segment[], x: number, end: "toe" | "heel"): Segment[] {
  return chain.map((s, i) => {
    if (s.kind === "arc") return s;
    if (end === "heel" && i === 0) return line(point(x, s.from.y), s.to);
    return end === "toe" && i === chain.length - 1 ? line(s.from, point(x, s.to.y)) : s;
  });
}

const closeOutline = (segments: readonly Segment[]): Outline =>
  segments.filter((s) => distance(s.from, s.to) > EPSILON);

/** A cheek from the side with the pin's hole; the peg holes are bored only once all lies together. */
export function cheekShape(plane: Elevation, stage: Stage): Shape {
  const { toe, heel, sole, top } = stageExtent(plane, stage);
  const [first, last] = [top[0]!.from, top.at(-1)!.to];
  const boundary = closeOutline([
    line(point(toe, sole), point(heel, sole)),
    line(point(heel, sole), first),
    ...top,
    line(last, point(toe, sole)),
  ]);
  return { boundary, holes: [], circles: [plane.pinHole] };
}

/** How far a place along the sole lies from the toe end of the cheeks: until the ends are trimmed it is measured from there. mm */
export const fromToeEnd = ({ design }: Elevation, x: number): number => x + design.body.trim / 2;

/** Wood wanted round a peg, mm: less splits out when the peg is driven. */
export const ROUND_A_PEG = 1.5;

/**
 * Where pegs go, bored at the dry fit through both cheeks and the block between them: in the middle of the waste at each end
 * of the blocks; two stand high and low.
 */
export function pegHoles(plane: Elevation): Circle[] {
  const { design } = plane;
  const { toe, heel, blockToe, blockHeel, sole } = stageExtent(plane, "blank");
  const fit = Math.max(blockToe - toe, 0);
  const { diameter, perEnd } = design.pegs;
  const rise = design.body.height - sole;
  const heights = perEnd === 1 ? [0.5] : perEnd === 2 ? [0.25, 0.75] : [];
  const ends = [(toe + fit) / 2, (heel - Math.max(heel - blockHeel, 0) + design.body.length) / 2];
  return ends.flatMap((x) => heights.map((share) => ({ centre: point(x, sole + share * rise), radius: diameter / 2 })));
}

/** Width of waste at each block's end that pegs must fit into, mm. */
export const pegWaste = (plane: Elevation): number => {
  const { blockToe, blockHeel } = stageExtent(plane, "blank");
  return Math.min(-blockToe, blockHeel - plane.design.body.length);
};
