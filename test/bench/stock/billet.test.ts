// The billet and its saw lines: a set worked by hand, and laws over random designs.
import { asBuiltStockPlan, sticksFromBoards, stockPlan } from "@lamplane/bench";
import { elevation, FIGURES, figureValue } from "@lamplane/parameters/elevation";
import { describe, expect, test } from "vitest";
import { type Changes, designWith, randomDesigns, WORKED } from "../../support/designs.ts";

const planOf = (changes: Changes) => stockPlan(elevation(designWith({ ...WORKED, ...changes })));

/**
 * By hand: iron 48, side clearance 1.6, cheeks 8, milling 1.5 a face, kerf 3.2, pass 0.8, so core 49.6, rough 52.6, rough cheek 11.
 * Left cheek 11 + 0.8 = 11.8; kerf to 15; core 52.6 + 1.6 = 54.2, to 69.2; kerf to 72.4; right cheek 11.8, to 84.2.
 */
describe("worked by hand", () => {
  test("saw lines from the reference face, and what the fence is set to from the face jointed last", () => {
    const { rip } = planOf({});
    expect(rip.needed).toBeCloseTo(84.2, 9);
    expect(rip.byRule).toBeCloseTo(48 + 38.1, 9);
    const spans = rip.sawLines.flatMap(({ kerf }) => [kerf.from, kerf.to]);
    for (const [i, at] of [11.8, 15, 69.2, 72.4].entries()) expect(spans[i]).toBeCloseTo(at, 9);
    expect(rip.sawLines.map(({ frees }) => frees)).toEqual(["left cheek", "core"]);
    // Jointing the reference face takes 0.8 of its milling allowance; jointing the fresh face takes its pass.
    for (const [i, fence] of [11, 53.4].entries()) expect(rip.sawLines[i]!.fence).toBeCloseTo(fence, 9);
  });

  test("a billet 300 x 90 x 70: what is left over, in sizes and as boards", () => {
    const { billet, rip } = planOf({ "billet.length": 300, "billet.width": 90, "billet.height": 70 });
    // Needed 230 + 25.4 = 255.4, 84.2, 58 + 3 + 3 = 64.
    expect(billet).toMatchObject({ fits: true, lay: "as measured", rings: 20, planes: { total: 1 } });
    expect(billet.spare.length).toBeCloseTo(44.6, 9);
    expect(billet.spare.width).toBeCloseTo(5.8, 9);
    expect(billet.spare.height).toBeCloseTo(6, 9);
    // The end 44.6 - 3.2 = 41.4 long; the top 2.8 thick and the side 2.6 thick are splinters.
    expect(billet.boards.map(({ from }) => from)).toEqual(["end"]);
    expect(billet.boards[0]).toMatchObject({ length: expect.closeTo(41.4, 9), width: 90, thickness: 70 });
    expect(rip.sawLines).toHaveLength(3);
    expect(rip.board).toBeCloseTo(2.6, 9);
  });

  test("a billet 260 x 66 x 90 fits on its side only, and that turns the rings", () => {
    const { billet } = planOf({ "billet.length": 260, "billet.width": 66, "billet.height": 90 });
    expect(billet).toMatchObject({ fits: true, lay: "on its side", rings: 70, lies: { width: 90, height: 66 } });
    const grain = planOf({ "billet.length": 260, "billet.width": 66, "billet.height": 90 }).list.rows[0]!.grain;
    expect(grain).toContain("70°");
  });

  test("two planes along a billet need two blanks and a kerf: 514 holds them, 513.9 does not", () => {
    const along = (length: number) => planOf({ "billet.length": length }).billet.planes.along;
    expect([along(514), along(513.9)]).toEqual([2, 1]);
    // Two across: 84.2 · 2 + 3.2 + two passes of 0.8 = 173.2.
    const across = (width: number) => planOf({ "billet.width": width }).billet.planes.across;
    expect([across(173.21), across(173.1)]).toEqual([2, 1]);
  });

  test("a billet that is too small says by how much; without any size nothing is judged", () => {
    const { billet } = planOf({ "billet.length": 250, "billet.width": 84, "billet.height": 60 });
    expect(billet).toMatchObject({ fits: false, boards: [], planes: { total: 0 } });
    expect(billet.short).toEqual({
      length: expect.closeTo(5.4, 9),
      width: expect.closeTo(0.2, 9),
      height: expect.closeTo(4, 9),
    });
    expect(planOf({}).billet).toMatchObject({ fits: undefined, boards: [] });
    expect(planOf({ "billet.height": 60 }).billet).toMatchObject({ fits: false, lay: "as measured" });
  });

  test("a kerf less than what is left beside the second cheek means a third cut; otherwise it stays on the cheek", () => {
    expect(planOf({ "billet.width": 87.3 }).rip).toMatchObject({ sawLines: { length: 2 }, board: 0 });
    expect(planOf({ "billet.width": 87.5 }).rip.sawLines).toHaveLength(3);
  });

  test("sticks out of a board: twelve pegs and no thirteenth, and what is taken is gone", () => {
    const board = { from: "side", length: 150, width: 35, thickness: 22 } as const;
    const pegs = (count: number) => ({ piece: "peg", count, length: 70, width: 9, thickness: 9 });
    // Side by side 3 · 9 + 2 · 3 = 33 of 35, one above the other 2 · 9 + 3 = 21 of 22, end to end 2 · 70 + 3 = 143 of 150.
    expect(sticksFromBoards([pegs(13)], [board], 3)[0]).toMatchObject({ wanted: 13, count: 12 });
    const [first, second] = sticksFromBoards([pegs(12), pegs(1)], [board], 3);
    expect(first).toEqual({ piece: "peg", wanted: 12, count: 12, boards: ["side"] });
    expect(second).toEqual({ piece: "peg", wanted: 1, count: 0, boards: [] });
    const outOf = (smaller: object) => sticksFromBoards([pegs(13)], [{ ...board, ...smaller }], 3)[0]!.count;
    // A hair less than a side needs, and one row of it is lost: every kerf counts.
    expect([outOf({ length: 142.9 }), outOf({ width: 32.9 }), outOf({ thickness: 20.9 })]).toEqual([6, 8, 6]);
    const one = (changes: object) => sticksFromBoards([{ ...pegs(1), ...changes }], [board], 3)[0]!.count;
    expect([one({ length: 150 }), one({ length: 151 })]).toEqual([1, 0]);
    expect([one({ width: 35, thickness: 22 }), one({ width: 36 }), one({ thickness: 23, width: 23 })]).toEqual([
      1, 0, 0,
    ]);
  });
});

