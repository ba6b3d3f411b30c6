// The stock list as another program's CSV reader reads it: the billet, a row a piece, lengths in mm, odd names as text and no formula.
import { formatFigure, stockPlan } from "@lamplane/bench";
import { elevation, figureValue } from "@lamplane/parameters/elevation";
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
    expect(row).toHaveLength(11);
  });
  expect(rows[1]![9]).toBe('\'=oak, "white"');
});

test("a maker in inches reads each size on the rule too, a rough one never short", (context) => {
  const design = { ...designWith(WORKED), units: "in" as const };
  const rows = rowsRead(context, stockCsv(stockPlan(elevation(design)), design));
  const [head, ...lines] = rows as [string[], ...string[][]];
  expect(head).toHaveLength(17);
  const places = head.flatMap((name, i) => (name.startsWith("rough") && name.endsWith(" in") ? [i] : []));
  expect(places).toHaveLength(3);
  for (const line of lines)
    for (const place of places) {
      const [whole, over] = [/^(\d+)(?: |$)/.exec(line[place]!)?.[1] ?? "0", /(\d+)\/(\d+)$/.exec(line[place]!)];
      const inches = Number(whole) + (over ? Number(over[1]) / Number(over[2]) : 0);
      const mm = Number(line[head.indexOf(head[place]!.replace(/ in$/, " mm"))]);
      expect(inches * 25.4).toBeGreaterThan(mm - 0.051); // half of a tenth: what no rule shows
      expect(inches * 25.4).toBeLessThan(mm + 25.4 / 64 + 0.051);
    }
});

test("a wedge is as long in the stock list as its step says: never short of what is fitted", (context) => {
  const design = { ...designWith(WORKED), units: "in" as const };
  const plane = elevation(design);
  const [head, ...lines] = rowsRead(context, stockCsv(stockPlan(plane), design)) as [string[], ...string[][]];
  const wedge = lines.find(([piece]) => piece === "wedge")!;
  const told = (key: "wedgeLength" | "wedgeWidth" | "wedgeButt") =>
    formatFigure(design, key, figureValue(plane, key)!, "mm");
  for (const [side, key] of [
    ["length", "wedgeLength"],
    ["width", "wedgeWidth"],
    ["thickness", "wedgeButt"],
  ] as const)
    expect(told(key)).toMatch(new RegExp(`^${wedge[head.indexOf(`finished ${side} in`)]} in`));
});
