// `lamplane class` as a teacher meets it: design files, shared set-ups, rows that fail beside others that are made, and the status.
import { existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { ClassFolder } from "../support/class-folder.ts";
import { runCommand } from "../support/running.ts";

const school = new ClassFolder();

describe("with --plan", () => {
  test("each plane's design file has its row and the shared core width, and every check reads it", async () => {
    school.writeRoster("name,iron.width,iron.thickness\nanna,50.8,3.1\nben,50,3.2\ncarla,44.4,3.6\n");
    const { exit, out, err } = await school.run("--plan");
    expect({ exit, err }).toEqual({ exit: 0, err: "" });
    expect(out).toContain("2 core widths:");
    const [anna, ben, carla] = ["anna", "ben", "carla"].map((name) => school.design(name));
    expect(anna!.iron).toMatchObject({ width: 50.8, thickness: 3.1 });
    const core = (design: typeof anna) => design!.iron.width + design!.body.sideClearance;
    expect(core(anna)).toBeCloseTo(core(ben), 6);
    expect(core(carla)).toBeCloseTo(46, 6);
    expect(readdirSync(school.packs).filter((name) => !name.startsWith("class."))).toEqual([
      "anna.yaml",
      "ben.yaml",
      "carla.yaml",
    ]);
    expect(readFileSync(school.planeFile("anna"), "utf8")).toMatch(/^# anna: made by `lamplane class`\./);
    expect((await runCommand("next", school.planeFile("ben"))).exit).toBe(0);
    const [, again] = /`lamplane (class [^`]*--status)`/.exec(out)!;
    expect((await runCommand(...again!.split(" "))).out).toMatch(/^3 planes: 0 built, 0 stuck\./);
  });

  test("--groups asks for more core widths, and says how many these irons need at least", async () => {
    school.writeRoster("name,iron.width\nanna,50.8\nben,50\ncarla,44.4\n");
    const three = await school.run("--plan", "--groups", "3");
    expect(three.out).toContain("3 core widths:");
    for (const name of ["anna", "ben", "carla"]) expect(school.design(name).body.sideClearance).toBeCloseTo(1.6, 6);
    const one = await school.run("--plan", "--groups", "1");
    expect(one).toMatchObject({ exit: 2, out: "" });
    expect(one.err).toMatch(/--groups 1: these irons need at least 2 core widths/);
    expect((await school.run("--groups", "0")).err).toContain("--groups: read 0; write a whole number from 1 to 500");
  });

  test("what a pupil has measured stays when the roster is corrected, and the correction is named", async () => {
    school.writeRoster("name,iron.thickness\nanna,3.1\n");
    await school.run("--plan");
    const file = school.planeFile("anna");
    writeFileSync(file, `${readFileSync(file, "utf8")}# my own note\n`);
    expect((await runCommand("measured", file, "ironThickness=3.18", "ironWidth=50.7")).exit).toBe(0);
    school.writeRoster("name,iron.thickness,mouth.opening\nanna,3.2,0.2\n");
    const { out } = await school.run("--plan");
    expect(out).toMatch(/anna\.yaml: .*iron\.thickness 3\.1 mm → 3\.2 mm.*mouth\.opening 0\.15 mm → 0\.2 mm/);
    expect(school.design("anna")).toMatchObject({
      iron: { thickness: 3.2 },
      measured: { ironThickness: 3.18, ironWidth: 50.7 },
    });
    expect(readFileSync(file, "utf8")).toContain("# my own note");
    const before = readFileSync(file, "utf8");
    expect((await school.run("--plan")).out).not.toContain("anna.yaml: ");
    expect(readFileSync(file, "utf8")).toBe(before);
  });

  test("a core that is milled keeps its width; the others share without it", async () => {
    school.writeRoster("name,iron.width,measured.coreWidth\nanna,50,51.37\nben,50.2,\ncarla,50.8,\n");
    const { out } = await school.run("--plan");
    expect(out).toMatch(/1 core width:\n {2}[\d.]+ mm: planes 2, 3\n/);
    expect(school.design("anna").body.sideClearance).toBe(1.6);
  });
});

