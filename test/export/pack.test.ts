// Packs on disk: whatever fails, and whenever, the old pack or the new one stands there whole; what isn't ours stays as it is.
import * as fs from "node:fs";
import * as disk from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type FileSystem, manifestText, WriteError, writePack } from "@lamplane/export";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { fault } from "../support/faults.ts";
import { type Contents, makeEndedMark, NAME, NEW, OLD, packFiles, readContents, runFolder } from "../support/packs.ts";
import { failingFileSystem } from "./failing-disk.ts";

let parent: string;
beforeEach(() => {
  parent = fs.mkdtempSync(join(tmpdir(), "lamplane-pack-"));
});
afterEach(() => fs.rmSync(parent, { recursive: true }));

const { fileSystem: soundDisk } = failingFileSystem({ only: () => false });
const write = (contents: Contents, more = {}) =>
  writePack({ parent, name: NAME, files: packFiles(contents), fileSystem: soundDisk, ...more });
const at = (...path: string[]) => join(parent, ...path);
const present = () => fs.readdirSync(parent).sort();
const whole = (contents: Contents) => Object.fromEntries(packFiles(contents));
const holds = (folder: string, contents: Contents) =>
  JSON.stringify(Object.entries(readContents(folder)).sort()) ===
  JSON.stringify(Object.entries(whole(contents)).sort());

describe("written", () => {
  test("into a folder that was not there yet", async () => {
    const made = await writePack({ parent: at("deep", "er"), name: NAME, files: packFiles(NEW) });
    expect(made).toEqual({ path: at("deep", "er", NAME), replaced: false, kept: [], carried: [] });
    expect(readContents(at("deep", "er", NAME))).toEqual(whole(NEW));
    expect(fs.readdirSync(at("deep", "er"))).toEqual([NAME]);
  });

  test("in an older pack's place, of whose own files nothing stays", async () => {
    await write(OLD);
    expect(await write(NEW)).toEqual({ path: at(NAME), replaced: true, kept: [], carried: [] });
    expect(readContents(at(NAME))).toEqual(whole(NEW));
    expect(present()).toEqual([NAME]);
  });
});

