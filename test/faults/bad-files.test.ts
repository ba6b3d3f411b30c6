// Absurd design files: refused with exit 2 and a message that names the place; never a stack trace, never a file written.
import { mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { rowsOf, TABLE } from "@lamplane/parameters/table";
import fc from "fast-check";
import { afterAll, beforeAll, expect, test } from "vitest";
import { fault } from "../support/faults.ts";
import { runCommand } from "../support/running.ts";

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
  const { exit, out: said, err } = await runCommand("build", file, "--out", out);
  expect({ exit, said }, err).toEqual({ exit: 2, said: "" });
  expect(err).toMatch(place);
  expect(err).not.toMatch(/\n\s+at |node:internal|undefined|NaN is not|\[object/);
  expect(err.replaceAll("\n", "")).not.toMatch(/\p{C}/u);
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

test("200 files with one absurd value at a random parameter", fault(REFUSED), async () => {
  const paths = rowsOf(TABLE)
    .map(({ path }) => path)
    .filter((path) => !path.startsWith("iron."));
  const cases = fc.sample(fc.tuple(fc.constantFrom(...paths), fc.constantFrom(...JUNK)), { numRuns: 200, seed: 20 });
  let refused = 0;
  for (const [path, junk] of cases) {
    const keys = path.split(".");
    const row = rowsOf(TABLE).find((r) => r.path === path)!.row;
    if (path === "core.layers" && /1,? 2/.test(junk)) continue; // thicknesses of layers
    if (row.kind === "text" && !/[*&!~]|null|\[|\{|u0000|u202e|""/.test(junk)) continue;
    await isRefused(
      `${GOOD}${keys.map((key, i) => `${"  ".repeat(i)}${key}:`).join("\n")} ${junk}\n`,
      /bad\.yaml:[2-4]:\d+: /,
    );
    refused++;
  }
  expect(refused).toBeGreaterThan(180);
});

test("200 files of random bytes or random text", fault(REFUSED), async () => {
  const bytes = fc.oneof(
    fc.uint8Array({ minLength: 1, maxLength: 400 }),
    fc.string({ minLength: 1, maxLength: 400, unit: "binary" }),
  );
  for (const content of fc.sample(bytes, { numRuns: 200, seed: 21 }))
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
  ["a function in a tag", `name: !!js/function "function () {}"\n${GOOD}`, /1:\d+: name: tags/],
  ["a tag of a language's own", `name: !!python/object/apply:os.system ["ls"]\n${GOOD}`, /1:\d+: name: tags/],
  ["bytes in a tag", `name: !!binary "AAAA"\n${GOOD}`, /1:\d+: name: tags/],
  ["__proto__ for a key", `__proto__: { width: 5 }\n${GOOD}`, /1:1: __proto__: /],
  ["__proto__ in a section", "iron: { width: 48, thickness: 3.6, __proto__: 5 }\n", /1:36: iron\.__proto__: /],
  [
    "constructor and its like for keys",
    `constructor: { prototype: 1 }\ntoString: 1\n${GOOD}`,
    /1:1: constructor.*2:1: toString/s,
  ],
  ["a merge of maps", `a: &a { width: 48 }\niron: { <<: *a, thickness: 3.6 }\n`, AT_A_PLACE],
  [
    "a bomb of aliases in a list",
    `x: &x [y,y,y,y,y,y,y,y,y]\n${"z: &z [*x,*x,*x,*x,*x,*x,*x,*x]\n".repeat(99)}${GOOD}`,
    AT_A_PLACE,
  ],
  [
    "400 levels of blocks",
    `${Array.from({ length: 400 }, (_, i) => `${" ".repeat(i)}a:`).join("\n")}\n${GOOD}`,
    AT_A_PLACE,
  ],
  ["20 000 keys", `${"abc: 1\n".repeat(20_000)}${GOOD}`, /2:1: abc: "abc" stands on line 1 already/],
  ["a key of 200 kB", `${"k".repeat(200_000)}: 1\n${GOOD}`, AT_A_PLACE],
  ["a key that is a list", `? [a, b]\n: 1\n${GOOD}`, /1:\d: .*a key is one word/],
  [
    "a name of 10 000 letters",
    `name: ${"a".repeat(10_000)}\n${GOOD}`,
    /1:7: name: the text has 10000 characters; allowed: 60/,
  ],
  ["a name on two lines", `name: "a\\nb"\n${GOOD}`, /1:7: name: /],
  ["a name that steers a terminal", `name: "\\e[31mred"\n${GOOD}`, /1:7: name: the text holds a hidden character/],
  ["a bell, as it is", `name: a\u0007b\n${GOOD}`, /1:8: .*U\+0007/],
  ["a wood of 61 letters", `wood: { body: ${"a".repeat(61)} }\n${GOOD}`, /1:15: wood\.body: the text has 61/],
  ["markup for a name", `name: <img src=x onerror=alert(1)>\n${GOOD}`, /1:7: name: read "<img/],
  ["a formula for a name", `name: "=cmd|'/C calc'!A0"\n${GOOD}`, /1:7: name: read "=cmd/],
  ...["\u202e", "\u200b", "\u200d", "\u2066", "\u00ad", "\u034f", "\u3164", "\u{e0041}", "\ufff9", "\u0085"].map(
    (sign): [string, string, RegExp] => [
      `a sign that does not show in a wood, U+${sign.codePointAt(0)!.toString(16).toUpperCase().padStart(4, "0")}`,
      `wood: { body: "oa${sign}k" }\n${GOOD}`,
      /1:18: hidden character/,
    ],
  ),
  ["a picture", Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10, 0, 0, 0, 13), AT_A_PLACE],
])("%s", fault(REFUSED), async (_, content, place) => isRefused(content, place));

test("every fault at once, in the file's order", fault(REFUSED), async () => {
  const file = join(folder, "bad.yaml");
  writeFileSync(file, "units: mm\nname: /\niron: { width: 48, thickness: .nan }\nbed: { angle: 90, tilt: 3 }\n");
  const { exit, err } = await runCommand("check", file);
  expect(exit).toBe(2);
  const places = err
    .trim()
    .split("\n")
    .map((line) => /bad\.yaml:(\d+:\d+)/.exec(line)?.[1]);
  expect(places).toEqual(["2:7", "3:31", "4:15", "4:19"]);
});

const ON_LINE = { on: "the command line", survives: "exit 2, what is allowed in words; nothing written" };
const SMOOTHER = "examples/apprentice-smoother.yaml";
const VARY = ["sweep", SMOOTHER, "--vary"];
const LINES: [string[], RegExp][] = [
  [["check", SMOOTHER, "--with", "__proto__.x=1"], /__proto__\.x: no such parameter/],
  [["check", SMOOTHER, "--with", "constructor.prototype=1"], /no such parameter/],
  [["check", SMOOTHER, "--with", "bed.__proto__=1"], /no such parameter/],
  [["check", SMOOTHER, "--with.__proto__.x=1"], /Unknown argument/],
  [["check", SMOOTHER, "--with.length=1"], /Unknown argument/],
  [["check", SMOOTHER, "--__proto__.x=1"], /Unknown argument/],
  [["check", SMOOTHER, "--with", "name=nul"], /name: read "nul"/],
  [["check", SMOOTHER, "--with", "name=../../x"], /name: read "\.\.\/\.\.\/x"/],
  [["check", SMOOTHER, "--with", "wood.body=\u202eoak"], /hidden character/],
  [["check", SMOOTHER, "--with", "bed.angle=NaN"], /not a number/],
  [["check", SMOOTHER, "--with", "\u001b[31m=1"], /�\[31m: no such parameter/],
  [["check", SMOOTHER, "--with", "iron.width=1e308"], /exponents are not read/],
  [[...VARY, "__proto__=1,2"], /no such parameter/],
  [[...VARY, "name=a,../b"], /name: read "\.\.\/b"/],
  [[...VARY, "bed.angle=45..NaN:1"], /not a number/],
  [[...VARY, "bed.angle=45..46:0.0000001"], /take larger steps/],
  [[...VARY, "bed.angle=45,46", "--figure", "__proto__"], /no such figure/],
  [["explain", "constructor"], /no such parameter/],
  [["build", SMOOTHER, "--only", "__proto__"], /is none of parts, jigs, sheets/],
  [["view", SMOOTHER, "--port", "99999"], /whole number from 0 to 65535/],
  [["view", SMOOTHER, "--port", "-1"], /whole number from 0 to 65535/],
  [["view", SMOOTHER, "--port", "http"], /whole number from 0 to 65535/],
  [["tolerance", SMOOTHER, "--runs", "1e9"], /whole number from 100/],
  [["tolerance", SMOOTHER, "--seed", "NaN"], /whole number from 0/],
  [["check", "/dev/zero"], /more than 262144 bytes/],
  [["check", "bad\0.yaml"], /not a file name/],
];
test.each(LINES.map(([args, message]) => [args.join(" ").replace(SMOOTHER, "FILE"), args, message] as const))(
  "lamplane %s",
  fault(ON_LINE),
  async (_, args, message) => {
    const { exit, out: said, err } = await runCommand(...args);
    expect({ exit, said }, err).toEqual({ exit: 2, said: "" });
    expect(err).toMatch(message);
    expect(err).not.toMatch(/\n\s+at |bug|undefined|\[object/);
    expect(err.replaceAll("\n", "")).not.toMatch(/\p{C}/u);
  },
);
