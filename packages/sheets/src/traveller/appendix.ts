// What stands after the last step: hold and strength, and the plots.

import {
  assumptionCaption,
  LEAST_GAP,
  LEAST_RUNS,
  planeSeasonSeries,
  planeSeasons,
  plannedDesign,
  type ResultTolerance,
  toleranceReport,
} from "@lamplane/bench";
import type { Elevation } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import { mouthPlot } from "../plots/mouth-plot.ts";
import { seasonsPlot } from "../plots/seasons-plot.ts";
import { sharesPlot } from "../plots/shares-plot.ts";
import { throatPlot } from "../plots/throat-plot.ts";
import { yearPlots } from "../plots/year.ts";
import { APPENDIX_PLOTS } from "../words/plots.ts";

/** Plots of this plane, each with what it tells. */
export function travellerPlots(plane: Elevation, design: Design) {
  const { units, name } = design;
  const mouth = toleranceReport(plannedDesign(design), { runs: LEAST_RUNS }).results.find(
    ({ key }) => key === "mouthOpening",
  ) as ResultTolerance;
  const { shares } = mouth;
  return [
    { words: APPENDIX_PLOTS.mouth, picture: mouthPlot(plane) },
    {
      words: APPENDIX_PLOTS.throat,
      picture: throatPlot(plane),
    },
    {
      words: APPENDIX_PLOTS.gaps,
      picture: seasonsPlot(planeSeasonSeries(plane), {
        units,
        of: name,
        planned: planeSeasons(plane).planned.moisture,
        leastGap: LEAST_GAP,
      }),
    },
    ...yearPlots(plane).map((picture, i) => ({
      words: i === 0 ? APPENDIX_PLOTS.bed : APPENDIX_PLOTS.mouthYear,
      picture,
    })),
    ...(shares.length > 0
      ? [
          {
            words: APPENDIX_PLOTS.shares({ assumption: assumptionCaption(mouth, units) }),
            picture: sharesPlot(shares, {
              name: "mouth-shares",
              title: APPENDIX_PLOTS.sharesTitle({ name }),
              axis: APPENDIX_PLOTS.sharesAxis,
            }),
          },
        ]
      : []),
  ];
}
