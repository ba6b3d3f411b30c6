// `lamplane measured`: writes what came out at the bench into the design file; every comment and every other byte stays.
import {
  type Doubt,
  doubtText,
  expectedValue,
  findDoubt,
  isMeasuredKey,
  MEASURED_ROWS,
  measuredUnit,
  measuringStep,
  skippedSteps,
  stepIndex,
  stepWords,
  unreadValues,
} from "@lamplane/bench";
import { faultText, readDesign, type ShopAccess } from "@lamplane/parameters/design";
import { type Design, TABLE } from "@lamplane/parameters/table";
import { formatValue, parseNumber } from "@lamplane/parameters/units";
import { decodeDesignBytes, readDesignBytes } from "../design-file.ts";
import { faultLines } from "../file-content.ts";
import { replaceFile } from "../file-replacement.ts";
import { EXIT, type Exit, InputRefused, type Io } from "../io.ts";
import { applyChange, isTakenBack, type MeasuredChange, parseChange } from "../measured-changes.ts";
import { shopAccess } from "../shop-file.ts";
import { unreadText } from "../text.ts";
import { forgetUndo, keepForUndo, lastChange } from "../undo-record.ts";
import { MEASURED, UNDO } from "../words/measured.ts";
import { NEXT } from "../words/reports.ts";

export interface MeasuredOptions {
  readonly json: boolean;
  /** A reading far from the plan was taken twice, and is so. */
  readonly readTwice: boolean;
  /** Steps that nothing was measured at are done, and taken as planned. */
  readonly skip: boolean;
  /** Takes back what was written last. */
  readonly undo: boolean;
  /** Stands in the place of the shop file that the design names. */
  readonly shop?: string | undefined;
}

/**
 * Stores what was measured and nothing else: what was not is taken as planned wherever the file is read.
 * @throws InputRefused where a value is not understood, not allowed, or so far from the plan that it is likely a slip, or
 *   where steps are passed over and nobody says that they are done; WriteError where the file cannot be written.
 */
export async function measuredCommand(
  io: Io,
  file: string,
  values: readonly string[],
  options: MeasuredOptions,
): Promise<Exit> {
  if (options.undo) return undoCommand(io, file, values, options.json);
  if (values.length === 0) throw new InputRefused(MEASURED.noValues({ file }));
  const { design, text } = loadText(file, options.shop);
  const changes = values.map(parseChange);
  const written = changes.reduce((so, change) => applyChange(so, design, change), text);
  const after = parseOrReject(written, shopAccess(file, options.shop), file, () => guessMeanings(design, changes));
  const readings = changes.filter((change) => !isTakenBack(change));
  for (const { key } of readings) rejectAbsent(after, key);
  if (!options.readTwice) rejectSlips(after, readings);
  const skipped = skippedSteps(design, after);
  if (skipped.length > 0 && !options.skip)
    await confirmSkip(
      io,
      file,
      skipped.map((step) => stepWords(after, step).title),
    );
  keepForUndo(file, values, text, written);
  replaceFile(file, written);
  const unread = findNewlyUnread(design, after);
  if (options.json) io.out(`${JSON.stringify({ file, ...splitChanges(values, changes), skipped, unread }, null, 2)}\n`);
  else {
    io.out(changesText(file, after, changes));
    if (unread.length > 0) io.out(`${NEXT.unread({ values: unreadText(after, unread) })}\n`);
    io.out(`${MEASURED.next({ file })}\n`);
  }
  return EXIT.done;
}

function undoCommand(io: Io, file: string, values: readonly string[], json: boolean): Exit {
  if (values.length > 0) throw new InputRefused(UNDO.withValues);
  const { text } = loadText(file);
  const { values: undone, before } = lastChange(file, text);
  replaceFile(file, before);
  forgetUndo(file);
  if (json) io.out(`${JSON.stringify({ file, undone }, null, 2)}\n`);
  else io.out(`${UNDO.done({ file, values: undone })}\n`);
  return EXIT.done;
}

function loadText(file: string, shop?: string): { design: Design; text: string } {
  const bytes = readDesignBytes(file);
  return {
    design: decodeDesignBytes(bytes, file, shop),
    text: new TextDecoder("utf-8", { ignoreBOM: true }).decode(bytes),
  };
}

