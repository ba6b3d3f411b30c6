// Absurd rosters: a file that is none is refused as a whole; a row that makes no plane is named with its place, beside the others that are made.
import {
  cpSync,
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import fc from "fast-check";
import { afterEach, beforeEach, expect, test } from "vitest";
import { fault } from "../support/faults.ts";
import { runCommand } from "../support/running.ts";

let folder = "";
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "lamplane-rosters-"));
  cpSync("examples/class/school-smoother.yaml", join(folder, "base.yaml"));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const packs = () => join(folder, "packs");

/** `lamplane class --plan` of a roster; no message of it steers a terminal or tells of the program's inside. */
async function planOf(ending: string, content: string | Uint8Array, base = join(folder, "base.yaml")) {
  const roster = join(folder, `class.${ending}`);
  writeFileSync(roster, content);
  const { exit, out, err } = await runCommand("class", roster, "--base", base, "--out", packs(), "--plan");
  expect(out + err).not.toMatch(/\n\s+at |node:internal|undefined|[^"]NaN|\[object/);
  expect((out + err).replaceAll("\n", "")).not.toMatch(/\p{C}/u);
  return { exit, out, err };
}

async function isRefused(ending: string, content: string | Uint8Array, message: RegExp, base?: string): Promise<void> {
  const { exit, out, err } = await planOf(ending, content, base);
  expect({ exit, out }, err).toEqual({ exit: 2, out: "" });
  expect(err).toMatch(message);
  expect(existsSync(packs())).toBe(false);
}

const REFUSED = { on: "a roster", survives: "exit 2 with its place; nothing written" };
const manyRows = Array.from({ length: 10_000 }, (_, i) => `p${i},48`).join("\n");

test.each<[string, string, string | Uint8Array, RegExp]>([
  ["a roster that is empty", "csv", "", /class\.csv:1:1: /],
  ["a roster of line ends alone", "csv", "\r\n\r\n", /class\.csv:1:1: /],
  ["a picture for a roster", "csv", Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10, 0, 0), /class\.csv/],
  ["a quote that is never closed", "csv", 'name,iron.width\nanna,"48\nben,50\n', /class\.csv:2:6: /],
  ["a roster of 10 MB", "csv", `name\n${"a".repeat(10 * 1024 * 1024)}`, /class\.csv/],
  ["a roster of 10 000 planes", "csv", `name,iron.width\n${manyRows}\n`, /class\.csv/],
  ["a name that steers a terminal", "csv", "name\nanna\n\u001b[31mred\n", /class\.csv:3:1: hidden character U\+001B/],
  ["__proto__ for a column", "csv", "name,__proto__.x\nanna,\nben,1\n", /class\.csv:1:6: __proto__/],
  ["a list for a column", "csv", "name,cutters\nanna,\nben,6\n", /class\.csv:1:6: cutters/],
  ["aliases of aliases in a roster", "yaml", "a: &a [1,1]\nb: &b [*a,*a]\nplanes: [*b,*b]\n", /class\.yaml:\d+:\d+: /],
  ["50 000 brackets in a roster", "yaml", `planes: ${"[".repeat(50_000)}`, /class\.yaml:\d+:\d+: /],
])("%s", fault(REFUSED), async (_, ending, content, message) => isRefused(ending, content, message));

test("100 rosters of random bytes or random text", fault(REFUSED), async () => {
  const content = fc.oneof(
    fc.uint8Array({ minLength: 1, maxLength: 300 }),
    fc.string({ minLength: 1, maxLength: 300, unit: "binary" }),
  );
  for (const [i, each] of fc.sample(content, { numRuns: 100, seed: 31 }).entries())
    await isRefused(i % 2 ? "csv" : "yaml", each, /class\.(csv|yaml)(:\d+:\d+)?: /);
});

test.each([
  ["a base that never ends", "/dev/zero", /\/dev\/zero/],
  ["a base that is a folder", tmpdir(), /folder|directory/],
  ["a base that is not there", "/gone.yaml", /gone\.yaml/],
])("%s", fault({ ...REFUSED, on: "the base of a roster" }), async (_, base, message) =>
  isRefused("csv", "name\nanna\n", message, base),
);

const BESIDE = { on: "a row of a roster", survives: "exit 1, the row's line and column; the other planes are made" };
test.each<[string, string, RegExp]>([
  ["a name that climbs out", "name,iron.width\nanna,48\n../../x,48\n", /class\.csv:3:1: name: read "\.\.\/\.\.\/x"/],
  ["a device for a name", "name,iron.width\nanna,48\nNUL,48\n", /class\.csv:3:1: name: read "NUL"/],
  ["one name twice, in another case", "name,iron.width\nanna,48\nAnna,48\n", /3:1: name: Anna stands on line 2/],
  ["a formula for a name", "name,iron.width\nanna,48\n=cmd|'/C calc'!A0,48\n", /3:1: name: read "=cmd/],
  ["an iron of 1e308", "name,iron.width\nanna,48\nben,1e308\n", /3:5: iron\.width: .*exponents are not read/],
  ["an iron of no number", "name,iron.width\nanna,48\nben,NaN\n", /3:5: iron\.width: read "NaN"/],
  ["an iron below zero", "name,iron.width\nanna,48\nben,-48\n", /3:5: iron\.width: read -48/],
])("%s", fault(BESIDE), async (_, content, message) => {
  const { exit, out, err } = await planOf("csv", content);
  expect(exit, out + err).toBe(1);
  expect(out + err).toMatch(message);
  const written = readdirSync(packs()).filter((name) => name.endsWith(".yaml"));
  expect(written).toEqual(["anna.yaml"]);
});

test(
  "a link for a plane's design file",
  fault({ on: "the folder of a class", survives: "exit 1; what the link leads to keeps its bytes" }),
  async () => {
    await planOf("csv", "name,iron.width\nanna,48\n");
    const [elsewhere, text] = [join(folder, "elsewhere.yaml"), "# not a plane of this class\n"];
    writeFileSync(elsewhere, text);
    rmSync(join(packs(), "anna.yaml"));
    symlinkSync(elsewhere, join(packs(), "anna.yaml"));
    const { exit, out } = await planOf("csv", "name,iron.width\nanna,50\n");
    expect(exit).toBe(1);
    expect(out).toMatch(/anna\.yaml:1:1: the design is empty/);
    expect(readFileSync(elsewhere, "utf8")).toBe(text);
  },
);
