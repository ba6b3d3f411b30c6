// Laws of places: two frames tell of one plane, things moved about keep their shape, and a small change moves no point far.
import { checkWithoutCures } from "@lamplane/bench/checks";
import {
  cosDeg,
  cotDeg,
  distance,
  outlineArea,
  point,
  tanDeg,
  transformOutline,
  transformPoint,
} from "@lamplane/geometry";
import { valueAt, withValue } from "@lamplane/parameters/design";
import {
  type Elevation,
  elevation,
  figureValue,
  ironToPlane,
  pegHoles,
  planeToIron,
  rampAngleAt,
  rampXAt,
  stageExtent,
} from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { isBuildable } from "../support/buildable.ts";
import { type Changes, designWith, randomDesigns, WORKED } from "../support/designs.ts";
import { makeExplicit, NUMBERS, planeWithValueMoved } from "../support/explicit.ts";

const planes = randomDesigns(83, 60, isBuildable).map(({ design }) => elevation(design));
const anyPlane = fc.constantFrom(...planes);
const mm = fc.double({ min: -300, max: 300, noNaN: true });
const anyPoint = fc.tuple(mm, mm).map(([x, y]) => point(x, y));
const anyPlace = fc.record({
  turn: fc.double({ min: -360, max: 360, noNaN: true }),
  mirrored: fc.boolean(),
  shift: anyPoint,
});

describe("the iron's frame and the plane's", () => {
  test("lead back to where one began, and keep distances", () => {
    fc.assert(
      fc.property(anyPlane, anyPoint, anyPoint, ({ frame }, a, b) => {
        const { s, v } = planeToIron(frame, a);
        expect(distance(ironToPlane(frame, s, v), a)).toBeLessThan(1e-9);
        const other = planeToIron(frame, b);
        expect(Math.hypot(other.s - s, other.v - v)).toBeCloseTo(distance(a, b), 9);
      }),
    );
  });
  test("the edge is 0, 0 in the iron's; s runs up the bed toward the heel, v toward the toe", () => {
    for (const { frame, points } of planes) {
      const edge = planeToIron(frame, points.edge);
      expect(Math.hypot(edge.s, edge.v)).toBeLessThan(1e-12);
      expect(ironToPlane(frame, 1, 0).x).toBeGreaterThan(points.edge.x);
      expect(ironToPlane(frame, 0, 1).x).toBeLessThan(points.edge.x);
      expect(ironToPlane(frame, 1, 1).y).toBeGreaterThan(0);
    }
  });
  test("every place on the bed lies one thickness under the iron's face", () => {
    for (const { design, frame, points } of planes)
      for (const place of [points.bedTop, points.bedFoot, points.bedTip, points.bedChamfer, points.bevelHeel])
        expect(planeToIron(frame, place).v).toBeCloseTo(-design.iron.thickness, 9);
  });
  test("an open wedge's length takes its lower side 25 mm out of the top", () => {
    for (const { design, frame, wedgeLength, top } of planes.filter(({ design: d }) => d.body.outline === "flat")) {
      expect(design.wedge.length).toBe("auto");
      const out = ironToPlane(frame, design.wedge.tipFromEdge + wedgeLength - 25, design.capIron.thickness);
      expect(out.y).toBeCloseTo(top.height, 6);
    }
  });
});

test("the wedge from the side: its tip and butt as thick as they are told, its sides at its angle", () => {
  for (const { design, wedge, wedgeLength } of planes) {
    const [tipLow, buttLow, buttHigh, tipHigh] = wedge.map(({ from }) => from);
    const { tip, angle } = design.wedge;
    expect(distance(tipLow!, tipHigh!)).toBeCloseTo(tip, 9);
    expect(distance(buttLow!, buttHigh!)).toBeCloseTo(tip + wedgeLength * tanDeg(angle), 9);
    expect(distance(tipLow!, buttLow!)).toBeCloseTo(wedgeLength, 9);
  }
});

