// The throat's series against brute force: sampled surfaces of iron, cap iron, wedge and pin.
import { checkWithoutCures, passedChecks } from "@lamplane/bench/checks";
import { cosDeg, type Point, sinDeg } from "@lamplane/geometry";
import {
  type Elevation,
  elevation,
  ironToPlane,
  rampXAt,
  type ThroatNeighbour,
  throatChokes,
  throatSeries,
} from "@lamplane/parameters/elevation";
import { expect, test } from "vitest";
import { worstNarrowing } from "../../../packages/parameters/src/elevation/throat.ts";
import { isBuildable } from "../../support/buildable.ts";
import { designWith, randomDesigns, WORKED } from "../../support/designs.ts";

const planes = randomDesigns(41, 25, isBuildable).map(({ design }) => elevation(design));
const STEP = 0.05; // mm between samples

const between = (a: Point, b: Point): Point[] => {
  const count = Math.max(1, Math.ceil(Math.hypot(b.x - a.x, b.y - a.y) / STEP));
  return Array.from({ length: count + 1 }, (_, i) => ({
    x: a.x + ((b.x - a.x) * i) / count,
    y: a.y + ((b.y - a.y) * i) / count,
  }));
};

/** Surfaces of what lies in the throat, sampled: the wedge and the pin from their own outlines. */
function surfaces(plane: Elevation): Record<ThroatNeighbour, Point[]> {
  const { design, frame, pin, pinSize, wedge } = plane;
  const { capIron } = design;
  const on = (s: number, v: number) => ironToPlane(frame, s, v);
  const [c, peak] = [capIron.thickness, capIron.thickness + capIron.hump];
  const tip = design.wedge.tipFromEdge;
  const end = Math.max(capIron.setback + capIron.humpEnd, capIron.setback + peak);
  const corners = [on(capIron.setback, 0), on(capIron.setback + peak, peak), on(end, c), on(tip, c)];
  return {
    iron: between(on(0, 0), on(c === 0 ? tip : capIron.setback, 0)),
    "cap iron": c === 0 ? [] : corners.slice(1).flatMap((to, i) => between(corners[i]!, to)),
    wedge: [1, 2, 3].flatMap((k) => between(wedge[k]!.from, wedge[k]!.to)),
    pin: Array.from({ length: 720 }, (_, i) => ({
      x: pin.centre.x + (pinSize.diameter / 2) * cosDeg(i / 2),
      y: pin.centre.y + (pinSize.diameter / 2) * sinDeg(i / 2),
    })),
  };
}

test("each width is the distance to the nearest sampled surface, and the neighbour named is the nearest", () => {
  const named = new Set<string>();
  for (const plane of planes) {
    const parts = Object.entries(surfaces(plane));
    for (const { at, width, nearest } of throatSeries(plane).filter((_, i) => i % 4 === 0)) {
      const widths = new Map(
        parts.map(([part, points]) => [part, Math.min(...points.map((p) => Math.hypot(p.x - at.x, p.y - at.y)))]),
      );
      expect(Math.abs(Math.min(...widths.values()) - width)).toBeLessThan(0.03);
      expect(widths.get(nearest)! - width).toBeLessThan(0.03);
      named.add(nearest);
    }
  }
  expect([...named].sort()).toEqual(["cap iron", "iron", "pin", "wedge"]);
});

test("it runs up the ramp from the mouth to the top, even steps along it", () => {
  for (const plane of planes) {
    const series = throatSeries(plane);
    expect(series[0]).toMatchObject({ along: 0, at: plane.points.rampFoot });
    expect(series.at(-1)!.at.x).toBeCloseTo(plane.points.rampTop.x, 6);
    series.slice(1).forEach(({ at, along }, i) => {
      const before = series[i]!;
      expect(at.x).toBeCloseTo(rampXAt(plane.ramp, at.y), 6);
      const chord = Math.hypot(at.x - before.at.x, at.y - before.at.y);
      expect(along - before.along).toBeGreaterThanOrEqual(chord - 1e-9);
      expect(along - before.along).toBeLessThan(chord + 0.01);
    });
  }
});

test("chokes are the lowest places of every stretch that is narrower than what came before", () => {
  const stretch = (widths: number[]) =>
    throatChokes(
      widths.map((width, along) => ({ along, width, at: { x: along, y: 0 }, nearest: "iron" as const })),
    ).map(({ station, by }) => [station.along, Math.round(by * 1e6) / 1e6]);
  expect(stretch([1, 2, 3, 4])).toEqual([]);
  expect(stretch([1, 2, 1.95, 3])).toEqual([]);
  expect(stretch([1, 2, 1.5, 1.2, 1.6, 3, 2.5, 2.6, 2, 5, 4])).toEqual([
    [3, 0.8],
    [8, 1],
    [10, 1],
  ]);
  for (const plane of planes) {
    const found = throatChokes(throatSeries(plane));
    if (plane.throat.by <= 0.1) expect(found).toEqual([]);
    else expect(found.map(({ by }) => by)).toContain(plane.throat.by);
  }
});

