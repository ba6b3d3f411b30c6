// STL files: what we write is a solid to two other programs, and what is no solid is never written.
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import modeling from "@jscad/modeling";
import type { Geom3 } from "@jscad/modeling/src/geometries/types.js";
import { meshMeasures, parseStl, stlBytes } from "@lamplane/export";
import { triangleCount, unweld } from "@lamplane/geometry/mesh";
import { toGeom3 } from "@lamplane/parameters/solids";
import Module from "manifold-3d";
import { describe, expect, test } from "vitest";
import { meshOf } from "../support/meshes.ts";
import { requireProgram, runForStdout } from "../support/outside-programs.ts";

const { primitives, extrusions, geometries, booleans } = modeling;

const block = primitives.cuboid({ size: [160, 60, 45], center: [80, 30, 22.5] });
const SIDES = 64;
const hole = primitives.circle({ radius: 6, center: [12, 9], segments: SIDES });
const plate = extrusions.extrudeLinear(
  { height: 8 },
  booleans.subtract(primitives.rectangle({ size: [40, 30], center: [20, 15] }), hole),
);
/** Area of a regular polygon in a circle of radius r: n/2 · r² · sin(360°/n). */
const holeArea = (SIDES / 2) * 6 ** 2 * Math.sin((2 * Math.PI) / SIDES);

/** Relative: the serializer writes to a grid of some 1e-5 of the size, so a face moves by half of that. */
const WRITING = 3e-5;

const SOLIDS: readonly [name: string, solid: Geom3, volume: number][] = [
  ["a block", block, 160 * 60 * 45],
  ["a plate with a hole", plate, (40 * 30 - holeArea) * 8],
];

/** JSCAD's serializer as it is called whole. */
const { serialize } = createRequire(new URL("../../packages/export/package.json", import.meta.url))(
  "@jscad/stl-serializer",
);

describe.each(SOLIDS)("%s", (name, solid, volume) => {
  const bytes = stlBytes(meshOf(solid), name, volume);

  test("has the triangles that JSCAD's serializer writes", () => {
    const [, , triangles] = serialize({ binary: true }, toGeom3(meshOf(solid)));
    expect(Buffer.compare(Buffer.from(bytes.subarray(84)), Buffer.from(triangles))).toBe(0);
  });

  test("has its volume", () => {
    const { volume: measured } = meshMeasures(bytes);
    expect(Math.abs(measured / volume - 1)).toBeLessThan(WRITING);
  });

  test("same solid, same bytes", () => expect(stlBytes(meshOf(solid), name, volume)).toEqual(bytes));

  test("has nothing for admesh to mend", (context) => {
    const report = admesh(requireProgram(context, "admesh"), bytes);
    expect(report).toMatch(/All facets connected/);
    expect(
      figures(
        report,
        /^(?:Degenerate facets|Edges fixed|Facets removed|Facets added|Facets reversed|Backwards edges|Normals fixed|Facets with \d disconnected edge) *:\s*(\d+)/gm,
      ),
    ).toSatisfy((all: number[]) => all.length >= 6 && all.every((n) => n === 0), report);
    expect(figures(report, /Number of parts\s*:\s*(\d+)/g)).toEqual([1]);
    const theirs = figures(report, /Volume\s*:\s*([\d.]+)/g)[0]!;
    expect(Math.abs(theirs / volume - 1)).toBeLessThan(WRITING);
  });

  test("is a solid of that volume to manifold-3d", async () => {
    const { Manifold, Mesh } = await manifold();
    const read = parseStl(bytes);
    const [corners, count] = [unweld(read), triangleCount(read)];
    const mesh = new Mesh({
      numProp: 3,
      vertProperties: Float32Array.from(corners),
      triVerts: Uint32Array.from({ length: 3 * count }, (_, i) => i),
    });
    mesh.merge();
    const theirs = new Manifold(mesh);
    expect(theirs.status()).toBe("NoError");
    expect(Math.abs(theirs.volume() / volume - 1)).toBeLessThan(WRITING);
  });
});

describe("no file", () => {
  const polygons = geometries.geom3.toPolygons(block);
  const volume = 160 * 60 * 45;
  const refused = (solid: Geom3, expected = volume) => expect(() => stlBytes(meshOf(solid), "front-block", expected));

  test("of a solid with a face missing", () =>
    refused(geometries.geom3.create(polygons.slice(1))).toThrow(/front-block.*openEdges/));
  test("of a solid inside out", () => refused(geometries.geom3.invert(block)).toThrow(/front-block.*inwards/));
  test("of a solid with one face turned", () => {
    const turned = [geometries.poly3.invert(polygons[0]!), ...polygons.slice(1)];
    refused(geometries.geom3.create(turned)).toThrow(/front-block.*openEdges/);
  });
  test("of a corner that is no number", () => {
    const broken = geometries.poly3.create([[Number.NaN, 0, 0], ...polygons[0]!.vertices.slice(1)]);
    refused(geometries.geom3.create([broken, ...polygons.slice(1)])).toThrow(/front-block.*notFinite/);
  });
  test("of another volume", () => refused(block, volume + 1).toThrow(/front-block.*expected/));
  test("of nothing", () => refused(geometries.geom3.create([]), 0).toThrow(/front-block/));
});

test("bytes that are no binary STL are not read as one", () => {
  const bytes = stlBytes(meshOf(block), "block", 160 * 60 * 45);
  expect(() => parseStl(bytes.slice(0, -1))).toThrow(/not a binary STL/);
  expect(() => parseStl(bytes.slice(0, 50))).toThrow(/not a binary STL/);
  expect(() => parseStl(Uint8Array.from([...new TextEncoder().encode("solid"), ...bytes.slice(5)]))).toThrow(
    /not a binary/,
  );
});

async function manifold() {
  const library = await Module();
  library.setup(); // only after it are its classes there
  return library;
}

const figures = (report: string, pattern: RegExp): number[] =>
  [...report.matchAll(pattern)].map((found) => Number(found[1]));

function admesh(command: string, bytes: Uint8Array): string {
  const folder = mkdtempSync(join(tmpdir(), "lamplane-stl-"));
  try {
    const file = join(folder, "part.stl");
    writeFileSync(file, bytes);
    return runForStdout(command, [file]);
  } finally {
    rmSync(folder, { recursive: true });
  }
}
