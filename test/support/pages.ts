// Pages of a PDF as other programs see them: grey pixels, words with their boxes, and paths.
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { runForStdout } from "./outside-programs.ts";

/** Runs with a PDF on disk and clears up. */
export function withPdf<T>(bytes: Uint8Array, use: (file: string, folder: string) => T): T {
  const folder = mkdtempSync(join(tmpdir(), "lamplane-pdf-"));
  try {
    const file = join(folder, "sheet.pdf");
    writeFileSync(file, bytes);
    return use(file, folder);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

export interface Pixels {
  readonly width: number;
  readonly height: number;
  readonly dpi: number;
  /** Grey at a column and a row from the top: 0 black, 255 white. */
  at(x: number, y: number): number;
}

/** Every page in grey, in order. */
export const greyPages = (pdftoppm: string, bytes: Uint8Array, dpi: number): Pixels[] =>
  withPdf(bytes, (file, folder) => {
    runForStdout(pdftoppm, ["-r", String(dpi), "-gray", file, join(folder, "page")]);
    const names = readdirSync(folder).filter((name) => name.endsWith(".pgm"));
    return names.sort().map((name) => pixels(readFileSync(join(folder, name)), dpi));
  });

/** @see Netpbm, pgm(5): "P5", width, height, greatest value, then a byte a pixel */
function pixels(pgm: Buffer, dpi: number): Pixels {
  const header = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(pgm.subarray(0, 64).toString("latin1"));
  if (!header) throw new Error("not a PGM of bytes");
  const [width, height] = [Number(header[1]), Number(header[2])];
  return { width, height, dpi, at: (x, y) => pgm[header[0].length + y * width + x]! };
}

/** Longest run of pixels darker than `limit` in a row, from its first column to behind its last. */
export function longestRun(page: Pixels, y: number, limit = 128): { from: number; to: number } {
  let best = { from: 0, to: 0 };
  for (let x = 0, from = -1; x <= page.width; x++) {
    const dark = x < page.width && page.at(x, y) < limit;
    if (dark && from < 0) from = x;
    if (!dark && from >= 0) {
      if (x - from > best.to - best.from) best = { from, to: x };
      from = -1;
    }
  }
  return best;
}

/** A word with its box in mm from the page's upper left corner, and the page's size. */
export interface PageWord {
  readonly page: number;
  readonly text: string;
  readonly box: { left: number; top: number; right: number; bottom: number };
  readonly size: { width: number; height: number };
}

const MM = 25.4 / 72;

export function wordsOf(pdftotext: string, bytes: Uint8Array): PageWord[] {
  const html = withPdf(bytes, (file) => runForStdout(pdftotext, ["-bbox", file, "-"]));
  return html
    .split("<page ")
    .slice(1)
    .flatMap((page, i) => {
      const number = (text: string, key: string) => Number(new RegExp(`${key}="([\\d.-]+)"`).exec(text)![1]) * MM;
      const size = { width: number(page, "width"), height: number(page, "height") };
      return [...page.matchAll(/<word ([^>]*)>([^<]*)<\/word>/g)].map(([, box, text]) => ({
        page: i + 1,
        text: text!
          .replace(/&lt;/g, "<")
          .replace(/&gt;/g, ">")
          .replace(/&quot;/g, '"')
          .replace(/&amp;/g, "&"),
        box: {
          left: number(box!, "xMin"),
          top: number(box!, "yMin"),
          right: number(box!, "xMax"),
          bottom: number(box!, "yMax"),
        },
        size,
      }));
    });
}
