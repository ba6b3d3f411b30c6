// The plane's shape through the year, a second way: its outlines moved corner by corner, strains integrated over the section.
import {
  clampThroughYear,
  planeHold,
  planeSeasons,
  planeShape,
  planeSlack,
  wedgeHoldOfYear,
  wedgeLoosens,
  wedgeTightens,
} from "@lamplane/bench";
import { checkWithoutCures } from "@lamplane/bench/checks";
import { atan2Deg, cosDeg, type Point, point, sinDeg, tanDeg } from "@lamplane/geometry";
import { rowAt } from "@lamplane/parameters/design";
import { type Elevation, elevation } from "@lamplane/parameters/elevation";
import { isAssumption } from "@lamplane/parameters/table";
import { describe, expect, test } from "vitest";
import { judgeChecks } from "../../packages/bench/src/checks/judgements.ts";
import { cup } from "../../packages/bench/src/seasons/cupping.ts";
import { movedAngles, type Strains, wedgeSlack } from "../../packages/bench/src/seasons/side-view.ts";
import { type Changes, designWith, randomDesigns, WORKED } from "../support/designs.ts";

const planeWith = (changes: Changes = {}) => elevation(designWith({ ...WORKED, ...changes }));
const PLANES = [planeWith(), ...randomDesigns(83, 60).map(({ design }) => elevation(design))];

type Vector = readonly [x: number, y: number];
const from = (a: Point, b: Point): Vector => [b.x - a.x, b.y - a.y];
const dot = ([a, b]: Vector, [c, d]: Vector): number => a * c + b * d;
const unit = ([x, y]: Vector): Vector => [x / Math.hypot(x, y), y / Math.hypot(x, y)];
const shifted = (p: Point, by: Vector, far: number): Point => point(p.x + by[0] * far, p.y + by[1] * far);

/** The plane with every corner of its body moved, and its rigid iron laid on the moved bed where the pin grips it. */
function moved(plane: Elevation, { height, wedge, pin: across }: Strains) {
  const { points, design, frame, pin } = plane;
  const move = (p: Point) => point(p.x, p.y * (1 + height));
  const upBed = unit(from(points.bedFoot, points.bedTop));
  const grip = shifted(points.bedFoot, upBed, dot(from(points.bedFoot, pin.centre), upBed));
  const edgeFromGrip = dot(from(grip, points.edge), upBed);
  const up = unit(from(move(points.bedFoot), move(points.bedTop)));
  const off: Vector = [-up[1], up[0]];
  const onIron = (s: number, v: number) => shifted(shifted(move(grip), up, s), off, v);
  const steel = design.iron.thickness + design.capIron.thickness;
  /** Wedge's upper side, s from the grip. */
  const upper = (s: number) => onIron(s, steel + (pin.wedgeThere + s * tanDeg(design.wedge.angle)) * (1 + wedge));
  const upperWay = unit(from(upper(-10), upper(10)));
  const thrust: Vector = [-upperWay[1], upperWay[0]];
  const hole = () =>
    Array.from({ length: 12_000 }, (_, i) =>
      move(
        point(
          plane.pinHole.centre.x + plane.pinHole.radius * cosDeg(i * 0.03),
          plane.pinHole.centre.y + plane.pinHole.radius * sinDeg(i * 0.03),
        ),
      ),
    );
  // The tenon goes with the thrust until the hole's rim stops it; its flat stays a tenon's and a body's half thickness behind.
  const rim = () => Math.max(...hole().map((p) => dot(from(upper(0), p), thrust)));
  const room = () => rim() - (plane.pinSize.tenon / 2 + plane.pinSize.diameter / 2) * (1 + across);
  const bedAngle = atan2Deg(up[1], up[0]);
  const faceOnSole = move(points.bedFoot).x - design.iron.thickness / sinDeg(bedAngle);
  return {
    bedAngle,
    rampAngle: atan2Deg(
      move(points.rampFoot).y - move(points.rampTip).y,
      move(points.rampTip).x - move(points.rampFoot).x,
    ),
    mouth: faceOnSole - move(points.rampFoot).x,
    edgeOut: -onIron(edgeFromGrip, design.iron.thickness).y,
    room,
    frame,
  };
}

