// The commands as a maker meets them: what they print, which code they exit with, what they leave on the disk.
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { main } from "@lamplane/cli";
import { travellerSteps } from "@lamplane/sheets";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { parse } from "yaml";
import { decodeDesignBytes } from "../../packages/cli/src/design-file.ts";
import { runCommand } from "../support/running.ts";

const SMOOTHER = "examples/apprentice-smoother.yaml";
let folder = "";
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "lamplane-test-"));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

test("new writes a design that check accepts, and never writes over it", async () => {
  for (const units of ["mm", "in"])
    for (const more of [[], ["--all"]]) {
      const file = join(folder, `first-${units}${more.length}.yaml`);
      expect(await runCommand("new", file, "--units", units, ...more)).toMatchObject({ exit: 0, err: "" });
      const text = readFileSync(file, "utf8");
      expect(text).toContain(`name: first-${units}`);
      expect((await runCommand("check", file)).exit).toBe(0);
      expect(await runCommand("new", file)).toMatchObject({ exit: 3, out: "" });
      expect(readFileSync(file, "utf8")).toBe(text);
    }
});

describe("new for a purpose", () => {
  test.each(["small", "smoother", "jack", "jointer"])("%s: some thirty lines, which can be built", async (purpose) => {
    for (const units of ["mm", "in"]) {
      const file = join(folder, `${purpose}-${units}.yaml`);
      const { exit, out } = await runCommand("new", file, "--for", purpose, "--units", units);
      expect(exit).toBe(0);
      const text = readFileSync(file, "utf8");
      expect(text.split("\n").length).toBeLessThan(40);
      expect(text).toMatch(/Length, height and mouth for a .*: common practice, no published source\./);
      expect(out).toMatch(/Correct the lines marked "Measure" .*\nAs it stands:\n/);
      expect(text).toMatch(/Lines marked "Measure" hold examples/);
      expect((await runCommand("check", file)).exit, `${purpose} ${units}`).toBe(0);
    }
  });

  test("an iron of 32 × 3 passes in a body of 140 × 42, and in one of 120 × 36 with no pin chosen by the maker", async () => {
    const file = join(folder, "little.yaml");
    await runCommand("new", file, "--for", "small");
    const { body, iron } = parse(readFileSync(file, "utf8"));
    expect([iron.width, iron.thickness, body.length, body.height]).toEqual(["32 mm", "3 mm", "140 mm", "42 mm"]);
    expect((await runCommand("check", file)).exit).toBe(0);
    writeFileSync(file, "iron: { width: 32, thickness: 3 }\nbody: { length: 120, height: 36 }\n");
    expect((await runCommand("check", file)).exit).toBe(0);
  });

  test("at a terminal what was not given is asked for, and the verdict is on the maker's own iron and billet", async () => {
    const { io, asked, printed } = answeringIo({
      confirm: true,
      answers: ["2 1/8", '5/32"', "7", "1/8", "1/2", "1/4", "1 7/8", "16", "4", "2 3/4"],
      refused: ["wide", "900"],
    });
    const file = join(folder, "asked.yaml");
    expect(await main(["new", file, "--for", "jack"], io)).toBe(0);
    expect(asked.map((question) => /unit|wide|thick|high|long|head|cap iron|billet/.exec(question)?.[0])).toEqual([
      "unit",
      ...["wide", "thick", "long", "cap iron", "thick", "wide", "head", "head"],
      ...["billet", "long", "wide", "high"],
    ]);
    const { iron, capIron, billet, body, units } = parse(readFileSync(file, "utf8"));
    expect(units).toBe("in");
    expect(iron).toMatchObject({ width: "2 1/8", thickness: '5/32"', length: 7 });
    expect(capIron).toEqual({ thickness: "1/8", screwHead: { diameter: "1/2", height: "1/4", fromEdge: "1 7/8" } });
    expect(billet).toEqual({ length: 16, width: 4, height: "2 3/4" });
    expect(body.length).toBe("14 1/8 in");
    expect(printed()).not.toContain("Measure");
    expect((await runCommand("check", file)).exit).toBe(0);
  });

  test("a single iron is asked about no screw, and a billet still to be bought about no size", async () => {
    const { io, asked } = answeringIo({ confirm: false, answers: ["48", "3.6", "150"] });
    const file = join(folder, "single.yaml");
    expect(await main(["new", file, "--for", "smoother", "--units", "mm"], io)).toBe(0);
    expect(asked).toHaveLength(5);
    expect(parse(readFileSync(file, "utf8"))).toMatchObject({ capIron: { thickness: 0 }, billet: { width: 0 } });
    expect(readFileSync(file, "utf8")).not.toContain("screwHead");
  });

  test("what is measured already comes in by --with; only what is not stays marked, and nothing wrong is written", async () => {
    const file = join(folder, "measured.yaml");
    const given = ["iron.width=50.8", "iron.thickness=4", "capIron.screwHead.height=6", "pin.diameter=12"];
    const { exit } = await runCommand("new", file, ...given.flatMap((change) => ["--with", change]));
    expect(exit).toBe(0);
    const lines = readFileSync(file, "utf8").split("\n");
    const { capIron, pin } = parse(lines.join("\n"));
    expect([capIron.screwHead.height, pin.diameter]).toEqual([6, 12]);
    const marked = lines.flatMap((line) => /^ +(\w+): .*# Measure\. /.exec(line)?.[1] ?? []);
    expect(marked).toEqual(["length", "thickness", "diameter", "fromEdge", "length", "width", "height"]);
    for (const [change, fault] of [
      ["iron.width=900", /900.*allowed: 8 mm to 120 mm/],
      ["iron.widht=50", /did you mean iron\.width\?/],
      ["units=in", /enter --units/],
      ["bed.angle", /write KEY=VALUE/],
    ] as const) {
      const refused = await runCommand("new", join(folder, "wrong.yaml"), "--with", change);
      expect(refused).toMatchObject({ exit: 2, err: expect.stringMatching(fault) });
    }
    expect(readdirSync(folder)).toEqual(["measured.yaml"]);
  });

  test("the first step names what else is measured on the iron, each with its key, and so does the traveller", async () => {
    const file = join(folder, "first.yaml");
    await runCommand("new", file, "--with", "capIron.screwHead.height=6");
    const { out } = await runCommand("next", file);
    expect(out).toMatch(/capIron\.thickness +3\.2 mm/);
    expect(out).toMatch(/capIron\.screwHead\.height +6 mm/);
    const single = await runCommand("next", "examples/tapered-panel.yaml");
    expect(single.out).toContain("iron.bevel");
    expect(single.out).not.toContain("capIron");
    const steps = travellerSteps(decodeDesignBytes(readFileSync(file), file));
    expect(JSON.stringify(steps)).toMatch(/billet\.width.*capIron\.screwHead\.height/);
  });
});

interface Answers {
  readonly confirm: boolean;
  readonly answers: string[];
  /** A word, and a length too long for any iron or billet. */
  readonly refused?: readonly string[];
}

/** A terminal at which somebody answers: the last of each choice, and these texts in turn. */
function answeringIo({ confirm, answers, refused = [] }: Answers) {
  const asked: string[] = [];
  let out = "";
  const note = <Answer>(question: string, answer: Answer): Promise<Answer> => {
    asked.push(question);
    return Promise.resolve(answer);
  };
  const io = {
    out: (text: string) => {
      out += text;
    },
    err: () => {},
    showsProgress: false,
    prompts: {
      confirm: (question: string) => note(question, confirm),
      choose: <Choice extends string>(question: string, choices: readonly { readonly value: Choice }[]) =>
        note(question, choices.at(-1)!.value),
      text: (question: string, _: string, fault: (answer: string) => string | undefined) => {
        for (const wrong of refused) expect(fault(wrong)).toMatch(/unit|number|allowed: .* in/);
        const answer = answers.shift()!;
        expect(fault(answer)).toBeUndefined();
        return note(question, answer);
      },
    },
  };
  return { io, asked, printed: () => out };
}

test("figures of the worked set come out as computed apart from the project", async () => {
  const file = join(folder, "worked.yaml");
  writeFileSync(
    file,
    `iron: { width: 48, thickness: 3.6, bevel: 28 }
capIron: { thickness: 3.2, hump: 0 }
bed: { angle: 47 }
ramp: { angle: 60 }
body: { length: 230, height: 58 }
mouth: { fromToe: 78, opening: 0.15 }
sole: { allowance: 3 }
wedge: { angle: 6, tip: 3, tipFromEdge: 22 }
pin: { diameter: 12.7, height: 36 }
`,
  );
  const { exit, out } = await runCommand("figures", file, "--json");
  expect(exit).toBe(0);
  const { figures } = JSON.parse(out);
  expect(figures.mouthGrowth).toMatchObject({ unit: "", source: expect.any(String), formula: "cot β + cot ρ" });
  const shown = Object.entries({
    glueGap: 0.5428,
    pinFromEnd: 105.0356,
    pinToRamp: 24.1949,
    wedgeAtPin: 4.4826,
    mouthGrowth: 1.5099,
  });
  for (const [key, value] of shown) expect(figures[key].value).toBeCloseTo(value, 4);
});

test("figures tell hold, strength and seasons too, and that strength is indicative; figures.json the same", async () => {
  const text = await runCommand("figures", SMOOTHER);
  expect(text.out).toMatch(/\nclampWanted +246 N /);
  expect(text.out).toMatch(/\nmoistureDriest +6\.2 % /);
  expect(text.out).toMatch(/\n\nStrength figures are indicative[\s\S]*trained\s+practice\.\n$/);
  const { figures, caution } = JSON.parse((await runCommand("figures", SMOOTHER, "--json")).out);
  expect(caution).toMatch(/indicative/);
  expect(figures.tenonShearFactor).toMatchObject({ unit: "×", help: expect.stringContaining("Indicative") });
  const built = await runCommand("build", SMOOTHER, "--out", folder);
  expect(built.out).toMatch(/Strength figures are indicative\. .*trained practice\.\n$/);
  const inPack = JSON.parse(readFileSync(join(folder, "apprentice-smoother", "figures.json"), "utf8"));
  // A pack tells twelve digits, which every engine agrees on.
  const twelve = (_: string, value: unknown) => (typeof value === "number" ? Number(value.toPrecision(12)) : value);
  expect(inPack.figures).toEqual(JSON.parse(JSON.stringify(figures), twelve));
  expect(inPack.caution).toBe(caution);
});

test("check counts warnings and notes apart; neither fails", async () => {
  const both = await runCommand("check", SMOOTHER, "--with", "wood.wedge=beach", "--with", "pin.tenon=6");
  expect(both.exit).toBe(0);
  expect(both.out).toMatch(
    /^apprentice-smoother: no check fails, 2 warnings, 1 note\.\n\nWarnings\n[\s\S]*\n\nNotes\n/,
  );
  const note = await runCommand("check", SMOOTHER, "--with", "wood.wedge=beach", "--json");
  expect(JSON.parse(note.out).findings).toMatchObject([{ code: "wood-name", severity: "note" }]);
});

test("--with is refused in the unit that it was typed in, every length at once", async () => {
  const lengths = ["--with", "sole.allowance=8", "--with", "body.cheek=4"];
  const { exit, err } = await runCommand("check", SMOOTHER, "--with", "units=in", ...lengths);
  expect(exit).toBe(2);
  expect(err.trim().split("\n")).toEqual([
    "--with: sole.allowance: read 8, that is 8 in (203.2 mm); allowed: 0 in (0 mm) to 0.787 in (20 mm); if 8 mm is meant, write 8 mm",
    "--with: body.cheek: read 4, that is 4 in (101.6 mm); allowed: 0.079 in (2 mm) to 1.575 in (40 mm); if 4 mm is meant, write 4 mm",
  ]);
});

const PATTERN = /^ {2}\S.*? {2,}(?:-?[0-9.]+(?: (?:mm|%)|°|× load)?|[0-9.]+ × .* mm) +(?:\((?:min|max) [^)]+\))? +\S/;

