// Sheets: inches, papers, SVG and PDF, against the standards that they keep.

import { elevation } from "@lamplane/parameters/elevation";
import { partsOf } from "@lamplane/parameters/solids";
import { POINTS_PER_MM, parseLength, toMillimetres } from "@lamplane/parameters/units";
import { drawingPicture, layoutPictures, pictureSvg } from "@lamplane/sheets";
import { layoutPdf, type Paper, pageSize } from "@lamplane/sheets/pages";
import { designWith, WORKED } from "../support/designs.ts";
import type { OutsideCheck } from "./check.ts";
import { type Citation, fact, size } from "./rows.ts";

const plane = elevation(designWith(WORKED));
const parts = partsOf(plane, "blank");

const YARD = ["international yard and pound agreement, 1959 (sizes.com, units, international yard)", "quoted"] as const;
const read = (text: string) => (): number => {
  const found = parseLength(text, "in");
  return "value" in found ? found.value : Number.NaN;
};
const inches: readonly OutsideCheck[] = [
  size("1 inch", YARD, "mm", 25.4, read("1"), 0),
  size("1 3/4 in", YARD, "mm", 44.45, read("1 3/4 in"), 0),
  size("1/64 in", YARD, "mm", 0.396875, read("1/64 in"), 0),
  size("100 inches, as a bare number of a file in inches", YARD, "mm", 2540, () => toMillimetres(100, "in"), 0),
];

/** mm, upright. */
const PAPERS: readonly (readonly [Paper, number, number, Citation])[] = [
  ["A4", 210, 297, ["ISO 216, A series (gr8design.sk, table)", "quoted"]],
  ["A3", 297, 420, ["ISO 216, A series (gr8design.sk, table)", "quoted"]],
  ["Letter", 215.9, 279.4, ["ASME Y14.1, A: 8.5 × 11 in (manufacturinget.org)", "quoted"]],
  ["Tabloid", 279.4, 431.8, ["ASME Y14.1, B: 11 × 17 in (manufacturinget.org)", "quoted"]],
];
export const PAPER_SIZES: Readonly<Record<string, [number, number]>> = Object.fromEntries(
  PAPERS.map(([paper, width, height]) => [paper, [width, height]]),
);
const papers = PAPERS.flatMap(([paper, width, height, source]) => [
  size(`${paper}: width`, source, "mm", width, () => pageSize(paper, "portrait").width, 1e-9),
  size(`${paper}: height`, source, "mm", height, () => pageSize(paper, "portrait").height, 1e-9),
]);

const svg = () => pictureSvg(drawingPicture(parts[2]!.drawing));
const W3C = ["W3C, SVG 1.1 (2011)", "from memory"] as const;
const MDN_VIEW_BOX = ["W3C, SVG 1.1 (MDN, viewBox)", "quoted"] as const;
const ISO_PDF = ["ISO 32000-1:2008", "from memory"] as const;
const pdf = async (paper: Paper) => {
  const options = { paper, name: "sample", version: "0", units: "mm" as const };
  return Buffer.from(await layoutPdf(layoutPictures(plane).slice(-1), options)).toString("latin1");
};
const mediaBox = (paper: Paper, k: number) => async (): Promise<number> =>
  Number(
    /\/MediaBox \[([^\]]+)\]/
      .exec(await pdf(paper))![1]!
      .trim()
      .split(/\s+/)[k],
  );
const pages: readonly OutsideCheck[] = [
  fact(
    "SVG: namespace",
    MDN_VIEW_BOX,
    "http://www.w3.org/2000/svg",
    () => /<svg xmlns="([^"]+)"/.exec(svg())?.[1] ?? "",
  ),
  size(
    "SVG: mm to a unit of its view box",
    MDN_VIEW_BOX,
    "mm",
    1,
    () => {
      const [, mm, units] = /width="([\d.]+)mm".*?viewBox="0 0 ([\d.]+)/.exec(svg())!;
      return Number(mm) / Number(units);
    },
    0,
  ),
  fact("SVG: circles left as chords", W3C, 0, () => (/<path[^>]* d="[^"]*A/.test(svg()) ? 0 : 1)),
  fact("PDF: first bytes", ISO_PDF, "%PDF-1.", async () => (await pdf("A4")).slice(0, 7)),
  fact("PDF: last line", ISO_PDF, "%%EOF", async () => (await pdf("A4")).trim().split("\n").at(-1)!),
  fact(
    "PDF: what a printer's dialog is asked for",
    ["ISO 32000-1:2008, table 150 (websupergoo.com, EntryPrintScaling)", "quoted"],
    "None",
    async () => /\/PrintScaling \/(\w+)/.exec(await pdf("A4"))?.[1] ?? "",
  ),
  size(
    "PDF: units of 1/72 in to a mm",
    ["Adobe, IAC API, coordinate systems", "read"],
    "",
    2.8346457,
    () => POINTS_PER_MM,
    5e-8,
  ),
  size("PDF: A4 across", ["A4 in units of 1/72 in", "worked apart"], "1/72 in", 595.276, mediaBox("A4", 2), 0.01),
  size("PDF: A4 up", ["A4 in units of 1/72 in", "worked apart"], "1/72 in", 841.89, mediaBox("A4", 3), 0.01),
  size("PDF: Letter across", ["8.5 × 72", "worked apart"], "1/72 in", 612, mediaBox("Letter", 2), 0.01),
  size("PDF: Letter up", ["11 × 72", "worked apart"], "1/72 in", 792, mediaBox("Letter", 3), 0.01),
];

export const SHEET_CHECKS: readonly OutsideCheck[] = [...inches, ...papers, ...pages];
