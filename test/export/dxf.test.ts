// DXF files: read by two other readers, which must find true curves on their layers and nothing to mend.
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { dxfText } from "@lamplane/export";
import { arc, line, type Outline, point, polygon } from "@lamplane/geometry";
import type { Drawing } from "@lamplane/parameters/drawings";
import * as dxfParser from "dxf-parser";
import { expect, test } from "vitest";
import { requireProgram, runForStdout } from "../support/outside-programs.ts";

/** 100 × 40 with a right end of half a circle. */
const tongue: Outline = [
  line(point(0, 0), point(80, 0)),
  arc(point(80, 0), point(80, 40), point(80, 20), 180),
  line(point(80, 40), point(0, 40)),
  line(point(0, 40), point(0, 0)),
];
const drawing: Drawing = {
  title: "tongue",
  entries: [
    { kind: "outline", work: "CUT", outline: tongue },
    { kind: "outline", work: "ROUT", outline: polygon(point(5, 5), point(25, 5), point(25, 15.123456789)) },
    { kind: "circle", work: "DRILL", circle: { centre: point(70, 20), radius: 6.35 } },
    {
      kind: "path",
      work: "MARK",
      segments: [line(point(0, 20), point(50, 20)), arc(point(60, 20), point(50, 30), point(50, 20), 90)],
    },
    { kind: "path", work: "MARK", segments: [arc(point(50, 35), point(55, 30), point(50, 30), -90)] },
    { kind: "note", work: "NOTE", at: point(5, 30), text: "pin Ø12.7 × 46 %%c ^J \\P", height: 3 },
  ],
};

interface Vertex {
  x: number;
  y: number;
  bulge?: number;
}
interface Entity {
  type: string;
  layer: string;
  vertices?: Vertex[];
  shape?: boolean;
  center?: Vertex;
  radius?: number;
  startAngle?: number;
  endAngle?: number;
  text?: string;
}
/** The class is the whole module when run, whatever its types say. */
const Parser = dxfParser.default as unknown as typeof dxfParser.DxfParser;

function parsed(text: string) {
  const dxf = new Parser().parseSync(text)!;
  return {
    layers: Object.keys(dxf.tables.layer.layers),
    entities: dxf.entities as unknown as Entity[],
  };
}

test("same drawing, same text", () => expect(dxfText(structuredClone(drawing))).toBe(dxfText(drawing)));

test("dxf-parser reads a layer for each kind of work", () => {
  const { layers } = parsed(dxfText(drawing));
  expect(layers).toEqual(expect.arrayContaining(["CUT", "DRILL", "ROUT", "MARK", "NOTE"]));
});

test("dxf-parser reads every entry as what it is", () => {
  const { entities } = parsed(dxfText(drawing));
  expect(entities.map(({ type, layer }) => `${type} ${layer}`)).toEqual([
    "LWPOLYLINE CUT",
    "LWPOLYLINE ROUT",
    "CIRCLE DRILL",
    "LINE MARK",
    "ARC MARK",
    "ARC MARK",
    "TEXT NOTE",
  ]);
  // DXF reference, LWPOLYLINE, code 42: bulge is the tangent of a quarter of the arc's angle, 1 for half a circle
  const [cut, , circle] = entities;
  expect(cut).toMatchObject({ shape: true });
  expect(cut!.vertices!.map(({ x, y, bulge }) => [x, y, bulge ?? 0])).toEqual([
    [0, 0, 0],
    [80, 0, 1],
    [80, 40, 0],
    [0, 40, 0],
  ]);
  expect(circle).toMatchObject({ center: { x: 70, y: 20 }, radius: 6.35 });
});

test("an arc that runs clockwise is written from its end", () => {
  const clockwise = parsed(dxfText(drawing)).entities[5]!;
  expect(clockwise.startAngle).toBeCloseTo(0, 9);
  expect(clockwise.endAngle).toBeCloseTo(Math.PI / 2, 9); // dxf-parser gives radians
});

test("numbers are rounded and never written with an exponent", () => {
  const text = dxfText({
    title: "small",
    entries: [{ kind: "path", work: "CUT", segments: [line(point(1e-9, 0), point(1, 0.1 + 0.2))] }],
  });
  expect(text).not.toMatch(/^\s*-?\d+(\.\d+)?e-?\d+\s*$/im);
  expect(text).toMatch(/^0\.3$/m);
});

