// What can be wrong with a readings file, as data, and which sentence says it.
import { formatLimit, type Units } from "@lamplane/parameters/units";
import { type SyntaxCode, sourceFaultText, syntaxText } from "@lamplane/parameters/words";
import type { LocatedFault, SourceDetail } from "@lamplane/parameters/yaml";
import { READING_FAULT } from "../words/readings.ts";

/** Limits of a length, mm. */
export interface LengthLimits {
  readonly min: number;
  readonly max: number;
  /** What the length measures, between what and what. */
  readonly words: string;
}

/** What may stand at a place. */
export type Allowed =
  | { readonly code: "yaml"; readonly problem: SyntaxCode }
  | { readonly code: "keys"; readonly keys: readonly string[] }
  | { readonly code: "key-once" }
  /** `count` is how many there are, of a list. */
  | {
      readonly code: "list";
      readonly fewest: number;
      readonly most: number;
      readonly words: string;
      readonly count?: number;
    }
  /** `reason` says why the text is no length. */
  | ({ readonly code: "length"; readonly units: Units; readonly reason?: string } & LengthLimits)
  | { readonly code: "word"; readonly choices: readonly string[] }
  | { readonly code: "some-readings" }
  | { readonly code: "fewer-readings"; readonly most: number; readonly count: number }
  | { readonly code: "another-end" }
  | { readonly code: "thicker-leaf" }
  | { readonly code: "error-over-0" }
  /** Place of the other reading. */
  | { readonly code: "one-reading"; readonly otherLine: number; readonly otherColumn: number };

/** `read` is what stands in the file, absent where nothing does. */
export type ReadingDetail = Allowed & { readonly read?: string };
export type ReadingFault = LocatedFault<ReadingDetail | SourceDetail>;

/** What is wrong and what is allowed, in one sentence without its place. */
export function readingFaultText(fault: ReadingFault): string {
  switch (fault.code) {
    case "file-too-large":
    case "not-utf8":
    case "hidden-character":
    case "nested-too-deep":
    case "more-faults":
      return sourceFaultText(fault);
    default:
      return READING_FAULT.fault({
        read: fault.read === undefined ? undefined : shortQuote(fault.read),
        allowed: allowedText(fault),
      });
  }
}

function allowedText(allowed: Allowed): string {
  switch (allowed.code) {
    case "yaml":
      return READING_FAULT.yaml({ problem: syntaxText(allowed.problem) });
    case "keys":
      return READING_FAULT.keys(allowed);
    case "key-once":
      return READING_FAULT.keyOnce;
    case "list":
      return READING_FAULT.list({ ...allowed, items: allowed.words, count: allowed.count });
    case "length": {
      const { words: what, units, reason } = allowed;
      const limits = { what, min: formatLimit(allowed.min, units), max: formatLimit(allowed.max, units) };
      return reason === undefined ? READING_FAULT.length(limits) : READING_FAULT.lengthBecause({ ...limits, reason });
    }
    case "word":
      return allowed.choices.join(" or ");
    case "some-readings":
      return READING_FAULT.someReadings;
    case "fewer-readings":
      return READING_FAULT.fewerReadings(allowed);
    case "another-end":
      return READING_FAULT.anotherEnd;
    case "thicker-leaf":
      return READING_FAULT.thickerLeaf;
    case "error-over-0":
      return READING_FAULT.errorOverZero;
    case "one-reading":
      return READING_FAULT.oneReading({ line: allowed.otherLine, column: allowed.otherColumn });
  }
}

const LONGEST_QUOTE = 40; // characters of the maker's text shown back in a message

function shortQuote(text: string): string {
  const line = text.replace(/\s+/g, " ");
  return line.length > LONGEST_QUOTE ? `${line.slice(0, LONGEST_QUOTE)}…` : line;
}
