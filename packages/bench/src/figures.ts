// Every figure of hold, strength and seasons, once, beside those of the elevation. What the wood tables lack is left out.
import type { Elevation } from "@lamplane/parameters/elevation";
import { elevationFigures, evaluateFigures, type Figure, type FigureRow } from "@lamplane/parameters/elevation";
import { HOLD_FIGURES } from "./figures/hold.ts";
import { SEASON_FIGURES } from "./figures/seasons.ts";
import { SKEW_FIGURES } from "./figures/skew.ts";
import { PIN_FIGURES } from "./figures/strength.ts";

/** The mouth across its width, hold, strength of the pin, seasons, in this order. */
export const BENCH_FIGURES = { ...SKEW_FIGURES, ...HOLD_FIGURES, ...PIN_FIGURES, ...SEASON_FIGURES } satisfies Record<
  string,
  FigureRow
>;
export type BenchFigureKey = keyof typeof BENCH_FIGURES;

/** Every figure of a plane: the elevation's, then the bench's; those it does not have are left out. */
export const allFigures = (plane: Elevation): Figure[] => [
  ...elevationFigures(plane),
  ...evaluateFigures(BENCH_FIGURES, plane),
];
