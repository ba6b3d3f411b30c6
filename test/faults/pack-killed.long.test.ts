// A process killed while it writes a pack: the old pack or the new one can be had whole, and the next run clears up after it.
import * as fs from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { writePack } from "@lamplane/export";
import { afterAll, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { buildIfStale, bundleScript, COMMAND, startCommand } from "../support/built.ts";
import { seeded } from "../support/designs.ts";
import { IS_FULL } from "../support/extent.ts";
import { fault } from "../support/faults.ts";
import { isWholePack, NAME, NEW, OLD, packFiles, readContents } from "../support/packs.ts";

const root = fs.mkdtempSync(join(tmpdir(), "lamplane-killed-"));
let writer: string;
beforeAll(async () => {
  buildIfStale();
  writer = await bundleScript("test/faults/stopping-writer.js", join(root, "writer"));
});
afterAll(() => fs.rmSync(root, { recursive: true }));

/** Folders in which a whole pack can be had after a kill: its place, or where a run keeps it that is put back first thing. */
function wholePacks(parent: string): string[] {
  const folders = fs.readdirSync(parent).map((name) => join(parent, name));
  return [...folders, ...folders.map((folder) => join(folder, "old"))].filter(isWholePack);
}

const KILLED = {
  on: "a process that writes a pack",
  survives: "the old pack or the new one, whole; the next run clears up",
};

describe.each([true, false])(
  "killed at each call to the disk in turn (over an older pack: %s)",
  fault({ ...KILLED, fault: "killed at each call to the disk in turn" }),
  (replacing) => {
    test("nothing is lost, and the next run leaves nothing but its pack", async () => {
      const calls = await callsOf(replacing);
      expect(calls).toBeGreaterThan(30);
      const killedInMidst: number[] = [];
      const killedAt = async (k: number) => {
        const parent = join(root, `${replacing}-${k}`);
        fs.mkdirSync(parent);
        if (replacing) await writePack({ parent, name: NAME, files: packFiles(OLD) });
        expect(await startCommand(writer, parent, "kill", String(k), "new").ended).toMatchObject({ signal: "SIGKILL" });
        const left = fs.readdirSync(parent);
        if (left.some((name) => name !== NAME)) killedInMidst.push(k);
        const packs = wholePacks(parent).map((folder) => readContents(folder)["figures.json"]);
        if (replacing) expect(packs, `call ${k}: ${left}`).toSatisfy((all: string[]) => all.length > 0);
        if (left.includes(NAME)) expect(isWholePack(join(parent, NAME)), `call ${k}`).toBe(true);
        await writePack({ parent, name: NAME, files: packFiles(NEW) });
        expect(fs.readdirSync(parent), `call ${k}`).toEqual([NAME]);
        expect(readContents(join(parent, NAME)), `call ${k}`).toEqual(Object.fromEntries(packFiles(NEW)));
        fs.rmSync(parent, { recursive: true });
      };
      const each = replacing ? 1 : 3; // what comes before the old pack is moved is the same in both
      const all = Array.from({ length: Math.floor(calls / each) }, (_, i) => calls - each * i);
      for (let i = 0; i < all.length; i += 3) await Promise.all(all.slice(i, i + 3).map(killedAt));
      expect(killedInMidst.length).toBeGreaterThan(all.length / 2); // there was something to put in order
    });
  },
);

/** How many calls to the disk a run makes that is not stopped. */
async function callsOf(replacing: boolean): Promise<number> {
  const parent = join(root, `counted-${replacing}`);
  if (replacing) await writePack({ parent, name: NAME, files: packFiles(OLD) });
  const { out } = await startCommand(writer, parent, "kill", "0", "new").ended;
  return Number(/calls (\d+)/.exec(out)?.[1]);
}

describe("the command", () => {
  const SMOOTHER = "examples/apprentice-smoother.yaml";
  const random = seeded(8);
  let parent = "";
  let round = 0;
  const pack = () => join(parent, "apprentice-smoother");
  // The disk sees the same calls whatever is in the files, and parts are made in a sixth of the time.
  const SECTIONS = IS_FULL ? [] : ["--only", "parts"];
  const built = (...more: string[]) => startCommand(COMMAND, "build", SMOOTHER, "--out", parent, ...SECTIONS, ...more);

  beforeEach(() => {
    parent = join(root, `command-${round++}`);
  });

  test("killed at random moments of replacing a pack", { ...fault(KILLED), timeout: 180_000 }, async () => {
    // five packs, each in a process of its own
    expect(await built().ended).toMatchObject({ code: 0 });
    const before = readContents(pack());
    let midst = 0;
    for (let k = 0; k < 3; k++) {
      const { child, ended } = built("--with", `bed.angle=${47 + (k % 2)}`);
      await appears(parent, child);
      await new Promise((resolve) => setTimeout(resolve, random() * 15));
      child.kill("SIGKILL");
      if ((await ended).signal === "SIGKILL") midst++;
      expect(wholePacks(parent).length, `round ${k}: ${fs.readdirSync(parent)}`).toBeGreaterThan(0);
      if (fs.existsSync(pack())) expect(isWholePack(pack())).toBe(true);
    }
    expect(midst).toBeGreaterThan(0);
    expect(await built().ended).toMatchObject({ code: 0, err: "" });
    expect(fs.readdirSync(parent)).toEqual(["apprentice-smoother"]);
    expect(readContents(pack())).toEqual(before);
  });

  /** Waits until a run has announced itself beside the pack, or has ended. */
  async function appears(folder: string, child: { exitCode: number | null }): Promise<void> {
    const known = new Set(fs.readdirSync(folder));
    while (child.exitCode === null && fs.readdirSync(folder).every((name) => known.has(name)))
      await new Promise((resolve) => setTimeout(resolve, 1));
  }
});
