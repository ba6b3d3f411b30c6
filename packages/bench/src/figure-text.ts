// Figures and measured values in words. Read by the traveller, the page and the bench's commands alike.
import { figureRow, type ReadingMode } from "@lamplane/parameters/elevation";
import { formatDrill, formatValue, type LengthStyle } from "@lamplane/parameters/units";

/** How a figure is read; a place on the wood by default. */
export const readingMode = (key: string): ReadingMode => figureRow(key)?.readingMode ?? "nearest";

/** What stands behind a size that may err one way only. */
const ONE_WAY: Readonly<Record<ReadingMode, string>> = {
  up: ", no less",
  down: ", no more",
  nearest: "",
  fine: "",
  drill: "",
};

/** The words behind a size that may err one way only: what is milled or fitted later may be over, what takes wood away under. */
export const oneWayText = (mode: ReadingMode): string => ONE_WAY[mode];

/** A figure in words: a hole by its drill, anything else in its unit. */
export const formatFigure = (style: LengthStyle, key: string, value: number, unit: string): string =>
  readingMode(key) === "drill" ? formatDrill(value, style) : formatValue(value, unit, style);

/** A step's figure in words for the bench, with the way in which it may err. */
export const formatStepFigure = (style: LengthStyle, key: string, value: number, unit: string): string =>
  formatFigure(style, key, value, unit) + oneWayText(readingMode(key));
