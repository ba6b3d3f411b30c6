// Bodies out of boards: every cut right through, exact against every layout on a grid, and judged by an outside polygon library.
import { uniformGenerator } from "@lamplane/geometry/numerics";
import { describe, expect, test } from "vitest";
import { type Board, type Knot, overlap, wholeBoard } from "../../../packages/bench/src/boards/board.ts";
import { layOutClass } from "../../../packages/bench/src/boards/class-boards.ts";
import { cutParts } from "../../../packages/bench/src/boards/cutting.ts";
import { type BodyWood, layOutBody } from "../../../packages/bench/src/boards/plane-boards.ts";
import type { Lay, SawnPart } from "../../../packages/bench/src/boards/sawing.ts";
import { board, EveryCut, shared, troubles } from "../../support/boards.ts";

const PARTS = ["left cheek", "core", "right cheek"];
const body = (length: number, height: number, core: number, cheek: number): readonly SawnPart[] =>
  PARTS.map((name) => ({ name, length, height, thickness: name === "core" ? core : cheek }));
const ONE = { kerf: 1, pass: 0, milling: 0 };

const LAYS: readonly (readonly Lay[])[] = [["ripped"], ["resawn"], ["ripped", "resawn"]];

test("500 small boards with knots: parts come out exactly where some cuts at whole places bring them out", () => {
  const uniform = uniformGenerator(5);
  const whole = (least: number, most: number) => least + Math.floor(uniform() * (most - least + 1));
  const counts = { yes: 0, no: 0, onlyTurned: 0 };
  for (let k = 0; k < 500; k++) {
    const [length, width, thickness] = [whole(3, 9), whole(2, 7), whole(2, 4)];
    const knots = Array.from({ length: whole(0, 2) }, (): Knot => {
      const [from, across] = [whole(0, length - 1), whole(0, width - 1)];
      const spot = { from: across, to: Math.min(width, across + whole(1, 2)) };
      return { from, to: Math.min(length, from + whole(1, 2)), ...(uniform() < 0.8 ? { across: spot } : {}) };
    });
    const from = board(length, width, thickness, { knots });
    const parts = body(whole(2, 4), whole(1, 3), whole(1, 3), 1);
    const found = LAYS.map((lays) => {
      const theirs = new EveryCut(parts, from, lays).comesOut(7, [0, length, 0, width, 0, thickness]);
      const ours = cutParts(parts, wholeBoard(from, 0), from, ONE, lays);
      expect(ours !== undefined, JSON.stringify({ from, parts, lays })).toBe(theirs);
      if (ours) expect(troubles([{ ...ours, slab: wholeBoard(from, 0) }], [from], parts, ONE.kerf)).toEqual([]);
      return theirs;
    });
    counts[found[2] ? "yes" : "no"] += 1;
    if (found[2] && !found[0] && !found[1]) counts.onlyTurned += 1;
  }
  expect(Math.min(counts.yes, counts.no)).toBeGreaterThan(100);
  expect(counts.onlyTurned).toBeGreaterThan(3);
});

const SAW = { kerf: 3.2, pass: 0.8, milling: 1.5 };
const wood = (core: number, length = 255.4): BodyWood => ({
  parts: body(length, 64, core + 3, 11),
  saw: SAW,
  species: "hard maple",
});
const NEEDED = 2 * 11 + 53 + 2 * 3.2 + 4 * 0.8;

