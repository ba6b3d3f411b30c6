// `lamplane survey`: a bed's readings to a verdict and a map of the work; or a sheet to fill in.
import {
  asBuiltPlane,
  bedExtent,
  blankSheet,
  judgeBed,
  parseSurvey,
  readingFaultText,
  SURVEY_SOURCES,
  type SurveyReadings,
  stationsInRecess,
  surveyText,
} from "@lamplane/bench";
import type { Elevation } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import { faultLines, readContent } from "../file-content.ts";
import { EXIT, type Exit, InputRefused, type Io } from "../io.ts";
import { fileTitle } from "../standard-input.ts";
import { MORE, READINGS_FILE } from "../words/commands.ts";
import { SURVEY_COMMAND } from "../words/reports.ts";

export interface SurveyOptions {
  readonly readings?: string | undefined;
  readonly blank: boolean;
  readonly json: boolean;
  /** Ranges, misfit and sources too. */
  readonly all: boolean;
}

/** Exit 1 unless the bed passes: a hump that is shown, a hollow over its limit, or readings that rule no hump out. */
export function surveyCommand(io: Io, design: Design, { readings: file, blank, json, all }: SurveyOptions): Exit {
  const plane = asBuiltPlane(design);
  if (blank && file !== undefined) throw new InputRefused(SURVEY_COMMAND.sheetOnly);
  if (blank) {
    io.out(blankSheet(plane));
    return EXIT.done;
  }
  if (file === undefined) throw new InputRefused(SURVEY_COMMAND.noReadings(READINGS_FILE));
  const readings = loadReadings(file, plane);
  const found = judgeBed(readings, bedExtent(plane), { feel: design.hand.feel });
  const inRecess = stationsInRecess(plane, readings);
  if (json)
    io.out(`${JSON.stringify({ name: design.name, lengths: "mm", inRecess, survey: found }, finiteOrNull, 2)}\n`);
  else {
    const end = all ? ["", ...SURVEY_SOURCES] : [MORE.survey];
    io.out(`${[...surveyText(found, design.units, all), ...recessNote(inRecess), ...end].join("\n")}\n`);
  }
  return found.passes ? EXIT.done : EXIT.checkFailed;
}

/** @throws InputRefused with one line for every fault */
function loadReadings(file: string, plane: Elevation): SurveyReadings {
  const { readings, faults } = parseSurvey(readContent(file, READINGS_FILE), bedExtent(plane), fileTitle(file));
  if (faults) throw new InputRefused(faultLines(faults, readingFaultText));
  return readings;
}

const recessNote = (lines: readonly number[]): string[] =>
  lines.length === 0 ? [] : ["", SURVEY_COMMAND.inRecess({ lines })];

/** What the readings leave open without bound is null in JSON, which knows no infinity. */
const finiteOrNull = (_: string, value: unknown): unknown =>
  typeof value === "number" && !Number.isFinite(value) ? null : value;
