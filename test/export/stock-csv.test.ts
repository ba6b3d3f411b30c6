// The stock list as another program's CSV reader reads it: the billet, a row a piece, lengths in decimals, odd names as text and no formula.
import { stockPlan } from "@lamplane/bench";
import { elevation } from "@lamplane/parameters/elevation";
import { expect, type TestContext, test } from "vitest";
import { stockCsv } from "../../packages/export/src/content/stock-csv.ts";
import { designWith, WORKED } from "../support/designs.ts";
import { requireProgram, runForStdout } from "../support/outside-programs.ts";
import { withPdf } from "../support/pages.ts";

const READ = "import csv, json, sys; print(json.dumps(list(csv.reader(open(sys.argv[1], newline='')))))";

const rowsRead = (context: TestContext, csv: string): string[][] =>
  withPdf(new TextEncoder().encode(csv), (file) =>
    JSON.parse(runForStdout(requireProgram(context, "python"), ["-c", READ, file])),
  );

test("Python's csv module reads every row and cell, commas and quotes in a wood's name too", (context) => {
  const wood = { ...designWith(WORKED).wood, body: '=oak, "white"' };
  const design = { ...designWith(WORKED), wood };
  const plan = stockPlan(elevation(design));
  const rows = rowsRead(context, stockCsv(plan, design));
  expect(rows[0]!.slice(0, 3)).toEqual(["piece", "count", "rough length mm"]);
  expect(rows).toHaveLength(2 + plan.list.rows.length);
  const { length, width, height } = plan.billet.needed;
  expect(rows[1]!.slice(0, 2)).toEqual(["billet", "1"]);
  expect(rows[1]!.slice(2, 8).map(Number)).toEqual([length, width, height, 0, 0, 0].map((mm) => Number(mm.toFixed(3))));
  plan.list.rows.forEach(({ piece, count, rough, finished }, i) => {
    const row = rows[i + 2]!;
    expect(row.slice(0, 2)).toEqual([piece, String(count)]);
    const sizes = [rough, finished].flatMap(({ length, width, thickness }) => [length, width, thickness]);
    sizes.forEach((mm, k) => {
      expect(Number(row[2 + k])).toBeCloseTo(mm, 3);
    });
    expect(row).toHaveLength(rows[0]!.length);
  });
  expect(rows[1]![9]).toBe('\'=oak, "white"');
});

test("a maker in inches reads decimals, which no spreadsheet takes for a date", (context) => {
  const design = { ...designWith(WORKED), units: "in" as const };
  const plan = stockPlan(elevation(design));
  const [head, ...lines] = rowsRead(context, stockCsv(plan, design)) as [string[], ...string[][]];
  expect(head.filter((name) => name.endsWith(" in"))).toHaveLength(6);
  expect(head.filter((name) => name.endsWith(" mm"))).toEqual([]);
  plan.list.rows.forEach(({ rough, finished }, i) => {
    const sizes = [rough, finished].flatMap(({ length, width, thickness }) => [length, width, thickness]);
    sizes.forEach((mm, k) => {
      const cell = lines[i + 1]![2 + k]!;
      expect(cell).toMatch(/^\d+(\.\d+)?$/);
      expect(Number(cell) * 25.4).toBeCloseTo(mm, 2);
    });
  });
});
