// What can be wrong with a readings file, as data, and the sentences of it.
import { formatLimit, type Units } from "@lamplane/parameters/units";
import { type Fault, type SourceDetail, sourceFaultText } from "@lamplane/parameters/yaml";

/** Limits of a length, mm. */
export interface LengthLimits {
  readonly min: number;
  readonly max: number;
  /** What the length measures, between what and what. */
  readonly words: string;
}

/** What may stand at a place. */
export type Allowed =
  | { readonly code: "yaml"; readonly problem: string }
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
export type ReadingFault = Fault<ReadingDetail | SourceDetail>;

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
      return `read ${fault.read === undefined ? "nothing" : quoteText(fault.read)}; allowed: ${allowedText(fault)}`;
  }
}

function allowedText(allowed: Allowed): string {
  switch (allowed.code) {
    case "yaml":
      return `YAML without this fault: ${allowed.problem}`;
    case "keys":
      return `the keys ${allowed.keys.join(", ")}`;
    case "key-once":
      return "each key once";
    case "list": {
      const { fewest, most, words, count } = allowed;
      const here = count === undefined ? "" : `; here are ${count}`;
      return `${fewest === most ? fewest : `${fewest} to ${most}`} ${words}, as a list${here}`;
    }
    case "length": {
      const { words, min, max, units, reason } = allowed;
      const limits = `${words}, from ${formatLimit(min, units)} to ${formatLimit(max, units)}`;
      return reason === undefined ? limits : `${limits} (${reason})`;
    }
    case "word":
      return allowed.choices.join(" or ");
    case "some-readings":
      return "gaps under a straightedge, or heights, or both";
    case "fewer-readings":
      return `${allowed.most} readings or fewer; here are ${allowed.count}`;
    case "another-end":
      return "another place than `from`";
    case "thicker-leaf":
      return "a thicker leaf than the one that fits";
    case "error-over-0":
      return "more than 0: no gauge reads without error";
    case "one-reading":
      return `one reading at a station; ${allowed.otherLine}:${allowed.otherColumn} is at the same`;
  }
}

const LONGEST_QUOTE = 40; // characters of the maker's text shown back in a message

function quoteText(text: string): string {
  const line = text.replace(/\s+/g, " ");
  return `"${line.length > LONGEST_QUOTE ? `${line.slice(0, LONGEST_QUOTE)}…` : line}"`;
}
