// Tables on a terminal: columns under one another, no line wider than 80, nothing lost; and what a sweep varies, counted by hand.
import { csvLine } from "@lamplane/export/csv";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { headerLine, sweepLinePrefix } from "../../packages/cli/src/sweep/rows.ts";
import { countDesigns, variationValues } from "../../packages/cli/src/sweep/variation.ts";
import { parseVariations } from "../../packages/cli/src/sweep/variations.ts";
import {
  alignColumns,
  alignRows,
  alignWithText,
  breakText,
  foldColumns,
  WIDEST,
  wrapWords,
} from "../../packages/cli/src/text.ts";
import { designWith, WORKED } from "../support/designs.ts";

const word = fc.stringMatching(/^[a-z0-9]{1,14}$/);
const table = fc
  .tuple(fc.integer({ min: 1, max: 6 }), fc.integer({ min: 2, max: 14 }))
  .chain(([rows, columns]) =>
    fc.array(fc.array(word, { minLength: columns, maxLength: columns }), { minLength: rows, maxLength: rows }),
  );

test("a terminal has 80 columns", () => expect(WIDEST).toBe(80));

test("cells of a column begin under one another, two blanks behind the widest before", () => {
  fc.assert(
    fc.property(table, (rows) => {
      const lines = alignRows(rows, true);
      expect(new Set(lines.map(({ length }) => length)).size).toBe(1);
      const widths = rows[0]!.map((_, k) => Math.max(...rows.map((row) => row[k]!.length)));
      expect(lines[0]!.length).toBe(widths.reduce((sum, width) => sum + width + 2, -2));
      for (const [i, row] of rows.entries()) {
        let from = 0;
        for (const [k, cell] of row.entries()) {
          expect(lines[i]!.slice(from, from + widths[k]!).trimEnd()).toBe(cell);
          if (k < row.length - 1) expect(lines[i]!.slice(from + widths[k]!, from + widths[k]! + 2)).toBe("  ");
          from += widths[k]! + 2;
        }
      }
      expect(alignRows(rows)).toEqual(lines.map((line) => line.trimEnd()));
      expect(alignColumns(rows).split("\n")).toEqual(alignRows(rows));
    }),
    { numRuns: 60, seed: 3 },
  );
  expect(alignRows([])).toEqual([]);
});

test("a table too wide is folded behind its first column: every cell once, no line over 80 that need not be", () => {
  fc.assert(
    fc.property(table, (rows) => {
      const parts = foldColumns(rows);
      const rest = rows.map((_, i) => parts.flatMap((part) => part[i]!.slice(1)));
      expect(rest).toEqual(rows.map((row) => row.slice(1)));
      for (const part of parts) {
        expect(part.map(([head]) => head)).toEqual(rows.map(([head]) => head));
        expect(Math.max(...alignRows(part).map(({ length }) => length))).toBeLessThanOrEqual(WIDEST);
      }
      for (const [i, part] of parts.entries()) {
        const next = parts[i + 1];
        if (next)
          expect(
            Math.max(
              ...alignRows(
                part.map((row, k) => [...row, next[k]![1]!]),
                true,
              ).map(({ length }) => length),
            ),
          ).toBeGreaterThan(WIDEST);
      }
    }),
    { numRuns: 60, seed: 4 },
  );
});

test("words and texts are broken only where the next word has no room", () => {
  fc.assert(
    fc.property(fc.array(word, { minLength: 1, maxLength: 60 }), (words) => {
      for (const [lines, blank] of [
        [wrapWords(words), "  "],
        [breakText(words.join(" ")), " "],
      ] as const) {
        expect(lines.join(blank)).toBe(words.join(blank));
        for (const [i, line] of lines.entries()) {
          expect(line.length).toBeLessThanOrEqual(WIDEST);
          const next = lines[i + 1]?.split(" ")[0];
          if (next) expect(line.length + blank.length + next.length).toBeGreaterThan(WIDEST);
        }
      }
    }),
    { numRuns: 60, seed: 5 },
  );
  expect(breakText("aa bb cc", 5)).toEqual(["aa bb", "cc"]);
});