describe("a row that fails", () => {
  test("is named with its line and what is allowed; the others are made, and the exit code is 1", async () => {
    school.writeRoster("name,iron.width\nanna,50.8\nben,500\n,48\n");
    const { exit, out } = await school.run("--plan");
    expect(exit).toBe(1);
    expect(out).toContain("1 plane, 2 with faults in the roster.");
    expect(out).toContain("class.csv:3:5: iron.width: read 500; allowed: 8 mm to 120 mm");
    expect(out).toContain("class.csv:4:1: name: the row has no name; write one, which its pack will have too");
    expect(existsSync(school.planeFile("anna"))).toBe(true);
    expect(existsSync(school.planeFile("ben"))).toBe(false);
  });

  test("by a measured value that its own file has otherwise: neither is taken", async () => {
    school.writeRoster("name,measured.ironThickness\nanna,3.1\n");
    await school.run("--plan");
    await runCommand("measured", school.planeFile("anna"), "ironThickness=3.25");
    const { exit, out } = await school.run("--plan");
    expect(exit).toBe(1);
    expect(out).toMatch(
      /class\.csv:2: measured\.ironThickness: 3\.1 mm here, 3\.25 mm in .*anna\.yaml; take one of them out/,
    );
  });
});

test("a pupil with another iron measures it before the plane is made again", async () => {
  school.writeRoster("name,iron.width,iron.thickness\nben,48,3.6\n");
  await school.run("--plan");
  await runCommand("measured", school.planeFile("ben"), "ironThickness=3.62");
  school.writeRoster("name,iron.width,iron.thickness\nben,44,3.3\n");
  const refused = await school.run("--plan");
  expect(refused.exit).toBe(1);
  expect(refused.out).toMatch(
    /class\.csv:2: iron\.thickness: 3\.3 mm here, but .*ben\.yaml has ironThickness 3\.62 mm/,
  );
  expect(school.design("ben").iron.thickness).toBe(3.6);
  await runCommand("measured", school.planeFile("ben"), "ironThickness=3.31");
  expect((await school.run("--plan")).exit).toBe(0);
  expect(school.design("ben").iron).toMatchObject({ width: 44, thickness: 3.3 });
});

test("a row without a size that the others have says that the base's is taken", async () => {
  school.writeRoster("name,iron.width,iron.thickness\nanna,50.8,3.1\nben,,3.2\n");
  const { out } = await school.run("--plan");
  expect(out).toContain("ben: no iron.width in the roster; the base's");
  expect(out).not.toContain("anna: no ");
});

describe("what is refused as a whole", () => {
  test.each([
    ["a roster without a base", "name\nanna\n", [], /class\.csv names no base design; add --base DESIGN/],
    ["a base that is not there", "name\nanna\n", ["--base", "nowhere.yaml"], /nowhere\.yaml: no such file/],
    [
      "a roster without planes",
      "name\n",
      ["--base", "examples/apprentice-smoother.yaml"],
      /class\.csv:1:1: the roster has no planes/,
    ],
  ])("%s", async (_, text, more, message) => {
    school.writeRoster(text);
    const { exit, out, err } = await runCommand("class", school.roster, "--out", school.packs, ...more);
    expect({ exit, out }).toEqual({ exit: 2, out: "" });
    expect(err).toMatch(message);
    expect(existsSync(school.packs)).toBe(false);
  });

  test("a base with measured values, which are of one plane", async () => {
    await runCommand("measured", school.base, "ironThickness=3.2");
    school.writeRoster("name\nanna\n");
    expect(await school.run()).toMatchObject({ exit: 2, err: expect.stringMatching(/holds measured values/) });
  });
});

describe("--status", () => {
  test("tells each plane's step, its last value, and who is stuck on what", async () => {
    school.writeRoster("name,iron.width\nanna,50.8\nben,50.2\ncarla,50\ndora,50.4\n");
    await school.run("--plan");
    const measure = (name: string, ...values: string[]) => runCommand("measured", school.planeFile(name), ...values);
    await measure("ben", "ironWidth=50.2", "ironThickness=3.2");
    await measure("carla", "ironThickness=9", "--read-twice");
    rmSync(school.planeFile("dora"));
    const { exit, out } = await school.run("--status");
    expect(exit).toBe(0);
    expect(out).toMatch(/^4 planes: 0 built, 1 stuck\./);
    expect(out).toMatch(/1 {2}anna +2\/15 Measure the iron +nothing\n/);
    expect(out).toMatch(/2 {2}ben +3\/15 Saw and mill core and cheeks +2, last iron width 50\.2 mm\n/);
    expect(out).toMatch(/3 {2}carla .*STUCK/);
    expect(out).toMatch(/carla: iron thickness: 9 mm is far from/);
    expect(out).toMatch(/dora\.yaml is missing; the values of the roster are used/);
    const { planes } = JSON.parse((await school.run("--status", "--json")).out);
    expect(planes[1]).toMatchObject({
      name: "ben",
      step: "core",
      measured: ["ironThickness", "ironWidth"],
      stuckOn: [],
    });
  });
});

