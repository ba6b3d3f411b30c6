// A section of rows as it was given + the table → its values; what the table does not allow is added to the faults.
import { defaultIn, isRow, type Row, rowsOf, type TableSection } from "../table/index.ts";
import type { Units } from "../units.ts";
import type { SourcePosition } from "../yaml/fault.ts";
import type { DesignEntry, DesignNode } from "./design-nodes.ts";
import type { DesignFaultCollector } from "./fault.ts";
import { isUnitSlip, type UnitSlip } from "./unit-slip.ts";
import { decodeValue, type ParameterValue } from "./value.ts";

/** A choice that was read by a word of older files. */
export interface OldWord {
  readonly path: string;
  readonly at: SourcePosition;
  readonly read: string;
  /** The choice that it means. */
  readonly value: string;
}

/** A key that was read by its name of older files. */
export interface OldKey {
  readonly at: SourcePosition;
  readonly former: string;
  readonly key: string;
}

/** A value of the design that stands where the shop file has another. */
export interface OverShop {
  readonly path: string;
  readonly at: SourcePosition;
  /** Of the design and of the shop file; absent for a list. */
  readonly values?: { readonly own: ParameterValue; readonly shop: ParameterValue };
}

export interface DecodedSection {
  [key: string]: ParameterValue | DecodedSection | readonly DecodedSection[];
}
/** Values of a shop file: rows by their path, lists by their name. */
export type DecodedValues = ReadonlyMap<string, ParameterValue | readonly DecodedSection[]>;

export interface DecodeContext {
  /** Undefined where what was given for it is no unit: then no length can be judged. */
  readonly units: Units | undefined;
  /** Whose defaults stand for what is not given. */
  readonly defaults: Units;
  readonly givenPaths: Set<string>;
  readonly slips: UnitSlip[];
  readonly oldWords: OldWord[];
  readonly formerKeys: OldKey[];
  readonly overShop: OverShop[];
  readonly faults: DesignFaultCollector;
  /** Stands for what is not given, before the defaults. */
  readonly shop?: DecodedValues | undefined;
}

/** Whether a section may stand in a file with nothing in it: one that the bench fills in. */
export const mayBeEmpty = (section: TableSection): boolean =>
  rowsOf(section).some(({ row }) => row.kind === "number" && row.unset === true);

export function decodeEntries(
  section: TableSection,
  entries: readonly DesignEntry[],
  at: SourcePosition,
  path: string,
  context: DecodeContext,
): DecodedSection {
  const prefix = path === "" ? "" : `${path}.`;
  for (const { key, at: keyAt, value } of entries)
    if (!Object.hasOwn(section, key))
      context.faults.add(keyAt, prefix + key, {
        code: "unknown-key",
        key,
        section: path,
        isAlone: value.kind === "nothing",
      });
  const values: DecodedSection = {};
  for (const [key, inner] of Object.entries(section)) {
    const entry = entries.find((candidate) => candidate.key === key);
    const value = isRow(inner)
      ? decodeRow(inner, entry, at, prefix + key, context)
      : decodeSection(inner, entry, at, prefix + key, context);
    if (value !== undefined) values[key] = value;
  }
  return values;
}

function decodeSection(
  section: TableSection,
  entry: DesignEntry | undefined,
  at: SourcePosition,
  path: string,
  context: DecodeContext,
) {
  const given = entry?.value;
  if (entry && given?.kind === "map") return decodeEntries(section, given.entries, entry.at, path, context);
  if (!entry || !given || (given.kind === "nothing" && mayBeEmpty(section)))
    return decodeEntries(section, [], at, path, context);
  if (given.kind !== "refused") context.faults.add(given.at, path, { code: "not-a-section" });
  return undefined;
}

const isLength = (row: Row): boolean => row.kind === "lengths" || (row.kind === "number" && row.quantity === "length");

export function decodeRow(
  row: Row,
  entry: DesignEntry | undefined,
  at: SourcePosition,
  path: string,
  context: DecodeContext,
) {
  const units = context.units ?? "mm";
  if (entry) {
    context.givenPaths.add(path);
    if (entry.value.kind === "refused" || (context.units === undefined && isLength(row))) return undefined;
    const reading = decodeValue(entry.value, row, units);
    if ("value" in reading) {
      noteSlip(row, entry.value, reading.value, path, context);
      noteOldWord(row, entry.value, reading.value, path, context);
      noteOverShop(entry.value, reading.value, path, context);
      return reading.value;
    }
    context.faults.add(entry.value.at, path, { ...reading.fault, units });
    return undefined;
  }
  const ofShop = context.shop?.get(path);
  if (ofShop !== undefined) return ofShop as ParameterValue;
  if ("required" in row && row.required) context.faults.add(at, path, { code: "missing", units });
  return defaultIn(row, context.defaults);
}

/** Only a file's bare lengths are of its unit; plain values are mm. */
function noteSlip(row: Row, node: DesignNode, value: ParameterValue, path: string, context: DecodeContext): void {
  if (row.kind !== "number" || row.quantity !== "length" || typeof value !== "number" || node.at.line === 0) return;
  const units = context.units ?? "mm";
  const read = node.kind === "number" ? String(node.value) : node.kind === "text" ? node.text : "";
  if (isUnitSlip(row, read, value, units)) context.slips.push({ path, at: node.at, read, units });
}

function noteOldWord(row: Row, node: DesignNode, value: ParameterValue, path: string, context: DecodeContext): void {
  if (row.kind !== "choice" || node.kind !== "text" || node.text === value) return;
  context.oldWords.push({ path, at: node.at, read: node.text, value: String(value) });
}

function noteOverShop({ at }: DesignNode, own: ParameterValue, path: string, { shop, overShop }: DecodeContext): void {
  const ofShop = shop?.get(path) as ParameterValue | undefined;
  if (ofShop !== undefined && ofShop !== own) overShop.push({ path, at, values: { own, shop: ofShop } });
}
