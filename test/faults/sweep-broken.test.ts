// A sweep that is broken off: killed, out of disk, its workers gone, its part spoiled, or run twice at once. The table is whole or not there.
import { spawnSync } from "node:child_process";
import * as fs from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { bringUpToDate, COMMAND, started } from "../support/built.ts";
import { fault } from "../support/faults.ts";
import { ran } from "../support/running.ts";

const SMOOTHER = "examples/apprentice-smoother.yaml";
const VARY = ["--vary", "bed.angle=43..57:0.05", "--vary", "wedge.angle=5,7", "--vary", "iron.thickness=2.5,3"];
const SWEEP = ["sweep", SMOOTHER, ...VARY];
const ON = "a sweep into a file";
const RESUMED = { on: ON, survives: "no table or the whole one; the next run goes on and gives the same bytes" };

const root = fs.mkdtempSync(join(tmpdir(), "lamplane-sweep-"));
let whole = "";
let folder = "";
let round = 0;
const out = () => join(folder, "table.csv");
const parts = () => fs.readdirSync(folder).filter((name) => name.endsWith(".part"));
const part = () => join(folder, parts()[0]!);
const command = () => started(COMMAND, ...SWEEP, "--out", out());

beforeAll(async () => {
  bringUpToDate();
  whole = (await ran(...SWEEP)).out;
  expect(whole.split("\r\n")).toHaveLength(1126);
});
beforeEach(() => {
  folder = join(root, String(round++));
  fs.mkdirSync(folder);
});
afterEach(() => fs.rmSync(folder, { recursive: true, force: true }));
afterAll(() => fs.rmSync(root, { recursive: true, force: true }));

/** The table once it has been run to its end, with nothing beside it. */
async function isWholeAfterAll(said: RegExp): Promise<void> {
  const { code, out: told, err } = await command().ended;
  expect({ code, err }).toEqual({ code: 0, err: "" });
  expect(told).toMatch(said);
  expect(fs.readFileSync(out(), "utf8")).toBe(whole);
  expect(fs.readdirSync(folder)).toEqual(["table.csv"]);
}

test("killed again and again", fault(RESUMED), async () => {
  let killed = 0;
  for (let least = 0; !fs.existsSync(out()); killed++) {
    const { child, ended } = command();
    while (child.exitCode === null && !(parts().length > 0 && fs.statSync(part()).size > least))
      await new Promise((resolve) => setTimeout(resolve, 2));
    child.kill("SIGKILL");
    await ended;
    if (parts().length > 0) least = fs.statSync(part()).size;
    if (!fs.existsSync(out())) expect(whole.startsWith(fs.readFileSync(part(), "utf8"))).toBe(true);
  }
  expect(killed).toBeGreaterThan(2);
  expect(fs.readFileSync(out(), "utf8")).toBe(whole);
  expect(fs.readdirSync(folder)).toEqual(["table.csv"]);
});

test.each(["throw", "exit"])(
  "worker threads that end by themselves (%s)",
  fault({ ...RESUMED, fault: "worker threads that end by themselves" }),
  async (how) => {
    const env = { ...process.env, NODE_OPTIONS: "--require ./test/faults/ending-worker.cjs", LAMPLANE_TEST_END: how };
    const { status, stderr } = spawnSync(process.execPath, [COMMAND, ...SWEEP, "--out", out()], {
      env,
      encoding: "utf8",
    });
    expect(status).toBe(4);
    expect(stderr).toMatch(/has a bug: (broken off on purpose|a worker of the sweep ended by itself, with 7)/);
    expect(stderr).not.toMatch(/\n\s+at |EBADF/);
    expect(fs.existsSync(out())).toBe(false);
    expect(whole.startsWith(fs.readFileSync(part(), "utf8"))).toBe(true);
    await isWholeAfterAll(/1124 designs/);
  },
);

test("a disk that fills up", fault({ ...RESUMED, needs: "root, to mount a small disk" }), async (context) => {
  const mounted = spawnSync("mount", ["-t", "tmpfs", "-o", "size=40k", "tmpfs", folder]).status === 0;
  if (!mounted) context.skip("mounting a small disk needs root and a system that lets it");
  try {
    const { code, err } = await command().ended;
    expect(code).toBe(3);
    expect(err).toMatch(/could not write .*table\.csv: the disk is full; free some space/);
    expect(err).not.toMatch(/\n\s+at |ENOSPC/);
    expect(parts()).toHaveLength(1);
    expect(spawnSync("mount", ["-o", "remount,size=1m", folder]).status).toBe(0);
    await isWholeAfterAll(/1124 designs/);
  } finally {
    spawnSync("umount", [folder]);
  }
});

