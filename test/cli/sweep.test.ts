// `sweep`: the same figures as one design at a time, in order, over all cores, and on from where it was broken off.
import { execFileSync } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterEach, beforeEach, expect, test } from "vitest";
import { runCommand } from "../support/running.ts";

const SMOOTHER = "examples/apprentice-smoother.yaml";
const BIN = fileURLToPath(new URL("../../packages/cli/bin/lamplane.js", import.meta.url));
let folder = "";
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "lamplane-test-"));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const VARY = ["--vary", "bed.angle=43..57:2", "--vary", "iron.thickness=2.5,3.2 mm,1/8 in"];

test("each line is what figures and check say of that design", async () => {
  const { exit, out } = await runCommand("sweep", SMOOTHER, ...VARY, "--figure", "glueGap");
  expect(exit).toBe(0);
  const [head, ...lines] = out.trimEnd().split("\r\n");
  expect(head).toBe("bed.angle,iron.thickness,glueGap,stops,warnings");
  expect(lines.map((line) => line.split(",").slice(0, 2).map(Number))).toEqual(
    [43, 45, 47, 49, 51, 53, 55, 57].flatMap((angle) => [2.5, 3.2, 3.175].map((thickness) => [angle, thickness])),
  );
  for (const line of [lines[0]!, lines[10]!, lines[23]!]) {
    const [angle, thickness, gap, stops] = line.split(",");
    const changes = ["--with", `bed.angle=${angle}`, "--with", `iron.thickness=${thickness}`];
    const { figures } = JSON.parse((await runCommand("figures", SMOOTHER, ...changes, "--json")).out);
    expect(Number(gap)).toBeCloseTo(figures.glueGap.value, 6);
    const { findings } = JSON.parse((await runCommand("check", SMOOTHER, ...changes, "--json")).out);
    const found = findings.filter(({ severity }: { severity: string }) => severity === "stop");
    expect(stops!.split(" ").filter(Boolean)).toEqual(found.map(({ code }: { code: string }) => code));
  }
});

test.each([
  [["--vary", "bed.angle=33..57:2"], /read 33; allowed: 35° to 65°/],
  [["--vary", "bed.angel=43..57:2"], /no such parameter/],
  [["--vary", "bed.angle=57..43:2"], /must rise/],
  [["--vary", "bed.angle=43..57:0"], /steps above 0/],
  [["--vary", "bed.angle=43..57:0.00001", "--vary", "wedge.angle=2..20:0.1"], /Take a? ?larger step/i],
  [["--vary", "bed.angle=a,b"], /read "a"/],
  [["--vary", "bed.angle=43,44", "--vary", "bed.angle=45"], /entered twice/],
  [["--vary", "bed.angle=43,44", "--figure", "gap"], /no such figure/],
  [[], /Name what to vary/],
])("refuses %j", async (args, message) => {
  const { exit, err } = await runCommand("sweep", SMOOTHER, ...args);
  expect(exit).toBe(2);
  expect(err).toMatch(message);
});

test("all cores give the same table as one, and a broken-off run goes on where it stopped", async () => {
  const vary = ["--vary", "bed.angle=43..57:0.05", "--vary", "wedge.angle=5,7", "--vary", "iron.thickness=2.5,3"];
  const [one, many] = [join(folder, "one.csv"), join(folder, "many.csv")];
  expect((await runCommand("sweep", SMOOTHER, ...vary, "--out", one)).exit).toBe(0);
  execFileSync(process.execPath, [BIN, "sweep", SMOOTHER, ...vary, "--out", many]);
  const whole = readFileSync(one, "utf8");
  expect(whole.split("\r\n")).toHaveLength(281 * 4 + 2);
  expect(readFileSync(many, "utf8")).toBe(whole);
  expect((await runCommand("sweep", SMOOTHER, ...vary, "--out", join(folder, "missing", "x.csv"))).exit).toBe(3);
});

test("a part that a broken-off run left is kept as far as its lines are whole", async () => {
  const out = join(folder, "sweep.csv");
  await runCommand("sweep", SMOOTHER, ...VARY, "--out", out);
  const whole = readFileSync(out, "utf8");
  rmSync(out);
  const before = new Set(readdirSync(folder));
  expect(before.size).toBe(0);
  const name = await partFileOf(out);
  writeFileSync(name, whole.slice(0, Math.floor(whole.length / 2)));
  const { exit, out: said } = await runCommand("sweep", SMOOTHER, ...VARY, "--out", out);
  expect(exit).toBe(0);
  expect(said).toMatch(/24 designs, (9|1[0-3]) from the run that was stopped/);
  expect(readFileSync(out, "utf8")).toBe(whole);
  expect(existsSync(name)).toBe(false);
});

/** Name of the part file, read off the folder while a sweep whose disk fails at its end leaves it behind. */
async function partFileOf(out: string): Promise<string> {
  const child = `
    const fs = require("node:fs");
    const write = fs.writeSync;
    let left = 0;
    fs.writeSync = (...args) => (left-- > 0 ? write(...args) : process.kill(process.pid, "SIGKILL"));
    require("node:module").syncBuiltinESMExports();
    process.argv = [process.execPath, ${JSON.stringify(BIN)}, "sweep", ${JSON.stringify(SMOOTHER)}, ...${JSON.stringify(VARY)}, "--out", ${JSON.stringify(out)}];
    import(${JSON.stringify(BIN)});
  `;
  try {
    execFileSync(process.execPath, ["-e", child], { stdio: "pipe" });
  } catch {
    // killed, as it should be
  }
  const left = readdirSync(folder).filter((name) => name.endsWith(".part"));
  expect(left).toHaveLength(1);
  return join(folder, left[0]!);
}

test("a table of another sweep is replaced, anything else is left alone", async () => {
  const out = join(folder, "notes.csv");
  writeFileSync(out, "my notes\n");
  expect(await runCommand("sweep", SMOOTHER, ...VARY, "--out", out)).toMatchObject({ exit: 3 });
  expect(readFileSync(out, "utf8")).toBe("my notes\n");
  rmSync(out);
  await runCommand("sweep", SMOOTHER, "--vary", "bed.angle=45,46", "--out", out);
  expect((await runCommand("sweep", SMOOTHER, ...VARY, "--out", out)).exit).toBe(0);
  expect(readFileSync(out, "utf8").split("\r\n")).toHaveLength(26);
});
