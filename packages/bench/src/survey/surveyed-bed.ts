// The bed as it is surveyed: sawn and trued, before the recess and the glue-up, on a blank with its flat top and its allowance.

import { sinDeg } from "@lamplane/geometry";
import { type Elevation, planeToBed } from "@lamplane/parameters/elevation";
import type { Bed, BedPoint, SurveyReadings } from "./readings.ts";

/** From the bed's tip on the blank's sole to the blank's top, and the core's width. mm */
export const bedExtent = ({ frame, widths }: Elevation): Bed => ({
  length: widths.blankHeight / sinDeg(frame.bedAngle),
  width: widths.core,
});

/** s up the iron at the bed's tip on the blank's sole: where `along` is 0. mm */
const tipS = ({ frame, points }: Elevation): number => planeToBed(frame, points.bedTip).s;

/** Whether a place lies over the recess, as a rectangle: its rounded corners are left out of account. */
export function isOverRecess(plane: Elevation, { along, across }: BedPoint): boolean {
  const { recess, widths } = plane;
  if (!recess) return false;
  return along >= recess.low - tipS(plane) && Math.abs(across - widths.core / 2) <= recess.width / 2;
}

/**
 * Lines of the readings file at which a station stands over the recess and reads so deep that the recess must have been
 * routed already; in the order of the work the bed is trued first, and such stations are sound.
 */
export function stationsInRecess(plane: Elevation, { straightedges, heights }: SurveyReadings): number[] {
  const deep = (plane.recess?.depth ?? Number.POSITIVE_INFINITY) / 2;
  const gaps = straightedges.flatMap((edge) => edge.gaps);
  const lowestBeside = Math.min(...heights.filter(({ place }) => !isOverRecess(plane, place)).map(({ low }) => low));
  return [...gaps.filter(({ low }) => low >= deep), ...heights.filter(({ high }) => high <= lowestBeside - deep)]
    .filter(({ place }) => isOverRecess(plane, place))
    .map(({ line }) => line)
    .sort((a, b) => a - b);
}
