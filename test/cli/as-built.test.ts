// `next` and `measured` as a maker meets them: comments kept, nothing half written, the right step with its numbers.
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { runCommand } from "../support/running.ts";

let folder = "";
let file = "";
const DESIGN = `# my first plane
iron: { width: 48, thickness: 3.6 } # from a drawer
bed: { angle: 47 }
measured: {} # filled in at the bench
`;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "lamplane-test-"));
  file = join(folder, "plane.yaml");
  writeFileSync(file, DESIGN);
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

test("measured writes values back, keeps comments, and settles what was auto", async () => {
  const { exit, out } = await runCommand("measured", file, "coreWidth=49.7 mm", "measured.bedAngle=46.5°");
  expect(exit).toBe(0);
  expect(out).toMatch(/Settled with it, as planned: rampAngle 60°/);
  expect(readFileSync(file, "utf8")).toBe(
    DESIGN.replace("measured: {}", "measured: { coreWidth: 49.7, bedAngle: 46.5, rampAngle: 60 }"),
  );
  expect(readdirSync(folder)).toEqual(["plane.yaml"]);
});

test.each([
  ["coreWide=49.7", /nothing of that name is measured; write one of .*coreWidth/],
  ["coreWidth", /write KEY=VALUE/],
  ["coreWidth=wide", /read "wide"/],
  ["coreWidth=900", /plane.yaml:4:\d+: measured.coreWidth: read 900; allowed is 5 mm to 200 mm/],
  ["done=yesterday", /write one of nothing, iron/],
])("measured refuses %s and leaves the file as it was", async (value, message) => {
  const { exit, err } = await runCommand("measured", file, "ironWidth=48", value);
  expect(exit).toBe(2);
  expect(err).toMatch(message);
  expect(readFileSync(file, "utf8")).toBe(DESIGN);
});

