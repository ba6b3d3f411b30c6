// What decides the recess template: cutter, guide and recess, and whether they leave it walls.

import type { Outline } from "@lamplane/geometry";
import { blocksAt } from "../elevation/blocks.ts";
import type { Elevation } from "../elevation/elevation.ts";
import { planeToBed } from "../elevation/frame.ts";
import { LEAST_WALL, type NoJig, type ObstacleAdvice, type ObstacleSubject } from "./jig.ts";
import { roundedBoxOutline } from "./lines.ts";
import type { PlateRange } from "./plate.ts";
import { CORNER_GAP, slotTravel } from "./template-fences.ts";

/** How deep the first of two passes goes, at most, mm. */
const FIRST_PASS = 3;
/** How much of a bearing must run on the plate, mm. */
const BEARING_ON = 3;
/** Thinnest plate that does not bend under a router, mm. */
const LEAST_PLATE = 5;

/** What decides the template, read off the plane. All mm, along the bed from the iron's edge where it is a place. */
export interface TemplateLayout {
  readonly cutter: number;
  /** Diameter of what runs along the opening: a bearing of the cutter's size, or the bush. */
  readonly guide: number;
  /** By how much the opening is larger than the recess, all round: (bush − cutter) / 2. */
  readonly grown: number;
  readonly plate: number;
  readonly firstPass: number;
  /** Where the stop touches the block: the lowest place of its bed end, which is the chamfer's foot. */
  readonly stop: number;
  readonly stopDepth: number;
  /** Where the bed comes out of the blank's top. */
  readonly bedTop: number;
  readonly halfCore: number;
}

export function templateLayout(plane: Elevation): TemplateLayout {
  const { design, frame, recess } = plane;
  const { bush, cutterLength } = design.jigs;
  const { cutter } = design.recess;
  const depth = recess?.depth ?? 0;
  const guide = bush === 0 ? cutter : bush;
  const chain = blocksAt(plane, "blank").bedChain;
  const foot = planeToBed(frame, chain[0]!.from);
  const firstPass = Math.min(FIRST_PASS, depth / 2);
  return {
    cutter,
    guide,
    grown: (guide - cutter) / 2,
    plate: bush === 0 ? Math.max(cutterLength - firstPass + BEARING_ON, LEAST_PLATE) : cutterLength - depth,
    firstPass,
    stop: foot.s,
    stopDepth: Math.max(-frame.thickness - foot.v + 4, 8),
    bedTop: planeToBed(frame, chain.at(-1)!.to).s,
    halfCore: plane.widths.core / 2,
  };
}

/** By a bearing the plate may be thicker: the cutter must then stand out of the router by as much more, mm. */
const THICKER = 6;

/** Thickness of a template cut from sheet: a bearing wants a plate to run on, a bush one that the cutter reaches through. */
export function templatePlateRange({ design }: Elevation, { plate }: TemplateLayout): PlateRange {
  return design.jigs.bush === 0
    ? { least: plate, best: plate, most: plate + THICKER }
    : { least: LEAST_PLATE, best: plate, most: plate };
}

/** What keeps the template of a recess from being made: a bush too small or too large, a cutter too short, lands too narrow. */
export function templateObstacle(plane: Elevation, places: TemplateLayout): Omit<NoJig, "name"> | undefined {
  const { recess, design } = plane;
  const { bush, clearance, fence } = design.jigs;
  const obstacle = (
    subject: ObstacleSubject,
    value: number,
    limit: number,
    parameters: readonly string[],
    advice: ObstacleAdvice,
  ) => ({ subject, value, limit, unit: "mm", parameters, advice }) as const;
  const inBush = places.cutter + 2 * LEAST_WALL;
  const beside = places.halfCore + clearance - recess!.width / 2 - places.grown;
  const below = recess!.low - places.grown - places.stop;
  const atSlots = slotTravel(plane, places).inward + LEAST_WALL;
  const byBush = bush > 0;
  const bySlots = fence === "slotted";
  const judged = [
    byBush && obstacle("bush-diameter", bush, inBush, ["jigs.bush", "recess.cutter"], "let-cutter-turn-in-bush"),
    obstacle("template-plate", places.plate, LEAST_PLATE, ["jigs.cutterLength", "recess.depth"], "take-longer-cutter"),
    obstacle("plate-to-fence", beside, LEAST_WALL, ["jigs.bush", "recess.width"], "take-smaller-bush"),
    obstacle("plate-to-stop", below, CORNER_GAP, ["jigs.bush", "recess.travel"], "take-smaller-bush"),
    bySlots &&
      obstacle("plate-to-slots", atSlots, LEAST_WALL, ["jigs.fence", "jigs.bush", "recess.width"], "fix-fences"),
  ].filter((each) => each !== false);
  return judged.find(({ value, limit }) => !(value >= limit));
}

/** The opening: the recess grown all round, run on past the bed's top until the cutter is clear of the wood. */
export function templateOpening(plane: Elevation, places: TemplateLayout): Outline {
  const { width, low } = plane.recess!;
  const half = width / 2 + places.grown;
  const end = places.bedTop + places.cutter / 2 + places.guide / 2 + 1;
  return roundedBoxOutline(-half, low - places.grown, half, end, Math.min(places.guide / 2, half));
}
