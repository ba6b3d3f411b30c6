// A survey as lines for a terminal: words and figures only, no colour, the maker's unit first.

import { EPSILON } from "@lamplane/geometry";
import type { Interval } from "@lamplane/geometry/numerics";
import { formatDecimalLength, formatNumber, toMillimetres, type Units } from "@lamplane/parameters/units";
import { SURVEY } from "../words/survey.ts";
import type { BedSurvey, SurveyLine } from "./bed-survey.ts";
import type { DoubtfulReading } from "./fit.ts";
import type { BedPoint } from "./readings.ts";
import type { WorkMap } from "./work-map.ts";

export { SURVEY_SOURCES } from "../words/survey.ts";

/**
 * Verdict, what is missing or doubtful, where to work, and the figures where there is no work.
 * @param all every figure with its range, and how well the readings agree too
 */
export function surveyText(survey: BedSurvey, units: Units, all = false): string[] {
  const { fit, work } = survey;
  const isChecked = fit.chiSquareLimit !== undefined && fit.errors === "normal";
  return [
    verdictLine(survey, units),
    ...survey.missing.map((what) => SURVEY.missing({ what })),
    ...fit.doubtful.map((reading) => doubtfulText(reading, units)),
    ...(work ? ["", ...workText(work, units), ...(all ? [""] : [])] : []),
    ...(all || !work ? shapeText(survey, units, all) : []),
    ...(all || !isChecked ? [fitLine(survey)] : []),
  ];
}

/**
 * The map, monospaced: tip on top and left on the left, as the maker behind the heel sees the bed from above. Whole hundredths
 * of a millimetre or thousandths of an inch, rounded; a dot where nothing is to be taken off.
 */
export function workText({ along, across, takeOff }: WorkMap, units: Units): string[] {
  const fine = units === "mm" ? 0.01 : toMillimetres(0.001, "in");
  const cell = (text: string) => text.padStart(6);
  const amount = (off: number) => (Math.round(off / fine) === 0 ? "." : String(Math.round(off / fine)));
  const place = (mm: number) => formatDecimalLength(mm, { units, decimals: PLACE.decimals, bare: true });
  const edge = (row: number) => (row === 0 ? SURVEY.tip : row === along.length - 1 ? SURVEY.top : "").padEnd(4);
  const margin = " ".repeat(13);
  return [
    SURVEY.map({ unit: units }),
    `${margin}${SURVEY.left.padStart(6)}${SURVEY.right.padStart(6 * (across.length - 1))}`,
    `${margin}${across.map((y) => cell(place(y))).join("")} ${units}`,
    ...takeOff.map(
      (row, i) => `${edge(i)}${place(along[i]!).padStart(6)}  |${row.map((off) => cell(amount(off))).join("")}`,
    ),
  ];
}

function verdictLine(survey: BedSurvey, units: Units): string {
  const { verdict, passes, worst, hollowest, limits } = survey;
  const hump = { by: worst ? fineText(-worst.hollow, units) : "", where: worst ? runText(worst, units) : "" };
  const hollow = {
    by: hollowest ? fineText(hollowest.hollow, units) : "",
    where: hollowest ? runText(hollowest, units) : "",
  };
  const allowed = fineText(limits.hollow, units);
  const noHump =
    survey.possibleHump > 0 ? SURVEY.noHumpOver({ hump: fineText(survey.possibleHump, units) }) : SURVEY.noHump;
  if (verdict === "humped") return SURVEY.humped(hump);
  if (verdict === "wound")
    return SURVEY.wound({ hump: hump.by, humpAt: hump.where, hollow: hollow.by, hollowAt: hollow.where });
  if (verdict === "undecided") return SURVEY.undecided({ why: undecidedReason(survey, units) });
  if (!passes) return SURVEY.tooHollow({ ...hollow, allowed });
  if (verdict === "hollow") return SURVEY.hollow({ ...hollow, allowed, hump: noHump });
  return SURVEY.flat({ hump: noHump });
}

