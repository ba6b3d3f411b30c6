// 3MF documents: what we write is the plane in its parts to three other readers, and what is no solid is never written.
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import modeling from "@jscad/modeling";
import type { Geom3 } from "@jscad/modeling/src/geometries/types.js";
import { manifestText, parseThreeMf, serializeThreeMf, solidMeasures, stlBytes } from "@lamplane/export";
import { unweld } from "@lamplane/geometry/mesh";
import { elevation } from "@lamplane/parameters/elevation";
import { type Part, partsOf } from "@lamplane/parameters/solids";
import { strToU8, unzipSync, zipSync } from "fflate";
import { afterAll, describe, expect, test } from "vitest";
import { isBuildable } from "../support/buildable.ts";
import { designWith, randomDesigns, WORKED } from "../support/designs.ts";
import { meshOf } from "../support/meshes.ts";
import { requireProgram, runForOutput, runForStdout } from "../support/outside-programs.ts";
import { LIB3MF_REPORT, parseWithThree } from "../support/three-mf.ts";

const folder = mkdtempSync(join(tmpdir(), "lamplane-3mf-"));
afterAll(() => rmSync(folder, { recursive: true }));

const NAMES = ["front-block", "bed-block", "cheek-left", "cheek-right", "wedge", "cross-pin"];
const WORDS = { name: "worked", version: "0.1.0" };
const plane = elevation(designWith(WORKED));
const parts = partsOf(plane, "blank");
const bytes = serializeThreeMf(parts, WORDS);
const file = join(folder, "worked.3mf");
writeFileSync(file, bytes);
const model = new TextDecoder().decode(unzipSync(bytes)["3D/3dmodel.model"]);

/** mm: float32 at some 250 mm, to which readers round. */
const AS_READ = 1e-4;
const near = (found: number, wanted: number) => expect(Math.abs(found - wanted)).toBeLessThan(AS_READ);

describe("three's loader reads", () => {
  const read = parseWithThree(bytes);

  test("each part by its name", () => expect(read.map((part) => part.name)).toEqual(NAMES));

  // worked set, computed apart from the project: core 49.6; blank 230 + 25.4 long, 58 + 3 high; cheeks 8; wedge 1.6 narrower than the core
  test("each at its size, across the plane along y and up along z", () => {
    const [front, bed, left, right, wedge, pin] = read;
    for (const block of [front!, bed!]) {
      near(block.size[1], 49.6);
      near(block.size[2], 61);
    }
    for (const cheek of [left!, right!]) [255.4, 8, 61].forEach((side, k) => void near(cheek.size[k]!, side));
    near(wedge!.size[1], 48);
    near(pin!.size[1], 64.6); // its tenons end 0.5 inside each cheek
  });

  test("each in its place: the plane's lowest corner at 0, 0, 0, the left cheek in front, blocks between the cheeks", () => {
    for (const k of [0, 1, 2]) expect(Math.min(...read.map((part) => part.min[k]!))).toBe(0);
    const across = Object.fromEntries(read.map((part) => [part.name, part.min[1]]));
    near(across["cheek-left"]!, 0);
    near(across["front-block"]!, 8);
    near(across["bed-block"]!, 8);
    near(across["cheek-right"]!, 57.6);
    expect(read[0]!.min[0]).toBeLessThan(read[1]!.min[0]); // toe before heel
  });

  // IEC 61966-2-1 (sRGB) and CIE 1976 L*: a difference of 10 is seen at a glance (from memory)
  test("tones that differ in lightness alone", () => {
    const lightness = read.map((part) => lightnessOf(part.colour)).sort((a, b) => a - b);
    for (const [i, each] of lightness.slice(1).entries()) expect(each - lightness[i]!).toBeGreaterThan(10);
  });
});

function lightnessOf(colour: string): number {
  const [r, g, b] = [0, 2, 4].map((at) => {
    const c = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  });
  return 116 * Math.cbrt(0.2126 * r! + 0.7152 * g! + 0.0722 * b!) - 16;
}

