// The stock list as another program's CSV reader reads it: a row a piece, lengths in mm, odd names as text and no formula.
import { stockPlan } from "@lamplane/parameters/bench";
import { elevation } from "@lamplane/parameters/elevation";
import { expect, test } from "vitest";
import { stockCsv } from "../../packages/export/src/content/stock-csv.ts";
import { designWith, WORKED } from "../support/designs.ts";
import { needed, printed } from "../support/outside-programs.ts";
import { withPdf } from "../support/pages.ts";

const READ = "import csv, json, sys; print(json.dumps(list(csv.reader(open(sys.argv[1], newline='')))))";

test("Python's csv module reads every row and cell, commas and quotes in a wood's name too", (context) => {
  const wood = { ...designWith(WORKED).wood, body: '=oak, "white"' };
  const plan = stockPlan(elevation({ ...designWith(WORKED), wood }));
  const bytes = new TextEncoder().encode(stockCsv(plan));
  const rows = withPdf(bytes, (file) =>
    JSON.parse(printed(needed(context, "python"), ["-c", READ, file])),
  ) as string[][];
  expect(rows[0]!.slice(0, 3)).toEqual(["piece", "count", "rough length mm"]);
  expect(rows).toHaveLength(1 + plan.list.rows.length);
  plan.list.rows.forEach(({ piece, count, rough, finished }, i) => {
    const row = rows[i + 1]!;
    expect(row.slice(0, 2)).toEqual([piece, String(count)]);
    const sizes = [rough, finished].flatMap(({ length, width, thickness }) => [length, width, thickness]);
    sizes.forEach((mm, k) => {
      expect(Number(row[2 + k])).toBeCloseTo(mm, 3);
    });
    expect(row).toHaveLength(11);
  });
  expect(rows[1]![9]).toBe('\'=oak, "white"');
});
