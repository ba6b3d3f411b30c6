// `sweep --plots`: a plot of each figure, read off the same table; what cannot be drawn is refused before the work.
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parseHTML } from "linkedom";
import { afterEach, beforeEach, expect, test } from "vitest";
import { runCommand } from "../support/running.ts";

const SMOOTHER = "examples/apprentice-smoother.yaml";
let folder = "";
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "lamplane-test-"));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const sweep = (...args: string[]) => runCommand("sweep", SMOOTHER, ...args);
const VARY = ["--vary", "bed.angle=43..63:2", "--vary", "iron.thickness=2.5,3.2,4"];

function drawn(name: string) {
  const { document } = parseHTML(readFileSync(join(folder, "plots", name), "utf8"));
  const texts = [...document.querySelectorAll("text")].map(({ textContent }) => textContent);
  const paths = (kind: string) =>
    [...document.querySelectorAll(`path.${kind}`)].map((path) =>
      [...path.getAttribute("d")!.matchAll(/[ML]([-\d.]+) ([-\d.]+)/g)].map((m) => ({
        x: Number(m[1]),
        y: Number(m[2]),
      })),
    );
  return { texts, paths, words: texts.join(" ") };
}

test("a line for each value of the second parameter, at the heights of the table", async () => {
  const out = join(folder, "table.csv");
  const { exit, out: said } = await sweep(
    ...VARY,
    "--figure",
    "glueGap",
    "--out",
    out,
    "--plots",
    join(folder, "plots"),
  );
  expect(exit).toBe(0);
  expect(said).toMatch(/33 designs\.\n.*1 plot, sweep-glue-gap\.svg\./);
  const { texts, paths, words } = drawn("sweep-glue-gap.svg");
  for (const label of ["2.5 mm", "3.2 mm", "4 mm", "bed.angle, °", "glueGap, mm"]) expect(texts).toContain(label);
  expect(words).toMatch(/stopped by throat-narrowing/);
  expect(words).toMatch(/Dashed where/);

  const rows = readFileSync(out, "utf8")
    .trimEnd()
    .split("\r\n")
    .slice(1)
    .map((line) => line.split(","));
  const gaps = rows.map(([angle, thickness, gap, stops]) => ({ angle, thickness, gap: Number(gap), stops }));
  const points = [...paths("outline").filter((path) => path.length > 2), ...paths("hidden")].flat();
  // Heights on the paper are one straight function of the gaps: found from two designs, held by all.
  const lineAt = (thickness: string) => gaps.filter((row) => row.thickness === thickness);
  const all = [...new Set(gaps.map(({ gap }) => gap))].sort((a, b) => b - a);
  const heights = [...new Set(points.map(({ y }) => y))].sort((a, b) => a - b);
  const scale = (heights.at(-1)! - heights[0]!) / (all[0]! - all.at(-1)!);
  for (const { gap } of lineAt("3.2")) {
    const wanted = heights[0]! + (all[0]! - gap) * scale;
    expect(Math.min(...points.map(({ y }) => Math.abs(y - wanted)))).toBeLessThan(0.001);
  }
  expect(paths("hidden").length > 0).toBe(gaps.some(({ stops }) => stops !== ""));
});

test("further parameters have a picture for each of their values, which its title tells", async () => {
  const plots = ["--figure", "pinToRamp", "--plots", join(folder, "plots")];
  const { exit, err } = await sweep(...VARY, "--vary", "wedge.angle=5,7", ...plots);
  expect(exit).toBe(0);
  expect(err).toMatch(/2 plots/);
  expect(readdirSync(join(folder, "plots")).sort()).toEqual(["sweep-pin-to-ramp-1.svg", "sweep-pin-to-ramp-2.svg"]);
  expect(drawn("sweep-pin-to-ramp-1.svg").words).toMatch(/at wedge\.angle 5°/);
  expect(drawn("sweep-pin-to-ramp-2.svg").words).toMatch(/at wedge\.angle 7°/);
});

test("of very many lines a dozen are drawn, and the title says so", async () => {
  await sweep(
    "--vary",
    "bed.angle=45,47",
    "--vary",
    "wedge.angle=4..9:0.1",
    "--figure",
    "wedgeAtPin",
    "--plots",
    join(folder, "plots"),
  );
  const { words, texts } = drawn("sweep-wedge-at-pin.svg");
  expect(words).toMatch(/12 of 51 values/);
  expect(texts.filter((text) => /^[\d.]+°$/.test(text))).toHaveLength(12);
});

test("the same sweep gives the same bytes, and replaces its own plots but nothing else", async () => {
  const args = [...VARY, "--figure", "glueGap", "--plots", join(folder, "plots")];
  await sweep(...args);
  const file = join(folder, "plots", "sweep-glue-gap.svg");
  const before = readFileSync(file, "utf8");
  expect((await sweep(...args)).exit).toBe(0);
  expect(readFileSync(file, "utf8")).toBe(before);
  writeFileSync(file, "<svg>mine</svg>");
  const { exit, err } = await sweep(...args);
  expect(exit).toBe(3);
  expect(err).toMatch(/not the plot of a sweep; it was left as it is/);
  expect(readFileSync(file, "utf8")).toBe("<svg>mine</svg>");
  expect(readdirSync(join(folder, "plots"))).toEqual(["sweep-glue-gap.svg"]);
});

test.each([
  [["--vary", "ramp.shape=straight,curved"], /vary a parameter over numbers/],
  [
    ["--vary", "bed.angle=45,46", "--vary", "wedge.angle=5,6", "--vary", "sole.allowance=1..4:0.05"],
    /makes 427 plots \(max 60\)/,
  ],
])("refuses %j before the first design is worked out", async (args, message) => {
  const { exit, err, out } = await sweep(...args, "--plots", join(folder, "plots"));
  expect({ exit, out }).toEqual({ exit: 2, out: "" });
  expect(err).toMatch(message);
  expect(readdirSync(folder)).toEqual([]);
});

test("a folder that cannot be made is told, with exit 3", async () => {
  writeFileSync(join(folder, "plots"), "a file");
  expect((await sweep(...VARY, "--figure", "glueGap", "--plots", join(folder, "plots"))).exit).toBe(3);
  mkdirSync(join(folder, "other"));
  expect((await sweep(...VARY, "--figure", "glueGap", "--plots", join(folder, "other"))).exit).toBe(0);
});
