// `lamplane measured`: writes what came out at the bench into the design file; every comment and every other byte stays.
import {
  type Doubt,
  doubtOf,
  doubtText,
  expectedOf,
  MEASURED,
  type MeasuredKey,
  settledValues,
  stepOf,
  stepPlace,
  unreadOf,
} from "@lamplane/bench";
import { readDesign, writtenBack } from "@lamplane/parameters/design";
import { type Design, isRow, TABLE } from "@lamplane/parameters/table";
import { fineText, readNumberText } from "@lamplane/parameters/units";
import { designContent, designIn, replaceFile } from "../design-file.ts";
import { faultLines } from "../file-content.ts";
import { EXIT, type Exit, InputRefused, type Io } from "../io.ts";
import { shownFor, unreadText } from "../words.ts";

export interface MeasuredOptions {
  readonly json: boolean;
  /** A reading far from the plan was taken twice, and is so. */
  readonly readTwice: boolean;
}

/**
 * @throws InputRefused where a value is not understood, not allowed, or so far from the plan that it is likely a slip;
 *   CouldNotWrite where the file cannot be written.
 */
export function measured(io: Io, file: string, values: readonly string[], { json, readTwice }: MeasuredOptions): Exit {
  if (values.length === 0)
    throw new InputRefused(
      `Name what was measured, such as coreWidth=49.7; \`lamplane next ${file}\` says what is wanted.`,
    );
  const before = designContent(file);
  const design = designIn(before, file);
  const written = values.reduce(
    (text, value) => withMeasured(text, design, value),
    new TextDecoder("utf-8", { ignoreBOM: true }).decode(before),
  );
  const built = checked(written, file, () => guesses(design, values));
  for (const value of values) refuseWhereThereIsNone(built, value);
  if (!readTwice) refuseSlips(built, values);
  const settled = settledValues(built);
  const whole = settled.reduce((text, { key, value }) => writtenBack(text, `measured.${key}`, value), written);
  const after = checked(whole, file);
  replaceFile(file, whole);
  const unread = newlyUnread(design, after);
  if (json) io.out(`${JSON.stringify({ file, written: values, settled, unread }, null, 2)}\n`);
  else {
    io.out(`${file}: wrote ${values.map((given) => readBack(after, given)).join(", ")}.\n`);
    for (const { key, value } of settled)
      io.out(`Settled with it, as planned: ${key} ${shownFor(design, value, unitOf(key))}.\n`);
    if (unread.length > 0) io.out(`Not measured, so taken as planned: ${unreadText(after, unread)}.\n`);
    io.out(`\`lamplane next ${file}\` says what to do now.\n`);
  }
  return EXIT.done;
}

/** Values that steps which are done now, and were not before, left unread. */
function newlyUnread(before: Design, after: Design) {
  const known = new Set(unreadOf(before).map(({ key }) => key));
  return unreadOf(after).filter(({ key }) => !known.has(key));
}

/** A value as it was understood, so that a wrong unit shows itself. */
function readBack(design: Design, given: string): string {
  const key = keyOf(given);
  const value = design.measured[key as keyof Design["measured"]];
  if (typeof value !== "number") return `${key}=${value}`;
  return `${key} ${unitOf(key) === "mm" ? fineText(value, design.units) : shownFor(design, value, unitOf(key))}`;
}

const keyOf = (given: string): string => given.replace(/^measured\./, "").replace(/=.*$/s, "");

/** Of several slips only the first step's are told: what is expected later follows from them. @throws InputRefused */
function refuseSlips(design: Design, values: readonly string[]): void {
  const doubts = values.flatMap((given): Doubt[] => {
    const key = keyOf(given);
    const doubt = Object.hasOwn(MEASURED, key) ? doubtOf(design, key as MeasuredKey) : undefined;
    return doubt ? [doubt] : [];
  });
  const first = Math.min(...doubts.map(({ key }) => stepPlace(stepOf(key))));
  const lines = doubts
    .filter(({ key }) => stepPlace(stepOf(key)) === first)
    .map((doubt) => `${doubt.key}: ${doubtText(doubt, (value, unit) => shownFor(design, value, unit))}`);
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
function checked(text: string, file: string, more: () => readonly string[] = () => []): Design {
  const reading = readDesign(text, file);
  if (reading.ok) return reading.design;
  throw new InputRefused([faultLines(reading.faults), ...more(), "Nothing was written."].join("\n"));
}

/** What was likely meant by values that are not even allowed. */
function guesses(design: Design, values: readonly string[]): string[] {
  return values.flatMap((given) => {
    const key = keyOf(given);
    const row = Object.hasOwn(MEASURED, key) ? TABLE.measured[key as MeasuredKey] : undefined;
    if (row?.kind !== "number") return [];
    const read = readNumberText(given.replace(/^[^=]*=/s, ""), row.quantity, design.units);
    const doubt = "value" in read ? doubtOf(design, key as MeasuredKey, read.value) : undefined;
    return doubt?.meant ? [`${key}: ${doubtText(doubt, (value, unit) => shownFor(design, value, unit))}`] : [];
  });
}

/** A value of what this plane does not have would mark its step as done. @throws InputRefused */
function refuseWhereThereIsNone(design: Design, given: string): void {
  const key = keyOf(given);
  if (!Object.hasOwn(MEASURED, key) || expectedOf(design, key as MeasuredKey) !== undefined) return;
  throw new InputRefused(`${key}: this plane has none to measure. Nothing was written.`);
}

function withMeasured(text: string, design: Design, given: string): string {
  const [, key, value] = /^(?:measured\.)?([^=.]+)=(.*)$/s.exec(given) ?? [];
  if (key === undefined || value === undefined)
    throw new InputRefused(`${given}: write KEY=VALUE, such as coreWidth=49.7`);
  const row = Object.hasOwn(TABLE.measured, key) ? TABLE.measured[key as keyof typeof TABLE.measured] : undefined;
  if (!row || !isRow(row))
    throw new InputRefused(
      `${key}: nothing of that name is measured; write one of ${Object.keys(TABLE.measured).join(", ")}`,
    );
  if (row.kind === "choice") return writtenBack(text, `measured.${key}`, value);
  const read = readNumberText(value, row.quantity, design.units);
  if ("fault" in read) throw new InputRefused(`${key}: read "${value}": ${read.fault}`);
  return writtenBack(text, `measured.${key}`, read.value);
}
