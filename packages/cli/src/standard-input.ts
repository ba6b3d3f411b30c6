// The standard input in the place of a file.
import { InputRefused } from "./io.ts";
import { ARGUMENT_FAULT } from "./words/commands.ts";

/** Its name on most systems, and what a lone dash is read as. */
export const STANDARD_INPUT = "/dev/stdin";

/** A file's name as messages show it. */
export const fileTitle = (file: string): string => (file === STANDARD_INPUT ? "standard input" : file);

/** Refuses what can only be read where a file is to be written or followed. @throws InputRefused */
export function requireFileName(command: string, file: string): void {
  if (file !== STANDARD_INPUT) return;
  throw new InputRefused(ARGUMENT_FAULT.notWritten({ command }));
}
