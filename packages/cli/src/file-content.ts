// A maker's file from the disk, or a refusal that says what was found instead; nothing is read that is too large to be one.
import { closeSync, openSync, readSync, statSync } from "node:fs";
import { type Fault, type FaultDetail, LARGEST_FILE } from "@lamplane/parameters/yaml";
import { InputRefused } from "./io.ts";

/** What kind of file is meant, and how to come by one, for the messages. */
export interface FileKind {
  readonly what: string;
  readonly howToStart: string;
}

/** The standard input in a file's place: its name on most systems, and what a lone dash is read as. */
export const STANDARD_INPUT = "/dev/stdin";

/** A file's name as messages tell it. */
export const fileTitle = (file: string): string => (file === STANDARD_INPUT ? "standard input" : file);

/** Refuses what can only be read where a file is to be written or followed. @throws InputRefused */
export function requireFileName(command: string, file: string): void {
  if (file !== STANDARD_INPUT) return;
  throw new InputRefused(`${command} -: the standard input can be read but not written; name the design file`);
}

/** @throws InputRefused where there is no such file, it cannot be read or is larger than any maker's. */
export function readContent(file: string, { what, howToStart }: FileKind): Uint8Array {
  if (file === "") throw new InputRefused(`The name of the ${what} is empty; ${howToStart}.`);
  const name = fileTitle(file);
  try {
    const size = file === STANDARD_INPUT ? 0 : statSync(file).size;
    const content = size > LARGEST_FILE ? undefined : readBounded(file);
    if (content) return content;
    const told = size > LARGEST_FILE ? `${size} bytes` : `more than ${LARGEST_FILE} bytes`;
    throw new InputRefused(`${name}:1:1: is ${told}; a ${what} has at most ${LARGEST_FILE}. Is it the right file?`);
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code;
    if (error instanceof InputRefused || code === undefined) throw error;
    const found: Record<string, string> = {
      ENOENT: `there is no such file; ${howToStart}`,
      EISDIR: `this is a folder; name the ${what} in it`,
      EACCES: "this file may not be read by you",
      ERR_INVALID_ARG_VALUE: "this is not a file name",
    };
    throw new InputRefused(`${name}: ${found[code] ?? `could not be read (${code})`}`);
  }
}

const STDIN_HANDLE = 0;

/** A file's bytes; undefined where they are too many, however few the system says there are: a device's have no end. */
function readBounded(file: string): Uint8Array | undefined {
  const bytes = new Uint8Array(LARGEST_FILE + 1);
  const handle = file === STANDARD_INPUT ? STDIN_HANDLE : openSync(file, "r");
  try {
    let size = 0;
    for (let more = -1; more !== 0 && size < bytes.length; size += more) more = readPatiently(handle, bytes, size);
    return size > LARGEST_FILE ? undefined : bytes.slice(0, size);
  } finally {
    if (handle !== STDIN_HANDLE) closeSync(handle);
  }
}

/** Between two looks at an input that has nothing yet, ms. */
const LOOK_AGAIN = 10;

/** A pipe that whoever writes it set not to wait says EAGAIN until something comes. */
function readPatiently(handle: number, bytes: Uint8Array, at: number): number {
  for (;;) {
    try {
      return readSync(handle, bytes, at, bytes.length - at, null);
    } catch (error) {
      const code = (error as NodeJS.ErrnoException).code;
      if (code === "EOF") return 0;
      if (code !== "EAGAIN") throw error;
      Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, LOOK_AGAIN);
    }
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
