// A maker's file from the disk, or a refusal that says what was found instead; nothing is read that is too large to be one.
import { closeSync, openSync, readSync, statSync } from "node:fs";
import { type Fault, type FaultDetail, LARGEST_FILE } from "@lamplane/parameters/yaml";
import { InputRefused } from "./io.ts";

/** What kind of file is meant, and how to come by one, for the messages. */
export interface FileKind {
  readonly what: string;
  readonly howToStart: string;
}

/** @throws InputRefused where there is no such file, it cannot be read or is larger than any maker's. */
export function readContent(file: string, { what, howToStart }: FileKind): Uint8Array {
  try {
    const { size } = statSync(file);
    const content = size > LARGEST_FILE ? undefined : readBounded(file);
    if (content) return content;
    const sizeText = size > LARGEST_FILE ? `${size} bytes` : `more than ${LARGEST_FILE} bytes`;
    throw new InputRefused(`${file}:1:1: is ${sizeText}; a ${what} has at most ${LARGEST_FILE}. Is it the right file?`);
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code;
    if (error instanceof InputRefused || code === undefined) throw error;
    const found: Record<string, string> = {
      ENOENT: `there is no such file; ${howToStart}`,
      EISDIR: `this is a folder; name the ${what} in it`,
      EACCES: "this file may not be read by you",
      ERR_INVALID_ARG_VALUE: "this is not a file name",
    };
    throw new InputRefused(`${file}: ${found[code] ?? `could not be read (${code})`}`);
  }
}

/** A file's bytes; undefined where they are too many, however few the system says there are: a device's have no end. */
function readBounded(file: string): Uint8Array | undefined {
  const bytes = new Uint8Array(LARGEST_FILE + 1);
  const handle = openSync(file, "r");
  try {
    let size = 0;
    for (let more = -1; more !== 0 && size < bytes.length; size += more)
      more = readSync(handle, bytes, size, bytes.length - size, null);
    return size > LARGEST_FILE ? undefined : bytes.slice(0, size);
  } finally {
    closeSync(handle);
  }
}

/**
 * Every fault on a line of its own, its place first.
 * @param text a fault's sentence
 */
export const faultLines = <D extends FaultDetail>(
  faults: readonly Fault<D>[],
  text: (fault: Fault<D>) => string,
): string =>
  faults
    .map((fault) => [positionText(fault), fault.path, text(fault)].filter((part) => part !== "").join(": "))
    .join("\n");

const positionText = ({ file, line, column }: Fault<FaultDetail>): string =>
  line > 0 ? `${file}:${line}:${column}` : file;
