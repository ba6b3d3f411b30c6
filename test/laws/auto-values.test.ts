// Every `auto` has come out as something, over random designs, and a design with that written down is the same plane.
import { AUTO_PATHS, autoValue, solvedValues } from "@lamplane/bench";
import { valueAt, withValue } from "@lamplane/parameters/design";
import { elevation, elevationFigures, rampShape } from "@lamplane/parameters/elevation";
import { plateThicknesses } from "@lamplane/parameters/jigs";
import { type Design, rowsOf, TABLE } from "@lamplane/parameters/table";
import { expect, test } from "vitest";
import { designWith, randomDesigns } from "../support/designs.ts";

const rowsWithAuto = rowsOf(TABLE)
  .filter(({ row }) =>
    row.kind === "choice" ? row.choices.includes("auto") : row.kind !== "text" && row.auto !== undefined,
  )
  .map(({ path }) => path);

/** A design that leaves to `auto` whatever may be. */
const withEveryAuto = (design: Design): Design =>
  rowsWithAuto.reduce((so, path) => withValue(so, path, "auto"), design);

/** What a plane has no use for: a ramp has one angle or one radius, a recess is for a screw's head, and these shops have no plates. */
function unusedIn(design: Design): string[] {
  const { thickness, screwHead } = design.capIron;
  const curved = rampShape(design) === "curved";
  const hasRecess = thickness > 0 && screwHead.diameter > 0 && screwHead.height > 0;
  return [curved ? "ramp.angle" : "ramp.radius", ...(hasRecess ? [] : ["recess.width", "recess.depth"]), "jigs.plate"];
}

test("every row that may be auto is listed, and no other", () => {
  expect(rowsWithAuto.length).toBeGreaterThan(10);
  expect([...AUTO_PATHS].sort()).toEqual([...rowsWithAuto].sort());
});

test("every auto that the plane uses has a value, and writing it down changes no figure", () => {
  for (const design of [designWith({ "bed.angle": 55 }), ...randomDesigns(61, 40).map((each) => each.design)]) {
    const open = withEveryAuto(design);
    if (!(open.ramp.exitAngle < open.ramp.wearAngle)) continue;
    const plane = elevation(open);
    const unused = unusedIn(open);
    expect(rowsWithAuto.filter((path) => autoValue(plane, path) === undefined).sort()).toEqual(unused.sort());
    const written = Object.entries(solvedValues(open, plane)).reduce(
      (so, [path, value]) => withValue(so, path, value),
      open,
    );
    expect(rowsWithAuto.filter((path) => valueAt(written, path) === "auto").sort()).toEqual(
      [...unused, "core.layers", "ramp.shape"].sort(),
    );
    const values = new Map(elevationFigures(elevation(written)).map(({ key, value }) => [key, value]));
    for (const { key, value } of elevationFigures(plane)) expect(values.get(key), key).toBeCloseTo(value, 5);
  }
});

test("plates that are left to the sheets are the plies as the caliper reads them, and written down they are the same", () => {
  const ply = {
    name: "ply",
    material: "ply",
    length: 600,
    width: 400,
    thickness: 12,
    measured: 11.8,
    count: 1,
  } as const;
  const design = {
    ...designWith({}),
    sheets: [ply, { ...ply, name: "oak", material: "wood", measured: "auto" }],
  } as Design;
  expect(autoValue(elevation(design), "jigs.plate")).toBe("11.8 mm");
  expect(plateThicknesses(withValue(design, "jigs.plate", "[11.8]"))).toEqual([11.8]);
  expect(plateThicknesses(design)).toEqual([11.8]);
});

test("a curved ramp of a 55 degree bed has no use for the straight one's angle: any angle gives the same plane", () => {
  const curved = elevation(designWith({ "bed.angle": 55 }));
  expect(autoValue(curved, "ramp.angle")).toBeUndefined();
  for (const angle of [45, 75])
    expect(elevation(designWith({ "bed.angle": 55, "ramp.angle": angle })).points).toEqual(curved.points);
});