test("a throat that the cap iron's hump all but closes is stopped, though it narrows more at the pin further up", () => {
  const plane = elevation(designWith({ "bed.angle": 60, "ramp.shape": "straight", "ramp.angle": 80 }));
  expect(plane.throat.left).toBeLessThan(0.5);
  expect(checkWithoutCures(plane)).toContainEqual(
    expect.objectContaining({ code: "throat-narrowing", severity: "stop" }),
  );
});

test("the throat's figure is the fall of the series that takes the largest share of what was there", () => {
  const choking = elevation(designWith({ "bed.angle": 60, "ramp.shape": "straight", "ramp.angle": 80 }));
  expect(choking.throat.by).toBeGreaterThan(0.1);
  for (const plane of [...planes, choking]) {
    const series = throatSeries(plane);
    const widest = series.map((_, i) => Math.max(...series.slice(0, i + 1).map((s) => s.width)));
    const shares = series.map(({ width }, i) => (widest[i]! > 0 ? (widest[i]! - width) / widest[i]! : 0));
    const worst = shares.indexOf(Math.max(...shares));
    expect(plane.throat.by).toBe(widest[worst]! - series[worst]!.width);
    if (plane.throat.by === 0) expect(plane.throat).toEqual({ by: 0, left: series[0]!.width, at: series[0]!.at });
    if (plane.throat.by > 0) expect(series.find(({ at }) => at.x === plane.throat.at.x)!.width).toBe(plane.throat.left);
  }
});

test("a ramp that passes before the toe ends at the top's height: its throat has a width there, and no more above it", () => {
  const plane = elevation(designWith({ ...WORKED, "ramp.angle": 45, "mouth.fromToe": 40 }));
  const { height } = plane.design.body;
  expect(plane.points.rampTop.x).toBeLessThan(0);
  expect(plane.points.rampTop.y).toBeCloseTo(height, 9);
  expect(throatSeries(plane).at(-1)!.along).toBeCloseTo(height * Math.SQRT2, 9);
});

test("a ramp under an arched top ends on it, below its height", () => {
  const plane = elevation(designWith({ ...WORKED, "body.outline": "arched" }));
  const { rampTop } = plane.points;
  expect(rampTop.x).toBeCloseTo(rampXAt(plane.ramp, rampTop.y), 9);
  // On the front arc, which is level at the crown: its centre lies under the crown, as far from the toe's end as from it.
  const { crownX, height, toeHeight } = plane.top;
  const radius = (crownX ** 2 + (height - toeHeight) ** 2) / (2 * (height - toeHeight));
  expect(Math.hypot(rampTop.x - crownX, rampTop.y - (height - radius))).toBeCloseTo(radius, 9);
  expect(rampTop.y).toBeLessThan(height - 0.1);
});

test("a curved ramp is judged as a straight one is, and a narrowing that fingers reach is said to be let pass", () => {
  const curved = (wearAngle: number) =>
    elevation(designWith({ "bed.angle": 51, "ramp.radius": 60, "ramp.wearAngle": wearAngle, "ramp.wearHeight": 35 }));
  const [wide, narrow] = [curved(75), curved(85)];
  expect(wide.throat.by).toBeGreaterThan(0.37);
  expect(passedChecks(wide).find(({ code }) => code === "throat-narrowing")).toMatchObject({
    subject: "throat-where-it-narrows",
    value: wide.throat.left,
    limit: 16,
  });
  expect(narrow.throat.left).toBeLessThan(16);
  expect(checkWithoutCures(narrow)).toContainEqual(expect.objectContaining({ code: "throat-narrowing", limit: 0.1 }));
});

test("a narrowing out of the fingers' reach is told, though one further up takes a larger share", () => {
  const series = [10, 9.5, 20, 17].map((width, y) => ({ width, at: { x: 0, y } }));
  expect(worstNarrowing(series)).toEqual({ by: 0.5, left: 9.5, at: { x: 0, y: 1 } });
  const wide = [10, 9.95, 20, 17].map((width, y) => ({ width, at: { x: 0, y } }));
  expect(worstNarrowing(wide)).toMatchObject({ by: 3, left: 17 });
});
