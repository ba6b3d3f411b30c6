// What a maker reads first: reports that begin with a number, and tables that a terminal of 80 columns shows whole.
import { readdirSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { runCommand } from "../support/running.ts";

const WIDEST = 80;
const EXAMPLES = readdirSync("examples").filter((name) => name.endsWith(".yaml"));
const FEW = ["--runs", "100"];
const reportsOf = (file: string): readonly string[][] => [
  ["tolerance", file, ...FEW],
  ["stock", file],
  ["figures", file],
  ["figures", file, "--all"],
  ["mouth", file, "--seen", "0.002 in"],
  ["mouth", file, "--seen", "0.002 in", "--all"],
  ["next", file],
];

/** Lines with columns: two cells or more set apart by two spaces. */
const tableLines = (text: string): string[] => text.split("\n").filter((line) => /\S {2,}\S/.test(line));
/** What stands before the first number that is a length, an angle or a share. */
const untilFirstNumber = (text: string): string => /^[\s\S]*?(?=\d[\d/ .]*(?:mm|in|°|%))/.exec(text)?.[0] ?? text;

describe.each(EXAMPLES)("%s", (name) => {
  test("tables fit a terminal, and the first number comes within a line", async () => {
    for (const args of reportsOf(`examples/${name}`)) {
      const { out } = await runCommand(...args);
      const wide = tableLines(out).filter((line) => line.length > WIDEST);
      expect(wide, args.join(" ")).toEqual([]);
      if (args[0] !== "next") expect(untilFirstNumber(out).length, args.join(" ")).toBeLessThan(WIDEST);
    }
  });
});

test("a maker at the saw reads less than half of the plan", async () => {
  const length = async (...args: string[]) =>
    (await runCommand("stock", "examples/apprentice-smoother.yaml", ...args)).out.length;
  expect(await length()).toBeLessThan((await length("--all")) / 2);
});

test.each([
  [["survey", "examples/apprentice-smoother.yaml", "examples/readings/apprentice-bed-sawn.yaml"]],
  [["explain"]],
  [["--help"]],
  ...["new", "check", "build", "sweep", "mouth", "survey", "measured"].map((name) => [[name, "--help"]]),
])("%j fits a terminal", async (args) => {
  const { out } = await runCommand(...args);
  expect(out.length).toBeGreaterThan(200);
  expect(out.split("\n").filter((line) => line.length > WIDEST && /\S {2,}\S/.test(line))).toEqual([]);
  expect(out).not.toMatch(/\[(?:boolean|string|array|number)\]/);
});
