// Sentences of the faults that any text can have.
import type { SourceDetail } from "./fault.ts";

/** What is wrong and what to do, without its place. */
export function sourceFaultText(fault: SourceDetail): string {
  switch (fault.code) {
    case "file-too-large":
      return `the file is larger than ${fault.mostBytes / 1024} kB; one filled in takes less than 10 kB`;
    case "not-utf8":
      return "this is not UTF-8 text; save it as plain text in UTF-8";
    case "hidden-character": {
      const code = fault.codePoint.toString(16).toUpperCase().padStart(4, "0");
      return `a character that does not show (U+${code}) stands here; delete it`;
    }
    case "nested-too-deep":
      return `the file is nested more than ${fault.deepest} levels deep`;
    case "more-faults":
      return `${fault.count} more faults are not shown; mend these first`;
  }
}
