// A class as a school term has it: every pack made and kept, runs that are killed, and twelve pupils through the whole build.
import { type ChildProcess, spawn } from "node:child_process";
import { createHash } from "node:crypto";
import { cpSync, existsSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expectedValue, MEASURED_ROWS, STEPS, type Step } from "@lamplane/bench";
import type { PlaneStatus } from "@lamplane/bench/class";
import { normalGenerator, uniformGenerator } from "@lamplane/geometry/numerics";
import { STEP_NAMES } from "@lamplane/parameters/table";
import { expect, test } from "vitest";
import type { MeasuredKey } from "../../packages/bench/src/measured-values.ts";
import { ERROR_ROWS } from "../../packages/bench/src/plan/sources-of-error.ts";
import { ClassFolder } from "../support/class-folder.ts";
import { extent, IS_FULL } from "../support/extent.ts";
import { runCommand } from "../support/running.ts";

const school = new ClassFolder();

test("a row that fails by a check gets its design file and no pack; the other's pack is made, and kept by the next run", async () => {
  school.writeRoster("name,iron.width,body.cheek\nanna,50.8,8\nben,50.8,3\n");
  const { exit, out } = await school.run();
  expect(exit).toBe(1);
  expect(out).toMatch(/anna .*written/);
  expect(out).toMatch(/ben .*checks fail/);
  expect(out).toMatch(/ben: Cheek thickness 3 mm \(min 4\): too thin/);
  expect(existsSync(join(school.packs, "anna", "traveller.pdf"))).toBe(true);
  expect(existsSync(join(school.packs, "ben"))).toBe(false);
  school.writeRoster("name,iron.width,body.cheek\nanna,50.8,8\n");
  const stamp = readFileSync(join(school.packs, "anna", "manifest.json"), "utf8");
  expect((await school.run()).out).toMatch(/anna .*unchanged, kept/);
  expect(readFileSync(join(school.packs, "anna", "manifest.json"), "utf8")).toBe(stamp);
  rmSync(join(school.packs, "anna", "layout.pdf"));
  expect((await school.run()).out).toMatch(/anna .*written/);
  expect(existsSync(join(school.packs, "anna", "layout.pdf"))).toBe(true);
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
  const pupils = ["anna,50.8", "ben,50.2", "carla,44.4", "dora,48"];
  // With another mouth every pack is of an older state, so that it is made anew in its place.
  const writeRoster = (mouth: number, rows: readonly string[]) =>
    school.writeRoster(`name,iron.width,mouth.opening\n${rows.map((row) => `${row},${mouth}\n`).join("")}`);
  const killedPupils = IS_FULL ? pupils : pupils.slice(0, 2); // a plane for each of two workers
  const args = ["packages/cli/bin/lamplane.js", "class", school.roster, "--base", school.base, "--out", school.packs];
  const start = () => spawn(process.execPath, args, { stdio: "ignore" });
  writeRoster(0.2, killedPupils);
  const begun = performance.now();
  expect(await ended(start())).toBe(0);
  const whole = performance.now() - begun;
  const random = uniformGenerator(60);
  let killed = 0;
  for (let run = 0; killed < KILLS; run++) {
    if (run % 3 === 0) writeRoster(0.15 + 0.01 * (run % 5), killedPupils);
    if (run % 10 === 9) rmSync(join(school.packs, "anna"), { recursive: true, force: true });
    const child = start();
    const end = ended(child);
    const timer = setTimeout(() => child.kill("SIGKILL"), whole * random());
    if ((await end) === null) killed += 1;
    clearTimeout(timer);
    expect(tornPacks(school.packs)).toEqual([]);
    for (const name of school.planeNames()) expect(school.design(name).name).toBe(name);
  }
  writeRoster(0.25, pupils);
  expect(await ended(start())).toBe(0);
  expect(tornPacks(school.packs)).toEqual([]);
  expect(readdirSync(school.packs).filter((name) => !/[.]/.test(name))).toEqual(["anna", "ben", "carla", "dora"]);
  expect(readdirSync(school.packs).filter((name) => name.startsWith("."))).toEqual([]);
}, 1_800_000);

