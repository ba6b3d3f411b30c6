// A maker's file from the disk, or a refusal that says what was found instead; nothing is read that is too large to be one.
import { readFileSync, statSync } from "node:fs";
import { type Fault, LARGEST_FILE } from "@lamplane/parameters/design";
import { InputRefused } from "./io.ts";

/** What kind of file is meant, and how to come by one, for the messages. */
export interface FileKind {
  readonly what: string;
  readonly beginning: string;
}

/** @throws InputRefused where there is no such file, it cannot be read or is larger than any maker's. */
export function contentOf(file: string, { what, beginning }: FileKind): Uint8Array {
  try {
    const { size } = statSync(file);
    if (size > LARGEST_FILE)
      throw new InputRefused(
        `${file}:1:1: is ${size} bytes; a ${what} has at most ${LARGEST_FILE}. Is it the right file?`,
      );
    return readFileSync(file);
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code;
    if (error instanceof InputRefused || code === undefined) throw error;
    const found: Record<string, string> = {
      ENOENT: `there is no such file; ${beginning}`,
      EISDIR: `this is a folder; name the ${what} in it`,
      EACCES: "this file may not be read by you",
      ERR_INVALID_ARG_VALUE: "this is not a file name",
    };
    throw new InputRefused(`${file}: ${found[code] ?? `could not be read (${code})`}`);
  }
}

/** Every fault on a line of its own, its place first. */
export const faultLines = (faults: readonly Fault[]): string =>
  faults
    .map(({ file, line, column, path, message }) =>
      [line > 0 ? `${file}:${line}:${column}` : file, path, message].filter((part) => part !== "").join(": "),
    )
    .join("\n");
