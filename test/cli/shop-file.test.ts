// Shop files from the command line: named in a design or given, written to start from, and refused with their place.
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { runCommand } from "../support/running.ts";

let folder = "";
const at = (name: string) => join(folder, name);
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "lamplane-shop-"));
  mkdirSync(at("shops"));
  writeFileSync(at("plane.yaml"), "shop: shops/ours.yaml\niron: { width: 48, thickness: 3.6 }\n");
  writeFileSync(at("shops/ours.yaml"), "shop: { sawLimit: 20 }\n");
  writeFileSync(at("other.yaml"), "shop: { sawLimit: 60 }\n");
});
afterEach(() => rmSync(folder, { recursive: true }));

const warnsOfSaw = async (...more: string[]): Promise<boolean> =>
  (await runCommand("check", at("plane.yaml"), ...more)).out.includes("Saw angle for bed");

test("a design's shop file is found from the design's folder; --shop takes its place", async () => {
  expect(await warnsOfSaw()).toBe(true);
  expect(await warnsOfSaw("--shop", at("other.yaml"))).toBe(false);
});

test("a fault in a shop file is refused with its file and line", async () => {
  writeFileSync(at("shops/ours.yaml"), "# ours\nshop: { kerf: 99 }\n");
  const { exit, err } = await runCommand("check", at("plane.yaml"));
  expect(exit).toBe(2);
  expect(err).toContain(`${at("shops/ours.yaml")}:2:15: shop.kerf: read 99; allowed: 0.2 mm to 8 mm`);
});

test("a shop file that is not there is refused at its name in the design", async () => {
  rmSync(at("shops/ours.yaml"));
  const { exit, err } = await runCommand("next", at("plane.yaml"));
  expect(exit).toBe(2);
  expect(err).toContain(`${at("plane.yaml")}:1:7: shop: shop file shops/ours.yaml: `);
  expect(err).toContain("`lamplane new --shop FILE` writes one");
  expect((await runCommand("next", at("plane.yaml"), "--shop", at("no.yaml"))).exit).toBe(2);
});

test("new --shop writes a shop file, never over anything, and takes no option of a design", async () => {
  expect((await runCommand("new", at("new.yaml"), "--shop", "--units", "in")).exit).toBe(0);
  expect(readFileSync(at("new.yaml"), "utf8")).toMatch(/^units: in$/m);
  expect((await runCommand("check", at("plane.yaml"), "--shop", at("new.yaml"))).exit).toBe(0);
  expect((await runCommand("new", at("new.yaml"), "--shop")).exit).toBe(3);
  expect((await runCommand("new", at("more.yaml"), "--shop", "--all")).exit).toBe(2);
});

test("a design that `new` writes leaves the saw to the shop file: its kerf and paper count", async () => {
  await runCommand("new", at("fresh.yaml"));
  writeFileSync(at("fine-saw.yaml"), "shop: { kerf: 1.2, paper: A3 }\n");
  const kerfOf = async (...more: string[]) =>
    JSON.parse((await runCommand("stock", at("fresh.yaml"), "--json", ...more)).out).billet.needed.width;
  expect((await kerfOf()) - (await kerfOf("--shop", at("fine-saw.yaml")))).toBeCloseTo(2 * (3.2 - 1.2), 9);
});

test("where --shop is given, each value of the design that stands over it is noted with both, and a list; equal ones are not", async () => {
  const design = "shop: { kerf: 3.2, paper: A4, sawLimit: 60 }\niron: { width: 48, thickness: 3.6 }\ncutters: []\n";
  writeFileSync(at("own.yaml"), design);
  writeFileSync(
    at("given.yaml"),
    "shop: { kerf: 1.2, paper: A3, sawLimit: 60 }\ncutters: [{ name: six, kind: end, diameter: 6, cutting: 20 }]\n",
  );
  for (const command of ["check", "figures"]) {
    const { err } = await runCommand(command, at("own.yaml"), "--shop", at("given.yaml"));
    const end = "delete the key to follow the shop file";
    expect(err.trim().split("\n").sort()).toEqual([
      `${at("own.yaml")}:1:15: note: shop.kerf: the design's own 3.2 mm holds, not 1.2 mm of ${at("given.yaml")}; ${end}`,
      `${at("own.yaml")}:1:27: note: shop.paper: the design's own A4 holds, not A3 of ${at("given.yaml")}; ${end}`,
      `${at("own.yaml")}:3:1: note: cutters: the design's own list holds, not that of ${at("given.yaml")}; ${end}`,
    ]);
  }
  writeFileSync(at("own.yaml"), `shop: { file: given.yaml, kerf: 3.2 }\n${design.split("\n")[1]}\n`);
  expect((await runCommand("check", at("own.yaml"))).err).toBe("");
});

