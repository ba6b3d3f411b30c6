// Readings that make no sense, for `survey`, `mouth` and `measured`: refused at their place, or answered rightly; never a NaN.
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, test } from "vitest";
import { fault } from "../support/faults.ts";
import { runCommand } from "../support/running.ts";

const SMOOTHER = "examples/apprentice-smoother.yaml";
const folder = mkdtempSync(join(tmpdir(), "lamplane-readings-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const NO_TRACE = /\n\s+at |node:internal|bug|undefined|\[object/;

const REFUSED = { on: "the readings of a survey", survives: "exit 2 with line, column and what is allowed" };
const heights = (...points: string[]) =>
  `heights:\n  error: 0.01\n  points:\n${points.map((p) => `    - ${p}\n`).join("")}`;
const GOOD = ["[0, 0, 0]", "[30, 0, 0]", "[0, 30, 0]"];
const edge = (...gaps: string[]) =>
  `straightedge:\n  - from: [0, 10]\n    to: [60, 10]\n    gaps:\n${gaps.map((gap) => `      - ${gap}\n`).join("")}`;
const ENDS = ["{ at: 0, refuses: 0.04 }", "{ at: 60, refuses: 0.04 }"];

test.each([
  [
    "NaN",
    heights(...GOOD, "[30, 30, .nan]"),
    /:7:16: heights\.points\.3\.2: read "\.nan"; allowed: height, -500 mm to 500 mm/,
  ],
  ["NaN in words", heights(...GOOD, "[30, 30, NaN]"), /:7:16: heights\.points\.3\.2: read "NaN"; allowed/],
  ["infinity", heights(...GOOD, "[.inf, 30, 0]"), /:7:8: heights\.points\.3\.0: read "\.inf"; allowed: on the bed/],
  ["-infinity", heights(...GOOD, "[30, -.inf, 0]"), /:7:12: heights\.points\.3\.1: read "-\.inf"; allowed: on the bed/],
  ["1e308", heights(...GOOD, "[30, 30, 1e308]"), /:7:16: heights\.points\.3\.2: read "1e308"; allowed/],
  ["1e309, which is infinity", heights(...GOOD, "[30, 30, 1e309]"), /:7:16: .*read "1e309"; allowed/],
  ["-1e308", edge(...ENDS, "{ at: 30, refuses: -1e308 }"), /:7:28: straightedge\.0\.gaps\.2\.refuses: read "-1e308"/],
  [
    "an error of infinity",
    heights(...GOOD, "[30, 30, 0]").replace("0.01", ".inf"),
    /:2:10: heights\.error: read "\.inf"; allowed/,
  ],
  ["an error of nothing", heights(...GOOD, "[30, 30, 0]").replace("0.01", "0"), /:2:10: heights\.error: .*more than 0/],
  [
    "an error too small for a double",
    heights(...GOOD, "[30, 30, 0]").replace("0.01", "1e-400"),
    /:2:10: heights\.error: .*more than 0/,
  ],
  [
    "a column that is missing",
    heights(...GOOD, "[30, 30]"),
    /:7:7: heights\.points\.3: read "\[30, 30\]"; allowed: a list of 3 numbers/,
  ],
  ["a column too many", heights(...GOOD, "[30, 30, 0, 0]"), /:7:7: heights\.points\.3: .*allowed: a list of 3 numbers/],
  [
    "a decimal comma in a list",
    heights(...GOOD, "[30, 30, 0,05]"),
    /:7:7: heights\.points\.3: read "\[30, 30, 0,05\]"; allowed: a list of 3 numbers/,
  ],
  [
    "a decimal comma in a gap",
    edge(...ENDS, "{ at: 30, refuses: 0,04 }"),
    /:7:30: straightedge\.0\.gaps\.2\.4: read "04"; allowed: the keys at, fits, refuses/,
  ],
  [
    "a decimal comma on a line of its own",
    "heights:\n  error: 0,01\n  points: [[0, 0, 0]]\n",
    /:2:10: heights\.error: read "0,01"; .*decimal sign is a point/,
  ],
  ["a gap without its leaf", edge(...ENDS, "{ at: 30 }"), /:7:9: straightedge\.0\.gaps\.2\.refuses: read nothing/],
  ["a gap without its place", edge(...ENDS, "{ refuses: 0.04 }"), /:7:9: straightedge\.0\.gaps\.2\.at: read nothing/],
  [
    "leaves the wrong way about",
    edge(...ENDS, "{ at: 30, fits: 0.1, refuses: 0.05 }"),
    /:7:39: .*a thicker leaf than the one that fits/,
  ],
  ["one station", heights("[0, 0, 0]"), /:4:5: heights\.points: .*4 to 200 points.*this one has 1/],
  ["no station", "heights: { error: 0.01, points: [] }\n", /:1:33: heights\.points: .*4 to 200 points.*this one has 0/],
  ["two stations of a straightedge", edge(...ENDS), /:5:7: straightedge\.0\.gaps: .*3 to 200 stations/],
  [
    "a straightedge of no length",
    edge(...ENDS, "{ at: 30, refuses: 0.04 }").replace("[60, 10]", "[0, 10]"),
    /:3:9: straightedge\.0\.to: .*a place other than `from`/,
  ],
  [
    "a station twice",
    heights(...GOOD, "[30, 0, 0.5]"),
    /:7:7: heights\.points\.3: .*one reading at a station; 5:7 is at the same/,
  ],
  [
    "every station the same",
    heights(...Array<string>(4).fill("[5, 5, 0]")),
    /:5:7: .*one reading at a station; 4:7 is at the same/,
  ],
  [
    "201 stations",
    heights(...Array.from({ length: 201 }, (_, i) => `[${i / 10}, ${i / 10}, 0]`)),
    /:4:5: heights\.points: .*this one has 201/,
  ],
  [
    "a station off the bed",
    heights(...GOOD, "[3000, 30, 0]"),
    /:7:8: heights\.points\.3\.0: read "3000"; allowed: on the bed, up from its tip, 0 mm to \d/,
  ],
  [
    "a table with semicolons",
    "along;across;height\n0;0;0,1\n10;0;0,2\n",
    /:1:1: read .*allowed: the keys units, straightedge, heights/,
  ],
  ["a table with commas", "along,across,height\n0,0,0.1\n10,0,0.2\n", /:1:1: read .*allowed: the keys/],
  ["an alias", `heights: &h { error: 0.01, points: *h }\n`, /:1:\d+: /],
  [
    "a bomb of aliases",
    `a: &a [0,0,0,0,0,0,0,0,0]\nb: &b [*a,*a,*a,*a,*a,*a,*a,*a]\nheights: { error: 0.01, points: [*b,*b,*b,*b] }\n`,
    /:3:34: heights\.points\.0: read "\*b"; allowed: a list of 3 numbers/,
  ],
  ["a function in a tag", `heights: !!js/function "x"\n`, /:1:\d+: heights: .*allowed: the keys error, points/],
  [
    "__proto__ and constructor for keys",
    `__proto__: 1\nconstructor: 2\n${heights(...GOOD, "[30, 30, 0]")}`,
    /:1:1: __proto__: .*:2:1: constructor: /s,
  ],
  ["a key twice", `units: mm\nunits: in\n${heights(...GOOD, "[30, 30, 0]")}`, /:2:1: units: .*each key once/],
  [
    "25 000 keys",
    Array.from({ length: 25_000 }, (_, i) => `k${i}: 1\n`).join(""),
    /:1:1: k0: .*\n.*:\d+:1: 249\d\d more faults not listed/s,
  ],
  ["10 MB", "#".repeat(10 << 20), /:1:1: 10485760 bytes; a readings file has at most/],
  ["bytes", Uint8Array.from({ length: 2000 }, (_, i) => (i * 7919) % 256), /:1:2: the file is not UTF-8/],
  ["UTF-16", Buffer.from("\ufeffheights: 1\n", "utf16le"), /:1:1: the file is not UTF-8/],
  ["hidden signs", heights(...GOOD, "[30, 30, \u200b0]"), /:7:16: hidden character/],
  ["nothing", "", /:1:1: read nothing|:1:1: .*the keys/],
])("%s", fault(REFUSED), async (_, content, refusal) => {
  const file = join(folder, "readings.yaml");
  writeFileSync(file, content);
  const { exit, out, err } = await runCommand("survey", SMOOTHER, file);
  expect({ exit, out }, err).toEqual({ exit: 2, out: "" });
  expect(err).toMatch(refusal);
  expect(err).not.toMatch(NO_TRACE);
  expect(err.split("\n").length).toBeLessThan(110);
});

const ANSWERED = { on: "the readings of a survey", survives: "a right answer, with what the readings leave open" };
test.each([
  [
    "all on one line along",
    heights(...[0, 10, 20, 30, 40].map((x) => `[${x}, 5, 0]`)),
    /Missing: no reading shows the curve across/,
  ],
  [
    "all on one line across",
    heights(...[0, 10, 20, 30].map((y) => `[5, ${y}, 0]`)),
    /Missing: no reading shows the curve along/,
  ],
  [
    "all on one slanting line",
    heights(...[0, 10, 20, 30].map((x) => `[${x}, ${x}, 0]`)),
    /Missing: no reading shows the wind/,
  ],
  [
    "four corners, none between",
    heights("[0, 0, 0]", "[40, 0, 0]", "[0, 40, 0]", "[40, 40, 0]"),
    /just enough: none checks the others/,
  ],
  [
    "stations a hundredth of a micron apart",
    heights("[0, 0, 0]", "[0.00001, 0, 0]", "[0, 0.00001, 0]", "[0.00001, 0.00001, 0]"),
    /Missing/,
  ],
  [
    "heights as large as may be",
    heights("[0, 0, 500]", "[40, 0, -500]", "[0, 40, 500]", "[40, 40, 500]", "[20, 20, -500]"),
    /FAILS|UNDECIDED/,
  ],
])("%s", fault(ANSWERED), async (_, content, refusal) => {
  const file = join(folder, "readings.yaml");
  writeFileSync(file, content);
  const words = await runCommand("survey", SMOOTHER, file, "--all");
  expect(words).toMatchObject({ exit: 1, err: "" });
  expect(words.out).toMatch(refusal);
  expect(words.out).not.toMatch(/NaN|Infinity|undefined/);
  const { out } = await runCommand("survey", SMOOTHER, file, "--json");
  expect(out).not.toMatch(/NaN|Infinity/);
  expect(JSON.parse(out).survey.passes).toBe(false);
});

test.each([
  ["a byte order mark", (text: string) => `\ufeff${text}`],
  ["line ends of Windows", (text: string) => text.replaceAll("\n", "\r\n")],
  ["both, and no line end at the end", (text: string) => `\ufeff${text.replaceAll("\n", "\r\n").trimEnd()}`],
  ["spaces at the ends of lines", (text: string) => text.replaceAll("\n", "   \n")],
])("%s", fault({ ...ANSWERED, survives: "the answer of the same file without, to the byte" }), async (_, changed) => {
  const name = readdirSync("examples/readings").find((each) => each.includes("sawn"))!;
  const text = readFileSync(`examples/readings/${name}`, "utf8");
  const file = join(folder, "readings.yaml");
  writeFileSync(file, changed(text));
  const refusal = await runCommand("survey", SMOOTHER, file);
  expect(refusal.exit).toBe(1);
  expect(refusal).toEqual(await runCommand("survey", SMOOTHER, `examples/readings/${name}`));
});

const BAD_LENGTHS = [
  "NaN",
  "Infinity",
  "-Infinity",
  ".inf",
  "1e308",
  "1e-308",
  "-1",
  "9999",
  "0,05",
  "1,000",
  "",
  " ",
  "0x10",
  "1_0",
  "５",
  "5 5",
  "5mm6mm",
  "1/0 in",
  "1/3",
  "3 ft",
  "__proto__",
  "constructor",
  "=1+1",
  "\u202e5",
  "\u0000",
  "9".repeat(10_000),
];
test.each(BAD_LENGTHS.flatMap((text) => ["seen", "wanted", "shaving"].map((name) => [name, text] as const)))(
  "--%s %j",
  fault({
    fault: "a length that is none: NaN, infinity, 1e308, a decimal comma, nothing, 10 000 digits …",
    on: "an option of mouth",
    survives: "exit 2 with what was read and what is allowed",
  }),
  async (name, text) => {
    const seen = name === "seen" ? [] : ["--seen=0.1"];
    const { exit, out, err } = await runCommand("mouth", SMOOTHER, ...seen, `--${name}=${text}`);
    expect({ exit, out }, err).toEqual({ exit: 2, out: "" });
    expect(err).toMatch(new RegExp(`--${name} .*: \\S`, "s"));
    expect(err).not.toMatch(NO_TRACE);
  },
);

const DESIGN = "\ufeff# ours\r\niron: { width: 48, thickness: 3.6 } # by caliper\r\n";
test.each([
  ...BAD_LENGTHS.map((text) => [`coreWidth=${text}`]),
  ["coreWidth"],
  ["=5"],
  ["__proto__=5"],
  ["constructor=5"],
  ["measured.__proto__=5"],
  ["measured.measured.coreWidth=5"],
  ["iron.width=5"],
  ["done=__proto__"],
  ["done=core\nname: x"],
  ["coreWidth=49.7\niron: 5"],
  ["coreWidth=49.7 # and"],
  ["coreWidth=49.7", "coreWidth=NaN"],
  ["bedAngle=47°30'"],
])(
  "%j %j",
  fault({
    fault: "a value that is none, a key that is none, a line put in: NaN, 1e308, __proto__=5, done=core⏎name: x …",
    on: "a value of measured",
    survives: "exit 2 with what is allowed; the design file as it was, to the byte",
  }),
  async (...values) => {
    const file = join(folder, "plane.yaml");
    writeFileSync(file, DESIGN);
    const { exit, out, err } = await runCommand("measured", file, ...values);
    expect({ exit, out }, err).toEqual({ exit: 2, out: "" });
    expect(err).not.toMatch(NO_TRACE);
    expect(readFileSync(file, "utf8")).toBe(DESIGN);
    expect(readdirSync(folder).filter((name) => name.includes("tmp"))).toEqual([]);
  },
);

test(
  "measured keeps a byte order mark and line ends of Windows",
  fault({ on: "a value of measured", survives: "every byte but the value's own" }),
  async () => {
    const file = join(folder, "plane.yaml");
    writeFileSync(file, DESIGN);
    expect(await runCommand("measured", file, "coreWidth=49.7", "--skip")).toMatchObject({ exit: 0 });
    const text = readFileSync(file, "utf8");
    expect(text.startsWith(DESIGN)).toBe(true);
    expect(text.slice(DESIGN.length)).toMatch(/^measured:\r\n {2}\S/);
    expect(text.replaceAll("\r\n", "")).not.toMatch(/[\r\n]/);
  },
);
