// The strips that a layered core and its cheeks are ripped as: each stands on edge, as thick as the board until it is planed.
import { type Elevation, layersOf, layerThickness } from "@lamplane/parameters/elevation";

/** Strips alike. Lengths mm. */
export interface LayerStrip {
  readonly piece: "layer" | "cheek";
  /** Of layers, counted from the right cheek; none of cheeks. */
  readonly numbers: readonly number[];
  readonly count: number;
  /** What it is planed to. */
  readonly thickness: number;
}

export interface LayerStock {
  /** Layers first, the thickest of them first. */
  readonly strips: readonly LayerStrip[];
  readonly count: number;
  /** Of the board, and what its planed faces leave of it. */
  readonly board: number;
  readonly thickest: number;
  /** Of each strip as ripped: along the grain, and what becomes its height once it stands on edge. */
  readonly length: number;
  readonly width: number;
  /** Board of that width that they take end to end, a kerf behind each. */
  readonly running: number;
  /** Rings that the board must have to its face for those wanted at the sole, degrees. */
  readonly boardRings: number;
}

/** The strips of a layered core; undefined for one in one piece. */
export function layerStock(plane: Elevation): LayerStock | undefined {
  const layers = layersOf(plane);
  if (!layers) return undefined;
  const { design, widths } = plane;
  const { kerf, jointingPass, millingAllowance } = design.shop;
  const alike = new Map<string, LayerStrip>();
  for (const [i, layer] of layers.entries()) {
    const thickness = layerThickness(layer);
    const known = alike.get(thickness.toFixed(3));
    const numbers = [...(known?.numbers ?? []), i + 1];
    alike.set(thickness.toFixed(3), { piece: "layer", numbers, count: numbers.length, thickness });
  }
  const strips: LayerStrip[] = [
    ...[...alike.values()].sort((a, b) => b.thickness - a.thickness),
    { piece: "cheek", numbers: [], count: 2, thickness: widths.cheek },
  ];
  const count = layers.length + 2;
  return {
    strips,
    count,
    board: design.core.board,
    thickest: design.core.board - 2 * jointingPass,
    length: widths.blankLength,
    width: widths.blankHeight + 2 * millingAllowance,
    running: count * (widths.blankLength + kerf),
    boardRings: 90 - design.wood.rings,
  };
}
