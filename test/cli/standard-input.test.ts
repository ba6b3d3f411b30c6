// A design read from the standard input, and names that are empty: each works, or says plainly what to do.
import { execFileSync, spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { beforeAll, expect, test } from "vitest";
import { buildIfStale, COMMAND } from "../support/built.ts";
import { runCommand } from "../support/running.ts";

const SMOOTHER = "examples/apprentice-smoother.yaml";
beforeAll(buildIfStale);

const run = (input: string | Uint8Array, ...args: string[]) =>
  spawnSync(process.execPath, [COMMAND, ...args], { input, encoding: "utf8" });

test("check and next read the same from the standard input as from the file", async () => {
  const text = readFileSync(SMOOTHER);
  expect(run(text, "check", "-").stdout).toBe((await runCommand("check", SMOOTHER)).out);
  const next = run(text, "next", "-");
  expect(next.stdout).toContain("lamplane measured FILE ironThickness=");
});

test("a design that comes slowly, in pieces, is waited for", () => {
  const slowly = `(printf 'iron: { width: 48, '; sleep 0.3; printf 'thickness: 3.6 }') | "$0" "$1" check - --json`;
  expect(
    JSON.parse(execFileSync("sh", ["-c", slowly, process.execPath, COMMAND], { encoding: "utf8" })).mayBeBuilt,
  ).toBe(true);
});

test.each([
  ["iron: { width: 4", /^standard input:1:\d+: not YAML/],
  ["", /^standard input:1:1: the design is empty/],
  ["#".repeat(300_000), /^standard input:1:1: more than 262144 bytes/],
])("what is no design is refused with its place: %.20s", (input, message) => {
  const { status, stderr } = run(input, "check", "-");
  expect({ status, stderr }).toEqual({ status: 2, stderr: expect.stringMatching(message) });
});

test.each([
  [
    ["measured", "-", "ironWidth=48"],
    /measured -: the standard input can be read but not written; name the design file/,
  ],
  [["view", "-"], /view -: the standard input/],
  [["new", "-"], /new -: the standard input/],
  [["survey", "-", "-"], /holds one file; name the other/],
  [["check", ""], /No file name\. Name the design file/],
  [["survey", SMOOTHER, ""], /No file name\. Name the readings file/],
  [["new", ""], /No file name\. Name the file to write/],
  [["build", SMOOTHER, "--out", ""], /--out "": an empty text/],
  [["sweep", SMOOTHER, "--vary", "bed.angle=47..48:1", "--plots", ""], /--plots "": an empty text/],
  [["measured", SMOOTHER, ""], /An empty text: write KEY=VALUE/],
])("%j is refused in words", async (args, message) => {
  expect(await runCommand(...args)).toMatchObject({ exit: 2, out: "", err: expect.stringMatching(message) });
});