test("check prints what fails, the warnings, and one line for what passes; --all lists that by the same pattern", async () => {
  const good = await runCommand("check", SMOOTHER);
  expect(good).toMatchObject({ exit: 0, err: "" });
  expect(good.out).toMatch(/^apprentice-smoother: no check fails\.\n\n6\d checks passed \(--all lists them\)\n$/);
  const all = (await runCommand("check", SMOOTHER, "--all")).out;
  const rows = all.split("\n").filter((line) => / {2}ok$/.test(line));
  expect(rows).toHaveLength(Number(/(\d+) checks passed/.exec(good.out)![1]));
  for (const row of rows) expect(row).toMatch(PATTERN);
  const bad = (await runCommand("check", SMOOTHER, "--with", "pin.height=25", "--with", "pin.tenon=6")).out;
  const [fails, warns, passes] = [/\n\nFails\n/, /\n\nWarnings\n/, / checks passed/].map((part) => bad.search(part));
  expect([fails! > 0, warns! > fails!, passes! > warns!]).toEqual([true, true, true]);
  expect(bad).toMatch(
    /\n {2}Wedge below cross pin +-[0-9.]+ mm +\(min 0\) +too short — Fix: pin\.height 25 mm → [0-9.]+ mm\n/,
  );
});

test("check --json gives what passed, and what fails with its cure; --with changes the design for one run", async () => {
  const bad = await runCommand("check", SMOOTHER, "--with", "pin.height=25", "--json");
  expect(bad.exit).toBe(1);
  const { findings, mayBeBuilt } = JSON.parse(bad.out);
  expect(mayBeBuilt).toBe(false);
  const [worst] = findings;
  expect(worst).toMatchObject({ severity: "stop", code: "wedge-under-pin" });
  const mended = await runCommand("check", SMOOTHER, "--with", `${worst.cure[0].parameter}=${worst.cure[0].value}`);
  expect(mended.exit).toBe(0);
});

