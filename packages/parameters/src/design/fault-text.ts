// Sentences of a design's faults: what was read, what is allowed, what to do. The only place where they are made.
import type { Row } from "../parameter.ts";
import { isRow, TABLE, type TableSection } from "../table/index.ts";
import { formatLimit } from "../units.ts";
import { sanitizeForMessage } from "../yaml/fault.ts";
import { sourceFaultText } from "../yaml/fault-text.ts";
import type { YamlFeature } from "../yaml/raw-node.ts";
import { allowedText } from "./allowed-text.ts";
import type { DesignDetail, Fault } from "./fault.ts";
import { rowAt } from "./path.ts";
import { nearestWord, unknownKeyMessage } from "./suggest.ts";
import { otherUnitText } from "./unit-slip.ts";

const FEATURES: Record<YamlFeature, string> = { alias: "aliases (*)", anchor: "anchors (&)", tag: "tags (!)" };

/** What is wrong and what to do, in one sentence without its place. */
export function faultText(fault: Fault): string {
  switch (fault.code) {
    case "not-yaml":
      return `not YAML: ${sanitizeForMessage(fault.problem)}; check colons, quotes and brackets`;
    case "second-document":
      return "a second document begins here; a file holds one plane";
    case "yaml-directive":
      return "%YAML directives are not read; leave the line out";
    case "yaml-feature":
      return `${FEATURES[fault.feature]} are not read in a design${fault.of === "value" ? "; write the value out" : ""}`;
    case "merge-key":
      return "merge keys (<<) are not read in a design; write the keys out";
    case "key-not-a-word":
      return "a key is one word; write `key: value`";
    case "doubled-key":
      return `"${sanitizeForMessage(fault.key)}" was already given on line ${fault.firstLine}; keep one of the two`;
    case "empty-design":
      return `the design is empty; ${BEGINNING}`;
    case "not-a-design":
      return `a design is a list of keys and values; ${BEGINNING}`;
    case "not-an-object":
      return "a design is an object of keys and values";
    case "unknown-key":
      return unknownKeyMessage(fault.key, fault.section, sectionAt(fault.section), fault.isAlone);
    case "not-a-section": {
      const keys = Object.keys(sectionAt(fault.path)).join(", ");
      return `${fault.path} is a section; write keys into it (${keys}), or leave it out`;
    }
    case "nested-too-deep":
      return `${sourceFaultText(fault)}; a design has three`;
    case "file-too-large":
    case "not-utf8":
    case "hidden-character":
    case "more-faults":
      return sourceFaultText(fault);
    default:
      return valueFaultText(fault, fault.path, rowAt(fault.path));
  }
}

const BEGINNING = "begin with `iron: { width: 48 mm, thickness: 3.6 mm }`";

type ValueFault = Extract<DesignDetail, { readonly units: unknown }>;

function valueFaultText(fault: ValueFault, path: string, row: Row): string {
  const allowed = allowedText(row, fault.units);
  switch (fault.code) {
    case "missing":
      return `${path} is missing: ${row.help} Write ${allowed}`;
    case "no-value":
      return `no value is given; write ${allowed}, or leave the key out`;
    case "not-a-value":
      return `read ${fault.what}; write ${allowed}`;
    case "nothing-solves":
      return `nothing solves this one, so auto is no value; write ${allowed}`;
    case "not-a-number":
      return `read "${sanitizeForMessage(fault.read)}": ${fault.reason}`;
    case "not-finite":
      return `read ${fault.read}, which is no finite number; write ${allowed}`;
    case "out-of-limits": {
      const isInInches = row.kind === "number" && row.quantity === "length" && fault.units === "in";
      const inside = isInInches ? `, which is ${formatLimit(fault.value, fault.units)}` : "";
      const other = row.kind === "number" ? otherUnitText(row, sanitizeForMessage(fault.read), fault.units) : "";
      return `read ${sanitizeForMessage(fault.read)}${inside}; allowed is ${allowed}${other}`;
    }
    case "not-whole":
      return `read ${sanitizeForMessage(fault.read)}; write a whole number`;
    case "number-for-text": {
      const read = sanitizeForMessage(fault.read);
      const quoted = row.kind === "text" ? `; if ${read} is meant, put it in quotes` : "";
      return `read the number ${read}; write ${allowed}${quoted}`;
    }
    default:
      return textFaultText(fault, row);
  }
}

function textFaultText(fault: Exclude<ValueFault, { code: "missing" }>, row: Row): string {
  const read = "read" in fault ? sanitizeForMessage(fault.read) : "";
  switch (fault.code) {
    case "hidden-in-text":
      return "the text holds a character that does not show; delete it";
    case "empty-text":
      return "the text is empty; write some, or leave the key out";
    case "text-too-long":
      return `the text has ${fault.length} characters; allowed are ${row.kind === "text" ? row.maxLength : ""}`;
    case "text-not-of-pattern":
      return `read "${read}"; write ${row.kind === "text" ? row.pattern?.words : ""}`;
    default: {
      const choices = row.kind === "choice" ? row.choices : [];
      const near = "read" in fault ? nearestWord(fault.read, choices) : undefined;
      return `read "${read}"; write one of ${choices.join(", ")}${near === undefined ? "" : `; did you mean ${near}?`}`;
    }
  }
}

/** @throws Error for a path that is no section (our bug) */
function sectionAt(path: string): TableSection {
  let entry: Row | TableSection = TABLE;
  for (const key of path === "" ? [] : path.split(".")) {
    if (isRow(entry) || !entry[key]) throw new Error(`no section is called "${path}"`);
    entry = entry[key];
  }
  if (isRow(entry)) throw new Error(`${path} is no section`);
  return entry;
}
