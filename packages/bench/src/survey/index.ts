// The bed survey's door: readings in, verdict and map out; all pure.
export {
  type BedSurvey,
  type BedVerdict,
  bedSurvey,
  HUMP_THAT_MATTERS,
  type SurveyLimits,
  type SurveyLine,
} from "./bed-survey.ts";
export { blankSheet, type Laying, layings } from "./blank-sheet.ts";
export type { Sagitta } from "./curvature.ts";
export type { Direction } from "./direction.ts";
export type { DoubtfulReading, Fit } from "./fit.ts";
export type { ReadingFault } from "./place-reader.ts";
export type { PrincipalDirection } from "./principal.ts";
export type { Bed, BedPlace, Reading, Readings, Straightedge } from "./readings.ts";
export { type ReadingsOrFaults, surveyReadings } from "./survey-file.ts";
export { SURVEY_SOURCES, surveyText, workText } from "./survey-text.ts";
export { isOverRecess, stationsInRecess, surveyedBed } from "./surveyed-bed.ts";
export type { WorkMap } from "./work-map.ts";
