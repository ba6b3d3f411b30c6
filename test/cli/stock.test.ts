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
