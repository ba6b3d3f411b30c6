// What a PDF's page paints, in order, as pdf.js reads its operators: words with their boxes, lines and filled areas, in mm, y down.
import { getDocument, OPS } from "pdfjs-dist/legacy/build/pdf.mjs";
import type { Chord, Place, WordBox } from "./drawn-lines.ts";

export type PdfMark =
  | (WordBox & { readonly kind: "words"; readonly size: number; readonly grey: number })
  | { readonly kind: "line"; readonly chords: readonly Chord[]; readonly width: number }
  | { readonly kind: "fill"; readonly corners: readonly Place[]; readonly grey: number };

export interface PdfPageMarks {
  readonly width: number;
  readonly height: number;
  readonly marks: readonly PdfMark[];
  /** Whether something on the page is clipped: what lies beyond is not seen. */
  readonly isClipped: boolean;
}

type Matrix = readonly [number, number, number, number, number, number];
const MM = 25.4 / 72;
/** Of the em, over and under the baseline: capitals and tails of DejaVu Sans. @see the typeface's own metrics, from memory */
const [ASCENT, DESCENT] = [0.73, 0.24];

const times = (a: Matrix, b: Matrix): Matrix => [
  a[0] * b[0] + a[2] * b[1],
  a[1] * b[0] + a[3] * b[1],
  a[0] * b[2] + a[2] * b[3],
  a[1] * b[2] + a[3] * b[3],
  a[0] * b[4] + a[2] * b[5] + a[4],
  a[1] * b[4] + a[3] * b[5] + a[5],
];

export async function pdfMarks(bytes: Uint8Array): Promise<PdfPageMarks[]> {
  const document = await getDocument({ data: bytes.slice(), verbosity: 0 }).promise;
  const pages: PdfPageMarks[] = [];
  for (let number = 1; number <= document.numPages; number++) {
    const page = await document.getPage(number);
    const [, , width, height] = page.view as [number, number, number, number];
    const { fnArray, argsArray } = await page.getOperatorList();
    const { marks, isClipped } = readOperators(fnArray, argsArray, height);
    pages.push({ width: width * MM, height: height * MM, marks, isClipped });
  }
  await document.destroy();
  return pages;
}

interface State {
  matrix: Matrix;
  lineWidth: number;
  fill: number;
}

function readOperators(operators: readonly number[], args: readonly (readonly never[])[], height: number) {
  const marks: PdfMark[] = [];
  const kept: State[] = [];
  const pen = new Pen();
  let state: State = { matrix: [1, 0, 0, 1, 0, 0], lineWidth: 1, fill: 0 };
  let [text, size, path, isClipped]: [Matrix, number, Chord[], boolean] = [state.matrix, 0, [], false];
  const at = ([x, y]: readonly [number, number], m = state.matrix): Place => ({
    x: (m[0] * x + m[2] * y + m[4]) * MM,
    y: (height - (m[1] * x + m[3] * y + m[5])) * MM,
  });
  const scale = (m: Matrix) => Math.hypot(m[0], m[1]);
  const ended = () => {
    const whole = path;
    path = [];
    return whole;
  };
  const fill = () => {
    const whole = ended();
    if (whole.length > 0) marks.push({ kind: "fill", corners: whole.map(([from]) => from), grey: state.fill });
  };
  const stroke = () => {
    const chords = ended();
    if (chords.length > 0) marks.push({ kind: "line", chords, width: state.lineWidth * scale(state.matrix) * MM });
  };
  const read: Record<number, (values: readonly never[]) => void> = {
    [OPS.save]: () => kept.push({ ...state }),
    [OPS.restore]: () => {
      state = kept.pop()!;
    },
    [OPS.transform]: (values) => {
      state.matrix = times(state.matrix, values as unknown as Matrix);
    },
    [OPS.setLineWidth]: ([width]) => {
      state.lineWidth = width!;
    },
    [OPS.setFillRGBColor]: ([r, g, b]) => {
      state.fill = typeof r === "string" ? Number.parseInt((r as string).slice(1, 3), 16) : (r! + g! + b!) / 3;
    },
    [OPS.setFont]: ([, points]) => {
      size = points!;
    },
    [OPS.setTextMatrix]: (values) => {
      text = ((values.length === 1 ? values[0] : values) as unknown as number[]).slice(0, 6) as unknown as Matrix;
    },
    [OPS.showText]: ([glyphs]) => {
      const signs = glyphs as unknown as readonly (number | { readonly unicode: string; readonly width: number })[];
      const advance = signs.reduce<number>((sum, sign) => sum + (typeof sign === "number" ? -sign : sign.width), 0);
      const words = signs.map((sign) => (typeof sign === "number" ? "" : sign.unicode)).join("");
      const whole = times(state.matrix, text);
      const [wide, up, down] = [(advance / 1000) * size, ASCENT * size, -DESCENT * size];
      const corners = [
        at([0, down], whole),
        at([wide, down], whole),
        at([wide, up], whole),
        at([0, up], whole),
      ] as const;
      if (words.trim() !== "")
        marks.push({ kind: "words", text: words, corners, size: size * scale(whole) * MM, grey: state.fill });
      text = times(text, [1, 0, 0, 1, wide, 0]);
    },
    [OPS.constructPath]: ([kinds, numbers]) => {
      // A long path comes in more than one piece.
      const found = pen.draw(kinds as unknown as number[], numbers as unknown as number[]);
      path.push(...found.map(([a, b]): Chord => [at(a), at(b)]));
    },
    [OPS.endPath]: ended,
    [OPS.clip]: () => {
      isClipped = true;
    },
    [OPS.eoClip]: () => {
      isClipped = true;
    },
    [OPS.fill]: fill,
    [OPS.eoFill]: fill,
    [OPS.stroke]: stroke,
  };
  for (const [i, operator] of operators.entries()) read[operator]?.(args[i] ?? []);
  return { marks, isClipped };
}

type Pair = readonly [number, number];

/** Paths as straight pieces; a Bézier in eight. */
class Pen {
  #begin: Pair = [0, 0];
  #now: Pair = [0, 0];

  draw(kinds: readonly number[], numbers: readonly number[]): (readonly [Pair, Pair])[] {
    const found: (readonly [Pair, Pair])[] = [];
    let used = 0;
    const take = (): Pair => [numbers[used++]!, numbers[used++]!];
    const lineTo = (to: Pair) => {
      found.push([this.#now, to]);
      this.#now = to;
    };
    for (const kind of kinds) {
      if (kind === OPS.moveTo) this.#begin = this.#now = take();
      else if (kind === OPS.lineTo) lineTo(take());
      else if (kind === OPS.closePath) lineTo(this.#begin);
      else if (kind === OPS.curveTo) for (const to of bezier(this.#now, take(), take(), take())) lineTo(to);
      else if (kind === OPS.rectangle) {
        const [[x, y], [w, h]] = [take(), take()];
        this.#begin = this.#now = [x, y];
        for (const to of [
          [x + w, y],
          [x + w, y + h],
          [x, y + h],
          [x, y],
        ] as const)
          lineTo(to);
      } else throw new Error(`a path with operator ${kind}`);
    }
    return found;
  }
}

const bezier = (...[a, b, c, d]: readonly [Pair, Pair, Pair, Pair]): Pair[] =>
  [1, 2, 3, 4, 5, 6, 7, 8].map((k) => {
    const [t, u] = [k / 8, 1 - k / 8];
    const mix = (j: 0 | 1) => u ** 3 * a[j] + 3 * u * u * t * b[j] + 3 * u * t * t * c[j] + t ** 3 * d[j];
    return [mix(0), mix(1)];
  });