describe("kept in the newer pack", () => {
  const put = (path: string, text: string) => {
    fs.mkdirSync(join(at(NAME), path, ".."), { recursive: true });
    fs.writeFileSync(join(at(NAME), path), text);
  };
  const read = (path: string) => fs.readFileSync(join(at(NAME), path), "utf8");
  const paths = Object.keys(whole(OLD)).filter((path) => path !== "manifest.json");
  const same = (path: string) => ({ from: path, to: path });

  test("files and links that lamplane did not write, at their places, with their rights and times", async () => {
    await write(OLD);
    put("wedge.nc", "G0 X0");
    put("notes/monday.txt", "sharpen");
    fs.symlinkSync("notes", join(at(NAME), "diary"));
    fs.chmodSync(join(at(NAME), "wedge.nc"), 0o600);
    const before = fs.statSync(join(at(NAME), "wedge.nc"));
    const { kept } = await write(NEW);
    expect(kept).toEqual(["diary", "notes/monday.txt", "wedge.nc"].map(same));
    expect([read("wedge.nc"), read("notes/monday.txt")]).toEqual(["G0 X0", "sharpen"]);
    expect(fs.readlinkSync(join(at(NAME), "diary"))).toBe("notes");
    const after = fs.statSync(join(at(NAME), "wedge.nc"));
    expect([after.mode, after.mtimeMs]).toEqual([before.mode, before.mtimeMs]);
    for (const path of Object.keys(NEW)) expect(read(path)).toBe(whole(NEW)[path]);
    expect((await write(OLD)).kept).toHaveLength(3);
  });

  test("a file of the pack that was changed since, beside the newer one", async () => {
    await write(OLD);
    put("figures.json", "mine");
    expect((await write(NEW)).kept).toEqual([{ from: "figures.json", to: "figures.kept.json" }]);
    expect(read("figures.kept.json")).toBe("mine");
    put("figures.json", "mine again");
    expect((await write(OLD)).kept).toEqual([
      { from: "figures.json", to: "figures.kept-2.json" },
      same("figures.kept.json"),
    ]);
    expect([read("figures.kept.json"), read("figures.kept-2.json")]).toEqual(["mine", "mine again"]);
  });

  test("one that is put there while the newer pack is written", async () => {
    await write(OLD);
    const late = failingFileSystem({
      only: (operation, nth) => {
        if (operation === "rename" && fs.existsSync(at(NAME)) && nth > 1 && !fs.existsSync(join(at(NAME), "late.txt")))
          put("late.txt", "late");
        return false;
      },
    });
    const { kept } = await write(NEW, { fileSystem: late.fileSystem });
    expect(kept).toEqual([same("late.txt")]);
    expect(read("late.txt")).toBe("late");
  });

  test("a file of the pack that is changed while the newer one is written", async () => {
    await write(OLD);
    const path = paths[0]!;
    const late = failingFileSystem({
      only: (operation, nth) => {
        if (operation === "rename" && nth > 1 && fs.existsSync(join(at(NAME), path))) put(path, "mine");
        return false;
      },
    });
    const { kept } = await write(NEW, { fileSystem: late.fileSystem });
    expect(kept.map(({ to }) => read(to))).toEqual(["mine"]);
  });

  test("each of the older pack's files is read once, however it stays or goes", async () => {
    await write(OLD);
    put("wedge.nc", "G0 X0");
    fs.appendFileSync(join(at(NAME), paths[0]!), "changed");
    const reads: string[] = [];
    const counting = {
      ...disk,
      readFile: (path: string, encoding?: "utf8") => {
        if (!path.endsWith("manifest.json")) reads.push(path);
        return disk.readFile(path, encoding);
      },
    } as unknown as FileSystem;
    await write(NEW, { fileSystem: counting });
    expect(reads.sort()).toEqual([...paths, "wedge.nc"].map((path) => join(at(NAME), path)).sort());
  });

  test("one in an older pack that a broken-off run had set aside", async () => {
    await write(OLD);
    put("wedge.nc", "G0 X0");
    const left = runFolder(makeEndedMark());
    fs.mkdirSync(at(left));
    fs.renameSync(at(NAME), at(left, "old"));
    fs.cpSync(at(left, "old"), at(NAME), { recursive: true });
    fs.rmSync(join(at(NAME), "wedge.nc"));
    await write(NEW);
    expect(read("wedge.nc")).toBe("G0 X0");
    expect(present()).toEqual([NAME]);
  });

  test("on a disk without second names for a file", async () => {
    await write(OLD);
    put("wedge.nc", "G0 X0");
    const { fileSystem } = failingFileSystem({ only: (operation) => operation === "link", code: "EPERM" });
    await write(NEW, { fileSystem });
    expect(read("wedge.nc")).toBe("G0 X0");
  });

  test("the pack's own other files where only some are made, marked with what they were made from", async () => {
    await write(OLD);
    const only = new Map([["figures.json", "newer"]]);
    const files = only.set("manifest.json", manifestText(NAME, "0.1.0", only, "second state"));
    const { carried } = await writePack({ parent: at(), name: NAME, files, carriesOthers: true });
    const others = paths.filter((path) => path !== "figures.json");
    expect(carried).toEqual(others.sort().map((path) => ({ path, isOlder: true })));
    const manifest = JSON.parse(read("manifest.json"));
    expect(manifest.madeFrom).toBe("second state");
    for (const { path, madeFrom } of manifest.files)
      expect([path, madeFrom]).toEqual([path, path === "figures.json" ? undefined : ""]);
    expect((await write(NEW)).kept).toEqual([]);
    expect(readContents(at(NAME))).toEqual(whole(NEW));
  });
});

describe(
  "left as it is",
  fault({ on: "the place of a pack", survives: "refused in words; what is there stays as it was" }),
  () => {
    const refused = async (what: RegExp) => {
      const before = present();
      const error = await write(NEW).catch((e: unknown) => e);
      expect(error).toBeInstanceOf(WriteError);
      expect((error as Error).message).toMatch(what);
      expect(present()).toEqual(before);
    };

    test("a folder without a manifest", async () => {
      fs.mkdirSync(at(NAME));
      fs.writeFileSync(at(NAME, "letter.txt"), "mine");
      await refused(/a folder that is no pack.*move it away/);
      expect(readContents(at(NAME))).toEqual({ "letter.txt": "mine" });
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
      expect(readContents(at("elsewhere", NAME))).toEqual(whole(OLD));
    });
    test("a file where the packs' folder should be", async () => {
      fs.writeFileSync(at("packs"), "mine");
      for (const wrong of [at("packs"), at("packs", "deeper")]) {
        await expect(writePack({ parent: wrong, name: NAME, files: packFiles(NEW) })).rejects.toThrow(WriteError);
      }
      expect(fs.readFileSync(at("packs"), "utf8")).toBe("mine");
    });
  },
);