test("a row's last text goes on below itself", () => {
  const long = Array.from({ length: 30 }, (_, i) => `word${i}`).join(" ");
  const rows = alignWithText([
    ["key", "1", long],
    ["another", "22", "short"],
  ]);
  const indent = "another  22  ".length;
  expect(rows[1]).toEqual(["another  22  short"]);
  expect(rows[0]!.map((line) => line.slice(indent)).join(" ")).toBe(long);
  expect(rows[0]!.map((line) => line.slice(0, indent))).toEqual(
    rows[0]!.map((_, i) => (i === 0 ? "key      1   " : " ".repeat(indent))),
  );
  for (const line of rows[0]!) expect(line.length).toBeLessThanOrEqual(WIDEST);
});

describe("what a sweep varies", () => {
  const design = designWith(WORKED);
  const parse = (...given: string[]) => parseVariations(given, design);

  test("both ends of a range and every step between, a list as it stands, lengths in any unit", () => {
    expect(parse("bed.angle=43..45:0.5")).toEqual([{ path: "bed.angle", values: [43, 43.5, 44, 44.5, 45] }]);
    expect(parse("bed.angle=43..44.9:0.5")[0]!.values).toEqual([43, 43.5, 44, 44.5]);
    expect(parse("bed.angle=45..45:1")[0]!.values).toEqual([45]);
    expect(parse("iron.thickness=3.2, 1/8 in,4")[0]!.values).toEqual([3.2, 3.175, 4]);
    expect(parse("ramp.shape=straight,curved")[0]!.values).toEqual(["straight", "curved"]);
    expect(parse("ramp.angle=auto,60")[0]!.values).toEqual(["auto", 60]);
    const tenths = parse("iron.thickness=3..4:0.1")[0]!.values;
    expect(tenths).toEqual([3, 3.1, 3.2, 3.3, 3.4, 3.5, 3.6, 3.7, 3.8, 3.9, 4]);
  });

  test("every combination once, the last named changing fastest", () => {
    const variations = parse("bed.angle=45,46", "iron.thickness=3..4:0.5", "ramp.shape=straight,curved");
    expect(countDesigns(variations)).toBe(2 * 3 * 2);
    const all = Array.from({ length: 12 }, (_, i) => variationValues(variations, i));
    expect(all.slice(0, 3)).toEqual([
      [45, 3, "straight"],
      [45, 3, "curved"],
      [45, 3.5, "straight"],
    ]);
    expect(all[11]).toEqual([46, 4, "curved"]);
    expect(new Set(all.map((values) => values.join())).size).toBe(12);
    const sweep = { design, variations, figures: ["glueGap"] };
    expect(headerLine(sweep)).toBe(
      csvLine(["bed.angle", "iron.thickness", "ramp.shape", "glueGap", "stops", "warnings"]),
    );
    expect(sweepLinePrefix(sweep, 3)).toBe("45,3.5,curved,");
  });

  test.each([
    ["no range at all", ["bed.angle"]],
    ["an unknown key", ["bed.angel=45"]],
    ["one key twice", ["bed.angle=45", "bed.angle=46"]],
    ["a falling range", ["bed.angle=47..45:1"]],
    ["a step of nothing", ["bed.angle=45..47:0"]],
    ["words in a range", ["ramp.angle=auto..60:1"]],
    ["no number", ["bed.angle=steep"]],
    ["a value beyond the table", ["bed.angle=45,90"]],
    ["an end beyond the table", ["bed.angle=45..90:5"]],
    ["more designs than a million", ["bed.angle=40..50:0.01", "iron.thickness=3..4:0.001"]],
    ["more values than a million", ["iron.thickness=3..4:0.0000001"]],
  ])("is refused: %s", (_, given) => {
    expect(() => parse(...given)).toThrow();
  });
});
