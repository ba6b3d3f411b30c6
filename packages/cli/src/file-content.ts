// A maker's file from the disk, or a refusal that says what was found instead; nothing is read that is too large to be one.
import { closeSync, openSync, readSync, statSync } from "node:fs";
import { type FaultDetail, LARGEST_FILE, type LocatedFault } from "@lamplane/parameters/yaml";
import { InputRefused } from "./io.ts";
import { fileTitle, STANDARD_INPUT } from "./standard-input.ts";
import { ARGUMENT_FAULT, FILE_FAULTS } from "./words/commands.ts";

/** What kind of file is meant, and how to come by one, for the messages. */
export interface FileKind {
  readonly what: string;
  readonly howToStart: string;
}

/** @throws InputRefused where there is no such file, it cannot be read or is larger than any maker's. */
export function readContent(file: string, { what, howToStart }: FileKind): Uint8Array {
  if (file === "") throw new InputRefused(ARGUMENT_FAULT.emptyFile({ what, howToStart }));
  const name = fileTitle(file);
  try {
    const size = file === STANDARD_INPUT ? 0 : statSync(file).size;
    const content = size > LARGEST_FILE ? undefined : readBounded(file);
    if (content) return content;
    const isKnown = size > LARGEST_FILE;
    const found = FILE_FAULTS.bytes({ size: isKnown ? size : LARGEST_FILE, more: !isKnown });
    throw new InputRefused(FILE_FAULTS.tooLarge({ file: name, size: found, what, most: LARGEST_FILE }));
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code;
    if (error instanceof InputRefused || code === undefined) throw error;
    const found: Record<string, string> = {
      ENOENT: FILE_FAULTS.ENOENT({ howToStart }),
      EISDIR: FILE_FAULTS.EISDIR({ what }),
      EACCES: FILE_FAULTS.EACCES,
      ERR_INVALID_ARG_VALUE: FILE_FAULTS.ERR_INVALID_ARG_VALUE,
    };
    throw new InputRefused(`${name}: ${found[code] ?? FILE_FAULTS.other({ code })}`);
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
  faults: readonly LocatedFault<D>[],
  text: (fault: LocatedFault<D>) => string,
): string =>
  faults
    .map((fault) => [positionText(fault), fault.path, text(fault)].filter((part) => part !== "").join(": "))
    .join("\n");

const positionText = ({ file, line, column }: LocatedFault<FaultDetail>): string =>
  line > 0 ? `${file}:${line}:${column}` : file;
