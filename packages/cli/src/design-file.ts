// From a file's name, and changes made on the command line, to a design; or a refusal that tells every fault.
import { existsSync } from "node:fs";
import {
  completeDesign,
  faultText,
  formatParameter,
  knownPaths,
  nearNames,
  type OverShop,
  otherUnitText,
  readDesign,
  readLengths,
  rowAt,
  type ShopAccess,
  unitSlipText,
  withValue,
} from "@lamplane/parameters/design";
import { type Design, type NumberRow, type Row, rowsOf, TABLE } from "@lamplane/parameters/table";
import { formatLimit, parseNumber } from "@lamplane/parameters/units";
import { VALUE_NOTE } from "@lamplane/parameters/words";
import type { SourcePosition } from "@lamplane/parameters/yaml";
import { faultLines, readContent } from "./file-content.ts";
import { wholeCopyName } from "./file-replacement.ts";
import { InputRefused, type Io } from "./io.ts";
import { shopAccess } from "./shop-file.ts";
import { fileTitle } from "./standard-input.ts";
import { ARGUMENT_FAULT, DESIGN_FILE, FILE_FAULTS } from "./words/commands.ts";

/**
 * The design in a file, with `changes` ("bed.angle=50") made to it; a length that looks like one of the other unit is asked
 * about, a word of older files noted.
 * @param shopFile stands in the place of the shop file that the design names
 * @throws InputRefused with one line for every fault.
 */
export function loadDesign(
  io: Pick<Io, "err">,
  file: string,
  changes: readonly string[] = [],
  shopFile?: string,
): Design {
  const { design, slips, oldWords, formerKeys, overShop } = readDesignFile(
    readDesignBytes(file),
    fileTitle(file),
    shopAccess(file, shopFile),
  );
  const tell = ({ line, column }: SourcePosition, text: string) =>
    io.err(`${fileTitle(file)}:${line}:${column}: ${text}\n`);
  for (const slip of slips) tell(slip.at, `warning: ${unitSlipText(slip, rowAt(slip.path) as NumberRow)}`);
  for (const word of oldWords) tell(word.at, `note: ${VALUE_NOTE.oldWord(word)}`);
  for (const key of formerKeys) tell(key.at, `note: ${VALUE_NOTE.formerKey(key)}`);
  if (shopFile !== undefined)
    for (const over of overShop) tell(over.at, `note: ${overShopText(over, design, fileTitle(shopFile))}`);
  if (changes.length === 0) return design;
  const changed = applyChanges(design, changes);
  for (const word of changed.oldWords) io.err(`--with: note: ${VALUE_NOTE.oldWord(word)}\n`);
  return changed.design;
}

/** A value of the design that stands over the shop file of the command line. */
function overShopText({ path, values }: OverShop, design: Design, file: string): string {
  if (!values) return VALUE_NOTE.listOverShop({ path, file });
  return VALUE_NOTE.overShop({
    path,
    own: formatParameter(path, values.own, design),
    shop: formatParameter(path, values.shop, design),
    file,
  });
}

/** A design file's bytes. @throws InputRefused where it cannot be read, or is no design file by its size. */
export const readDesignBytes = (file: string): Uint8Array => readContent(file, DESIGN_FILE);

/** The design in a file's bytes. @throws InputRefused with one line for every fault. */
export const decodeDesignBytes = (content: Uint8Array, file: string, shopFile?: string): Design =>
  readDesignFile(content, file, shopAccess(file, shopFile)).design;

function readDesignFile(content: Uint8Array, file: string, shop: ShopAccess) {
  const reading = readDesign(content, file, shop);
  if (reading.ok) return reading;
  throw new InputRefused(`${faultLines(reading.faults, faultText)}${brokenOffNote(file)}`);
}

/** Where a run that was broken off in the midst of writing has left the whole text. */
function brokenOffNote(file: string): string {
  const whole = existsSync(file) ? wholeCopyName(file) : undefined;
  return whole && existsSync(whole) ? `\n${FILE_FAULTS.brokenOff({ file, whole })}` : "";
}

function applyChanges(design: Design, changes: readonly string[]) {
  const outside: string[] = [];
  let to = design; // a unit that is changed counts for what comes after it
  for (const change of changes) {
    const made = parseChange(to, change);
    outside.push(...limitViolations(made, to.units));
    to = withValue(to, made.path, made.value);
  }
  if (outside.length > 0) throw new InputRefused(outside.join("\n"));
  const complete = completeDesign(to);
  if (complete.ok) return complete;
  throw new InputRefused(
    faultLines(
      complete.faults.map((fault) => ({ ...fault, file: "--with" })),
      faultText,
    ),
  );
}

interface OptionChange {
  readonly path: string;
  readonly row: Row;
  readonly text: string;
  readonly value: string | number;
}

function parseChange({ units }: Design, change: string): OptionChange {
  const [, path, text] = /^([^=]+)=(.*)$/s.exec(change) ?? [];
  if (path === undefined || text === undefined) throw new InputRefused(ARGUMENT_FAULT.keyValue({ given: change }));
  const row = requireRow(path);
  if (row.kind === "lengths") {
    const lengths = readLengths(text, row, units);
    return { path, row, text, value: "value" in lengths ? lengths.value : text };
  }
  if (row.kind !== "number" || (text === "auto" && row.auto !== undefined)) return { path, row, text, value: text };
  const read = parseNumber(text, row.quantity, units);
  if ("fault" in read) throw new InputRefused(ARGUMENT_FAULT.option({ option: `--with ${path}`, fault: read.fault }));
  return { path, row, text, value: read.value };
}

/** In the design's unit, as a fault in the file is: a length was typed in it. */
function limitViolations({ path, row, text, value }: OptionChange, units: Design["units"]): string[] {
  if (row.kind !== "number" || row.quantity !== "length" || typeof value !== "number") return [];
  if (value >= row.min && value <= row.max) return [];
  const [is, min, max] = [value, row.min, row.max].map((mm) => formatLimit(mm, units)) as [string, string, string];
  return [
    `${ARGUMENT_FAULT.limits({ option: `--with: ${path}`, read: text, is, min, max })}${otherUnitText(row, text, units)}`,
  ];
}

/** A row of the parameter table by its path. @throws InputRefused where there is none. */
function requireRow(path: string): Row {
  const found = rowsOf(TABLE).find((entry) => entry.path === path);
  if (!found) throw unknownParameterError(path);
  return found.row;
}

export const unknownParameterError = (path: string): InputRefused =>
  new InputRefused(ARGUMENT_FAULT.unknownName({ name: path, near: nearNames(path, knownPaths()) }));