describe(
  "after a run that broke off",
  fault({
    on: "a folder of packs",
    survives: "the old pack put back, the rest of the broken run removed, nothing else touched",
  }),
  () => {
    test("an old pack left aside is put back before anything else", async () => {
      await write(OLD);
      const left = runFolder(makeEndedMark());
      fs.mkdirSync(at(left));
      fs.renameSync(at(NAME), at(left, "old"));
      const broken = failingFileSystem({ only: (operation) => operation === "open" });
      await expect(write(NEW, { fileSystem: broken.fileSystem })).rejects.toThrow(WriteError);
      expect(readContents(at(NAME))).toEqual(whole(OLD));
      expect(present()).toEqual([NAME]);
    });
    test("an old pack left aside goes where a newer one stands", async () => {
      await write(OLD);
      const left = runFolder(makeEndedMark());
      fs.mkdirSync(at(left));
      fs.cpSync(at(NAME), at(left, "old"), { recursive: true });
      await write(NEW);
      expect(readContents(at(NAME))).toEqual(whole(NEW));
      expect(present()).toEqual([NAME]);
    });
    test("what broken-off runs of this pack left is removed, and nothing else", async () => {
      const others = [
        `.lamplane-${NAME}-mine.tmp`,
        `.lamplane-${NAME}-12.tmp`,
        runFolder(makeEndedMark(), "big-plane"),
      ];
      const left = [runFolder(makeEndedMark()), runFolder(makeEndedMark())];
      for (const folder of [...others, ...left]) fs.mkdirSync(at(folder));
      fs.mkdirSync(at(left[1]!, "new"));
      fs.writeFileSync(at(left[1]!, "new", "manifest.json"), "half writ");
      await write(NEW);
      expect(present()).toEqual([...others, NAME].sort());
    });
    test.each(["letter.txt", "new/letter.txt", "old/letter.txt", "gone/letter.txt"])(
      "a folder of such a name with somebody else's %s in it stays",
      async (letter) => {
        const theirs = runFolder(makeEndedMark());
        fs.mkdirSync(at(theirs, letter, ".."), { recursive: true });
        fs.writeFileSync(at(theirs, letter), "mine");
        await write(NEW);
        expect(present()).toEqual([theirs, NAME].sort());
        expect(fs.readFileSync(at(theirs, letter), "utf8")).toBe("mine");
      },
    );
    test("a file or a link by such a name stays, and so does what the link leads to", async () => {
      const [file, link] = [runFolder(makeEndedMark()), runFolder(makeEndedMark())];
      await writePack({ parent: at("elsewhere"), name: NAME, files: packFiles(OLD) });
      fs.writeFileSync(at(file), "");
      fs.symlinkSync(at("elsewhere"), at(link));
      await write(NEW);
      expect(present()).toEqual([file, link, "elsewhere", NAME].sort());
      expect(readContents(at("elsewhere", NAME))).toEqual(whole(OLD));
    });
  },
);

describe(
  "while the new pack is written",
  fault({ on: "the place of a pack", survives: "what appeared there stays, or is a pack and is replaced whole" }),
  () => {
    /** A disk on which something happens at the first writing of a file. */
    function meanwhile(happen: () => void) {
      let happened = false;
      return failingFileSystem({
        only: (operation) => {
          if (operation === "writeFile" && !happened) {
            happened = true;
            happen();
          }
          return false;
        },
      }).fileSystem;
    }

    test.each(["nothing", "an old pack"])("a folder that appears in place of %s is left", async (before) => {
      if (before === "an old pack") await write(OLD);
      const fileSystem = meanwhile(() => {
        fs.rmSync(at(NAME), { recursive: true, force: true });
        fs.mkdirSync(at(NAME));
        fs.writeFileSync(at(NAME, "letter.txt"), "mine");
      });
      await expect(write(NEW, { fileSystem })).rejects.toThrow(/a folder that is no pack/);
      expect(readContents(at(NAME))).toEqual({ "letter.txt": "mine" });
      expect(present()).toEqual([NAME]);
    });

    test("a pack that appears is replaced whole", async () => {
      const fileSystem = meanwhile(() => {
        for (const [path, content] of packFiles(OLD)) {
          fs.mkdirSync(at(NAME, path, ".."), { recursive: true });
          fs.writeFileSync(at(NAME, path), content);
        }
      });
      expect(await write(NEW, { fileSystem })).toMatchObject({ replaced: true });
      expect(readContents(at(NAME))).toEqual(whole(NEW));
      expect(present()).toEqual([NAME]);
    });
  },
);