const STRAINS: readonly Strains[] = [
  { height: -0.006, wedge: -0.008, pin: -0.0055 },
  { height: 0.0063, wedge: 0.0063, pin: 0.0125 },
  { height: 0.02, wedge: 0, pin: -0.01 },
];

describe("outlines moved corner by corner", () => {
  test("bed, ramp, mouth and edge", () => {
    for (const plane of PLANES)
      for (const strains of STRAINS) {
        const theirs = moved(plane, strains);
        const ours = movedAngles(plane, strains.height);
        expect(ours.bed).toBeCloseTo(theirs.bedAngle, 8);
        if (plane.design.sole.allowance > 0.1) expect(ours.ramp).toBeCloseTo(theirs.rampAngle, 8);
        expect(ours.mouth).toBeCloseTo(theirs.mouth, 8);
        expect(ours.edgeOut).toBeCloseTo(theirs.edgeOut, 8);
      }
  });
  test("the gap that the wedge fills", () => {
    for (const plane of PLANES.slice(0, 25)) {
      const before = moved(plane, { height: 0, wedge: 0, pin: 0 }).room();
      for (const strains of STRAINS) {
        const slack = (moved(plane, strains).room() - before) / cosDeg(plane.design.wedge.angle);
        expect(wedgeSlack(plane, strains)).toBeCloseTo(slack, 6);
      }
    }
  });
  test("as cut nothing has moved", () => {
    for (const plane of PLANES) {
      const { bed, ramp, mouth, edgeOut } = movedAngles(plane, 0);
      expect([bed, ramp]).toEqual([expect.closeTo(plane.frame.bedAngle, 9), expect.closeTo(plane.ramp.angle, 9)]);
      expect(mouth).toBeCloseTo(plane.design.mouth.opening, 9);
      expect(edgeOut).toBeCloseTo(0, 9);
    }
  });
});

describe("what is felt", () => {
  const codes = (changes: Changes) =>
    checkWithoutCures(planeWith(changes)).map(({ code, severity }) => [code, severity]);
  test("a cup over 0.1 is noted, with the year it takes; a smaller one is not", () => {
    expect(codes({})).not.toContainEqual(["sole-cup", "note"]);
    expect(codes({ "wood.rings": 0, "wood.dampest.humidity": 85 })).toContainEqual(["sole-cup", "note"]);
  });
  test("a plane strained near its strength warns of the damp days", () =>
    expect(codes({ "hold.forcePerMm": 11, "wood.pinRings": 90 })).toContainEqual(["wedge-load-over-year", "warning"]));
});