test("things turned, mirrored and shifted keep their lengths and areas, and stay counter-clockwise", () => {
  fc.assert(
    fc.property(anyPlane, anyPlace, anyPoint, anyPoint, (plane, place, a, b) => {
      expect(distance(transformPoint(a, place), transformPoint(b, place))).toBeCloseTo(distance(a, b), 9);
      for (const outline of [plane.wedge, plane.pinSection]) {
        const placed = transformOutline(outline, place);
        expect(outlineArea(placed)).toBeCloseTo(outlineArea(outline), 6);
        placed.forEach(
          (segment, i) => void expect(distance(segment.to, placed[(i + 1) % placed.length]!.from)).toBeLessThan(1e-9),
        );
      }
    }),
  );
});

test("the ramp's angle at a height is the slope of its x there", () => {
  for (const { ramp, design } of planes)
    for (let share = 0.013; share < 1; share += 0.09) {
      const [y, step] = [share * design.body.height, 1e-5];
      const slope = (rampXAt(ramp, y + step) - rampXAt(ramp, y - step)) / (2 * step);
      expect(slope).toBeCloseTo(-cotDeg(rampAngleAt(ramp, y)), 4);
      expect(rampXAt(ramp, 0)).toBe(ramp.foot.x);
    }
});

test("a flatted pin keeps half its depth from the wedge wherever it stands; its hole is round its axis", () => {
  for (const { design, pin, pinSize, wedge, pinHole, pinSection } of planes) {
    const [, , buttHigh, tipHigh] = wedge.map(({ from }) => from);
    const along = distance(buttHigh!, tipHigh!);
    const off =
      ((pin.centre.x - tipHigh!.x) * (buttHigh!.y - tipHigh!.y) -
        (pin.centre.y - tipHigh!.y) * (buttHigh!.x - tipHigh!.x)) /
      along;
    expect(-off).toBeCloseTo(pinSize.diameter / 2, 9);
    expect(distance(pinHole.centre, pin.centre)).toBe(0);
    expect(2 * pinHole.radius).toBeCloseTo(pinSize.tenon + design.pin.tenonClearance, 12);
    for (const { from } of pinSection)
      expect(distance(from, pin.centre)).toBeLessThan(pinSize.diameter * Math.SQRT1_2 + 1e-9);
  }
});

test("a flatted pin that turns takes its corner's room, a round one no more than it lies in", () => {
  for (const plane of planes) {
    const { section } = plane.design.pin;
    const { diameter } = plane.pinSize;
    const corner = section === "flatted" ? diameter * Math.SQRT1_2 : diameter / 2;
    expect(figureValue(plane, "pinToRampTurning")).toBeCloseTo(
      figureValue(plane, "pinToRamp")! + diameter / 2 - corner,
      9,
    );
  }
});

test("the pin covers its flat's width of the wedge, a round one none: below, cover and above are the wedge's length", () => {
  for (const plane of planes) {
    const { section } = plane.design.pin;
    const { diameter } = plane.pinSize;
    const cover = section === "flatted" ? diameter * cosDeg(plane.design.wedge.angle) : 0;
    const [below, above] = [figureValue(plane, "wedgeBelowPin")!, figureValue(plane, "wedgeAbovePin")!];
    expect(below + cover + above).toBeCloseTo(plane.wedgeLength, 9);
    expect(below + cover / 2).toBeCloseTo(plane.pin.contactS - plane.design.wedge.tipFromEdge, 9);
  }
});

test("the pin touches the wedge at the foot of the perpendicular from its axis", () => {
  for (const { frame, wedge, pin } of planes) {
    const [, , buttHigh, tipHigh] = wedge.map(({ from }) => from);
    const [dx, dy] = [buttHigh!.x - tipHigh!.x, buttHigh!.y - tipHigh!.y];
    const share = ((pin.centre.x - tipHigh!.x) * dx + (pin.centre.y - tipHigh!.y) * dy) / (dx * dx + dy * dy);
    const foot = point(tipHigh!.x + share * dx, tipHigh!.y + share * dy);
    expect(planeToIron(frame, foot).s).toBeCloseTo(pin.contactS, 9);
  }
});

test("pegs stand in the middle of the waste at each end, between the block's end and the finished one", () => {
  const pegged = planes.filter(({ design }) => design.pegs.perEnd > 0);
  expect(pegged.length).toBeGreaterThan(10);
  for (const plane of pegged) {
    const { blockToe, blockHeel } = stageExtent(plane, "blank");
    const [low, high] = [blockToe / 2, (blockHeel + plane.design.body.length) / 2];
    const places = [...new Set(pegHoles(plane).map(({ centre }) => centre.x.toFixed(6)))];
    expect(places).toEqual([low.toFixed(6), high.toFixed(6)]);
  }
});