/** @throws InputRefused where nobody can be asked, or the answer is no */
/** @param steps their titles */
async function confirmSkip(io: Io, file: string, steps: readonly string[]): Promise<void> {
  if (!io.prompts) throw new InputRefused(MEASURED.skipRefused({ file, steps }));
  if (await io.prompts.confirm(MEASURED.skipQuestion({ file, steps }))) return;
  throw new InputRefused(MEASURED.nothingWritten);
}

const splitChanges = (values: readonly string[], changes: readonly MeasuredChange[]) => ({
  written: values.filter((_, k) => !isTakenBack(changes[k]!)),
  takenBack: changes.filter(isTakenBack).map(({ key }) => key),
});

/** What the file now holds and what it no longer does, a line each. */
function changesText(file: string, after: Design, changes: readonly MeasuredChange[]): string {
  const values = changes.filter((change) => !isTakenBack(change)).map(({ key }) => readBackText(after, key));
  const names = changes.filter(isTakenBack).map(({ key }) => valueName(key));
  return [
    ...(values.length > 0 ? [`${MEASURED.written({ file, values })}\n`] : []),
    ...(names.length > 0 ? [`${MEASURED.takenBack({ file, names })}\n`] : []),
  ].join("");
}

const valueName = (key: MeasuredChange["key"]): string => (isMeasuredKey(key) ? MEASURED_ROWS[key].name : key);

/** Values that steps which are done now, and were not before, left unread. */
function findNewlyUnread(before: Design, after: Design) {
  const known = new Set(unreadValues(before).map(({ key }) => key));
  return unreadValues(after).filter(({ key }) => !known.has(key));
}

/** A value as it was understood, so that a wrong unit shows itself. */
function readBackText(design: Design, key: MeasuredChange["key"]): string {
  const value = design.measured[key];
  if (!isMeasuredKey(key) || typeof value !== "number") return `${key}=${value}`;
  const unit = measuredUnit(key);
  return `${valueName(key)} ${formatValue(value, unit, design)}`;
}

/** Of several slips only the first step's are named: what is expected later follows from them. @throws InputRefused */
function rejectSlips(design: Design, readings: readonly MeasuredChange[]): void {
  const doubts = readings.flatMap(({ key }): Doubt[] => {
    const doubt = isMeasuredKey(key) ? findDoubt(design, key) : undefined;
    return doubt ? [doubt] : [];
  });
  const first = Math.min(...doubts.map(({ key }) => stepIndex(measuringStep(key))));
  const lines = doubts
    .filter(({ key }) => stepIndex(measuringStep(key)) === first)
    .map((doubt) => doubtLine(design, doubt));
  if (lines.length === 0) return;
  throw new InputRefused(`${lines.join("\n")}\n${MEASURED.readAgain}`);
}

const doubtLine = (design: Design, doubt: Doubt): string =>
  MEASURED.doubt({ key: doubt.key, doubt: doubtText(doubt, (value, unit) => formatValue(value, unit, design)) });

/** The design as the file would then be read; what is refused is named before anything is written. */
function parseOrReject(text: string, shop: ShopAccess, file: string, more: () => readonly string[]): Design {
  const reading = readDesign(text, file, shop);
  if (reading.ok) return reading.design;
  throw new InputRefused([faultLines(reading.faults, faultText), ...more(), MEASURED.nothingWritten].join("\n"));
}

/** What was likely meant by values that are not even allowed. */
function guessMeanings(design: Design, changes: readonly MeasuredChange[]): string[] {
  return changes.flatMap(({ key, text }) => {
    const row = TABLE.measured[key];
    if (!isMeasuredKey(key) || row.kind !== "number") return [];
    const read = parseNumber(text, row.quantity, design.units);
    const doubt = "value" in read ? findDoubt(design, key, read.value) : undefined;
    return doubt?.likelyMeant ? [doubtLine(design, doubt)] : [];
  });
}

/** A value of what this plane does not have would mark its step as done. @throws InputRefused */
function rejectAbsent(design: Design, key: MeasuredChange["key"]): void {
  if (!isMeasuredKey(key) || expectedValue(design, key) !== undefined) return;
  throw new InputRefused(MEASURED.absent({ key }));
}
