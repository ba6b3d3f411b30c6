// PDF of a picture: arcs within a micrometre, every character drawn or boxed, embedded typefaces, the same bytes at any hour.

import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { arc, line, point, pointAlong } from "@lamplane/geometry";
import { POINTS_PER_MM } from "@lamplane/parameters/units";
import { type Picture, textWidth } from "@lamplane/sheets";
import { createPdf, drawPicture, installedTypefaces, measureText, pdfBytes } from "@lamplane/sheets/pdf";
import { afterEach, expect, test, vi } from "vitest";
import { arcToBeziers } from "../../packages/sheets/src/pdf/draw-picture.ts";
import { toDrawableText } from "../../packages/sheets/src/pdf/typefaces.ts";
import { subsetTypeface, TYPEFACES } from "../../packages/sheets/typefaces/subset.js";
import { requireProgram, runForStdout } from "../support/outside-programs.ts";
import { withPdf, wordsOf } from "../support/pages.ts";

const UNITS = "⌀Ø12.7 ½ ¼ ¾ × 3/4 ° β ρ ω τ − … ≤ ≥ “é ñ Ž Њ”";
const picture = (text: string): Picture => ({
  name: "sample",
  title: "Sample",
  width: 180,
  height: 100,
  marks: [
    { kind: "line", line: "axis", segments: [arc(point(60, 25), point(60, 25), point(50, 25), 360)] },
    { kind: "area", shade: 0.3, boundaries: [[line(point(1, 1), point(5, 1)), line(point(5, 1), point(5, 5))]] },
    { kind: "text", text, at: point(5, 60), size: 4 },
    { kind: "text", text: "bold", at: point(90, 80), size: 4, bold: true, anchor: "end" },
  ],
});

async function bytesOf(text = UNITS): Promise<Uint8Array> {
  const pdf = createPdf({ title: "Sample" });
  pdf.doc.addPage({ size: [200 * POINTS_PER_MM, 120 * POINTS_PER_MM], margin: 0 });
  drawPicture(pdf, picture(text), { left: 10, top: 10 });
  return pdfBytes(pdf);
}

afterEach(() => vi.useRealTimers());

test("the same bytes in another year", async () => {
  vi.useFakeTimers({ toFake: ["Date"] });
  vi.setSystemTime(new Date("2025-03-01T10:00:00Z"));
  const first = await bytesOf();
  vi.setSystemTime(new Date("2031-12-24T23:59:59Z"));
  expect(Buffer.compare(Buffer.from(await bytesOf()), Buffer.from(first))).toBe(0);
});

test.each([0.5, 6.35, 120, 1000])("Béziers follow an arc of radius %s within 0.001 mm", (radius) => {
  for (const sweep of [360, 90, -200, 3]) {
    const from = point(radius, 0);
    const whole = { kind: "arc", from, to: from, centre: point(0, 0), radius, sweep } as const;
    const to = sweep === 360 ? from : pointAlong({ ...whole, to: point(0, 0) }, 0.9999999999);
    let at = from;
    for (const [first, second, end] of arcToBeziers({ ...whole, to })) {
      for (let k = 0; k <= 20; k++) {
        const [t, u] = [k / 20, 1 - k / 20];
        const [a, b, c, d] = [u ** 3, 3 * u * u * t, 3 * u * t * t, t ** 3];
        const x = a * at.x + b * first.x + c * second.x + d * end.x;
        const y = a * at.y + b * first.y + c * second.y + d * end.y;
        expect(Math.abs(Math.hypot(x, y) - radius)).toBeLessThan(0.001);
      }
      at = end;
    }
    expect(Math.hypot(at.x - to.x, at.y - to.y)).toBeLessThan(1e-6);
  }
});

test("poppler reads every character that a unit or a name needs", async (context) => {
  const words = wordsOf(requireProgram(context, "pdftotext"), await bytesOf());
  const line = words.filter(({ text }) => text !== "bold").map(({ text }) => text);
  expect(line.join(" ")).toBe(UNITS);
});

test("what cannot be drawn letter by letter is a box, never another character", async (context) => {
  const words = wordsOf(requireProgram(context, "pdftotext"), await bytesOf("a שלום b سلام c 漢字 d \u202e\u0007 e"));
  const line = words.filter(({ text }) => text !== "bold").map(({ text }) => text);
  expect(line.join(" ")).toBe("a □□□□ b □□□□ c □□ d □□ e");
});

