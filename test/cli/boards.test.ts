// Boards as a maker meets them: how a body comes out of them, or by how much it does not and what would make it.
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { asBuiltPlane } from "@lamplane/bench";
import { boardsAtHand, bodyWood, layOutBody, wholeBoard } from "@lamplane/bench/boards";
import { faultText, readDesign } from "@lamplane/parameters/design";
import { boardSheet } from "@lamplane/sheets";
import { boardsPdf } from "@lamplane/sheets/pages";
import { afterEach, beforeEach, expect, test } from "vitest";
import { requireProgram, runForStdout } from "../support/outside-programs.ts";
import { withPdf } from "../support/pages.ts";
import { runCommand } from "../support/running.ts";

const CROOKED = "examples/class/crooked-board.yaml";
let folder = "";
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "lamplane-boards-"));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const designOf = (text: string) => {
  const read = readDesign(text, "");
  if (!read.ok) throw new Error(read.faults.map(faultText).join("; "));
  return read.design;
};
const withBoards = (...boards: string[]) => {
  const file = join(folder, "plane.yaml");
  writeFileSync(
    file,
    `iron: { width: 48, thickness: 3.6 }\nboards:\n${boards.map((board) => `  - { ${board} }\n`).join("")}`,
  );
  return file;
};

test("an apprentice's crooked board: cheeks from its end, round the knot, cut by cut", async () => {
  const { exit, out, err } = await runCommand("stock", CROOKED);
  expect({ exit, err }).toEqual({ exit: 0, err: "" });
  expect(out).toMatch(/^BOARDS for the body\nAll from one board, cheeks from further along it\.\n/);
  const numbers = [...out.split("\nBILLET")[0]!.matchAll(/^ {2}(\d+) {2}(?:crosscut|rip|resaw) /gm)].map(([, n]) =>
    Number(n),
  );
  expect(numbers).toEqual(numbers.map((_, i) => i + 1));
  expect(numbers.length).toBeGreaterThan(3);
  for (const part of ["left cheek", "core", "right cheek"])
    expect(out).toMatch(new RegExp(`^ {2}${part} {2}10 × .* in, rings at 15° to the sole$`, "m"));
});

test("boards that do not do: by how much each is short, and a fix that does", async () => {
  const file = withBoards(
    "name: narrow, length: 260, width: 80, thickness: 64",
    "name: stub, length: 100, width: 20, thickness: 10",
  );
  const { exit, out } = await runCommand("stock", file);
  expect(exit).toBe(1);
  // Two cheeks of 11, a core of 52.6, two kerfs of 3.2 and four passes of 0.8: 84.2 mm.
  expect(out).toMatch(
    /The body does not come out of these boards by any cuts\.\n {2}narrow: 4\.2 mm too narrow\n {2}stub: too small on more than one side/,
  );
  const [, now, then] = /Fix: shop\.millingAllowance ([\d.]+) mm → ([\d.]+) mm/.exec(out)!;
  expect(Number(now)).toBe(1.5);
  const fixed = await runCommand("stock", file, "--with", `shop.millingAllowance=${then}`);
  expect(fixed).toMatchObject({
    exit: 0,
    out: expect.stringContaining("One piece, ripped into cheek, core and cheek"),
  });
  const less = await runCommand("stock", file, "--with", `shop.millingAllowance=${Number(then) + 0.1}`);
  expect(less.exit).toBe(1);
});

test("a board's faults stand at their places, those of its knots too", () => {
  const faults = (boards: string) => {
    const read = readDesign(`iron: { width: 48, thickness: 3.6 }\nboards: ${boards}\n`, "");
    return read.ok
      ? []
      : read.faults.map((fault) => `${fault.line}:${fault.column} ${fault.path}: ${faultText(fault)}`);
  };
  expect(faults("[{ name: a, length: 900, width: 90, thickness: 65, knots: [{ from: 3, to: 9000 }] }]")).toEqual([
    expect.stringMatching(/^2:\d+ boards\.1\.knots\.1\.to: read 9000; allowed: 0 mm to 6000 mm$/),
  ]);
  expect(faults("[{ name: a, length: 900, width: 90, thickness: 65, knots: 3 }]")).toEqual([
    expect.stringMatching(/^2:\d+ boards\.1\.knots: /),
  ]);
  expect(faults("[{ name: a, length: 900, width: 90, thickness: 65, knot: 3 }]")).toEqual([
    expect.stringMatching(/"knot" is not a key of boards\.1/),
  ]);
  expect(faults("[{ name: a, length: 900, width: 90 }]")).toEqual([
    expect.stringMatching(/^2:10 boards\.1\.thickness: /),
  ]);
  const sound = designOf(
    "iron: { width: 48 mm, thickness: 3.6 mm }\nunits: in\nboards: [{ name: a, length: 36, width: 4, thickness: 3, count: 2, knots: [{ to: 2, across: { from: 1, to: 2 } }] }]\n",
  );
  expect(boardsAtHand(sound.boards).map(({ name, length, knots }) => ({ name, length, knots }))).toEqual(
    ["a 1", "a 2"].map((name) => ({
      name,
      length: 914.4,
      knots: [{ from: 0, to: 50.8, across: { from: 25.4, to: 50.8 } }],
    })),
  );
});

test("boards.pdf has a page a board with its cuts, parts, heart and bark side", async (context) => {
  const pdftotext = requireProgram(context, "pdftotext");
  const design = designOf(readFileSync(CROOKED, "utf8"));
  const bytes = await boardsPdf(boardSheet(design)!, { paper: "Letter", version: "0.1.0" });
  const text = withPdf(bytes, (file) => runForStdout(pdftotext, ["-raw", file, "-"])).replace(/\s+/g, " ");
  for (const words of [
    "walnut: 24 × 3 1/8 × 2 1/2 in",
    "heart side",
    "bark side",
    "knot",
    "1. crosscut 10 in from the end",
    "A left cheek 10 ×",
  ])
    expect(text).toContain(words);
  const { layout } = {
    layout: layOutBody(
      bodyWood(asBuiltPlane(design)),
      boardsAtHand(design.boards),
      boardsAtHand(design.boards).map(wholeBoard),
    )!,
  };
  const count = layout.cuttings.reduce((sum, { cuts }) => sum + cuts.length, 0);
  expect(text).toContain(`${count}. `);
  expect(text).not.toContain(`${count + 1}. `);
});

test("a class is cut from its boards; one that they are too few for says how many planes come out", async () => {
  const roster = join(folder, "class.yaml");
  const planes = ["anna", "ben", "carla"].map((name) => `  - { name: ${name} }\n`).join("");
  const text = (length: number) =>
    `base: ${join(process.cwd(), "examples/class/school-smoother.yaml")}\nplanes:\n${planes}boards: [{ name: beech, length: ${length}, width: 90, thickness: 66 }]\n`;
  writeFileSync(roster, text(800).replace(`base: ${process.cwd()}/`, "base: "));
  const run = () =>
    runCommand(
      "class",
      roster,
      "--base",
      "examples/class/school-smoother.yaml",
      "--out",
      join(folder, "packs"),
      "--plan",
    );
  const enough = await run();
  expect(enough.exit).toBe(0);
  expect(enough.out).toMatch(/BOARDS for 3 planes\nWaste \d+ % of the boards used/);
  writeFileSync(roster, text(700));
  const few = await run();
  expect(few.exit).toBe(1);
  expect(few.out).toContain("2 of 3 planes come out of these boards; no layout gives more.");
});
