// A sweep that is broken off: killed, out of disk, its workers gone, its part spoiled, or run twice at once. The table is whole or not there.
import { spawnSync } from "node:child_process";
import * as fs from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { main } from "@lamplane/cli";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { buildIfStale, COMMAND, runWithEndingWorkers, startCommand } from "../support/built.ts";
import { fault } from "../support/faults.ts";
import { runCommand } from "../support/running.ts";

const SMOOTHER = "examples/apprentice-smoother.yaml";
/** As many designs as take three turns of the workers. */
const SWEEP = ["sweep", SMOOTHER, "--vary", "bed.angle=43..55.5:0.05", "--vary", "wedge.angle=5,7"];
const COUNT = 502;
const ON = "a sweep into a file";
const RESUMED = { on: ON, survives: "no table or the whole one; the next run goes on and gives the same bytes" };

const root = fs.mkdtempSync(join(tmpdir(), "lamplane-sweep-"));
let whole = "";
let folder = "";
let round = 0;
const out = () => join(folder, "table.csv");
const parts = () => fs.readdirSync(folder).filter((name) => name.endsWith(".part"));
const part = () => join(folder, parts()[0]!);
const command = () => startCommand(COMMAND, ...SWEEP, "--out", out());

beforeAll(async () => {
  buildIfStale();
  whole = (await runCommand(...SWEEP)).out;
  expect(whole.split("\r\n")).toHaveLength(COUNT + 2);
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

/** The command, which sends itself a signal at one of its writes. */
function stopped(signal: string, at: number) {
  process.env.LAMPLANE_TEST_STOP = `${signal} ${at}`;
  try {
    return startCommand("--require", "./test/faults/stopping-sweep.cjs", COMMAND, ...SWEEP, "--out", out());
  } finally {
    delete process.env.LAMPLANE_TEST_STOP;
  }
}

test("killed again and again", fault(RESUMED), async () => {
  for (const [at, lines] of [
    [1, 0],
    [2, 40],
    [2, 80],
  ] as const) {
    expect(await stopped("SIGKILL", at).ended).toMatchObject({ signal: "SIGKILL" });
    expect(fs.readdirSync(folder)).toEqual(parts());
    const left = fs.readFileSync(part(), "utf8");
    expect(whole.startsWith(left)).toBe(true);
    expect(left.split("\r\n")).toHaveLength(lines + 2);
  }
  await isWholeAfterAll(/502 designs, 80 from the run/);
});

test.each(["throw", "exit"] as const)(
  "worker threads that end by themselves (%s)",
  fault({ ...RESUMED, fault: "worker threads that end by themselves" }),
  async (how) => {
    const { status, stderr } = runWithEndingWorkers(how, 2, ...SWEEP, "--out", out());
    expect(status).toBe(4);
    expect(stderr).toMatch(/has a bug: (broken off on purpose|a worker of the sweep ended by itself, with 7)/);
    expect(stderr).not.toMatch(/\n\s+at |EBADF/);
    expect(fs.existsSync(out())).toBe(false);
    expect(whole.startsWith(fs.readFileSync(part(), "utf8"))).toBe(true);
    if (how === "exit") await isWholeAfterAll(/502 designs/);
  },
);

test("a disk that fills up", fault({ ...RESUMED, needs: "root, to mount a small disk" }), async (context) => {
  const mounted = spawnSync("mount", ["-t", "tmpfs", "-o", "size=24k", "tmpfs", folder]).status === 0;
  if (!mounted) context.skip("mounting a small disk needs root and a system that lets it");
  try {
    const { code, err } = await command().ended;
    expect(code).toBe(3);
    expect(err).toMatch(/could not write .*table\.csv: the disk is full; free some space/);
    expect(err).not.toMatch(/\n\s+at |ENOSPC/);
    const before = parts();
    expect(before).toHaveLength(1);
    expect((await command().ended).code).toBe(3); // still full
    expect(fs.readdirSync(folder)).toEqual(before);
    expect(spawnSync("mount", ["-o", "remount,size=1m", folder]).status).toBe(0);
    await isWholeAfterAll(/502 designs/);
  } finally {
    spawnSync("umount", [folder]);
  }
});

describe("what a broken-off run left behind, spoiled", fault(RESUMED), () => {
  const SMALL = ["sweep", SMOOTHER, "--vary", "bed.angle=43..57:1", "--vary", "wedge.angle=5,7"];
  let small = "";
  let name = "";
  beforeAll(async () => {
    folder = join(root, "named");
    fs.mkdirSync(folder);
    const noteName = () => {
      name = parts()[0] ?? name;
    };
    await main([...SMALL, "--out", out()], { out: () => {}, err: noteName, showsProgress: true });
    expect(name).toMatch(/^\.table\.csv\..*\.part$/);
    small = fs.readFileSync(out(), "utf8");
    expect(small.split("\r\n")).toHaveLength(32);
  });
  const lines = () => small.split("\r\n");
  const upTo = (count: number) =>
    lines()
      .slice(0, count + 1)
      .concat("")
      .join("\r\n");

  test.each<[string, () => string | Buffer, RegExp]>([
    ["cut in the middle of a line", () => small.slice(0, upTo(20).length + 17), /30 designs, 20 from the run/],
    ["cut between the two signs of a line's end", () => upTo(20).slice(0, -1), /30 designs, 19 from the run/],
    ["ended by NULs, as after a loss of power", () => `${upTo(20)}${"\0".repeat(4096)}`, /30 designs, 20 from the run/],
    ["with a line of another design", () => upTo(20).replace(lines()[10]!, lines()[25]!), /30 designs, 9 from the run/],
    ["with a line doubled", () => `${upTo(20)}${lines()[20]}\r\n`, /30 designs, 20 from the run/],
    ["with more lines than there are designs", () => `${small}${lines()[1]}\r\n`, /30 designs, 30 from the run/],
    ["of another sweep", () => "body.length,stops,warnings\r\n200,,\r\n", /30 designs\./],
    ["only half of its head", () => small.slice(0, 20), /30 designs\./],
    ["bytes", () => Buffer.from([0xff, 0xfe, 0, 13, 10, 0x80]), /30 designs\./],
    ["nothing", () => "", /30 designs\./],
  ])("%s", async (_, content, said) => {
    fs.writeFileSync(join(folder, name), content());
    const { exit, out: told } = await runCommand(...SMALL, "--out", out());
    expect(exit).toBe(0);
    expect(told).toMatch(said);
    expect(fs.readFileSync(out(), "utf8")).toBe(small);
    expect(fs.readdirSync(folder)).toEqual(["table.csv"]);
  });
});

test(
  "two at once into one file",
  fault({ on: ON, survives: "the whole table of the one that ends first; the other says so, with exit 3" }),
  async () => {
    const first = stopped("SIGSTOP", 2);
    await first.says("stopped");
    const second = await command().ended;
    expect(second).toMatchObject({ code: 0, err: "" });
    expect(second.out).toMatch(/502 designs, 40 from the run/);
    first.child.kill("SIGCONT");
    const { code, err } = await first.ended;
    expect(code).toBe(3);
    expect(err).toMatch(/another run of the same sweep is writing it/);
    expect(fs.readFileSync(out(), "utf8")).toBe(whole);
    expect(fs.readdirSync(folder)).toEqual(["table.csv"]);
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
      ["folder", /not the table of a sweep; it was left as it is/],
      ["missing/x.csv", /its folder is not there/],
      ["notes.csv", /not the table of a sweep; it was left as it is/],
      ["notes.csv/x.csv", /a part of its path is a file/],
      ["x".repeat(300), /its path is too long/],
    ] as const) {
      const { exit, out: said, err } = await runCommand(...SWEEP, "--out", at(name));
      expect({ exit, said }, err).toEqual({ exit: 3, said: "" });
      expect(err).toMatch(told);
      expect(err).not.toMatch(/\n\s+at |bug/);
      expect(fs.readdirSync(folder)).toEqual(before);
    }
    expect(fs.readFileSync(at("notes.csv"), "utf8")).toBe("my notes\n");
  },
);
