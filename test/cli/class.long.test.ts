// A class as a school term has it: every pack made and kept, runs that are killed, and twelve pupils through the whole build.
import { type ChildProcess, spawn } from "node:child_process";
import { createHash } from "node:crypto";
import { cpSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expectedValue, MEASURED_ROWS, STEPS, type Step } from "@lamplane/bench";
import { normalGenerator, uniformGenerator } from "@lamplane/geometry/numerics";
import { readDesign } from "@lamplane/parameters/design";
import { STEP_NAMES } from "@lamplane/parameters/table";
import { afterEach, beforeEach, expect, test } from "vitest";
import { ERROR_ROWS } from "../../packages/bench/src/plan/sources-of-error.ts";
import { extent } from "../support/extent.ts";
import { runCommand } from "../support/running.ts";

let folder = "";
let roster = "";
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "lamplane-class-"));
  cpSync("examples/class/school-smoother.yaml", join(folder, "base.yaml"));
  roster = join(folder, "class.csv");
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const packs = () => join(folder, "packs");
const classCommand = (...more: string[]) =>
  runCommand("class", roster, "--base", join(folder, "base.yaml"), "--out", packs(), ...more);

test("a row that fails by a check gets its design file and no pack; the other's pack is made, and kept by the next run", async () => {
  writeFileSync(roster, "name,iron.width,body.cheek\nanna,50.8,8\nben,50.8,3\n");
  const { exit, out } = await classCommand();
  expect(exit).toBe(1);
  expect(out).toMatch(/anna .*written/);
  expect(out).toMatch(/ben .*checks fail/);
  expect(out).toMatch(/ben: Cheek thickness 3 mm \(min 4\): too thin/);
  expect(existsSync(join(packs(), "anna", "traveller.pdf"))).toBe(true);
  expect(existsSync(join(packs(), "ben"))).toBe(false);
  writeFileSync(roster, "name,iron.width,body.cheek\nanna,50.8,8\n");
  const stamp = readFileSync(join(packs(), "anna", "manifest.json"), "utf8");
  expect((await classCommand()).out).toMatch(/anna .*unchanged, kept/);
  expect(readFileSync(join(packs(), "anna", "manifest.json"), "utf8")).toBe(stamp);
  rmSync(join(packs(), "anna", "layout.pdf"));
  expect((await classCommand()).out).toMatch(/anna .*written/);
  expect(existsSync(join(packs(), "anna", "layout.pdf"))).toBe(true);
});

/** What is wrong with the packs in a folder: files that are not as their manifest says. */
function tornPacks(parent: string): string[] {
  const names = existsSync(parent)
    ? readdirSync(parent).filter((name) => statSync(join(parent, name)).isDirectory())
    : [];
  return names
    .filter((name) => !name.startsWith(".")) // of a run that was killed: the next one clears it away
    .flatMap((name) => {
      const { files } = JSON.parse(readFileSync(join(parent, name, "manifest.json"), "utf8")) as {
        files: { path: string; sha256: string }[];
      };
      return files
        .filter(({ path, sha256 }) => hashOf(join(parent, name, path)) !== sha256)
        .map(({ path }) => `${name}/${path}`);
    });
}
const hashOf = (path: string) => createHash("sha256").update(readFileSync(path)).digest("hex");

const ended = (child: ChildProcess) => new Promise<number | null>((resolve) => child.on("exit", resolve));

const KILLS = extent(12, 60);
test("killed at random moments and run again: no torn pack, no torn design file, and all made in the end", async () => {
  writeFileSync(roster, "name,iron.width\nanna,50.8\nben,50.2\ncarla,44.4\ndora,48\n");
  const random = uniformGenerator(60);
  const args = ["packages/cli/bin/lamplane.js", "class", roster, "--base", join(folder, "base.yaml"), "--out", packs()];
  let finished = 0;
  for (let kill = 0; kill < KILLS; kill++) {
    const child = spawn(process.execPath, args, { stdio: "ignore" });
    const end = ended(child);
    const timer = setTimeout(() => child.kill("SIGKILL"), 200 + random() * 4000);
    if ((await end) === 0) finished += 1;
    clearTimeout(timer);
    expect(tornPacks(packs())).toEqual([]);
    for (const name of existsSync(packs()) ? readdirSync(packs()).filter((each) => /^[^.].*\.yaml$/.test(each)) : [])
      expect(readDesign(readFileSync(join(packs(), name)), name).ok, name).toBe(true);
    if (kill % 10 === 9)
      for (const name of ["anna", "carla"]) rmSync(join(packs(), name), { recursive: true, force: true });
  }
  expect(finished).toBeLessThan(KILLS);
  expect(await ended(spawn(process.execPath, args, { stdio: "ignore" }))).toBe(0);
  expect(tornPacks(packs())).toEqual([]);
  expect(readdirSync(packs()).filter((name) => !/[.]/.test(name))).toEqual(["anna", "ben", "carla", "dora"]);
}, 900_000);

