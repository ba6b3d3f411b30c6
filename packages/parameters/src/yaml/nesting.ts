// How deep a YAML text nests, counted on its tokens alone: nothing here recurses, so that no text can exhaust the stack.
// The parser recurses. Past its stack it usually reports, but was seen to end the whole process, so it is asked second.
import { CST, Lexer } from "yaml";

export const DEEPEST = 32; // a design nests 3 deep; the parser was measured to bear more than 300

const OPENS = new Set<string | null>(["flow-map-start", "flow-seq-start"]);
const CLOSES = new Set<string | null>(["flow-map-end", "flow-seq-end"]);
const INDICATES = new Set<string | null>(["seq-item-ind", "explicit-key-ind", "map-value-ind"]);

/** Offset at which a text nests too deep to be parsed, if it does. */
export function tooDeepAt(text: string): number | undefined {
  let flow = 0;
  let open: number[] = []; // columns of the dashes and block keys around this place
  let keyColumn = 0; // where the key before a colon stands
  for (const { type, offset, column, begins } of tokensOf(text)) {
    if (begins) keyColumn = column;
    if (OPENS.has(type)) flow += 1;
    if (CLOSES.has(type)) flow = Math.max(0, flow - 1);
    if (flow === 0 && INDICATES.has(type)) {
      const at = type === "map-value-ind" ? keyColumn : column;
      open = [...open.filter((outer) => outer < at), at];
      keyColumn = column + 1;
    }
    if (flow + open.length > DEEPEST) return offset;
  }
  return undefined;
}

interface Token {
  readonly type: string | null;
  readonly offset: number;
  readonly column: number;
  /** Whether only spaces stand before it on its line. */
  readonly begins: boolean;
}

/** The text's tokens with their places. The lexer announces a plain scalar by a mark of its own, which has no length. */
function* tokensOf(text: string): Generator<Token> {
  let [offset, lineStart, begins, scalar] = [0, 0, true, false];
  for (const token of new Lexer().lex(text)) {
    const type = scalar ? "scalar" : CST.tokenType(token);
    if (!scalar && (type === "scalar" || type === "doc-mode" || type === "flow-error-end")) {
      scalar = type === "scalar";
      continue;
    }
    scalar = false;
    yield { type, offset, column: offset - lineStart, begins: begins && type !== "space" && type !== "newline" };
    if (type !== "space") begins = false;
    offset += token.length;
    const lastBreak = token.lastIndexOf("\n");
    if (lastBreak < 0) continue;
    lineStart = offset - (token.length - lastBreak - 1);
    begins = true;
  }
}
