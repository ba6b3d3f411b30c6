// The mouth's opening over the wood that truings take off the sole.
import { lifeDepth } from "@lamplane/bench";
import { type Elevation, mouthOpeningAt, removalForOpening } from "@lamplane/parameters/elevation";
import type { Picture } from "../picture/picture.ts";
import { MOUTH_PLOT } from "../words/plots.ts";
import { formatPlotLength, lengthAxis } from "./axis.ts";
import { plotPicture } from "./plot.ts";
import { PLOT_SIZE } from "./plot-frame.ts";
import { BAND_SHADES, type MarkedPoint } from "./plot-words.ts";

/** Steps of a curve: closer than a pen's width at any scale that is printed. */
const STEPS = 60;
/** Share of the plot's length shown before the mouth opens. */
const BEFORE = 0.4;

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
      sole.allowance > first
        ? [{ from: first, to: sole.allowance, shade: BAND_SHADES.light, words: MOUTH_PLOT.firstTruing }]
        : [],
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