describe("a small change moves no point far", () => {
  /** Points move no further than so many times as much as a length, or so many mm to a degree. */
  const MOST = 60;
  /** The place where a minimum is taken may change over to another: its value is steady, its place is not. */
  const CHANGES_OVER = new Set(["throatNarrowest"]);
  const furthest = (a: Elevation, b: Elevation) =>
    Math.max(
      ...Object.entries(a.points).map(([name, here]) =>
        CHANGES_OVER.has(name) ? 0 : distance(here, b.points[name as keyof Elevation["points"]]),
      ),
    );
  const SMALL = 1e-4;
  const shapes = NUMBERS.filter(({ row }) => row.quantity === "length" || row.quantity === "angle");

  /** No recess at 0, one above it; a ramp that is straight up to a bed of 50. */
  const standsAtAJump = (design: Design, path: string): boolean =>
    path === "bed.angle"
      ? design.ramp.shape === "auto" && design.bed.angle === 50
      : /^capIron.(thickness|screwHead)/.test(path) && valueAt(design, path) === 0;

  const jumpsOf = (design: Design): string[] => {
    const here = elevation(design);
    return shapes
      .filter(({ path }) => !standsAtAJump(design, path))
      .flatMap(({ path }) =>
        [SMALL, -SMALL].flatMap((by) => {
          const there = planeWithValueMoved(design, path, by);
          const moved = there ? furthest(here, there) / SMALL : 0;
          return moved > MOST ? [`${path} ${by}: ${moved.toFixed(0)}`] : [];
        }),
      );
  };
  test("of a plane with nothing left open, whatever the parameter", () => {
    const jumps = planes.flatMap(({ design }) => jumpsOf(makeExplicit(design)));
    expect(jumps).toEqual([]);
  });
  test("of a plane whose pin and radius follow", () => {
    const open = planes.filter(({ design }) => design.pin.height === "auto").slice(0, 30);
    expect(open.length).toBeGreaterThan(20);
    expect(open.flatMap(({ design }) => jumpsOf(design))).toEqual([]);
  });

  /** Where a plane does jump, and why: it is then made another way. */
  const KNOWN: readonly (readonly [why: string, changes: Changes, parameter: string])[] = [
    ["ramp.shape auto turns curved over a bed of 50", { "bed.angle": 50 }, "bed.angle"],
    ["a screw's head wants a recess", { "capIron.screwHead.diameter": 0 }, "capIron.screwHead.diameter"],
    ["and so does its height", { "capIron.screwHead.height": 0 }, "capIron.screwHead.height"],
    ["a cap iron wants a recess", { "capIron.thickness": 0 }, "capIron.thickness"],
    [
      "an arch falls flat where it is not possible",
      { "body.outline": "arched", "body.toeHeight": 58 },
      "body.toeHeight",
    ],
  ];
  test.each(KNOWN)("but for the known jumps: %s", (_, changes, parameter) => {
    const design = designWith({ ...WORKED, ...changes });
    const whole = elevation(design);
    const there = planeWithValueMoved(design, parameter, SMALL)!;
    const top = (plane: Elevation) => plane.topChain.length;
    expect(furthest(whole, there) > 1 || top(whole) !== top(there)).toBe(true);
  });
});

test("a design read off its own elevation is the same plane: what auto has solved stays solved", () => {
  for (const { design, points, recess } of planes) {
    const again = elevation(makeExplicit(design));
    for (const [name, here] of Object.entries(points))
      expect(distance(here, again.points[name as keyof Elevation["points"]]), name).toBeLessThan(1e-5);
    expect(again.recess).toEqual(recess);
  }
});

test("the checks judge by the values, not by who set them: a buildable plane made explicit is buildable", () => {
  for (const { design } of planes) {
    const stops = checkWithoutCures(elevation(withValue(makeExplicit(design), "pin.tenonLength", "auto")));
    expect(stops.filter(({ severity }) => severity === "stop")).toEqual([]);
  }
});
