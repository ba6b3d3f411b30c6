// `next` and `measured` as a maker meets them: comments kept, nothing half written, the right step with its numbers.
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { ran } from "../support/running.ts";

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
  const { exit, out } = await ran("measured", file, "coreWidth=49.7 mm", "measured.bedAngle=46.5°");
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
  const { exit, err } = await ran("measured", file, "ironWidth=48", value);
  expect(exit).toBe(2);
  expect(err).toMatch(message);
  expect(readFileSync(file, "utf8")).toBe(DESIGN);
});

test("next names the step, its numbers, what changed and what is lost", async () => {
  expect((await ran("next", file)).out).toMatch(/step 1 of 12, nothing is cut yet/);
  await ran("measured", file, "bedAngle=46");
  const { exit, out } = await ran("next", file);
  expect(exit).toBe(0);
  expect(out).toMatch(/step 5 of 12, after "True the bed"/);
  expect(out).toMatch(/recessWidth=…\n.*Expected: 19 mm/);
  expect(out).toMatch(/bedAngle: 47° was wanted, 46° came out/);
  const state = JSON.parse((await ran("next", file, "--json")).out);
  expect(state).toMatchObject({ step: "recess", lost: [{ key: "bedAngle", asked: 47, got: 46 }] });
});

test("measured without a value, or with one that this plane does not have, is refused", async () => {
  expect(await ran("measured", file)).toMatchObject({ exit: 2, err: expect.stringMatching(/Name what was measured/) });
  const { exit, err } = await ran("measured", file, "rampRadius=50");
  expect(exit).toBe(2);
  expect(err).toMatch(/rampRadius: this plane has none/);
  expect(readFileSync(file, "utf8")).toBe(DESIGN);
});

test("next warns of what fails before it says what to do, and check no longer speaks of a first cut", async () => {
  await ran("measured", file, "coreWidth=47.8", "cheekThickness=7.5");
  const { out } = await ran("next", file);
  expect(out.indexOf("BEFORE YOU GO ON")).toBeGreaterThan(0);
  expect(out.indexOf("BEFORE YOU GO ON")).toBeLessThan(out.indexOf("sawRamp"));
  const { stops } = JSON.parse((await ran("next", file, "--json")).out);
  expect(stops.map(({ code }: { code: string }) => code)).toContain("iron-tight-in-core");
  await ran("measured", file, "coreWidth=49.6");
  expect((await ran("next", file)).out).not.toContain("BEFORE YOU GO ON");
  expect((await ran("check", file)).out).toMatch(/to weigh before you go on/);
});

test("a change counted as a cost says what is and what would have been, in this order", async () => {
  await ran("measured", file, "bedAngle=46");
  expect((await ran("next", file)).out).toMatch(/Clearance under the bevel: 18° instead of 19°/);
});

test("figures, checks and packs follow what was measured, but for what is spent", async () => {
  await ran("measured", file, "bedAngle=46");
  const { figures } = JSON.parse((await ran("figures", file, "--json")).out);
  expect([figures.bedAngle.value, figures.sawBed.value, figures.rampAngle.value]).toEqual([46, 43, 60]);
  const { findings } = JSON.parse((await ran("check", file, "--with", "pin.height=25", "--json")).out);
  const offPin = findings.find(({ code }: { code: string }) => code === "wedge-off-pin");
  expect(offPin.cure.map(({ parameter }: { parameter: string }) => parameter)).not.toContain("bed.angle");
  expect((await ran("build", file, "--out", folder)).exit).toBe(0);
});

test("check names the fewest changes that mend it all", async () => {
  const bad = ["--with", "pin.height=25", "--with", "body.trim=4", "--with", "recess.cutter=25"];
  const { exit, out } = await ran("check", file, ...bad, "--json");
  expect(exit).toBe(1);
  const { mended } = JSON.parse(out);
  expect(mended.length).toBeGreaterThan(1);
  const cures = mended.flatMap(({ parameter, value }: { parameter: string; value: number }) => [
    "--with",
    `${parameter}=${value}`,
  ]);
  expect((await ran("check", file, ...bad, ...cures)).exit).toBe(0);
  // What is printed can be typed back, whatever the maker's unit.
  const { out: words } = await ran("check", file, ...bad, "--with", "units=in");
  expect(words).toMatch(/All that stops it is mended together by:/);
  const lines = [...words.matchAll(/^ {2}([a-zA-Z.]+): (.+)$/gm)];
  expect(lines.length).toBe(mended.length);
  const typed = lines.flatMap(([, key, value]) => ["--with", `${key}=${value}`]);
  expect((await ran("check", file, ...bad, ...typed)).exit).toBe(0);
});