test("twelve pupils through the whole build, each at a pace of its own: the status is right at every step", async () => {
  cpSync("examples/class", join(folder, "class"), { recursive: true });
  roster = join(folder, "class", "school-roster.yaml");
  const run = (...more: string[]) => runCommand("class", roster, "--out", packs(), ...more);
  expect((await run("--plan")).exit).toBe(0);
  const uniform = uniformGenerator(12);
  const normal = normalGenerator(uniform);
  const names = readdirSync(packs())
    .filter((name) => name.endsWith(".yaml"))
    .map((name) => name.slice(0, -5));
  expect(names).toHaveLength(12);
  const standing = new Map(names.map((name) => [name, { done: 0, values: 0 }]));
  const fileOf = (name: string) => join(packs(), `${name}.yaml`);
  const designOf = (name: string) => {
    const read = readDesign(readFileSync(fileOf(name)), name);
    if (!read.ok) throw new Error(`${name}.yaml has faults`);
    return read.design;
  };
  const measure = async (name: string, ...values: string[]) => {
    const { exit, err } = await runCommand("measured", fileOf(name), ...values, "--read-twice", "--skip");
    expect({ exit, err }, `${name} ${values}`).toEqual({ exit: 0, err: "" });
  };
  /** Does one step of a plane as hands do: each value as it is expected, off by what the step is held to. */
  const workOn = async (name: string, step: Step) => {
    const own = standing.get(name)!;
    const values = STEPS[step].measures.flatMap((key) => {
      const { errors = [], held, isOptional } = MEASURED_ROWS[key];
      const expected = isOptional ? undefined : expectedValue(designOf(name), key);
      if (expected === undefined) return [];
      const { hand } = designOf(name);
      const within = Math.max(
        0,
        ...[...errors.map((error) => ERROR_ROWS[error].tolerance), ...(held ? [held] : [])].map((each) =>
          Number(hand[each]),
        ),
      );
      const value =
        key === "mouthSeen" ? designOf(name).mouth.opening : Math.max(0, expected + (normal() * within) / 2);
      return [`${key}=${value.toFixed(3)}`];
    });
    await measure(name, ...values, `done=${step}`);
    own.done += 1;
    own.values += values.length;
  };
  for (let round = 0; [...standing.values()].some(({ done }) => done < STEP_NAMES.length); round++) {
    for (const name of names) {
      const { done } = standing.get(name)!;
      if (done < STEP_NAMES.length && uniform() < 0.7) await workOn(name, STEP_NAMES[done]!);
    }
    const { planes } = JSON.parse((await run("--status", "--json")).out) as {
      planes: { name: string; step?: Step; measured: string[]; stuckOn: unknown[] }[];
    };
    for (const { name, step, measured, stuckOn } of planes) {
      const { done, values } = standing.get(name)!;
      expect({ step, count: measured.length }, `${name} in round ${round}`).toEqual({
        step: STEP_NAMES[done],
        count: values,
      });
      expect(stuckOn, name).toEqual([]);
    }
    if (round === 3) {
      const name = names.find((each) => standing.get(each)!.values > 0)!;
      const before = readFileSync(fileOf(name));
      await measure(name, "ironThickness=9");
      const { out } = await run("--status");
      expect(out).toContain("1 stuck.");
      expect(out).toMatch(new RegExp(`\\n${name}: iron thickness: 9 mm is far from`));
      writeFileSync(fileOf(name), before);
    }
  }
  const { out } = await run("--status");
  expect(out).toMatch(/^12 planes: 12 built, 0 stuck\./);
}, 900_000);
