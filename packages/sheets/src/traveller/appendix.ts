// What stands after the last step: hold and strength, and the plots.

import {
  assumptionCaption,
  type BenchFigureKey,
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
import { mouthPlot, seasonsPlot, sharesPlot, throatPlot } from "../plots/plots.ts";
import { yearPlots } from "../plots/year.ts";
import { APPENDIX_PLOTS } from "../words/plots.ts";

/** What is told of hold and strength, in words that stand alone. */
export const STRENGTH_ROWS: readonly (readonly [BenchFigureKey, string])[] = [
  ["cuttingForce", "Force on the edge, fine shaving"],
  ["cuttingForceInCatch", "Force on the edge, a catch"],
  ["clampWanted", "Clamp on the iron that holds it, fine shaving"],
  ["clampWantedLeast", "The same where friction is best"],
  ["clampWantedMost", "The same where friction is worst"],
  ["clampWantedInCatch", "Clamp on the iron that holds it, a catch"],
  ["drivingForce", "Push on the wedge that clamps for a fine shaving"],
  ["holdMargin", "Self-locking margin of the wedge"],
  ["holdMarginLeast", "The same where friction is worst"],
  ["pinSag", "Sag of the cross pin, fine shaving"],
  ["pinBendingFactor", "Cross pin in bending: strength over stress, fine shaving"],
  ["tenonBendingFactor", "Tenons in bending at the shoulder: strength over stress, fine shaving"],
  ["tenonShearFactor", "Tenons in shear: strength over stress, fine shaving"],
  ["tenonBearingFactor", "Tenons pressed in their holes: strength over stress, fine shaving"],
  ["cheekBearingFactor", "Cheeks pressed by the tenons: strength over stress, fine shaving"],
  ["shearOutFactor", "Cheeks sheared out to the edge: strength over stress, fine shaving"],
  ["smallestFactorInCatch", "The weakest of these in a catch: strength over stress"],
];

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
