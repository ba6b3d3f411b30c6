// The layers of a core that is glued up across its width: their thicknesses and places, and which of them make the recess.
import { parseLengths } from "../design/lengths.ts";
import type { Design } from "../table/index.ts";

/** One layer of the core; z from one face to the other, mm. The first is the right cheek's neighbour. */
export interface Layer {
  readonly from: number;
  readonly to: number;
}

/** Least thickness of a layer that can be planed and glued flat, mm. Common practice, no published source. */
export const LEAST_LAYER = 5;
/** No more layers than these are planned, however thin the board is. */
const MOST_LAYERS = 15;

/** Thickest layer that a board gives once each of its faces is planed, mm. */
export const layerFromBoard = ({ core, shop }: Design): number => core.board - 2 * shop.jointingPass;

/**
 * The layers in z order, about the middle of the core; undefined for a core in one piece. Given thicknesses stand as they are.
 * @param recess width of the recess wanted, mm; 0 without one
 */
export function coreLayers(design: Design, recess: number): readonly Layer[] | undefined {
  const { core, iron, body } = design;
  if (core.layers === "whole") return undefined;
  const planned = () => planLayers(iron.width + body.sideClearance, recess, layerFromBoard(design));
  return stackLayers(parseLengths(core.layers) ?? planned());
}

/** As few layers as the board allows, the same left and right, an odd number of them as wide as the recess together. */
function planLayers(width: number, recess: number, thickest: number): number[] {
  if (recess === 0) return equalLayers(width, countFor(width, thickest));
  const outer = (width - recess) / 2;
  const side = equalLayers(outer, countFor(outer, thickest));
  const middle = countFor(recess, thickest);
  return [...side, ...equalLayers(recess, middle + 1 - (middle % 2)), ...side];
}

const countFor = (width: number, thickest: number): number =>
  thickest > 0 ? Math.min(Math.max(1, Math.ceil(width / thickest - 1e-9)), MOST_LAYERS) : MOST_LAYERS;

const equalLayers = (width: number, count: number): number[] => Array.from({ length: count }, () => width / count);

function stackLayers(thicknesses: readonly number[]): Layer[] {
  const width = thicknesses.reduce((sum, thickness) => sum + thickness, 0);
  let at = -width / 2;
  return thicknesses.map((thickness) => {
    const from = at;
    at += thickness;
    return { from, to: at };
  });
}

/** First and last layer that are set back, and z of the recess's sides. */
export interface RecessLayers {
  readonly first: number;
  readonly last: number;
  readonly from: number;
  readonly to: number;
}

/** The middle layers that come nearest to the recess's width together. */
export function recessLayers(layers: readonly Layer[], wanted: number): RecessLayers {
  const count = layers.length;
  const firsts = Array.from({ length: Math.max(1, Math.ceil(count / 2) - 1) }, (_, i) => (count < 3 ? 0 : i + 1));
  const groups = firsts.map((first): RecessLayers => {
    const last = count - 1 - first;
    return { first, last, from: layers[first]!.from, to: layers[last]!.to };
  });
  const off = ({ from, to }: RecessLayers) => Math.abs(to - from - wanted);
  return groups.reduce((best, group) => (off(group) < off(best) ? group : best));
}

export const layerThickness = ({ from, to }: Layer): number => to - from;

/** Thicknesses of a stack that came out `width` wide: the two outer layers share the difference. mm */
export function layersOfStack(layers: readonly Layer[], width: number): number[] {
  const off = (width - (layers.at(-1)!.to - layers[0]!.from)) / 2;
  return layers.map((layer, i) => layerThickness(layer) + (i === 0 ? off : 0) + (i === layers.length - 1 ? off : 0));
}

/** Thicknesses of a stack whose recess came out `width` wide: what its layers gained the others have lost. mm */
export function layersOfRecess(
  layers: readonly Layer[],
  { first, last, from, to }: RecessLayers,
  width: number,
): number[] {
  const whole = layers.at(-1)!.to - layers[0]!.from;
  const within = layers.map((layer, i) => layerThickness(layer) * (i >= first && i <= last ? width / (to - from) : 1));
  const off = (whole - within.reduce((sum, thickness) => sum + thickness, 0)) / 2;
  return within.map((thickness, i) => thickness + (i === 0 ? off : 0) + (i === layers.length - 1 ? off : 0));
}