test("twelve pupils through the whole build, each at a pace of its own: the status is right at every step", async () => {
  cpSync("examples/class", school.at("class"), { recursive: true });
  const roster = school.at("class", "school-roster.yaml");
  const run = (...more: string[]) => runCommand("class", roster, "--out", school.packs, ...more);
  expect((await run("--plan")).exit).toBe(0);
  const uniform = uniformGenerator(12);
  const normal = normalGenerator(uniform);
  const names = school.planeNames();
  expect(names).toHaveLength(12);
  const standing = new Map(names.map((name) => [name, { done: 0, values: new Map<string, number>() }]));
  const isAsked = (name: string, key: MeasuredKey) => expectedValue(school.design(name), key) !== undefined;
  const isRead = (name: string, key: MeasuredKey) => MEASURED_ROWS[key].isOptional !== true && isAsked(name, key);
  const measure = async (name: string, ...values: string[]) => {
    const { exit, err } = await runCommand("measured", school.planeFile(name), ...values, "--read-twice", "--skip");
    expect({ exit, err }, `${name} ${values}`).toEqual({ exit: 0, err: "" });
  };
  /** Does one step of a plane as hands do: each value as it is expected, off by what the step is held to. */
  const workOn = async (name: string, step: Step) => {
    const own = standing.get(name)!;
    const values = STEPS[step].measures
      .filter((key) => isRead(name, key))
      .map((key): [MeasuredKey, number] => {
        const { errors = [], held } = MEASURED_ROWS[key];
        const design = school.design(name);
        const tolerances = [...errors.map((error) => ERROR_ROWS[error].tolerance), ...(held ? [held] : [])];
        const within = Math.max(0, ...tolerances.map((each) => Number(design.hand[each])));
        const drawn = Math.max(0, expectedValue(design, key)! + (normal() * within) / 2);
        return [key, Number((key === "mouthSeen" ? design.mouth.opening : drawn).toFixed(3))];
      });
    await measure(name, ...values.map(([key, value]) => `${key}=${value}`), `done=${step}`);
    own.done += 1;
    for (const [key, value] of values) own.values.set(key, value);
  };
  for (let round = 0; [...standing.values()].some(({ done }) => done < STEP_NAMES.length); round++) {
    for (const name of names) {
      const { done } = standing.get(name)!;
      if (done < STEP_NAMES.length && uniform() < 0.7) await workOn(name, STEP_NAMES[done]!);
    }
    const { planes } = JSON.parse((await run("--status", "--json")).out) as { planes: PlaneStatus[] };
    const text = (await run("--status")).out;
    for (const { name, step, measured, toMeasure, unread, stuckOn } of planes) {
      const { done, values } = standing.get(name)!;
      const next = STEP_NAMES[done];
      const wanted = {
        step: next,
        measured: [...values.keys()],
        toMeasure: next ? STEPS[next].measures.filter((key) => isAsked(name, key)) : [],
        unread: [],
        stuckOn: [],
      };
      expect({ step, measured, toMeasure, unread, stuckOn }, `${name} in round ${round}`).toEqual(wanted);
      expect(school.design(name).measured).toMatchObject(Object.fromEntries(values));
      // Buying wood is the job's first step, so the first that is measured is its second.
      expect(text).toMatch(new RegExp(`^ *\\d+ +${name} +${next ? `${done + 2}/15` : "built"} `, "m"));
    }
    if (round === 3) {
      const name = names.find((each) => standing.get(each)!.values.size > 0)!;
      const before = readFileSync(school.planeFile(name));
      await measure(name, "ironThickness=9");
      const { out } = await run("--status");
      expect(out).toContain("1 stuck.");
      expect(out).toMatch(new RegExp(`\\n${name}: iron thickness: 9 mm is far from`));
      writeFileSync(school.planeFile(name), before);
    }
  }
  const { out } = await run("--status");
  expect(out).toMatch(/^12 planes: 12 built, 0 stuck\./);
}, 900_000);
