// A reader who leaves early, as `lamplane … | head -1` does, ends the command quietly; output that cannot be kept is told.
import { spawn } from "node:child_process";
import { closeSync, existsSync, mkdtempSync, openSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeAll, beforeEach, expect, test } from "vitest";
import { buildIfStale, COMMAND } from "../support/built.ts";
import { fault } from "../support/faults.ts";

const SMOOTHER = "examples/apprentice-smoother.yaml";
let folder = "";
beforeAll(buildIfStale);
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "lamplane-test-"));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

/** Runs the command with nobody at the other end of its standard output, or only until its first words. */
function runUnread(args: readonly string[], { after = "start" }: { after?: "start" | "first words" } = {}) {
  const child = spawn(process.execPath, [COMMAND, ...args], { stdio: ["ignore", "pipe", "pipe"] });
  if (after === "start") child.stdout.destroy();
  else child.stdout.once("data", () => child.stdout.destroy());
  let err = "";
  child.stderr!.on("data", (data) => {
    err += data;
  });
  return new Promise<{ code: number | null; err: string }>((resolve) =>
    child.on("close", (code) => resolve({ code, err })),
  );
}

test(
  "a build that nobody listens to is whole all the same",
  fault({ on: "standard output", survives: "the pack whole, exit 0" }),
  async () => {
    const { code, err } = await runUnread(["build", SMOOTHER, "--out", folder]);
    expect(code).toBe(0);
    expect(err).not.toMatch(/EPIPE|bug|\bat /);
    expect(readdirSync(folder)).toEqual(["apprentice-smoother"]);
    expect(existsSync(join(folder, "apprentice-smoother", "manifest.json"))).toBe(true);
  },
);

test("a failing check keeps its exit code", async () => {
  expect(await runUnread(["check", SMOOTHER, "--with", "sole.allowance=12"])).toEqual({ code: 1, err: "" });
});

test(
  "a sweep stops when its reader leaves, long before its last design",
  fault({ on: "standard output", survives: "the command ends quietly" }),
  async () => {
    const vary = [
      "--vary",
      "bed.angle=43..57:0.1",
      "--vary",
      "wedge.angle=4..9:0.01",
      "--vary",
      "iron.thickness=3,4,5",
    ];
    expect(await runUnread(["sweep", SMOOTHER, ...vary], { after: "first words" })).toEqual({ code: 0, err: "" });
  },
);

test.skipIf(!existsSync("/dev/full"))(
  "a disk that is full under the output is told, with exit 3",
  fault({ on: "standard output", survives: "exit 3, told in words", needs: "/dev/full" }),
  async () => {
    const full = openSync("/dev/full", "w");
    const child = spawn(process.execPath, [COMMAND, "figures", SMOOTHER], { stdio: ["ignore", full, "pipe"] });
    closeSync(full);
    let err = "";
    child.stderr!.on("data", (data) => {
      err += data;
    });
    expect(await new Promise((resolve) => child.on("close", resolve))).toBe(3);
    expect(err).toMatch(/could not write the standard output: the disk is full/);
  },
);