describe("the ways, in the order of how well the grain runs on", () => {
  const wayOf = (...boards: Board[]) => layOutBody(wood(50), boards, boards.map(wholeBoard))?.way;
  test("one billet ripped, just wide enough, as it lies or on its side", () => {
    expect(wayOf(board(256, NEEDED, 64))).toBe("one-billet");
    expect(wayOf(board(256, 64, NEEDED))).toBe("one-billet");
    expect(wayOf(board(256, NEEDED - 0.01, 64))).toBeUndefined();
    expect(wayOf(board(256, NEEDED, 63.99))).toBeUndefined();
  });
  test("cheeks from the end of the same board: 24 × 3 1/8 × 2 1/2 in, which is 1/16 in too narrow to be ripped in one piece", () => {
    const inch = 25.4;
    const plane: BodyWood = {
      parts: body(10 * inch, 2.5 * inch, 2 * inch + 3, 8 + 3),
      saw: { kerf: inch / 8, pass: 0.8, milling: 1.5 },
      species: "hard maple",
    };
    const boards = [board(24 * inch, 3.125 * inch, 2.5 * inch)];
    const found = layOutBody(plane, boards, boards.map(wholeBoard))!;
    expect(found.way).toBe("end-of-the-board");
    expect(troubles(found.cuttings, boards, plane.parts, plane.saw.kerf)).toEqual([]);
  });
  test("resawn from the face of a thick board, then from several boards", () => {
    expect(wayOf(board(256, 69, 80))).toBe("resawn");
    expect(wayOf(board(256, 54, 64), board(256, 64, 12), board(256, 64, 12))).toBe("several-boards");
    expect(wayOf(board(256, 54, 64), board(256, 64, 12))).toBeUndefined();
  });
  test("a surfaced board needs no milling on the faces that it keeps", () => {
    expect(wayOf(board(256, NEEDED - 3, 61, { surfaced: true }))).toBe("one-billet");
    expect(wayOf(board(256, NEEDED - 3, 61))).toBeUndefined();
  });
  test("of two boards the cheaper, and none of another wood", () => {
    const boards = [
      board(300, 90, 70, { price: 20 }),
      board(300, 90, 70, { price: 12 }),
      board(300, 90, 70, { species: "ash, white", price: 1 }),
    ];
    const found = layOutBody(wood(50), boards, boards.map(wholeBoard))!;
    expect(found.cuttings.map(({ slab }) => slab.board)).toEqual([1]);
    expect(found.price).toBe(12);
  });
});

test("200 crooked boards: what is placed lies on its board, clear of knots and of each other, and no cut goes through a part", () => {
  const uniform = uniformGenerator(7);
  const between = (least: number, most: number) => least + uniform() * (most - least);
  const ways = new Set<string>();
  let placed = 0;
  for (let k = 0; k < 200; k++) {
    const boards = Array.from({ length: 2 }, () => {
      const [length, width] = [between(250, 900), between(60, 180)];
      const knots = Array.from({ length: Math.floor(between(0, 4)) }, (): Knot => {
        const [from, across] = [between(0, length - 10), between(0, width - 5)];
        return {
          from,
          to: Math.min(length, from + between(5, 60)),
          across: { from: across, to: Math.min(width, across + between(5, 40)) },
        };
      });
      return board(length, width, between(30, 75), { knots, surfaced: uniform() < 0.3 });
    });
    const own = wood(between(40, 56));
    const found = layOutBody(own, boards, boards.map(wholeBoard));
    if (!found) continue;
    placed += 1;
    ways.add(found.way);
    expect(troubles(found.cuttings, boards, own.parts, SAW.kerf), JSON.stringify(boards)).toEqual([]);
  }
  expect(placed).toBeGreaterThan(60);
  expect(ways.size).toBeGreaterThan(2);
});

test("a class of twelve from three boards: all are placed, nothing overlaps, and the bound by volume is kept", () => {
  const boards = [
    board(1400, 190, 66, { price: 80 }),
    board(1300, 180, 66, { price: 70 }),
    board(900, 95, 70, { price: 40, knots: [{ from: 300, to: 360 }] }),
  ];
  const woods = [52.2, 52.2, 49.6, 52.2, 49.6, 52.2, 49.6, 52.2, 46, 52.2, 46, 49.6].map((core) => wood(core));
  const found = layOutClass(woods, boards);
  expect(found.bodies.every((each) => each !== undefined)).toBe(true);
  const cuttings = found.bodies.flatMap((each) => each!.cuttings);
  for (const body of found.bodies)
    expect(
      troubles(
        body!.cuttings,
        boards,
        woods[0]!.parts.map((part) => ({ ...part, thickness: 0 })),
        SAW.kerf,
      ),
    ).toEqual([]);
  const all = cuttings.flatMap(({ placed, slab }) => placed.map((each) => ({ ...each, board: slab.board })));
  all.forEach((a, i) => {
    for (const b of all.slice(i + 1)) if (a.board === b.board) expect(shared(a.box, b.box)).toBeLessThan(1e-3);
  });
  for (const { cuts, slab } of cuttings)
    for (const { axis, kerf, piece } of cuts)
      for (const each of all)
        if (each.board === slab.board) expect(overlap(each.box, { ...piece, [axis]: kerf })).toBe(false);
  expect(found.price).toBeGreaterThanOrEqual(found.leastPrice);
  expect(found.partsVolume / found.usedVolume).toBeGreaterThan(0.4);
  expect(found.mostPlanes).toBe(12);
});
