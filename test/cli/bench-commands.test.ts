// The commands used beside the bench: mouth and survey, what they print, how they exit, what they refuse.
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import fc from "fast-check";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { fault } from "../support/faults.ts";
import { runCommand } from "../support/running.ts";

const SMOOTHER = "examples/apprentice-smoother.yaml";
const JACK = "examples/trestle-jack.yaml";
const SAWN = "examples/readings/apprentice-bed-sawn.yaml";
const TRUED = "examples/readings/apprentice-bed-trued.yaml";
let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "lamplane-bench-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const file = (name: string, content: string | Uint8Array): string => {
  writeFileSync(join(folder, name), content);
  return join(folder, name);
};

describe("mouth", () => {
  test("says what to take off, and what each later truing costs", async () => {
    const { exit, out, err } = await runCommand("mouth", SMOOTHER, "--seen", "0.05");
    expect({ exit, err }).toEqual({ exit: 0, err: "" });
    expect(out).toMatch(/^TAKE OFF 0\.07 mm of the sole: 1 shaving of 0\.05 mm/);
    expect(out).toMatch(/\n0\.5 +0\.9 /);
    const all = (await runCommand("mouth", SMOOTHER, "--seen", "0.05", "--all")).out;
    expect(all).toMatch(/cot bed \+ cot ramp/);
    expect(all).toMatch(/^off +mouth .* edge from toe +bed below heel.*\n(.+\n)+\noff +.*height$/m);
  });

  test("its table begins with the mouth that was seen, or with the one wanted where the sole is trued to it", async () => {
    const life = async (...args: string[]) =>
      JSON.parse((await runCommand("mouth", SMOOTHER, ...args, "--json")).out).life as {
        takenOff: number;
        opening: number;
      }[];
    // cot 47 + cot 60 = 1.5099; the table ends at 10 × 0.15, but not before 1 mm
    const wide = await life("--seen", "0.6");
    expect([wide[0]!.opening, wide[1]!.opening]).toEqual([
      expect.closeTo(0.6, 9),
      expect.closeTo(0.6 + 0.25 * 1.5099, 4),
    ]);
    expect(wide.at(-1)!.takenOff).toBe(1);
    expect((await life("--seen", "0.05"))[0]!.opening).toBeCloseTo(0.15, 9);
    expect((await life("--seen", "0.05", "--wanted", "0.3"))[0]!.opening).toBeCloseTo(0.3, 9);
    expect((await life("--seen", "0.05", "--with", "measured.rampTipFromEnd=86.1"))[0]!.opening).toBeCloseTo(0.15, 9);
    expect((await life("--seen", "0.4", "--with", "measured.done=shaping"))[0]!.opening).toBeCloseTo(0.4, 9);
  });

  test("reads lengths in the design's unit, or with their own", async () => {
    const taken = async (...args: string[]) => JSON.parse((await runCommand("mouth", ...args, "--json")).out).mouth;
    expect((await taken(JACK, "--seen", "1/64")).seen).toBeCloseTo(25.4 / 64, 6);
    expect((await taken(SMOOTHER, "--seen", "1/64 in", "--wanted", "0.5")).seen).toBeCloseTo(25.4 / 64, 6);
    expect(await taken(JACK, "--seen", "0.1 mm", "--wanted", "0.01", "--shaving", "0.001")).toMatchObject({
      seen: 0.1,
      wanted: 0.254,
      shaving: 0.0254,
    });
  });

  test("in JSON gives the reading and the life as numbers, and --with goes before", async () => {
    const { exit, out } = await runCommand("mouth", SMOOTHER, "--seen", "0", "--with", "mouth.opening=0.3", "--json");
    const { name, mouth, life } = JSON.parse(out);
    expect({ exit, name }).toEqual({ exit: 0, name: "apprentice-smoother" });
    expect(mouth).toMatchObject({ verdict: "shut", wanted: 0.3 });
    expect(life[0].takenOff).toBe(0);
    expect(life[0].opening).toBeCloseTo(0.3, 9);
  });

  test("read beside both cheeks, it gives the sentences that next gives once those are measured", async () => {
    const { out } = await runCommand("mouth", SMOOTHER, "--left", "0.02", "--right", "0.1");
    expect(out).toMatch(/^Uneven by 0\.08 mm: when .* it is 0\.11 mm at the left cheek and 0\.19 mm at the right\./m);
    const uneven = out.match(/^Uneven by [\s\S]*?(?=\n\n)/m)![0];
    expect(uneven.split("\n")).toHaveLength(3);
    const measured = file("measured.yaml", readFileSync(SMOOTHER));
    await runCommand("measured", measured, "mouthSeenLeft=0.02", "mouthSeenRight=0.1", "--skip");
    expect((await runCommand("next", measured)).out).toContain(uneven);
  });

  test("without --seen its middle lies midway between the cheeks; --seen goes before that", async () => {
    const read = async (...args: string[]) =>
      JSON.parse((await runCommand("mouth", SMOOTHER, "--left", "0.02", "--right", "0.1", ...args, "--json")).out);
    expect((await read()).mouth.seen).toBeCloseTo(0.06, 12);
    const { mouth, skew } = await read("--seen", "0.05");
    expect(mouth.seen).toBe(0.05);
    expect(skew).toMatchObject({ isRead: true, uneven: expect.closeTo(0.08, 12) });
  });

  test("exits 1 for a mouth that truing cannot mend, and tells what would", async () => {
    const { exit, out } = await runCommand("mouth", SMOOTHER, "--seen", "0.6");
    expect(exit).toBe(1);
    expect(out).toMatch(/TOO WIDE by 0\.45 mm[\s\S]*Packing[\s\S]*Patch/);
  });

  test.each([
    [[], /--seen 0\.05, or --left/],
    [["--seen"], /seen/],
    [["--left", "0.1"], /--left 0\.05 --right/],
    [["--seen", "0.1", "--right", "0.1"], /--left 0\.05 --right/],
    [["--left", "0.1", "--right", "11"], /--right 11: .*0 mm to 10 mm/],
    [["--seen", "-0.1"], /--seen -0\.1: .*0 mm to 10 mm/],
    [["--seen", "11"], /--seen 11: /],
    [["--seen", "wide"], /--seen wide: /],
    [["--seen", "0,1"], /0\.1/],
    [["--seen", "1/64"], /write 1\/64 in/],
    [["--seen", "NaN"], /--seen NaN: /],
    [["--seen", "0.1", "--wanted", "20"], /--wanted 20: /],
    [["--seen", "0.1", "--shaving", "0"], /--shaving 0: /],
    [["--seen", "0.1", "--seen", "0.2"], /--seen: written 2 times/],
  ])("%j is refused", async (args, message) => {
    const refused = await runCommand("mouth", SMOOTHER, ...args);
    expect(refused).toMatchObject({ exit: 2, out: "" });
    expect(refused.err).toMatch(message);
    expect(refused.err).not.toMatch(/\n\s+at |bug/);
  });
});