describe("the worked set", () => {
  // American beech, rings at 20°, ΔM ∓ 2.8953: up the height C 0.0021819, ε ∓ 0.0063174; tan β′ = tan 47·(1 ∓ 0.0063174).
  const plane = planeWith();
  const { driest, dampest } = planeShape(plane);
  test("dry, the bed lies 0.18° flatter and the edge comes out; damp, the other way", () => {
    expect(driest.angles!.bed).toBeCloseTo(46.8189, 3);
    expect(dampest.angles!.bed).toBeCloseTo(47.1799, 3);
    expect(driest.angles!.edgeOut).toBeGreaterThan(0);
    expect(dampest.angles!.edgeOut).toBeLessThan(0);
    expect(driest.angles!.mouth).toBeLessThan(0.15);
    expect(dampest.angles!.mouth).toBeGreaterThan(0.15);
  });
  test("the clamp's swing is the pin's stiffness, clamp over sag, times what opens square to its flat", () => {
    const year = clampThroughYear(plane)!;
    const { clamp } = planeHold(plane).fine;
    expect(wedgeLoosens(plane)!).toBeGreaterThan(0);
    expect(year.least).toBeCloseTo(clamp - (clamp / 0.0574773) * wedgeLoosens(plane)! * cosDeg(6), 2);
    expect(clampThroughYear(planeWith({ "wood.pinRings": 90 }))!.least).toBe(0);
    expect(year.most).toBeCloseTo(clamp * (1 + (wedgeTightens(plane)! * cosDeg(6)) / 0.0574773), 2);
  });
  test("a pin whose rings lie along its flat keeps the wedge through the year; one with rings square to it, or round, does not", () => {
    // Wood Handbook (FPL-GTR-190, 2010), table 13-5: American beech C_R 0.00190, so the pin's ε = 0.0019·2.8953.
    const strains = { height: -0.0063174, wedge: -0.0063174, pin: -0.0019 * 2.8953 };
    const opens = moved(plane, strains).room() - moved(plane, { height: 0, wedge: 0, pin: 0 }).room();
    expect(wedgeHoldOfYear(plane)!.opens).toBeCloseTo(opens, 5);
    expect(wedgeHoldOfYear(plane)!.sag).toBeCloseTo(0.0574773, 6);
    const judgement = (changes: Changes) =>
      judgeChecks(planeWith(changes)).find(({ code }) => code === "wedge-hold-over-year");
    expect(judgement({})).toMatchObject({ severity: "passed", value: wedgeHoldOfYear(plane)!.opens });
    // Rings square to the flat: C_T, the pin's ε = 0.00431·2.8953 along the thrust. Those of a round pin may come to lie so.
    const square =
      moved(plane, { ...strains, pin: -0.00431 * 2.8953 }).room() -
      moved(plane, { height: 0, wedge: 0, pin: 0 }).room();
    expect(square).toBeGreaterThan(0.0574773);
    expect(judgement({ "wood.pinRings": 90 })).toMatchObject({ severity: "warning", value: expect.closeTo(square, 5) });
    expect(judgement({ "pin.section": "round" })!.severity).toBe("warning");
    // Halfway the two count alike: C = (C_R + C_T) / 2.
    const slanted =
      moved(plane, { ...strains, pin: -0.003105 * 2.8953 }).room() -
      moved(plane, { height: 0, wedge: 0, pin: 0 }).room();
    expect(wedgeHoldOfYear(planeWith({ "wood.pinRings": 45 }))!.opens).toBeCloseTo(slanted, 5);
    const damp = moved(plane, { height: 0.0063174, wedge: 0.0063174, pin: 0.0019 * 2.8953 });
    const closes = moved(plane, { height: 0, wedge: 0, pin: 0 }).room() - damp.room();
    expect(wedgeTightens(plane)! * cosDeg(6)).toBeCloseTo(closes, 5);
    expect(judgement({ "wood.pin": "unobtainium" })).toBeUndefined();
  });
  test("a year without change of air moves nothing", () => {
    const still = planeWith({ "wood.driest.humidity": 50, "wood.dampest.humidity": 50 });
    expect(wedgeLoosens(still)).toBe(0);
    expect(wedgeHoldOfYear(still)!.opens).toBe(0);
    expect(planeShape(still).driest.soleCup).toBeCloseTo(0, 12);
    expect(clampThroughYear(still)).toEqual({ least: planeHold(still).fine.clamp, most: planeHold(still).fine.clamp });
  });
  test("a wood the tables lack leaves what rests on it open", () => {
    const { driest: lost } = planeShape(planeWith({ "wood.body": "unobtainium" }));
    expect(Object.values(lost)).toEqual(Array(3).fill(undefined));
    expect(Object.values(planeSlack(planeWith({ "wood.body": "unobtainium" })).driest)).toEqual([undefined, undefined]);
    const wedgeLost = planeWith({ "wood.wedge": "unobtainium" });
    expect(planeSlack(wedgeLost).driest.loosest).toBeUndefined();
    expect(planeShape(wedgeLost).driest).toMatchObject({ angles: { bed: expect.any(Number) } });
  });
});

/** Strains of a square of wood at a place, the pith at 0: across, up, and its shear. @see standard plane-strain transformation */
function strainsAt(z: number, y: number, radial: number, tangential: number) {
  const rings = atan2Deg(-z, y);
  return {
    across: tangential * cosDeg(rings) ** 2 + radial * sinDeg(rings) ** 2,
    up: radial * cosDeg(rings) ** 2 + tangential * sinDeg(rings) ** 2,
    shear: (tangential - radial) * sinDeg(2 * rings),
  };
}

