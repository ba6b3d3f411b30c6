// Programs cut from stock by an interpreter's own moves: the part stays whole, nothing is left beside it but bridges and named corners.
import { asBuiltPlane } from "@lamplane/bench";
import { point, polygon } from "@lamplane/geometry";
import { describe, expect, test } from "vitest";
import { nestPlane } from "../../packages/export/src/nested/nested-sheets.ts";
import { nestedSetUp } from "../../packages/export/src/nested/sheet-programs.ts";
import { planProgram } from "../../packages/export/src/router/program.ts";
import { programFiles } from "../../packages/export/src/router/program-files.ts";
import { flatSetUp } from "../../packages/export/src/router/set-up.ts";
import { designWith, WORKED } from "../support/designs.ts";
import { faultsOfSheetPrograms, sheet } from "../support/nested.ts";
import { requireProgram } from "../support/outside-programs.ts";
import { faultsOfCutting } from "../support/router-cutting.ts";
import { cutter, routed, withRouter } from "../support/router-designs.ts";

const CUTTERS = [
  cutter("end-6", 6),
  cutter("end-4", 4, { step: 2 }),
  cutter("drill-9.7", 9.7, { kind: "drill", step: 5 }),
];
const PARTS = ["cheek-right", "wedge-blank", "pin-blank", "jig-bed-gauge", "recess"];

const MACHINES = [
  { direction: "climb", zero: "corner-top", units: "mm", toolChange: "pause" },
  { direction: "conventional", zero: "corner-spoilboard", units: "in", toolChange: "m6" },
] as const;

const programsOf = (machine: (typeof MACHINES)[number]) => {
  const { programs, refused } = routed(withRouter(designWith(WORKED), CUTTERS, machine));
  expect(refused).toEqual([]);
  return programs.filter(({ program }) => PARTS.includes(program.setUp.name));
};

describe.each(MACHINES)("programs of the worked plane, $direction, zero $zero, $units, $toolChange", (machine) => {
  test("leave the part, its tabs and the corners that they name", (context) => {
    requireProgram(context, "rs274");
    const programs = programsOf(machine);
    expect(programs.map(({ program }) => program.setUp.name)).toEqual(PARTS);
    const found = programs.flatMap(({ program, text, judged }) => faultsOfCutting(text, program, judged));
    expect(found).toEqual([]);
  });
});

test("a core in layers is cut by a cutter that reaches one layer, its recess as a step of the middle layer", (context) => {
  requireProgram(context, "rs274");
  const short = [cutter("end-6", 6, { cutting: 25 }), cutter("drill-6", 6, { kind: "drill", cutting: 40 })];
  const { programs } = routed(withRouter(designWith({ ...WORKED, "core.layers": "auto" }), short));
  const layers = programs.filter(({ program }) => program.setUp.name.includes("layer"));
  expect(layers.length).toBeGreaterThanOrEqual(6);
  expect(programs.some(({ program }) => /^(recess|(front|bed)-block)$/.test(program.setUp.name))).toBe(false);
  const bed = layers.filter(({ program }) => program.setUp.name.startsWith("bed")).slice(0, 2);
  const found = bed.flatMap(({ program, text, judged }) => faultsOfCutting(text, program, judged));
  expect(found).toEqual([]);
});

test.each(["jig-bed-cradle", "jig-wedge-sled"])(
  "the relief that the sheet of %s proposes leaves no corner to pare, nor does auto",
  (name) => {
    const design = { ...withRouter(designWith(WORKED), CUTTERS), sheets: [sheet("ply", "ply", [600, 400, 12])] };
    const headOf = (relief: number | "auto") => {
      const relieved = { ...design, jigs: { ...design.jigs, relief } };
      const { program } = routed(relieved).programs.find(({ program: { setUp } }) => setUp.name === name)!;
      return programFiles(program, relieved, "0")[0]!.text.replace(/\)\n\(/g, " ");
    };
    const [, proposed] = /jigs\.relief: ([\d.]+) mm/.exec(headOf(0)) ?? [];
    expect(Number(proposed)).toBe(2.1); // a tenth over the radius of the 4 mm mill
    for (const relief of [Number(proposed), "auto"] as const) expect(headOf(relief)).not.toMatch(/inner corner/);
  },
);

