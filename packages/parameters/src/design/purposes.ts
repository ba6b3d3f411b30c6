// What a plane may be for, and the sizes that the trade gives it. The command and the page offer the same four.
import { COMMON_PRACTICE } from "../table/index.ts";
import { PURPOSE_TITLES } from "../words/purposes.ts";

/** Where the sizes come from. */
export const PURPOSE_SOURCE = COMMON_PRACTICE;

export interface PurposeRow {
  readonly title: string;
  /** Values by path, mm. */
  readonly values: Readonly<Record<string, number>>;
}

const sizes = (iron: readonly [number, number], body: readonly [number, number], mouth: number) => ({
  "iron.width": iron[0],
  "iron.thickness": iron[1],
  "body.length": body[0],
  "body.height": body[1],
  "mouth.opening": mouth,
});

/** @see common practice, no published source */
export const PURPOSES = {
  small: { title: PURPOSE_TITLES.small, values: sizes([32, 3], [120, 36], 0.15) },
  smoother: { title: PURPOSE_TITLES.smoother, values: sizes([48, 3.6], [230, 58], 0.15) },
  jack: { title: PURPOSE_TITLES.jack, values: sizes([44.5, 3.6], [360, 60], 0.8) },
  // Over so wide an iron the usual pin sags: this is two ninths of the height.
  jointer: { title: PURPOSE_TITLES.jointer, values: { ...sizes([60, 4], [610, 65], 0.25), "pin.diameter": 14 } },
} as const satisfies Record<string, PurposeRow>;
export type Purpose = keyof typeof PURPOSES;
export const PURPOSE_NAMES = Object.keys(PURPOSES) as readonly Purpose[];
