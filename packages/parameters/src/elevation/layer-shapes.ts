// Each layer of the core's two blocks as a flat shape with its peg holes. Layers of one block are one outline, but for the middle
// ones, which are set back for the recess.
import {
  FAR,
  type HolePair,
  line,
  type Outline,
  reverseOutline,
  type Segment,
  type Shape,
  splitAtIntersection,
  widestHolePair,
} from "@lamplane/geometry";
import type { Stage } from "../table/index.ts";
import { blocksAt, meetTop } from "./blocks.ts";
import type { Elevation } from "./elevation.ts";
import { bedToPlane } from "./frame.ts";
import { coreLayers, type Layer, type RecessLayers, recessLayers } from "./layers.ts";
import { memoizeByPlane } from "./memoize.ts";
import type { Recess } from "./recess.ts";
import { recessProfile } from "./recess-profile.ts";

export type CoreBlock = "front" | "bed";

/** One layer of a block. `number` counts from 1 in z order. */
export interface LayerShape extends Layer {
  readonly name: `${CoreBlock}-layer-${number}`;
  readonly block: CoreBlock;
  readonly number: number;
  readonly isSetBack: boolean;
  readonly shape: Shape;
}

/** The layers of a plane's core; undefined for a core in one piece. */
export const layersOf = ({ design, recess }: Elevation): readonly Layer[] | undefined =>
  coreLayers(design, recess ? wantedRecess(design) : 0);

/** Width that the recess is to have, whatever its layers make of it. mm */
export const wantedRecess = ({ recess, capIron }: Elevation["design"]): number =>
  recess.width === "auto" ? capIron.screwHead.diameter + recess.clearance : recess.width;

/** The layers that are set back; undefined without layers or recess. */
export function setBackLayers(plane: Elevation): RecessLayers | undefined {
  const layers = layersOf(plane);
  return layers && plane.recess && recessLayers(layers, wantedRecess(plane.design));
}

/**
 * Every layer at a stage, those of the front block first. At the stage "blank" the bed still has its allowance.
 * @throws Error (our bug) where ramp, bed or recess miss the top; the checks stop such a design before.
 */
export function layerShapes(plane: Elevation, stage: Stage): LayerShape[] {
  const layers = layersOf(plane);
  if (!layers) return [];
  const setBack = setBackLayers(plane);
  const outlines = layerOutlines(plane, stage);
  const pegs = layerPegs(plane);
  const shapeOf = (block: CoreBlock, boundary: Outline): Shape => ({
    boundary,
    holes: [],
    circles: pegs[block].holes,
  });
  return (["front", "bed"] as const).flatMap((block) =>
    layers.map((layer, i): LayerShape => {
      const isSetBack = block === "bed" && setBack !== undefined && i >= setBack.first && i <= setBack.last;
      const boundary = isSetBack ? outlines.setBack : outlines[block];
      const number = i + 1;
      return { ...layer, name: `${block}-layer-${number}`, block, number, isSetBack, shape: shapeOf(block, boundary) };
    }),
  );
}

export interface LayerOutlines {
  readonly front: Outline;
  readonly bed: Outline;
  /** The bed block's where it is set back for the recess; the same as `bed` without one. */
  readonly setBack: Outline;
}

/** Outlines of the blocks' layers at a stage. @param allowance wood on the bed still to be trued off, mm */
export function layerOutlines(
  plane: Elevation,
  stage: Stage,
  allowance = stage === "blank" ? plane.design.core.allowanceBed : 0,
): LayerOutlines {
  const { frame } = plane;
  const cut = allowance === 0 ? plane : { ...plane, frame: { ...frame, thickness: frame.thickness - allowance } };
  const blocks = blocksAt(cut, stage);
  return { front: blocks.front, bed: blocks.bed, setBack: setBackOutline(plane, blocks, allowance) };
}

function setBackOutline(
  { frame, recess }: Elevation,
  { bed, bedChain, topOverBed }: ReturnType<typeof blocksAt>,
  allowance: number,
): Outline {
  if (!recess) return bed;
  const split = splitAtFloor(frame, recess, topOverBed);
  if (!split) throw new Error("the recess does not come out of the top of the bed");
  const notch = recessProfile(frame, recess, split.at, allowance - frame.thickness);
  const solelines = bed.slice(0, bed.length - topOverBed.length - bedChain.length);
  const bedLine = bedChain.at(-1)!;
  return [
    ...solelines,
    ...split.before,
    ...notch,
    line(notch.at(-1)!.to, bedLine.from),
    ...reverseOutline(bedChain.slice(0, -1)),
  ];
}

/** The top over the bed, split where the floor of the recess comes out of it; undefined where it does not. */
function splitAtFloor(frame: Elevation["frame"], { low, depth }: Recess, topOverBed: readonly Segment[]) {
  const floor = -frame.thickness - depth;
  return splitAtIntersection(topOverBed, [line(bedToPlane(frame, low, floor), bedToPlane(frame, FAR, floor))]);
}

export type LayerPegs = Readonly<Record<CoreBlock, HolePair>>;

/**
 * Where the two pegs of each block go: in wood that stays, clear of the finished block's edges, of the recess and of each other
 * by as much as can be.
 */
export const layerPegs: (plane: Elevation) => LayerPegs = memoizeByPlane((plane) => {
  const radius = plane.design.core.pegDiameter / 2;
  const finished = layerOutlines(plane, "trued");
  return { front: widestHolePair(finished.front, radius), bed: widestHolePair(finished.setBack, radius) };
});

/** Least wood round a peg, mm; 0 where ramp, bed or recess miss the top of the body, which a check of its own refuses. */
export function layerPegWood(plane: Elevation): number {
  if (!layersMeetTop(plane)) return 0;
  const { front, bed } = layerPegs(plane);
  return Math.min(front.wood, bed.wood);
}

/** Whether ramp, bed and recess come out of the finished top, so that the layers have outlines. */
function layersMeetTop(plane: Elevation): boolean {
  const { frame, recess } = plane;
  if (!meetTop(plane, "trued")) return false;
  return !recess || splitAtFloor(frame, recess, blocksAt(plane, "trued").topOverBed) !== undefined;
}

/** How far a peg stays inside each outer face of the core, mm: it must not hold the cheeks off. Common practice, no published source. */
const PEG_SHORT = 1;

/** Length of the pegs through all layers, short of the outer faces. mm */
export const layerPegLength = ({ widths }: Elevation): number => widths.core - 2 * PEG_SHORT;
