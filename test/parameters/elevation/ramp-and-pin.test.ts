// The ramp and the cross pin against brute force: sampled paths and grids of heights.

import { cosDeg, type Point, sinDeg } from "@lamplane/geometry";
import { REAL } from "@lamplane/geometry/numerics";
import {
  distanceToRamp,
  type Elevation,
  elevation,
  figureValue,
  mouthOpeningAt,
  rampXAt,
  removalForOpening,
} from "@lamplane/parameters/elevation";
import { expect, test } from "vitest";
import { rampOver } from "../../../packages/parameters/src/elevation/ramp-formulas.ts";
import { isBuildable } from "../../support/buildable.ts";
import { designWith, randomDesigns } from "../../support/designs.ts";

const designs = randomDesigns(11, 120, isBuildable);
const curved = designs.filter(({ design }) => elevation(design).ramp.curve);

/** Points of the ramp, `step` apart, from below the sole to far above the top: walked by its direction alone. */
function walked({ ramp, design }: Elevation, step: number): Point[] {
  const { curve, foot, angle } = ramp;
  const points: Point[] = [];
  const back = 20;
  let [x, y, at] = [foot.x + back * cosDeg(angle), -back * sinDeg(angle), angle];
  while (y < 3 * design.body.height) {
    points.push({ x, y });
    const onCurve = curve && y >= design.ramp.wearHeight && at > design.ramp.exitAngle;
    const turn = onCurve ? Math.min((step / curve.radius) * (180 / Math.PI), at - design.ramp.exitAngle) : 0;
    x -= step * cosDeg(at - turn / 2);
    y += step * sinDeg(at - turn / 2);
    at -= turn;
  }
  return points;
}

test("the random designs have curved ramps enough among them", () => expect(curved.length).toBeGreaterThan(30));

test("room from pin to ramp is that of the nearest of the ramp's sampled points", () => {
  for (const { design } of designs) {
    const plane = elevation(design);
    const { centre } = plane.pin;
    const nearest = Math.min(...walked(plane, 0.01).map(({ x, y }) => Math.hypot(x - centre.x, y - centre.y)));
    expect(Math.abs(figureValue(plane, "pinToRamp")! + plane.pinSize.diameter / 2 - nearest)).toBeLessThan(0.02);
  }
});

/** Which way, and how fast, a function of the place grows: central differences. */
function steepest(f: (p: Point) => number, { x, y }: Point): Point {
  const h = 1e-4;
  return {
    x: (f({ x: x + h, y }) - f({ x: x - h, y })) / (2 * h),
    y: (f({ x, y: y + h }) - f({ x, y: y - h })) / (2 * h),
  };
}

test("the ramp lies so far off, square to it, from any place in the throat", () => {
  const parts = new Set<string>();
  for (const { design } of curved.slice(0, 12)) {
    const plane = elevation(design);
    const points = walked(plane, 0.02);
    for (const [right, y] of [
      [2, 1],
      [4, 20],
      [6, 35],
      [12, 60],
      [30, 80],
    ] as const) {
      const place = { x: rampXAt(plane.ramp, y) + right, y };
      const distance = distanceToRamp(plane.ramp, place);
      const normal = steepest((p) => distanceToRamp(plane.ramp, p), place);
      expect(Math.hypot(normal.x, normal.y)).toBeCloseTo(1, 6);
      const foot = { x: place.x - distance * normal.x, y: place.y - distance * normal.y };
      expect(foot.x).toBeCloseTo(rampXAt(plane.ramp, foot.y), 6);
      const { begin, end } = plane.ramp.curve!;
      parts.add(foot.y < begin.y ? "wear" : foot.y < end.y ? "curve" : "exit");
      expect(
        Math.abs(distance - Math.min(...points.map(({ x, y }) => Math.hypot(x - place.x, y - place.y)))),
      ).toBeLessThan(0.02);
    }
  }
  expect([...parts].sort()).toEqual(["curve", "exit", "wear"]);
});