test("what cannot be drawn is refused", () => {
  const open = tongue.slice(0, 3);
  expect(() => dxfText({ title: "open", entries: [{ kind: "outline", work: "CUT", outline: open }] })).toThrow(/open/);
  const nowhere = { centre: point(Number.NaN, 0), radius: 1 };
  expect(() => dxfText({ title: "nan", entries: [{ kind: "circle", work: "CUT", circle: nowhere }] })).toThrow(/NaN/);
  expect(() => dxfText({ title: "empty", entries: [] })).toThrow(/empty/);
  expect(() =>
    dxfText({
      title: "x",
      entries: [{ kind: "circle", work: "SAW" as never, circle: { centre: point(0, 0), radius: 1 } }],
    }),
  ).toThrow(/SAW/);
});

const FLAT_TOOLS = `
import json, sys
from ezdxf import recover, bbox
doc, audit = recover.readfile(sys.argv[1])
space = doc.modelspace()
box = bbox.extents((e for e in space if e.dxftype() != "TEXT"), fast=False)
data = [[e.dxf.layer, *[tag.value for tag in e.get_xdata("LAMPLANE")][1:-1]] for e in space if e.has_xdata("LAMPLANE")]
print(json.dumps({"audit": len(audit.errors) + len(audit.fixes), "units": doc.units, "low": [box.extmin.x, box.extmin.y], "width": box.size.x, "data": data}))
`;

const machineDrawing: Drawing = {
  title: "pocket",
  thickness: 19,
  entries: [
    { kind: "outline", work: "CUT", outline: polygon(point(-10, 7), point(40.8, 7), point(40.8, 30), point(-10, 30)) },
    { kind: "outline", work: "ROUT", depth: 4.8, outline: polygon(point(0, 10), point(10, 10), point(10, 20)) },
    { kind: "path", work: "ENGRAVE", segments: [line(point(20, 10), point(25, 20))] },
    { kind: "note", work: "NOTE", at: point(-50, -50), text: "beside the work", height: 3 },
  ],
};

test.for([
  { unit: "mm", code: 4, width: 50.8, layer: "ROUT-4.8MM", depth: 4.8, thickness: 19 },
  { unit: "in", code: 1, width: 2, layer: "ROUT-0.189IN", depth: 0.188976, thickness: 0.748031 },
] as const)("a machine's zero is the work's lower left corner, and depths are data, in $unit", (file, context) => {
  const python = requireProgram(context, "ezdxf");
  const folder = mkdtempSync(join(tmpdir(), "lamplane-dxf-"));
  try {
    const path = join(folder, "pocket.dxf");
    writeFileSync(path, dxfText(machineDrawing, file.unit));
    const report = JSON.parse(runForStdout(python, ["-c", FLAT_TOOLS, path]));
    expect(report).toMatchObject({ audit: 0, units: file.code });
    for (const edge of report.low) expect(edge).toBeCloseTo(0, 6);
    expect(report.width).toBeCloseTo(file.width, 6);
    expect(report.data).toEqual([
      ["CUT", "thickness", file.thickness],
      [file.layer, "depth", file.depth],
    ]);
  } finally {
    rmSync(folder, { recursive: true });
  }
});

const AUDIT = `
import json, sys
from ezdxf import recover, bbox
doc, audit = recover.readfile(sys.argv[1])
box = bbox.extents(e for e in doc.modelspace() if e.dxftype() != "TEXT")
print(json.dumps({"errors": [e.message for e in audit.errors], "fixes": [f.message for f in audit.fixes], "units": doc.units,
  "version": doc.dxfversion, "types": [e.dxftype() for e in doc.modelspace()], "text": [e.plain_text() for e in doc.modelspace().query("TEXT")],
  "box": [box.extmin.x, box.extmin.y, box.extmax.x, box.extmax.y],
  "extents": [*doc.header["$EXTMIN"][:2], *doc.header["$EXTMAX"][:2]]}))
`;

test("ezdxf finds no error and nothing to mend", (context) => {
  const python = requireProgram(context, "ezdxf");
  const folder = mkdtempSync(join(tmpdir(), "lamplane-dxf-"));
  try {
    const file = join(folder, "tongue.dxf");
    writeFileSync(file, dxfText(drawing));
    const report = JSON.parse(runForStdout(python, ["-c", AUDIT, file]));
    expect(report).toMatchObject({ errors: [], fixes: [], units: 4, extents: [0, 0, 100, 40] });
    expect(report.version >= "AC1015").toBe(true); // R2000
    expect(report.types).toEqual(["LWPOLYLINE", "LWPOLYLINE", "CIRCLE", "LINE", "ARC", "ARC", "TEXT"]);
    expect(report.text).toEqual(["pin Ø12.7 × 46 % %c ^J \\P"]);
    for (const [i, edge] of [0, 0, 100, 40].entries()) expect(report.box[i]).toBeCloseTo(edge, 1); // their box is of a polyline in facets
  } finally {
    rmSync(folder, { recursive: true });
  }
});
