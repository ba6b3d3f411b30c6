// Shops with sheets for a design, and the judge of what is laid on them: Clipper2, which the product does not use.
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { boundsOf, type Outline, tessellate, transformOutline } from "@lamplane/geometry";
import { elevation, layerShapes } from "@lamplane/parameters/elevation";
import type { Design, Sheet } from "@lamplane/parameters/table";
import { Clipper, EndType, FillRule, JoinType, type Paths64 } from "clipper2-ts";
import { cutOf } from "../../packages/export/src/nested/flat-items.ts";
import type { NestedItem, NestedSheet } from "../../packages/export/src/nested/nested-sheets.ts";
import { nestedSetUp } from "../../packages/export/src/nested/sheet-programs.ts";
import { planProgram } from "../../packages/export/src/router/program.ts";
import { programText } from "../../packages/export/src/router/rs274.ts";
import { runForStdout } from "./outside-programs.ts";
import { faultsOfCutting } from "./router-cutting.ts";

export const sheet = (
  name: string,
  material: Sheet["material"],
  size: readonly [number, number, number],
  count = 1,
): Sheet => ({
  name,
  material,
  length: size[0],
  width: size[1],
  thickness: size[2],
  measured: "auto",
  count,
});

/** Plies of two thicknesses, and surfaced wood as thick as cheeks and layers; long enough for every part. */
export function withSheets(design: Design, [long, wide]: readonly [number, number], count = 3): Design {
  const plane = elevation(design);
  const layers = new Set(layerShapes(plane, "blank").map(({ from, to }) => Math.round((to - from) * 1e3) / 1e3));
  return {
    ...design,
    sheets: [
      sheet("ply-12", "ply", [long, wide, 12], count),
      sheet("ply-18", "ply", [long, wide, 18], count),
      sheet("cheeks", "wood", [long, wide, plane.widths.cheek], count),
      ...[...layers].map((thickness, i) => sheet(`layers-${i + 1}`, "wood", [long, wide, thickness], count)),
    ],
  };
}

const SCALE = 1e4; // Clipper2 counts in whole numbers: a tenth of a micrometre
const CHORD = 0.002;
const pathOf = (outline: Outline) =>
  tessellate(outline, CHORD).map(({ x, y }) => ({ x: Math.round(x * SCALE), y: Math.round(y * SCALE) }));
const grow = (paths: Paths64, by: number): Paths64 =>
  Clipper.inflatePaths(paths, by * SCALE, JoinType.Round, EndType.Polygon, 2, CHORD * SCALE);
const common = (a: Paths64, b: Paths64): number =>
  Math.abs(Clipper.areaPaths(Clipper.intersect(a, b, FillRule.NonZero))) / SCALE ** 2;

/** What is wrong with outlines on a sheet: nearer than the gap to each other or to a knot, or nearer than the edge to its side. */
export function faultsOfPlaces(
  outlines: readonly { readonly name: string; readonly outline: Outline }[],
  {
    width,
    depth,
    gap,
    edge,
    keepOuts = [],
  }: { width: number; depth: number; gap: number; edge: number; keepOuts?: readonly Outline[] },
): string[] {
  const NEAR = 0.001; // mm
  const paths = outlines.map(({ outline }) => grow([pathOf(outline)], gap / 2 - NEAR));
  const knots = keepOuts.map((outline) => grow([pathOf(outline)], gap / 2 - NEAR));
  return outlines.flatMap(({ name, outline }, i) => {
    const { min, max } = boundsOf(tessellate(outline, CHORD));
    const isOut = Math.min(min.x, min.y, width - max.x, depth - max.y) < edge - NEAR;
    const onOthers = outlines.slice(i + 1).filter((_, k) => common(paths[i]!, paths[i + 1 + k]!) > 1e-6);
    return [
      ...(isOut ? [`${name} is too near the sheet's edge`] : []),
      ...onOthers.map((other) => `${name} is too near ${other.name}`),
      ...(knots.some((knot) => common(paths[i]!, knot) > 1e-6) ? [`${name} lies on a knot`] : []),
    ];
  });
}

/** Outer outline of what lies on a sheet, in its place. */
export const placed = ({ item, transform }: NestedItem): Outline => {
  const outlines = cutOf(item.drawing).outlines.map((outline) => transformOutline(outline, transform));
  const size = (outline: Outline) => {
    const { min, max } = boundsOf(tessellate(outline));
    return (max.x - min.x) * (max.y - min.y);
  };
  return outlines.toSorted((a, b) => size(b) - size(a))[0]!;
};

/** Parts of wood that lie across the grain. */
export const acrossGrain = ({ items }: NestedSheet): string[] =>
  items
    .filter(({ item, transform }) => item.material === "wood" && (transform.turn ?? 0) % 180 !== 0)
    .map(({ item }) => item.name);

