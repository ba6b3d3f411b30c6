// What a number covers on its field: reckoned from its characters, so that nothing is measured while it is drawn.

import { rowAt } from "@lamplane/parameters/design";
import type { LengthStyle } from "@lamplane/parameters/units";
import type { Dimension } from "../protocol/view.ts";
import { formatOnDrawing } from "../state/format.ts";
import type { LaidDimension, NumberRoom } from "./layout.ts";
import type { NumberBox } from "./obstacles.ts";

// px, of a wide face: a browser's own is as wide or narrower.
const PER_DIGIT = 8.6;
const PER_SMALL = 7.2; // words before a number
const PER_CHARACTER = 7.6; // a number that only follows
const ROUND_INPUT = 2;
const [LEAST_DIGITS, SPARE_DIGITS] = [2, 0.6]; // as the input makes itself wide

function numberWidth({ value, unit, before = "", parameter }: Dimension, style: LengthStyle): number {
  const { length } = formatOnDrawing(value, unit, style);
  const words = before === "" ? 0 : before.length * PER_SMALL + 3;
  if (!parameter) return words + (length + 2) * PER_CHARACTER;
  return words + (Math.max(LEAST_DIGITS, length) + SPARE_DIGITS) * PER_DIGIT + ROUND_INPUT;
}

const [HIGH, AUTO_WIDE, AUTO_HIGH] = [25, 36, 20]; // px: a number, and the `auto` at its side or under it

/** What a dimension's number takes of the line that it stands on. */
export function numberRoom(dimension: Dimension, style: LengthStyle): NumberRoom {
  const width = numberWidth(dimension, style);
  const isUpright = autoPosition(dimension.shape) === "upright";
  const auto = hasAuto(dimension.parameter);
  return { width, right: auto && !isUpright ? AUTO_WIDE : 0, below: auto && isUpright ? AUTO_HIGH : 0 };
}

function hasAuto(parameter: string | undefined): boolean {
  const row = parameter === undefined ? undefined : rowAt(parameter);
  return row?.kind === "number" && row.auto !== undefined;
}

/** What a number covers, its `auto` with it. */
export function numberBox({ number, hold }: LaidDimension, { width, right, below }: NumberRoom): NumberBox {
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
