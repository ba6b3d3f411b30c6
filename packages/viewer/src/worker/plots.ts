// The plots that stand beside the figures they explain; made when the maker has paused, since some of them take their time.
import { LEAST_GAP, LEAST_RUNS, planeSeasonSeries, planeSeasons, toleranceReport } from "@lamplane/bench";
import type { Elevation } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import { mouthPlot, seasonsPlot, sharesPlot, throatPlot } from "@lamplane/sheets";
import type { MouthFilm } from "../protocol/mouth-film.ts";
import type { PlotName, Plots } from "../protocol/sheet-data.ts";
import { PLOT } from "../words/page.ts";
import { makeMouthFilm } from "./mouth-film.ts";

const STEPS_OF_YEAR = 25;

/**
 * What cannot be plotted for this design (a throat that cannot be, a wood without figures) is left out; a note says why.
 * @param width of each picture, mm: the letters are as large in a narrow one
 */
export function makePlots(
  design: Design,
  plane: Elevation,
  width: number,
): { plots: Plots; film: MouthFilm | undefined } {
  const makers: Readonly<Record<PlotName, () => Plots[PlotName]>> = {
    mouth: () => mouthPlot(plane, width),
    throat: () => throatPlot(plane, width),
    seasons: () =>
      seasonsPlot(planeSeasonSeries(plane, STEPS_OF_YEAR), {
        units: design.units,
        planned: planeSeasons(plane).planned.moisture,
        leastGap: LEAST_GAP,
        width,
      }),
    shares: () => makeSharesPlot(design, width),
  };
  const plots = Object.entries(makers).map(([name, make]) => [name, whatCanBeMade(make)]);
  return { plots: Object.fromEntries(plots), film: whatCanBeMade(() => makeMouthFilm(plane)) };
}

function whatCanBeMade<T>(make: () => T): T | undefined {
  try {
    return make();
  } catch {
    return undefined;
  }
}

function makeSharesPlot(design: Design, width: number): Plots["shares"] {
  // The shares come from derivatives; the runs by chance that come with them are kept few.
  const { results } = toleranceReport(design, { runs: LEAST_RUNS });
  const mouth = results.find(({ key }) => key === "mouthOpening");
  if (!mouth || !("shares" in mouth)) return undefined;
  const options = { name: "shares", title: PLOT.shares, axis: PLOT.sharesAxis };
  return sharesPlot(mouth.shares, { ...options, width });
}
