// Every figure of hold, strength and seasons, once, beside those of the elevation. What the wood tables lack is left out.
import type { Elevation } from "@lamplane/parameters/elevation";
import {
  elevationFigures,
  evaluateFigures,
  type Figure,
  type FigureFormula,
  figureRow,
  withWords,
} from "@lamplane/parameters/elevation";
import type { FigureWords } from "@lamplane/parameters/words";
import { HOLD_FIGURES } from "./figures/hold.ts";
import { SEASON_FIGURES } from "./figures/seasons.ts";
import { SKEW_FIGURES } from "./figures/skew.ts";
import { PIN_FIGURES } from "./figures/strength.ts";
import { BENCH_FIGURE_WORDS, INDICATIVE } from "./words/figures.ts";

const ROWS = { ...SKEW_FIGURES, ...HOLD_FIGURES, ...PIN_FIGURES, ...SEASON_FIGURES } satisfies Record<
  keyof typeof BENCH_FIGURE_WORDS,
  FigureFormula
>;

/** What rests on estimates or tables says so wherever it is explained. */
const WORDS = Object.fromEntries(
  Object.entries<FigureFormula & { readonly isIndicative?: true }>(ROWS).map(([key, { isIndicative }]) => {
    const [name, help] = BENCH_FIGURE_WORDS[key as keyof typeof ROWS];
    return [key, [name, isIndicative ? `${help} ${INDICATIVE}` : help]];
  }),
) as unknown as Readonly<Record<keyof typeof ROWS, FigureWords>>;

/** The mouth across its width, hold, strength of the pin, seasons, in this order. */
export const BENCH_FIGURES = withWords(ROWS, WORDS);
export type BenchFigureKey = keyof typeof BENCH_FIGURES;

/** Every figure of a plane: the elevation's, then the bench's; those it does not have are left out. */
export const allFigures = (plane: Elevation): Figure[] => [
  ...elevationFigures(plane),
  ...evaluateFigures(BENCH_FIGURES, plane),
];

/** The row of a figure of either; undefined where none is called so. */
export const anyFigureRow = (key: string): FigureFormula | undefined =>
  figureRow(key) ?? (Object.hasOwn(BENCH_FIGURES, key) ? BENCH_FIGURES[key as BenchFigureKey] : undefined);
