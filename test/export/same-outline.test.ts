// One outline, four files: a cheek read back from SVG, PDF, DXF and STL is the same within 0.01 mm, arcs included.
import { dxfText, parseStl, stlBytes } from "@lamplane/export";
import { unweld } from "@lamplane/geometry/mesh";
import { elevation, type Stage } from "@lamplane/parameters/elevation";
import { partsOf } from "@lamplane/parameters/solids";
import { POINTS_PER_MM } from "@lamplane/parameters/units";
import { drawingPicture, layoutPictures, type Picture, pictureSvg } from "@lamplane/sheets";
import { layoutPdf } from "@lamplane/sheets/pages";
import { createPdf, drawPicture, pdfBytes } from "@lamplane/sheets/pdf";
import { getDocument, OPS } from "pdfjs-dist/legacy/build/pdf.mjs";
import { describe, expect, test } from "vitest";
import { designWith, WORKED } from "../support/designs.ts";
import { greatestDistance, type PathPoint, sampleDxf, samplePath } from "../support/outlines.ts";

const SAME = 0.01; // mm
const plane = elevation(designWith({ ...WORKED, "body.outline": "arched" }));

/** From a picture's place on paper (y down, from its upper left corner) to y up with the outline's lower left corner at 0, 0. */
function asDrawn(points: readonly PathPoint[]): PathPoint[] {
  const up = points.map(({ x, y }) => ({ x, y: -y }));
  const [left, low] = [Math.min(...up.map(({ x }) => x)), Math.min(...up.map(({ y }) => y))];
  return up.map(({ x, y }) => ({ x: x - left, y: y - low }));
}

/** The first outline of a picture's SVG. */
const inSvg = (picture: Picture): PathPoint[] =>
  asDrawn(samplePath(/<path class="outline" d="([^"]+)"/.exec(pictureSvg(picture))![1]!));

/** Closed paths as wide as an outline on a page of a PDF, as pdf.js reads its operators: y down, in mm. */
async function inPdf(bytes: Uint8Array, pageNumber: number): Promise<PathPoint[][]> {
  const page = await (await getDocument({ data: bytes.slice(), verbosity: 0 }).promise).getPage(pageNumber);
  const { fnArray, argsArray } = await page.getOperatorList();
  let width = 0;
  return fnArray.flatMap((operator, i) => {
    if (operator === OPS.setLineWidth) width = argsArray[i][0];
    if (operator !== OPS.constructPath || Math.abs(width - 0.5 * POINTS_PER_MM) > 1e-3) return [];
    const d = pathData(argsArray[i][0], argsArray[i][1]);
    if (!d.endsWith("Z")) return [];
    return [samplePath(d).map(({ x, y }) => ({ x: x / POINTS_PER_MM, y: y / POINTS_PER_MM }))];
  });
}

/** A path's operators and their numbers as an SVG path. */
function pathData(operators: readonly number[], numbers: readonly number[]): string {
  const letters = {
    [OPS.moveTo]: ["M", 2],
    [OPS.lineTo]: ["L", 2],
    [OPS.curveTo]: ["C", 6],
    [OPS.closePath]: ["Z", 0],
  } as const;
  let used = 0;
  return operators
    .map((operator) => {
      const [letter, count] = letters[operator]!;
      used += count;
      return letter + numbers.slice(used - count, used).join(" ");
    })
    .join("");
}

async function onPage(picture: Picture): Promise<Uint8Array> {
  const pdf = createPdf({ title: picture.name });
  const size = [picture.width, picture.height].map((mm) => (mm + 20) * POINTS_PER_MM) as [number, number];
  pdf.doc.addPage({ size, margin: 0 });
  drawPicture(pdf, picture, { left: 10, top: 10 });
  return pdfBytes(pdf);
}

/** Corners of the boundary of the face on the machine's table, out of the bytes of an STL. */
function onTable(bytes: Uint8Array): PathPoint[] {
  const corners = unweld(parseStl(bytes));
  const low: PathPoint[] = [];
  for (let i = 0; i < corners.length; i += 3)
    if (Math.abs(corners[i + 2]!) < 1e-4) low.push({ x: corners[i]!, y: corners[i + 1]! });
  return low;
}

describe.each(["blank", "trued"] as const satisfies readonly Stage[])("a cheek at stage %s", (stage) => {
  test.each(["cheek-left", "cheek-right"])("%s is one outline in SVG, PDF, DXF and STL", async (name) => {
    const part = partsOf(plane, stage).find((each) => each.name === name)!;
    const picture = drawingPicture(part.drawing);
    const dxf = sampleDxf(dxfText(part.drawing), "CUT");
    const svg = inSvg(picture);
    const [first] = await inPdf(await onPage(picture), 1);
    const pdf = asDrawn(first!);
    expect(greatestDistance(svg, dxf)).toBeLessThan(SAME);
    expect(greatestDistance(dxf, svg)).toBeLessThan(SAME);
    expect(greatestDistance(pdf, dxf)).toBeLessThan(SAME);
    expect(greatestDistance(dxf, pdf)).toBeLessThan(SAME);
    const stl = onTable(stlBytes(part.lyingMesh, part.name, part.volume));
    expect(stl.length).toBeGreaterThan(10);
    expect(
      greatestDistance(
        dxf.filter((_, i) => i % 10 === 0),
        [...hull(stl), hull(stl)[0]!],
      ),
    ).toBeLessThan(SAME);
  });
});

test.each(["cheek-left", "cheek-right"])("%s has that outline on the printed sheet", async (name) => {
  const part = partsOf(plane, "blank").find((each) => each.name === name)!;
  const dxf = sampleDxf(dxfText(part.drawing), "CUT");
  const picture = layoutPictures(plane).filter((each) => each.name === name);
  expect(greatestDistance(inSvg(picture[0]!), dxf)).toBeLessThan(SAME);
  const sheets = await layoutPdf(picture, { paper: "A4", name: "sheet", version: "0", units: "mm" });
  // The first closed paths of a sheet are its rulers'; the part's outline is the one that reaches furthest.
  const reach = (points: readonly PathPoint[]) =>
    Math.max(...points.map(({ x, y }) => x - y)) - Math.min(...points.map(({ x, y }) => x - y));
  const outline = (await inPdf(sheets, 2)).reduce((a, b) => (reach(b) > reach(a) ? b : a));
  const pdf = asDrawn(outline);
  expect(greatestDistance(pdf, dxf)).toBeLessThan(SAME);
  expect(greatestDistance(dxf, pdf)).toBeLessThan(SAME);
});

/** Convex hull, counter-clockwise: a cheek's outline is convex. @see A. M. Andrew, "Another efficient algorithm for convex hulls in two dimensions" (1979) */
function hull(points: readonly PathPoint[]): PathPoint[] {
  const sorted = [...points].sort((a, b) => a.x - b.x || a.y - b.y);
  const half = (all: readonly PathPoint[]) => {
    const chain: PathPoint[] = [];
    for (const p of all) {
      while (chain.length > 1 && turn(chain.at(-2)!, chain.at(-1)!, p) <= 0) chain.pop();
      chain.push(p);
    }
    return chain.slice(0, -1);
  };
  return [...half(sorted), ...half(sorted.toReversed())];
}

const turn = (a: PathPoint, b: PathPoint, c: PathPoint): number =>
  (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
