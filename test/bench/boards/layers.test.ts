// A core in layers out of thin boards, and parts out of several: against every cut at whole places, and an outside polygon library.
import { readFileSync } from "node:fs";
import { asBuiltPlane } from "@lamplane/bench";
import { bodyWood, layOutBody } from "@lamplane/bench/boards";
import { uniformGenerator } from "@lamplane/geometry/numerics";
import { readDesign } from "@lamplane/parameters/design";
import { expect, test } from "vitest";
import { type Board, type Knot, type Slab, wholeBoard } from "../../../packages/bench/src/boards/board.ts";
import { cutParts } from "../../../packages/bench/src/boards/cutting.ts";
import type { SawnPart } from "../../../packages/bench/src/boards/sawing.ts";
import { board, EveryCut, troubles } from "../../support/boards.ts";

const ONE = { kerf: 1, pass: 0, milling: 0 };
const BOTH = ["ripped", "resawn"] as const;

function smallParts(whole: (least: number, most: number) => number): SawnPart[] {
  const [length, height] = [whole(2, 3), whole(2, 3)];
  const [outer, middle] = [whole(1, 2), whole(1, 2)];
  const thicknesses = [1, outer, ...(whole(0, 1) ? [middle] : []), outer, 1];
  return thicknesses.map((thickness, i) => ({ name: `${i}`, length, height, thickness }));
}

function smallBoard(whole: (least: number, most: number) => number, longest: number, knots: number): Board {
  const [length, width, thickness] = [whole(3, longest), whole(2, 8), whole(1, 3)];
  return board(length, width, thickness, {
    knots: Array.from({ length: whole(0, knots) }, (): Knot => {
      const [from, across] = [whole(0, length - 1), whole(0, width - 1)];
      return { from, to: from + 1, across: { from: across, to: across + 1 } };
    }),
  });
}

const wholeNumbers = (seed: number) => {
  const uniform = uniformGenerator(seed);
  return (least: number, most: number) => least + Math.floor(uniform() * (most - least + 1));
};

test("100 thin boards: four and five strips come out exactly where some cuts at whole places bring them out", () => {
  const whole = wholeNumbers(11);
  const counts = { yes: 0, no: 0 };
  for (let k = 0; k < 100; k++) {
    const [from, parts] = [smallBoard(whole, 11, 1), smallParts(whole)];
    const every = new EveryCut(parts, from, BOTH);
    const theirs = every.comesOut(2 ** parts.length - 1, [0, from.length, 0, from.width, 0, from.thickness]);
    const ours = cutParts(parts, wholeBoard(from, 0), from, ONE, BOTH);
    expect(ours !== undefined, JSON.stringify({ from, parts })).toBe(theirs);
    if (ours) expect(troubles([{ ...ours, slab: wholeBoard(from, 0) }], [from], parts, ONE.kerf)).toEqual([]);
    counts[theirs ? "yes" : "no"] += 1;
  }
  expect(Math.min(counts.yes, counts.no)).toBeGreaterThan(20);
});

/** The least price of the fewest boards that the parts come out of, by every way to share the parts among what is whole of them. */
function fewestBoards(
  parts: readonly SawnPart[],
  boards: readonly Board[],
  slabs: readonly Slab[],
): { count: number; price: number } | undefined {
  const every = boards.map((from) => new EveryCut(parts, from, BOTH));
  let best: { count: number; price: number } | undefined;
  for (let share = 0; share < slabs.length ** parts.length; share++) {
    const masks = slabs.map((_, s) =>
      parts.reduce(
        (mask, __, i) => mask | (Math.floor(share / slabs.length ** i) % slabs.length === s ? 1 << i : 0),
        0,
      ),
    );
    const used = [...new Set(slabs.flatMap(({ board: from }, s) => (masks[s]! > 0 ? [from] : [])))];
    const [count, price] = [used.length, used.reduce((sum, from) => sum + boards[from]!.price, 0)];
    if (best && (count > best.count || (count === best.count && price >= best.price))) continue;
    const comesOut = slabs.every(
      ({ board: from, box: { x, y, z } }, s) =>
        masks[s] === 0 || every[from]!.comesOut(masks[s]!, [x.from, x.to, y.from, y.to, z.from, z.to]),
    );
    if (comesOut) best = { count, price };
  }
  return best;
}

