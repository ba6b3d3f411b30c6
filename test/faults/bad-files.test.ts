// Absurd design files: refused with exit 2 and a message that names the place; never a stack trace, never a file written.
import { mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { rowsOf, TABLE } from "@lamplane/parameters/table";
import fc from "fast-check";
import { afterAll, beforeAll, expect, test } from "vitest";
import { fault } from "../support/faults.ts";
import { ran } from "../support/running.ts";

let folder = "";
let out = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "lamplane-bad-"));
  out = join(folder, "packs");
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const REFUSED = { on: "a design file", survives: "exit 2 with line and column; nothing written" };

const GOOD = "iron: { width: 48, thickness: 3.6 }\n";

async function isRefused(content: string | Uint8Array, place: RegExp): Promise<void> {
  const file = join(folder, "bad.yaml");
  writeFileSync(file, content);
  const { exit, out: said, err } = await ran("build", file, "--out", out);
  expect({ exit, said }, err).toEqual({ exit: 2, said: "" });
  expect(err).toMatch(place);
  expect(err).not.toMatch(/\n\s+at |node:internal|undefined|NaN is not|\[object/);
  expect(readdirSync(folder)).toEqual(["bad.yaml"]);
}

const AT_A_PLACE = /bad\.yaml:\d+:\d+: /;
/** Values that no parameter takes, as YAML text. */
const JUNK = [
  ".nan",
  ".inf",
  "-.inf",
  "1e308",
  "-1e308",
  "1e999",
  "-5000",
  "99999",
  "true",
  "null",
  "~",
  '""',
  "[]",
  "[1, 2]",
  "{}",
  "{ a: 1 }",
  "nope",
  "1 2 3",
  "44,5 mm",
  "0x10",
  "2026-11-25",
  "*gone",
  "&a 5",
  "!!str 5",
  "1e3 in",
  "5 furlongs",
  '"\\u0000"',
  '"\\u202e5"',
];

test("500 files with one absurd value at a random parameter", fault(REFUSED), async () => {
  const paths = rowsOf(TABLE)
    .map(({ path }) => path)
    .filter((path) => !path.startsWith("iron."));
  const cases = fc.sample(fc.tuple(fc.constantFrom(...paths), fc.constantFrom(...JUNK)), { numRuns: 500, seed: 20 });
  let refused = 0;
  for (const [path, junk] of cases) {
    const keys = path.split(".");
    const row = rowsOf(TABLE).find((r) => r.path === path)!.row;
    if (row.kind === "text" && !/[*&!~]|null|\[|\{|u0000|u202e|""/.test(junk)) continue;
    await isRefused(
      `${GOOD}${keys.map((key, i) => `${"  ".repeat(i)}${key}:`).join("\n")} ${junk}\n`,
      /bad\.yaml:[2-4]:\d+: /,
    );
    refused++;
  }
  expect(refused).toBeGreaterThan(450);
});

test("500 files of random bytes or random text", fault(REFUSED), async () => {
  const bytes = fc.oneof(
    fc.uint8Array({ minLength: 1, maxLength: 400 }),
    fc.string({ minLength: 1, maxLength: 400, unit: "binary" }),
  );
  for (const content of fc.sample(bytes, { numRuns: 500, seed: 21 }))
    await isRefused(content, /bad\.yaml(:\d+:\d+)?: /);
});

test.each([
  ["an empty file", "", /bad\.yaml/],
  ["an unknown key", `${GOOD}bed: { angel: 47 }\n`, /2:8: .*angle/],
  ["an unknown section", `${GOOD}beds: { angle: 47 }\n`, /2:1: .*bed/],
  ["a missing iron", "name: x\n", /iron\.(width|thickness)/],
  ["text for a number", "iron: { width: wide, thickness: 3.6 }\n", /1:16: /],
  ["a negative", "iron: { width: -48, thickness: 3.6 }\n", /1:16: .*-48/],
  ["a list", "- 1\n- 2\n", AT_A_PLACE],
  ["two designs in one", `${GOOD}---\n${GOOD}`, AT_A_PLACE],
  ["a name that climbs out", `name: ../../x\n${GOOD}`, /1:7: /],
  ["a bomb of aliases", `a: &a [1,1]\nb: &b [*a,*a]\nc: [*b,*b]\n${GOOD}`, AT_A_PLACE],
  ["deep nesting", `iron: ${"[".repeat(50_000)}`, AT_A_PLACE],
  ["10 MB", GOOD + "#".repeat(10 * 1024 * 1024), AT_A_PLACE],
  ["10 MB of nothing", new Uint8Array(10 * 1024 * 1024), AT_A_PLACE],
  ["a picture", Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10, 0, 0, 0, 13), AT_A_PLACE],
])("%s", fault(REFUSED), async (_, content, place) => isRefused(content, place));

test("every fault at once, in the file's order", fault(REFUSED), async () => {
  const file = join(folder, "bad.yaml");
  writeFileSync(file, "units: mm\nname: /\niron: { width: 48, thickness: .nan }\nbed: { angle: 90, tilt: 3 }\n");
  const { exit, err } = await ran("check", file);
  expect(exit).toBe(2);
  const places = err
    .trim()
    .split("\n")
    .map((line) => /bad\.yaml:(\d+:\d+)/.exec(line)?.[1]);
  expect(places).toEqual(["2:7", "3:31", "4:15", "4:19"]);
});