describe("what a broken-off run left behind, spoiled", fault(RESUMED), () => {
  const lines = () => whole.split("\r\n");
  const upTo = (count: number) =>
    `${lines()
      .slice(0, count + 1)
      .join("\r\n")}\r\n`;
  test.each<[string, () => string | Buffer, RegExp]>([
    ["cut in the middle of a line", () => whole.slice(0, upTo(300).length + 17), /1124 designs, 300 of them/],
    ["cut between the two signs of a line's end", () => upTo(300).slice(0, -1), /1124 designs, 299 of them/],
    ["ended by NULs, as after a loss of power", () => `${upTo(200)}${"\0".repeat(4096)}`, /1124 designs, 200 of them/],
    [
      "with a line of another design",
      () => upTo(200).replace(lines()[100]!, lines()[500]!),
      /1124 designs, 99 of them/,
    ],
    ["with a line doubled", () => `${upTo(200)}${lines()[200]}\r\n`, /1124 designs, 200 of them/],
    ["with more lines than there are designs", () => `${whole}${lines()[1]}\r\n`, /1124 designs, 1124 of them/],
    ["of another sweep", () => "body.length,stops,warnings\r\n200,,\r\n", /1124 designs\./],
    ["only half of its head", () => whole.slice(0, 20), /1124 designs\./],
    ["bytes", () => Buffer.from([0xff, 0xfe, 0, 13, 10, 0x80]), /1124 designs\./],
    ["nothing", () => "", /1124 designs\./],
  ])("%s", async (_, content, said) => {
    const name = await partName();
    fs.writeFileSync(join(folder, name), content());
    const { exit, out: told } = await ran(...SWEEP, "--out", out());
    expect(exit).toBe(0);
    expect(told).toMatch(said);
    expect(fs.readFileSync(out(), "utf8")).toBe(whole);
    expect(fs.readdirSync(folder)).toEqual(["table.csv"]);
  });

  let known: string | undefined;
  /** Name of the part file, which follows from the sweep alone. */
  async function partName(): Promise<string> {
    if (known !== undefined) return known;
    const { child, ended } = command();
    while (parts().length === 0) await new Promise((resolve) => setTimeout(resolve, 2));
    known = parts()[0]!;
    child.kill("SIGKILL");
    await ended;
    fs.rmSync(join(folder, known));
    return known;
  }
});

test(
  "two at once into one file",
  fault({ ...RESUMED, survives: "the whole table or none; one that was disturbed says so, with exit 3" }),
  async () => {
    const ends = await Promise.all([command(), command()].map(({ ended }) => ended));
    for (const { code, err } of ends) {
      expect([0, 3]).toContain(code);
      if (code === 3) expect(err).toMatch(/another run of the same sweep writes it at the same time/);
      expect(err).not.toMatch(/bug|\n\s+at /);
    }
    if (fs.existsSync(out())) expect(fs.readFileSync(out(), "utf8")).toBe(whole);
    await isWholeAfterAll(/1124 designs/);
  },
);

test(
  "what cannot be written to: a folder, a missing folder, a file that is no table, a link to nowhere",
  fault({ on: ON, survives: "exit 3 in words before the work is done; what is there stays" }),
  async () => {
    const at = (name: string) => join(folder, name);
    fs.mkdirSync(at("folder"));
    fs.writeFileSync(at("notes.csv"), "my notes\n");
    fs.symlinkSync(at("nowhere/x.csv"), at("link.csv"));
    const before = fs.readdirSync(folder);
    for (const [name, told] of [
      ["folder", /no table of a sweep; it was left as it is/],
      ["missing/x.csv", /its folder is not there/],
      ["notes.csv", /no table of a sweep; it was left as it is/],
      ["notes.csv/x.csv", /a part of its path is a file/],
      ["x".repeat(300), /its path is too long/],
    ] as const) {
      const { exit, out: said, err } = await ran(...SWEEP, "--out", at(name));
      expect({ exit, said }, err).toEqual({ exit: 3, said: "" });
      expect(err).toMatch(told);
      expect(err).not.toMatch(/\n\s+at |bug/);
      expect(fs.readdirSync(folder)).toEqual(before);
    }
    expect(fs.readFileSync(at("notes.csv"), "utf8")).toBe("my notes\n");
  },
);