describe("survey", () => {
  test("of the sawn example fails with its map, of the trued one passes", async () => {
    const sawn = await runCommand("survey", SMOOTHER, SAWN);
    expect(sawn).toMatchObject({ exit: 1, err: "" });
    expect(sawn.out).toMatch(/FAILS: humped 0\.1\d\d mm[\s\S]*Take off, in hundredths/);
    expect((await runCommand("survey", SMOOTHER, SAWN, "--all")).out).toMatch(/common practice/);
    expect(sawn.out).not.toMatch(/recess/);
    const trued = await runCommand("survey", SMOOTHER, TRUED);
    expect(trued).toMatchObject({ exit: 0, err: "" });
    expect(trued.out).toMatch(/PASSES/);
  });

  test("has two examples, which say that they are invented", () => {
    const names = readdirSync("examples/readings").map((name) => `examples/readings/${name}`);
    expect(names.sort()).toEqual([SAWN, TRUED]);
    for (const name of names) expect(readFileSync(name, "utf8")).toMatch(/^# Our own invention/);
  });

  test("prints a sheet that it then asks to be filled in", async () => {
    const { exit, out } = await runCommand("survey", JACK, "--blank");
    expect(exit).toBe(0);
    expect(out).toMatch(/units: in/);
    const empty = await runCommand("survey", JACK, file("sheet.yaml", out));
    expect(empty).toMatchObject({ exit: 2, out: "" });
    expect(empty.err).toMatch(/sheet\.yaml:\d+:\d+: straightedge\.0\.gaps\.0\.refuses: read nothing/);
    const filled = await runCommand(
      "survey",
      JACK,
      file("sheet.yaml", out.replaceAll("refuses: }", "refuses: 0.001 }")),
    );
    expect(filled).toMatchObject({ exit: 0, err: "" });
  });

  test("that leaves a hump open exits 1, in words and in JSON without infinity", async () => {
    const little = file(
      "little.yaml",
      "straightedge:\n  - from: [5, 25]\n    to: [79, 25]\n    gaps: [{ at: 0, refuses: 0.03 }, { at: 37, refuses: 0.03 }, { at: 74, refuses: 0.03 }]\n",
    );
    const words = await runCommand("survey", SMOOTHER, little);
    expect(words.exit).toBe(1);
    expect(words.out).toMatch(/UNDECIDED[\s\S]*Missing/);
    expect(words.out).not.toMatch(/Infinity|NaN|undefined/);
    const { exit, out } = await runCommand("survey", SMOOTHER, little, "--json");
    expect(exit).toBe(1);
    expect(out).not.toMatch(/Infinity|NaN/);
    expect(JSON.parse(out).survey).toMatchObject({ verdict: "undecided", passes: false, possibleHump: null });
  });

  test("notes stations that read as deep as a routed recess", async () => {
    const routed = file(
      "routed.yaml",
      "straightedge:\n  - from: [70, 4]\n    to: [70, 45]\n    gaps: [{ at: 0, refuses: 0.03 }, { at: 20, fits: 4.9, refuses: 5.1 }, { at: 41, refuses: 0.03 }]\n",
    );
    expect((await runCommand("survey", SMOOTHER, routed)).out).toMatch(
      /Line 4: these readings seem to lie in the recess/,
    );
    expect(JSON.parse((await runCommand("survey", SMOOTHER, routed, "--json")).out).inRecess).toEqual([4]);
  });

  test("refuses what is missing, a folder, a file too big, and both a sheet and readings", async () => {
    const refused = async (message: RegExp, ...args: string[]) => {
      const { exit, out, err } = await runCommand("survey", SMOOTHER, ...args);
      expect({ exit, out }, err).toEqual({ exit: 2, out: "" });
      expect(err).toMatch(message);
    };
    await refused(/Name the readings file too/);
    await refused(/no such file; `lamplane survey FILE --blank`/, join(folder, "none.yaml"));
    await refused(/folder; name the readings file/, folder);
    await refused(/big\.yaml:1:1: \d+ bytes; a readings file/, file("big.yaml", "#".repeat(300_000)));
    await refused(/leave the readings file out/, SAWN, "--blank");
    await refused(/deep\.yaml:1:\d+: .*nested/, file("deep.yaml", `a: ${"[".repeat(50_000)}`));
    await refused(/latin\.yaml:1:8: .*UTF-8/, file("latin.yaml", Uint8Array.of(35, 32, 102, 108, 97, 116, 32, 0xe9)));
    await refused(
      /off\.yaml:\d+:\d+: .*on the bed/,
      file("off.yaml", "straightedge: [{ from: [0, 0], to: [200, 0], gaps: [] }]"),
    );
  });

  test(
    "150 files of random bytes or text",
    fault({ on: "the readings of a survey", survives: "exit 2 with line and column; no stack trace" }),
    async () => {
      const bytes = fc.oneof(
        fc.uint8Array({ minLength: 1, maxLength: 300 }),
        fc.string({ minLength: 1, maxLength: 300, unit: "binary" }),
      );
      for (const content of fc.sample(bytes, { numRuns: 150, seed: 22 })) {
        const { exit, out, err } = await runCommand("survey", SMOOTHER, file("bad.yaml", content));
        expect({ exit, out }, err).toEqual({ exit: 2, out: "" });
        expect(err).toMatch(/bad\.yaml:\d+:\d+: /);
        expect(err).not.toMatch(/\n\s+at |\[object|bug/);
      }
    },
  );
});
