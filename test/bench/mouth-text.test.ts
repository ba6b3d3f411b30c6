// Every figure in what is written of a mouth's reading and life is the reading's own, in the maker's unit.
import { asBuiltPlane, mouthLife, mouthLifeCells, mouthReading, mouthText, skewText } from "@lamplane/bench";
import { elevation } from "@lamplane/parameters/elevation";
import type { Units } from "@lamplane/parameters/units";
import { describe, expect, test } from "vitest";
import { mouthLifeEnd, mouthLifeHead } from "../../packages/bench/src/mouth/mouth-text.ts";
import { LIFE_HEADS, MOUTH } from "../../packages/bench/src/words/mouth.ts";
import { type Changes, designWith, WORKED } from "../support/designs.ts";
import { expectFigure, expectLength, partsOf } from "../support/figures-in-text.ts";

const PLANES: readonly Changes[] = [
  WORKED,
  { ...WORKED, "bed.angle": 57, "mouth.opening": 0.3 },
  { ...WORKED, "capIron.thickness": 0, "mouth.opening": 0.5 },
];
const UNITS = ["mm", "in"] as const;
/** From no light at all to far too wide, about the mouth that is wanted. */
const SEEN = [0, 0.02, 0.12, 0.15, 0.1501, 0.3, 0.31, 0.5, 0.52, 0.9, 2.5];
const CASES = PLANES.flatMap((changes, plane) =>
  UNITS.flatMap((units) =>
    SEEN.map((seen) => ({ plane, units, seen, made: elevation({ ...designWith(changes), units }) })),
  ),
);

const growthWords = (growth: string, units: Units) => MOUTH.growth({ growth, units });
const expectGrowth = (text: string, growth: number, units: Units) => {
  const { growth: figure } = partsOf(MOUTH.growth, ["growth"], text, { units })!;
  expect(text).toBe(growthWords(figure, units));
  expectFigure(figure, growth, { decimals: 3 });
};

describe.each(CASES)("plane $plane in $units, a mouth of $seen seen", ({ units, seen, made }) => {
  const reading = mouthReading(made, { seen });
  const lines = mouthText(reading, made);
  const { wanted, verdict } = reading;

  test("what is read, what is wanted, and how fast it opens", () => {
    const head = lines.flatMap((line) => partsOf(MOUTH.seen, ["seen", "wanted", "growth"], line) ?? [])[0]!;
    expectLength(head.seen, seen, units);
    expectLength(head.wanted, made.design.mouth.opening, units);
    expectGrowth(head.growth, reading.growth, units);
  });

  test("what to do about it comes first, and only that", () => {
    const [first = ""] = lines;
    const opens = reading.opensPerShaving;
    const isNear = seen >= wanted - 1e-6 && seen <= wanted + opens;
    expect(verdict === "as-wanted").toBe(isNear);
    if (verdict === "as-wanted") {
      if (seen <= wanted) return expect(first).toBe(MOUTH.leave);
      return expectLength(partsOf(MOUTH.leaveWide, ["by"], first)!.by, seen - wanted, units);
    }
    if (verdict === "wide") {
      expect(lines.some((line) => partsOf(MOUTH.takeOff, ["amount", "shavings"], line, { atLeast: false }))).toBe(
        false,
      );
      return expectLength(partsOf(MOUTH.tooWide, ["by"], first)!.by, seen - wanted, units);
    }
    const isShut = seen === 0;
    const [, amount = "", shavings = ""] = /^TAKE OFF (?:at least )?(.*?) of the sole(.*)\.$/.exec(first)!;
    expect(first.includes("at least")).toBe(isShut);
    expectLength(amount, reading.takeOff, units);
    expect(lines.includes(MOUTH.shut)).toBe(isShut);
    expect(lines.slice(-2)).toEqual([MOUTH.stopShort, MOUTH.tension]);
    const count = Math.floor(reading.takeOff / 0.05 + 1e-6);
    if (count === 0) return expectLength(partsOf(MOUTH.lessThanShaving, ["size"], shavings)!.size, 0.05, units);
    const each = partsOf(MOUTH.shavings, ["size", "opens"], shavings, { count })!;
    expectLength(each.size, 0.05, units);
    expectLength(each.opens, opens, units);
  });

  test("a mouth too wide is packed by its excess times sin β, or patched", () => {
    if (verdict !== "wide") return expect(reading.packing).toBeUndefined();
    const { packing, patch } = reading;
    const packed = /^Packing: (.*?) of card/.exec(lines.find((line) => line.startsWith("Packing"))!)!;
    expectLength(packed[1]!, (seen - wanted) * Math.sin((made.design.bed.angle * Math.PI) / 180), units);
    const line = lines.find((text) => text.startsWith("Packing"))!;
    const out = / the wedge stands (.*) further out\.$/.exec(line)?.[1];
    const goesUnder = packing!.roomUnderPin >= 0 && packing!.wedgeBelowPin >= 0;
    expect(out !== undefined).toBe(goesUnder);
    if (out) expectLength(out, packing!.wedgeOut, units);
    expect(line.includes(MOUTH.packingHump) || line.includes(MOUTH.packingIron)).toBe(packing!.roomUnderPin < 0);
    const slip = lines.flatMap((text) => partsOf(MOUTH.patch, ["thick", "long", "wide", "angle"], text) ?? [])[0]!;
    expectLength(slip.thick, patch!.thickness, units);
    expectLength(slip.long, patch!.length, units);
    expectLength(slip.wide, patch!.width, units);
    expectFigure(slip.angle, patch!.endAngle, { decimals: 1, unit: "°" });
    const life = lines.flatMap((text) => partsOf(MOUTH.patchLife, ["growth", "before", "thick"], text) ?? [])[0]!;
    expectGrowth(life.growth, patch!.growth, units);
    expectFigure(life.before, reading.growth, { decimals: 3 });
    expectLength(life.thick, patch!.thickness, units);
    expect(lines.includes(MOUTH.patchTooLong)).toBe(!patch!.fits);
    expect(lines.at(-1)).toBe(MOUTH.patchCaution);
  });
});

