// Sheets of a shop: what lies on them judged by Clipper2, their drawings by ezdxf; their programs are cut in the long test beside this.
import { asBuiltPlane } from "@lamplane/bench";
import { dxfText } from "@lamplane/export";
import { makePackContent } from "@lamplane/export/content";
import type { Design } from "@lamplane/parameters/table";
import { describe, expect, test } from "vitest";
import { nestedFiles } from "../../packages/export/src/nested/nested-files.ts";
import { nestPlane } from "../../packages/export/src/nested/nested-sheets.ts";
import { sheetDrawing } from "../../packages/export/src/nested/sheet-drawing.ts";
import { sheetPieces } from "../../packages/export/src/nested/sheet-pieces.ts";
import { designWith, WORKED } from "../support/designs.ts";
import { faultsOfDrawing, faultsOfSheets, readDxfs, sheet, withSheets } from "../support/nested.ts";
import { requireProgram } from "../support/outside-programs.ts";
import { cutter, withRouter } from "../support/router-designs.ts";

const CUTTERS = [cutter("end-6", 6), cutter("drill-6", 6, { kind: "drill", step: 5 })];
const layered = designWith({ ...WORKED, name: "small", "core.layers": "auto" });
const shop = withSheets(withRouter(layered, CUTTERS), [700, 300], 2);

const nest = (design: Design) => nestPlane(asBuiltPlane(design))!;
const codes = (design: Design) =>
  Object.fromEntries(nest(design).noPlace.map(({ item, ...why }) => [item.name, why] as const));

describe("a layered plane on plies and surfaced wood", () => {
  const { sheets, noPlace } = nest(shop);
  const names = sheets.flatMap(({ items }) => items.map(({ item }) => item.name));

  test("has every cheek, layer and flat jig on a sheet once", () => {
    expect(noPlace).toEqual([]);
    expect(new Set(names).size).toBe(names.length);
    expect(names).toEqual(expect.arrayContaining(["cheek-left", "cheek-right", "front-layer-1", "bed-layer-5"]));
    expect(names).toEqual(expect.arrayContaining(["bed-gauge", "pin-guide", "wedge-sled", "throat-spacer-2"]));
  });

  test("keeps web and two cutters' ways between parts, the margin to the edge, the grain along the sheet", () => {
    expect(faultsOfSheets(sheets, shop)).toEqual([]);
  });

  test("takes each part from wood of its own thickness, each jig from ply", () => {
    for (const { piece, items } of sheets)
      for (const { item } of items) {
        expect(item.material).toBe(piece.material);
        expect(Math.abs(item.thickness! - piece.thickness)).toBeLessThanOrEqual(0.2);
      }
  });

  test("fills a sheet before the next is begun, and no sheet beyond its own area", () => {
    for (const { used } of sheets) expect(used).toBeLessThan(1);
    const one = nest(withSheets(withRouter(layered, CUTTERS), [1400, 600], 2)).sheets;
    expect(one.map(({ piece }) => piece.name)).toEqual([...new Set(one.map(({ piece }) => piece.name))]);
  });
});

describe("the files of the sheets", () => {
  test("are a drawing and a program each, a page and a list, and stand in the manifest", async () => {
    const whole = withRouter(designWith({ ...WORKED, name: "small" }), CUTTERS);
    const design = { ...whole, sheets: [sheet("cheeks", "wood", [700, 300, 8])] };
    const plane = asBuiltPlane(design);
    const files = await makePackContent({ design, plane, findings: [], version: "0", only: ["router"] });
    const paths = [...files.keys()].filter((path) => path.startsWith("nested"));
    const named = ["nested/1-cheeks.dxf", "nested/1-cheeks.ngc", "nested/sheets.txt", "nested.pdf"];
    expect(paths).toEqual(named);
    const manifest = JSON.parse(String(files.get("manifest.json")));
    expect(manifest.files.map((file: { path: string }) => file.path)).toEqual(expect.arrayContaining(paths));
    expect(String(files.get("nested/sheets.txt"))).toMatch(/cheek-left, cheek-right/);
  });

  test.for([
    { unit: "mm", perMm: 1 },
    { unit: "in", perMm: 1 / 25.4 },
  ] as const)(
    "drawings in $unit pass ezdxf's audit, zero at the sheet's corner, each part's cuts and name",
    ({ unit, perMm }, context) => {
      const python = requireProgram(context, "ezdxf");
      const { sheets } = nest(shop);
      const read = readDxfs(
        python,
        sheets.map((each) => dxfText(sheetDrawing(each, "sheet"), unit)),
      );
      expect(sheets.flatMap((each, i) => faultsOfDrawing(read[i]!, each, perMm))).toEqual([]);
    },
  );

  test("without a router are drawings alone", () => {
    const files = nestedFiles(asBuiltPlane(withSheets(layered, [700, 300])), "0")!;
    expect(new Set([...files.texts.keys()].map((path) => path.split(".").at(-1)))).toEqual(new Set(["dxf", "txt"]));
    expect(files.sheets.pages.every(({ cutters }) => cutters.length === 0)).toBe(true);
  });

  test("are none where no sheet is named", () => {
    expect(nestPlane(asBuiltPlane(withRouter(layered, CUTTERS)))).toBeUndefined();
  });
});

