// What a number covers on its field: reckoned from its characters, so that nothing is measured while it is drawn.

import { rowAt } from "@lamplane/parameters/design";
import type { LengthStyle } from "@lamplane/parameters/units";
import type { Dimension } from "../protocol/view.ts";
import { formatOnDrawing } from "../state/format.ts";
import type { LaidDimension, NumberRoom } from "./layout.ts";
import type { NumberBox } from "./obstacles.ts";

const PER_CHARACTER = 7.6; // px: digits of the sheet's lettering
const PER_SMALL = 6.4; // px: words before a number

export function numberWidth({ value, unit, before = "", parameter }: Dimension, style: LengthStyle): number {
  const characters = formatOnDrawing(value, unit, style).length + (parameter ? 1 : 2);
  return characters * PER_CHARACTER + before.length * PER_SMALL + (parameter ? 6 : 0);
}

const [HIGH, AUTO_WIDE, AUTO_HIGH] = [25, 36, 20]; // px: a number, and the `auto` at its side or under it

/** What a number takes of the line that it stands on. */
export function numberRoom({ parameter, shape }: Dimension, width: number): NumberRoom {
  const isUpright = autoPosition(shape) === "upright";
  const auto = hasAuto(parameter);
  return { width, right: auto && !isUpright ? AUTO_WIDE : 0, below: auto && isUpright ? AUTO_HIGH : 0 };
}

function hasAuto(parameter: string | undefined): boolean {
  const row = parameter === undefined ? undefined : rowAt(parameter);
  return row?.kind === "number" && row.auto !== undefined;
}

/** What a number covers, its `auto` with it. */
export function numberBox(dimension: Dimension, { number, hold }: LaidDimension, width: number): NumberBox {
  const { right, below } = numberRoom(dimension, width);
  const left = number.x - { left: 0, middle: width / 2, right: width + right }[hold];
  return {
    left,
    right: left + width + right,
    top: number.y - HIGH / 2,
    bottom: number.y + HIGH / 2 + below,
  };
}

/** Where an `auto` beside the number goes: under it where there is no room at its side. */
export const autoPosition = (shape: Dimension["shape"]): string =>
  shape.kind === "angle" || (shape.kind === "along" && (shape.side === "left" || shape.side === "right"))
    ? "upright"
    : shape.kind;
