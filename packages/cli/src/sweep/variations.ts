// What a sweep varies: parameters and the values each takes, read and judged before the first design is worked out.
import { completeDesign, type Fault, faultText, readLengths, valueAt, withValue } from "@lamplane/parameters/design";
import { type Design, type Row, rowsOf, TABLE } from "@lamplane/parameters/table";
import { parseNumber } from "@lamplane/parameters/units";
import { unknownParameterError } from "../design-file.ts";
import { InputRefused } from "../io.ts";
import { SWEEP } from "../words/reports.ts";
import { countDesigns, type Variation } from "./variation.ts";

/** More designs than these are a slip of the pen. */
const MOST_DESIGNS = 1_000_000;

/**
 * `bed.angle=43..57:0.5` (both ends count) or `iron.thickness=2.5,3.2,4`; lengths in the file's unit unless they carry one.
 * @throws InputRefused where a parameter, a value or the number of designs will not do
 */
export function parseVariations(assignments: readonly string[], design: Design): Variation[] {
  const variations = assignments.map((each) => parseVariation(each, design));
  const twice = variations.find(({ path }, i) => variations.findIndex((other) => other.path === path) !== i);
  if (twice) throw new InputRefused(SWEEP.twice(twice));
  const count = countDesigns(variations);
  if (count > MOST_DESIGNS) throw new InputRefused(SWEEP.tooMany({ count, most: MOST_DESIGNS }));
  for (const { path, values } of variations) refuseUnlessAllowed(design, path, values);
  return variations;
}

function parseVariation(assignment: string, design: Design): Variation {
  const [, path, text] = /^([^=]+)=(.+)$/s.exec(assignment) ?? [];
  if (path === undefined || text === undefined) throw new InputRefused(SWEEP.keyRange({ given: assignment }));
  const row = rowsOf(TABLE).find((each) => each.path === path)?.row;
  if (!row) throw unknownParameterError(path);
  const range = /^(.+)\.\.(.+):(.+)$/.exec(text);
  if (range) return { path, values: expandSteps(path, row, range.slice(1) as [string, string, string], design) };
  return { path, values: text.split(",").map((word) => parseValue(path, row, word.trim(), design)) };
}

function expandSteps(path: string, row: Row, words: readonly [string, string, string], design: Design): number[] {
  const [from, to, step] = words.map((word) => parseValue(path, row, word.trim(), design));
  if (typeof from !== "number" || typeof to !== "number" || typeof step !== "number")
    throw new InputRefused(SWEEP.onlyNumbers({ path }));
  if (!(step > 0) || to < from)
    throw new InputRefused(SWEEP.rising({ path, range: `${words[0]}..${words[1]}:${words[2]}` }));
  const count = Math.floor((to - from) / step + 1e-9) + 1;
  if (count > MOST_DESIGNS) throw new InputRefused(SWEEP.tooManyValues({ path, count }));
  return Array.from({ length: count }, (_, i) => Math.round((from + i * step) * 1e6) / 1e6);
}

function parseValue(path: string, row: Row, word: string, design: Design): number | string {
  if (row.kind === "lengths") {
    const lengths = readLengths(word, row, design.units);
    return "value" in lengths ? lengths.value : word;
  }
  if (row.kind !== "number" || (word === "auto" && row.auto !== undefined)) return word;
  const read = parseNumber(word, row.quantity, design.units);
  if ("fault" in read) throw new InputRefused(SWEEP.notRead({ path, word, fault: read.fault }));
  return read.value;
}

/** Numbers are allowed between two limits: where the ends of a rising row are, so is all between them. */
function refuseUnlessAllowed(design: Design, path: string, values: readonly (number | string)[]): void {
  const isRising = values.every((value, i) => typeof value === "number" && (i === 0 || value > Number(values[i - 1])));
  const last = isRising ? faultOf(design, path, values.at(-1)!) : undefined;
  const others = isRising ? (last ? values.slice(0, -1) : values.slice(0, 1)) : values;
  for (const value of others) {
    const fault = faultOf(design, path, value);
    if (fault) throw refusedValue(path, fault);
  }
  if (last) throw refusedValue(path, last);
}

const refusedValue = (path: string, fault: Fault): InputRefused =>
  new InputRefused(SWEEP.refused({ path, fault: faultText(fault) }));

function faultOf(design: Design, path: string, value: number | string) {
  if (valueAt(design, path) === value) return undefined;
  const complete = completeDesign(withValue(design, path, value));
  return complete.ok ? undefined : complete.faults[0];
}