describe("over random designs", () => {
  const cases = randomDesigns(17, 120).map(({ design }, i) => {
    const bare = elevation(design);
    const { length, width, height } = stockPlan(bare).billet.needed;
    const more = [0, 0.4, 5, 40, 2.4 * width][i % 5]!;
    const plane = elevation({
      ...design,
      billet: { length: length + more, width: width + more, height: height + more },
    });
    return { plane, plan: stockPlan(plane), more };
  });

  test("strips, kerfs and what is left add up to the billet, without a gap or an overlap", () => {
    for (const { plane, plan, more } of cases) {
      const { strips, sawLines, spare, board } = plan.rip;
      const { kerf } = plane.design.shop;
      const sum = strips.reduce((total, { sawn }) => total + sawn, 0) + kerf * 2 + spare;
      expect(sum).toBeCloseTo(plan.billet.lies.width, 9);
      expect(spare).toBeCloseTo(more, 9);
      const spans = [...strips.map(({ at }) => at), ...sawLines.map((line) => line.kerf)].sort(
        (a, b) => a.from - b.from,
      );
      for (const [i, { from }] of spans.entries()) expect(from).toBeCloseTo(i === 0 ? 0 : spans[i - 1]!.to, 9);
      const end = spans.at(-1)!.to + (sawLines.length === 3 ? board : spare);
      expect(end).toBeCloseTo(plan.billet.lies.width, 9);
    }
  });

  test("following the fence settings at the bench gives the strips their rough widths", () => {
    for (const { plane, plan } of cases) {
      const { jointingPass: pass, kerf } = plane.design.shop;
      // At the bench: joint the reference face, then saw by the fence and joint what is left, again and again.
      let left = plan.billet.lies.width - plan.rip.referencePass;
      let freed = plan.rip.sawLines.map(({ fence }) => {
        left -= fence + kerf + pass;
        return fence;
      });
      if (plan.rip.sawLines.length === 2) freed = [...freed, left];
      const [cheek, core, second] = freed;
      // One face of each is still as sawn, so that a pass is still to come; the reference's pass is milling already done.
      expect(cheek! - pass + plan.rip.referencePass).toBeCloseTo(plane.widths.roughCheek, 9);
      expect(core! - pass).toBeCloseTo(plane.widths.roughCore, 9);
      expect(second!).toBeCloseTo(plane.widths.roughCheek + (plan.rip.sawLines.length === 2 ? plan.rip.spare : 0), 9);
    }
  });

  test("a billet as large as needed fits, a hair less does not, and planes never need more than there is", () => {
    for (const { plane, plan } of cases) {
      expect(plan.billet.fits).toBe(true);
      const { needed, planes } = plan.billet;
      const { kerf, jointingPass } = plane.design.shop;
      const taken = planes.across * needed.width + (planes.across - 1) * (kerf + 2 * jointingPass);
      expect(taken).toBeLessThanOrEqual(plan.billet.lies.width + 1e-9);
      const narrow = { ...plane.design.billet, width: needed.width - 0.01, height: 0 };
      expect(stockPlan(elevation({ ...plane.design, billet: narrow })).billet.fits).toBe(false);
    }
  });

  test("boards with the plane and the kerfs never hold more wood than the billet", () => {
    let some = 0;
    for (const { plan } of cases) {
      const volume = ({ length, width, height }: { length: number; width: number; height: number }) =>
        length * width * height;
      const boards = plan.billet.boards.reduce((sum, b) => sum + b.length * b.width * b.thickness, 0);
      expect(boards + volume(plan.billet.needed)).toBeLessThanOrEqual(volume(plan.billet.lies) + 1e-6);
      if (boards > 0) some++;
    }
    expect(some).toBeGreaterThan(30);
  });

  test("the list's sizes are the figures, and the blocks and the room between the marks are as long as the blank", () => {
    for (const { plane, plan } of cases) {
      const row = (piece: string) => plan.list.rows.find((r) => r.piece === piece)!;
      const [front, bed, cheek, wedge] = [row("front block"), row("bed block"), row("cheek"), row("wedge")];
      const sum = front.rough.length + bed.rough.length + plan.core.roomBetweenMarks;
      expect(sum).toBeCloseTo(figureValue(plane, "blankLength")!, 9);
      expect([cheek.rough.thickness, cheek.finished.thickness]).toEqual([
        figureValue(plane, "roughCheek"),
        plane.widths.cheek,
      ]);
      expect(Object.values(front.rough)).toContain(figureValue(plane, "fenceCore"));
      expect(wedge.finished.length).toBe(FIGURES.wedgeLength.of(plane));
      for (const { rough, finished, count } of plan.list.rows) {
        expect(count).toBeGreaterThan(0);
        // A blank without room to slide the blocks together is too short; the checks say so, and so do these figures.
        const tooShort = plan.core.setInToe > plane.design.body.trim / 2;
        for (const side of tooShort ? (["width", "thickness"] as const) : (["length", "width", "thickness"] as const))
          expect(rough[side]).toBeGreaterThanOrEqual(finished[side] - 1e-9);
        expect(finished.width).toBeGreaterThanOrEqual(finished.thickness);
      }
    }
  });
});

