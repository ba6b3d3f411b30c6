// STEP files: what we write is exact solids to the Open CASCADE kernel, in FreeCAD and as occt-import-js; and what is no solid is not written.
// `pnpm test:full` judges 200 random designs with all their jigs.
import { partStep } from "@lamplane/export";
import {
  dot,
  type Face,
  facesVolume,
  mapVertices,
  meshBounds,
  scale,
  subtract,
  tessellateFaces,
  triangleAt,
  unitNormal,
  type Vec3,
} from "@lamplane/geometry/mesh";
import { elevation } from "@lamplane/parameters/elevation";
import { partsOf, planeJigs } from "@lamplane/parameters/solids";
import type { Design } from "@lamplane/parameters/table";
import { describe, expect, test } from "vitest";
import { isBuildable } from "../support/buildable.ts";
import { designWith, randomDesigns, WORKED } from "../support/designs.ts";
import { extent } from "../support/extent.ts";
import { requireProgram } from "../support/outside-programs.ts";
import { JIG_SETTINGS, PART_NAMES, stepFiles } from "../support/step-files.ts";
import { freecadReports, importStep, type KernelReport } from "../support/step-kernels.ts";

const RANDOM = extent(2, 200);
/** Relative; a curved ramp's arc states its sweep some 1e-7° off what its ends say. */
const EXACT = 1e-9;

const NAMED: [string, Design][] = [
  ["the worked set", designWith({ ...WORKED, "jigs.relief": 3 })],
  ["an arched one with slotted fences", designWith({ "body.outline": "arched", "jigs.fence": "slotted" })],
  ["a curved ramp and a round pin", designWith({ "bed.angle": 55, "pin.section": "round" })],
];
const randomOnes = randomDesigns(83, RANDOM, isBuildable).map(({ changes, design }, i): [string, Design] => {
  const jigs = { ...design.jigs, ...JIG_SETTINGS[i % JIG_SETTINGS.length]! };
  return [`random ${i}: ${JSON.stringify(changes)}`, { ...design, jigs }];
});

/** What is wrong with a file by the kernel's report. */
function faultsOf({ valid, complaints, volumes, surfaces, curves }: KernelReport, wanted: readonly number[]): string[] {
  const strange = (found: object, known: readonly string[]) =>
    Object.keys(found).filter((kind) => !known.includes(kind));
  const ordered = (list: readonly number[]) => [...list].sort((a, b) => a - b);
  const off = ordered(wanted).map((volume, i) => Math.abs((ordered(volumes)[i] ?? 0) / volume - 1));
  return [
    ...(valid ? [] : ["not valid"]),
    ...complaints,
    ...(volumes.length === wanted.length ? [] : [`${volumes.length} solids, not ${wanted.length}`]),
    ...off.filter((share) => !(share < EXACT)).map((share) => `volume off by ${share}`),
    ...strange(surfaces, ["Plane", "Cylinder", "Cone"]),
    ...strange(curves, ["Line", "Circle"]),
  ];
}