describe("other programs find nothing to mend", () => {
  test("lib3mf, strict: no warning, every object valid, every mesh closed and oriented", (context) => {
    const report = JSON.parse(runForStdout(requireProgram(context, "lib3mf"), ["-c", LIB3MF_REPORT, file]));
    expect(report.warnings).toBe(0);
    const mesh = (name: string) => ({ name, mesh: true, valid: true, closed: true, vertices: expect.any(Number) });
    const whole = { name: "worked", mesh: false, valid: true, closed: null, vertices: null };
    expect(report.objects).toEqual([...NAMES.map(mesh), whole]);
    expect(report.objects[0].vertices).toBe(8); // a prism on four sides: no corner twice
  });

  test("lib3mf does find a missing triangle", (context) => {
    const open = join(folder, "open.3mf");
    writeFileSync(open, rezipped(model.replace(/<triangle [^>]*>\n/, "")));
    const report = JSON.parse(runForStdout(requireProgram(context, "lib3mf"), ["-c", LIB3MF_REPORT, open]));
    expect(report.objects[0]).toMatchObject({ name: "front-block", closed: false });
  });

  test("a slicer: each part manifold, one shell, of its volume and size", (context) => {
    const report = runForOutput(requireProgram(context, "prusa-slicer"), ["--info", file]);
    const rows = (key: string) => [...report.matchAll(new RegExp(`^${key} = +(\\S+)`, "gm"))].map((found) => found[1]);
    expect(rows("manifold")).toEqual(NAMES.map(() => "yes"));
    expect(rows("number_of_parts")).toEqual(NAMES.map(() => "1"));
    expect(report).not.toMatch(/open_edges|degenerate|facets_(added|removed|reversed)|backwards/);
    rows("volume").forEach((volume, i) => void expect(Number(volume) / parts[i]!.volume).toBeCloseTo(1, 5));
    near(Number(rows("size_x")[2]), 255.4);
    near(Number(rows("size_z")[2]), 61);
  });

  test.for([
    ["the 3MF", () => file],
    ["the bed block's STL", () => stlOf(parts[1]!)],
    ["the cross pin's STL", () => stlOf(parts[5]!)],
  ] as const)("a slicer slices %s without a word of repair", ([, path], context) => {
    const gcode = join(folder, "out.gcode");
    const report = runForOutput(requireProgram(context, "prusa-slicer"), [
      ...COARSE,
      "--export-gcode",
      "--output",
      gcode,
      path(),
    ]);
    expect(report).toMatch(/Slicing result exported/);
    expect(report).not.toMatch(/repair|warning|error|manifold|open edge|empty layer/i);
  });
});

/** Quick to slice, on a bed that the whole plane fits on. */
const COARSE = [
  ...["--bed-shape", "0x0,400x0,400x300,0x300", "--nozzle-diameter", "4", "--extrusion-width", "4"],
  ...["--layer-height", "2", "--first-layer-height", "2", "--skirts", "0"],
];

function stlOf({ name, lyingMesh, volume }: Part): string {
  const path = join(folder, `${name}.stl`);
  writeFileSync(path, stlBytes(lyingMesh, name, volume));
  return path;
}

const rezipped = (xml: string) =>
  zipSync({ ...unzipSync(bytes), "3D/3dmodel.model": strToU8(xml) }, { mtime: new Date(1980, 0, 1) });

