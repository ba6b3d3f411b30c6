// Bytes or text → text that is safe to parse: bounded, valid UTF-8, no hidden characters.
import { LineCounter } from "yaml";
import type { FaultCollector, FaultDetail, SourcePosition } from "./fault.ts";

declare const TextDecoder: new (
  label: string,
  options?: { fatal?: boolean; ignoreBOM?: boolean },
) => { decode(bytes: Uint8Array): string };

/** Bytes of the largest file that is read: a hundred times a full design. */
export const LARGEST_FILE = 256 * 1024;
// Controls but tab and line ends, lone surrogates, and the marks that turn or hide text, or take no room: all that Unicode lets
// a program ignore but the selectors of an emoji's look (UAX #44, Default_Ignorable_Code_Point), and the marks of interlinear notes.
const HIDDEN =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is looked for
  /[\0-\x08\x0b\x0c\x0e-\x1f\x7f-\x9f\u2028\u2029\ufff9-\ufffb]|(?![\ufe00-\ufe0f])\p{DI}|\r(?!\n)|\p{Cs}/u;

export interface SourceText {
  readonly text: string;
  readonly lines: LineCounter;
}

/** The text of a maker's file with its line starts, or nothing, with the faults added. */
export function readSource<D extends FaultDetail>(
  source: string | Uint8Array,
  faults: FaultCollector<D>,
): SourceText | undefined {
  if (source.length > LARGEST_FILE) {
    faults.add(START, "", { code: "file-too-large", mostBytes: LARGEST_FILE });
    return undefined;
  }
  const decoded = typeof source === "string" ? source : new TextDecoder("utf-8", { ignoreBOM: true }).decode(source);
  const text = decoded.replace(/^\ufeff/, ""); // one mark may begin a file; a second is a character that does not show
  const lines = lineStarts(text);
  const spoiled = typeof source === "string" ? -1 : invalidUtf8At(text, source);
  if (text.includes("\0") || spoiled >= 0) {
    const at = positionAt(lines, spoiled >= 0 ? spoiled : text.indexOf("\0"));
    faults.add(at, "", { code: "not-utf8" });
    return undefined;
  }
  return reportHidden(text, lines, faults) ? undefined : { text, lines };
}

export const START: SourcePosition = { line: 1, column: 1 };

/** Whether a text holds a character that does not show, or that turns what does. */
export const hasHidden = (text: string): boolean => HIDDEN.test(text) || /[\t\r\n]/.test(text);

export function positionAt(lines: LineCounter, offset: number): SourcePosition {
  const { line, col } = lines.linePos(offset);
  return { line, column: col };
}

function lineStarts(text: string): LineCounter {
  const lines = new LineCounter();
  lines.addNewLine(0);
  for (let at = text.indexOf("\n"); at >= 0; at = text.indexOf("\n", at + 1)) lines.addNewLine(at + 1);
  return lines;
}

/** Offset of the first broken character; -1 for sound UTF-8, where U+FFFD may have been written on purpose. */
function invalidUtf8At(text: string, bytes: Uint8Array): number {
  try {
    new TextDecoder("utf-8", { fatal: true }).decode(bytes);
    return -1;
  } catch {
    return Math.max(0, text.indexOf("\ufffd"));
  }
}

function reportHidden<D extends FaultDetail>(text: string, lines: LineCounter, faults: FaultCollector<D>): boolean {
  let found = false;
  for (const match of text.matchAll(new RegExp(HIDDEN, "gu"))) {
    found = true;
    const codePoint = match[0].codePointAt(0) ?? 0;
    faults.add(positionAt(lines, match.index), "", { code: "hidden-character", codePoint });
  }
  return found;
}
