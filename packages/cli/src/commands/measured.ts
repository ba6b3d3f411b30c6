// `lamplane measured`: writes what came out at the bench into the design file; every comment and every other byte stays.
import {
  type Doubt,
  doubtText,
  expectedValue,
  findDoubt,
  frozenAutoValues,
  isMeasuredKey,
  type MeasuredKey,
  measuringStep,
  stepIndex,
  unreadValues,
} from "@lamplane/bench";
import { faultText, readDesign, setValue } from "@lamplane/parameters/design";
import { type Design, isRow, TABLE } from "@lamplane/parameters/table";
import { formatValue, parseNumber } from "@lamplane/parameters/units";
import { decodeDesignBytes, readDesignBytes, replaceFile } from "../design-file.ts";
import { faultLines } from "../file-content.ts";
import { EXIT, type Exit, InputRefused, type Io } from "../io.ts";
import { unreadText } from "../text.ts";

export interface MeasuredOptions {
  readonly json: boolean;
  /** A reading far from the plan was taken twice, and is so. */
  readonly readTwice: boolean;
}

/**
 * @throws InputRefused where a value is not understood, not allowed, or so far from the plan that it is likely a slip;
 *   WriteError where the file cannot be written.
 */
export function measuredCommand(
  io: Io,
  file: string,
  values: readonly string[],
  { json, readTwice }: MeasuredOptions,
): Exit {
  if (values.length === 0)
    throw new InputRefused(
      `Name what was measured, such as coreWidth=49.7; \`lamplane next ${file}\` says what is wanted.`,
    );
  const before = readDesignBytes(file);
  const design = decodeDesignBytes(before, file);
  const written = values.reduce(
    (text, value) => setMeasuredValue(text, design, value),
    new TextDecoder("utf-8", { ignoreBOM: true }).decode(before),
  );
  const built = parseOrReject(written, file, () => guessMeanings(design, values));
  for (const value of values) rejectAbsent(built, value);
  if (!readTwice) rejectSlips(built, values);
  const settled = frozenAutoValues(built);
  const whole = settled.reduce((text, { key, value }) => setValue(text, `measured.${key}`, value), written);
  const after = parseOrReject(whole, file);
  replaceFile(file, whole);
  const unread = findNewlyUnread(design, after);
  if (json) io.out(`${JSON.stringify({ file, written: values, settled, unread }, null, 2)}\n`);
  else {
    io.out(`${file}: wrote ${values.map((given) => readBackText(after, given)).join(", ")}.\n`);
    for (const { key, value } of settled)
      io.out(`Settled with it, as planned: ${key} ${formatValue(value, unitOf(key), design)}.\n`);
    if (unread.length > 0) io.out(`Not measured, so taken as planned: ${unreadText(after, unread)}.\n`);
    io.out(`\`lamplane next ${file}\` says what to do now.\n`);
  }
  return EXIT.done;
}

/** Values that steps which are done now, and were not before, left unread. */
function findNewlyUnread(before: Design, after: Design) {
  const known = new Set(unreadValues(before).map(({ key }) => key));
  return unreadValues(after).filter(({ key }) => !known.has(key));
}

/** A value as it was understood, so that a wrong unit shows itself. */
function readBackText(design: Design, assignment: string): string {
  const key = parseKey(assignment);
  const value = design.measured[key as keyof Design["measured"]];
  if (typeof value !== "number") return `${key}=${value}`;
  return `${key} ${formatValue(value, unitOf(key), design)}`;
}

const parseKey = (assignment: string): string => assignment.replace(/^measured\./, "").replace(/=.*$/s, "");

/** Of several slips only the first step's are told: what is expected later follows from them. @throws InputRefused */
function rejectSlips(design: Design, values: readonly string[]): void {
  const doubts = values.flatMap((given): Doubt[] => {
    const key = parseKey(given);
    const doubt = isMeasuredKey(key) ? findDoubt(design, key) : undefined;
    return doubt ? [doubt] : [];
  });
  const first = Math.min(...doubts.map(({ key }) => stepIndex(measuringStep(key))));
  const lines = doubts
    .filter(({ key }) => stepIndex(measuringStep(key)) === first)
    .map((doubt) => `${doubt.key}: ${doubtText(doubt, (value, unit) => formatValue(value, unit, design))}`);
  if (lines.length === 0) return;
  throw new InputRefused(
    `${lines.join("\n")}\nNothing was written. Read it again; if it is so, give it again with --read-twice.`,
  );
}

const unitOf = (key: string): string => {
  const row = TABLE.measured[key as keyof typeof TABLE.measured];
  return row.kind === "number" && row.quantity === "angle" ? "°" : "mm";
};

/** The design as the file would then be read; what is refused is told before anything is written. */
function parseOrReject(text: string, file: string, more: () => readonly string[] = () => []): Design {
  const reading = readDesign(text, file);
  if (reading.ok) return reading.design;
  throw new InputRefused([faultLines(reading.faults, faultText), ...more(), "Nothing was written."].join("\n"));
}

/** What was likely meant by values that are not even allowed. */
function guessMeanings(design: Design, values: readonly string[]): string[] {
  return values.flatMap((assignment) => {
    const key = parseKey(assignment);
    const row = isMeasuredKey(key) ? TABLE.measured[key] : undefined;
    if (row?.kind !== "number") return [];
    const read = parseNumber(assignment.replace(/^[^=]*=/s, ""), row.quantity, design.units);
    const doubt = "value" in read ? findDoubt(design, key as MeasuredKey, read.value) : undefined;
    return doubt?.likelyMeant ? [`${key}: ${doubtText(doubt, (value, unit) => formatValue(value, unit, design))}`] : [];
  });
}

/** A value of what this plane does not have would mark its step as done. @throws InputRefused */
function rejectAbsent(design: Design, assignment: string): void {
  const key = parseKey(assignment);
  if (!isMeasuredKey(key) || expectedValue(design, key) !== undefined) return;
  throw new InputRefused(`${key}: this plane has none to measure. Nothing was written.`);
}

function setMeasuredValue(text: string, design: Design, assignment: string): string {
  const [, key, value] = /^(?:measured\.)?([^=.]+)=(.*)$/s.exec(assignment) ?? [];
  if (key === undefined || value === undefined)
    throw new InputRefused(`${assignment}: write KEY=VALUE, such as coreWidth=49.7`);
  const row = Object.hasOwn(TABLE.measured, key) ? TABLE.measured[key as keyof typeof TABLE.measured] : undefined;
  if (!row || !isRow(row))
    throw new InputRefused(
      `${key}: nothing of that name is measured; write one of ${Object.keys(TABLE.measured).join(", ")}`,
    );
  if (row.kind === "choice") return setValue(text, `measured.${key}`, value);
  const read = parseNumber(value, row.quantity, design.units);
  if ("fault" in read) throw new InputRefused(`${key}: read "${value}": ${read.fault}`);
  return setValue(text, `measured.${key}`, read.value);
}
