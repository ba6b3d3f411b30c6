// Outlines: closed, counter-clockwise, and their exact area the one that ever finer facets come to.
import {
  arc,
  circleOutline,
  distance,
  line,
  type Outline,
  outlineArea,
  type Point,
  point,
  pointAlong,
  reverseOutline,
  segmentLength,
  tessellate,
} from "@lamplane/geometry";
import { blocksAt, cheekShape, elevation } from "@lamplane/parameters/elevation";
import { describe, expect, test } from "vitest";
import { capIronOutline, screwHeadOutline } from "../../../packages/parameters/src/elevation/iron-parts.ts";
import { isBuildable } from "../../support/buildable.ts";
import { type Changes, designWith, randomDesigns } from "../../support/designs.ts";

const planes = randomDesigns(3, 120, isBuildable).map(({ design }) => elevation(design));
const outlines: [string, Outline][] = planes.flatMap((plane) => [
  ...(["blank", "glued", "trued"] as const).flatMap((stage): [string, Outline][] => {
    const { front, bed, throat } = blocksAt(plane, stage);
    return [
      [`${stage} front`, front],
      [`${stage} bed`, bed],
      [`${stage} throat`, throat],
      [`${stage} cheek`, cheekShape(plane, stage).boundary],
    ];
  }),
  ["wedge", plane.wedge] as [string, Outline],
  ["iron", plane.iron] as [string, Outline],
  ["pin", plane.pinSection] as [string, Outline],
]);

const shoelace = (points: readonly Point[]): number =>
  points.reduce((sum, p, i) => {
    const q = points[(i + 1) % points.length]!;
    return sum + p.x * q.y - q.x * p.y;
  }, 0) / 2;

/** Names of the outlines a rule fails on. */
const failing = (rule: (outline: Outline) => boolean, over = outlines) => [
  ...new Set(over.filter(([, outline]) => !rule(outline)).map(([name]) => name)),
];

const closed = (outline: Outline): boolean =>
  outline.length > 1 && outline.every((s, i) => distance(s.to, outline[(i + 1) % outline.length]!.from) < 1e-6);
const arcsTrue = (outline: Outline): boolean =>
  outline.every((s) => {
    if (s.kind === "line") return segmentLength(s) > 1e-6;
    const swept = pointAlong(s, 1 - 1e-12);
    return distance(swept, s.to) < 1e-6 && Math.abs(distance(s.to, s.centre) - s.radius) < 1e-6;
  });
const facetsComeToIt = (outline: Outline): boolean => {
  const exact = outlineArea(outline);
  const arcs = outline.reduce((sum, s) => sum + (s.kind === "arc" ? segmentLength(s) : 0), 0);
  return [0.1, 0.005, 1e-5].every(
    (error) => Math.abs(shoelace(tessellate(outline, error)) - exact) <= error * arcs + 1e-6,
  );
};

test("random designs have arched tops and curved ramps among them", () => {
  expect(outlines.filter(([, o]) => o.some((s) => s.kind === "arc")).length).toBeGreaterThan(200);
});
test("outlines are closed", () => expect(failing(closed)).toEqual([]));
test("outlines run counter-clockwise", () => expect(failing((o) => outlineArea(o) > 0)).toEqual([]));
test("arcs end where they say, and no segment is a point", () => expect(failing(arcsTrue)).toEqual([]));
test("facets come to the exact area", () => expect(failing(facetsComeToIt)).toEqual([]));
test("blocks and throat together are the side of the core", () => {
  for (const plane of planes) {
    const { front, bed, throat } = blocksAt(plane, "trued");
    const core = [front, bed, throat].reduce((sum, outline) => sum + outlineArea(outline), 0);
    expect(core / outlineArea(cheekShape(plane, "trued").boundary)).toBeCloseTo(1, 9);
  }
});

describe("an outline known beforehand", () => {
  const half = [line(point(-2, 0), point(2, 0)), arc(point(2, 0), point(-2, 0), point(0, 0), 180)];

  test("half a disc of radius 2 holds 2 π", () => expect(outlineArea(half)).toBeCloseTo(2 * Math.PI, 12));
  test("run the other way it holds as much less", () =>
    expect(outlineArea(reverseOutline(half))).toBeCloseTo(-2 * Math.PI, 12));
  test("a circle holds π r²", () =>
    expect(outlineArea(circleOutline({ centre: point(5, 7), radius: 3 }))).toBeCloseTo(9 * Math.PI, 9));
  test("the rules above catch one that is open, one run backwards and one whose arc is off", () => {
    const named = (outline: Outline): [string, Outline][] => [["it", outline]];
    expect(failing(closed, named([half[0]!, arc(point(2, 1e-3), point(-2, 0), point(0, 0), 180)]))).toEqual(["it"]);
    expect(failing((o) => outlineArea(o) > 0, named(reverseOutline(half)))).toEqual(["it"]);
    expect(failing(arcsTrue, named([half[0]!, arc(point(2, 0), point(-2, 0), point(0, 0), 179)]))).toEqual(["it"]);
    expect(
      failing(facetsComeToIt, named([half[0]!, { ...arc(point(2, 0), point(-2, 0), point(0, 0), 180), radius: 2.2 }])),
    ).toEqual(["it"]);
  });
});

test("an arc told by its ends alone goes the shorter way round, and a half turn counter-clockwise", () => {
  const centre = point(3, -2);
  const at = (deg: number) =>
    point(centre.x + 5 * Math.cos((deg * Math.PI) / 180), centre.y + 5 * Math.sin((deg * Math.PI) / 180));
  for (let start = -180; start < 180; start += 15)
    for (const sweep of [-179, -91, -1, 1, 60, 91, 179])
      expect(arc(at(start), at(start + sweep), centre).sweep, `${start} ${sweep}`).toBeCloseTo(sweep, 9);
  expect(arc(point(8, -2), point(-2, -2), centre).sweep).toBe(180);
  expect(arc(point(-2, -2), point(8, -2), centre).sweep).toBe(180);
});

test("a cap iron and a screw's head are there where they have a size, and not where any of it is 0", () => {
  const parts = (changes: Changes) => {
    const { design, frame } = elevation(designWith(changes));
    return [capIronOutline(design, frame), screwHeadOutline(design, frame)].map((outline) => outline !== undefined);
  };
  const head = { "capIron.screwHead.diameter": 1, "capIron.screwHead.height": 1, "capIron.thickness": 1 };
  expect(parts(head)).toEqual([true, true]);
  for (const [size, there] of [
    ["capIron.thickness", [false, false]],
    ["capIron.screwHead.diameter", [true, false]],
    ["capIron.screwHead.height", [true, false]],
  ] as const)
    expect(parts({ ...head, [size]: 0 }), size).toEqual(there);
  const { design, frame } = elevation(designWith({ ...head, "capIron.hump": 0 }));
  expect(outlineArea(screwHeadOutline(design, frame)!)).toBeCloseTo(1, 9);
});
