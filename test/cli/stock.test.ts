// `lamplane stock` as a maker meets it: what it prints, and which code it exits with.
import { expect, test } from "vitest";
import { runCommand } from "../support/running.ts";

const SMOOTHER = "examples/apprentice-smoother.yaml";
const JOINTER = "examples/workshop-jointer.yaml";

test("tells everything in the order of the work, with the numbers of the design", async () => {
  const { exit, out, err } = await runCommand("stock", JOINTER, "--all");
  expect({ exit, err }).toEqual({ exit: 0, err: "" });
  const heads = ["BILLET", "SAW", "MATCHING MARKS", "TWO CUTS", "STOCK LIST", "THROAT OFFCUT", "FINISHED"];
  const places = heads.map((head) => out.indexOf(head));
  expect(places).toEqual([...places].sort((a, b) => a - b));
  expect(places[0]).toBe(0);
  expect(out).toContain("640 mm");
  expect(out).toMatch(/Rule of thumb .* 98\.1 mm/);
  expect(out).toContain("trained practice");
  expect(out).not.toMatch(/NaN|undefined|Infinity/);
});

test("a billet that is too small exits 1 and says by how much; on its side it may fit, and the rings turn", async () => {
  const small = await runCommand("stock", JOINTER, "--with", "billet.width=100", "--with", "billet.height=50");
  expect(small.exit).toBe(1);
  expect(small.out).toMatch(/width +100\.2 +100 +too small by 0\.2$/m);
  const turned = await runCommand("stock", JOINTER, "--with", "billet.width=75", "--with", "billet.height=108");
  expect(turned.exit).toBe(0);
  const checked = await runCommand(
    "check",
    JOINTER,
    "--with",
    "billet.width=75",
    "--with",
    "billet.height=108",
    "--all",
  );
  expect(checked.exit).toBe(0);
  expect(checked.out).toMatch(/Billet width, laid on its side +108 mm/);
  expect(turned.out).toMatch(/on its side.*stand at 70° to the sole, not at 20°/);
});

test("a wedge short enough comes out of the offcut", async () => {
  expect((await runCommand("stock", SMOOTHER, "--all")).out).toMatch(/Offcut is .* too short for the wedge/);
  const shorter = await runCommand("stock", SMOOTHER, "--all", "--with", "wedge.length=65");
  expect(shorter.out).toMatch(/Offcut takes the wedge, its length at 0° to the grain/);
  expect(shorter.out).toMatch(/wedge +1 .*throat offcut/);
});

test("JSON holds the whole plan in mm", async () => {
  const { exit, out } = await runCommand("stock", SMOOTHER, "--json");
  const plan = JSON.parse(out);
  expect(exit).toBe(0);
  expect(plan).toMatchObject({
    name: "apprentice-smoother",
    rip: { sawLines: [{ frees: "left cheek" }, { frees: "core" }] },
  });
  expect(plan.rip.needed).toBeCloseTo(84.2, 9);
  expect(plan.list.rows.map((row: { piece: string }) => row.piece)).toEqual([
    "front block",
    "bed block",
    "cheek",
    "wedge",
    "cross pin",
    "peg",
  ]);
  expect(plan.core.offcut.length).toBeGreaterThanOrEqual(3);
});

test("what the rest of a billet does not hold is named with its size, and nothing is sawn that is not there", async () => {
  // 300 x 95 x 70 for an iron of 50.8 x 4: what is left is 7 mm thick, and the wedge wants more.
  const iron = ["--with", "iron.width=50.8", "--with", "iron.thickness=4", "--with", "body.length=270"];
  const sides = { length: 300, width: 95, height: 70 };
  const billet = Object.entries(sides).flatMap(([side, mm]) => ["--with", `billet.${side}=${mm}`]);
  const { out } = await runCommand("stock", SMOOTHER, ...iron, ...billet);
  expect(out).not.toMatch(/ 0 of \d/);
  expect(out).toMatch(/get separate stock: wedge [\d.]+ × [\d.]+ × [\d.]+/);
});

/** A number as the report has it: two decimals without zeros at their end. */
const shown = (mm: number): string => String(Math.round(mm * 100) / 100);

test.each([[SMOOTHER], [JOINTER], ["examples/tapered-panel.yaml"]])(
  "the report of %s has the plan's every number in its line",
  async (file) => {
    const { out } = await runCommand("stock", file, "--all");
    const plan = JSON.parse((await runCommand("stock", file, "--json")).out);
    const lines = out.split("\n").map((line) => line.trim().split(/\s{2,}/));
    const has = (...cells: string[]) =>
      expect(
        lines.some((line) => cells.every((cell, i) => line[i] === cell)),
        cells.join(" | "),
      ).toBe(true);
    const { rip, core, list, marks, offcut } = plan;
    const span = (from: number, to: number) => `${shown(from)} to ${shown(to)}`;
    for (const [i, { piece, finished }] of rip.strips.entries()) {
      const [before, cut] = [rip.sawLines[i - 1], rip.sawLines[i]];
      has(piece, cut ? shown(cut.fence) : "the rest", shown(finished));
      const lies = span(before?.kerf.to ?? 0, cut?.kerf.from ?? rip.needed);
      has(piece, lies, ...(cut ? [span(cut.kerf.from, cut.kerf.to)] : []));
    }
    for (const { name, saw, markAtSole, markAtTop, wasteTo, kerfAtSole } of core.cuts) {
      has(name, `${shown(saw)}°`, shown(markAtSole), shown(markAtTop));
      const end = shown(wasteTo === "heel" ? kerfAtSole.to : kerfAtSole.from);
      expect(lines.find((line) => line[0] === name && line.length >= 5)![4]).toContain(end);
    }
    for (const { piece, count, rough } of list.rows) {
      const line = lines.find((cells) => cells[0] === piece && cells[1] === `${count}` && cells.length > 2)!;
      for (const size of [rough.length, rough.width, rough.thickness]) expect(line[2], piece).toContain(shown(size));
    }
    for (const { over, strokes, at } of marks.marks) {
      const line = lines.find(
        (cells) => cells[0] === over && at.every((x: number) => cells[strokes]?.includes(shown(x))),
      );
      expect(line, `${over}, ${strokes}`).toBeDefined();
    }
    const text = out.replace(/\s+/g, " ");
    for (const value of [
      offcut.length,
      offcut.height,
      offcut.width,
      core.roomBetweenMarks,
      core.setInToe,
      core.setInHeel,
    ])
      expect(text).toContain(`${shown(value)} mm`);
  },
);
