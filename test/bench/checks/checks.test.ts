// The first checks: each seen to find its fault, to name it, and to be ended by its cure.

import { asBuiltPlane } from "@lamplane/bench";
import { checkPlane, checkWithoutCures, type Finding, mayBeBuilt, passedChecks } from "@lamplane/bench/checks";
import { withValue } from "@lamplane/parameters/design";
import { elevation } from "@lamplane/parameters/elevation";
import { bodySolid, partsOf } from "@lamplane/parameters/solids";
import type { Design } from "@lamplane/parameters/table";
import { expect, test } from "vitest";
import { designWith, randomDesigns } from "../../support/designs.ts";

const found = (changes: Record<string, number | string>): Finding[] => checkPlane(elevation(designWith(changes)));

test("the table's defaults pass every check, and each says what it judged", () => {
  expect(found({})).toEqual([]);
  const passed = passedChecks(elevation(designWith({})));
  expect(passed.length).toBeGreaterThan(20);
  for (const { relation, source, value, limit } of passed) {
    expect(relation === "at least" ? value - limit : limit - value).toBeGreaterThan(-1e-6);
    expect(source).not.toBe("");
    expect(Number.isFinite(value) && Number.isFinite(limit)).toBe(true);
  }
});

test.each<[code: string, severity: string, changes: Record<string, number | string>, cured: boolean]>([
  [
    "block-tip-gap",
    "stop",
    { "iron.thickness": 3.175, "bed.angle": 45, "bed.featherChamfer": 0, "sole.allowance": 3.175 },
    true,
  ],
  ["feather-chamfer", "warning", { "bed.featherChamfer": 8 }, true],
  ["blank-trim", "stop", { "body.trim": 5 }, true],
  ["front-block-length", "stop", { "mouth.fromToe": 30 }, true],
  ["bed-block-length", "stop", { "mouth.fromToe": 160 }, true],
  ["top-arcs", "stop", { "body.outline": "arched", "body.toeHeight": 90 }, true],
  ["ramp-curve", "stop", { "ramp.shape": "curved", "ramp.exitAngle": 80 }, true],
  ["throat-narrowing", "warning", { "bed.angle": 60, "ramp.shape": "straight", "ramp.angle": 74 }, true],
  [
    "throat-narrowing",
    "stop",
    { "bed.angle": 55, "ramp.shape": "straight", "ramp.angle": 80, "pin.diameter": 20, "wedge.tip": 8 },
    false,
  ],
  ["iron-passage", "stop", { "capIron.hump": 6 }, true],
  ["iron-side-play", "warning", { "body.sideClearance": 0.4 }, true],
  ["clearance-angle", "warning", { "iron.bevel": 40 }, true],
  ["clearance-angle", "stop", { "iron.bevel": 45 }, true],
  ["iron-above-bed", "warning", { "iron.length": 80 }, true],
  ["bed-saw-angle", "warning", { "shop.sawLimit": 40 }, true],
  ["ramp-saw-angle", "warning", { "ramp.angle": 42 }, true],
  ["pin-hole-wood", "warning", { "pin.height": 50 }, true],
  ["pin-hole-wood", "stop", { "pin.height": 52 }, true],
  ["pin-hole-wood", "stop", { "pin.height": 8, "pin.tenon": 12 }, false],
  ["pin-to-ramp", "warning", { "ramp.angle": 75, "pin.height": 30 }, true],
  ["pin-shoulder", "stop", { "pin.tenon": 12.5 }, true],
  ["tenon-length", "warning", { "pin.tenonLength": 3 }, true],
  ["tenon-projection", "warning", { "pin.tenonLength": 12 }, true],
  ["wedge-under-pin", "stop", { "pin.height": 25 }, true],
  ["wedge-tip-place", "stop", { "wedge.tipFromEdge": 10 }, true],
  [
    "wedge-width",
    "warning",
    {
      "iron.width": 20,
      "wedge.clearance": 10,
      "recess.width": 10,
      "recess.cutter": 8,
      "capIron.screwHead.diameter": 8,
    },
    false,
  ],
  ["guide-hole-play", "warning", { "jigs.holeClearance": 0.2 }, true],
  ["cheek-thickness", "warning", { "body.cheek": 6 }, true],
  ["cheek-thickness", "stop", { "body.cheek": 3 }, true],
  ["recess-land", "stop", { "iron.width": 22 }, false],
  ["recess-pad", "warning", { "capIron.screwHead.fromEdge": 30 }, true],
  ["recess-width", "stop", { "recess.width": 15 }, true],
  ["recess-depth", "stop", { "recess.depth": 3 }, true],
  ["recess-cutter", "stop", { "recess.cutter": 25 }, true],
  ["recess-end", "stop", { "capIron.screwHead.fromEdge": 120 }, false],
  ["layer-sum", "stop", { "core.layers": "15 mm + 19 mm + 15 mm", "core.board": 40 }, true],
  ["layer-thickness", "stop", { "core.layers": "auto", "core.board": 6 }, true],
  ["layer-board", "stop", { "core.layers": "15.3 mm + 19 mm + 15.3 mm", "core.board": 20 }, true],
  ["layer-recess", "stop", { "core.layers": "16 mm + 17.6 mm + 16 mm" }, true],
  ["layer-middle", "stop", { "core.layers": "15 mm + 19 mm + 15.6 mm", "core.board": 40 }, false],
  ["layer-corner", "stop", { "core.layers": "auto", "core.cornerCutter": 8 }, true],
  ["layer-pegs", "warning", { "core.layers": "auto", "core.pegDiameter": 20, "body.height": 25 }, true],
  ["peg-room", "stop", { "pegs.diameter": 14 }, true],
  ["billet-width", "stop", { "billet.width": 80 }, true],
  ["billet-length", "stop", { "billet.length": 250 }, true],
  ["billet-height", "stop", { "billet.height": 60 }, true],
  ["wedge-self-locking", "warning", { "wedge.angle": 16 }, true],
  ["wedge-self-locking", "stop", { "pin.section": "round", "pin.tenon": 8, "wedge.angle": 14 }, true],
  ["wedge-self-locking", "stop", { "wedge.angle": 12, "hold.friction.woodLow": 0.15, "hold.friction.wood": 0.2 }, true],
  ["friction-order", "warning", { "hold.friction.steel": 0.1 }, true],
  ["pin-bending", "warning", { "pin.diameter": 7, "pin.tenon": 5 }, true],
  ["pin-bending", "stop", { "pin.diameter": 4, "pin.tenon": 2.5, "hold.forcePerMm": 15 }, true],
  ["pin-sag", "warning", { "pin.diameter": 8, "pin.tenon": 6 }, true],
  ["tenon-shear", "warning", { "pin.tenon": 6 }, true],
  ["tenon-shear", "stop", { "pin.tenon": 3 }, true],
  ["tenon-bending", "warning", { "pin.tenon": 5 }, true],
  ["tenon-bending", "stop", { "pin.tenon": 3 }, true],
  ["tenon-bearing", "warning", { "pin.tenon": 6 }, true],
  ["tenon-bearing", "stop", { "pin.tenon": 2 }, true],
  ["tenon-bearing", "warning", { "hold.catchPerMm": 30 }, true],
  ["cheek-bearing", "warning", { "pin.tenonLength": 2.5 }, true],
  ["cheek-shear", "warning", { "pin.height": 53.6, "hold.forcePerMm": 10 }, true],
  ["cheek-shear", "stop", { "pin.height": 55.9, "hold.forcePerMm": 60 }, true],
  ["iron-play-over-year", "warning", { "body.sideClearance": 0.6 }, true],
  ["iron-play-over-year", "stop", { "body.sideClearance": 0.5 }, true],
  ["pin-gap-over-year", "warning", { "pin.endClearance": 0.35 }, true],
  ["pin-gap-over-year", "stop", { "pin.endClearance": 0.2 }, true],
  [
    "wedge-play-over-year",
    "stop",
    { "wedge.clearance": 0.1, "wood.wedge": "lignum vitae", "wood.wedgeRings": 0, "wood.dampest.humidity": 90 },
    true,
  ],
  ["wedge-play-over-year", "warning", { "wedge.clearance": 0.3, "wood.wedge": "cherry, black" }, true],
  ["tenon-play-over-year", "warning", { "pin.tenonClearance": 0.1 }, true],
  ["tenon-projection-over-year", "warning", { "pin.tenonLength": 8.4 }, true],
  ["tenon-projection-over-year", "warning", { "iron.width": 80, "wood.driest.humidity": 15 }, false],
  ["wedge-load-over-year", "warning", { "hold.forcePerMm": 11, "wood.pinRings": 90 }, true],
  ["season-order", "warning", { "wood.driest.humidity": 70 }, true],
])("%s (%s) in %j", (code, severity, changes, cured) => {
  const design = designWith(changes);
  const findings = found(changes);
  const finding = findings.find((f) => f.code === code);
  expect(finding, JSON.stringify(findings.map((f) => f.code))).toMatchObject({ severity });
  expect(finding!.parameters.length).toBeGreaterThan(0);
  if (cured) expect(finding!.cure).toBeDefined();
  if (finding!.cure) {
    const curedDesign = finding!.cure.reduce((d, { parameter, value }) => withValue(d, parameter, value), design);
    expect(checkWithoutCures(elevation(curedDesign)).map((f) => f.code)).not.toContain(code);
  }
});

