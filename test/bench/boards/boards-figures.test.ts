// The text of a body's boards read back as a sawyer reads it: cuts from the edges they are measured from, parts and what is left by size.
import { boardPlan, boardsText } from "@lamplane/bench/boards";
import type { Design } from "@lamplane/parameters/table";
import { describe, expect, test } from "vitest";
import { cutsByBoard } from "../../../packages/bench/src/boards/board-plan.ts";
import { BOARDS } from "../../../packages/bench/src/words/boards.ts";
import { designWith, WORKED } from "../../support/designs.ts";
import { expectFigure, expectLength, partsOf } from "../../support/figures-in-text.ts";

type Entry = Design["boards"][number];
const entry = (name: string, length: number, width: number, thickness: number, more: Partial<Entry> = {}): Entry => ({
  name,
  length,
  width,
  thickness,
  count: 1,
  state: "rough",
  species: "same",
  rings: 20,
  heart: "down",
  price: 0,
  knots: [],
  ...more,
});

const BOARDS_AT_HAND: Readonly<Record<string, readonly Entry[]>> = {
  "one piece": [entry("ash", 300, 100, 70)],
  "from its end": [entry("long", 700, 72, 70)],
  resawn: [entry("thick", 290, 70, 100, { rings: 35, heart: "up" })],
  several: [entry("core", 300, 75, 60, { price: 12 }), entry("cheeks", 620, 75, 22, { price: 7.5 })],
  "two alike": [entry("pair", 300, 75, 60, { count: 2, price: 9 })],
  surfaced: [entry("planed", 300, 92, 66, { state: "surfaced" })],
};
const CASES = Object.entries(BOARDS_AT_HAND).flatMap(([name, boards]) =>
  (["mm", "in"] as const).map((units) => ({
    name,
    units,
    design: { ...designWith({ ...WORKED, units }), boards: [...boards] } as Design,
  })),
);

const expectSize = (text: string, sides: readonly number[], units: "mm" | "in") => {
  const printed = text.split(" × ");
  expect(printed).toHaveLength(3);
  for (const [i, side] of sides.entries()) {
    const each = printed[i]!;
    // A unit stands behind the last side alone.
    expectLength(i === 2 ? each : each.replace(/( \(|$)/, (end) => ` ${units}${end}`), side, units);
  }
};

describe.each(CASES)("$name in $units", ({ design, units }) => {
  const plan = boardPlan(design)!;
  const { text, comesOut } = boardsText(design)!;
  const lines = text.split("\n");

  test("comes out by a way that is named, for the price of the boards that are cut", () => {
    expect(comesOut).toBe(true);
    expect(lines[0]).toBe(BOARDS.head({ planes: 1 }));
    expect(lines[1]).toBe(BOARDS.way[plan.layout!.way]);
    const used = new Set(plan.layout!.cuttings.map(({ slab }) => slab.board));
    const price = [...used].reduce((sum, board) => sum + plan.boards[board]!.price, 0);
    expect(plan.layout!.price).toBeCloseTo(price, 9);
    const reported = lines.flatMap((line) => partsOf(BOARDS.price, ["price"], line) ?? []);
    expect(reported.map((each) => Number(each.price))).toEqual(price > 0 ? [price] : []);
  });

  test("each board has its cuts where the blade goes in, its parts by size and rings, and what is left", () => {
    const all = cutsByBoard(plan.boards, [{ layout: plan.layout!, parts: plan.wood.parts, prefix: "" }]);
    const own = lines.slice(2);
    for (const { board, parts, cuts, rest, waste } of all) {
      const { name, length, width, thickness, heart, rings } = plan.boards[board]!;
      const at = own.findIndex((line) => line.startsWith(`${name}: `));
      const head = partsOf(BOARDS.board, ["size", "waste"], own[at]!, { name, heart })!;
      expectSize(head.size, [length, width, thickness], units);
      const volume = parts.reduce(
        (sum, { box }) => sum + (box.x.to - box.x.from) * (box.y.to - box.y.from) * (box.z.to - box.z.from),
        0,
      );
      expect(waste).toBeCloseTo(1 - volume / (length * width * thickness), 9);
      expectFigure(head.waste, 100 * waste, { decimals: 0, unit: "%" });
      for (const [i, { axis, kerf, piece }] of cuts.entries()) {
        const line = own[at + 1 + i]!.trim();
        const { at: place } = partsOf(BOARDS.cut[axis], ["at"], line, { number: i + 1 })!;
        expectLength(place, kerf.from - piece[axis].from, units);
        // The blade is as wide as it is, but for one that leaves nothing beyond it.
        if (kerf.to < piece[axis].to - 1e-9) expect(kerf.to - kerf.from).toBeCloseTo(design.shop.kerf, 6);
        else expect(kerf.to - kerf.from).toBeLessThanOrEqual(design.shop.kerf + 1e-9);
      }
      for (const [i, { name, box, lay }] of parts.entries()) {
        const line = own[at + 1 + cuts.length + i]!.trim();
        const part = partsOf(BOARDS.part, ["size", "rings"], line, { name })!;
        expectSize(part.size, [box.x.to - box.x.from, box.y.to - box.y.from, box.z.to - box.z.from], units);
        // A part that lies on its side in the board has the rings the other way round.
        expectFigure(part.rings, lay === "ripped" ? rings : 90 - rings, { decimals: 2, unit: "°" });
      }
      const left = own[at + 1 + cuts.length + parts.length];
      expect(left?.trim().startsWith("Left whole") ?? false).toBe(rest.length > 0);
    }
    expect(all.flatMap(({ parts }) => parts.map(({ name }) => name)).sort()).toEqual(
      plan.wood.parts.map(({ name }) => name).sort(),
    );
  });
});

test("boards of one entry are numbered where there are several, and each is priced by itself", () => {
  const [one, two] = boardPlan({
    ...designWith(WORKED),
    boards: [entry("pair", 300, 75, 60, { count: 2 })],
  } as Design)!.boards;
  expect([one!.name, two!.name]).toEqual(["pair 1", "pair 2"]);
  expect(boardPlan({ ...designWith(WORKED), boards: [entry("lone", 300, 100, 70)] } as Design)!.boards[0]!.name).toBe(
    "lone",
  );
  expect(boardPlan(designWith(WORKED))).toBeUndefined();
  expect(boardsText(designWith(WORKED))).toBeUndefined();
});

test("a board too narrow says by how much, and one too small all round that it is", () => {
  const design = {
    ...designWith(WORKED),
    boards: [entry("narrow", 700, 60, 62), entry("offcut", 60, 20, 20)],
  } as Design;
  const plan = boardPlan(design)!;
  const { text, comesOut } = boardsText(design)!;
  expect(comesOut).toBe(false);
  const lines = text.split("\n").map((line) => line.trim());
  expect(lines[1]).toBe(BOARDS.noFit);
  for (const [i, { name }] of plan.boards.entries()) {
    const short = plan.missing.find(({ board }) => board === i);
    const line = lines[2 + i]!;
    if (!short) expect(line).toBe(BOARDS.tooFar({ name }));
    else expectLength(partsOf(BOARDS.missing, ["by"], line, { name, side: short.side })!.by, short.by, "mm");
  }
  expect(plan.missing.map(({ board }) => board)).not.toContain(1);
});
