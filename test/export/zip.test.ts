// A pack as one zip: an outside program takes out of it what went in, byte for byte.
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { zipArchive } from "@lamplane/export";
import { afterAll, expect, test } from "vitest";
import { seeded } from "../support/designs.ts";
import { requireProgram, runForStdout } from "../support/outside-programs.ts";
import { readContents } from "../support/packs.ts";

const folder = mkdtempSync(join(tmpdir(), "lamplane-zip-"));
afterAll(() => rmSync(folder, { recursive: true }));

const random = seeded(3);
const noise = Uint8Array.from({ length: 100_000 }, () => Math.floor(256 * random()));
const files = new Map<string, Uint8Array | string>([
  ["manifest.json", '{ "unit": "mm" }\n'],
  ["parts/bed-block.stl", noise],
  ["parts/empty.dxf", ""],
  ["drawings/deep/er.svg", "Ø 12.7 × 46, ½ in".repeat(1000)],
  ["10", "a name that is a number"],
]);

test("unzip finds no fault in it and takes every file out as it went in", (context) => {
  const unzip = requireProgram(context, "unzip");
  const archive = join(folder, "pack.zip");
  writeFileSync(archive, zipArchive(files, "small-plane"));
  expect(runForStdout(unzip, ["-t", archive])).toMatch(/No errors detected/);
  runForStdout(unzip, ["-q", archive, "-d", join(folder, "out")]);
  const paths = [...files.keys()].map((path) => `small-plane/${path}`).sort();
  expect(Object.keys(readContents(join(folder, "out"))).sort()).toEqual(paths);
  expect(runForStdout(unzip, ["-Z1", archive]).trim().split("\n").sort()).toEqual(paths);
  for (const [path, content] of files)
    expect(readFileSync(join(folder, "out", "small-plane", path)).equals(Buffer.from(content)), path).toBe(true);
});

test("dates are the format's first, so the same files give the same bytes in every time zone", (context) => {
  const archive = join(folder, "dated.zip");
  writeFileSync(archive, zipArchive(files));
  const dates = runForStdout(requireProgram(context, "unzip"), ["-Z", "-T", archive]).match(/\d{8}\.\d{6}/g);
  expect(new Set(dates)).toEqual(new Set(["19800101.000000"])); // PKWARE APPNOTE 4.4.6: MS-DOS time begins in 1980
  const zone = process.env.TZ;
  const archives = ["Pacific/Kiritimati", "Pacific/Pago_Pago"].map((TZ) => {
    process.env.TZ = TZ;
    return Buffer.from(zipArchive(files)).toString("base64");
  });
  if (zone === undefined) delete process.env.TZ;
  else process.env.TZ = zone;
  expect(new Set([...archives, readFileSync(archive, "base64")]).size).toBe(1);
});