test("a billet is judged until it is sawn, not after", () => {
  const codesAfter = (done: Design["measured"]["done"]) => {
    const design = designWith({ "billet.width": 80, "measured.done": done });
    return checkWithoutCures(elevation(design)).map(({ code }) => code);
  };
  for (const done of ["nothing", "iron"] as const) expect(codesAfter(done)).toContain("billet-width");
  for (const done of ["core", "wedge"] as const) expect(codesAfter(done)).not.toContain("billet-width");
});

test("a shoulder is half of what the pin is thicker than its tenon; a tenon flush with the cheek does not stand out (by hand)", () => {
  const shoulder = found({ "pin.diameter": 12.7, "pin.tenon": 12.5 }).find(({ code }) => code === "pin-shoulder");
  expect(shoulder?.value).toBeCloseTo((12.7 - 12.5) / 2, 9);
  const standsOut = (tenonLength: number) =>
    found({ "pin.tenonLength": tenonLength }).some(({ code }) => code === "tenon-projection");
  expect([standsOut(8.5), standsOut(8.6)]).toEqual([false, true]); // cheek 8, shoulder 0.5 before it
});

test("what closes a core names the parameter that opens it, the rings and the air of the year", () => {
  const closing = found({ "body.sideClearance": 0.5 }).find(({ code }) => code === "iron-play-over-year");
  expect(closing?.parameters).toEqual(
    expect.arrayContaining(["body.sideClearance", "wood.rings", "wood.driest.humidity", "wood.dampest.humidity"]),
  );
});