// the published schema is not to be had as a package: its rules that bear on what we write stand here by hand
describe("the package and its model, as 3MF Core Specification 1.4.0 has them", () => {
  test("three parts: content types, a relationship to the model (2.1.1, appendix C), the model", () => {
    const files = unzipSync(bytes);
    expect(Object.keys(files)).toEqual(["[Content_Types].xml", "_rels/.rels", "3D/3dmodel.model"]);
    const text = (name: string) => new TextDecoder().decode(files[name]);
    expect(text("[Content_Types].xml")).toMatch(
      /Extension="model" ContentType="application\/vnd\.ms-package\.3dmanufacturing-3dmodel\+xml"/,
    );
    expect(text("_rels/.rels")).toMatch(
      /Target="\/3D\/3dmodel\.model" Id="\w+" Type="http:\/\/schemas\.microsoft\.com\/3dmanufacturing\/2013\/01\/3dmodel"/,
    );
  });

  test("millimetres, the core namespace, well-known metadata alone (table 3-1), no DTD (2.3.2)", () => {
    expect(model).toMatch(
      /<model unit="millimeter" xml:lang="en-US" xmlns="http:\/\/schemas\.microsoft\.com\/3dmanufacturing\/core\/2015\/02">/,
    );
    expect([...model.matchAll(/<metadata name="(\w+)">([^<]*)</g)].map((found) => found.slice(1))).toEqual([
      ["Title", "worked"],
      ["Application", "lamplane 0.1.0"],
    ]);
    expect(model).not.toMatch(/<!/);
  });

  test("ids are unique and given before they are used; one item holds all (3.4, 3.4.3.1)", () => {
    const ids = [...model.matchAll(/ id="(\d+)"/g)].map((found) => Number(found[1]));
    expect(new Set(ids).size).toBe(ids.length);
    for (const used of model.matchAll(/ (?:pid|objectid)="(\d+)"/g))
      expect(model.slice(0, used.index)).toContain(` id="${used[1]}"`);
    expect(model.match(/<item /g)).toHaveLength(1);
    expect(model.match(/<component /g)).toHaveLength(NAMES.length);
  });

  test("short decimals (ST_Number), no vertex twice, three different vertices to a triangle (4.1.3, 4.1.4.1)", () => {
    const objects = [...model.matchAll(/<mesh>([\s\S]*?)<\/mesh>/g)].map((found) => found[1]!);
    expect(objects).toHaveLength(NAMES.length);
    for (const object of objects) {
      const vertices = object.match(/<vertex [^>]*>/g)!;
      expect(new Set(vertices).size).toBe(vertices.length);
      for (const vertex of vertices) expect(vertex).toMatch(/^<vertex(?: [xyz]="\d+(?:\.\d{0,5}[1-9])?"){3}\/>$/);
      for (const [, ...corners] of object.matchAll(/<triangle v1="(\d+)" v2="(\d+)" v3="(\d+)"\/>/g)) {
        expect(new Set(corners).size).toBe(3);
        for (const corner of corners) expect(Number(corner)).toBeLessThan(vertices.length);
      }
    }
  });
});

test("a nanometre is kept: no coordinate is further from the solid's than half of one", () => {
  const written = unweld(parseThreeMf(bytes)[0]!.mesh);
  const low = [...Array(3).keys()].map((k) => Math.min(...parts.flatMap((part) => standing(part).map((p) => p[k]!))));
  const modelled = standing(parts[0]!).flatMap((p) => p.map((c, k) => c - low[k]!));
  expect(written).toHaveLength(modelled.length);
  written.forEach((c, i) => void expect(Math.abs(c - modelled[i]!)).toBeLessThanOrEqual(0.500001e-6));
});

/** Corners of a part, z up. */
const standing = ({ inPlace }: Part): number[][] =>
  modeling.geometries.geom3.toPolygons(inPlace).flatMap(({ vertices }) => vertices.map(([x, y, z]) => [x, -z, y]));

test("a name with every character that XML keeps for itself comes back", (context) => {
  const strange = `a<b>&"c"&amp;'`;
  const document = serializeThreeMf([{ ...parts[0]!, name: strange }], { name: "<&>", version: "0" });
  expect(parseThreeMf(document)[0]!.name).toBe(strange);
  const path = join(folder, "strange.3mf");
  writeFileSync(path, document);
  const { objects } = JSON.parse(runForStdout(requireProgram(context, "lib3mf"), ["-c", LIB3MF_REPORT, path]));
  expect(objects.map((object: { name: string }) => object.name)).toEqual([strange, "<&>"]);
});

test("same parts, same bytes, in any time zone", () => {
  const zone = process.env.TZ;
  const all = ["Pacific/Kiritimati", "Pacific/Pago_Pago", "UTC"].map((TZ) => {
    process.env.TZ = TZ;
    return Buffer.from(serializeThreeMf(partsOf(plane, "blank"), WORDS)).toString("base64");
  });
  process.env.TZ = zone;
  if (zone === undefined) delete process.env.TZ;
  expect(new Set([...all, Buffer.from(bytes).toString("base64")]).size).toBe(1);
});

test("random planes at every stage become documents", () => {
  for (const { design } of randomDesigns(47, 8, isBuildable))
    for (const stage of ["blank", "glued", "trued"] as const) {
      const made = partsOf(elevation(design), stage);
      const volumes = solidMeasures(serializeThreeMf(made, WORDS)).map((solid) => solid.volume);
      made.forEach((part, i) => void expect(volumes[i]! / part.volume).toBeCloseTo(1, 6));
    }
});