describe("where the wood comes from", () => {
  const from = (changes: Changes) => Object.fromEntries(planOf(changes).list.rows.map((row) => [row.piece, row.from]));
  const long = { "billet.length": 400, "billet.width": 90, "billet.height": 70 };

  test("the wedge out of the offcut where it goes in, otherwise out of what the billet leaves, otherwise apart", () => {
    expect(from({ "wedge.length": 60 }).wedge).toBe("throat offcut");
    expect(from(long).wedge).toBe("billet's leftovers");
    expect(from({}).wedge).toBe("separate");
    expect(planOf({ "wedge.length": 60 }).list.rows.find((row) => row.piece === "wedge")!.rough.width).toBe(49.6);
  });

  test("another wood comes from elsewhere; the same wood under another spelling does not", () => {
    expect(from({ ...long, "wood.pin": "maple, sugar" })).toMatchObject({
      "cross pin": "separate",
      peg: "billet's leftovers",
    });
    expect(from({ ...long, "wood.pin": "American beech" })["cross pin"]).toBe("billet's leftovers");
    expect(from({ "wedge.length": 60, "wood.wedge": "maple, sugar" }).wedge).toBe("separate");
  });

  test("the offcut yields the pin only where the wedge leaves it", () => {
    const narrow = { "iron.width": 30, "wedge.length": 60 };
    expect(planOf(narrow).offcut).toMatchObject({ pin: { fits: true }, wedge: { fits: true } });
    expect(from(narrow)).toMatchObject({ wedge: "throat offcut", "cross pin": "separate" });
    expect(from({ ...narrow, "wedge.length": 200 })).toMatchObject({ wedge: "separate", "cross pin": "throat offcut" });
  });

  test("a pin thicker than a narrow core is wide does not come out of the offcut, long enough though it is", () => {
    const { pin } = planOf({ "iron.width": 12 }).offcut;
    expect(pin).toMatchObject({ acrossFits: false, fits: false, tooLongBy: 0 });
    expect(planOf({ "iron.width": 15 }).offcut.pin).toMatchObject({ acrossFits: true, fits: true });
  });

  test("a second cross pin is counted last, from what is then left", () => {
    const { leftovers } = planOf(long).list;
    expect(leftovers.map(({ piece }) => piece)).toEqual(["wedge", "cross pin", "peg", "second cross pin"]);
    expect(leftovers.every(({ count, wanted }) => count <= wanted)).toBe(true);
    expect(planOf({ "pegs.perEnd": 0 }).list.rows.map(({ piece }) => piece)).not.toContain("peg");
  });
});

test("a plane under way keeps the cuts that it was sawn by; the wedge follows its hole", () => {
  const planned = planOf({});
  const done = designWith({
    ...WORKED,
    "measured.coreWidth": 49,
    "measured.bedAngle": 46,
    "measured.pinHoleFromEnd": 12.7 + 91.4,
    "measured.pinHoleHeight": 39,
    "measured.bedTipFromEnd": 12.7 + 79.6,
    "measured.mouthSeen": 0.15,
  });
  const now = asBuiltStockPlan(done);
  expect([now.billet, now.rip]).toEqual([planned.billet, planned.rip]);
  expect(now.core.cuts).toEqual(planned.core.cuts);
  expect(now.marks.marks).toEqual(planned.marks.marks);
  const wedge = ({ list }: typeof now) => list.rows.find(({ piece }) => piece === "wedge")!.finished.thickness;
  expect(wedge(now)).toBeGreaterThan(wedge(planned) + 0.5);
  expect(asBuiltStockPlan(designWith(WORKED))).toEqual(planned);
});