describe("cup of a flat across the grain", () => {
  const [radial, tangential, step] = [-0.0055, -0.0125, 1e-3];
  const at = (z: number, y: number) => strainsAt(z, y, radial, tangential);

  test.each([
    [65.6, 0, 100],
    [65.6, 20, 100],
    [49.6, 45, 60],
    [65.6, 80, 150],
  ])(
    "%d wide, rings at %d°, pith at %d: curvature from the strains, integrated twice over the width",
    (width, rings, pith) => {
      const [middle, height] = [-pith * sinDeg(rings), pith * cosDeg(rings)];
      // u_y,zz = γ,z − ε_z,y.
      const curvature = (z: number) =>
        (at(z + step, height).shear -
          at(z - step, height).shear -
          at(z, height + step).across +
          at(z, height - step).across) /
        (2 * step);
      const steps = 4000;
      const dz = width / steps;
      let [slope, rise] = [0, 0];
      const rises = [0];
      for (let i = 0; i < steps; i++) {
        const bend = curvature(middle - width / 2 + (i + 0.5) * dz);
        rise += (slope + (bend * dz) / 2) * dz;
        slope += bend * dz;
        rises.push(rise);
      }
      const offEnds = (rises[0]! + rises[steps]!) / 2 - rises[steps / 2]!;
      expect(cup(width, { radial, tangential }, rings, pith)).toBeCloseTo(offEnds, 6);
      expect(Math.abs(offEnds)).toBeGreaterThan(1e-4);
    },
  );
  test("nothing presses: the strains fit together at every place of the section, so that this is the shape", () => {
    const h = 0.05;
    const second = (f: (a: number) => number) => (f(h) - 2 * f(0) + f(-h)) / h ** 2;
    for (let z = -32; z <= 32; z += 8)
      for (let y = 60; y <= 120; y += 10) {
        const bent = second((a) => at(z, y + a).across) + second((a) => at(z + a, y).up);
        const corner = (a: number, b: number) => at(z + a, y + b).shear;
        const sheared = (corner(h, h) - corner(h, -h) - corner(-h, h) + corner(-h, -h)) / (4 * h ** 2);
        expect(bent).toBeCloseTo(sheared, 9);
        expect(Math.abs(second((a) => at(z, y + a).shear)) + Math.abs(sheared)).toBeGreaterThan(0);
      }
  });
  test("quarter sawn it stays flat; dried with the pith behind, the edges turn away from it", () => {
    expect(cup(65.6, { radial, tangential }, 90, 100)).toBeCloseTo(0, 12);
    expect(cup(65.6, { radial, tangential }, 0, 100)).toBeGreaterThan(0);
    expect(cup(65.6, { radial, tangential: radial }, 20, 100)).toBeCloseTo(0, 12);
  });
  test("the plane's sole, flat sawn: 65.6/2·atan(32.8/100)·(0.00431 − 0.00190)·2.8953 (by hand)", () => {
    const plane = planeWith({ "wood.rings": 0 });
    const { planned, driest } = planeSeasons(plane);
    expect(planned.moisture - driest.moisture).toBeCloseTo(2.8953, 3);
    expect(plane.design.wood.pith).toBe(100);
    expect(isAssumption(rowAt("wood.pith"))).toBe(true);
    expect(rowAt("wood.pith").help).toMatch(/our assumption/);
    const far = planeWith({ "wood.rings": 0, "wood.pith": 200 });
    expect(Math.abs(planeShape(far).driest.soleCup!)).toBeCloseTo(32.8 * Math.atan(0.164) * 0.00241 * 2.8953, 4);
    expect(Math.abs(planeShape(plane).driest.soleCup!)).toBeCloseTo(32.8 * Math.atan(0.328) * 0.00241 * 2.8953, 4);
    const { soleCup, bedCup } = planeShape(plane).driest;
    expect(bedCup! / soleCup!).toBeCloseTo(((24.8 * Math.atan(0.248)) / (32.8 * Math.atan(0.328))) * cosDeg(47), 6);
  });
});