describe("what is engraved on request", () => {
  const wanted = { direction: "climb", zero: "corner-top", units: "mm", engraving: 0.3 } as const;
  const vee = cutter("vee", 0.6, { kind: "engrave", cutting: 5, step: 0.2, finish: 0 });
  const engraved = () => routed(withRouter(designWith(WORKED), [...CUTTERS, vee], wanted)).programs;

  test("marks on a cheek and the name on a jig are grooves of that depth along the drawing's lines, and nothing else is lost", (context) => {
    requireProgram(context, "rs274");
    const programs = engraved().filter(({ program: { setUp } }) =>
      ["cheek-right", "jig-bed-gauge"].includes(setUp.name),
    );
    expect(programs).toHaveLength(2);
    for (const { program, text, judged } of programs) {
      expect(program.toolpaths.map(({ cutter: { name } }) => name)).toContain("vee");
      expect(faultsOfCutting(text, program, judged)).toEqual([]);
      const deeper = text.replace(/Z-0\.3(?=\s)/, "Z-0.9");
      expect(deeper).not.toBe(text);
      expect(faultsOfCutting(deeper, program, judged).join()).toMatch(/gouge/);
    }
    const jig = programs.find(({ program: { setUp } }) => setUp.name === "jig-bed-gauge")!;
    const letters = jig.program.setUp.features.find(({ kind }) => kind === "engraving");
    if (letters?.kind !== "engraving") throw new Error("no letters");
    expect(letters.depth).toBe(0.3);
    expect(letters.paths.length).toBeGreaterThan(10); // strokes of BED 47° and the plane's name
  });

  test("marks and names on a layer are such grooves too", (context) => {
    requireProgram(context, "rs274");
    const layered = withRouter(designWith({ ...WORKED, "core.layers": "auto" }), [...CUTTERS, vee], wanted);
    const { program, text, judged } = routed(layered).programs.find(
      ({ program: { setUp } }) => setUp.name === "bed-layer-2",
    )!;
    const engraving = program.setUp.features.find(({ kind }) => kind === "engraving");
    expect(engraving).toMatchObject({ depth: 0.3 });
    expect(faultsOfCutting(text, program, judged)).toEqual([]);
    expect(faultsOfCutting(text.replace(/Z-0\.3(?=\s)/, "Z-0.9"), program, judged).join()).toMatch(/gouge/);
  });

  test("on a sheet every part keeps its own, and its neighbours lose nothing to them", (context) => {
    requireProgram(context, "rs274");
    const plain = withRouter(designWith(WORKED), [...CUTTERS, vee], wanted);
    const design = { ...plain, sheets: [sheet("cheeks", "wood", [700, 300, plain.body.cheek])] };
    const [nested] = nestPlane(asBuiltPlane(design))!.sheets;
    expect(nested!.items.map(({ item }) => item.name)).toEqual(["cheek-left", "cheek-right"]);
    const { features } = nestedSetUp(nested!, "sheet", "sheet", design);
    expect(features.filter(({ kind }) => kind === "engraving")).toHaveLength(2);
    expect(faultsOfSheetPrograms([nested!], design)).toEqual([]);
    const sunk = (text: string) => text.replace(/Z-0\.3(?=\s)/, "Z-0.9");
    expect(faultsOfSheetPrograms([nested!], design, sunk).join()).toMatch(/gouge/);
  });

  test("wants a fine cutter, and nothing is engraved unasked", () => {
    const { limits } = routed(withRouter(designWith(WORKED), CUTTERS, wanted));
    expect(limits.find(({ setUp }) => setUp === "cheek-left")).toMatchObject({ code: "engraver", value: 4, limit: 2 });
    const plain = routed(withRouter(designWith(WORKED), [...CUTTERS, vee])).programs;
    expect(plain.flatMap(({ program }) => program.toolpaths).filter(({ cutter: { name } }) => name === "vee")).toEqual(
      [],
    );
  });
});

describe("a fault put into a program is found:", () => {
  const cheek = () => programsOf(MACHINES[0]).find(({ program }) => program.setUp.name === "cheek-right")!;

  test("an arc that turns the wrong way", (context) => {
    requireProgram(context, "rs274");
    const { program, text, judged } = cheek();
    const lines = text.split("\n");
    const arcs = lines.flatMap((line, i) => (/^G[23] X.*I/.test(line) ? [i] : []));
    const corner = arcs.at(-2)!; // the last one leads away from the finished wall
    const wrong = lines.with(
      corner,
      lines[corner]!.replace(/^G[23]/, (word) => (word === "G2" ? "G3" : "G2")),
    );
    expect(faultsOfCutting(wrong.join("\n"), program, judged).join()).toMatch(/gouge/);
  });

  test("a tab that is cut through", (context) => {
    requireProgram(context, "rs274");
    const { program, text, judged } = cheek();
    const top = (judged.tabs.height - program.setUp.stock.thickness).toFixed(4).replace(/\.?0+$/, "");
    const lines = text.split("\n");
    const lifts = lines.flatMap((line, i) => (new RegExp(`^G1 Z${top}( |$)`).test(line) ? [i] : []));
    expect(lifts.length).toBeGreaterThan(program.tabs.length);
    const without = lines.filter((_, i) => i !== lifts.at(-1));
    expect(faultsOfCutting(without.join("\n"), program, judged).join()).toContain("1 bridges lost");
  });

  test("a rapid move in the wood, and a part too large for the machine", (context) => {
    requireProgram(context, "rs274");
    const { program, text, judged } = cheek();
    const fast = text.replace(/^G1( X.*)$/m, "G0 Z-1");
    expect(faultsOfCutting(fast, program, judged)).toContain("1 rapids below the stock's top");
    expect(faultsOfCutting(text, program, { ...judged, area: { width: 100, depth: 800, height: 600 } })).toContain(
      "out of the travel",
    );
  });
});

