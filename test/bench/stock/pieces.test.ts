// Sizes in the stock list are those of the solids: of the box about each finished part as it lies on the table, and of the wood left on.
import { type StockRow, stockPlan } from "@lamplane/bench";
import { meshBounds } from "@lamplane/geometry/mesh";
import { elevation } from "@lamplane/parameters/elevation";
import { partsOf } from "@lamplane/parameters/solids";
import { describe, expect, test } from "vitest";
import { type Changes, designWith, randomDesigns, WORKED } from "../../support/designs.ts";

const CHANGES: readonly Changes[] = [
  WORKED,
  // The chamfer goes higher than the allowance: the bed block begins where it ends.
  { ...WORKED, "sole.allowance": 1, "bed.featherChamfer": 5 },
  { ...WORKED, "sole.allowance": 0, "bed.featherChamfer": 0 },
  { ...WORKED, "pin.section": "round", "pegs.perEnd": 2 },
  // Flat, since the list has a body's part before its top is shaped.
  ...randomDesigns(37, 4).map(({ changes }) => ({ ...changes, "body.outline": "flat" })),
];
const CASES = CHANGES.map((changes) => {
  const plane = elevation(designWith(changes));
  return { plane, rows: stockPlan(plane).list.rows };
});

const sizesOf = ({ length, width, thickness }: StockRow["finished"]) =>
  [length, width, thickness].sort((a, b) => b - a);

describe.each(CASES)("plane %#", ({ plane, rows }) => {
  const rowOf = (piece: StockRow["piece"]) => rows.find((row) => row.piece === piece)!;
  const parts = new Map(partsOf(plane, "trued").map((part) => [part.name, part.lyingMesh]));
  const boxOf = (name: string) => {
    const { min, max } = meshBounds(parts.get(name)!);
    return [0, 1, 2].map((k) => max[k]! - min[k]!).sort((a, b) => b - a);
  };

  test("each finished piece fills the box about its solid", () => {
    for (const [piece, name] of [
      ["front block", "front-block"],
      ["bed block", "bed-block"],
      ["cheek", "cheek-left"],
      ["cheek", "cheek-right"],
      ["wedge", "wedge"],
    ] as const) {
      const box = boxOf(name);
      for (const [k, size] of sizesOf(rowOf(piece).finished).entries())
        expect(Math.abs(size - box[k]!), `${piece}: ${size} for ${box[k]}`).toBeLessThan(1e-6);
    }
  });

  test("the cross pin is as long as its solid, and square enough to turn its barrel out of", () => {
    const { finished } = rowOf("cross pin");
    const [length, ...across] = boxOf("cross-pin");
    expect(finished.length).toBeCloseTo(length!, 6);
    expect([finished.width, finished.thickness]).toEqual([plane.pinSize.diameter, plane.pinSize.diameter]);
    // Chords of the barrel lie within it by less than the hundredth of a mm that a chord may be off on either side.
    for (const side of across) expect(side).toBeLessThanOrEqual(plane.pinSize.diameter + 1e-6);
    expect(Math.max(...across)).toBeGreaterThan(plane.pinSize.diameter - 0.011);
  });

  test("what is milled carries its allowance on both faces, in every direction where it is milled all round", () => {
    const { millingAllowance, jointingPass } = plane.design.shop;
    const milled = plane.design.pegs.perEnd > 0 ? (["cross pin", "wedge", "peg"] as const) : (["cross pin"] as const);
    for (const piece of milled) {
      const { rough, finished, from } = rowOf(piece);
      if (piece === "wedge" && from === "throat offcut") continue;
      for (const side of ["length", "width", "thickness"] as const)
        expect(rough[side] - finished[side], `${piece} ${side}`).toBeCloseTo(2 * millingAllowance, 9);
    }
    const cheek = rowOf("cheek");
    expect(cheek.rough.thickness - cheek.finished.thickness).toBeCloseTo(2 * millingAllowance, 9);
    const front = rowOf("front block");
    expect(cheek.rough.length).toBeCloseTo(plane.design.body.length + plane.design.body.trim, 9);
    const roughWidth = Math.min(front.rough.width, front.rough.thickness);
    expect(
      [roughWidth, Math.max(front.rough.width, front.rough.thickness)].some(
        (size) => Math.abs(size - plane.widths.core - 2 * millingAllowance - jointingPass) < 1e-6,
      ),
    ).toBe(true);
  });

  test("pegs go through both cheeks and the block between them, as many as there are holes in one cheek", () => {
    const { perEnd, diameter } = plane.design.pegs;
    const peg = rowOf("peg");
    if (perEnd === 0) return expect(peg).toBeUndefined();
    expect(peg.count).toBe(2 * perEnd);
    expect(peg.finished).toEqual({ length: plane.widths.body, width: diameter, thickness: diameter });
  });
});

test("two cheeks, one of everything else", () => {
  const counts = Object.fromEntries(CASES[0]!.rows.map(({ piece, count }) => [piece, count]));
  expect(counts).toMatchObject({ "front block": 1, "bed block": 1, cheek: 2, wedge: 1, "cross pin": 1 });
});
