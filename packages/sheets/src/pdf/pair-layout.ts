// Words laid out from their pairs of letters, which are few, by one font for all documents: whole words are many, and a font's
// library takes each anew. A word in which more than two letters act on each other is left to the library.
import type { Font, Glyph, GlyphPosition, GlyphRun } from "./pages.ts";

/** Letters, figures and signs that act on their neighbours only: no marks, no scripts whose letters join or move. */
const PLAIN = /^[ -~°±²×½¼¾–−′″’“”…]*$/;
const LATIN_LETTER = /[A-Za-z]/;

/** A letter before another, or at a word's end: the same glyph, nearer to some. */
interface Placed {
  readonly glyph: Glyph;
  readonly advance: number;
}

/** The font as documents share it: the same glyphs at the same places as the library's own layout has. */
export function shareFont(font: Font): Font {
  keepGlyphsByText(font);
  const layOut = font.layout.bind(font);
  const pairs = { latn: new Map<string, Placed | undefined>(), zzzz: new Map<string, Placed | undefined>() };
  const wholes = new Map<string, GlyphRun>();

  function placePair(letters: string, script: keyof typeof pairs): Placed | undefined {
    if (!pairs[script].has(letters)) pairs[script].set(letters, layOutPair(letters, script));
    return pairs[script].get(letters);
  }

  /** The first of two letters, or a letter alone; undefined where the two become one glyph, or move otherwise. */
  function layOutPair(letters: string, script: keyof typeof pairs): Placed | undefined {
    const { glyphs, positions } = layOut(letters, undefined, script);
    const first = { glyph: glyphs[0]!, advance: positions[0]!.xAdvance };
    if (letters.length === 1) return first;
    const alone = Array.from(letters, (letter) => placePair(letter, script)!);
    const areSame = glyphs.length === 2 && glyphs.every(({ id }, i) => id === alone[i]!.glyph.id);
    const areLevel = positions.every(
      ({ yAdvance, xOffset, yOffset }) => yAdvance === 0 && xOffset === 0 && yOffset === 0,
    );
    return areSame && areLevel && positions[1]!.xAdvance === alone[1]!.advance ? first : undefined;
  }

  function layOutByPairs(text: string): GlyphRun | undefined {
    if (!PLAIN.test(text)) return undefined;
    const script = LATIN_LETTER.test(text) ? "latn" : "zzzz"; // as the library finds a word's script
    const placed = Array.from(text, (_, i) => placePair(text.slice(i, i + 2), script));
    if (!placed.every((letter) => letter !== undefined)) return undefined;
    return runOf(
      placed.map(({ glyph }) => glyph),
      placed.map(({ advance }) => ({ xAdvance: advance, yAdvance: 0, xOffset: 0, yOffset: 0 })),
    );
  }

  function layOutWhole(text: string): GlyphRun {
    const run = wholes.get(text) ?? layOut(text);
    wholes.set(text, run);
    return runOf(
      run.glyphs,
      run.positions.map((position) => ({ ...position })),
    );
  }

  font.layout = (text, features) => (features ? layOut(text, features) : (layOutByPairs(text) ?? layOutWhole(text)));
  return font;
}

/** A run whose width follows its positions, which a document changes to its own unit. */
const runOf = (glyphs: readonly Glyph[], positions: GlyphPosition[]): GlyphRun => ({
  glyphs,
  positions,
  get advanceWidth() {
    return positions.reduce((sum, { xAdvance }) => sum + xAdvance, 0);
  },
});

/**
 * The library keeps each glyph with the text that it first stood for, and documents write that text: here a glyph is kept for
 * each text, so that no document depends on those before it.
 */
function keepGlyphsByText(font: Font): void {
  const glyphs = new Map<string, Glyph>();
  const makeGlyph = font.getGlyph.bind(font);
  font.getGlyph = (id, codePoints = []) => {
    const key = `${id}:${codePoints}`;
    const kept = glyphs.get(key);
    if (kept) return kept;
    const first = makeGlyph(id, codePoints);
    const isSame = String(first.codePoints) === String(codePoints);
    const glyph = isSame ? first : Object.create(first, { codePoints: { value: codePoints } });
    glyphs.set(key, glyph);
    return glyph;
  };
}