test("a billet is judged on its side where the plane comes out of it only so", () => {
  const told = (changes: Record<string, number>) =>
    passedChecks(elevation(designWith(changes))).filter(({ code }) => code.startsWith("billet-"));
  const subjects = (judged: ReturnType<typeof told>) => judged.map(({ subject }) => subject);
  const upright = told({ "billet.width": 100, "billet.height": 100 });
  expect(subjects(upright)).toEqual(["billet-width", "billet-height"]);
  const turned = told({ "billet.width": 70, "billet.height": 100 });
  expect(turned.map(({ value }) => value)).toEqual([100, 70]); // its height is the width, as it lies
  expect(subjects(turned)).toEqual(["billet-width-on-its-side", "billet-height-on-its-side"]);
});

test("a billet that is still to be bought is not judged", () => {
  const codes = (changes: Record<string, number>) =>
    passedChecks(elevation(designWith(changes))).map(({ code }) => code);
  expect(codes({}).filter((code) => code.startsWith("billet-"))).toEqual([]);
  expect(codes({ "billet.width": 200 }).filter((code) => code.startsWith("billet-"))).toEqual(["billet-width"]);
});

test("a peg wants 1.5 mm round it in the waste's length, and in a quarter of the blank's height (by hand)", () => {
  const pegValue = (changes: Record<string, number>) => found(changes).find(({ code }) => code === "peg-room")?.value;
  expect(pegValue({ "body.height": 30, "pegs.diameter": 14, "body.trim": 90 })).toBeCloseTo(33 / 4 - 7 - 1.5, 9);
  expect(pegValue({ "pegs.diameter": 14 })!).toBeLessThan(25.4 / 2 - 14 - 3 + 1e-9);
});

test("every cure of 150 random designs ends its complaint and starts no new stop", () => {
  let cures = 0;
  for (const { design } of randomDesigns(5, 150, () => true)) {
    const findings = checkPlane(elevation(design));
    const stops = new Set(findings.filter((f) => f.severity === "stop").map((f) => f.code));
    for (const { code, cure } of findings.slice(0, 4)) {
      if (!cure) continue;
      cures++;
      const after = checkWithoutCures(
        elevation(cure.reduce((d, { parameter, value }) => withValue(d, parameter, value), design)),
      );
      expect(after.map((f) => f.code)).not.toContain(code);
      for (const f of after.filter(({ severity }) => severity === "stop")) expect(stops).toContain(f.code);
    }
  }
  expect(cures).toBeGreaterThan(50);
});

