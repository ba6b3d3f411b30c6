// What a plane may be for, and the sizes that the trade gives it. The command and the page offer the same four.
import { COMMON_PRACTICE } from "../table/index.ts";
import { PURPOSE_TITLES } from "../words/purposes.ts";

/** Where the sizes come from. */
export const PURPOSE_SOURCE = COMMON_PRACTICE;

export interface PurposeRow {
  readonly title: string;
  /** Values by path, mm and degrees. */
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
  small: {
    title: PURPOSE_TITLES.small,
    // A single iron, on which no screw leaves too little land; a pin that does not sag over an iron of 38 mm.
    values: { ...sizes([32, 3], [140, 42], 0.15), "capIron.thickness": 0, "pin.diameter": 9.5, "pin.tenon": 6.5 },
  },
  smoother: { title: PURPOSE_TITLES.smoother, values: sizes([48, 3.6], [230, 58], 0.15) },
  jack: { title: PURPOSE_TITLES.jack, values: { ...sizes([44.5, 3.6], [360, 60], 0.8), "bed.angle": 45 } },
  jointer: {
    title: PURPOSE_TITLES.jointer,
    // Over so wide an iron the usual pin sags, and the core shrinks more.
    values: {
      ...sizes([60, 4], [610, 65], 0.25),
      "pin.diameter": 14.5,
      "pin.tenon": 10.5,
      "pin.endClearance": 0.6,
    },
  },
} as const satisfies Record<string, PurposeRow>;
export type Purpose = keyof typeof PURPOSES;
export const PURPOSE_NAMES = Object.keys(PURPOSES) as readonly Purpose[];
