// The plots of a plane: what its mouth and throat do, what the seasons do to its gaps, and which step decides a figure.

import { lifeDepth } from "@lamplane/bench";
import {
  type Elevation,
  mouthOpeningAt,
  removalForOpening,
  type ThroatNeighbour,
  type ThroatWidth,
  throatChokes,
  throatSeries,
} from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import { formatDecimalLength, type Units } from "@lamplane/parameters/units";
import type { LineKind, Picture } from "../picture/picture.ts";
import { MOUTH_PLOT, SEASONS_PLOT, THROAT_PLOT } from "../words/plots.ts";
import { lengthAxis, numberAxis } from "./axis.ts";
import { barPicture, type ShareRow } from "./bars.ts";
import { plotPicture, type Series } from "./plot.ts";
import { PLOT_SIZE } from "./plot-frame.ts";
import type { Band, MarkedPoint } from "./plot-words.ts";

/** Steps of a curve: closer than a pen's width at any scale that is printed. */
const STEPS = 60;
/** Share of the plot's length shown before the mouth opens. */
const BEFORE = 0.4;
const LIGHT = 0.07;
const DARKER = 0.16;

/** A small length in the maker's unit alone: a plot has no room for both. */
const formatPlotLength = (mm: number, units: Units): string =>
  formatDecimalLength(mm, { units, decimals: { mm: 2, in: 3 } });

const sampleEvenly = (from: number, to: number): number[] =>
  Array.from({ length: STEPS + 1 }, (_, i) => (i === STEPS ? to : from + ((to - from) * i) / STEPS));

/**
 * Mouth opening over all the wood taken off the sole: the truing after glue-up, and each later truing of the plane's life.
 * @param width of the picture, mm
 */
export function mouthPlot(plane: Elevation, width: number = PLOT_SIZE.width): Picture {
  const { units, mouth, sole } = plane.design;
  const life = lifeDepth(plane);
  const opens = Math.max(-sole.allowance, removalForOpening(plane, 0));
  const at = (off: number) => ({ x: off + sole.allowance, y: Math.max(0, mouthOpeningAt(plane, off)) });
  const last = at(life);
  // The shut mouth's long way is cut short: the plot begins a little before the edge comes through.
  const first = Math.max(0, at(opens).x - BEFORE * (last.x - at(opens).x));
  return plotPicture({
    name: "mouth-over-life",
    width,
    title: MOUTH_PLOT.title({ name: plane.design.name }),
    x: lengthAxis({ label: MOUTH_PLOT.off, least: first, greatest: last.x, tight: true }, units),
    y: lengthAxis({ label: MOUTH_PLOT.opening, least: 0, greatest: last.y }, units),
    series: [
      {
        label: MOUTH_PLOT.after({ opening: formatPlotLength(last.y, units), off: formatPlotLength(life, units) }),
        line: "strong",
        points: sampleEvenly(opens, life).map(at),
      },
      {
        label: MOUTH_PLOT.wanted({ opening: formatPlotLength(mouth.opening, units) }),
        line: "hidden",
        points: [
          { x: first, y: mouth.opening },
          { x: last.x, y: mouth.opening },
        ],
      },
    ],
    points: mouthPoints(plane, opens, at, life),
    bands:
      sole.allowance > first ? [{ from: first, to: sole.allowance, shade: LIGHT, words: MOUTH_PLOT.firstTruing }] : [],
  });
}

function mouthPoints(
  { design, ramp }: Elevation,
  opens: number,
  at: (off: number) => { x: number; y: number },
  life: number,
): MarkedPoint[] {
  const { units, sole } = design;
  const wear = ramp.curve?.begin.y ?? Number.POSITIVE_INFINITY;
  return [
    { at: at(0), words: MOUTH_PLOT.truedSole({ off: formatPlotLength(sole.allowance, units) }) },
    ...(opens > -sole.allowance && opens < 0
      ? [{ at: at(opens), words: MOUTH_PLOT.opens({ off: formatPlotLength(opens + sole.allowance, units) }) }]
      : []),
    ...(wear < life ? [{ at: at(wear), words: MOUTH_PLOT.wearEnds }] : []),
  ];
}

/**
 * The throat's width over the path of the shaving, what lies nearest across it, and where it chokes.
 * @param width of the picture, mm
 */
export function throatPlot(plane: Elevation, width: number = PLOT_SIZE.width): Picture {
  const { units, name } = plane.design;
  const series = throatSeries(plane);
  const last = series.at(-1)!;
  const widest = Math.max(...series.map(({ width }) => width));
  return plotPicture({
    name: "throat-width",
    width,
    title: THROAT_PLOT.title({ name }),
    x: lengthAxis({ label: THROAT_PLOT.path, least: 0, greatest: last.along, tight: true }, units),
    y: lengthAxis({ label: THROAT_PLOT.width, least: 0, greatest: widest }, units),
    series: [
      {
        label: THROAT_PLOT.atTop({ width: formatPlotLength(last.width, units) }),
        line: "strong",
        points: series.map(({ along, width }) => ({ x: along, y: Math.max(0, width) })),
      },
    ],
    points: throatPoints(plane.design, series),
    bands: nearestBands(series),
  });
}

function throatPoints({ units }: Design, series: readonly ThroatWidth[]): MarkedPoint[] {
  const at = (station: ThroatWidth) => ({ x: station.along, y: Math.max(0, station.width) });
  const chokes = throatChokes(series).map(({ station, by }) => ({
    at: at(station),
    words: THROAT_PLOT.narrows({
      by: formatPlotLength(by, units),
      width: formatPlotLength(station.width, units),
      nearest: station.nearest,
    }),
  }));
  return [
    ...chokes,
    { at: at(series[0]!), words: THROAT_PLOT.mouth({ opening: formatPlotLength(series[0]!.width, units) }) },
  ];
}

/** Stretches of the path over which the same thing lies nearest; neighbouring stretches differ in shade. */
function nearestBands(series: readonly ThroatWidth[]): Band[] {
  const stretches: { nearest: ThroatNeighbour; from: number; to: number }[] = [];
  for (const { nearest, along } of series) {
    const current = stretches.at(-1);
    if (current?.nearest === nearest) current.to = along;
    else {
      const from = current ? (current.to + along) / 2 : along;
      if (current) current.to = from;
      stretches.push({ nearest, from, to: along });
    }
  }
  return stretches.map(({ nearest, from, to }, i) => ({
    from,
    to,
    shade: i % 2 === 0 ? LIGHT : DARKER,
    words: nearest,
  }));
}

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

export interface SharesPlotOptions {
  /** Kebab-case name of the picture. */
  readonly name: string;
  readonly title: string;
  /** What the shares are of, along the axis. */
  readonly axis: string;
  /** Of the picture, mm. */
  readonly width?: number;
}

/** Which input decides a figure: bars in the order given. */
export const sharesPlot = (rows: readonly ShareRow[], options: SharesPlotOptions): Picture =>
  barPicture({ ...options, rows });
