// Measured values take the plan's place downstream and nowhere else. Expected numbers are worked out in the test from plane geometry.
import {
  asBuiltDesign,
  asBuiltPlane,
  buildState,
  designBeforeStep,
  expectedValue,
  figuresAsBuilt,
  lockedParameters,
  MEASURED_KEYS,
  type MeasuredKey,
  measuredUnit,
  measuringStep,
  planeBeforeStep,
  plannedDesign,
  STEPS,
  stepIndex,
  stepsDone,
  unreadValues,
} from "@lamplane/bench";
import { rowAt } from "@lamplane/parameters/design";
import { type Elevation, elevation, elevationFigures, FIGURES, mouthGrowth } from "@lamplane/parameters/elevation";
import { type Design, STEP_NAMES, TABLE } from "@lamplane/parameters/table";
import { describe, expect, test } from "vitest";
import { isSignificant } from "../../../packages/bench/src/history/changes.ts";
import { type Changes, designWith, randomDesigns, seeded, taperedDesigns, WORKED } from "../../support/designs.ts";

type Values = Partial<Design["measured"]>;
const measuring = (design: Design, values: Values): Design => ({
  ...design,
  measured: { ...design.measured, ...values } as Design["measured"],
});
const worked = designWith(WORKED);
const valuesOf = (plane: Elevation): Record<string, number> =>
  Object.fromEntries(elevationFigures(plane).map(({ key, value }) => [key, value]));
const cot = (degrees: number): number => 1 / Math.tan((degrees * Math.PI) / 180);
const sin = (degrees: number): number => Math.sin((degrees * Math.PI) / 180);

function close(a: Record<string, number>, b: Record<string, number>, digits = 7) {
  expect(Object.keys(a)).toEqual(Object.keys(b));
  for (const [key, value] of Object.entries(a)) expect(value, key).toBeCloseTo(b[key]!, digits);
}

/** A measured value off what is expected, within the row's limits. */
function off(design: Design, key: MeasuredKey, random: () => number): number | undefined {
  const expected = expectedValue(design, key);
  const row = rowAt(`measured.${key}`);
  if (expected === undefined || row.kind !== "number") return undefined;
  const by = (random() < 0.5 ? -1 : 1) * (measuredUnit(key) === "mm" ? 0.1 + 0.3 * random() : 0.2 + random());
  return Math.min(row.max, Math.max(row.min, expected + by));
}

describe("over random designs", () => {
  const some = randomDesigns(31, 60);

  test("a measured value changes nothing up to its own step, and something after it", () => {
    const random = seeded(7);
    const felt = new Set<string>();
    for (const { design } of [...some.slice(0, 14), ...taperedDesigns(31, 2)])
      for (const key of MEASURED_KEYS) {
        const value = off(design, key, random);
        if (value === undefined) continue;
        const place = stepIndex(measuringStep(key));
        // One cheek's mouth says something beside the other's only.
        const beside =
          key.startsWith("mouthSeen") && key !== "mouthSeen" ? { mouthSeenLeft: 0.1, mouthSeenRight: 0.1 } : {};
        const without = measuring(design, { done: measuringStep(key), ...beside });
        const withIt = measuring(design, { done: measuringStep(key), ...beside, [key]: value });
        for (const step of STEP_NAMES.slice(0, place + 1))
          close(valuesOf(planeBeforeStep(withIt, step)), valuesOf(planeBeforeStep(without, step)), 12);
        const [before, after] = [valuesOf(asBuiltPlane(without)), valuesOf(asBuiltPlane(withIt))];
        if (Object.keys(after).some((figure) => Math.abs(after[figure]! - before[figure]!) > 1e-3)) felt.add(key);
      }
    expect([...felt].sort()).toEqual([...MEASURED_KEYS].sort());
  });

  test("measured as expected changes nothing at all", () => {
    for (const { design } of some) {
      let built = design;
      for (const key of MEASURED_KEYS) {
        const expected = expectedValue(built, key);
        // The sole is trued in two goes; here it is measured after the second.
        if (key === "allowanceLeft") built = measuring(built, { allowanceLeft: 0 });
        else if (key === "mouthSeen") built = measuring(built, { mouthSeen: design.mouth.opening });
        else if (expected !== undefined) built = measuring(built, { [key]: expected });
      }
      const onlyDone = measuring(design, { done: "mouth" });
      close(valuesOf(asBuiltPlane(built)), valuesOf(asBuiltPlane(onlyDone)), 6);
      const plan = elevationFigures(elevation(design));
      const now = new Map(figuresAsBuilt(built).map(({ key, value }) => [key, value]));
      const used = new Set(["soleToTake"]); // the one figure that work itself uses up
      for (const { key, value } of plan) if (!used.has(key)) expect(now.get(key), key).toBeCloseTo(value, 6);
    }
  });

  test("the order of entry does not matter, and asking twice changes nothing", () => {
    const random = seeded(11);
    for (const { design } of some) {
      const entries = MEASURED_KEYS.flatMap((key) => {
        const value = off(design, key, random);
        return value === undefined || random() < 0.3 ? [] : [[key, value] as const];
      });
      const one = measuring(design, Object.fromEntries(entries));
      const other = measuring(design, Object.fromEntries([...entries].reverse()));
      expect(asBuiltDesign(other)).toEqual(asBuiltDesign(one));
      close(valuesOf(elevation(asBuiltDesign(asBuiltDesign(one)))), valuesOf(asBuiltPlane(one)), 6);
    }
  });
});

