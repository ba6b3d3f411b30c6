// What the seasons do to a plane's gaps.
import type { Units } from "@lamplane/parameters/units";
import type { LineKind, Picture } from "../picture/picture.ts";
import { SEASONS_PLOT } from "../words/plots.ts";
import { formatPlotLength, lengthAxis, numberAxis } from "./axis.ts";
import { plotPicture, type Series } from "./plot.ts";
import { PLOT_SIZE } from "./plot-frame.ts";

/** Gaps at one moisture, mm; undefined where the tables do not know the wood. */
export interface SeasonGaps {
  /** Percent. */
  readonly moisture: number;
  /** Relative humidity at which the wood comes to that moisture, percent; plotted over where every row has it. */
  readonly humidity?: number | undefined;
  readonly sideGap?: number | undefined;
  readonly pinEndGap?: number | undefined;
  readonly wedgeGap?: number | undefined;
}

export interface SeasonsPlotOptions {
  readonly units: Units;
  /** Name of the plane, for the title. */
  readonly of?: string;
  /** Moisture (or humidity, where that is plotted over) at which the sizes are cut. */
  readonly planned?: number;
  /** Gap to be left at the worst of the year, mm. */
  readonly leastGap?: number;
  /** Of the picture, mm. */
  readonly width?: number;
}

const GAPS: readonly (readonly [key: "sideGap" | "pinEndGap" | "wedgeGap", words: string, line: LineKind])[] = [
  ["sideGap", SEASONS_PLOT.sideGap, "strong"],
  ["wedgeGap", SEASONS_PLOT.wedgeGap, "hidden"],
  ["pinEndGap", SEASONS_PLOT.pinEndGap, "axis"],
];

/** The gaps over the year's range. A gap that no row knows is left out; below 0 the parts bind. */
export function seasonsPlot(rows: readonly SeasonGaps[], options: SeasonsPlotOptions): Picture {
  const { units, of, planned, leastGap, width = PLOT_SIZE.width } = options;
  const humid = rows.length > 0 && rows.every(({ humidity }) => humidity !== undefined);
  const xOf = (row: SeasonGaps) => (humid ? row.humidity! : row.moisture);
  const sorted = [...rows].sort((a, b) => xOf(a) - xOf(b));
  const known = GAPS.map(([key, words, kind]) => ({
    words,
    kind,
    points: sorted.flatMap((row) => (row[key] === undefined ? [] : [{ x: xOf(row), y: row[key] }])),
  })).filter(({ points }) => points.length >= 2);
  const [xs, ys] = [sorted.map(xOf), known.flatMap(({ points }) => points.map(({ y }) => y))];
  const [driest, dampest] = xs.length > 0 ? [Math.min(...xs), Math.max(...xs)] : [0, 1];
  const level = (label: string, y: number): Series => ({
    label,
    line: "thin",
    points: [driest, dampest].map((x) => ({ x, y })),
  });
  const least =
    leastGap === undefined
      ? []
      : [level(SEASONS_PLOT.leastWanted({ gap: formatPlotLength(leastGap, units) }), leastGap)];
  const lines = known.map(({ words, kind, points }): Series => {
    const smallest = Math.min(...points.map(({ y }) => y));
    return { label: SEASONS_PLOT.least({ what: words, gap: formatPlotLength(smallest, units) }), line: kind, points };
  });
  const note = known.length === 0 ? SEASONS_PLOT.unknown : undefined;
  return plotPicture({
    name: "seasons",
    width,
    title: SEASONS_PLOT.title({ of, note }),
    x: numberAxis(
      { label: humid ? SEASONS_PLOT.humidity : SEASONS_PLOT.moisture, least: driest, greatest: dampest, tight: true },
      "%",
    ),
    y: lengthAxis(
      { label: SEASONS_PLOT.gap, least: Math.min(0, ...ys), greatest: Math.max(leastGap ?? 0, ...ys) },
      units,
    ),
    series: [...lines, ...least],
    points: plannedPoints(known, planned),
  });
}

/** The moisture at which the sizes are cut, on the first line that is drawn; nothing where it lies outside the year. */
function plannedPoints(known: readonly { points: readonly { x: number; y: number }[] }[], planned: number | undefined) {
  const points = known[0]?.points ?? [];
  const after = points.findIndex(({ x }) => planned !== undefined && x >= planned);
  if (planned === undefined || after < 0 || points[0]!.x > planned) return [];
  const [a, b] = [points[Math.max(0, after - 1)]!, points[after]!];
  const share = b.x > a.x ? (planned - a.x) / (b.x - a.x) : 0;
  return [{ at: { x: planned, y: a.y + (b.y - a.y) * share }, words: SEASONS_PLOT.asCut }];
}