test("next names the step, its numbers, what changed and what is lost", async () => {
  expect((await runCommand("next", file)).out).toMatch(/step 2 of the traveller's 15, nothing is cut yet/);
  await runCommand("measured", file, "bedAngle=46");
  const { exit, out } = await runCommand("next", file);
  expect(exit).toBe(0);
  expect(out).toMatch(/step 6 of the traveller's 15, after "True the bed"/);
  expect(out).toMatch(/recessWidth=…\n.*Expected: 19 mm/);
  expect(out).toMatch(/bedAngle: 47° was wanted, 46° came out/);
  const state = JSON.parse((await runCommand("next", file, "--json")).out);
  expect(state).toMatchObject({ step: "recess", lost: [{ key: "bedAngle", asked: 47, got: 46 }] });
});

test("measured without a value, or with one that this plane does not have, is refused", async () => {
  expect(await runCommand("measured", file)).toMatchObject({
    exit: 2,
    err: expect.stringMatching(/Name what was measured/),
  });
  const { exit, err } = await runCommand("measured", file, "rampRadius=50");
  expect(exit).toBe(2);
  expect(err).toMatch(/rampRadius: this plane has none/);
  expect(readFileSync(file, "utf8")).toBe(DESIGN);
});

test("next warns of what fails before it says what to do, and check no longer speaks of a first cut", async () => {
  await runCommand("measured", file, "coreWidth=47.8", "cheekThickness=7.5", "--read-twice");
  const { out } = await runCommand("next", file);
  expect(out.indexOf("BEFORE YOU GO ON")).toBeGreaterThan(0);
  expect(out.indexOf("BEFORE YOU GO ON")).toBeLessThan(out.indexOf("sawRamp"));
  const { stops } = JSON.parse((await runCommand("next", file, "--json")).out);
  expect(stops.map(({ code }: { code: string }) => code)).toContain("iron-tight-in-core");
  await runCommand("measured", file, "coreWidth=49.6");
  expect((await runCommand("next", file)).out).not.toContain("BEFORE YOU GO ON");
  expect((await runCommand("check", file)).out).toMatch(/to weigh before you go on/);
});

test("a change counted as a cost says what is and what would have been, in this order", async () => {
  await runCommand("measured", file, "bedAngle=46");
  expect((await runCommand("next", file)).out).toMatch(/Clearance under the bevel: 18° instead of 19°/);
});

test("next tells what the latest step brought, and keeps a line each for what earlier steps brought", async () => {
  await runCommand("measured", file, "ironThickness=3.7");
  await runCommand("measured", file, "coreWidth=49.4", "cheekThickness=8");
  const afterCore = (await runCommand("next", file)).out;
  // 48 + 1.6 = 49.6 wanted; 49.4 - 48 = 1.4 beside the iron.
  expect(afterCore).toMatch(
    /New from "Saw and mill core and cheeks":\n {2}coreWidth: 49\.6 mm was wanted, 49\.4 mm came out\.\n.*than the iron: 1\.4 mm instead of 1\.6 mm\n/,
  );
  expect(afterCore).toMatch(/already allowed for.*\n {2}ironThickness {2}3\.7 mm instead of 3\.6 mm\n/);
  await runCommand("measured", file, "rampAngle=60");
  const afterCuts = (await runCommand("next", file)).out;
  expect(afterCuts).not.toContain("New from");
  expect(afterCuts.match(/coreWidth/g)).toHaveLength(1);
  expect(afterCuts).toMatch(/coreWidth {6}49\.4 mm instead of 49\.6 mm {2}still felt in sideClearance/);
});

test("a number that the coming step is done by is told there, not again among those that moved", async () => {
  await runCommand("measured", file, "bedAngle=47", "rampAngle=60");
  await runCommand("measured", file, "ironThickness=3.9");
  await runCommand("measured", file, "bedAngle=46");
  const { out } = await runCommand("next", file);
  expect(out.match(/recessFromBedTip/g)).toHaveLength(1);
  expect(out).toMatch(/Numbers of later steps that moved with it:\n(.*\n)* {4}glueGap/);
});

test.each([
  ["coreWidth=479", /coreWidth: 479 mm is far from the 49\.6 mm expected/, /allowed is/],
  ["coreWidth=19.7", /far from the 49\.6 mm.*: a slip\?/, undefined],
  ["recessWidth=1.9", /was 19 mm meant \(its point slipped by one place\)\?/, undefined],
  ["ironThickness=0.9", /far from the 3\.6 mm/, undefined],
  ["cheekThickness=1.25", /far from the 8 mm/, undefined],
  ["bedAngle=43.5", undefined, undefined],
  ["bedAngle=41", /41° is far from the 47° expected: a slip\?/, undefined],
  ["coreWidth=48.7", undefined, undefined],
  ["pinHoleFromToe=105", /was 92\.3 mm meant \(measured from the blank's toe end/, undefined],
] as const)("measured %s: a reading far from the plan is asked for again", async (value, doubt, limits) => {
  const { exit, err } = await runCommand("measured", file, value);
  if (limits) expect(err).toMatch(limits);
  else if (doubt) {
    expect(exit).toBe(2);
    expect(err).toMatch(doubt);
    expect(err).toMatch(/Nothing was written\. Read it again; if it is so, give it again with --read-twice\./);
    expect(readFileSync(file, "utf8")).toBe(DESIGN);
    expect(await runCommand("measured", file, value, "--read-twice")).toMatchObject({ exit: 0, err: "" });
    expect(readFileSync(file, "utf8")).toContain(value.replace("=", ": "));
  } else expect(exit).toBe(0);
});

test("in inches a value is told back in inches alone, with the thousandths that fractions hide", async () => {
  writeFileSync(file, "units: in\niron: { width: 1 3/4, thickness: 1/8 }\n");
  const { out } = await runCommand("measured", file, "ironThickness=0.129", "ironWidth=1 3/4");
  expect(out).toContain("wrote ironThickness 1/8+ in (0.129), ironWidth 1 3/4 in.");
  const next = (await runCommand("next", file)).out;
  expect(next).toContain("ironThickness: 1/8 in was wanted, 1/8+ in (0.129) came out.");
  expect(next).not.toMatch(/in [+-] [\d.]+ mm/);
});

test("at the end next says what is left to do, and what came out otherwise", async () => {
  await runCommand("measured", file, "coreWidth=49.4", "done=shaping");
  const { out } = await runCommand("next", file);
  expect(out).toMatch(
    /the plane is built\. The traveller goes on with 14, the first shaving, and 15, after a season\./,
  );
  expect(out).toMatch(/What came out otherwise:\n {2}coreWidth {2}49\.4 mm instead of 49\.6 mm/);
});

test("a slip beyond what is allowed at all is guessed at too", async () => {
  const { exit, err } = await runCommand("measured", file, "coreWidth=496");
  expect(exit).toBe(2);
  expect(err).toMatch(
    /allowed is 5 mm to 200 mm\n.*was 49\.6 mm meant \(its point slipped by one place\)\?\nNothing was/,
  );
  expect((await runCommand("measured", file, "coreWidth=1.953")).err).toMatch(
    /was 49\.61 mm meant .*in inches, read as mm/,
  );
  expect((await runCommand("measured", file, "coreWidth=900")).err).not.toContain("meant");
  expect(readFileSync(file, "utf8")).toBe(DESIGN);
});

test("of two slips in one command the earlier step's is told: the other's plan follows from it", async () => {
  const { err } = await runCommand("measured", file, "coreWidth=150", "wedgeLength=300");
  expect(err).toContain("coreWidth");
  expect(err).not.toContain("wedgeLength");
});

test("mm typed into a design in inches are known for what they are, and inches into one in mm", async () => {
  writeFileSync(file, "units: in\niron: { width: 1.89, thickness: 9/64 }\n");
  const typed = await runCommand("measured", file, "ironThickness=3.6"); // 9/64 in is 3.57 mm
  expect(typed.exit).toBe(2);
  expect(typed.err).toMatch(/ironThickness: .*was 9\/64 in \(0\.142\) meant \(a figure in mm, read as inches\)\?/);
  expect((await runCommand("measured", file, "ironThickness=0.3")).err).toMatch(/far from .*: a slip\?/);
  writeFileSync(file, "units: mm\niron: { width: 48, thickness: 3.6 }\n");
  const inches = await runCommand("measured", file, "recessWidth=0.75"); // of 19 mm, 3/4 in is 19.05
  expect(inches.err).toMatch(/was 19\.05 mm meant \(a figure in inches, read as mm\)\?/);
  expect((await runCommand("measured", file, "recessWidth=1")).err).toMatch(/far from the 19 mm.*: a slip\?/); // 25.4 is as far
  expect((await runCommand("measured", file, "ironWidth=19")).err).not.toMatch(/meant/);
});

test("a step marked done without its reading: told as not measured and taken as planned, at once and by next", async () => {
  const { out } = await runCommand("measured", file, "done=sole");
  // 0.15 / (cot 47 + cot 60) = 0.15 / 1.5099
  expect(out).toMatch(/Not measured, so taken as planned: .*cheekThickness 8 mm,.* allowanceLeft 0\.1 mm\./);
  const next = (await runCommand("next", file)).out;
  expect(next).toMatch(/soleToTake +0\.1 mm +.*Not measured \(allowanceLeft\): taken as planned\./);
  expect(next).toMatch(/Not measured, so taken as planned: .*allowanceLeft 0\.1 mm\./);
  expect(next).toMatch(/mouthSeen=…\n.*Expected: closed at first, 0\.15 mm at last\./);
  expect((await runCommand("measured", file, "allowanceLeft=0.3")).out).toContain("wrote allowanceLeft 0.3 mm.");
  expect((await runCommand("next", file)).out).not.toMatch(/soleToTake.*Not measured|allowanceLeft 0\.1/);
});

test("figures, checks and packs follow what was measured, but for what is spent", async () => {
  await runCommand("measured", file, "bedAngle=46");
  const { figures } = JSON.parse((await runCommand("figures", file, "--json")).out);
  expect([figures.bedAngle.value, figures.sawBed.value, figures.rampAngle.value]).toEqual([46, 43, 60]);
  const { findings } = JSON.parse((await runCommand("check", file, "--with", "pin.height=25", "--json")).out);
  const offPin = findings.find(({ code }: { code: string }) => code === "wedge-off-pin");
  expect(offPin.cure.map(({ parameter }: { parameter: string }) => parameter)).not.toContain("bed.angle");
  expect((await runCommand("build", file, "--out", folder)).exit).toBe(0);
});

test("check names the fewest changes that mend it all", async () => {
  const bad = ["--with", "pin.height=25", "--with", "body.trim=4", "--with", "recess.cutter=25"];
  const { exit, out } = await runCommand("check", file, ...bad, "--json");
  expect(exit).toBe(1);
  const { mended } = JSON.parse(out);
  expect(mended.length).toBeGreaterThan(1);
  const cures = mended.flatMap(({ parameter, value }: { parameter: string; value: number }) => [
    "--with",
    `${parameter}=${value}`,
  ]);
  expect((await runCommand("check", file, ...bad, ...cures)).exit).toBe(0);
  // What is printed can be typed back, whatever the maker's unit.
  const { out: words } = await runCommand("check", file, ...bad, "--with", "units=in");
  expect(words).toMatch(/All that stops it is mended together by:/);
  const lines = [...words.matchAll(/^ {2}([a-zA-Z.]+): (.+)$/gm)];
  expect(lines.length).toBe(mended.length);
  const typed = lines.flatMap(([, key, value]) => ["--with", `${key}=${value}`]);
  expect((await runCommand("check", file, ...bad, ...typed)).exit).toBe(0);
});
