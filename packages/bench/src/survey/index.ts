// The bed survey's door: readings in, verdict and map out; all pure.
export {
  type BedSurvey,
  type BedVerdict,
  HUMP_THAT_MATTERS,
  judgeBed,
  type SurveyLimits,
  type SurveyLine,
} from "./bed-survey.ts";
export {
  blankSheet,
  formatStation,
  placementStations,
  type StraightedgePlacement,
  straightedgePlacements,
} from "./blank-sheet.ts";
export type { Sagitta } from "./curvature.ts";
export type { Direction } from "./direction.ts";
export type { DoubtfulReading, Fit } from "./fit.ts";
export type { PrincipalDirection } from "./principal.ts";
export {
  type Allowed,
  type LengthLimits,
  type ReadingDetail,
  type ReadingFault,
  readingFaultText,
} from "./reading-fault.ts";
export type { Bed, BedPoint, BoundedReading, Straightedge, SurveyReadings } from "./readings.ts";
export { parseSurvey, type SurveyResult } from "./survey-file.ts";
export { SURVEY_SOURCES, surveyText, workText } from "./survey-text.ts";
export { bedExtent, isOverRecess, stationsInRecess } from "./surveyed-bed.ts";
export type { WorkMap } from "./work-map.ts";
