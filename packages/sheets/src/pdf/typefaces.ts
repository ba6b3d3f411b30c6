// The two typefaces of every PDF, embedded: which characters they have, how wide words run, and what stands for a character they lack.
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { create } from "fontkit";
import type { Font } from "./pages.ts";
import { shareFont } from "./pair-layout.ts";

export interface Typeface {
  readonly bytes: Uint8Array;
  readonly font: Font;
}
export interface Typefaces {
  readonly plain: Typeface;
  readonly bold: Typeface;
}

/** Both typefaces from the bytes of TrueType files. */
export const parseTypefaces = (plain: Uint8Array, bold: Uint8Array): Typefaces => ({
  plain: parseTypeface(plain),
  bold: parseTypeface(bold),
});

let cachedTypefaces: Typefaces | undefined;

/** DejaVu Sans Condensed, cut down to the letters of `typefaces/subset.js`; its licence lets it be embedded in any document. */
export function installedTypefaces(): Typefaces {
  cachedTypefaces ??= readTypefaces();
  return cachedTypefaces;
}

function readTypefaces(): Typefaces {
  const { resolve } = createRequire(import.meta.url);
  const bytes = (style: string) => readFileSync(resolve(`@lamplane/sheets/typefaces/DejaVuSansCondensed${style}.ttf`));
  return parseTypefaces(bytes(""), bytes("-Bold"));
}

function parseTypeface(bytes: Uint8Array): Typeface {
  const font = create(bytes as Buffer);
  if (!("characterSet" in font)) throw new Error("a collection of fonts where one font is wanted");
  return { bytes, font: shareFont(font as unknown as Font) };
}

/** Stands for a character that cannot be drawn. */
const MISSING_GLYPH = "□";
/**
 * Scripts the typefaces have letters of that run from right to left, or whose letters change or move with their
 * neighbours: drawn letter by letter they would read wrong, so they are shown as boxes.
 * @see Unicode Standard, annex 9 (bidirectional algorithm) and annex 24 (scripts)
 */
const NOT_LETTER_BY_LETTER = /\p{Script=Hebrew}|\p{Script=Arabic}|\p{Script=Nko}|\p{Script=Syriac}|\p{Script=Lao}/u;

/** Every printable character of ASCII, each of which both typefaces have. */
const ASCII = /^[ -~]*$/;

/** The text as it can be drawn: composed, on one line, with a box for every character that cannot be. */
export function toDrawableText(text: string, { font }: Typeface): string {
  if (ASCII.test(text)) return text;
  const composed = text.normalize("NFC").replace(/\s/gu, " ");
  return Array.from(composed, (c) =>
    NOT_LETTER_BY_LETTER.test(c) || /\p{C}/u.test(c) || !font.hasGlyphForCodePoint(c.codePointAt(0)!)
      ? MISSING_GLYPH
      : c,
  ).join("");
}

/** Width of a line of text in the unit of its size, as it is drawn: word by word, each with the space behind it. */
export function measureText(text: string, size: number, bold = false, faces: Typefaces = installedTypefaces()): number {
  const face = bold ? faces.bold : faces.plain;
  const words = text.match(/\S*\s?/g) ?? [];
  return words.reduce((sum, word) => sum + measureWord(word, face), 0) * size;
}

/** Widths of words asked for before, of an em, by typeface: sheets have the same few words many times. */
const WIDTHS = new WeakMap<Typeface, Map<string, number>>();

function measureWord(word: string, face: Typeface): number {
  const widths = WIDTHS.get(face) ?? new Map<string, number>();
  WIDTHS.set(face, widths);
  const known = widths.get(word);
  if (known !== undefined) return known;
  const width = word === "" ? 0 : face.font.layout(toDrawableText(word, face)).advanceWidth / face.font.unitsPerEm;
  widths.set(word, width);
  return width;
}
