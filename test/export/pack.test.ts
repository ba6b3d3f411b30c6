// Packs on disk: whatever fails, and whenever, the old pack or the new one stands there whole; what isn't ours stays as it is.
import { spawnSync } from "node:child_process";
import * as fs from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { CouldNotWrite, manifestText, writePack } from "@lamplane/export";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { failing } from "./failing-disk.ts";

const NAME = "small-plane";
let parent: string;
beforeEach(() => {
  parent = fs.mkdtempSync(join(tmpdir(), "lamplane-pack-"));
});
afterEach(() => fs.rmSync(parent, { recursive: true }));

type Contents = Record<string, string>;
const OLD: Contents = { "figures.json": "old", "jigs/pin-guide.dxf": "old", "gone.svg": "old" };
const NEW: Contents = { "figures.json": "new", "jigs/pin-guide.dxf": "new", "parts/inner/wedge.dxf": "new" };
function packFiles(contents: Contents, name = NAME): Map<string, string> {
  const files = new Map(Object.entries(contents));
  return files.set("manifest.json", manifestText(name, "0.1.0", files));
}
const write = (contents: Contents, more = {}) => writePack({ parent, name: NAME, files: packFiles(contents), ...more });
const at = (...path: string[]) => join(parent, ...path);
const present = () => fs.readdirSync(parent).sort();

function contentsOf(folder: string): Contents {
  const files = fs.readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
  const rows = files.map((file) => join(file.parentPath, file.name)).sort();
  return Object.fromEntries(rows.map((path) => [path.slice(folder.length + 1), fs.readFileSync(path, "utf8")]));
}
const whole = (contents: Contents) => Object.fromEntries(packFiles(contents));
const isWhole = (folder: string, contents: Contents) =>
  JSON.stringify(Object.entries(contentsOf(folder)).sort()) === JSON.stringify(Object.entries(whole(contents)).sort());

describe("written", () => {
  test("into a folder that was not there yet", async () => {
    const made = await writePack({ parent: at("deep", "er"), name: NAME, files: packFiles(NEW) });
    expect(made).toEqual({ path: at("deep", "er", NAME), replaced: false });
    expect(contentsOf(at("deep", "er", NAME))).toEqual(whole(NEW));
    expect(fs.readdirSync(at("deep", "er"))).toEqual([NAME]);
  });

  test("in an older pack's place, of which nothing stays", async () => {
    await write(OLD);
    expect(await write(NEW)).toEqual({ path: at(NAME), replaced: true });
    expect(contentsOf(at(NAME))).toEqual(whole(NEW));
    expect(present()).toEqual([NAME]);
  });
});

describe("left as it is", () => {
  const refused = async (what: RegExp) => {
    const before = present();
    const error = await write(NEW).catch((e: unknown) => e);
    expect(error).toBeInstanceOf(CouldNotWrite);
    expect((error as Error).message).toMatch(what);
    expect(present()).toEqual(before);
  };

  test("a folder without a manifest", async () => {
    fs.mkdirSync(at(NAME));
    fs.writeFileSync(at(NAME, "letter.txt"), "mine");
    await refused(/a folder that is no pack.*move it away/);
    expect(contentsOf(at(NAME))).toEqual({ "letter.txt": "mine" });
  });
  test.each([
    ["another design's manifest", manifestText("big-plane", "0.1.0", new Map())],
    ["another program's manifest", '{ "name": "small-plane" }'],
    ["a manifest that is no JSON", "small-plane"],
    ["a manifest of null", "null"],
  ])("a folder with %s", async (_, manifest) => {
    fs.mkdirSync(at(NAME));
    fs.writeFileSync(at(NAME, "manifest.json"), manifest);
    await refused(/a folder that is no pack/);
    expect(fs.readFileSync(at(NAME, "manifest.json"), "utf8")).toBe(manifest);
  });
  test("an empty folder", async () => {
    fs.mkdirSync(at(NAME));
    await refused(/a folder/);
  });
  test("a file", async () => {
    fs.writeFileSync(at(NAME), "mine");
    await refused(/there is a file/);
    expect(fs.readFileSync(at(NAME), "utf8")).toBe("mine");
  });
  test("a symbolic link, even to a pack of this design", async () => {
    await writePack({ parent: at("elsewhere"), name: NAME, files: packFiles(OLD) });
    fs.symlinkSync(at("elsewhere", NAME), at(NAME));
    await refused(/symbolic link/);
    expect(contentsOf(at("elsewhere", NAME))).toEqual(whole(OLD));
  });
  test("a folder of someone's under the name for the old pack", async () => {
    fs.mkdirSync(at(`.lamplane-${NAME}.old`));
    await refused(/\.old.*a folder/);
  });
  test("a file where the packs' folder should be", async () => {
    fs.writeFileSync(at("packs"), "mine");
    for (const wrong of [at("packs"), at("packs", "deeper")]) {
      await expect(writePack({ parent: wrong, name: NAME, files: packFiles(NEW) })).rejects.toThrow(CouldNotWrite);
    }
    expect(fs.readFileSync(at("packs"), "utf8")).toBe("mine");
  });
});

