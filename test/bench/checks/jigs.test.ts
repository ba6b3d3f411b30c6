// Checks of the jigs: whether the maker's printer holds each, and a word on each that this plane cannot have. They stop nothing.
import { checkPlane, checkWithoutCures, mayBeBuilt, passedChecks } from "@lamplane/bench/checks";
import { withValue } from "@lamplane/parameters/design";
import { elevation } from "@lamplane/parameters/elevation";
import { expect, test } from "vitest";
import { jigPlans, omittedJigs, printedSize } from "../../../packages/parameters/src/jigs/jigs.ts";
import { type Changes, designWith, randomDesigns } from "../../support/designs.ts";

const planeWith = (changes: Changes = {}) => elevation(designWith(changes));

test("each jig of a plane is judged against the printer, once", () => {
  const plane = planeWith();
  const judged = passedChecks(plane).filter(({ code }) => code.endsWith("-printer"));
  expect(judged.map(({ code }) => code).sort()).toEqual(
    jigPlans(plane)
      .map(({ name }) => `${name}-printer`)
      .sort(),
  );
  for (const { value, limit } of judged) expect(value).toBeLessThanOrEqual(limit);
});

test("a printer a hair too small is too small, one that just holds the jig is not", () => {
  const plane = planeWith({ "shop.printer.depth": 400, "shop.printer.height": 400 });
  const longest = jigPlans(plane)
    .map((plan) => ({ name: plan.name, size: printedSize(plan) }))
    .reduce((a, b) => (Math.min(b.size.x, b.size.y) > Math.min(a.size.x, a.size.y) ? b : a));
  const { x, y } = longest.size;
  const warned = (width: number) =>
    checkWithoutCures(
      elevation(
        ["width", "depth"].reduce(
          (design, side) => withValue(design, `shop.printer.${side}`, side === "width" ? width : Math.max(x, y)),
          designWith({ "shop.printer.height": 400 }),
        ),
      ),
    ).some(({ code }) => code === `${longest.name}-printer`);
  expect([warned(Math.min(x, y) - 0.01), warned(Math.min(x, y) + 0.01)]).toEqual([true, false]);
});

test("a jig longer than the printer is a warning, with its size, the printer's, and whether it is flat", () => {
  const plane = planeWith({ "shop.printer.width": 80, "shop.printer.depth": 80 });
  const found = checkWithoutCures(plane).filter(({ code }) => code.endsWith("-printer"));
  expect(found.length).toBeGreaterThan(1);
  for (const { code, severity, data, advice, value } of found) {
    const plan = jigPlans(plane).find(({ name }) => `${name}-printer` === code)!;
    const { x, y, z } = printedSize(plan);
    expect(value).toBeCloseTo(Math.max(x, y) - 80, 6); // square bed: the longer side decides
    expect(severity).toBe("warning");
    const flat = plan.drawing !== undefined;
    expect(data).toMatchObject({ jig: plan.name, printed: [x, y, z], flat });
    expect(data?.printer?.slice(0, 2)).toEqual([80, 80]);
    expect(advice).toBe(flat ? "cut-from-sheet-or-print-elsewhere" : "print-elsewhere");
  }
  const drawn = found.map(
    ({ code }) => jigPlans(plane).find(({ name }) => `${name}-printer` === code)!.drawing !== undefined,
  );
  expect(new Set(drawn).size).toBe(2);
});

test("a jig that a figure keeps from being made is a note on that figure and what is wanted of it", () => {
  // A cutter of 8 in its bush, with a wall of 1.2 on either side.
  const notes = checkWithoutCures(planeWith({ "jigs.bush": 8, "recess.cutter": 8 }));
  const note = notes.find(({ code }) => code === "recess-template-left-out");
  expect(note).toMatchObject({
    subject: "bush-diameter",
    relation: "at least",
    value: 8,
    limit: 10.4,
    advice: "let-cutter-turn-in-bush",
    data: { jig: "recess-template" },
  });
});

test("what a plane cannot have is a note with both numbers, and the plane may be built all the same", () => {
  let told = 0;
  for (const { changes } of randomDesigns(67, 80)) {
    const plane = planeWith({ ...changes, "jigs.bush": 8 });
    const notes = checkWithoutCures(plane).filter(({ code }) => code.endsWith("-left-out"));
    const out = omittedJigs(plane);
    if (notes.length === 0) continue;
    told++;
    expect(notes.map(({ code }) => code).sort()).toEqual(out.map(({ name }) => `${name}-left-out`).sort());
    for (const { severity, code, data, relation, value, limit } of notes) {
      expect(severity).toBe("note");
      expect([relation, `${data?.jig}-left-out`]).toEqual(["at least", code]);
      expect(value).toBeLessThanOrEqual(limit);
    }
  }
  expect(told).toBeGreaterThan(0);
  const bare = planeWith({ "jigs.bush": 8, "recess.cutter": 8 });
  expect(checkPlane(bare).map(({ code }) => code)).toContain("recess-template-left-out");
  expect(mayBeBuilt(checkWithoutCures(bare))).toBe(true);
});
