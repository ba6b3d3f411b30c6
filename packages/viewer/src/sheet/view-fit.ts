// How much room a view leaves round itself: as much as its numbers take, found by laying them out; no number is cut off.
import type { View } from "../protocol/view.ts";
import { fitScale, type Padding, type Scale } from "./layout.ts";
import type { NumberBox } from "./obstacles.ts";

const LEAST: Padding = { left: 14, right: 14, top: 14, bottom: 14 }; // px
const EDGE = 6; // px between a number and the field's edge: widths are reckoned, not measured
const STEP = 8; // px: a digit more in a number is no other scale
const MOST_UPRIGHT = 0.34; // of the height, over or under the view: the drawing keeps the rest
const FREE_ROUNDS = 3; // with leaders where they would like to stand; then where the field's sides let them
const ROUNDS = 6;

export interface FitInput {
  readonly box: View["box"];
  readonly width: number;
  readonly tallest: number;
  /** At the sides no more than this, so that numbers leave the drawing its room on a phone. */
  readonly most: Pick<Padding, "left" | "right">;
  /** What the numbers cover at a scale; `withinSides`: leaders keep to the field's width. */
  boxesAt(scale: Scale, withinSides: boolean): readonly NumberBox[];
}

type Most = FitInput["most"] & { readonly upright: number };

/** The largest scale at which the view and its numbers fit. */
export function fitView({ box, width, tallest, most: sides, boxesAt }: FitInput): Scale {
  const most = { ...sides, upright: MOST_UPRIGHT * tallest };
  let padding = LEAST;
  let scale = fitScale(box, padding, width, tallest);
  for (let round = 0; round < ROUNDS; round++) {
    const withinSides = round >= FREE_ROUNDS;
    const grown = growPadding(overruns(boxesAt(scale, withinSides), scale), padding, most);
    const isEnough = Object.entries(grown).every(([side, room]) => room === padding[side as keyof Padding]);
    if (isEnough && withinSides) break;
    padding = grown;
    scale = fitScale(box, padding, width, tallest);
  }
  return scale;
}

/** By how much the numbers reach over each edge of the field, px; 0 or less where they do not. */
function overruns(boxes: readonly NumberBox[], { width, height }: Scale): Padding {
  const most = (over: (box: NumberBox) => number) => Math.max(0, ...boxes.map((box) => over(box) + EDGE));
  return {
    left: most(({ left }) => -left),
    right: most(({ right }) => right - width),
    top: most(({ top }) => -top),
    bottom: most(({ bottom }) => bottom - height),
  };
}

function growPadding(over: Padding, padding: Padding, most: Most): Padding {
  const grown = (side: keyof Padding) => padding[side] + Math.ceil(over[side] / STEP) * STEP;
  return {
    left: Math.max(padding.left, Math.min(grown("left"), most.left)),
    right: Math.max(padding.right, Math.min(grown("right"), most.right)),
    top: Math.max(padding.top, Math.min(grown("top"), most.upright)),
    bottom: Math.max(padding.bottom, Math.min(grown("bottom"), most.upright)),
  };
}
