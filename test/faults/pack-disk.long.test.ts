// Disks that refuse and things in the way, as the command meets them: exit 3, a clear message, nothing lost, no litter.
import { spawnSync } from "node:child_process";
import * as fs from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { writePack } from "@lamplane/export";
import { afterEach, beforeAll, beforeEach, describe, expect, type TestContext, test } from "vitest";
import { buildIfStale, COMMAND } from "../support/built.ts";
import { fault } from "../support/faults.ts";
import { isWholePack, OLD, packFiles, readContents } from "../support/packs.ts";
import { runCommand } from "../support/running.ts";

const NAME = "apprentice-smoother";
const DESIGN = `examples/${NAME}.yaml`;
let parent: string;
let mounted = false;
beforeAll(buildIfStale);
beforeEach(() => {
  parent = fs.mkdtempSync(join(tmpdir(), "lamplane-disk-"));
});
afterEach(() => {
  if (mounted) spawnSync("umount", [parent]);
  mounted = false;
  fs.rmSync(parent, { recursive: true });
});

/** Puts a small disk in place of the folder; the test is skipped where that is not allowed. */
function needDisk(context: TestContext, size: string): void {
  mounted = spawnSync("mount", ["-t", "tmpfs", "-o", `size=${size}`, "tmpfs", parent]).status === 0;
  if (mounted) return;
  const message = "mounting a small disk needs root and a system that lets it";
  console.warn(`skipped "${context.task.name}": ${message}`);
  context.skip(message);
}

const oldPack = () => writePack({ parent, name: NAME, files: packFiles(OLD, NAME) });
const at = (...path: string[]) => join(parent, ...path);

async function refused(what: RegExp): Promise<void> {
  const before = fs.readdirSync(parent);
  const { exit, out, err } = await runCommand("build", DESIGN, "--out", parent);
  expect({ exit, out }, err).toEqual({ exit: 3, out: "" });
  expect(err).toMatch(what);
  expect(err).toContain(at(NAME));
  expect(err).not.toMatch(/\n\s+at |EN[A-Z]+|EROFS/);
  expect(fs.readdirSync(parent)).toEqual(before);
}

const KEPT = { on: "the disk under a pack", survives: "exit 3, what is wrong in words; the old pack whole, no litter" };
const NEEDS = { ...KEPT, needs: "root, to mount a small disk" };

describe("a full disk", fault(NEEDS), () => {
  test("loses nothing of the old pack, and is as full as before", async (context) => {
    needDisk(context, "160k");
    await oldPack();
    const free = fs.statfsSync(parent).bfree;
    await refused(/the disk is full; free some space or choose a folder on another disk/);
    expect(isWholePack(at(NAME))).toBe(true);
    expect(readContents(at(NAME))["figures.json"]).toBe("old");
    expect(fs.statfsSync(parent).bfree).toBe(free);
  });
  test("that is full to the last byte", async (context) => {
    needDisk(context, "64k");
    try {
      fs.writeFileSync(at("filler"), new Uint8Array(1 << 20));
    } catch {
      // full, as wanted
    }
    await refused(/the disk is full/);
  });
  test("that has room again takes the pack", async (context) => {
    needDisk(context, "4m");
    fs.writeFileSync(at("filler"), new Uint8Array(3_900_000));
    await refused(/the disk is full/);
    fs.rmSync(at("filler"));
    expect(await runCommand("build", DESIGN, "--out", parent)).toMatchObject({ exit: 0 });
    expect(fs.readdirSync(parent)).toEqual([NAME]);
    expect(isWholePack(at(NAME))).toBe(true);
  });
});

test("a disk that can only be read", fault(NEEDS), async (context) => {
  needDisk(context, "1m");
  await oldPack();
  expect(spawnSync("mount", ["-o", "remount,ro", parent]).status).toBe(0);
  await refused(/the disk can only be read; choose a folder on another disk/);
  expect(isWholePack(at(NAME))).toBe(true);
});

