// What the parser stumbled over, in a maker's words; the parser's own stay where no sentence stands for them.
import type { ErrorCode } from "yaml";

/** First whose code and pattern fit. The patterns tell apart what the parser has one code for. */
const SENTENCES: readonly (readonly [code: ErrorCode, message: RegExp, sentence: string])[] = [
  ["MISSING_CHAR", /closing ['"]quote/, "a quote is not closed"],
  ["MISSING_CHAR", /Comments/, "a comment needs a space before its #"],
  ["MISSING_CHAR", /^Missing ,/, "a comma is missing between two entries in brackets"],
  ["MISSING_CHAR", /space after :/, "a space is missing behind the colon"],
  ["MISSING_CHAR", /Implicit map keys/, "a key has no colon behind it"],
  ["MISSING_CHAR", /sequence item/i, "a dash is missing before an entry of a list"],
  ["BAD_INDENT", /end with a/, "a bracket is not closed, or what stands in it is not indented"],
  ["MISSING_CHAR", /end with a/, "a bracket is not closed"],
  ["BAD_INDENT", /./, "this line does not begin under the lines that it belongs with"],
  ["TAB_AS_INDENT", /./, "a tab stands before the text; indent with spaces"],
  [
    "BLOCK_AS_IMPLICIT_KEY",
    /mappings/,
    "there is more than one colon in the line; write one key and its value on each",
  ],
  ["BLOCK_AS_IMPLICIT_KEY", /./, "a list begins where a key should stand"],
  ["BLOCK_IN_FLOW", /./, "lines of keys or dashes stand inside brackets"],
  ["MULTILINE_IMPLICIT_KEY", /./, "a key goes over more than one line"],
  ["KEY_OVER_1024_CHARS", /./, "a key is longer than 1024 characters"],
  ["BAD_DQ_ESCAPE", /./, "a backslash stands in double quotes; write two, or use single quotes"],
  ["BAD_SCALAR_START", /./, "a value begins with a sign that YAML keeps for itself; put the value in quotes"],
  ["UNEXPECTED_TOKEN", /,/, "a comma stands where nothing is to be parted"],
  ["UNEXPECTED_TOKEN", /./, "something stands here that belongs to nothing before it"],
];

/** @param message the parser's own */
export const syntaxText = (code: ErrorCode, message: string): string =>
  SENTENCES.find(([known, pattern]) => known === code && pattern.test(message))?.[2] ?? message;