test("a high short arched body is stopped, or builds at every stage (once the glued blank's flat top was not looked at)", () => {
  for (const [height, length] of [
    [110, 180],
    [120, 200],
    [140, 213],
    [100, 230],
  ] as const) {
    const plane = elevation(
      designWith({ "body.outline": "arched", "body.height": height, "body.length": length, "bed.angle": 57 }),
    );
    if (!mayBeBuilt(checkWithoutCures(plane))) continue;
    for (const stage of ["blank", "glued", "trued"] as const) expect(partsOf(plane, stage)).toHaveLength(6);
    expect(bodySolid(plane, "glued").volume).toBeGreaterThan(0);
  }
  expect(
    found({ "body.outline": "arched", "body.height": 110, "body.length": 180, "bed.angle": 57 }).map((f) => f.code),
  ).toContain("front-block-length");
});

const built = (changes: Record<string, number | string>) => checkWithoutCures(asBuiltPlane(designWith(changes)));
const codes = (findings: readonly Finding[]) => findings.map(({ code, severity }) => `${severity} ${code}`);

test("a core milled narrower than the iron stops a plane of any wood, also one that the tables do not hold", () => {
  const narrow = { "measured.coreWidth": 47.5, "wood.body": "an unknown wood" };
  expect(codes(built(narrow))).toContain("stop iron-side-play");
});

test("a hole that leaves the wedge no thickness at its tip stops the plane; its solid could not be closed", () => {
  const single = { "capIron.thickness": 0, "iron.thickness": 3, "pin.section": "round", "pin.height": 32 };
  const { x, y } = elevation(designWith(single)).pin.centre;
  const off = { "measured.pinHoleFromEnd": 12.7 + x + 3, "measured.pinHoleHeight": y + 3 - 3 };
  const plane = asBuiltPlane(designWith({ ...single, ...off }));
  expect(plane.design.wedge.tip).toBeLessThan(0);
  expect(codes(checkWithoutCures(plane))).toContain("stop wedge-tip-thickness");
});

test("a flat top has no crown that could stand wrong (once it was told that its arch cannot be)", () => {
  for (const crown of [0, 230, 900]) expect(found({ "body.crown": crown })).toEqual([]);
});

test("what is sawn is no longer warned of", () => {
  const steep = { "shop.sawLimit": 40, "billet.width": 70, "billet.length": 300, "billet.height": 70 };
  expect(codes(built(steep))).toEqual(expect.arrayContaining(["warning bed-saw-angle", "stop billet-width"]));
  expect(codes(built({ ...steep, "measured.done": "cuts" }))).toEqual([]);
});

test("a limit that is met but for rounding is met", () => {
  const plane = elevation(
    designWith({ "bed.angle": 63, "mouth.opening": 0.05, "iron.width": 40, "iron.thickness": 5 }),
  );
  expect(plane.pinMargins.roomToRamp).toBeCloseTo(16, 6);
  expect(plane.pinMargins.roomToRamp).not.toBe(16);
  expect(checkWithoutCures(plane).map(({ code }) => code)).not.toContain("pin-to-ramp");
});

test("what is judged fits the plane: no hump where there is none, no turning of a round pin", () => {
  const passed = (changes: Record<string, number | string>) => passedChecks(elevation(designWith(changes)));
  const single = passed({ "capIron.thickness": 0, "pin.section": "round" });
  expect(single.find(({ code }) => code === "iron-passage")?.subject).toBe("iron-to-pin");
  expect(single.map(({ code }) => code)).not.toContain("pin-turning");
  expect(passed({}).map(({ code }) => code)).toContain("pin-turning");
});

test("a straight ramp is not asked whether it curves", () => {
  const straight = { "bed.angle": 47, "ramp.shape": "straight", "ramp.wearAngle": 70, "ramp.exitAngle": 80 };
  const plane = elevation(designWith(straight));
  const codes = [...checkPlane(plane), ...passedChecks(plane)].map(({ code }) => code);
  expect(codes).not.toContain("ramp-curve");
});