describe("after a run that broke off", () => {
  const deadProcess = () => spawnSync(process.execPath, ["-e", ""]).pid;

  test("an old pack left aside is put back before anything else", async () => {
    await write(OLD);
    fs.renameSync(at(NAME), at(`.lamplane-${NAME}.old`));
    const broken = failing({ only: (operation) => operation === "open" });
    await expect(write(NEW, { fileSystem: broken.fileSystem })).rejects.toThrow(CouldNotWrite);
    expect(contentsOf(at(NAME))).toEqual(whole(OLD));
    expect(present()).toEqual([NAME]);
  });
  test("an old pack aside of a newer one is removed", async () => {
    await write(OLD);
    fs.cpSync(at(NAME), at(`.lamplane-${NAME}.old`), { recursive: true });
    await write(NEW);
    expect(present()).toEqual([NAME]);
  });
  test("temporary folders of processes that are gone are removed, and no others", async () => {
    const others = [
      `.lamplane-${NAME}-${process.ppid}.tmp`,
      `.lamplane-${NAME}-mine.tmp`,
      `.lamplane-big-plane-${deadProcess()}.tmp`,
    ];
    for (const folder of [...others, `.lamplane-${NAME}-${deadProcess()}.tmp`, `.lamplane-${NAME}-${process.pid}.tmp`])
      fs.mkdirSync(at(folder));
    await write(NEW);
    expect(present()).toEqual([...others, NAME].sort());
  });
  test("a folder of such a name that holds somebody else's letter stays", async () => {
    const theirs = `.lamplane-${NAME}-${deadProcess()}.tmp`;
    fs.mkdirSync(at(theirs));
    fs.writeFileSync(at(`${theirs}/letter.txt`), "mine");
    await write(NEW);
    expect(present()).toEqual([theirs, NAME].sort());
    expect(fs.readFileSync(at(`${theirs}/letter.txt`), "utf8")).toBe("mine");
  });
});

describe("names that lead out of the pack or not to a file are refused", () => {
  test.each(["../x", "/x", "a/../../x", "a//b", "", ".", "a\\b", "c:x", "nul.stl", "a."])("file %j", async (path) => {
    const files = packFiles(NEW).set(path, "x");
    await expect(writePack({ parent, name: NAME, files })).rejects.toThrow(/not a path/);
    expect(present()).toEqual([]);
  });
  test.each(["..", "a/b", "", ".hidden"])("pack %j", async (name) => {
    await expect(writePack({ parent, name, files: packFiles(NEW, name) })).rejects.toThrow(/not a name/);
  });
  test("two paths that differ by capitals, a file that is a folder, no manifest", async () => {
    await expect(write({ a: "", A: "" })).rejects.toThrow(/capitals/);
    await expect(write({ a: "", "a/b": "" })).rejects.toThrow(/both/);
    await expect(writePack({ parent, name: NAME, files: new Map() })).rejects.toThrow(/manifest/);
  });
});

describe("the disk fails", () => {
  test.each(["EACCES", "EROFS", "ENOSPC", "ENOTDIR", "EPERM", "EIO"])("%s is told as what to do", async (code) => {
    const { fileSystem } = failing({ only: (operation) => operation === "mkdir", code });
    await expect(write(NEW, { fileSystem })).rejects.toMatchObject({
      name: "CouldNotWrite",
      path: at(NAME),
      cause: { code },
    });
  });

  async function operations(): Promise<number> {
    const counted = failing({ only: () => false });
    await write(OLD);
    await write(NEW, { fileSystem: counted.fileSystem });
    fs.rmSync(at(NAME), { recursive: true });
    return counted.count();
  }

  test.each([true, false])("at any one operation (over an older pack: %s)", async (replacing) => {
    const count = await operations();
    expect(count).toBeGreaterThan(30);
    for (let k = 1; k <= count; k++) {
      if (replacing) await write(OLD);
      const { fileSystem } = failing({ only: (_, nth) => nth === k });
      const error = await write(NEW, { fileSystem }).then(
        () => undefined,
        (e: unknown) => e,
      );
      if (error !== undefined) expect(error).toBeInstanceOf(CouldNotWrite);
      if (error === undefined) expect(contentsOf(at(NAME)), `operation ${k}`).toEqual(whole(NEW));
      else if (replacing) expect(contentsOf(at(NAME)), `operation ${k}`).toEqual(whole(OLD));
      else expect(present(), `operation ${k}`).toEqual([]);
      await write(NEW);
      expect(present(), `operation ${k}`).toEqual([NAME]);
      fs.rmSync(at(NAME), { recursive: true });
    }
  });

  test("from any one operation on, as when the process ends there", async () => {
    const count = await operations();
    for (let k = 1; k <= count; k++) {
      await write(OLD);
      const { fileSystem } = failing({ only: (_, nth) => nth >= k });
      await write(NEW, { fileSystem }).catch((error) => expect(error).toBeInstanceOf(CouldNotWrite));
      const left = [NAME, `.lamplane-${NAME}.old`].map((name) => at(name)).filter((path) => fs.existsSync(path));
      expect(
        left.some((folder) => isWhole(folder, OLD) || isWhole(folder, NEW)),
        `from operation ${k}`,
      ).toBe(true);
      await write(NEW);
      expect(contentsOf(at(NAME))).toEqual(whole(NEW));
      expect(present()).toEqual([NAME]);
      fs.rmSync(at(NAME), { recursive: true });
    }
  });
});
