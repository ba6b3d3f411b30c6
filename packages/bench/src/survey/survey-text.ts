// A survey as lines for a terminal: words and figures only, no colour, the maker's unit first.

import { EPSILON } from "@lamplane/geometry";
import type { Interval } from "@lamplane/geometry/numerics";
import { formatDecimalLength, formatNumber, toMillimetres, type Units } from "@lamplane/parameters/units";
import type { BedSurvey, SurveyLine } from "./bed-survey.ts";
import type { DoubtfulReading } from "./fit.ts";
import type { BedPoint } from "./readings.ts";
import type { WorkMap } from "./work-map.ts";

/** Where the rules of the verdict and the figures come from. */
export const SURVEY_SOURCES: readonly string[] = [
  "Flat or slightly hollow passes, any hump fails: common practice, no published source.",
  "Surface: least squares, the middle of each reading's interval; a straightedge over a hollow rests at both ends, gap 0.",
  "Feelers: the 95 % range holds every surface that lies within all readings, 1.25 × hand.feel allowed (linear programming).",
  "Heights: 95 % range, normal where the readings' own error explains their scatter, else Student's t; all directions: Scheffé.",
  "Left and right are the maker's, who stands behind the heel and looks to the toe.",
];

/** Verdict, figures, what is missing or doubtful, and where to work. */
export function surveyText(survey: BedSurvey, units: Units): string[] {
  const { fit, work } = survey;
  return [
    verdictLine(survey, units),
    ...survey.missing.map((sentence) => `Missing: ${sentence}.`),
    ...shapeText(survey, units),
    fitLine(survey),
    ...fit.doubtful.map((reading) => doubtfulText(reading, units)),
    ...(work ? ["", ...workText(work, units)] : []),
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
  const edge = (row: number) => (row === 0 ? "tip" : row === along.length - 1 ? "top" : "").padEnd(4);
  const margin = " ".repeat(13);
  return [
    `Take off, in ${units === "mm" ? "hundredths of a millimetre" : "thousandths of an inch"}; seen from above, from behind the heel:`,
    `${margin}${"left".padStart(6)}${"right".padStart(6 * (across.length - 1))}`,
    `${margin}${across.map((y) => cell(place(y))).join("")} ${units}`,
    ...takeOff.map(
      (row, i) => `${edge(i)}${place(along[i]!).padStart(6)}  |${row.map((off) => cell(amount(off))).join("")}`,
    ),
  ];
}

function verdictLine(survey: BedSurvey, units: Units): string {
  const { verdict, passes, worst, hollowest, limits } = survey;
  const hump = worst ? fineText(-worst.hollow, units) : "";
  const deepest = hollowest ? fineText(hollowest.hollow, units) : "";
  const allowed = fineText(limits.hollow, units);
  const ruledOut = `${survey.possibleHump > 0 ? `a hump over ${fineText(survey.possibleHump, units)}` : "any hump"} is ruled out`;
  if (verdict === "humped")
    return `FAILS: humped by ${hump}, ${runText(worst!, units)}; no hump is allowed. Take it off as mapped.`;
  if (verdict === "wound")
    return `FAILS: in wind, humped by ${hump}, ${runText(worst!, units)}, hollow by ${deepest}, ${runText(hollowest!, units)}.`;
  if (verdict === "undecided") return `UNDECIDED: ${undecidedReason(survey, units)}`;
  if (!passes)
    return `FAILS: hollow by ${deepest}, ${runText(hollowest!, units)}; allowed ${allowed}. Take the rim down as mapped.`;
  if (verdict === "hollow")
    return `PASSES: hollow by ${deepest}, ${runText(hollowest!, units)}; allowed ${allowed}; ${ruledOut}.`;
  return `PASSES: flat; ${ruledOut}.`;
}

function undecidedReason(
  { missing, fit, possibleHump, possibleHollow, limits, work }: BedSurvey,
  units: Units,
): string {
  if (missing.length > 0) return "the readings do not tell the whole bed.";
  if (fit.errors === "student" && !fit.allWithin)
    return "the readings do not lie on one smooth surface: a high spot, a slip, or a straightedge that moved.";
  if (possibleHump <= limits.hump + EPSILON)
    return (
      `the hollow may be as deep as ${fineText(possibleHollow, units)}; allowed ${fineText(limits.hollow, units)}. ` +
      `Read with thinner leaves${work ? ", or take the rim down as mapped" : ""}.`
    );
  return (
    `a hump of ${fineText(possibleHump, units)} is not ruled out, and ${fineText(limits.hump, units)} matters. ` +
    "Read more stations, or with thinner leaves."
  );
}

function shapeText({ lines, worst }: BedSurvey, units: Units): string[] {
  if (lines.length === 0) return [];
  const oblique = worst?.name === "oblique" && worst.hollow < 0 ? [`deepest, ${lineText(worst, units)}`] : [];
  const named = lines.map((line) => lineText(line, units));
  return [
    "Over the bed's whole extent, with the 95 % range (hollow +, hump -):",
    ...[...named, ...oblique].map((line) => `  ${line}`),
  ];
}

function doubtfulText({ kind, place, line, low, high, fitted, proud }: DoubtfulReading, units: Units): string {
  const where = `${kind} at ${placeText(place, units)} (line ${line})`;
  const read = `${rangeText({ low, high }, units)} read, the surface gives ${fineText(fitted, units)}`;
  return `Read again: ${where}, ${read}; if it is true, the wood is ${proud > 0 ? "high" : "low"} there by ${fineText(Math.abs(proud), units)}.`;
}

function lineText(line: SurveyLine, units: Units): string {
  const hollow = fineText(Math.abs(line.hollow), units);
  const shape = Number.parseFloat(hollow) === 0 ? "straight" : line.hollow < 0 ? "humped" : "hollow";
  const range = `${signed(line.likely.low, units)} to ${signed(line.likely.high, units)}`;
  return `${runText(line, units)}: ${shape} ${hollow} (${range})`;
}

function runText({ name, from, to }: SurveyLine, units: Units): string {
  if (name === "along" || name === "across") return name;
  if (name === "diagonal") return `diagonal from the tip's ${from.across < to.across ? "left" : "right"} corner`;
  return `line from ${placeText(from, units)} to ${placeText(to, units)}`;
}

function fitLine({ fit }: BedSurvey): string {
  const grounds =
    fit.errors === "normal" ? "the readings' own error" : "the readings' scatter, larger than their own error";
  const check =
    fit.chiSquareLimit === undefined
      ? "none to spare, so nothing checks them"
      : `${fit.spare} to spare, squared misfit ${chiText(fit.chiSquare)} of ${chiText(fit.chiSquareLimit)}`;
  return `${fit.readings} readings, ${check}; ranges from ${grounds}.`;
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
  `${formatDecimalLength(along, { ...PLACE, units })} up, ${formatDecimalLength(across, { ...PLACE, units })} across`;
