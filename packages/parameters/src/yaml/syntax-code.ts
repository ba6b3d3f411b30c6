// What the parser stumbled over, as a code that tells apart what the parser has one code for.
import type { ErrorCode } from "yaml";

/** First whose code and pattern fit the parser's own message. */
const FINER = [
  ["MISSING_CHAR", /closing ['"]quote/, "UNCLOSED_QUOTE"],
  ["MISSING_CHAR", /Comments/, "NO_SPACE_BEFORE_COMMENT"],
  ["MISSING_CHAR", /^Missing ,/, "MISSING_COMMA"],
  ["MISSING_CHAR", /space after :/, "NO_SPACE_AFTER_COLON"],
  ["MISSING_CHAR", /Implicit map keys/, "MISSING_COLON"],
  ["MISSING_CHAR", /sequence item/i, "MISSING_DASH"],
  ["BAD_INDENT", /end with a/, "BRACKET_NOT_INDENTED"],
  ["MISSING_CHAR", /end with a/, "UNCLOSED_BRACKET"],
  ["BLOCK_AS_IMPLICIT_KEY", /mappings/, "TWO_COLONS"],
  ["UNEXPECTED_TOKEN", /,/, "STRAY_COMMA"],
] as const;

/** The parser's code, or a finer one. */
export type SyntaxCode = ErrorCode | (typeof FINER)[number][2];

/** @param message the parser's own */
export const syntaxCode = (code: ErrorCode, message: string): SyntaxCode =>
  FINER.find(([known, pattern]) => known === code && pattern.test(message))?.[2] ?? code;