test("every file is on the disk before the pack takes its place, and every folder's list of names", async () => {
  const done: string[] = [];
  const { fileSystem } = failingFileSystem({
    only: (operation) => {
      done.push(operation);
      return false;
    },
  });
  await write(NEW, { fileSystem });
  const files = packFiles(NEW).size;
  const folders = ["", "jigs", "parts", "parts/inner"].length;
  const before = done.slice(0, done.indexOf("rename"));
  const times = (operation: string) => before.filter((each) => each === operation).length;
  expect(times("writeFile")).toBe(files);
  expect(times("sync")).toBe(files + folders);
  before.forEach((each, i) => void (each === "writeFile" && expect(before[i + 1]).toBe("sync")));
  expect(done.slice(done.lastIndexOf("rename"))).toContain("sync"); // the parent's names
});

describe(
  "names that lead out of the pack or not to a file are refused",
  fault({
    fault: "a name that leads out of the pack, or that some disk does not take",
    on: "the names in a pack",
    survives: "refused; nothing written",
  }),
  () => {
    test.each(["../x", "/x", "a/../../x", "a//b", "", ".", "a\\b", "c:x", "nul.stl", "a.", "COM1", "lpt9.dxf"])(
      "file %j",
      async (path) => {
        const files = packFiles(NEW).set(path, "x");
        await expect(writePack({ parent, name: NAME, files })).rejects.toThrow(/not a path/);
        expect(present()).toEqual([]);
      },
    );
    test.each(["..", "a/b", "", ".hidden", "nul", "plane.", "Con", "aux.2"])("pack %j", async (name) => {
      await expect(writePack({ parent, name, files: packFiles(NEW, name) })).rejects.toThrow(/not a name/);
    });
    test("two paths that differ by capitals, a file that is a folder, no manifest", async () => {
      await expect(write({ a: "", A: "" })).rejects.toThrow(/capitals/);
      await expect(write({ a: "", "a/b": "" })).rejects.toThrow(/both/);
      await expect(writePack({ parent, name: NAME, files: new Map() })).rejects.toThrow(/manifest/);
    });
  },
);

describe(
  "the disk fails",
  fault({
    on: "every call to the disk under a pack",
    survives: "the old pack or the new one, whole; what to do in words",
  }),
  () => {
    test.each(["EACCES", "EROFS", "ENOSPC", "ENOTDIR", "EPERM", "EIO"])("%s is told as what to do", async (code) => {
      const { fileSystem } = failingFileSystem({ only: (operation) => operation === "mkdir", code });
      await expect(write(NEW, { fileSystem })).rejects.toMatchObject({
        name: "CouldNotWrite",
        path: at(NAME),
        cause: { code },
      });
    });

    async function operations(): Promise<number> {
      const counted = failingFileSystem({ only: () => false });
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
        const { fileSystem } = failingFileSystem({ only: (_, nth) => nth === k });
        const error = await write(NEW, { fileSystem }).then(
          () => undefined,
          (e: unknown) => e,
        );
        if (error !== undefined) expect(error).toBeInstanceOf(WriteError);
        if (error === undefined) expect(readContents(at(NAME)), `operation ${k}`).toEqual(whole(NEW));
        else if (replacing) expect(readContents(at(NAME)), `operation ${k}`).toEqual(whole(OLD));
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
        const { fileSystem } = failingFileSystem({ only: (_, nth) => nth >= k });
        await write(NEW, { fileSystem }).catch((error) => expect(error).toBeInstanceOf(WriteError));
        const left = [at(NAME), ...present().map((folder) => at(folder, "old"))].filter((path) => fs.existsSync(path));
        expect(
          left.some((folder) => holds(folder, OLD) || holds(folder, NEW)),
          `from operation ${k}`,
        ).toBe(true);
        await write(NEW);
        expect(readContents(at(NAME))).toEqual(whole(NEW));
        expect(present()).toEqual([NAME]);
        fs.rmSync(at(NAME), { recursive: true });
      }
    });
  },
);
