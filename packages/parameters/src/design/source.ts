// Bytes → text that is safe to parse: a bounded size, valid UTF-8, nothing in it that cannot be seen, nothing too deep.
import { CST, Lexer, LineCounter } from "yaml";
import type { Place, Report } from "./fault.ts";

const MOST_BYTES = 256 * 1024; // a design is some 5 kB; a hundred times that is no design
const DEEPEST = 32; // a design nests 3 deep; the parser's stack holds some 300, and past it can end the whole process

/** Text of a design file and the way from an offset in it to its place. */
export interface Source {
  readonly text: string;
  readonly placeAt: (offset: number) => Place;
}

// In Node and in every browser; declared here because this package is compiled without either's types.
declare const TextDecoder: new () => { decode(bytes: Uint8Array): string };

/** The text of a file, or undefined once the reason against it has been reported. */
export function sourceOf(source: string | Uint8Array, report: Report): Source | undefined {
  if (source.length > MOST_BYTES) {
    report({ line: 1, column: 1 }, "", `the file is larger than ${MOST_BYTES / 1024} kB; a design is some 5 kB`);
    return undefined;
  }
  const decoded = typeof source === "string" ? source : new TextDecoder().decode(source);
  const text = decoded.replace(/^\uFEFF/u, "");
  const placeAt = placesIn(text);
  const refused = unseenIn(text) ?? tooDeepIn(text);
  if (refused === undefined) return { text, placeAt };
  report(placeAt(refused.offset), "", refused.message);
  return undefined;
}

interface Refused {
  readonly offset: number;
  readonly message: string;
}

/** Marks that no design needs and that hide what is written, with what to call them. */
const UNSEEN: readonly (readonly [RegExp, string])[] = [
  [/\uFFFD/u, "not UTF-8 text: save the file as UTF-8"],
  [/\0/u, "a NUL byte: this is not a text file"],
  [/\r(?!\n)/u, "a line that ends in CR alone: save the file with LF or CRLF line ends"],
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
  [/[\x01-\x08\x0B\x0C\x0E-\x1F\x7F-\x9F]/u, "a control character that cannot be seen: delete it"],
  [/[\u061C\u200E\u200F\u202A-\u202E\u2066-\u2069]/u, "a mark that turns the direction of writing: delete it"],
  [/[\u200B\u2028\u2029\u2060\uFEFF]/u, "a space or line end that cannot be seen: delete it"],
  [/\p{Cs}/u, "half a character: save the file as UTF-8"],
];

/** The first mark in a text that would hide what is written. */
export function unseenIn(text: string): Refused | undefined {
  return UNSEEN.map(([mark, message]) => ({ offset: text.search(mark), message }))
    .filter(({ offset }) => offset >= 0)
    .sort((a, b) => a.offset - b.offset)[0];
}

/** Where the text nests deeper than `DEEPEST`, told from its tokens, before the parser recurses into it. */
function tooDeepIn(text: string): Refused | undefined {
  let offset = 0;
  let lineStart = 0;
  let firstColumn = -1; // of the line's first word; -1 before it
  let inFlow = 0;
  let columns: number[] = []; // of the block keys and dashes that are open
  let content = false;
  for (const token of new Lexer().lex(text)) {
    const type = CST.tokenType(token);
    if (type === "doc-mode" || type === "flow-error-end") continue;
    if (type === "scalar" && !content) {
      content = true;
      if (firstColumn < 0) firstColumn = offset - lineStart;
      continue;
    }
    const meaning = content ? "scalar" : type;
    content = false;
    const column = offset - lineStart;
    if (meaning === "flow-map-start" || meaning === "flow-seq-start") inFlow += 1;
    if (meaning === "flow-map-end" || meaning === "flow-seq-end") inFlow = Math.max(0, inFlow - 1);
    if (meaning === "seq-item-ind" || meaning === "explicit-key-ind" || meaning === "map-value-ind") {
      const at = meaning === "map-value-ind" && firstColumn >= 0 ? firstColumn : column;
      columns = [...columns.filter((open) => open < at), at];
      firstColumn = column + 1;
    } else if (firstColumn < 0 && meaning !== "space" && meaning !== "newline") firstColumn = column;
    if (inFlow + columns.length > DEEPEST) return { offset, message: "the file nests too deep for a design" };
    offset += token.length;
    const lastBreak = token.lastIndexOf("\n");
    if (lastBreak >= 0) {
      lineStart = offset - (token.length - lastBreak - 1);
      firstColumn = -1;
    }
  }
  return undefined;
}

function placesIn(text: string): (offset: number) => Place {
  const counter = new LineCounter();
  counter.addNewLine(0);
  for (let at = text.indexOf("\n"); at >= 0; at = text.indexOf("\n", at + 1)) counter.addNewLine(at + 1);
  return (offset) => {
    const { line, col } = counter.linePos(Math.min(offset, text.length));
    return { line, column: col };
  };
}
