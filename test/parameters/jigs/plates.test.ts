// Which of the shop's plates a jig is cut from: worked by hand for the set of the geometry notes, core of 48 + 1.6.
import { elevation } from "@lamplane/parameters/elevation";
import { choosePlate, type JigName, jigPlans, plateThicknesses } from "@lamplane/parameters/jigs";
import { planeJigs } from "@lamplane/parameters/solids";
import type { Design } from "@lamplane/parameters/table";
import { describe, expect, test } from "vitest";
import { type Changes, designWith, WORKED } from "../../support/designs.ts";
import { sheet } from "../../support/nested.ts";

const withPlates = (plate: string, changes: Changes = {}): Design => {
  const design = designWith({ ...WORKED, ...changes });
  return { ...design, jigs: { ...design.jigs, plate } };
};
const planOf = (name: JigName, design: Design) => jigPlans(elevation(design)).find((plan) => plan.name === name)!;

describe("the plate that serves", () => {
  test.each([
    ["one plate before two thinner ones", { least: 8, best: 16, most: 40 }, [9, 8], { thickness: 9, layers: 1 }],
    [
      "of single plates the one nearest the best",
      { least: 8, best: 16, most: 40 },
      [9, 15, 25],
      { thickness: 15, layers: 1 },
    ],
    ["two where one is too thin", { least: 18, best: 30, most: 47.6 }, [6, 12], { thickness: 12, layers: 2 }],
    ["the limits themselves", { least: 12, best: 13, most: 13 }, [12], { thickness: 12, layers: 1 }],
  ])("%s", (_, range, plates, expected) => expect(choosePlate(range, plates)).toEqual(expected));

  test("is none where every stack passes the range by", () => {
    expect(choosePlate({ least: 13, best: 13, most: 14 }, [12, 9])).toBeUndefined();
    expect(choosePlate({ least: 60, best: 60, most: 70 }, [9])).toBeUndefined(); // 7 of them
  });
});

describe("the shop's plates", () => {
  test("are those of jigs.plate, else the plies by the caliper, else none", () => {
    const plain = designWith(WORKED);
    const sheets = [
      { ...sheet("ply", "ply", [600, 400, 12]), measured: 11.6 },
      sheet("ply-2", "ply", [600, 400, 18]),
      sheet("wood", "wood", [600, 400, 8]),
    ] as const;
    expect(plateThicknesses(plain)).toBeUndefined();
    expect(plateThicknesses({ ...plain, sheets })).toEqual([11.6, 18]);
    expect(plateThicknesses({ ...withPlates("6 mm + 9 mm"), sheets })).toEqual([6, 9]);
  });

  test("leave every print and drawing as it is where there are none", () => {
    const plain = jigPlans(elevation(designWith(WORKED)));
    expect(plain.every(({ plate, drawing }) => plate === undefined && drawing?.thickness === undefined)).toBe(true);
  });
});

test("a drawing carries the plate's thickness, not the print's, and says how many are glued", () => {
  const plane = elevation(withPlates("12 mm"));
  const spacer = planeJigs(plane).find(({ name }) => name === "throat-spacer")!; // 0.6 × 49.6 as it is printed
  expect(spacer.drawing!.thickness).toBe(12);
  const texts = spacer.drawing!.entries.flatMap((entry) => (entry.kind === "note" ? [entry.text] : []));
  expect(texts.join("; ")).toMatch(/2 of 12 mm, glued face to face/);
  const print = planeJigs(elevation(designWith(WORKED))).find(({ name }) => name === "throat-spacer")!;
  expect(spacer.volume).toBe(print.volume);
});

describe("the recess template", () => {
  // cutter of 12.7 from tip to bearing, first pass 2.8 deep at most: 3 of bearing want a plate of 12.7 − 2.8 + 3
  const recess = { "recess.depth": 5.6 };
  test("by a bearing takes a plate thick enough for it to run on, and says the depth by that plate", () => {
    expect(planOf("recess-template", withPlates("12.7 mm", recess)).plate).toBeUndefined();
    const plan = planOf("recess-template", withPlates("12.7 mm + 15 mm", recess));
    expect(plan.plate).toEqual({ thickness: 15, layers: 1 });
    expect(plan.use).toMatch(/15 mm of plate and 5\.6 mm of recess/);
  });

  test("by a bush takes none that the cutter does not reach through", () => {
    const bush = { ...recess, "jigs.bush": 17, "jigs.cutterLength": 20 }; // 20 − 5.6
    expect(planOf("recess-template", withPlates("15 mm", bush)).plate).toBeUndefined();
    expect(planOf("recess-template", withPlates("12 mm", bush)).plate).toEqual({ thickness: 12, layers: 1 });
  });

  test("that no plate serves says between which thicknesses it must be", () => {
    const { printed } = planOf("recess-template", withPlates("25 mm", recess));
    expect(printed).toMatch(/must be 12\.9 mm to 18\.9 mm thick/);
  });
});

test("a sled from sheet stays under the wedge that lies in it, a cradle within the core", () => {
  const core = 48 + 1.6;
  for (const plate of ["9 mm", "12 mm", "18 mm", "6 mm + 12.7 mm"]) {
    const design = withPlates(plate);
    const total = (name: JigName) => {
      const { thickness, layers } = planOf(name, design).plate!;
      return thickness * layers;
    };
    expect(total("wedge-sled")).toBeLessThanOrEqual(20);
    expect(total("bed-cradle")).toBeLessThanOrEqual(core - 2);
    expect(total("throat-spacer")).toBeLessThanOrEqual(core - 4);
  }
});
