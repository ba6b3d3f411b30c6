// Sentences of the faults that any text and any YAML can have: what stands there and what to do, without its place.
import type { SyntaxCode } from "../yaml/syntax-code.ts";
import { countText, sentence } from "./sentence.ts";

/** A fault of any text, whatever it is a file of. */
export type SourceFault =
  | { readonly code: "file-too-large"; readonly mostBytes: number }
  | { readonly code: "not-utf8" }
  | { readonly code: "hidden-character"; readonly codePoint: number }
  | { readonly code: "nested-too-deep"; readonly deepest: number }
  | { readonly code: "more-faults"; readonly count: number };

export const sourceFaultText = sentence<SourceFault>(
  (fault) => {
    switch (fault.code) {
      case "file-too-large":
        return `the file is larger than ${fault.mostBytes / 1024} kB; a full one has less than 10 kB. Is it the right file?`;
      case "not-utf8":
        return 'the file is not UTF-8 text; save it as plain text in UTF-8 (a spreadsheet: as "CSV UTF-8")';
      case "hidden-character":
        return `hidden character U+${fault.codePoint.toString(16).toUpperCase().padStart(4, "0")}; delete it`;
      case "nested-too-deep":
        return `nested more than ${fault.deepest} levels deep`;
      case "more-faults":
        return `${countText(fault.count, "more fault")} not listed; correct these first`;
    }
  },
  { code: "file-too-large", mostBytes: 262_144 },
  { code: "not-utf8" },
  { code: "hidden-character", codePoint: 0x200b },
  { code: "nested-too-deep", deepest: 32 },
  { code: "more-faults", count: 29_900 },
);

/** By code. */
export const SYNTAX = {
  ALIAS_PROPS: "an alias (*) takes no anchor or tag; write the value out",
  BAD_ALIAS: "a name is missing after * or &; put a text that begins with one in quotes",
  BAD_COLLECTION_TYPE: "a list stands where keys are wanted, or keys where a list is; check the lines around it",
  BAD_DIRECTIVE: "a line that begins with % is not read here; leave it out",
  BAD_DQ_ESCAPE: "a backslash in double quotes starts a code that is not known; use single quotes",
  BAD_INDENT: "the line is indented wrongly; line keys of one section up under each other",
  BAD_PROP_ORDER: "an anchor (&) or tag (!) stands in the wrong place; leave it out",
  BAD_SCALAR_START: "a value begins with a character that has a meaning of its own; put it in quotes",
  BLOCK_AS_IMPLICIT_KEY: "a list begins where a key is wanted",
  BRACKET_NOT_INDENTED: "a bracket is not closed, or what stands in it is not indented",
  BLOCK_IN_FLOW: "a value on lines of its own stands inside { } or [ ]; write it on one line",
  DUPLICATE_KEY: "a key is there twice; keep one",
  IMPOSSIBLE: "the text cannot be read here; check colons, quotes and brackets",
  KEY_OVER_1024_CHARS: "the key is too long; check for a missing quote or colon",
  MISSING_CHAR: "a quote, bracket, comma or space is missing",
  MISSING_COLON: "a key has no colon behind it",
  MISSING_COMMA: "a comma is missing between two entries in brackets",
  MISSING_DASH: "a dash is missing before an entry of a list",
  MULTILINE_IMPLICIT_KEY: "a key runs over more than one line; check for a missing colon",
  MULTIPLE_ANCHORS: "two anchors (&) stand on one value; leave them out",
  MULTIPLE_DOCS: "a second document begins here; keep one",
  MULTIPLE_TAGS: "two tags (!) stand on one value; leave them out",
  NO_SPACE_AFTER_COLON: "put a space behind the colon",
  NO_SPACE_BEFORE_COMMENT: "put a space before the # of a comment",
  NON_STRING_KEY: "a key is no text; put it in quotes",
  STRAY_COMMA: "a comma stands where none belongs",
  TAB_AS_INDENT: "a tab indents the line; use spaces",
  TAG_RESOLVE_FAILED: "a tag (!) is not known; leave it out",
  TWO_COLONS: "there is more than one colon in the line; write one key and its value on each line",
  UNCLOSED_BRACKET: "a bracket is not closed",
  UNCLOSED_QUOTE: "a quote is not closed",
  UNEXPECTED_TOKEN: "a character stands where none belongs; check colons, quotes and brackets",
  RESOURCE_EXHAUSTION: "the text is too large or too deeply nested to be read",
} as const satisfies Record<SyntaxCode, string>;
export type { SyntaxCode };

/** What is wrong with the YAML. */
export const syntaxText = sentence((code: SyntaxCode) => SYNTAX[code], "MISSING_CHAR");