function undecidedReason(
  { missing, fit, possibleHump, possibleHollow, limits, work }: BedSurvey,
  units: Units,
): string {
  if (missing.length > 0) return SURVEY.incomplete;
  if (fit.errors === "student" && !fit.allWithin) return SURVEY.rough;
  if (possibleHump > limits.hump + EPSILON)
    return SURVEY.maybeHump({ hump: fineText(possibleHump, units), limit: fineText(limits.hump, units) });
  return SURVEY.maybeHollow({
    hollow: fineText(possibleHollow, units),
    allowed: fineText(limits.hollow, units),
    mapped: work !== undefined,
  });
}

function shapeText({ lines, worst }: BedSurvey, units: Units, all: boolean): string[] {
  const isDeepest = (line: SurveyLine) => line.name === "oblique" && line.hollow < 0;
  const rows = [...lines, ...(worst && isDeepest(worst) ? [worst] : [])].map((line) => shapeCells(line, units));
  const widths = [0, 1].map((k) => Math.max(0, ...rows.map((row) => row[k]!.length)));
  const texts = rows.map(([run = "", shape = "", range = ""]) => {
    const start = `${run.padEnd(widths[0]!)}  ${shape.padEnd(widths[1]!)}`;
    return all ? `${start}  ${range}` : start.trimEnd();
  });
  return [...(all && rows.length > 0 ? [SURVEY.shape] : []), ...texts];
}

function doubtfulText({ kind, place, line, low, high, fitted, proud }: DoubtfulReading, units: Units): string {
  return SURVEY.readAgain({
    where: SURVEY.doubtfulPlace({ kind, place: placeText(place, units), line }),
    read: rangeText({ low, high }, units),
    fitted: fineText(fitted, units),
    side: proud > 0 ? "high" : "low",
    by: fineText(Math.abs(proud), units),
  });
}

/** Where it was read along, the shape, and the range of that. */
function shapeCells(line: SurveyLine, units: Units): [run: string, shape: string, range: string] {
  const by = fineText(Math.abs(line.hollow), units);
  const shape = Number.parseFloat(by) === 0 ? "straight" : line.hollow < 0 ? "humped" : "hollow";
  const range = `${signed(line.likely.low, units)} to ${signed(line.likely.high, units)}`;
  return [runText(line, units), `${shape} ${by}`, range];
}

function runText({ name, from, to }: SurveyLine, units: Units): string {
  if (name === "along" || name === "across") return name;
  if (name === "diagonal") return SURVEY.diagonal({ side: from.across < to.across ? "left" : "right" });
  return SURVEY.oblique({ from: placeText(from, units), to: placeText(to, units) });
}

function fitLine({ fit }: BedSurvey): string {
  const range = fit.errors === "normal" ? SURVEY.ownError : SURVEY.scatter;
  const check =
    fit.chiSquareLimit === undefined
      ? SURVEY.noSpare
      : SURVEY.spare({ spare: fit.spare, misfit: chiText(fit.chiSquare), limit: chiText(fit.chiSquareLimit) });
  return SURVEY.fit({ count: fit.readings, check, range });
}

const FIXED = { fixed: true, minusOnZero: true, halves: "binary" } as const;
const FINE = { ...FIXED, decimals: { mm: 3, in: 4 } };
const PLACE = { ...FIXED, decimals: { mm: 1, in: 2 }, bare: true };
const chiText = (value: number) => formatNumber(value, { ...FIXED, decimals: 1 });
const fineText = (mm: number, units: Units) => formatDecimalLength(mm, { ...FINE, units });
const rangeText = ({ low, high }: Interval, units: Units) =>
  `${formatDecimalLength(low, { ...FINE, units, bare: true })} to ${fineText(high, units)}`;
const signed = (mm: number, units: Units) => formatDecimalLength(mm, { ...FINE, units, signed: true, bare: true });
const placeText = ({ along, across }: BedPoint, units: Units) =>
  SURVEY.place({
    along: formatDecimalLength(along, { ...PLACE, units }),
    across: formatDecimalLength(across, { ...PLACE, units }),
  });
