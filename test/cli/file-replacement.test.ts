// A file's text replaced: what stays of the file, and what a crash at any call to the disk leaves of the two texts.
import * as fs from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { replaceFile, type SyncDisk, wholeCopyName } from "../../packages/cli/src/file-replacement.ts";
import { fault } from "../support/faults.ts";
import { runCommand } from "../support/running.ts";

const OLD = "iron: { width: 48, thickness: 3.6 }\n";
const NEW = `${OLD}measured: { ironWidth: 48 }\n`;
let folder = "";
let file = "";
beforeEach(() => {
  folder = fs.mkdtempSync(join(tmpdir(), "lamplane-test-"));
  file = join(folder, "plane.yaml");
  fs.writeFileSync(file, OLD);
});
afterEach(() => fs.rmSync(folder, { recursive: true, force: true }));

const modeOf = (path: string): string => (fs.statSync(path).mode & 0o7777).toString(8);
const read = (path = file): string => fs.readFileSync(path, "utf8");

test.each(["664", "600", "666", "755"])("rights %s stay, whatever the mask of new files takes away", (mode) => {
  fs.chmodSync(file, Number.parseInt(mode, 8));
  replaceFile(file, NEW);
  expect({ mode: modeOf(file), text: read() }).toEqual({ mode, text: NEW });
  expect(fs.readdirSync(folder)).toEqual(["plane.yaml"]);
});

test.skipIf(process.getuid?.() !== 0)("owner and group stay where they may be given", () => {
  fs.chownSync(file, 1234, 2345);
  replaceFile(file, NEW);
  expect(fs.statSync(file)).toMatchObject({ uid: 1234, gid: 2345 });
});

test("a second name of the file (hard link) has the new text too", () => {
  fs.linkSync(file, join(folder, "same.yaml"));
  replaceFile(file, OLD.replace("48", "4"));
  expect(read(join(folder, "same.yaml"))).toBe(OLD.replace("48", "4"));
  expect(fs.statSync(file).nlink).toBe(2);
  expect(fs.readdirSync(folder).sort()).toEqual(["plane.yaml", "same.yaml"]);
});

test("a symbolic link stays one, and what it leads to has the new text", () => {
  fs.symlinkSync("plane.yaml", join(folder, "link.yaml"));
  replaceFile(join(folder, "link.yaml"), NEW);
  expect(fs.readlinkSync(join(folder, "link.yaml"))).toBe("plane.yaml");
  expect(read()).toBe(NEW);
});

test("a file whose owner cannot be kept is written in place", () => {
  const { ino } = fs.statSync(file);
  const noChown = () => {
    throw Object.assign(new Error("EPERM"), { code: "EPERM" });
  };
  replaceFile(file, NEW, { ...fs, fchownSync: noChown });
  expect(fs.statSync(file).ino).toBe(ino);
  expect(read()).toBe(NEW);
});

/** A disk that is gone from its k-th call on, as for a process that is killed there. */
function dyingDisk(k: number): { disk: SyncDisk; calls: () => number } {
  let calls = 0;
  const disk = Object.fromEntries(
    Object.entries(fs)
      .filter(([name, value]) => name.endsWith("Sync") && typeof value === "function")
      .map(([name, call]) => [
        name,
        (...args: unknown[]) => {
          calls += 1;
          if (calls >= k) throw new Error("gone");
          const few = name === "writeSync" ? [args[0], args[1], args[2], 1, args[4]] : args; // a byte at a time
          return (call as (...all: unknown[]) => unknown)(...few);
        },
      ]),
  );
  return { disk: disk as unknown as SyncDisk, calls: () => calls };
}

describe.each(["one name", "two names"])(
  "killed at each call to the disk in turn, a file of %s",
  fault({
    on: "a process that writes a design file",
    fault: "killed at each call to the disk in turn",
    survives: "the old text or the new one, whole",
  }),
  (names) => {
    test("the old text or the new one is there, whole, and a whole copy is spoken of", async () => {
      const second = join(folder, "same.yaml");
      const begin = () => {
        fs.rmSync(folder, { recursive: true });
        fs.mkdirSync(folder);
        fs.writeFileSync(file, OLD);
        if (names === "two names") fs.linkSync(file, second);
      };
      begin();
      const whole = dyingDisk(Number.POSITIVE_INFINITY);
      replaceFile(file, NEW, whole.disk);
      expect(whole.calls()).toBeGreaterThan(NEW.length);
      let torn = 0;
      for (let k = 1; k <= whole.calls(); k++) {
        begin();
        expect(() => replaceFile(file, NEW, dyingDisk(k).disk), `call ${k}`).toThrow();
        const copy = wholeCopyName(file);
        if ([OLD, NEW].includes(read())) continue;
        torn += 1;
        expect(read(copy), `call ${k}`).toBe(NEW);
      }
      expect(torn > 0).toBe(names === "two names");
    });
  },
);

test("a text that is torn is refused with the name of its whole copy, which no later run writes over", async () => {
  fs.linkSync(file, join(folder, "same.yaml"));
  fs.writeFileSync(wholeCopyName(file), NEW);
  fs.writeFileSync(file, "iron: { width: 4");
  expect((await runCommand("check", file)).err).toContain(`whole in ${wholeCopyName(file)}`);
  expect(() => replaceFile(file, OLD)).toThrow(/left the whole text in .*\.plane\.yaml\.whole; compare the two/);
  expect(read(wholeCopyName(file))).toBe(NEW);
  expect(fs.readdirSync(folder).sort()).toEqual([".plane.yaml.whole", "plane.yaml", "same.yaml"]);
});
