// All wood within an outline: from the middle outward, a pass deeper each time, the wall at last in one pass.
import { distance, type Outline, offsetOutline, outlineArea, type Point, reverseOutline } from "@lamplane/geometry";
import type { Cutter, Design } from "@lamplane/parameters/table";
import { loopFrom, nearestAlong, pathLength } from "./loop.ts";
import { type Approach, beginnings, leadArcs, passDepths, spiralDown, staysClear, turnForOffset } from "./passes.ts";
import type { ToolpathWriter } from "./toolpath.ts";

type RouterRule = Design["router"];

/** From one way round to the next, of the cutter's radius: nothing is left between them, in corners and in the middle. */
const STEP_OVER = 0.8;
/** Loops narrower than this, of the cutter's radius, are within reach of the loop around them. */
const NARROW = 0.15;
/** How much wider than the cutter a pocket must be, of its radius, for the cutter to wind its way down. */
const LEAST_WINDING = 0.15;

/** How far a loop's middle is from it, about, mm: exact for a circle. */
const halfWidth = (loop: Outline): number => (2 * Math.abs(outlineArea(loop))) / pathLength(loop);

/** Whether a cutter can wind its way down into a pocket and turn in it. */
export function fitsPocket(outline: Outline, { diameter }: Pick<Cutter, "diameter">): boolean {
  const loop = offsetOutline(outline, -diameter / 2)[0];
  return loop !== undefined && halfWidth(loop) >= (LEAST_WINDING * diameter) / 2;
}

/** Clears everything within a counter-clockwise outline. With climb the wall is on the cutter's right. */
export function cutPocket(to: ToolpathWriter, outline: Outline, depth: number, router: RouterRule): void {
  const { diameter, finish } = to.cutter;
  const radius = diameter / 2;
  const walls = offsetOutline(outline, -radius);
  const rings = ringsOf(outline, radius, finish);
  const allowance = rings.length > 0 ? finish : 0;
  let cleared = 0;
  for (const z of passDepths(depth, to.cutter.step)) {
    for (const [i, ring] of (rings.length > 0 ? rings : walls).entries()) {
      const linked = i > 0 ? linkTo(to.at, ring, STEP_OVER * radius) : undefined;
      const loop = directed(loopFrom(ring, linked ?? beginnings(ring)[0]!.along), router);
      if (linked !== undefined) to.lineTo(loop[0]!.from);
      else if (distance(to.at, loop[0]!.from) > 1e-6 || to.at.z < z) to.goOver(loop[0]!.from);
      if (linked === undefined && i === 0) to.plungeTo(cleared);
      if (linked === undefined) spiralDown(to, loop, z, router.rampAngle);
      to.follow(loop);
    }
    if (rings.length > 1) to.lift();
    cleared = z;
  }
  if (allowance === 0) to.lift();
  else for (const wall of walls) finishWall(to, { wall, outline, depth, allowance }, router);
}

const directed = (loop: Outline, { direction }: RouterRule): Outline =>
  direction === "climb" ? loop : reverseOutline(loop);

/** Ways round from the middle outward to the finishing allowance. */
function ringsOf(outline: Outline, radius: number, finish: number): Outline[] {
  const rings: Outline[][] = [];
  for (let off = radius + finish; ; off += STEP_OVER * radius) {
    const found = offsetOutline(outline, -off).filter(
      (loop) => rings.length === 0 || halfWidth(loop) > NARROW * radius,
    );
    if (found.length === 0) return rings.reverse().flat();
    rings.push(found);
  }
}

/** Where along a ring the cutter comes to it through wood that this pass clears; undefined where it is further off. */
function linkTo(from: Point, ring: Outline, furthest: number): number | undefined {
  const near = nearestAlong(from, ring);
  return near.distance <= furthest * 1.01 ? near.along : undefined;
}

interface WallCut {
  readonly wall: Outline;
  readonly outline: Outline;
  readonly depth: number;
  readonly allowance: number;
}

function finishWall(to: ToolpathWriter, { wall, outline, depth, allowance }: WallCut, router: RouterRule): void {
  const loop = directed(wall, router);
  const approach = findApproach(loop, outline, to.cutter, allowance, router);
  const last = loopFrom(loop, approach?.along ?? 0);
  to.goOver(approach?.leadIn[0]?.from ?? last[0]!.from);
  to.plungeTo(-depth); // through what the passes have cleared
  if (approach) to.inRole("lead", () => to.follow(approach.leadIn));
  to.inRole("finish", () => to.follow(last));
  if (approach) to.inRole("lead", () => to.follow(approach.leadOut));
  to.lift();
}

/** A place whose arcs begin and end where the passes have cleared, and that cut nothing but the allowance. */
function findApproach(
  loop: Outline,
  outline: Outline,
  { diameter }: Cutter,
  allowance: number,
  { direction }: RouterRule,
): Approach | undefined {
  const radius = diameter / 2;
  const side = direction === "climb" ? 1 : -1; // where the pocket's middle is
  for (const size of [radius, radius / 2, radius / 4, allowance])
    for (const place of beginnings(loop)) {
      const arcs = [90, turnForOffset(allowance, size)].map((turn) =>
        leadArcs(place.at, place.direction, side, size, turn),
      );
      const found = arcs.find(
        ({ leadIn, leadOut }) =>
          staysClear([...leadIn, ...leadOut], outline, radius) &&
          [leadIn[0]!.from, leadOut[0]!.to].every((p) => isCleared(p, outline, radius + allowance)),
      );
      if (found) return { along: place.along, ...found };
    }
  return undefined;
}

const isCleared = (p: Point, outline: Outline, clear: number): boolean =>
  nearestAlong(p, outline).distance >= clear - 1e-5;
