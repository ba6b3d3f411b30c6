// Random planes on random shops' sheets: nothing on another, over the edge or across the grain, by Clipper2; every drawing read by
// ezdxf; sheets cut from their stock by the moves of an RS-274 interpreter. NESTED_SEED for others.
import { asBuiltPlane } from "@lamplane/bench";
import { dxfText } from "@lamplane/export";
import type { Design } from "@lamplane/parameters/table";
import { expect, test } from "vitest";
import { nestPlane } from "../../packages/export/src/nested/nested-sheets.ts";
import { sheetDrawing } from "../../packages/export/src/nested/sheet-drawing.ts";
import { isBuildable } from "../support/buildable.ts";
import { randomDesigns, seeded } from "../support/designs.ts";
import { extent } from "../support/extent.ts";
import { faultsOfDrawing, faultsOfSheetPrograms, faultsOfSheets, readDxfs, withSheets } from "../support/nested.ts";
import { requireProgram } from "../support/outside-programs.ts";
import { cutter, withRouter } from "../support/router-designs.ts";

const SEED = Number(process.env.NESTED_SEED ?? 2026);

/** Planes with whole cores and layered ones, sheets from small to large, mills from thin to stout; every other shop engraves. */
function randomShops(count: number): { design: Design; where: string }[] {
  const random = seeded(SEED);
  const oneOf = <T>(...choices: T[]): T => choices[Math.floor(random() * choices.length)]!;
  const vee = cutter("vee", 0.6, { kind: "engrave", cutting: 5, step: 0.2, finish: 0 });
  return randomDesigns(SEED, count, isBuildable).map(({ design: plain, changes }, i) => {
    const layered = { ...plain, core: { ...plain.core, layers: "auto" } };
    const core = random() < 0.5 && isBuildable(layered) ? layered.core : plain.core;
    const mill = cutter("end", oneOf(3.175, 6, 9.525), { cutting: 90, finish: oneOf(0, 0.2) });
    const machine = {
      margin: oneOf(12, 20, 30),
      web: oneOf(2, 4, 10),
      zero: oneOf("corner-top", "corner-spoilboard"),
      engraving: i % 2 === 0 ? 0.3 : 0,
    } as const;
    const size = oneOf([600, 300], [900, 250], [1220, 610]) as [number, number];
    const design = withSheets(withRouter({ ...plain, core }, [mill, vee], machine), size, oneOf(1, 3));
    return { design, where: JSON.stringify({ size, mill: mill.diameter, machine, layers: core.layers, changes }) };
  });
}

test("nothing lies on another, over the edge or across the grain; every drawing is read as it is", {
  timeout: 1e8,
}, (context) => {
  const python = requireProgram(context, "ezdxf");
  let [laid, read] = [0, 0];
  for (const { design, where } of randomShops(extent(6, 200))) {
    const { sheets, noPlace } = nestPlane(asBuiltPlane(design))!;
    expect(faultsOfSheets(sheets, design), where).toEqual([]);
    const drawings = readDxfs(
      python,
      sheets.map((sheet) => dxfText(sheetDrawing(sheet, "sheet"))),
    );
    expect(
      sheets.flatMap((sheet, i) => faultsOfDrawing(drawings[i]!, sheet, 1)),
      where,
    ).toEqual([]);
    for (const { code } of noPlace) expect(["size", "room", "router", "plate"], where).toContain(code);
    laid += sheets.flatMap(({ items }) => items).length;
    read += drawings.length;
  }
  expect(laid).toBeGreaterThan(4 * extent(6, 200));
  expect(read).toBeGreaterThan(extent(6, 200));
});

test("programs of sheets leave each part on its tabs, its neighbours whole", { timeout: 1e8 }, (context) => {
  requireProgram(context, "rs274");
  let count = 0;
  for (const { design, where } of randomShops(extent(2, 200))) {
    const { sheets } = nestPlane(asBuiltPlane(design))!;
    const some = sheets.slice(0, extent(2, sheets.length));
    expect(faultsOfSheetPrograms(some, design), where).toEqual([]);
    count += some.length;
  }
  expect(count).toBeGreaterThan(extent(2, 200));
});