describe.each([...NAMED, ...randomOnes])("%s", (_, design) => {
  const files = stepFiles(design);

  test("is exact solids to FreeCAD: valid, of the outlines' volume, of planes and cylinders, cones in jigs alone", (context) => {
    const command = requireProgram(context, "freecad");
    const reports = freecadReports(command, new Map([...files].map(([name, { text }]) => [name, text])));
    expect(reports.size).toBe(files.size);
    const faults = [...files].flatMap(([name, { volumes }]) =>
      faultsOf(reports.get(name)!, volumes).map((fault) => `${name}: ${fault}`),
    );
    expect(faults).toEqual([]);
    for (const name of [...PART_NAMES, "plane", "body"]) expect(reports.get(name)!.surfaces).not.toHaveProperty("Cone");
  });

  test("is solids of its names and faces to occt-import-js, every part in its place", () => {
    for (const [file, { text, volumes }] of files) {
      const shown = importStep(text);
      const names = file === "plane" ? PART_NAMES : volumes.map(() => file);
      expect(shown.map(({ name }) => name)).toEqual(names);
      shown.forEach(({ volume }, i) => void expect(Math.abs(volume / volumes[i]! - 1)).toBeLessThan(5e-3));
      expect(shown.reduce((sum, { faces }) => sum + faces, 0)).toBe(text.match(/=ADVANCED_FACE\(/g)!.length);
    }
    const shown = new Map(importStep(files.get("plane")!.text).map((solid) => [solid.name, solid]));
    for (const { name, inPlaceMesh } of partsOf(elevation(design), "blank")) {
      const { min, max } = meshBounds(mapVertices(inPlaceMesh, ([x, y, z]) => [x, -z, y]));
      // Both are chords of the same arcs: theirs and ours stay within the deviation that each was asked for.
      for (const k of [0, 1, 2]) {
        expect(Math.abs(shown.get(name)!.min[k]! - min[k]!)).toBeLessThan(0.03);
        expect(Math.abs(shown.get(name)!.max[k]! - max[k]!)).toBeLessThan(0.03);
      }
    }
  });
});

const parts = partsOf(elevation(NAMED[0]![1]), "blank");
const cheek = parts.find(({ name }) => name === "cheek-left")!;
const textOf = (faces: readonly Face[], name = "cheek-left") => partStep({ name, shells: [faces] }, "0.1.0");

/** Numbers of the faces whose side in the text is not that to which the triangles cut from them look. */
function wrongSides(faces: readonly Face[]): number[] {
  const senses = [...textOf(faces).matchAll(/=ADVANCED_FACE\(.*,\.([TF])\.\);$/gm)].map(([, sense]) => sense === "T");
  return faces.flatMap((face, i) => {
    const { surface } = face;
    const [a, b, c] = triangleAt(tessellateFaces([face]), 0);
    const middle = [0, 1, 2].map((k) => (a[k]! + b[k]! + c[k]!) / 3) as unknown as Vec3;
    const away = surface.kind === "plane" ? surface.normal : awayFromAxis(middle, surface.origin, surface.axis);
    return dot(unitNormal(a, b, c), away) > 0 === senses[i] ? [] : [i];
  });
}

function awayFromAxis(p: Vec3, origin: Vec3, axis: Vec3): Vec3 {
  const d = subtract(p, origin);
  return subtract(d, scale(axis, dot(d, axis)));
}

test("the same faces give the same text, in any time zone, and it tells no time", () => {
  const zone = process.env.TZ;
  const texts = ["Pacific/Kiritimati", "Pacific/Pago_Pago"].map((TZ) => {
    process.env.TZ = TZ;
    return textOf(cheek.lyingFaces);
  });
  process.env.TZ = zone;
  if (zone === undefined) delete process.env.TZ;
  expect(new Set([...texts, textOf(cheek.lyingFaces)]).size).toBe(1);
  expect(texts[0]).toContain("'1980-01-01T00:00:00'");
});

test("every reference leads to an instance, and every edge parts two faces", () => {
  const text = textOf(cheek.lyingFaces);
  const numbers = new Set([...text.matchAll(/^#(\d+)=/gm)].map(([, n]) => n));
  for (const [, n] of text.matchAll(/[(,]#(\d+)/g)) expect(numbers).toContain(n);
  const runs = [...text.matchAll(/ORIENTED_EDGE\('',\*,\*,#(\d+),\.([TF])\./g)].map(([, n, way]) => `${n} ${way}`);
  const edges = [...text.matchAll(/^#(\d+)=EDGE_CURVE/gm)].map(([, n]) => n);
  expect(runs.sort()).toEqual(edges.flatMap((n) => [`${n} F`, `${n} T`]).sort());
});

test("every face looks out of its solid, as its mesh does", () => {
  for (const { lyingFaces } of parts) expect(wrongSides(lyingFaces)).toEqual([]);
  for (const { plainFaces } of planeJigs(elevation(NAMED[0]![1])))
    for (const faces of plainFaces) expect(wrongSides(faces)).toEqual([]);
});

test("a name is written as ISO 10303-21 has it", () => {
  const text = textOf(cheek.lyingFaces, "Anna's \\ Größe");
  expect(text).toContain("'Anna''s \\\\ Gr\\X2\\00F600DF\\X0\\e'");
  expect(importStep(text).map(({ name }) => name)).toEqual(["Anna's \\ Größe"]);
});

describe("a fault put in", () => {
  type Change = (face: Face) => Face;
  const isHole = ({ surface }: Face) => surface.kind === "cylinder" && !surface.convex;
  const flipArcs: Change = ({ surface, loops }) => ({
    surface,
    loops: loops.map((loop) =>
      loop.map((edge) => (edge.kind === "arc" ? { ...edge, axis: edge.axis.map((c) => -c) as never } : edge)),
    ),
  });
  const block = parts.find(({ name }) => name === "bed-block")!.lyingFaces;
  const judged = (command: string, faces: readonly Face[]) =>
    faultsOf(freecadReports(command, new Map([["faulty", textOf(faces)]])).get("faulty")!, [facesVolume(block)]);

  test("an arc's axis flipped in one face is refused by the writer", () => {
    const flipped = block.map((face) => (isHole(face) ? flipArcs(face) : face));
    expect(() => textOf(flipped, "bed-block")).toThrow(/bed-block: \d+ edges/);
  });
  test("an arc's axis flipped in every face is no sound solid to FreeCAD", (context) => {
    const command = requireProgram(context, "freecad");
    expect(judged(command, block)).toEqual([]);
    expect(judged(command, block.map(flipArcs))).not.toEqual([]);
  });
  test("a hollow that is said to bulge shows: readers turn such a face round without a word", () => {
    const bulged = block.map((face) => (isHole(face) ? { ...face, surface: { ...face.surface, convex: true } } : face));
    expect(wrongSides(block)).toEqual([]);
    expect(wrongSides(bulged as Face[])).toHaveLength(2);
  });
  test("a face left out is refused by the writer", () => {
    expect(() => textOf(block.slice(1), "bed-block")).toThrow(/bed-block: \d+ edges.*no closed solid/);
  });
});