test("the curve is tangent to the wear and to the exit", () => {
  for (const { design } of curved) {
    const { curve, foot, angle } = elevation(design).ramp;
    const { begin, end, centre, radius, exitAngle } = curve!;
    const across = (p: Point, slope: number) => ({
      along: -(p.x - centre.x) * cosDeg(slope) + (p.y - centre.y) * sinDeg(slope),
      off: (p.x - centre.x) * sinDeg(slope) + (p.y - centre.y) * cosDeg(slope),
    });
    for (const [p, slope] of [
      [begin, angle],
      [end, exitAngle],
    ] as const) {
      expect(across(p, slope).along).toBeCloseTo(0, 9);
      expect(across(p, slope).off).toBeCloseTo(radius, 9);
    }
    expect(begin.y).toBe(design.ramp.wearHeight);
    expect((begin.x - foot.x) * sinDeg(angle) + begin.y * cosDeg(angle)).toBeCloseTo(0, 9);
    expect(end.x).toBeLessThan(begin.x);
    expect(end.y).toBeGreaterThan(begin.y);
  }
});

test("a radius left open leaves room 16, or its curve ends just at the top", () => {
  const ends = { atRoom: 0, atTop: 0 };
  for (const { design } of curved) {
    const plane = elevation(design);
    const room = figureValue(plane, "pinToRamp")!;
    const end = plane.ramp.curve!.end.y;
    if (Math.abs(end - design.body.height) < 1e-4) {
      ends.atTop++;
      expect(room).toBeGreaterThanOrEqual(16 - 1e-5);
    } else if (plane.ramp.curve!.radius === 5) expect(room).toBeLessThan(16);
    else {
      ends.atRoom++;
      expect(Math.abs(room - 16)).toBeLessThan(1e-5);
      expect(end).toBeLessThan(design.body.height);
    }
  }
  expect(ends.atRoom).toBeGreaterThan(0);
  expect(ends.atTop).toBeGreaterThan(0);
});

/** Each margin as a share of what is wanted of it; common practice and estimates, no published source. */
function share({ pinMargins: m, pinSize: { tenon } }: Elevation): number {
  return Math.min(
    m.roomToRamp / 16,
    m.woodOverHole / tenon,
    m.shearOut / (1.5 * tenon),
    m.wedgeBelow / 6,
    m.wedgeAbove / 12,
  );
}

test("a pin's height left open is no worse than any of a grid of heights", () => {
  for (const { changes } of designs.slice(0, 40)) {
    // The tightest curve for both: an open radius follows the pin.
    const at = (height: number | "auto") =>
      share(elevation(designWith({ ...changes, "ramp.radius": 5, "pin.height": height })));
    const { height } = designWith(changes).body;
    const grid = Array.from({ length: Math.floor((height - 8) * 2) }, (_, i) => at(8 + i / 2));
    expect(at("auto")).toBeGreaterThanOrEqual(Math.max(...grid) - 1e-3);
  }
});

/** Heights on a curved ramp's wear, its arc and its exit, a hair off where one passes into the next. */
const heightsOn = ({ ramp, design }: Elevation): number[] => {
  const { begin, end } = ramp.curve!;
  const between = (share: number) => begin.y + share * (end.y - begin.y);
  return [
    -2,
    begin.y / 2,
    begin.y - 1e-6,
    ...[0, 0.1, 0.5, 0.9, 1].map(between),
    end.y + 1e-6,
    (end.y + design.body.height) / 2,
  ];
};

test("what must come off for an opening makes just that opening: on the wear, the arc and the exit", () => {
  for (const { design } of curved.slice(0, 30)) {
    const plane = elevation(design);
    for (const y of heightsOn(plane)) {
      const opening = mouthOpeningAt(plane, y);
      expect(removalForOpening(plane, opening)).toBeCloseTo(y, 6);
      // The mouth lies between the edge, which goes up along the bed, and the ramp at that height.
      if (y <= 0) continue;
      const edge = plane.points.edge.x + y * (cosDeg(design.bed.angle) / sinDeg(design.bed.angle));
      expect(opening).toBeCloseTo(edge - rampXAt(plane.ramp, y), 9);
    }
  }
});

test("beside the wear's line the ramp lies where it is, and leans as a step up it does", () => {
  const { besideWear } = rampOver(REAL);
  for (const { design } of curved.slice(0, 30)) {
    const { ramp, ...plane } = elevation(design);
    for (const y of heightsOn({ ramp, ...plane })) {
      const { x, cot } = besideWear(ramp, y);
      const wear = ramp.foot.x - y * (cosDeg(ramp.angle) / sinDeg(ramp.angle));
      expect(wear + x).toBeCloseTo(rampXAt(ramp, y), 9);
      const step = 1e-4;
      expect(cot).toBeCloseTo((rampXAt(ramp, y - step) - rampXAt(ramp, y + step)) / (2 * step), 4);
    }
  }
});