describe.each(
  PLANES.flatMap((changes) => UNITS.map((units) => ({ made: elevation({ ...designWith(changes), units }), units }))),
)("the life of plane %#", ({ made, units }) => {
  const rows = mouthLife(made);

  test("is a table of the rows' own lengths, with no column for what the plane has not", () => {
    for (const all of [true, false]) {
      const [heads, ...cells] = mouthLifeCells(rows, made.design, all);
      const keys = (Object.keys(LIFE_HEADS) as (keyof typeof LIFE_HEADS)[]).filter(
        (key) => rows[0]![key] !== undefined,
      );
      const deciding = ["takenOff", "opening", "bedToRecess", "wedgeTipFromEdge", "wearLeft"];
      const wanted = keys.filter((key) => all || deciding.includes(key));
      expect(heads!.toSorted()).toEqual(wanted.map((key) => LIFE_HEADS[key]).toSorted());
      expect(cells).toHaveLength(rows.length);
      for (const [i, row] of rows.entries())
        for (const [k, head] of heads!.entries()) {
          const key = keys.find((each) => LIFE_HEADS[each] === head)!;
          expectLength(
            cells[i]![k]!.replace(/( \(|$)/, (end) => ` ${units}${end}`),
            row[key]!,
            units,
          );
        }
    }
  });
  test("says in which unit, and where it ends", () => {
    expect(mouthLifeHead(made.design)).toBe(MOUTH.life({ units }));
    expectLength(partsOf(MOUTH.lifeEnd, ["depth"], mouthLifeEnd(made.design), { times: 10 })!.depth, 3, units);
  });
  test("goes on in quarters of a millimetre or hundredths of an inch, to 3 mm or ten mouths, and 1 mm at the least", () => {
    const step = units === "mm" ? 0.25 : 0.254;
    for (const [i, { takenOff }] of rows.entries()) expect(takenOff).toBeCloseTo(i * step, 9);
    const last = rows.at(-1)!;
    const before = rows.at(-2)!;
    expect(last.takenOff).toBeLessThan(3 + step);
    expect(last.takenOff).toBeGreaterThanOrEqual(1 - 1e-9);
    const worn = (row: typeof last) => row.opening >= 10 * made.design.mouth.opening - 1e-9;
    if (before.takenOff >= 1) expect(worn(before) || before.takenOff >= 3 - 1e-9).toBe(false);
    expect(worn(last) || last.takenOff >= 3 - 1e-9 || last.takenOff < 1 + step).toBe(true);
  });
});

describe("a mouth read beside both cheeks", () => {
  const built = (mouthSeenLeft: number, mouthSeenRight: number, units: Units) => {
    const { measured, ...design } = designWith(WORKED);
    return asBuiltPlane({ ...design, units, measured: { ...measured, mouthSeenLeft, mouthSeenRight } });
  };

  test.each(UNITS)(
    "in %s: uneven by the difference, the ramp planed at the narrow cheek; by nothing that is seen it is alike",
    (units) => {
      for (const [left, right] of [
        [0.05, 0.25],
        [0.26, 0.04],
      ] as const) {
        const lines = skewText(built(left, right, units));
        const parts = partsOf(MOUTH.uneven, ["left", "right", "by", "middle"], lines[0]!)!;
        expectLength(parts.by, Math.abs(left - right), units);
        expectLength(parts.left, left, units);
        expectLength(parts.right, right, units);
        expect(lines[1]).toBe(MOUTH.planeRamp({ narrow: left < right ? "left" : "right" }));
      }
      const even = (by: number) => skewText(built(0.15 - by / 2, 0.15 + by / 2, units));
      expect(even(0.004)).toHaveLength(1);
      expect(even(0.006).length).toBeGreaterThan(1);
      expectLength(partsOf(MOUTH.even, ["opening"], even(0)[0]!)!.opening, 0.15, units);
    },
  );
});
