// Whether a picture is fit for eyes: every number finite and inside, letters large enough, and no words over other words.
import type { Picture, PictureMark } from "@lamplane/sheets";
import { expect } from "vitest";

export type Text = Extract<PictureMark, { kind: "text" }>;
export const textsOf = ({ marks }: Picture): Text[] => marks.filter((mark) => mark.kind === "text");

/** Advance widths in thousandths of an em, Helvetica's, from its published metrics (from memory), each a tenth wider. */
const HELVETICA: Record<string, number> = {
  " ": 278,
  ".": 278,
  ",": 278,
  ":": 278,
  "'": 191,
  "-": 333,
  "(": 333,
  ")": 333,
};
const NARROW = "ijlt".split("").concat("f", "r");
function advance(sign: string): number {
  const known =
    HELVETICA[sign] ?? (NARROW.includes(sign) ? 333 : /[mM%W]/.test(sign) ? 889 : /[A-Zw]/.test(sign) ? 722 : 556);
  return (known * 1.1) / 1000;
}

function boxOf({ text, at, size, anchor = "start", bold }: Text) {
  const width = [...text].reduce((sum, sign) => sum + advance(sign), 0) * size * (bold ? 1.08 : 1);
  const left = anchor === "start" ? at.x : anchor === "end" ? at.x - width : at.x - width / 2;
  return { text, left, right: left + width, low: at.y - 0.21 * size, high: at.y + 0.72 * size };
}

/** Pairs of words over each other, and words that leave the picture. */
export function clashes(picture: Picture): string[] {
  const boxes = textsOf(picture).map(boxOf);
  const pairs = boxes.flatMap((a, i) =>
    boxes
      .slice(i + 1)
      .filter((b) => a.left < b.right && b.left < a.right && a.low < b.high && b.low < a.high)
      .map((b) => `${a.text} / ${b.text}`),
  );
  const out = boxes.filter((b) => b.left < 0 || b.low < 0 || b.right > picture.width || b.high > picture.height);
  return [...pairs, ...out.map(({ text }) => `outside: ${text}`)];
}

/** Every number in a picture. */
export function numbersIn(value: unknown): number[] {
  if (typeof value === "number") return [value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(numbersIn) : [];
}

export function expectSound(picture: Picture): void {
  expect(clashes(picture), picture.title).toEqual([]);
  expect(numbersIn(picture).every(Number.isFinite)).toBe(true);
  for (const { size, text } of textsOf(picture)) {
    expect(size).toBeGreaterThanOrEqual(2.6);
    expect(text.trim()).not.toBe("");
  }
  for (const mark of picture.marks) {
    const segments = mark.kind === "line" ? mark.segments : mark.kind === "area" ? mark.boundaries.flat() : [];
    for (const { from, to } of segments)
      for (const { x, y } of [from, to]) {
        expect(x).toBeGreaterThanOrEqual(0);
        expect(x).toBeLessThanOrEqual(picture.width);
        expect(y).toBeGreaterThanOrEqual(0);
        expect(y).toBeLessThanOrEqual(picture.height);
      }
  }
}
