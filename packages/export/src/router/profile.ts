// Round a part: passes by depth beside the wall, a finishing pass at full depth, bridges left on straight runs.
import { type Outline, offsetOutline, type Point, reverseOutline, type Segment } from "@lamplane/geometry";
import type { Design } from "@lamplane/parameters/table";
import { loopFrom, nearestAlong, pathLength, pathStretch } from "./loop.ts";
import { type Approach, beginnings, leadArcs, passDepths, rampDown, turnForOffset } from "./passes.ts";
import { type LoopSpan, tabSpans } from "./tabs.ts";
import type { ToolpathWriter } from "./toolpath.ts";

export interface ProfileCut {
  /** The part's, counter-clockwise. */
  readonly outline: Outline;
  /** How deep the cutter goes. */
  readonly depth: number;
  /** Middles of the bridges on the outline, and the height at which they end, below 0. */
  readonly tabs: readonly Point[];
  readonly tabTop: number;
}

type RouterRule = Design["router"];

/** Cuts round a part. With climb the part is on the cutter's right, as long as the spindle turns clockwise. */
export function cutProfile(to: ToolpathWriter, cut: ProfileCut, router: RouterRule): void {
  const radius = to.cutter.diameter / 2;
  const walls = offsetOutline(cut.outline, radius);
  const roughs = offsetOutline(cut.outline, radius + to.cutter.finish);
  walls.forEach((wall, i) => {
    // Loops behind the largest lie in a notch of the part: what they free is waste, and no bridge holds it.
    const tabs = i === 0 ? cut.tabs : [];
    const rough = to.cutter.finish > 0 ? roughs.find((loop) => isBeside(wall, loop, to.cutter.finish)) : undefined;
    cutLoop(to, { ...cut, tabs }, { wall: directed(wall, router), rough: rough && directed(rough, router) }, router);
  });
}

const directed = (loop: Outline, { direction }: RouterRule): Outline =>
  direction === "climb" ? reverseOutline(loop) : loop;

/** How far the way before a wall may be from it at a corner, in finishing allowances: the last pass takes no more at once. */
const FURTHEST = 4;

/** Whether a loop runs beside another everywhere, so that the last pass finds little to cut. */
const isBeside = (wall: Outline, loop: Outline, off: number): boolean =>
  wall.every(({ from }) => nearestAlong(from, loop).distance <= FURTHEST * off);

function cutLoop(
  to: ToolpathWriter,
  cut: ProfileCut,
  { wall, rough }: { wall: Outline; rough: Outline | undefined },
  router: RouterRule,
): void {
  const half = router.tabs.width / 2 + to.cutter.diameter / 2;
  const side = router.direction === "climb" ? 1 : -1; // where the waste is: left of the way with climb
  const way = rough ?? wall;
  const approach = rough && findApproach(wall, cut.tabs, half, side, to.cutter);
  const start = approach ? nearestAlong(pointOf(wall, approach.along), way).along : freeStart(way, cut.tabs, half);
  const loop = loopFrom(way, start);
  const over = { tabs: tabSpans(loop, cut.tabs, half), top: cut.tabTop };
  to.goOver(loop[0]!.from);
  for (const z of passDepths(cut.depth, to.cutter.step)) cutPass(to, loop, { z, over, rampAngle: router.rampAngle });
  if (rough) finishPass(to, cut, { wall, way: loop, approach }, router);
  to.lift();
}

/** Once round the wall at full depth, from the way of the passes before and back to it. */
function finishPass(
  to: ToolpathWriter,
  cut: ProfileCut,
  { wall, way, approach }: { wall: Outline; way: readonly Segment[]; approach: Approach | undefined },
  { rampAngle, tabs }: RouterRule,
): void {
  const last = loopFrom(wall, approach?.along ?? nearestAlong(way[0]!.from, wall).along);
  const half = tabs.width / 2 + to.cutter.diameter / 2;
  const over = { tabs: tabSpans(last, cut.tabs, half), top: cut.tabTop };
  to.inRole("lead", () => {
    to.lineTo(approach?.leadIn[0]?.from ?? last[0]!.from);
    if (approach) to.follow(approach.leadIn);
  });
  to.inRole("finish", () => cutPass(to, last, { z: to.at.z, over, rampAngle }));
  if (approach) to.inRole("lead", () => to.follow(approach.leadOut));
}

const pointOf = (loop: Outline, along: number): Point => loopFrom(loop, along)[0]!.from;

/** A straight place between two bridges, where the arcs begin and end on the way of the passes before. */
function findApproach(
  wall: Outline,
  tabs: readonly Point[],
  half: number,
  side: 1 | -1,
  { diameter, finish }: ToolpathWriter["cutter"],
): Approach | undefined {
  const radius = Math.max(diameter / 2, finish);
  const turn = turnForOffset(finish, radius);
  const reach = 2 * Math.sqrt(2 * radius * finish);
  const intervals = tabSpans(wall, tabs, half + reach);
  const whole = pathLength(wall);
  const place = beginnings(wall).find(
    ({ along, run }) => run > reach && !intervals.some((tab) => covers(tab, along, whole)),
  );
  return place && { along: place.along, ...leadArcs(place.at, place.direction, side, radius, turn) };
}

/** Where a loop without arcs to it is begun: off every bridge. */
function freeStart(loop: Outline, tabs: readonly Point[], half: number): number {
  const intervals = tabSpans(loop, tabs, half + 2);
  const whole = pathLength(loop);
  return beginnings(loop).find(({ along }) => !intervals.some((tab) => covers(tab, along, whole)))?.along ?? 0;
}

const covers = ({ from, to }: LoopSpan, along: number, whole: number): boolean =>
  [along - whole, along, along + whole].some((place) => place >= from && place <= to);

interface Pass {
  readonly z: number;
  /** What it rises over, and how high. */
  readonly over: { readonly tabs: readonly LoopSpan[]; readonly top: number };
  readonly rampAngle: number;
}

/** Once round a loop that begins here, off every bridge: at a depth, over each bridge at its height. */
function cutPass(to: ToolpathWriter, loop: readonly Segment[], { z, over, rampAngle }: Pass): void {
  const whole = pathLength(loop);
  const tabs = z < over.top ? over.tabs : [];
  const stops = [...tabs.map(({ from }) => from), whole];
  rampDown(to, loop, z, rampAngle, 0.9 * stops[0]!);
  let along = 0;
  for (const [i, tab] of tabs.entries()) {
    to.follow(pathStretch(loop, along, tab.from));
    to.riseTo(over.top);
    to.follow(pathStretch(loop, tab.from, tab.to));
    rampDown(to, pathStretch(loop, tab.to, whole), z, rampAngle, 0.9 * (stops[i + 1]! - tab.to));
    along = tab.to;
  }
  to.follow(pathStretch(loop, along, whole));
}