/** What is wrong with where things lie on sheets, by the shop's own margin, web and cutters. */
export function faultsOfSheets(sheets: readonly NestedSheet[], { router, cutters }: Design): string[] {
  const mills = cutters.filter(({ kind }) => kind === "end").map(({ diameter, finish }) => diameter + finish);
  const way = Math.min(...mills, Number.POSITIVE_INFINITY);
  const room = Number.isFinite(way) ? way : 0;
  return sheets.flatMap((sheet) => {
    const { width, depth, keepOuts } = sheet.piece;
    const outlines = sheet.items.map((nested) => ({ name: nested.item.name, outline: placed(nested) }));
    const edge = Math.max(router.margin, room);
    const across = acrossGrain(sheet).map((name) => `${name} lies across the grain`);
    const faults = faultsOfPlaces(outlines, { width, depth, gap: 2 * room + router.web, edge, keepOuts });
    return [...faults, ...across].map((fault) => `${sheet.piece.name}: ${fault}`);
  });
}

/** What is wrong with the programs of sheets, as for those of single parts. @param change that a test makes to their text */
export function faultsOfSheetPrograms(
  sheets: readonly NestedSheet[],
  design: Design,
  change: (text: string) => string = (text) => text,
): string[] {
  const { router, cutters } = design;
  return sheets.flatMap((sheet) => {
    const setUp = nestedSetUp(sheet, "sheet", sheet.piece.name, design);
    const planned = planProgram(setUp, router, cutters);
    if ("limit" in planned) return [`${sheet.piece.name}: ${planned.limit.code}`];
    const { program } = planned;
    const { text } = programText(program, router, cutters, {
      head: [setUp.title],
      fit: ({ name }) => `fit ${name}`,
      done: "done",
    });
    const top = router.zero === "corner-spoilboard" ? setUp.height : 0;
    const { area, tabs } = router;
    const heights = { rapid: router.rapidHeight, park: router.parkHeight };
    return faultsOfCutting(change(text), program, { area, tabs, top, heights }).map(
      (fault) => `${sheet.piece.name}: ${fault}`,
    );
  });
}

const READ_SHEETS = `
import json, sys
from ezdxf import recover, bbox
def read(path):
    doc, audit = recover.readfile(path)
    space = doc.modelspace()
    box = bbox.extents((e for e in space if e.dxftype() != "TEXT"), fast=False)
    return {"audit": len(audit.errors) + len(audit.fixes), "low": [box.extmin.x, box.extmin.y], "size": [box.size.x, box.size.y],
        "layers": [e.dxf.layer for e in space], "texts": [e.dxf.text for e in space if e.dxftype() == "TEXT"]}
print(json.dumps([read(path) for path in sys.argv[1:]]))
`;

interface ReadDxf {
  readonly audit: number;
  readonly low: readonly number[];
  readonly size: readonly number[];
  readonly layers: readonly string[];
  readonly texts: readonly string[];
}

/** What ezdxf reads in drawings. @param python that has it */
export function readDxfs(python: string, texts: readonly string[]): ReadDxf[] {
  const folder = mkdtempSync(join(tmpdir(), "lamplane-sheets-"));
  try {
    const paths = texts.map((text, i) => {
      const path = join(folder, `${i}.dxf`);
      writeFileSync(path, text);
      return path;
    });
    return JSON.parse(runForStdout(python, ["-c", READ_SHEETS, ...paths]));
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** What is wrong with a sheet's drawing as it is read: its zero, its size, its parts' work and names. */
export function faultsOfDrawing(
  { audit, low, size, layers, texts }: ReadDxf,
  { piece, items }: NestedSheet,
  perMm: number,
): string[] {
  const isNear = (a: number, b: number) => Math.abs(a - b) < 1e-4;
  const names = items.map(({ item }) => item.name).toSorted();
  const cuts = items.flatMap(({ item }) => item.drawing.entries.filter(({ work }) => work === "CUT")).length;
  return [
    ...(audit > 0 ? [`${audit} things to mend`] : []),
    ...(low.every((value) => isNear(value, 0)) ? [] : ["zero is not the sheet's corner"]),
    ...(isNear(size[0]!, piece.width * perMm) && isNear(size[1]!, piece.depth * perMm) ? [] : ["another size"]),
    ...(JSON.stringify(texts.toSorted()) === JSON.stringify(names) ? [] : [`names ${texts.join()}`]),
    ...(layers.filter((layer) => layer === "CUT").length === cuts ? [] : ["another number of cuts"]),
  ].map((fault) => `${piece.name}: ${fault}`);
}
