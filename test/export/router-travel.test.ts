// The travel that a set-up asks of the machine, against the extremes of its finished program as an RS-274 interpreter runs it.
import { describe, expect, test } from "vitest";
import { planProgram } from "../../packages/export/src/router/program.ts";
import { designWith, WORKED } from "../support/designs.ts";
import { requireProgram } from "../support/outside-programs.ts";
import { canonicalMoves } from "../support/router-cutting.ts";
import { cutter, routed, withRouter } from "../support/router-designs.ts";

const CUTTERS = [cutter("end-6", 6), cutter("drill-9.7", 9.7, { kind: "drill", step: 5 })];
const design = withRouter(designWith(WORKED), CUTTERS, { zero: "corner-top", units: "mm" });
const { programs } = routed(design);
const LARGE = { width: 9999, depth: 9999, height: 9999 };

describe.each(programs.map((each) => [each.program.setUp.name, each] as const))(
  "%s",
  (_, { program: { setUp }, text }) => {
    test("needs room for all that the cutter goes over and for the stock, and no more", (context) => {
      requireProgram(context, "rs274");
      const places = canonicalMoves(text).moves.flatMap(({ points }) => points.slice(1));
      const { corner, stock, height } = setUp;
      const span = (axis: "x" | "y", size: number): number => {
        const all = [...places.map((place) => place[axis]), corner[axis], corner[axis] + size];
        return Math.max(...all) - Math.min(...all);
      };
      const needed = {
        width: span("x", stock.width),
        depth: span("y", stock.depth),
        height: height + Math.max(...places.map(({ z }) => z)),
      };
      for (const [side, code] of [
        ["width", "travel-x"],
        ["depth", "travel-y"],
        ["height", "travel-z"],
      ] as const) {
        const on = (room: number) =>
          planProgram(setUp, { ...design.router, area: { ...LARGE, [side]: room } }, CUTTERS);
        expect(on(needed[side] + 0.01), side).toHaveProperty("program");
        const limited = on(needed[side] - 0.01);
        if (!("limit" in limited)) throw new Error(`${side}: it is planned in less than ${needed[side]}`);
        expect(limited.limit).toMatchObject({ code, limit: needed[side] - 0.01, setUp: setUp.name });
        expect(Math.abs(limited.limit.value - needed[side]), side).toBeLessThan(0.005);
      }
    });
  },
);

test("a piece of 200 by 120 mm with one hole in its middle needs just its own size, wherever its corner lies", () => {
  const setUp = {
    name: "plate",
    title: "Plate",
    stock: { width: 200, depth: 120, thickness: 20 },
    corner: { x: -60, y: -10 },
    features: [{ kind: "hole", circle: { centre: { x: 20, y: 40 }, radius: 10 }, depth: 20 }],
    holding: "cradle",
    height: 40,
  } as const;
  const on = (area: { width: number; depth: number; height: number }) =>
    planProgram(setUp, { ...design.router, area }, CUTTERS);
  const own = { width: 200, depth: 120, height: 40 + design.router.parkHeight };
  expect(on(own)).toHaveProperty("program");
  for (const [side, code] of [
    ["width", "travel-x"],
    ["depth", "travel-y"],
    ["height", "travel-z"],
  ] as const)
    expect(on({ ...own, [side]: own[side] - 1 })).toMatchObject({ limit: { code, value: own[side] } });
});