test.each([
  [["--with", "bed.angle=90"], /bed\.angle/],
  [["--with", "bed.angel=47"], /bed\.angel: no such parameter, figure, check or step; did you mean bed\.angle/],
  [["--with", "iron.width=44,5 mm"], /44\.5/],
  [["--with", "nonsense"], /KEY=VALUE/],
  [["--whatever"], /whatever/],
])("%j is refused by name", async (args, message) => {
  const refused = await runCommand("check", SMOOTHER, ...args);
  expect(refused).toMatchObject({ exit: 2, out: "" });
  expect(refused.err).toMatch(message);
});

test("no command, an unknown command and a missing file are refused; help and version are not", async () => {
  expect(await runCommand()).toMatchObject({ exit: 2, err: expect.stringContaining("Name a command") });
  expect(await runCommand("chek", SMOOTHER)).toMatchObject({ exit: 2, err: expect.stringContaining("chek") });
  expect(await runCommand("check")).toMatchObject({ exit: 2, err: expect.stringContaining("Name the design file") });
  expect(await runCommand("check", join(folder, "none.yaml"))).toMatchObject({
    exit: 2,
    err: expect.stringContaining("no such file"),
  });
  expect(await runCommand("check", folder)).toMatchObject({ exit: 2, err: expect.stringContaining("folder") });
  expect(await runCommand("--help")).toMatchObject({ exit: 0, out: expect.stringContaining("Exit codes") });
  expect(await runCommand("--version")).toMatchObject({ exit: 0 });
});