describe("what cannot be cut is refused with its figure", () => {
  const limits = (cutters: Parameters<typeof withRouter>[1], more: Parameters<typeof withRouter>[2] = {}) =>
    routed(withRouter(designWith(WORKED), cutters, more)).limits;
  test("a cutter too short for the blocks, by the depth that they need", () => {
    const found = limits([cutter("end-6", 6, { cutting: 22 })]).find(({ setUp }) => setUp === "bed-block");
    // core of 48 + 1.6 and 0.3 into the spoilboard
    expect(found).toMatchObject({ code: "reach", value: 22 });
    expect(found!.limit).toBeCloseTo(49.9, 6);
  });
  test("a hole smaller than the cutter, by the widest that goes in", () => {
    const found = limits([cutter("end-12", 12)]).find(({ setUp }) => setUp === "cheek-left");
    expect(found).toMatchObject({ code: "opening", limit: 12 });
    expect(found!.value).toBeLessThan(9.7);
  });
  test("a machine too small, by the travel that it needs", () => {
    const found = limits(CUTTERS, { area: { width: 200, depth: 800, height: 600 } });
    expect(found.find(({ setUp }) => setUp === "cheek-left")).toMatchObject({ code: "travel-x", limit: 200 });
  });
  test("a part without straight runs for tabs", () => {
    const found = limits(CUTTERS, { tabs: { width: 50, height: 1.5, spacing: 120 } });
    expect(found.find(({ setUp }) => setUp === "pin-blank")).toMatchObject({ code: "tab-run" });
  });
  test("an outline that crosses itself, by the loop beyond the crossing", () => {
    // The top runs 3 mm past the left side, which begins 4 mm over the top: a loop of 3, 4 and 5.
    const corners = [point(0, 0), point(100, 0), point(100, 50), point(-3, 50), point(0, 54)];
    const setUp = flatSetUp(
      { name: "crossed", title: "", outlines: [polygon(...corners)], circles: [], thickness: 8 },
      20,
    );
    const planned = planProgram(setUp, withRouter(designWith(WORKED), CUTTERS).router, CUTTERS);
    if (!("limit" in planned)) throw new Error("it is planned");
    expect(planned.limit).toMatchObject({ setUp: "crossed", code: "crossing", limit: 0 });
    expect(planned.limit.value).toBeCloseTo(12, 9);
  });
  test("a core's layers whose corner relief runs out of the recess, as `layer-corner` has it, and no other part", () => {
    const crossed = (cornerCutter: number) => {
      const layered = designWith({ ...WORKED, "core.layers": "auto", "core.cornerCutter": cornerCutter });
      return routed(withRouter(layered, CUTTERS)).limits.flatMap(({ code, setUp }) =>
        code === "crossing" ? [setUp] : [],
      );
    };
    expect(crossed(3)).toEqual([]);
    expect(crossed(9)).toEqual(["bed-layer-2", "bed-layer-3", "bed-layer-4"]);
  });
  test("no end mill at all", () => {
    expect(limits([CUTTERS.at(-1)!]).every(({ code }) => code === "no-end-mill")).toBe(true);
  });
});

test("no tab stands in a slot so narrow that the way back along its other side cuts it off", () => {
  const slot = 13; // mm: room for the cutter's way up one side and down the other, none for a bridge between them
  const corners = [
    [0, 0],
    [60, 0],
    [60, 80],
    [60 + slot, 80],
    [60 + slot, 0],
    [140, 0],
    [140, 120],
    [0, 120],
  ].map(([x, y]) => point(x!, y!));
  const part = polygon(...corners);
  const setUp = flatSetUp({ name: "slotted", title: "", outlines: [part], circles: [], thickness: 12 }, 20);
  const { router } = designWith({ "router.tabs.spacing": 40 });
  const planned = planProgram(setUp, { ...router, area: { width: 900, depth: 900, height: 200 } }, [
    cutter("end-9", 9),
  ]);
  if ("limit" in planned) throw new Error(planned.limit.code);
  const beside = ({ x, y }: { x: number; y: number }) => x > 79 && x < 81 + slot && y < 99;
  expect(planned.program.tabs.length).toBeGreaterThanOrEqual(8);
  expect(planned.program.tabs.filter(beside)).toEqual([]);
});