test("words are measured as they are drawn, and stand where they are anchored", async (context) => {
  const words = wordsOf(requireProgram(context, "pdftotext"), await bytesOf("Trestle"));
  const [plain, bold] = ["Trestle", "bold"].map((text) => words.find((word) => word.text === text)!.box);
  expect(plain!.left).toBeCloseTo(15, 2);
  expect(plain!.right - plain!.left).toBeCloseTo(measureText("Trestle", 4), 2);
  expect(bold!.right).toBeCloseTo(100, 2);
  expect(bold!.right - bold!.left).toBeCloseTo(measureText("bold", 4, true), 2);
});

test("the typefaces are embedded, and only what is used of them", async (context) => {
  const fonts = withPdf(await bytesOf(), (file) => runForStdout(requireProgram(context, "pdffonts"), [file]));
  const rows = fonts.trim().split("\n").slice(2);
  expect(rows).toHaveLength(2);
  for (const row of rows) expect(row).toMatch(/DejaVuSansCondensed\S*\s+CID TrueType\s+Identity-H\s+yes yes yes/);
  expect((await bytesOf()).length).toBeLessThan(150_000); // the two files they come from have 290 kB
});

test.each(TYPEFACES)("%s is what the recipe cuts out of its typeface", async (name) => {
  const bytes = readFileSync(new URL(`../../packages/sheets/typefaces/${name}`, import.meta.url));
  expect(Buffer.compare(await subsetTypeface(name), bytes)).toBe(0);
});

/** @see CLDR, exemplar characters of these languages; from memory */
const NAMES = [
  "Žluťoučký kůň",
  "Łódź",
  "İğneağacı",
  "Ŵyn yr Ŷd",
  "Nguyễn Thị Hằng",
  "Ångström Þór",
  "Γλώσσα",
  "Њива Ґанок",
  "Ōkami ʻOhe",
];

test("names in Latin, Greek and Cyrillic letters have no box, and no sentence of ours has one", () => {
  const { plain, bold } = installedTypefaces();
  const sentences = ["parameters", "bench", "sheets", "export", "cli"].flatMap((name) =>
    readFileSync(new URL(`../../packages/${name}/wording.md`, import.meta.url), "utf8").split("\n"),
  );
  for (const text of [...NAMES, ...sentences])
    for (const face of [plain, bold])
      expect(toDrawableText(text, face)).toBe(text.normalize("NFC").replace(/\s/gu, " "));
  expect(sentences.length).toBeGreaterThan(1000);
});

test("the pictures' own table of widths is the typeface's", () => {
  const { plain, bold } = installedTypefaces();
  const characters = `${Array.from({ length: 95 }, (_, i) => String.fromCharCode(32 + i)).join("")}°×½−Ø⌀βρω·…±²`;
  for (const character of characters)
    for (const [face, isBold] of [
      [plain, false],
      [bold, true],
    ] as const) {
      const { advanceWidth } = face.font.glyphForCodePoint(character.codePointAt(0)!);
      expect(textWidth(character, 1000, isBold), character).toBeCloseTo(
        (advanceWidth / face.font.unitsPerEm) * 1000,
        -0.4,
      );
    }
});

/** Words of the papers; pairs that move, join or carry marks; figures and signs; scripts that are not Latin. */
const WORDS = "AVATAR Tyre offcut fitting affluent 3/4 12.70 mm ⌀9.5 50° “Yew” – ½ × Ž̈ i̊ βρ Њива To, 1½ V.A. L’Y".split(
  " ",
);

test("words are laid out as the font's library lays them, by a font that all documents share", () => {
  const fontkit = createRequire(new URL("../../packages/sheets/package.json", import.meta.url))("fontkit");
  const sentences = readFileSync(new URL("../../packages/sheets/wording.md", import.meta.url), "utf8").match(/\S+/g)!;
  const words = [...WORDS, ...WORDS.map((word) => `${word} `), ...new Set(sentences)];
  const { plain, bold } = installedTypefaces();
  for (const { bytes, font } of [plain, bold]) {
    const theirs: typeof font = fontkit.create(bytes);
    for (const word of words) {
      const [ours, library] = [font.layout(word), theirs.layout(word)];
      expect(ours.glyphs.map(({ id }) => id)).toEqual(library.glyphs.map(({ id }) => id));
      expect(ours.positions.map((at) => ({ ...at }))).toEqual(library.positions.map((at) => ({ ...at })));
      expect(ours.advanceWidth).toBe(library.advanceWidth);
    }
  }
});

test("a document's text does not depend on the documents before it", async () => {
  const ligature = await bytesOf("\uFB01tting");
  const letters = await bytesOf("fitting");
  expect(Buffer.from(letters).includes("<0066 0069>")).toBe(true);
  expect(Buffer.from(ligature).includes("<fb01>")).toBe(true);
});