describe("no document", () => {
  const { cuboid } = modeling.primitives;
  const { geom3, poly3 } = modeling.geometries;
  const block = cuboid({ size: [160, 60, 45], center: [80, 30, 0] });
  const volume = 160 * 60 * 45;
  const polygons = geom3.toPolygons(block);
  const refused = (solid: Geom3, expected = volume) =>
    expect(() => serializeThreeMf([{ name: "block", inPlaceMesh: meshOf(solid), volume: expected }], WORDS));

  test("of a sound block is refused", () => refused(block).not.toThrow());
  test("of a missing face", () => refused(geom3.create(polygons.slice(1))).toThrow(/block/));
  test("of a hole that takes no volume", () => {
    const through = polygons.slice(0, -1); // the face that lies on the apex the volume is summed from adds nothing
    refused(geom3.create(through), meshVolumeOf(through)).toThrow(/block.*openEdges/);
  });
  test("of a face turned", () =>
    refused(geom3.create([poly3.invert(polygons[0]!), ...polygons.slice(1)])).toThrow(/block/));
  test("of a solid inside out", () => refused(geom3.invert(block)).toThrow(/block.*inwards/));
  test("of a corner that is no number", () => {
    const broken = poly3.create([[Number.NaN, 0, 0], ...polygons[0]!.vertices.slice(1)]);
    refused(geom3.create([broken, ...polygons.slice(1)])).toThrow(/block.*notFinite/);
  });
  test("of another volume", () => refused(block, volume + 1).toThrow(/block.*expected/));
  test("of every face twice", () => refused(geom3.create([...polygons, ...polygons]), 2 * volume).toThrow(/openEdges/));
  test("of faces that rounding flattens", () => {
    const thin = cuboid({ size: [160, 1e-7, 45], center: [80, 0, 0] });
    refused(thin, 160 * 1e-7 * 45).toThrow(/block/);
  });
  test("of no part, or of two by one name", () => {
    expect(() => serializeThreeMf([], WORDS)).toThrow(/needs parts/);
    expect(() => serializeThreeMf([parts[0]!, parts[0]!], WORDS)).toThrow(/name of its own/);
  });

  function meshVolumeOf(faces: typeof polygons): number {
    return faces.reduce((sum, { vertices: [a, ...rest] }) => {
      const origin = faces[0]!.vertices[0]!;
      const from = (p: readonly number[]) => p.map((c, k) => c - origin[k]!);
      return rest.slice(1).reduce((s, c, i) => s + det(from(a!), from(rest[i]!), from(c)) / 6, sum);
    }, 0);
  }
  const det = (a: number[], b: number[], c: number[]): number =>
    a[0]! * (b[1]! * c[2]! - b[2]! * c[1]!) +
    a[1]! * (b[2]! * c[0]! - b[0]! * c[2]!) +
    a[2]! * (b[0]! * c[1]! - b[1]! * c[0]!);
});

test("the manifest tells each solid's box, volume and triangles", () => {
  const manifest = JSON.parse(manifestText("worked", "0.1.0", new Map([["body.3mf", bytes]])));
  const { solids } = manifest.files[0];
  expect(solids.map((solid: { name: string }) => solid.name)).toEqual(NAMES);
  expect(solids[2]).toMatchObject({ bounds: { min: [0, 0, 0], max: [255.4, 8, 61] }, triangles: expect.any(Number) });
  solids.forEach(
    (solid: { volume: number }, i: number) => void expect(solid.volume / parts[i]!.volume).toBeCloseTo(1, 5),
  );
});

test("bytes that are no document of ours are not read as one", () => {
  expect(() => parseThreeMf(zipSync({ a: strToU8("b") }))).toThrow(/not a 3MF of ours/);
  expect(() => parseThreeMf(rezipped(model.replace('unit="millimeter"', 'unit="inch"')))).toThrow(/millimetres/);
  expect(() => parseThreeMf(rezipped(model.replace(/<component [^>]*>/, "")))).toThrow(/6 meshes that builds 5/);
});
