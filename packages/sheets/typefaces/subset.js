// Cuts the sheets' two typefaces out of DejaVu Sans Condensed: the letters that names and sheets are written in, the pairs that are
// drawn closer, and the shapes that join. Run as a script, it writes them beside itself; the same version gives the same bytes.
import { readFileSync, realpathSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { fileURLToPath } from "node:url";
import subsetFont from "subset-font";

/** Files of `dejavu-fonts-ttf`, and of this folder. Their licence asks for its text beside them, and for no other name. */
export const TYPEFACES = ["DejaVuSansCondensed.ttf", "DejaVuSansCondensed-Bold.ttf"];

/** First and last character of each run that is kept. @see Unicode Standard, code charts */
const KEPT = [
  [0x20, 0x7e], // Basic Latin
  [0xa0, 0x24f], // Latin-1, Latin Extended-A and -B
  [0x2b0, 0x2ff], // spacing modifiers: ʻ, ʼ
  [0x300, 0x36f], // combining marks, for letters that have no character of their own
  [0x370, 0x3ff], // Greek
  [0x400, 0x52f], // Cyrillic
  [0x1e00, 0x1eff], // Latin Extended Additional: Vietnamese, Welsh
  [0x2000, 0x209f], // punctuation, superscripts and subscripts
  [0x20a0, 0x20cf], // currencies
  [0x2100, 0x218f], // letterlike signs, fractions
  [0x2190, 0x2199], // arrows
  [0x2202, 0x2265], // − ∞ ≈ ≠ ≤ ≥ and their neighbours
  [0x2300, 0x2300], // ⌀
  [0x25a0, 0x25ff], // □, which stands for what is missing, and its neighbours
  [0x2713, 0x2717], // ticks and crosses
  [0xfb00, 0xfb06], // ligatures of f
];

/** What a plain line of these scripts is drawn with. @see OpenType specification, registered features */
const FEATURES = "ccmp locl rlig mark mkmk frac numr dnom calt clig liga rclt curs kern ltra ltrm".split(" ");

const characters = KEPT.map(([first, last]) =>
  String.fromCodePoint(...Array.from({ length: last - first + 1 }, (_, i) => first + i)),
).join("");

/** Bytes of one of `TYPEFACES`, cut down. */
export function subsetTypeface(name) {
  const whole = readFileSync(createRequire(import.meta.url).resolve(`dejavu-fonts-ttf/ttf/${name}`));
  return subsetFont(whole, characters, { targetFormat: "truetype", keepFeatures: FEATURES });
}

if (process.argv[1] && realpathSync(process.argv[1]) === fileURLToPath(import.meta.url))
  for (const name of TYPEFACES) writeFileSync(new URL(name, import.meta.url), await subsetTypeface(name));