describe("worked by hand", () => {
  test("a bed trued to 46.5 moves the front block's place and leaves the ramp as it was cut", () => {
    const plane = asBuiltPlane(measuring(worked, { bedAngle: 46.5 }));
    const growth = cot(46.5) + cot(60);
    expect(plane.ramp.angle).toBe(60);
    expect(mouthGrowth(plane)).toBeCloseTo(growth, 12);
    expect(valuesOf(plane).edgeHeightAtContact).toBeCloseTo(3 - 0.15 / growth, 12);
    expect(valuesOf(plane).bedTipFromEnd).toBeCloseTo(12.7 + 78 + 3.6 / sin(46.5) - 3 * cot(46.5), 12);
  });

  test("the cuts settle no pin that is auto, but for a curve that was solved for it; and what was done last is remembered", () => {
    const cut = (changes: Changes) =>
      designBeforeStep(
        measuring(designWith({ ...WORKED, "pin.height": "auto", ...changes }), { done: "cuts" }),
        "pin-hole",
      );
    expect(cut({}).pin.height).toBe("auto");
    expect(cut({ "bed.angle": 55, "ramp.radius": 90 }).pin.height).toBe("auto");
    expect(cut({ "bed.angle": 55 }).pin.height).toBeGreaterThan(20);
    expect(asBuiltDesign(measuring(worked, { coreWidth: 49.7 })).measured).toEqual({ done: "core" });
    expect(plannedDesign(measuring(worked, { coreWidth: 49.7 })).measured).toEqual({ done: "nothing" });
    for (const done of STEP_NAMES) expect(asBuiltDesign(measuring(worked, { done })).measured.done).toBe(done);
    expect(asBuiltDesign(measuring(worked, { done: "sole", allowanceLeft: 0 })).measured.allowanceLeft).toBe(0);
    expect(asBuiltDesign(measuring(worked, { done: "glue-up" })).measured.allowanceLeft).toBeUndefined();
  });

  test("a sole that is done and was not read is trued to where the mouth begins to open; one whose mouth is done, to the plan", () => {
    const left = (values: Values) => asBuiltPlane(measuring(worked, values)).design.sole.allowance;
    expect(left({ done: "sole" })).toBeCloseTo(0.15 / (cot(47) + cot(60)), 12);
    expect(left({ done: "mouth" })).toBe(0);
    expect(left({ done: "mouth", allowanceLeft: 0.3 })).toBe(0);
    expect(left({ done: "sole", allowanceLeft: 0.3 })).toBe(0.3);
    expect(left({ done: "sole", rampTipFromEnd: 12.7 + 140 })).toBe(0); // the blocks a long way over one another: closed at any sole
    const thin = measuring(designWith({ ...WORKED, "sole.allowance": 0.05 }), { done: "sole" });
    expect(asBuiltPlane(thin).design.sole.allowance).toBe(0.05);
    const state = buildState(measuring(worked, { done: "sole", rampAngle: 60 }));
    expect(state.unread.find(({ key }) => key === "allowanceLeft")?.taken).toBeCloseTo(0.0993, 4);
    expect(state.unread.map(({ key }) => key)).not.toContain("rampAngle");
    expect(state.figures.find(({ key }) => key === "soleToTake")?.unread).toBe("allowanceLeft");
    expect(unreadValues(measuring(worked, { done: "mouth" })).at(-1)).toMatchObject({ key: "mouthSeen", taken: 0.15 });
    expect(unreadValues(worked)).toEqual([]);
  });

  test("what is remembered of a mouth still narrow keeps what is to come off, asked once or twice", () => {
    const once = asBuiltDesign(measuring(worked, { allowanceLeft: 0.2, mouthSeen: 0.05 }));
    expect(asBuiltDesign(once).sole.allowance).toBeCloseTo(0.1 / (cot(47) + cot(60)), 12);
  });

  test("a chamfer higher than what came off the sole stays by the rest; a lower one is gone", () => {
    const bedWith = (chamfer: number) =>
      asBuiltPlane(measuring(designWith({ ...WORKED, "bed.featherChamfer": chamfer }), { allowanceLeft: 0 })).design
        .bed;
    expect(bedWith(5).featherChamfer).toBeCloseTo(2, 12);
    expect(bedWith(1).featherChamfer).toBe(0);
  });

  test("the recess stays where it was routed in the wood while the sole goes down", () => {
    const before = asBuiltPlane(measuring(worked, { done: "recess" }));
    const after = asBuiltPlane(measuring(worked, { rampTipFromEnd: 12.7 + 79.3 }));
    const deeper = before.design.body.height - after.design.body.height;
    expect(Math.abs(deeper)).toBeGreaterThan(0.1);
    expect(after.points.recessLow.x).toBeCloseTo(before.points.recessLow.x, 9);
    expect(after.points.recessLow.y + deeper).toBeCloseTo(before.points.recessLow.y, 9);
  });

  test("what is remembered of the hole is where it is: from the toe end of the cheeks, and over the sole as it then is", () => {
    const { measured } = asBuiltDesign(measuring(worked, { done: "pin-hole" }));
    expect(measured.pinHoleFromEnd).toBeCloseTo(12.7 + elevation(worked).pin.centre.x, 9);
    expect(measured.pinHoleHeight).toBeCloseTo(36 + 3, 9);
    expect(plannedDesign(measuring(worked, { ironThickness: 3.7 }))).toEqual(worked);
  });

  test("an auto ramp does not follow the bed once it is cut, and does before", () => {
    const auto = designWith({ ...WORKED, "ramp.angle": "auto" });
    expect(asBuiltPlane(measuring(auto, { bedAngle: 46 })).ramp.angle).toBe(60);
    expect(elevation(designWith({ ...WORKED, "ramp.angle": "auto", "bed.angle": 46 })).ramp.angle).toBe(61);
  });

  test("a front block glued 0.28 too near the toe: less comes off the sole, and the mouth is as wanted", () => {
    const plane = asBuiltPlane(measuring(worked, { rampTipFromEnd: 12.7 + 79.3 }));
    const atPlannedSole = 78 + 3 * cot(60) - 79.3;
    const deeper = (0.15 - atPlannedSole) / (cot(47) + cot(60));
    expect(plane.design.sole.allowance).toBeCloseTo(3 + deeper, 12);
    expect(plane.design.mouth.opening).toBeCloseTo(0.15, 12);
    expect(plane.design.body.height).toBeCloseTo(58 - deeper, 12);
    expect(plane.frame.mouthX).toBeCloseTo(78 + deeper * cot(47), 12);
  });

  test("a mouth seen at 0.05 with 0.2 left wants (0.15 - 0.05) / mouthGrowth off", () => {
    const plane = asBuiltPlane(measuring(worked, { allowanceLeft: 0.2, mouthSeen: 0.05 }));
    expect(plane.design.sole.allowance).toBeCloseTo(0.1 / (cot(47) + cot(60)), 12);
    expect(plane.design.mouth.opening).toBeCloseTo(0.15, 12);
  });

  test("a mouth that is too wide stays too wide, and nothing more comes off", () => {
    const design = measuring(worked, { mouthSeen: 0.4 });
    expect(asBuiltPlane(design).design.sole.allowance).toBe(0);
    expect(asBuiltPlane(design).design.mouth.opening).toBeCloseTo(0.4, 12);
    expect(buildState(design).mouthTooWideBy).toBeGreaterThan(0.2);
  });

  test("a mouth too wide is told by how much, and one wider by less than a shaving of 0.05 opens is not", () => {
    expect(buildState(measuring(worked, { mouthSeen: 0.4 })).mouthTooWideBy).toBeCloseTo(0.25, 12);
    expect(buildState(measuring(worked, { mouthSeen: 0.15 + 0.049 * (cot(47) + cot(60)) })).mouthTooWideBy).toBe(0);
  });

  test("a mouth wider by just what one shaving opens is as good as hands make it, whatever the rounding", () => {
    // Bed and ramp of 45°: each mm opens it by 2, a shaving of 0.05 by 0.1.
    for (const wanted of [0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7]) {
      const design = designWith({ ...WORKED, "bed.angle": 45, "ramp.angle": 45, "mouth.opening": wanted });
      const seen = (more: number) =>
        buildState(measuring(design, { mouthSeen: Math.round((wanted + more) * 1e3) / 1e3 }));
      expect(seen(0.1).mouthTooWideBy, `${wanted}`).toBe(0);
      expect(seen(0.101).mouthTooWideBy, `${wanted}`).toBeCloseTo(0.101, 9);
    }
  });

  test("the sole is expected to be left where the mouth begins to open, and no mouth to be seen that is shut", () => {
    expect(expectedValue(worked, "allowanceLeft")).toBeCloseTo(0.15 / (cot(47) + cot(60)), 12);
    expect(expectedValue(measuring(worked, { allowanceLeft: 0.4 }), "mouthSeen")).toBe(0);
    expect(expectedValue(measuring(worked, { allowanceLeft: 0.05 }), "mouthSeen")).toBeCloseTo(
      0.15 - 0.05 * (cot(47) + cot(60)),
      12,
    );
  });

  test("stopping short of the mouth wanted loses nothing, and what is left is not compared with the whole allowance", () => {
    const state = buildState(measuring(worked, { allowanceLeft: 0.4, mouthSeen: 0.05 }));
    expect(state.lost).toEqual([]);
    expect(state.figures.find(({ key }) => key === "soleToTake")).not.toHaveProperty("planned");
    expect(state.changed.map(({ key }) => key)).not.toContain("soleToTake");
  });

  test("a wedge made too thin goes in further, and its new place is told", () => {
    const { changed } = buildState(measuring(worked, { wedgeTip: 2.5 }));
    const moved = changed.find(({ key }) => key === "wedgeTipFromEdge")!;
    expect(moved.planned - moved.now).toBeCloseTo(0.5 / Math.tan((6 * Math.PI) / 180), 6);
  });

  test("what is bored stays where it is in the wood, and the wedge is made to reach it", () => {
    for (const values of [
      { bedTipFromEnd: 12.7 + 80.6 },
      { rampTipFromEnd: 12.7 + 79.9 },
      { bedTipFromEnd: 12.7 + 79.8, rampTipFromEnd: 12.7 + 79.2, mouthSeen: 0 },
    ] as Values[]) {
      const before = asBuiltPlane(measuring(worked, { done: "pin-hole" }));
      const after = asBuiltPlane(measuring(worked, values));
      const cut = measuring(worked, values).measured.mouthSeen === undefined ? 0 : 3;
      expect(after.pin.centre.x).toBeCloseTo(before.pin.centre.x, 9);
      if (cut === 0) expect(after.pin.centre.y + after.design.sole.allowance).toBeCloseTo(before.pin.centre.y + 3, 9);
      const [, , upperRight, upperLeft] = after.wedge.map(({ from }) => from);
      const [dx, dy] = [upperRight!.x - upperLeft!.x, upperRight!.y - upperLeft!.y];
      const off = (after.pin.centre.x - upperLeft!.x) * -dy + (after.pin.centre.y - upperLeft!.y) * dx;
      expect(off / Math.hypot(dx, dy)).toBeCloseTo(12.7 / 2, 9);
    }
  });

  test("a wear cut at 76 where 75 was planned is the ramp's angle from then on, its radius as shaped", () => {
    const curved = designWith({ ...WORKED, "bed.angle": 55 });
    const plane = asBuiltPlane(measuring(curved, { rampAngle: 76, rampRadius: 80 }));
    expect([plane.ramp.shape, plane.ramp.angle, plane.ramp.curve?.radius]).toEqual(["curved", 76, 80]);
    const straight = asBuiltPlane(measuring(worked, { rampAngle: 61 }));
    expect([straight.ramp.shape, straight.ramp.angle, straight.design.ramp.wearAngle]).toEqual(["straight", 61, 75]);
  });

  test("no more than half the height is planed off for a mouth that even so comes out too narrow", () => {
    const straight = { "ramp.shape": "straight", "ramp.angle": 85 };
    const low = { "body.height": 20, "bed.angle": 65, ...straight, "mouth.opening": 10 };
    const plane = asBuiltPlane(measuring(designWith(low), { allowanceLeft: 0, mouthSeen: 0 }));
    expect(plane.design.body.height).toBeCloseTo(10, 9);
    expect(plane.design.mouth.opening).toBeCloseTo(10 * (cot(65) + cot(85)), 9);
  });

  test("a front block glued far too near the toe lets no more than half the height be planed off, and the mouth stays shut", () => {
    const plane = asBuiltPlane(measuring(worked, { rampTipFromEnd: 12.7 + 78 + 3 * cot(60) + 60 }));
    expect(plane.design.body.height).toBeCloseTo(58 - 29, 9);
    expect(plane.design.sole.allowance).toBeCloseTo(3 + 29, 9);
    expect(plane.design.mouth.opening).toBeCloseTo(-60 + 29 * (cot(47) + cot(60)), 9);
  });

  test("a front block glued much too far from the mouth cannot have its wood put on again", () => {
    const plane = asBuiltPlane(measuring(worked, { rampTipFromEnd: 12.7 + 60 }));
    expect(plane.design.sole.allowance).toBeCloseTo(0, 9);
    expect(plane.design.mouth.opening).toBeCloseTo(78 + 3 * cot(60) - 60 - 3 * (cot(47) + cot(60)), 9);
  });

  test("a hole bored off its place is met by a thicker or thinner wedge of the same angle", () => {
    const plane = asBuiltPlane(measuring(worked, { pinHoleFromEnd: 12.7 + 91.9, pinHoleHeight: 39 }));
    expect(plane.pin.centre.x).toBeCloseTo(91.9, 9);
    expect(plane.pin.centre.y).toBeCloseTo(36, 9);
    expect(plane.design.wedge.angle).toBe(6);
    expect(plane.design.wedge.tip).toBeGreaterThan(3);
  });
});

