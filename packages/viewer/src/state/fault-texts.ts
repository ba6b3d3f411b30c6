// What was not understood of a file, in words.
import { type Fault, faultText } from "@lamplane/parameters/design";

/** Faults in words, each with its place. */
export const faultTexts = (faults: readonly Fault[]): string[] =>
  faults.map((fault) => {
    const { file, line, column, path } = fault;
    return [line > 0 ? `${file} line ${line}, column ${column}` : "", path, faultText(fault)]
      .filter((part) => part !== "")
      .join(": ");
  });
