// Several runs that write one pack into one folder: one at a time, each whole, and a run is only ever cleared up after when it is gone.
import { spawn, spawnSync } from "node:child_process";
import * as fs from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { WriteError, writePack } from "@lamplane/export";
import { afterEach, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { beginRun, endRun, processIdOf, runStatus } from "../../packages/export/src/pack-owner.ts";
import { buildIfStale, COMMAND, startCommand } from "../support/built.ts";
import { fault } from "../support/faults.ts";
import { isWholePack, makeEndedMark, NAME, NEW, packFiles, readContents, runFolder } from "../support/packs.ts";

const WRITER = "test/faults/stopping-writer.js";
let parent: string;
beforeAll(buildIfStale);
beforeEach(() => {
  parent = fs.mkdtempSync(join(tmpdir(), "lamplane-turns-"));
});
afterEach(() => fs.rmSync(parent, { recursive: true }));
const at = (...path: string[]) => join(parent, ...path);
const write = (more = {}) => writePack({ parent, name: NAME, files: packFiles(NEW), ...more });
/** In the midst of writing its files. */
const MIDST = "20";

const TURNS = {
  on: "a folder of packs",
  survives: "each run writes its pack whole or refuses in words; nothing of the other's is touched",
};

describe("while another process writes the pack", fault(TURNS), () => {
  test("a run refuses in words when its patience ends, and touches nothing of the other's", async () => {
    const { child, ended, says } = startCommand(WRITER, parent, "wait", MIDST, "other");
    await says("waiting");
    const before = fs.readdirSync(parent);
    const error = await write({ patience: 120 }).catch((e: unknown) => e);
    expect(error).toBeInstanceOf(WriteError);
    expect((error as Error).message).toMatch(
      new RegExp(`another run of lamplane, process ${child.pid}, is writing it now; wait until it has ended`),
    );
    expect(fs.readdirSync(parent)).toEqual(before);
    child.stdin!.end();
    expect(await ended).toMatchObject({ code: 0 });
    expect(fs.readdirSync(parent)).toEqual([NAME]);
    expect(readContents(at(NAME))["figures.json"]).toBe("other");
  });

  test("a run that waits goes on when the other has ended", async () => {
    const { child, ended, says } = startCommand(WRITER, parent, "wait", MIDST, "other");
    await says("waiting");
    const waiting = write({ patience: 30_000 });
    child.stdin!.end();
    expect(await waiting).toMatchObject({ replaced: true });
    expect(await ended).toMatchObject({ code: 0 });
    expect(readContents(at(NAME))).toEqual(Object.fromEntries(packFiles(NEW)));
    expect(fs.readdirSync(parent)).toEqual([NAME]);
  });

  test("the command ends with 3 and says which process it is", async () => {
    const { child, ended, says } = startCommand(WRITER, parent, "wait", MIDST, "other");
    await says("waiting");
    const design = at("small-plane.yaml");
    fs.writeFileSync(design, "name: small-plane\niron: { width: 48, thickness: 3.6 }\n");
    const second = await startCommand(COMMAND, "build", design, "--out", parent).ended;
    expect(second).toMatchObject({ code: 3, out: "" });
    expect(second.err).toMatch(
      new RegExp(`could not write .*small-plane: another run of lamplane, process ${child.pid},`),
    );
    expect(second.err).not.toMatch(/\n\s+at /);
    child.kill("SIGKILL");
    await ended;
    await write();
    expect(fs.readdirSync(parent).sort()).toEqual([NAME, "small-plane.yaml"].sort());
  });
});

test("runs of one process wait for each other", fault(TURNS), async () => {
  const written = await Promise.all(Array.from({ length: 6 }, () => write()));
  expect(written.filter(({ replaced }) => !replaced)).toHaveLength(1);
  expect(fs.readdirSync(parent)).toEqual([NAME]);
  expect(isWholePack(at(NAME))).toBe(true);
});

test("processes that start together each write the pack whole, one after the other", fault(TURNS), async () => {
  const words = ["a", "b", "c", "d"];
  const ends = await Promise.all(words.map((word) => startCommand(WRITER, parent, "kill", "0", word).ended));
  for (const end of ends) expect(end).toMatchObject({ code: 0 });
  expect(fs.readdirSync(parent)).toEqual([NAME]);
  expect(isWholePack(at(NAME))).toBe(true);
  expect(words).toContain(readContents(at(NAME))["figures.json"]);
});

describe("the run behind a mark", () => {
  const changed = (mark: string, field: number, to: string) => mark.split(".").with(field, to).join(".");
  const deadProcess = () => String(spawnSync(process.execPath, ["-e", ""]).pid);

  test("goes on while this process is at it, and is gone afterwards", () => {
    const mark = beginRun();
    expect(runStatus(mark)).toBe("running");
    endRun(mark);
    expect(runStatus(mark)).toBe("gone");
  });
  test("is gone where its process is, or where its number is a later process's, or before the machine was started", () => {
    const mark = beginRun();
    endRun(mark);
    expect(runStatus(changed(mark, 0, deadProcess()))).toBe("gone");
    expect(runStatus(changed(mark, 0, String(process.ppid)))).toBe("gone"); // started at another time
    expect(runStatus(changed(mark, 2, "00000000"))).toBe("gone");
  });
  test("of another copy of the program in this process goes on as long as the process", () => {
    const mark = changed(makeEndedMark(), 5, "00000000");
    expect(runStatus(mark)).toBe("running");
  });
  test("is gone where its process has ended but its parent has not noticed", async () => {
    // ends once its parent has become another program, which never asks for it
    const child = 'while [ "$(cat /proc/$PPID/comm)" != sleep ]; do :; done';
    const parentOfDead = spawn("/bin/sh", ["-c", `sh -c '${child}' & echo $!; exec sleep 30`], { stdio: "pipe" });
    const id = await new Promise<string>((resolve) =>
      parentOfDead.stdout.once("data", (text) => resolve(`${text}`.trim())),
    );
    while (!/\) Z /.test(fs.readFileSync(`/proc/${id}/stat`, "utf8"))) await new Promise((r) => setTimeout(r, 5));
    expect(runStatus(changed(makeEndedMark(), 0, id))).toBe("gone");
    parentOfDead.kill("SIGKILL");
  });
  test.each([1, 3])("is not to be known on another machine or in another container (field %i)", async (field) => {
    const mark = changed(makeEndedMark(), field, "00000000");
    expect(runStatus(mark)).toBe("unknown");
    fs.mkdirSync(at(runFolder(mark)));
    await expect(write({ patience: 0 })).rejects.toThrow(/cannot be seen from here.*after 10 minutes/);
    expect(fs.readdirSync(parent)).toEqual([runFolder(mark)]);
    const longAgo = Date.now() / 1000 - 11 * 60;
    fs.utimesSync(at(runFolder(mark)), longAgo, longAgo);
    await write({ patience: 0 });
    expect(fs.readdirSync(parent)).toEqual([NAME]);
  });
  test.each(["", "12", "0.0.0.0.0.0.0", "../../x", `${"1".repeat(9)}.x`])("%j is no mark", (text) =>
    expect(processIdOf(text)).toBeUndefined(),
  );
});