describe("state of the build", () => {
  test("every step names figures and measures that exist, and every measured row belongs to one step", () => {
    const measures = STEP_NAMES.flatMap((step) => STEPS[step].measures);
    expect(["done", ...measures]).toEqual(Object.keys(TABLE.measured));
    for (const key of measures) expect(() => rowAt(TABLE.measured[key].parameter), key).not.toThrow();
    for (const step of STEP_NAMES) {
      for (const key of STEPS[step].figures) expect(FIGURES).toHaveProperty(key);
      for (const path of STEPS[step].locks) expect(() => rowAt(path)).not.toThrow();
    }
  });

  test("goes from step to step, and stays at the mouth until it is wide enough", () => {
    expect(buildState(worked).step).toBe("iron");
    expect(buildState(measuring(worked, { coreWidth: 49.7 })).step).toBe("cuts");
    expect(buildState(measuring(worked, { done: "glue-up" })).step).toBe("sole");
    const still = buildState(measuring(worked, { mouthSeen: 0.05 }));
    expect(still.step).toBe("mouth");
    expect(still.figures.find(({ key }) => key === "soleToTake")?.value).toBeCloseTo(0.1 / (cot(47) + cot(60)), 9);
    expect(buildState(measuring(worked, { mouthSeen: 0.15 })).step).toBe("shaping");
    expect(buildState(measuring(worked, { done: "shaping" }))).not.toHaveProperty("step");
  });

  test("tells no figure of a recess that the plane does not have", () => {
    const without = designWith({ ...WORKED, "capIron.screwHead.diameter": 0 });
    const { step, figures, toMeasure } = buildState(measuring(without, { done: "bed" }));
    expect([step, figures, toMeasure]).toEqual(["recess", [], []]);
  });

  test("says what moved and what it costs, and nothing where all came out as planned", () => {
    const state = buildState(measuring(worked, { bedAngle: 46 }));
    const lost = state.lost.find(({ key }) => key === "bedAngle")!;
    expect([lost.asked, lost.got]).toEqual([47, 46]);
    expect(lost.costs.find(({ key }) => key === "clearanceAngle")).toMatchObject({ planned: 19, now: 18 });
    expect(state.changed.map(({ key }) => key)).toContain("tipGap");
    const dryFit = buildState(measuring(worked, { bedAngle: 46, done: "wedge" }));
    expect(dryFit.figures.find(({ key }) => key === "tipGap")?.planned).toBeCloseTo(
      valuesOf(elevation(worked)).tipGap!,
      12,
    );
    expect(dryFit.figures.find(({ key }) => key === "setInToe")).not.toHaveProperty("planned");
    const both = buildState(measuring(worked, { bedAngle: 46, coreWidth: 52 })).lost;
    const costs = both.find(({ key }) => key === "bedAngle")!.costs.map(({ key }) => key);
    expect(costs).toContain("clearanceAngle");
    expect(costs).not.toContain("sideClearance");
    const asPlanned = buildState(measuring(worked, { coreWidth: 49.6, bedAngle: 47 }));
    expect([asPlanned.lost, asPlanned.changed]).toEqual([[], []]);
  });

  test("marks what the latest step moved as new, and what earlier steps moved as not", () => {
    const state = buildState(measuring(worked, { ironThickness: 3.8, bedAngle: 46 }));
    expect(state.latest).toBe("bed");
    const isNew = new Map(state.changed.map((change) => [change.key, change.isNew]));
    expect([isNew.get("mouthGrowth"), isNew.get("tipGap")]).toEqual([true, true]);
    expect(isNew.get("wedgeWidth")).toBeUndefined();
    const later = buildState(measuring(worked, { ironThickness: 3.8, bedAngle: 46, done: "recess" }));
    expect(later.changed.length).toBeGreaterThan(0);
    expect(later.changed.filter((change) => change.isNew)).toEqual([]);
    expect(buildState(worked).latest).toBeUndefined();
  });

  test("a cost is told where a maker feels it: rooms by half a millimetre, the iron's room by what a maker can hold", () => {
    const costs = (values: Values) =>
      buildState(measuring(worked, values)).lost.flatMap((loss) => loss.costs.map(({ key }) => key));
    expect(costs({ cheekThickness: 7.8 })).toEqual([]); // the body 0.4 narrower
    expect(costs({ cheekThickness: 7.7 })).toEqual(["bodyWidth"]); // 0.6
    expect(costs({ coreWidth: 49.5 })).toEqual(["sideClearance"]);
    expect(costs({ rampAngle: 60.5 })).not.toContain("mouthGrowth"); // cot 60 - cot 60.5 = 0.0116
    expect(costs({ rampAngle: 60.9 })).toContain("mouthGrowth"); // 0.0208
  });

  test("a mouth that wants no more than its hundredth is done with", () => {
    // What is left to take, 0.004 mm and 0.002 mm, opens it by 1.5099 times as much: 0.006 and 0.003.
    expect(buildState(measuring(worked, { mouthSeen: 0.15 - 0.004 * 1.5099 })).step).toBe("mouth");
    expect(buildState(measuring(worked, { mouthSeen: 0.15 - 0.002 * 1.5099 })).step).toBe("shaping");
  });

  test("a cost is told from just where a maker feels it", () => {
    const asPlanned = valuesOf(asBuiltPlane(measuring(worked, { done: "pin-hole" })));
    const planned = { pinHoleHeight: 3 + asPlanned.pinY!, pinHoleFromEnd: asPlanned.pinFromEnd! };
    const told = new Set<string>();
    for (const place of ["pinHoleHeight", "pinHoleFromEnd"] as const)
      for (let off = 0.2; off < 1.2; off += 0.02) {
        const values = { [place]: planned[place] - off };
        const loss = buildState(measuring(worked, values)).lost.find(({ key }) => key === place);
        const now = valuesOf(asBuiltPlane(measuring(worked, values)));
        for (const key of ["shearOut", "woodOverPinHole", "pinToRamp", "wedgeTip", "wedgeAtPin"]) {
          const isTold = loss?.costs.some((each) => each.key === key) ?? false;
          expect(isTold, `${key} at ${off} off ${place}`).toBe(Math.abs(now[key]! - asPlanned[key]!) > 0.5);
          if (isTold) told.add(key);
        }
      }
    expect([...told].sort()).toEqual(["pinToRamp", "shearOut", "wedgeAtPin", "wedgeTip", "woodOverPinHole"]);
  });

  test("a sole that must go deeper than planned is told before it is trued, and not after", () => {
    const glued = (done: "glue-up" | "sole") => {
      const { changed, figures } = buildState(measuring(worked, { rampTipFromEnd: 12.7 + 80, done }));
      return [changed, figures].map((some: readonly { key: string; planned?: number }[]) =>
        some.filter(({ key, planned }) => key === "soleToTake" && planned !== undefined).map(({ planned }) => planned),
      );
    };
    expect(glued("glue-up")).toEqual([[3], [3]]);
    expect(glued("sole")).toEqual([[], []]);
  });

  test("what is worth a word: half of what a maker can hold, what a saw's scale shows, a hundredth at the mouth", () => {
    const edges: readonly (readonly [key: string, unit: string, from: number])[] = [
      ["bodyWidth", "mm", 0.1 / 2],
      ["bedAngle", "°", 0.05],
      ["mouthGrowth", "", 0.01 / 2],
      ...["mouthOpening", "glueGap", "edgeHeightAtContact", "soleToTake", "mouthSeen", "allowanceLeft"].map(
        (key) => [key, "mm", 0.01 / 2] as const,
      ),
    ];
    for (const [key, unit, from] of edges)
      for (const sign of [1, -1])
        expect([0.99, 1.01].map((share) => isSignificant(key, unit, sign * share * from))).toEqual([false, true]);
  });

  test("a core that came out wide is told until the last step, though the allowance is used up", () => {
    for (const done of ["sole", "mouth"] as const) {
      const { changed, figures } = buildState(measuring(worked, { coreWidth: 52, done }));
      expect(changed.map(({ key }) => key)).toContain("bodyWidth");
      const body = figures.find(({ key }) => key === "bodyWidth");
      if (done === "mouth") expect(body?.planned).toBeCloseTo(49.6 + 2 * 8, 9);
    }
  });

  test("what was auto stands as it was cut, with nothing of it stored: a later reading moves it no more", () => {
    const auto = designWith({ ...WORKED, "ramp.angle": "auto", "pin.height": "auto", "wedge.length": "auto" });
    const { rampAngle } = valuesOf(elevation(auto));
    const trued = measuring(auto, { bedAngle: 46 });
    expect(valuesOf(asBuiltPlane(trued)).rampAngle).toBe(rampAngle);
    const hole = elevation(auto).pin.centre.y;
    for (const values of [{ done: "pin-hole" }, { done: "wedge" }, { done: "pin-hole", wedgeTip: 6 }] as const)
      expect(asBuiltPlane(measuring(auto, values)).pin.centre.y, JSON.stringify(values)).toBeCloseTo(hole, 9);
  });

  test("a file of old that holds planned values as measured is the same plane", () => {
    const auto = designWith({ ...WORKED, "ramp.angle": "auto", "pin.height": "auto" });
    const old = measuring(auto, { done: "recess", rampAngle: 60 });
    close(valuesOf(asBuiltPlane(old)), valuesOf(asBuiltPlane(measuring(auto, { done: "recess" }))));
    const locked = lockedParameters(old);
    expect(locked).toEqual(lockedParameters(measuring(auto, { done: "recess" })));
  });

  test("a mouth read closed is not done, though the blocks stand so far off that no planing opens it", () => {
    expect(
      buildState(measuring(designWith(), { bedTipFromEnd: 12.7 + 5, rampTipFromEnd: 12.7 + 79, mouthSeen: 0 })).step,
    ).toBe("mouth");
  });

  test("no parameter is locked early", () => {
    const auto = designWith({ ...WORKED, "ramp.angle": "auto", "pin.height": "auto" });
    const done = measuring(auto, { done: "pin-hole" });
    expect(lockedParameters(measuring(auto, { coreWidth: 49.6 })).has("ramp.angle")).toBe(false);
    expect(lockedParameters(done).has("ramp.angle")).toBe(true);
    expect(stepsDone(done)).toBe(stepIndex("pin-hole") + 1);
    expect(designBeforeStep(done, "cuts").ramp.angle).toBe("auto");
  });
});
