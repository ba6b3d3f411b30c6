// What a year's dry and damp days do to the bed's angle and to the mouth: the wood moves up and down, along its grain hardly.

import { planeSeasons, yearlyAngles } from "@lamplane/bench";
import type { Elevation } from "@lamplane/parameters/elevation";
import { formatAngle, formatDecimalLength } from "@lamplane/parameters/units";
import type { Picture } from "../picture/picture.ts";
import { SEASONS_PLOT } from "../words/plots.ts";
import { type Axis, lengthAxis, numberAxis } from "./axis.ts";
import { plotPicture } from "./plot.ts";
import { PLOT_SIZE } from "./plot-frame.ts";

const HEIGHT = 60;

interface YearLine {
  readonly name: string;
  readonly title: string;
  readonly label: (value: number) => string;
  readonly points: readonly { readonly x: number; readonly y: number }[];
  readonly axis: (least: number, greatest: number) => Axis;
}

/** Bed angle and mouth over the wood's moisture; none where the tables do not know how the wood moves. */
export function yearPlots(plane: Elevation, width: number = PLOT_SIZE.width): Picture[] {
  const { units, name } = plane.design;
  const year = yearlyAngles(plane);
  if (year.length < 2) return [];
  return [
    drawLine(plane, width, {
      name: "bed-over-year",
      title: SEASONS_PLOT.bedTitle({ name }),
      label: (value) => SEASONS_PLOT.bed({ angle: formatAngle(value, { decimals: 2, halves: "scaled" }) }),
      points: year.map(({ moisture, bed }) => ({ x: moisture, y: bed })),
      axis: (least, greatest) => numberAxis({ label: SEASONS_PLOT.bedAngle, least, greatest, most: 4 }, "°"),
    }),
    drawLine(plane, width, {
      name: "mouth-over-year",
      title: SEASONS_PLOT.mouthTitle({ name }),
      label: (value) =>
        SEASONS_PLOT.mouth({ opening: formatDecimalLength(value, { units, decimals: { mm: 3, in: 4 } }) }),
      points: year.map(({ moisture, mouth }) => ({ x: moisture, y: mouth })),
      axis: (least, greatest) => lengthAxis({ label: SEASONS_PLOT.opening, least, greatest, most: 4 }, units),
    }),
  ];
}

function drawLine(plane: Elevation, width: number, { name, title, label, points, axis }: YearLine): Picture {
  const ys = points.map(({ y }) => y);
  const [first, last] = [points[0]!, points.at(-1)!];
  const { moisture } = planeSeasons(plane).planned;
  const planned = points.reduce((near, each) =>
    Math.abs(each.x - moisture) < Math.abs(near.x - moisture) ? each : near,
  );
  return plotPicture({
    name,
    width,
    height: HEIGHT,
    title,
    x: numberAxis({ label: SEASONS_PLOT.moisture, least: first.x, greatest: last.x, tight: true }, "%"),
    y: axis(Math.min(...ys), Math.max(...ys)),
    series: [{ label: label(last.y), line: "strong", points }],
    points: [
      { at: first, words: label(first.y) },
      { at: planned, words: SEASONS_PLOT.planned({ value: label(planned.y) }) },
    ],
  });
}
