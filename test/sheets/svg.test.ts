// SVG of a picture: sizes in mm, true arcs, escaped words; read back by a path library and by Python's XML parser.
import { writeFileSync } from "node:fs";
import { arc, line, point, polygon } from "@lamplane/geometry";
import type { Picture } from "@lamplane/sheets";
import { pictureSvg } from "@lamplane/sheets";
import { svgPathProperties } from "svg-path-properties";
import { expect, test } from "vitest";
import { requireProgram, runForStdout } from "../support/outside-programs.ts";
import { withPdf } from "../support/pages.ts";

const picture: Picture = {
  name: "sample",
  title: "A <sample> & more",
  width: 100,
  height: 50,
  marks: [
    { kind: "area", shade: 0.5, boundaries: [polygon(point(1, 1), point(9, 1), point(9, 9), point(1, 9))] },
    { kind: "line", line: "outline", segments: [arc(point(60, 25), point(60, 25), point(50, 25), 360)], closed: true },
    { kind: "line", line: "cut", segments: [arc(point(20, 10), point(10, 20), point(10, 10), 90)] },
    { kind: "line", line: "hidden", segments: [line(point(0, 0), point(10, 0)), line(point(20, 0), point(30, 0))] },
    { kind: "text", text: `⌀12.7 ½ "β" <&> שלום\u0007`, at: point(50, 40), size: 4, anchor: "middle", turn: 30 },
  ],
};
const svg = pictureSvg(picture);
const pathsOf = (text: string) => [...text.matchAll(/<path[^>]*? d="([^"]+)"/g)].map(([, d]) => d!);

test("width, height and view box are millimetres, on white", () => {
  expect(svg).toContain('width="100mm" height="50mm" viewBox="0 0 100 50"');
  expect(svg).toMatch(/<rect width="100" height="50" fill="#ffffff"\/>/);
});

test("same picture, same text", () => expect(pictureSvg(structuredClone(picture))).toBe(svg));

test("arcs are arcs, the right way round", () => {
  const [, circle, quarter, gapped] = pathsOf(svg);
  expect(new svgPathProperties(circle!).getTotalLength()).toBeCloseTo(2 * Math.PI * 10, 3);
  const path = new svgPathProperties(quarter!);
  expect(path.getTotalLength()).toBeCloseTo((Math.PI / 2) * 10, 3);
  const middle = path.getPointAtLength(path.getTotalLength() / 2); // y down: the middle is right of and above the centre
  expect(middle.x).toBeCloseTo(10 + 10 * Math.SQRT1_2, 3);
  expect(middle.y).toBeCloseTo(50 - (10 + 10 * Math.SQRT1_2), 3);
  expect(gapped!.match(/M/g)).toHaveLength(2);
});

test("Python's XML parser reads it: title, description, and words as they were", (context) => {
  const python = requireProgram(context, "python");
  const read = `
import sys, json, xml.etree.ElementTree as E
root = E.parse(sys.argv[1]).getroot(); ns = "{http://www.w3.org/2000/svg}"
print(json.dumps([root.find(ns + "title").text, root.find(ns + "desc").text is not None, [t.text for t in root.iter(ns + "text")]]))`;
  const found = withPdf(new Uint8Array(), (file) => {
    writeFileSync(file, svg);
    return JSON.parse(runForStdout(python, ["-c", read, file]));
  });
  expect(found).toEqual(["A <sample> & more", true, ['⌀12.7 ½ "β" <&> שלום□']]);
});

test("a number that is none is refused", () => {
  const broken: Picture = {
    ...picture,
    marks: [{ kind: "line", line: "thin", segments: [line(point(0, Number.NaN), point(1, 1))] }],
  };
  expect(() => pictureSvg(broken)).toThrow(/NaN/);
});