test("measured keeps a design's shop file, and its values", async () => {
  expect((await runCommand("measured", at("plane.yaml"), "ironThickness=3.62")).exit).toBe(0);
  expect(readFileSync(at("plane.yaml"), "utf8")).toMatch(/^shop: shops\/ours\.yaml\n/);
});

test("a build with a shop that has a router holds its programs, without being asked for them", async () => {
  writeFileSync(
    at("shops/ours.yaml"),
    "router: { area: { width: 600, depth: 400, height: 80 } }\ncutters: [{ name: end-6, diameter: 6, cutting: 22 }]\n",
  );
  const { exit, out } = await runCommand("build", at("plane.yaml"), "--out", at("packs"), "--json");
  expect(exit).toBe(0);
  const { files } = JSON.parse(out) as { files: string[] };
  expect(files).toEqual(expect.arrayContaining(["parts/cheek-left.stl", "router/cheek-left.ngc", "router.pdf"]));
  expect(readFileSync(at("packs/plane/router/set-ups.txt"), "utf8")).toMatch(/Bed block.*needs 49\.9 mm/);
});

test("check, build and explain name what the router refuses, with its figure", async () => {
  writeFileSync(
    at("shops/ours.yaml"),
    "router: { area: { width: 600, depth: 400, height: 80 } }\ncutters: [{ name: end-6, diameter: 6, cutting: 22 }]\n",
  );
  const refused = /Bed block, whole, lying on its side {2}\(router-reach\)\n.* reaches 22 mm; needs 49\.9 mm/;
  expect((await runCommand("check", at("plane.yaml"))).out).toMatch(refused);
  expect((await runCommand("build", at("plane.yaml"), "--out", at("packs"), "--only", "router")).out).toMatch(refused);
  const { router } = JSON.parse((await runCommand("check", at("plane.yaml"), "--json")).out) as {
    router: { programs: number; notCut: { code: string; setUp: string; value: number; limit: number }[] };
  };
  const bed = router.notCut.find(({ setUp }) => setUp === "bed-block");
  expect(bed).toMatchObject({ code: "router-reach", value: 22 });
  expect(bed!.limit).toBeCloseTo(49.9, 6); // core of 48 + 1.6 and 0.3 into the spoilboard
  for (const { code } of router.notCut) expect((await runCommand("explain", code)).exit).toBe(0);
  expect((await runCommand("explain", "router-reach")).out).toContain("cutters.cutting");
});

test("check, build and explain say how many of the shop's sheets are laid out, and what lies on none with its figure", async () => {
  const board = "{ name: board, material: wood, length: 700, width: 200, thickness: 8 }";
  writeFileSync(at("shops/ours.yaml"), `sheets: [${board}, { name: slab, length: 400, width: 300, thickness: 60 }]\n`);
  const build = ["build", at("plane.yaml"), "--out", at("packs"), "--only", "router"];
  const { out } = await runCommand(...build);
  expect(out).toMatch(/Sheets: 1 sheet laid out, 7 left over:/);
  const refused = / {2}wedge-sled {2}\(sheet-plate\)\n {6}It must be 8 mm to 20 mm thick/;
  expect(out).toMatch(refused);
  const checked = await runCommand("check", at("plane.yaml"));
  expect(checked.out).toMatch(/Sheets: 1 sheet laid out, 7 left over:/);
  expect(checked.out).toMatch(refused);
  const { nested } = JSON.parse((await runCommand(...build, "--json")).out) as {
    nested: { sheets: { name: string; parts: string[] }[]; noPlace: { code: string }[] };
  };
  expect(nested.sheets).toEqual([{ name: "board", parts: ["cheek-left", "cheek-right"] }]);
  expect(new Set(nested.noPlace.map(({ code }) => code))).toEqual(new Set(["sheet-plate"]));
  expect(JSON.parse((await runCommand("check", at("plane.yaml"), "--json")).out)).toMatchObject({ nested });
  expect((await runCommand("explain", "sheet-plate")).out).toContain("sheets.thickness");
});

test("no word of a router in a shop that has none", async () => {
  expect((await runCommand("check", at("plane.yaml"))).out).not.toContain("Router");
});
