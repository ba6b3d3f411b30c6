// How each kind of line looks, for every format: widths and dashes in mm, told apart in black and white.

import type { LineKind } from "./picture/picture.ts";
import { LINE_MEANINGS } from "./words/sheets.ts";

export interface LineStyle {
  /** mm. */
  readonly width: number;
  /** Dash, gap, dash, gap … mm; none for an unbroken line. */
  readonly dashes: readonly number[];
  /** Grey of the line: 0 white, 1 black. */
  readonly shade: number;
  /** What it stands for, as the sheet's first page explains it. */
  readonly meaning: string;
}

/** Wide and narrow lines stand 2 to 1. @see ISO 128-2:2020, line groups (0.25 and 0.5; from memory) */
const WIDE = 0.5;
const NARROW = 0.25;

/** Elements of broken lines by their width. @see ISO 128-2:2020, table of line elements (24 d, 12 d, 3 d, 0.5 d; from memory) */
const longDash = (d: number) => 24 * d;
const dash = (d: number) => 12 * d;
const gap = (d: number) => 3 * d;
const dot = (d: number) => d / 2;

/**
 * Outlines are continuous wide lines (01.2), what lies behind is dashed narrow (02.1), axes are long-dashed dotted narrow
 * (04.1), cuts are long-dashed double-dotted narrow (05.1: shape before forming), dimensions are continuous narrow (01.1).
 * What is pencilled on wood is short dashes between the two widths; a plot's lines are no part of the standard.
 * @see ISO 128-2:2020, line types and their uses (from memory)
 */
export const LINE_STYLES: Readonly<Record<LineKind, LineStyle>> = {
  outline: { width: WIDE, dashes: [], shade: 1, meaning: LINE_MEANINGS.outline },
  hidden: { width: NARROW, dashes: [dash(NARROW), gap(NARROW)], shade: 1, meaning: LINE_MEANINGS.hidden },
  axis: {
    width: NARROW,
    dashes: [longDash(NARROW), gap(NARROW), dot(NARROW), gap(NARROW)],
    shade: 1,
    meaning: LINE_MEANINGS.axis,
  },
  cut: {
    width: NARROW,
    dashes: [longDash(NARROW), gap(NARROW), dot(NARROW), gap(NARROW), dot(NARROW), gap(NARROW)],
    shade: 1,
    meaning: LINE_MEANINGS.cut,
  },
  mark: { width: 0.35, dashes: [6 * NARROW, 4 * NARROW], shade: 1, meaning: LINE_MEANINGS.mark },
  thin: { width: 0.18, dashes: [], shade: 1, meaning: LINE_MEANINGS.thin },
  grid: { width: 0.13, dashes: [], shade: 0.45, meaning: LINE_MEANINGS.grid },
  strong: { width: 0.7, dashes: [], shade: 1, meaning: LINE_MEANINGS.strong },
};
