// Which sentence says a design's fault; the sentences are in words/.
import type { Row } from "../parameter.ts";
import { isListName, isRow, LISTS, listsWithin, rowsOf, TABLE, type TableSection } from "../table/index.ts";
import { SHOP_KEYS } from "../table/shop-table.ts";
import { formatLimit } from "../units.ts";
import { FILE_FAULT, VALUE_FAULT } from "../words/design-faults.ts";
import { ROSTER_FAULT } from "../words/roster-faults.ts";
import { sourceFaultText, syntaxText } from "../words/text-faults.ts";
import { sanitizeForMessage } from "../yaml/fault.ts";
import { allowedText } from "./allowed-text.ts";
import type { DesignDetail, Fault } from "./fault.ts";
import { rowAt } from "./path.ts";
import { nearestWord, unknownKeyMessage } from "./suggest.ts";
import { otherUnitText } from "./unit-slip.ts";

/** What is wrong and what to do, in one sentence without its place. */
export function faultText(fault: Fault): string {
  switch (fault.code) {
    case "not-yaml":
      return FILE_FAULT[fault.code]({ problem: syntaxText(fault.problem) });
    case "yaml-feature":
      return FILE_FAULT[fault.code](fault);
    case "doubled-key":
      return FILE_FAULT[fault.code]({ ...fault, key: sanitizeForMessage(fault.key) });
    case "second-document":
    case "yaml-directive":
    case "merge-key":
    case "key-not-a-word":
    case "empty-design":
    case "not-a-design":
    case "not-an-object":
    case "empty-shop":
    case "not-a-shop":
    case "no-file-name":
      return FILE_FAULT[fault.code];
    case "not-of-a-shop":
      return FILE_FAULT[fault.code]({ keys: SHOP_KEYS.join(", ") });
    case "shop-not-read":
      return FILE_FAULT[fault.code]({ name: sanitizeForMessage(fault.name), problem: fault.problem });
    case "not-a-list":
      return FILE_FAULT[fault.code];
    case "not-an-item":
      return FILE_FAULT[fault.code]({ keys: Object.keys(sectionAt(fault.path)).join(", ") });
    case "doubled-name":
      return FILE_FAULT[fault.code]({ ...fault, name: sanitizeForMessage(fault.name) });
    case "not-a-roster":
    case "no-planes":
    case "base-not-a-file":
    case "row-not-a-map":
    case "open-quote":
    case "no-name-column":
    case "no-name":
      return ROSTER_FAULT[fault.code];
    case "too-many-planes":
      return ROSTER_FAULT[fault.code](fault);
    case "cells-beyond-head":
      return ROSTER_FAULT[fault.code](fault);
    case "unknown-roster-key":
      return ROSTER_FAULT[fault.code]({ ...fault, key: sanitizeForMessage(fault.key) });
    case "doubled-column":
      return ROSTER_FAULT[fault.code]({ head: sanitizeForMessage(fault.head) });
    case "second-name":
      return ROSTER_FAULT[fault.code](fault);
    case "of-the-base":
      return ROSTER_FAULT[fault.code](fault);
    case "unknown-key":
      return unknownKeyMessage(fault.key, fault.section, sectionAt(fault.section), fault.isAlone);
    case "not-a-section":
      return FILE_FAULT[fault.code]({ keys: Object.keys(sectionAt(fault.path)).join(", ") });
    case "nested-too-deep":
      return FILE_FAULT[fault.code]({ fault: sourceFaultText(fault) });
    case "file-too-large":
    case "not-utf8":
    case "hidden-character":
    case "more-faults":
      return sourceFaultText(fault);
    default:
      return valueFaultText(fault, rowOf(fault.path));
  }
}

type ValueFault = Extract<DesignDetail, { readonly units: unknown }>;

function valueFaultText(fault: ValueFault, row: Row): string {
  const allowed = allowedText(row, fault.units);
  const read = "read" in fault ? sanitizeForMessage(fault.read) : "";
  switch (fault.code) {
    case "missing":
      return VALUE_FAULT[fault.code]({ help: row.help, allowed });
    case "no-value":
    case "nothing-solves":
      return VALUE_FAULT[fault.code]({ allowed });
    case "not-a-value":
      return VALUE_FAULT[fault.code]({ what: fault.what, allowed });
    case "not-a-number":
      return VALUE_FAULT[fault.code]({ read, reason: fault.reason });
    case "not-finite":
      return VALUE_FAULT[fault.code]({ read: fault.read, allowed });
    case "out-of-limits": {
      const isLength = row.kind === "lengths" || (row.kind === "number" && row.quantity === "length");
      const isInInches = isLength && fault.units === "in";
      const is = isInInches ? formatLimit(fault.value, fault.units) : "";
      const other = row.kind === "number" ? otherUnitText(row, read, fault.units) : "";
      return `${VALUE_FAULT[fault.code]({ read, is, allowed })}${other}`;
    }
    case "too-many-lengths":
      return VALUE_FAULT[fault.code]({ count: fault.count, most: row.kind === "lengths" ? row.most : 0 });
    case "not-whole":
      return VALUE_FAULT[fault.code]({ read });
    case "number-for-text":
      return VALUE_FAULT[fault.code]({ read, allowed, quoted: row.kind === "text" });
    default:
      return textFaultText(fault, row, read, allowed);
  }
}

function textFaultText(
  fault: Exclude<ValueFault, { code: "missing" }>,
  row: Row,
  read: string,
  allowed: string,
): string {
  switch (fault.code) {
    case "hidden-in-text":
    case "empty-text":
      return VALUE_FAULT[fault.code];
    case "text-too-long":
      return VALUE_FAULT[fault.code]({ length: fault.length, most: row.kind === "text" ? `${row.maxLength}` : "" });
    case "text-not-of-pattern":
      return VALUE_FAULT[fault.code]({ read, pattern: (row.kind === "text" && row.pattern?.words) || "" });
    default: {
      const choices = row.kind === "choice" ? row.choices : row.kind === "lengths" ? [allowed] : [];
      const near = "read" in fault ? nearestWord(fault.read, choices) : undefined;
      return VALUE_FAULT["unknown-choice"]({ read, choices, near });
    }
  }
}

/** Where a path leads into an item of a list, as in `cutters.2.diameter`: the item's section, and the keys within. */
function listItemAt(path: string): { section: TableSection; keys: string[] } | undefined {
  const [list = "", index, ...keys] = path.split(".");
  if (!isListName(list) || index === undefined) return undefined;
  const within = keys[0] === undefined ? undefined : listsWithin(list)[keys[0]];
  if (within && keys.length > 1) return { section: within.item, keys: keys.slice(2) };
  return { section: LISTS[list].item, keys };
}

/** @throws Error for a path that is no row (our bug) */
function rowOf(path: string): Row {
  const { section, keys } = listItemAt(path) ?? {};
  const entry = section && rowsOf(section).find((each) => each.path === keys?.join("."));
  return entry?.row ?? rowAt(path);
}

/** @throws Error for a path that is no section (our bug) */
function sectionAt(path: string): TableSection {
  const { section, keys } = listItemAt(path) ?? { section: TABLE, keys: path === "" ? [] : path.split(".") };
  let entry: Row | TableSection = section;
  for (const key of keys) {
    if (isRow(entry) || !entry[key]) throw new Error(`no section is called "${path}"`);
    entry = entry[key];
  }
  if (isRow(entry)) throw new Error(`${path} is no section`);
  return entry;
}
