// Absurd shop files: refused with exit 2 and the place, in the shop file or in the design that names it; nothing written.
import { mkdirSync, mkdtempSync, readdirSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { fault } from "../support/faults.ts";
import { runCommand } from "../support/running.ts";

let folder = "";
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "lamplane-shops-"));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const IRON = "iron: { width: 48, thickness: 3.6 }\n";

/** Builds a design that names `shop.yaml`, which must be refused. */
async function isRefused(message: RegExp, shop = "shop.yaml"): Promise<void> {
  const design = join(folder, "plane.yaml");
  writeFileSync(design, `${IRON}shop: ${shop}\n`);
  const before = readdirSync(folder);
  const { exit, out, err } = await runCommand("build", design, "--out", join(folder, "packs"));
  expect({ exit, out }, err).toEqual({ exit: 2, out: "" });
  expect(err).toMatch(message);
  expect(err).not.toMatch(/\n\s+at |node:internal|undefined|\[object/);
  expect(err.replaceAll("\n", "")).not.toMatch(/\p{C}/u);
  expect(readdirSync(folder)).toEqual(before);
}

const REFUSED = { on: "a shop file", survives: "exit 2 with file, line and column; nothing written" };
const cutterCalled = (name: string) => `cutters: [{ name: ${JSON.stringify(name)}, diameter: 6, cutting: 20 }]\n`;

test.each<[string, string | Uint8Array, RegExp]>([
  ["an empty shop file", "", /shop\.yaml:1:1: .*empty/],
  [
    "a shop file of 10 MB",
    `# ${"#".repeat(10 * 1024 * 1024)}`,
    /shop\.yaml:1:1: 10485762 bytes; a shop file has at most 262144/,
  ],
  ["a picture for a shop file", Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10, 0), /shop\.yaml/],
  ["a shop file that names a shop file", "shop: shop.yaml\n", /shop\.yaml:1:7: shop: /],
  ["a design for a shop file", `${IRON}bed: { angle: 50 }\n`, /shop\.yaml:1:1: iron: this belongs in a design/],
  ["__proto__ in a shop file", "shop: { __proto__: { kerf: 1 } }\n", /shop\.yaml:1:9: shop\.__proto__/],
  // comments that LinuxCNC acts on: linuxcnc.org, "G Code Overview", Comments, Messages, Logging
  ["a cutter's name that logs into a file", cutterCalled("LOGOPEN,/tmp/x"), /cutters\.1\.name: read "LOGOPEN,/],
  ["a cutter's name that ends a comment", cutterCalled("a) M30 (b"), /cutters\.1\.name: read "a\) M30 \(b"/],
  ["a cutter's name on two lines", cutterCalled("a\nG0 Z-99"), /cutters\.1\.name: /],
  ["a cutter of no width", "cutters: [{ name: a, diameter: 0, cutting: 9 }]\n", /cutters\.1\.diameter: read 0/],
  ["a cutter below zero", "cutters: [{ name: a, diameter: -6, cutting: 9 }]\n", /cutters\.1\.diameter: read -6/],
  [
    "a router that travels backwards",
    "router: { area: { width: -9, depth: 9, height: 9 } }\n",
    /router\.area\.width: read -9/,
  ],
])("%s", fault(REFUSED), async (_, shop, message) => {
  writeFileSync(join(folder, "shop.yaml"), shop);
  await isRefused(message);
});

const NAMED = {
  on: "the shop file that a design names",
  survives: "exit 2 with the design's line and column; nothing written",
};
test.each<[string, string, (path: string) => void]>([
  ["a shop file that is not there", "shop.yaml", () => {}],
  ["a folder for a shop file", "shop.yaml", (path) => mkdirSync(path)],
  ["a link to itself for a shop file", "shop.yaml", (path) => symlinkSync(path, path)],
  ["a shop file that never ends", "/dev/zero", () => {}],
])("%s", fault(NAMED), async (_, shop, make) => {
  make(join(folder, "shop.yaml"));
  await isRefused(/plane\.yaml:2:7: shop: |zero/, shop);
});
