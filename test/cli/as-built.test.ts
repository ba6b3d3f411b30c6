// `next` and `measured` as a maker meets them: comments kept, nothing half written, the right step with its numbers.
import { chmodSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { main } from "@lamplane/cli";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
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

test("measured writes what was measured, and nothing else; comments stay", async () => {
  const { exit, out } = await runCommand("measured", file, "coreWidth=49.7 mm", "measured.bedAngle=46.5°", "--skip");
  expect(exit).toBe(0);
  expect(out).toMatch(/Not measured; planned value kept: .*ramp angle 60°/);
  expect(readFileSync(file, "utf8")).toBe(
    DESIGN.replace("measured: {}", "measured: { coreWidth: 49.7, bedAngle: 46.5 }"),
  );
  expect(readdirSync(folder).sort()).toEqual([".plane.yaml.undo", "plane.yaml"]);
});

test("a mouth read on a file that nothing was measured in: refused with the steps that it passes over; --skip writes it alone", async () => {
  const { exit, err } = await runCommand("measured", file, "mouthSeen=0.05");
  expect(exit).toBe(2);
  expect(err).toMatch(
    /plane\.yaml: nothing is measured yet at 8 earlier steps: Measure the iron, .*Glue up\.\nNothing was .*--skip/,
  );
  expect(readFileSync(file, "utf8")).toBe(DESIGN);
  expect((await runCommand("measured", file, "mouthSeen=0.05", "--skip")).exit).toBe(0);
  expect(readFileSync(file, "utf8")).toBe(DESIGN.replace("{}", "{ mouthSeen: 0.05 }"));
});

test("a step with nothing to measure is not asked about, nor one that was passed over before", async () => {
  await runCommand("measured", file, "wedgeTip=5.7", "--skip", "--read-twice");
  expect(await runCommand("measured", file, "bedTipFromEnd=93", "--read-twice")).toMatchObject({ exit: 0, err: "" }); // past the dry fit
  expect(await runCommand("measured", file, "coreWidth=49.7")).toMatchObject({ exit: 0, err: "" });
});

test.each([
  [true, 0],
  [false, 2],
])("on a terminal a skip is asked about: %s", async (answer, exit) => {
  const asked: string[] = [];
  const io = {
    out: () => {},
    err: () => {},
    showsProgress: false,
    prompts: {
      confirm: async (question: string) => {
        asked.push(question);
        return answer;
      },
      text: () => Promise.reject(new Error("not asked for")),
      choose: () => Promise.reject(new Error("not asked for")),
    },
  };
  expect(await main(["measured", file, "cheekThickness=8"], io)).toBe(exit);
  expect(asked).toEqual([
    expect.stringMatching(/nothing is measured yet at 1 earlier step: Measure the iron\. Are they done/),
  ]);
  expect(readFileSync(file, "utf8") === DESIGN).toBe(!answer);
});

describe("taking back", () => {
  test("KEY= takes a value out again; what stood around it stays", async () => {
    await runCommand("measured", file, "ironWidth=48", "ironThickness=3.62");
    expect((await runCommand("measured", file, "ironWidth=")).out).toMatch(
      /took back iron width\.\n.*planned value kept: iron width 48 mm/,
    );
    expect(readFileSync(file, "utf8")).toBe(DESIGN.replace("{}", "{ ironThickness: 3.62 }"));
    const { exit, err } = await runCommand("measured", file, "ironWidth=");
    expect({ exit, err }).toEqual({ exit: 2, err: expect.stringMatching(/ironWidth: the file holds no such value/) });
  });

  test("--undo brings back the file's bytes, once; after another's change it refuses", async () => {
    const marked = `\ufeff${DESIGN.replaceAll("\n", "\r\n")}`;
    writeFileSync(file, marked);
    await runCommand("measured", file, "ironWidth=48");
    const first = readFileSync(file, "utf8");
    await runCommand("measured", file, "ironWidth=48.1", "ironThickness=3.5");
    expect((await runCommand("measured", file, "--undo")).out).toMatch(
      /took back ironWidth=48\.1, ironThickness=3\.5;/,
    );
    expect(readFileSync(file, "utf8")).toBe(first);
    expect(await runCommand("measured", file, "--undo")).toMatchObject({
      exit: 2,
      err: expect.stringMatching(/no change/),
    });
    await runCommand("measured", file, "ironWidth=");
    writeFileSync(file, `${readFileSync(file, "utf8")}# mine\r\n`);
    expect((await runCommand("measured", file, "--undo")).err).toMatch(/changed since ironWidth=, so --undo cannot/);
    expect(readFileSync(file, "utf8")).toBe(`${marked.replace("{}", "{  }")}# mine\r\n`);
    expect(readdirSync(folder).sort()).toEqual([".plane.yaml.undo", "plane.yaml"]);
  });

  test("what is kept for it may be read by nobody who may not read the file; a damaged one undoes nothing", async () => {
    chmodSync(file, 0o600);
    await runCommand("measured", file, "ironWidth=48");
    expect(statSync(join(folder, ".plane.yaml.undo")).mode & 0o777).toBe(0o600);
    writeFileSync(join(folder, ".plane.yaml.undo"), "{");
    expect((await runCommand("measured", file, "--undo")).err).toMatch(/no change/);
    expect((await runCommand("measured", file, "ironWidth=48.1", "--undo")).err).toMatch(/leave the values out/);
  });
});

test.each([
  ["coreWide=49.7", /nothing of that name is measured; did you mean coreWidth\? Write one of .*coreWidth/],
  ["coreWidth", /write KEY=VALUE/],
  ["coreWidth=wide", /read "wide"/],
  ["coreWidth=900", /plane.yaml:4:\d+: measured.coreWidth: read 900; allowed: 5 mm to 200 mm/],
  ["done=yesterday", /write one of nothing, iron/],
])("measured refuses %s and leaves the file as it was", async (value, message) => {
  const { exit, err } = await runCommand("measured", file, "ironWidth=48", value);
  expect(exit).toBe(2);
  expect(err).toMatch(message);
  expect(readFileSync(file, "utf8")).toBe(DESIGN);
});

test("next names the step, its numbers, what changed and what is lost", async () => {
  expect((await runCommand("next", file)).out).toMatch(/, step 2 of 15: Measure the iron\n/);
  await runCommand("measured", file, "bedAngle=46", "--skip");
  const { exit, out } = await runCommand("next", file);
  expect(exit).toBe(0);
  expect(out).toMatch(/, step 6 of 15: Rout the recess\n/);
  expect(out).toMatch(/recessWidth=…\n.*Expected: 19 mm/);
  expect(out).toMatch(/bed angle: 46° measured, 47° planned/);
  const state = JSON.parse((await runCommand("next", file, "--json")).out);
  expect(state).toMatchObject({ step: "recess", lost: [{ key: "bedAngle", asked: 47, got: 46 }] });
});

test("measured without a value, or with one that this plane does not have, is refused", async () => {
  expect(await runCommand("measured", file)).toMatchObject({
    exit: 2,
    err: expect.stringMatching(/Name what you measured/),
  });
  const { exit, err } = await runCommand("measured", file, "rampRadius=50");
  expect(exit).toBe(2);
  expect(err).toMatch(/rampRadius: this plane has none/);
  expect(readFileSync(file, "utf8")).toBe(DESIGN);
});

test("next warns of what fails before it says what to do", async () => {
  await runCommand("measured", file, "coreWidth=47.8", "cheekThickness=7.5", "--read-twice", "--skip");
  const { out } = await runCommand("next", file);
  expect(out.indexOf("BEFORE YOU GO ON")).toBeGreaterThan(0);
  expect(out.indexOf("BEFORE YOU GO ON")).toBeLessThan(out.indexOf("saw setting for ramp"));
  const { stops } = JSON.parse((await runCommand("next", file, "--json")).out);
  expect(stops.map(({ code }: { code: string }) => code)).toContain("iron-side-play");
  await runCommand("measured", file, "coreWidth=49.6");
  expect((await runCommand("next", file)).out).not.toContain("BEFORE YOU GO ON");
});

test("a change counted as a cost says what is and what would have been, in this order", async () => {
  await runCommand("measured", file, "bedAngle=46", "--skip");
  expect((await runCommand("next", file)).out).toMatch(/clearance angle 18°, not 19°/);
});

test("next tells what the latest step brought, and keeps a line each for what earlier steps brought", async () => {
  await runCommand("measured", file, "ironThickness=3.7");
  await runCommand("measured", file, "coreWidth=49.4", "cheekThickness=8");
  const afterCore = (await runCommand("next", file)).out;
  // 48 + 1.6 = 49.6 wanted; 49.4 - 48 = 1.4 beside the iron.
  expect(afterCore).toMatch(
    /What "Saw and mill core and cheeks" changed:\n {2}core width: 49\.4 mm measured, 49\.6 mm planned\.\n +iron side play 1\.4 mm, not 1\.6 mm\n/,
  );
  expect(afterCore).toMatch(/allow for it:\n {2}iron thickness {2}3\.7 mm, not 3\.6 mm\n/);
  await runCommand("measured", file, "rampAngle=60");
  const afterCuts = (await runCommand("next", file)).out;
  expect(afterCuts).not.toContain("changed:\n  core width");
  expect(afterCuts.match(/core width/g)).toHaveLength(1);
  expect(afterCuts).toMatch(/core width {6}49\.4 mm, not 49\.6 mm {2}Still affects: iron side play/);
});

test("a number that the coming step is done by is told there, not again among those that moved", async () => {
  await runCommand("measured", file, "bedAngle=47", "rampAngle=60", "--skip");
  await runCommand("measured", file, "ironThickness=3.9");
  await runCommand("measured", file, "bedAngle=46", "--skip");
  const { out } = await runCommand("next", file);
  expect(out.match(/recess from lower edge of bed/g)).toHaveLength(1);
  expect(out).toMatch(/Changed for later steps:\n(.*\n)* {4}gap between block tips/);
});

test.each([
  ["coreWidth=479", /coreWidth: 479 mm is far from the 49\.6 mm expected/, /allowed: /],
  ["coreWidth=19.7", /far from the 49\.6 mm.*\. Is it a slip\?/, undefined],
  ["recessWidth=1.9", /Did you mean 19 mm .*\(decimal point one place off\)\?/, undefined],
  ["ironThickness=0.9", /far from the 3\.6 mm/, undefined],
  ["cheekThickness=1.25", /far from the 8 mm/, undefined],
  ["bedAngle=43.5", undefined, undefined],
  ["bedAngle=41", /41° is far from the 47° expected\. Is it a slip\?/, undefined],
  ["coreWidth=48.7", undefined, undefined],
  ["pinHoleFromEnd=92.3", /Did you mean 105 mm .*\(measured from the line of the finished toe/, undefined],
] as const)("measured %s: a reading far from the plan is asked for again", async (value, doubt, limits) => {
  const { exit, err } = await runCommand("measured", file, value, "--skip");
  if (limits) expect(err).toMatch(limits);
  else if (doubt) {
    expect(exit).toBe(2);
    expect(err).toMatch(doubt);
    expect(err).toMatch(/Nothing was written\. Measure again; if it is right, add --read-twice\./);
    expect(readFileSync(file, "utf8")).toBe(DESIGN);
    expect(await runCommand("measured", file, value, "--read-twice", "--skip")).toMatchObject({ exit: 0, err: "" });
    expect(readFileSync(file, "utf8")).toContain(value.replace("=", ": "));
  } else expect(exit).toBe(0);
});

test("in inches a value is told back in inches alone, with the thousandths that fractions hide", async () => {
  writeFileSync(file, "units: in\niron: { width: 1 3/4, thickness: 1/8 }\n");
  const { out } = await runCommand("measured", file, "ironThickness=0.129", "ironWidth=1 3/4");
  expect(out).toContain("iron thickness 1/8+ in (0.129) and iron width 1 3/4 in.");
  const next = (await runCommand("next", file)).out;
  expect(next).toContain("iron thickness: 1/8+ in (0.129) measured, 1/8 in planned.");
  expect(next).not.toMatch(/in [+-] [\d.]+ mm/);
});

test("at the end next says what is left to do, and what came out otherwise", async () => {
  await runCommand("measured", file, "coreWidth=49.4", "done=shaping", "--skip");
  const { out } = await runCommand("next", file);
  expect(out).toMatch(/the plane is built\. Next in the traveller: 14, first shaving; 15, after a season\./);
  expect(out).toMatch(/Off plan:\n {2}core width {2}49\.4 mm, not 49\.6 mm/);
});

test("a slip beyond what is allowed at all is guessed at too", async () => {
  const { exit, err } = await runCommand("measured", file, "coreWidth=496");
  expect(exit).toBe(2);
  expect(err).toMatch(
    /allowed: 5 mm to 200 mm\n.*Did you mean 49\.6 mm .*\(decimal point one place off\)\?\nNothing was/,
  );
  expect((await runCommand("measured", file, "coreWidth=1.953")).err).toMatch(/mean 49\.61 mm .*in inches, read as mm/);
  expect((await runCommand("measured", file, "coreWidth=900")).err).not.toContain("Did you mean");
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
  expect(typed.err).toMatch(/ironThickness: .*mean 9\/64 in \(0\.142\) \(entered in mm, read as inches\)\?/);
  expect((await runCommand("measured", file, "ironThickness=0.3")).err).toMatch(/far from .*\. Is it a slip\?/);
  writeFileSync(file, "units: mm\niron: { width: 48, thickness: 3.6 }\n");
  const inches = await runCommand("measured", file, "recessWidth=0.75"); // of 19 mm, 3/4 in is 19.05
  expect(inches.err).toMatch(/mean 19\.05 mm .*\(entered in inches, read as mm\)\?/);
  expect((await runCommand("measured", file, "recessWidth=1")).err).toMatch(/far from the 19 mm.*\. Is it a slip\?/); // 25.4 is as far
  expect((await runCommand("measured", file, "ironWidth=19")).err).not.toMatch(/Did you mean/);
});

test("a step marked done without its reading: told as not measured and taken as planned, at once and by next", async () => {
  const { out } = await runCommand("measured", file, "done=sole", "--skip");
  // 0.15 / (cot 47 + cot 60) = 0.15 / 1.5099
  expect(out).toMatch(/Not measured.*: .*cheek thickness 8 mm,.* wood left under sole 0\.1 mm\./);
  const next = (await runCommand("next", file)).out;
  expect(next).toMatch(/wood to take off sole +0\.1 mm +not measured, planned value kept/);
  expect(next).toMatch(/Not measured; planned value kept: .*wood left under sole 0\.1 mm\./);
  expect(next).toMatch(/mouthSeen=…\n.*Expected: closed at first, 0\.15 mm in the end\./);
  expect((await runCommand("measured", file, "allowanceLeft=0.3")).out).toContain(": wood left under sole 0.3 mm.");
  expect((await runCommand("next", file)).out).not.toMatch(
    /wood to take off sole.*not measured|wood left under sole 0\.1/,
  );
});

test("figures, checks and packs follow what was measured, but for what is spent", async () => {
  await runCommand("measured", file, "bedAngle=46", "--skip");
  const { figures } = JSON.parse((await runCommand("figures", file, "--json")).out);
  expect([figures.bedAngle.value, figures.sawBed.value, figures.rampAngle.value]).toEqual([46, 43, 60]);
  const { findings } = JSON.parse((await runCommand("check", file, "--with", "pin.height=25", "--json")).out);
  const offPin = findings.find(({ code }: { code: string }) => code === "wedge-under-pin");
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
  expect(words).toMatch(/^To clear every failure, change:$/m);
  const lines = [...words.matchAll(/^ {2}([a-z][a-zA-Z.]+): (.+)$/gm)];
  expect(lines.length).toBe(mended.length);
  const typed = lines.flatMap(([, key, value]) => ["--with", `${key}=${value}`]);
  expect((await runCommand("check", file, ...bad, ...typed)).exit).toBe(0);
});