test("a base that names a shop file: each plane's own file carries what the shop has", async () => {
  writeFileSync(school.at("shop.yaml"), "shop: { kerf: 2.4 }\n");
  writeFileSync(school.base, `shop: shop.yaml\n${readFileSync("examples/class/school-smoother.yaml", "utf8")}`);
  school.writeRoster("name,iron.width\nanna,50.8\n");
  expect((await school.run("--plan")).exit).toBe(0);
  expect(school.design("anna").shop.kerf).toBe(2.4);
});

test("--shop stands in the place of the base's shop file, for every plane", async () => {
  writeFileSync(school.at("shop.yaml"), "shop: { kerf: 2.4 }\n");
  writeFileSync(school.at("other.yaml"), "shop: { kerf: 1.9 }\njigs: { clearance: 0.3 }\n");
  writeFileSync(school.base, `shop: shop.yaml\n${readFileSync("examples/class/school-smoother.yaml", "utf8")}`);
  school.writeRoster("name,iron.width\nanna,50.8\nben,50\n");
  expect((await school.run("--plan", "--shop", school.at("other.yaml"))).exit).toBe(0);
  for (const name of ["anna", "ben"])
    expect(school.design(name)).toMatchObject({ shop: { kerf: 1.9 }, jigs: { clearance: 0.3 } });
  const bad = await school.run("--plan", "--shop", school.at("nowhere.yaml"));
  expect(bad).toMatchObject({ exit: 2, err: expect.stringMatching(/nowhere\.yaml: no such file/) });
});

test("sheets of the shop are the class's: all planes' cheeks together, in class.pdf and as an archive", async () => {
  const archive = school.at("packs", "class-sheets.zip");
  const withSheets = (count: number) =>
    writeFileSync(
      school.at("shop.yaml"),
      `sheets:\n  - { name: thin, material: wood, length: 300, width: 170, thickness: 8, count: ${count} }\n`,
    );
  school.writeRoster("name,iron.width\nanna,50.8\nben,50\ncarla,49\n");
  withSheets(3);
  const shop = ["--plan", "--shop", school.at("shop.yaml")];
  expect(await school.run(...shop)).toMatchObject({
    exit: 0,
    out: expect.stringMatching(/Sheets: 3 sheets laid out, nothing left over\.\n\nWrote .*class-sheets\.zip/),
  });
  expect(readFileSync(archive, "latin1")).toContain("class-sheets/1-thin.dxf");

  withSheets(2);
  const few = await school.run(...shop);
  expect(few.exit).toBe(1);
  expect(few.out).toMatch(
    /2 sheets laid out, 2 left over:\n {2}3 cheek-left and 3 cheek-right\n {6}No room is left for its/,
  );
  const { nested } = JSON.parse((await school.run(...shop, "--json")).out);
  expect(nested.sheets).toEqual([
    { name: "thin", parts: ["1 cheek-left", "1 cheek-right"] },
    { name: "thin", parts: ["2 cheek-left", "2 cheek-right"] },
  ]);

  const none = await school.run("--plan");
  expect(none.out).toMatch(/anna\.yaml: sheets changed \(0 entries\)\n/);
  expect(school.design("anna").sheets).toEqual([]);
  expect(existsSync(archive)).toBe(false);

  writeFileSync(archive, "a pupil's own");
  expect(await school.run(...shop)).toMatchObject({ exit: 3, err: expect.stringMatching(/no sheet of a class/) });
  expect(readFileSync(archive, "utf8")).toBe("a pupil's own");
});

test.each([
  ["the base", (boards: string) => [boards, ""]],
  ["the base's shop file", (boards: string) => ["shop: shop.yaml\n", boards]],
])(
  "boards of %s are the class's: laid out for all planes together, and in no plane's own file or pack",
  async (_, texts) => {
    const [inBase, inShop] = texts("boards:\n  - { name: beech, length: 1200, width: 90, thickness: 66 }\n");
    writeFileSync(school.base, `${inBase}${readFileSync("examples/class/school-smoother.yaml", "utf8")}`);
    writeFileSync(school.at("shop.yaml"), `shop: { kerf: 2.4 }\n${inShop}`);
    school.writeRoster("name,iron.width\nanna,50.8\nben,50\ncarla,49\n");
    const { exit, out } = await school.run("--plan");
    expect(exit).toBe(0);
    expect(out).toMatch(/BOARDS for 3 planes\n/);
    for (const name of school.planeNames()) {
      expect(school.design(name).boards).toEqual([]);
      expect(readFileSync(school.planeFile(name), "utf8")).not.toContain("boards");
    }
    const again = await school.run("--plan");
    expect(again).toMatchObject({ exit: 0, out });
  },
);