test("build writes the pack, the same bytes again, and nothing for a design that fails", async () => {
  const bytes = () =>
    readdirSync(join(folder, "apprentice-smoother"), { recursive: true, withFileTypes: true })
      .filter((f) => f.isFile())
      .map((f) => [f.name, readFileSync(join(f.parentPath, f.name)).toString("base64")]);
  expect(await runCommand("build", SMOOTHER, "--out", folder)).toMatchObject({ exit: 0, err: "" });
  const first = bytes();
  const named = (names: string[], ...ends: string[]) => names.flatMap((name) => ends.map((end) => `${name}.${end}`));
  const parts = ["bed-block", "cheek-left", "cheek-right", "cross-pin", "front-block", "wedge"];
  const jigs = ["bed-cradle", "bed-gauge", "pin-guide", "ramp-gauge", "recess-template", "throat-spacer", "wedge-sled"];
  const layouts = ["bed-face", "cheek-left", "cheek-right", "core-cuts", "cross-pin", "wedge"];
  const plots = ["bed-over-year", "mouth-over-life", "mouth-over-year", "mouth-shares", "seasons", "throat-width"];
  const rest = ["body.3mf", "body.stl", "figures.json", "fit-test.stl", "layout.pdf", "manifest.json", "stock.csv"];
  expect(first.map(([name]) => name).sort()).toEqual(
    [
      ...named(parts, "dxf", "stl", "step", "svg"),
      ...named(["plane", "fit-test"], "step"),
      ...named(jigs, "dxf", "stl", "step"),
      ...layouts.map((name) => `layout-${name}.svg`),
      ...named(plots, "svg"),
      ...named(["plate-1", "plate-2", "plate-3"], "3mf"),
      ...rest,
      ...named(["appendix", "card", "traveller"], "pdf"),
    ].sort(),
  );
  const again = await runCommand("build", SMOOTHER, "--out", folder, "--json");
  expect(JSON.parse(again.out)).toMatchObject({ replaced: true });
  expect(bytes()).toEqual(first);
  const failing = await runCommand("build", SMOOTHER, "--out", folder, "--with", "pin.height=25");
  expect(failing).toMatchObject({ exit: 1, out: "", err: expect.stringContaining("Nothing was written") });
  expect(bytes()).toEqual(first);
});