describe("what lies on no sheet has its figure:", () => {
  const whole = designWith(WORKED);
  const cheek = 8; // body.cheek by default

  test("a thickness that no wood has", () => {
    const found = codes({ ...whole, sheets: [sheet("thick", "wood", [900, 200, cheek + 0.5])] });
    expect(found["cheek-left"]).toMatchObject({ code: "thickness", value: cheek, nearest: cheek + 0.5 });
    expect(codes({ ...whole, sheets: [sheet("near", "wood", [900, 200, cheek + 0.15])] })).toEqual({});
  });

  test("a plate that serves no jig, and one that jigs.plate names but no sheet is", () => {
    const thick = codes({ ...whole, sheets: [sheet("slab", "ply", [900, 600, 60])] });
    expect(thick["wedge-sled"]).toMatchObject({ code: "plate", range: { most: 20 } });
    const named = { ...whole, jigs: { ...whole.jigs, plate: "15 mm" } };
    expect(codes({ ...named, sheets: [sheet("ply", "ply", [900, 600, 12])] })["pin-guide"]).toMatchObject({
      code: "sheet",
      value: 15,
    });
  });

  test("a part longer than the sheet, by what it needs with its margins", () => {
    // blank of 230 + 2 × 12.7 of trim along the grain, 20 of margin at each end
    const found = codes({ ...whole, sheets: [sheet("short", "wood", [280, 400, cheek])] })["cheek-left"];
    expect(found).toMatchObject({ code: "size", largest: { width: 280, depth: 400 } });
    const { body } = whole;
    expect((found as { needs: { width: number } }).needs.width).toBeCloseTo(body.length + body.trim + 40, 6);
  });

  test("no room: one sheet of two that are needed", () => {
    const found = codes({ ...whole, sheets: [sheet("one", "wood", [320, 110, cheek])] });
    expect(Object.values(found).map(({ code }) => code)).toEqual(["room"]);
    expect(codes({ ...whole, sheets: [sheet("two", "wood", [320, 110, cheek], 2)] })).toEqual({});
  });

  test("a cutter that does not reach through", () => {
    const design = withRouter(whole, [cutter("stub", 6, { cutting: 5 })]);
    const found = codes({ ...design, sheets: [sheet("board", "wood", [900, 200, cheek])] })["cheek-left"];
    expect(found).toMatchObject({ code: "router", limit: { code: "reach", value: 5, limit: cheek + 0.3 } });
  });
});

describe("a sheet larger than the router's travel", () => {
  const small = withRouter(designWith(WORKED), CUTTERS, { area: { width: 600, depth: 400, height: 100 } });

  test("is sawn into pieces that the travel takes, a kerf between them", () => {
    const pieces = sheetPieces({ ...small, sheets: [sheet("ply", "ply", [1220, 610, 12])] });
    const kerf = 3.2; // shop.kerf by default
    expect(pieces.map(({ width, depth }) => [width, depth].map((mm) => Math.round(mm * 10) / 10))).toEqual([
      [600, 400],
      [600, 610 - 400 - kerf],
      [600, 400],
      [600, 610 - 400 - kerf],
      [1220 - 2 * 600 - 2 * kerf, 400],
      [1220 - 2 * 600 - 2 * kerf, 610 - 400 - kerf],
    ]);
  });

  test("a surfaced board's knots stay where they are on its pieces, and no part lies on one", () => {
    const knots = [{ from: 590, to: 640, across: { from: 40, to: 70 } }];
    const board = {
      name: "old board",
      length: 1500,
      width: 180,
      thickness: 8,
      state: "surfaced",
      species: "same",
      rings: 0,
      heart: "down",
      count: 1,
      price: 0,
      knots,
    } as const;
    const design: Design = { ...small, boards: [board] };
    const [first, second] = sheetPieces(design).map(({ keepOuts }) =>
      keepOuts.map((knot) => [knot[0]!.from, knot[1]!.to]),
    );
    expect(first).toEqual([
      [
        { x: 590, y: 40 },
        { x: 600, y: 70 },
      ],
    ]);
    expect(second![0]![0]!.x).toBe(0);
    expect(second![0]![1]!.x).toBeCloseTo(640 - 603.2, 9);
    const { sheets, noPlace } = nest(design);
    expect(noPlace).toEqual([]);
    expect(faultsOfSheets(sheets, design)).toEqual([]);
  });
});