/** A board of which a crosscut has left two stretches. */
function stretches({ board: from, box }: Slab): Slab[] {
  const at = Math.floor(box.x.to / 2);
  return [
    { from: 0, to: at },
    { from: at + 1, to: box.x.to },
  ].map((x) => ({ board: from, box: { ...box, x } }));
}

test("40 times two small boards, one of them in two stretches: as few boards, and as cheap, as any sharing of the strips needs", () => {
  const whole = wholeNumbers(3);
  const counts = new Map<number | undefined, number>();
  let ofStretches = 0;
  for (let k = 0; k < 40; k++) {
    const parts = smallParts(whole);
    const boards = Array.from({ length: 2 }, () => ({ ...smallBoard(whole, 8, 0), price: whole(1, 5) }));
    const slabs = [wholeBoard(boards[0]!, 0), ...stretches(wholeBoard(boards[1]!, 1))];
    const theirs = fewestBoards(parts, boards, slabs);
    const ours = layOutBody({ parts, saw: ONE, species: "ash, white" }, boards, slabs);
    const used = [...new Set(ours?.cuttings.map(({ slab }) => slab.board))];
    // Of one stretch, how well the grain runs on goes before its price.
    const price = ours?.cuttings.length === 1 ? theirs?.price : ours?.price;
    expect(ours && { count: used.length, price }, JSON.stringify({ parts, boards })).toEqual(theirs);
    if (ours) {
      expect(troubles(ours.cuttings, boards, parts, ONE.kerf)).toEqual([]);
      const placed = ours.cuttings.flatMap((cutting) => cutting.placed.map(({ part }) => part));
      expect(placed.toSorted()).toEqual(parts.map((_, i) => i));
      if (used.length === 1 && ours.cuttings.length === 2) ofStretches += 1;
    }
    counts.set(theirs?.count, (counts.get(theirs?.count) ?? 0) + 1);
  }
  for (const count of [undefined, 1, 2]) expect(counts.get(count) ?? 0, `${count} boards`).toBeGreaterThan(2);
  expect(ofStretches).toBeGreaterThan(0);
});

const LAYERED = readFileSync("examples/layered-smoother.yaml", "utf8");
const woodOf = (text: string) => {
  const read = readDesign(text, "");
  if (!read.ok) throw new Error("the example has faults");
  return bodyWood(asBuiltPlane(read.design));
};

test("the layered example from thin boards: strips of 17 mm need 17 mm and a pass off each face, or 17 mm surfaced", () => {
  const wood = woodOf(LAYERED);
  const names = ["left cheek", "layer 3", "layer 2", "layer 1", "right cheek"];
  expect(wood.parts.map(({ name }) => name)).toEqual(names);
  const wayOf = (...boards: Board[]) => {
    const found = layOutBody(wood, boards, boards.map(wholeBoard));
    if (found) expect(troubles(found.cuttings, boards, wood.parts, wood.saw.kerf, wood.saw.milling)).toEqual([]);
    return found?.way;
  };
  // Five strips of 246 mm and four kerfs of 1.2 mm: 1234.8 mm end to end.
  const thin = (length: number, thickness: number, more = {}) => board(length, 68, thickness, more);
  expect(wayOf(thin(1234.8, 17 + 2 * 0.8))).toBe("end-of-the-board");
  expect(wayOf(thin(1234.7, 17 + 2 * 0.8))).toBeUndefined();
  expect(wayOf(thin(1234.8, 17 + 2 * 0.8 - 0.01))).toBeUndefined();
  expect(wayOf(thin(1234.8, 17, { surfaced: true }))).toBe("end-of-the-board");
  expect(wayOf(thin(1234.8, 16.99, { surfaced: true }))).toBeUndefined();
  expect(wayOf(thin(740.4, 20), thin(500, 20))).toBe("several-boards");
  expect(wayOf(board(300, 90, 66))).toBe("one-billet");
  expect(woodOf(LAYERED.replace("[16.4, 17, 16.4]", "auto")).parts.length).toBeGreaterThan(4);
});
