// What a number covers on its field: reckoned from its characters, so that nothing is measured while it is drawn.

import { rowAt } from "@lamplane/parameters/design";
import type { LengthStyle } from "@lamplane/parameters/units";
import type { Dimension } from "../protocol/view.ts";
import { formatOnDrawing } from "../state/format.ts";
import type { NumberBox } from "./dimension-separation.ts";
import type { LaidDimension } from "./layout.ts";

const PER_CHARACTER = 7.6; // px: digits of the sheet's lettering
const PER_SMALL = 6.4; // px: words before a number

export function numberWidth({ value, unit, before = "", parameter }: Dimension, style: LengthStyle): number {
  const characters = formatOnDrawing(value, unit, style).length + (parameter ? 1 : 2);
  return characters * PER_CHARACTER + before.length * PER_SMALL + (parameter ? 6 : 0);
}

const [HIGH, AUTO_WIDE, AUTO_HIGH] = [25, 36, 20]; // px: a number, and the `auto` at its side or under it

/** What a number covers, its `auto` with it. */
export function numberBox({ parameter, shape }: Dimension, { number, hold }: LaidDimension, width: number): NumberBox {
  const row = parameter === undefined ? undefined : rowAt(parameter);
  const hasAuto = row?.kind === "number" && row.auto !== undefined;
  const isUpright = autoPosition(shape) === "upright";
  const whole = width + (hasAuto && !isUpright ? AUTO_WIDE : 0);
  const left = number.x - { left: 0, middle: width / 2, right: whole }[hold];
  return {
    left,
    right: left + whole,
    top: number.y - HIGH / 2,
    bottom: number.y + HIGH / 2 + (hasAuto && isUpright ? AUTO_HIGH : 0),
  };
}

/** Where an `auto` beside the number goes: under it where there is no room at its side. */
export const autoPosition = (shape: Dimension["shape"]): string =>
  shape.kind === "angle" || (shape.kind === "along" && (shape.side === "left" || shape.side === "right"))
    ? "upright"
    : shape.kind;