test("build --only makes what it is asked for, and refuses what it does not know", async () => {
  const of = (run: { out: string }) => JSON.parse(run.out).files as string[];
  const jigs = of(await runCommand("build", SMOOTHER, "--out", folder, "--only", "jigs", "--json"));
  const isOfJig = (path: string) => /^(step\/)?jigs\//.test(path);
  expect(jigs.filter(isOfJig)).toHaveLength(8 + 7 + 8 + 3);
  expect(jigs.filter((path) => /^parts|^step\/[^/]*$/.test(path) || path === "body.stl")).toEqual([]);
  const again = JSON.parse(
    (await runCommand("build", SMOOTHER, "--out", folder, "--only", "parts", "--with", "pin.height=40", "--json")).out,
  );
  expect(again.files).toContain("body.stl");
  expect(again.files.filter(isOfJig)).toEqual([]);
  expect(again.carried.map(({ path }: { path: string }) => path).sort()).toEqual(jigs.filter(isOfJig).sort());
  const told = await runCommand("build", SMOOTHER, "--out", folder, "--only", "parts", "--with", "pin.height=40");
  expect(told.out).toMatch(/Kept 26 files of earlier runs\. Out of date, build again: jigs\//);
  const one = of(await runCommand("build", SMOOTHER, "--out", folder, "--only", "jigs/pin-guide", "--json"));
  expect(one.filter(isOfJig)).toEqual(["jigs/pin-guide.stl", "step/jigs/pin-guide.step", "jigs/pin-guide.dxf"]);
  const refused = await runCommand("build", SMOOTHER, "--out", folder, "--only", "jigs,jigs2");
  expect(refused).toMatchObject({ exit: 2, err: expect.stringContaining("parts, jigs, sheets") });
});

test("build leaves a folder that is not its pack alone, and says where it stands", async () => {
  const theirs = join(folder, "theirs.txt");
  writeFileSync(theirs, "mine");
  expect(await runCommand("build", SMOOTHER, "--out", theirs)).toMatchObject({
    exit: 3,
    err: expect.stringContaining("theirs.txt"),
  });
  expect(readFileSync(theirs, "utf8")).toBe("mine");
  expect(readdirSync(folder)).toEqual(["theirs.txt"]);
});

test("explain knows figures, checks and steps; one name may be several of them", async () => {
  const explained = async (name: string) => (await runCommand("explain", name)).out;
  expect(await explained("mouthGrowth")).toMatch(
    /mouthGrowth \(figure\)\n.*for each mm.*\n.*cot β \+ cot ρ\n {2}source: plane geometry/,
  );
  expect(await explained("clampWanted")).toMatch(/\(figure\)\n/);
  const { findings, passed } = JSON.parse((await runCommand("check", SMOOTHER, "--json")).out);
  const codes = [...findings, ...passed].map(({ code }) => code);
  expect(codes.length).toBeGreaterThan(40);
  for (const code of codes)
    expect(await explained(code), code).toMatch(/\(check\)\n(.*\n)+ {2}depends on [a-z]+.*\n {2}source: /);
  for (const code of ["wood-name", "wood-trade-name", "wood-properties", "moisture-range", "sole-cup"])
    expect(await explained(code), code).toMatch(
      /\(check\)\n {2}[A-Z].*\.\n {2}depends on wood\.[a-z]+.*\n {2}source: Wood Handbook/,
    );
  // A factor of safety stops below 1 and warns below what the maker asks for.
  expect(await explained("pin-bending")).toMatch(/must be at least 1 ×; should be at least 3 × \(hold\.safety\)/);
  expect(await explained("throat-spacer-jig")).toMatch(
    /\(check\)\n {2}Why no throat spacer is made for a plane\.\n {2}source: /,
  );
  expect(await explained("recess")).toMatch(
    /recess\.width: .*\n[\s\S]*recess \(step\)\n.*Rout the recess: [\s\S]*measure: recessWidth/,
  );
  expect((await runCommand("explain")).out).toMatch(/^PARAMETERS\n[\s\S]*\nFIGURES\n[\s\S]*\nCHECKS\n[\s\S]*\nSTEPS\n/);
});

test.each([
  [["explain", "mouthgroth"], /did you mean mouthGrowth/],
  [["explain", "angle"], /did you mean bed\.angle or ramp\.angle/],
  [["explain", "sole-cop"], /did you mean soleCup or sole-cup/],
  [["explain", "throat-spacer-jg"], /did you mean throat-spacer-jig/],
  [["explain", "xyzzyxyzzy"], /check or step\. `lamplane explain` lists them/],
  [["check", SMOOTHER, "--with", "bed.angel=50"], /bed\.angel: .*; did you mean bed\.angle\?/],
  [["sweep", SMOOTHER, "--vary", "iron.with=50,51"], /did you mean iron\.width/],
  [["sweep", SMOOTHER, "--vary", "bed.angle=47..49:1", "--figure", "mouthGrow"], /did you mean mouthGrowth/],
  [["measured", SMOOTHER, "coreWith=49"], /did you mean coreWidth/],
])("%j names what is near", async (args, message) => {
  expect(await runCommand(...args)).toMatchObject({ exit: 2, err: expect.stringMatching(message) });
});

test("explain reads from the table, one parameter or a section", async () => {
  expect((await runCommand("explain", "bed.angle")).out).toMatch(/35 to 65°; default 47°/);
  expect((await runCommand("explain", "bed")).out).toMatch(/bed\.angle[\s\S]*bed\.featherChamfer/);
  expect((await runCommand("explain")).out).toMatch(/capIron\.screwHead\.diameter/);
  expect(await runCommand("explain", "bad.angle")).toMatchObject({
    exit: 2,
    err: expect.stringMatching(/bad\.angle: .* did you mean bed\.angle/),
  });
  expect((await runCommand("explain", "measured.coreWidth")).out).toMatch(/5 to 200 mm; empty until measured/);
});
