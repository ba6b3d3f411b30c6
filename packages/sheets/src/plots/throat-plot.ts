// The throat's width along the path of the shaving.
import {
  type Elevation,
  type ThroatNeighbour,
  type ThroatWidth,
  throatChokes,
  throatSeries,
} from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import type { Picture } from "../picture/picture.ts";
import { THROAT_PLOT } from "../words/plots.ts";
import { formatPlotLength, lengthAxis } from "./axis.ts";
import { plotPicture } from "./plot.ts";
import { PLOT_SIZE } from "./plot-frame.ts";
import { BAND_SHADES, type Band, type MarkedPoint } from "./plot-words.ts";

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
    shade: i % 2 === 0 ? BAND_SHADES.light : BAND_SHADES.darker,
    words: nearest,
  }));
}
