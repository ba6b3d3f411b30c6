// How far from best a class's layout can be: the bound is never beaten, and is tight where it can be worked by hand.
import { readFileSync } from "node:fs";
import { asBuiltPlane } from "@lamplane/bench";
import { boardsAtHand, bodyWood, layOutClass } from "@lamplane/bench/boards";
import { uniformGenerator } from "@lamplane/geometry/numerics";
import { readDesign } from "@lamplane/parameters/design";
import { decodeRoster, decodeRosterBoards, parseRoster, rosterDesign } from "@lamplane/parameters/roster";
import { expect, test } from "vitest";
import type { Board, Knot } from "../../../packages/bench/src/boards/board.ts";
import { classBound } from "../../../packages/bench/src/boards/class-bound.ts";
import type { BodyWood } from "../../../packages/bench/src/boards/plane-boards.ts";
import { board } from "../../support/boards.ts";

const SAW = { kerf: 3.2, pass: 0.8, milling: 1.5 };
const wood = (core: number, length = 255.4): BodyWood => ({
  parts: ["left cheek", "core", "right cheek"].map((name) => ({
    name,
    length,
    height: 64,
    thickness: name === "core" ? core + 3 : 11,
  })),
  saw: SAW,
  species: "hard maple",
});

test("a school's roster of twelve: no boards for all of them cost less than those that are used", () => {
  const [rosterText, baseText] = ["roster", "smoother"].map((name) =>
    readFileSync(`examples/class/school-${name}.yaml`, "utf8"),
  ) as [string, string];
  const base = readDesign(baseText, "");
  const read = parseRoster(rosterText, "school-roster.yaml");
  if (!base.ok || !read.ok) throw new Error("the example has faults");
  const boards = decodeRosterBoards(read.roster, "mm");
  if ("faults" in boards) throw new Error("the example's boards have faults");
  const woods = decodeRoster(read.roster, "mm").map((row) => bodyWood(asBuiltPlane(rosterDesign(row, base.design))));
  const { price, leastPrice, mostPlanes, bodies } = layOutClass(woods, boardsAtHand(boards.boards));
  expect(bodies).not.toContain(undefined);
  expect({ price, leastPrice, mostPlanes }).toEqual({ price: 70, leastPrice: 70, mostPlanes: 12 });
});

test("boards that hold so many bodies and no more, worked by hand", () => {
  // A body ripped: 2 × 11 + 53 and four passes more than the faces that the board has: 84.6 mm with its kerfs; 255.4 mm long.
  const bodyWidth = 2 * 11 + 53 + 4 * SAW.pass + 2 * SAW.kerf;
  const woods = Array.from({ length: 9 }, () => wood(50));
  const most = (...boards: Board[]) => classBound(woods, boards).mostPlanes;
  const high = 64; // no room to resaw
  expect(most(board(255.4, bodyWidth, high))).toBe(1);
  expect(most(board(255.3, bodyWidth, high))).toBe(0);
  expect(most(board(2 * 255.4 + SAW.kerf, bodyWidth, high))).toBe(2);
  expect(most(board(2 * 255.4 + SAW.kerf + 30, bodyWidth, high, { knots: [{ from: 250, to: 280 }] }))).toBe(1);
  // Cores alone: two of 53 mm side by side need 109.4 mm, though by its volume a board of 105 × 90 mm has room for two bodies.
  expect(most(board(255.4, 105, 90))).toBe(1);
  const priced = [40, 25, 30].map((price) => board(255.4, bodyWidth, high, { price }));
  const { leastPrice } = classBound(woods, priced);
  expect([0, 1, 2, 3].map(leastPrice)).toEqual([0, 25, 55, 95]);
  expect(classBound(woods, [board(255.4, bodyWidth, high, { species: "ash, white" })]).mostPlanes).toBe(0);
});

test("40 random classes: no layout places more planes than the bound, or costs less", () => {
  const uniform = uniformGenerator(17);
  const between = (least: number, most: number) => least + uniform() * (most - least);
  let [tight, gap] = [0, 0];
  for (let k = 0; k < 40; k++) {
    const woods = Array.from({ length: Math.floor(between(2, 7)) }, () => wood(between(40, 56), between(230, 270)));
    const boards = Array.from({ length: 3 }, () => {
      const [length, width] = [between(260, 900), between(60, 200)];
      const knots = Array.from({ length: Math.floor(between(0, 3)) }, (): Knot => {
        const from = between(0, length - 10);
        const across = between(0, width - 5);
        const to = Math.min(length, from + between(5, 60));
        return uniform() < 0.3
          ? { from, to }
          : { from, to, across: { from: across, to: Math.min(width, across + between(5, 40)) } };
      });
      const price = Math.round(between(0, 40));
      return board(length, width, between(30, 90), { knots, price, surfaced: uniform() < 0.3 });
    });
    const found = layOutClass(woods, boards, 6);
    const placed = found.bodies.filter((each) => each !== undefined).length;
    expect(found.mostPlanes, JSON.stringify({ woods, boards })).toBeGreaterThanOrEqual(placed);
    expect(found.leastPrice).toBeLessThanOrEqual(found.price + 1e-9);
    if (found.mostPlanes === placed && found.leastPrice >= found.price - 1e-9) tight += 1;
    gap += found.mostPlanes - placed;
  }
  expect(tight).toBeGreaterThan(8);
  expect(gap / 40).toBeLessThan(0.7);
});

test("more priced boards than every choice can be tried of: still a bound", () => {
  const woods = Array.from({ length: 8 }, () => wood(50));
  const boards = Array.from({ length: 16 }, (_, i) => board(260, 86, 66, { price: 10 + i }));
  const found = layOutClass(woods, boards, 2);
  expect(found.bodies).not.toContain(undefined);
  expect(found.price).toBe(8 * 10 + 28);
  expect(found.leastPrice).toBeLessThanOrEqual(found.price);
  expect(found.leastPrice).toBeGreaterThan(0.85 * found.price);
});