describe("in the way", fault({ ...KEPT, on: "the place of a pack" }), () => {
  test("a file", async () => {
    fs.writeFileSync(at(NAME), "mine");
    await refused(/there is a file; it was left as it is: move it away/);
    expect(fs.readFileSync(at(NAME), "utf8")).toBe("mine");
  });
  test("a folder that is no pack, with a manifest of its own", async () => {
    fs.mkdirSync(at(NAME));
    fs.writeFileSync(at(NAME, "manifest.json"), '{ "kind": "letters" }');
    await refused(/there is a folder that is no pack of this design; it was left as it is/);
    expect(readContents(at(NAME))).toEqual({ "manifest.json": '{ "kind": "letters" }' });
  });
  test("a symbolic link to a pack, to nothing, and to itself", async () => {
    await writePack({ parent: at("elsewhere"), name: NAME, files: packFiles(OLD, NAME) });
    for (const leadsTo of [at("elsewhere", NAME), at("nowhere"), at(NAME)]) {
      fs.symlinkSync(leadsTo, at(NAME));
      await refused(/there is a symbolic link, which is not followed/);
      expect(fs.readlinkSync(at(NAME))).toBe(leadsTo);
      fs.unlinkSync(at(NAME));
    }
    expect(isWholePack(at("elsewhere", NAME))).toBe(true);
  });
  test("a file where the packs' folder should be", async () => {
    fs.writeFileSync(at("packs"), "mine");
    for (const out of [at("packs"), at("packs", "deeper")]) {
      const { exit, err } = await runCommand("build", DESIGN, "--out", out);
      expect(exit).toBe(3);
      expect(err).toMatch(/could not write .*packs/);
    }
    expect(fs.readdirSync(parent)).toEqual(["packs"]);
    expect(fs.readFileSync(at("packs"), "utf8")).toBe("mine");
  });
});

describe("a folder that cannot be made", fault(KEPT), () => {
  const PLACES = ["/proc/x", "/proc/x/y", "/sys/x", "/dev/null/x"].filter((path) =>
    fs.existsSync(path.slice(0, path.indexOf("/", 1))),
  );

  test.each(PLACES)("%s", async (place) => {
    const begun = performance.now();
    const { exit, out, err } = await runCommand("build", DESIGN, "--out", place);
    expect({ exit, out }, err).toEqual({ exit: 3, out: "" });
    expect(err).toMatch(/could not write \/(proc|sys|dev)\/\S+: [a-z].*; choose another folder/);
    expect(err).not.toMatch(/bug|\bE[A-Z]{3,}/);
    expect(performance.now() - begun).toBeLessThan(3000);
    const vary = ["--vary", "bed.angle=47,48,49", "--plots", place];
    expect(await runCommand("sweep", DESIGN, ...vary)).toMatchObject({ exit: 3, out: "" });
  });

  test("a name longer than the disk takes", async () => {
    const { exit, err } = await runCommand("build", DESIGN, "--out", at("x".repeat(300)));
    expect({ exit, err }).toEqual({ exit: 3, err: expect.stringMatching(/its path is too long for the disk; choose/) });
    expect(fs.readdirSync(parent)).toEqual([]);
  });
});

test("a limit on the size of a file", fault(KEPT), async () => {
  await oldPack();
  fs.writeFileSync(at("plane.yaml"), "iron: { width: 48, thickness: 3.6 }\n".padEnd(4000, "# "));
  const limited = (...args: string[]) =>
    spawnSync("sh", ["-c", 'ulimit -f 1; exec "$0" "$@"', process.execPath, COMMAND, ...args], { encoding: "utf8" });
  const before = fs.readFileSync(at("plane.yaml"), "utf8");
  for (const args of [
    ["build", DESIGN, "--out", parent],
    ["measured", at("plane.yaml"), "ironWidth=48"],
  ]) {
    const { status, stderr } = limited(...args);
    expect({ status, stderr }).toEqual({
      status: 3,
      stderr: expect.stringMatching(/larger than is allowed; raise the limit/),
    });
  }
  expect(isWholePack(at(NAME))).toBe(true);
  expect(fs.readFileSync(at("plane.yaml"), "utf8")).toBe(before);
  expect(fs.readdirSync(parent).sort()).toEqual([NAME, "plane.yaml"]);
});
