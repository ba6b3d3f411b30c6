// Laws of the solids over random designs that can be built, each at one stage in turn: few in every run, many in the long one.

import {
  CHORD_ERROR,
  type Outline,
  outlineArea,
  type Point,
  segmentLength,
  shapeArea,
  tessellate,
} from "@lamplane/geometry";
import { blocksAt, cheekShape, type Elevation, elevation, type Stage } from "@lamplane/parameters/elevation";
import { bodySolid, type Part, partsOf } from "@lamplane/parameters/solids";
import { describe, expect, test } from "vitest";
import { isBuildable } from "../support/buildable.ts";
import { type Changes, randomDesigns } from "../support/designs.ts";
import {
  countEdgeFaults,
  manifoldOf,
  overlapVolume,
  solidTriangles,
  unionVolume,
  volumeOf,
} from "../support/meshes.ts";

const STAGES: readonly Stage[] = ["blank", "glued", "trued"];
/** Volume that parts may share, mm³: a speck of rounding. */
const SPECK = 1e-3;

interface Case {
  readonly changes: Changes;
  readonly stage: Stage;
  readonly plane: Elevation;
  readonly parts: ReadonlyMap<string, Part>;
}

/** Random designs as solids; `broken` tells those that become none, with the design that shows it. */
function makeCases(seed: number, count: number) {
  const broken: { what: string; stage: Stage; changes: Changes }[] = [];
  const cases: Case[] = randomDesigns(seed, count, isBuildable).flatMap(({ changes, design }, i) => {
    const stage = STAGES[i % STAGES.length]!;
    try {
      const plane = elevation(design);
      return [{ changes, stage, plane, parts: new Map(partsOf(plane, stage).map((part) => [part.name, part])) }];
    } catch (error) {
      broken.push({ what: (error as Error).message, stage, changes });
      return [];
    }
  });
  return { cases, broken };
}

/** Runs a law over the cases and tells how many break it, and the first that do. */
const lawOver =
  (cases: readonly Case[]) =>
  (law: (c: Case) => string[]): void => {
    const faults = cases.flatMap((c) => law(c).map((what) => ({ what, stage: c.stage, changes: c.changes })));
    expect({ faults: faults.length, first: faults.slice(0, 3) }).toEqual({ faults: 0, first: [] });
  };

const shoelace = (points: readonly Point[]): number =>
  points.reduce((sum, p, i) => {
    const [q, o] = [points[(i + 1) % points.length]!, points[0]!];
    return sum + (p.x - o.x) * (q.y - o.y) - (q.x - o.x) * (p.y - o.y);
  }, 0) / 2;

const facettedArea = (outline: Outline) => shoelace(tessellate(outline));
const arcsLength = (outlines: readonly Outline[]) =>
  outlines.flat().reduce((sum, s) => sum + (s.kind === "arc" ? segmentLength(s) : 0), 0);
const circumference = (circles: readonly { radius: number }[]) =>
  circles.reduce((sum, { radius }) => sum + 2 * Math.PI * radius, 0);

/** The prisms: area of their facets and of their exact outlines, length of their arcs, width. */
function prisms({ plane, stage }: Case) {
  const { core, cheek } = plane.widths;
  const { front } = blocksAt(plane, stage);
  const side = cheekShape(plane, stage);
  const holes = side.circles.reduce((sum, circle) => sum + ringArea(circle.radius), 0);
  const cheeks = {
    facets: facettedArea(side.boundary) - holes,
    exact: shapeArea(side),
    arcs: arcsLength([side.boundary]) + circumference(side.circles),
    width: cheek,
  };
  const plain = (outline: Outline, width: number) => ({
    facets: facettedArea(outline),
    exact: outlineArea(outline),
    arcs: arcsLength([outline]),
    width,
  });
  return {
    "front-block": plain(front, core),
    wedge: plain(plane.wedge, core - plane.design.wedge.clearance),
    "cheek-left": cheeks,
    "cheek-right": cheeks,
  };
}

/** Area of a circle in the fewest equal chords that lie within the chord error, in two half turns. */
function ringArea(radius: number): number {
  const turn = Math.min(2 * Math.acos(1 - CHORD_ERROR / radius), Math.PI / 4);
  const chords = 2 * Math.ceil(Math.PI / turn - 1e-9);
  return (chords / 2) * radius * radius * Math.sin((2 * Math.PI) / chords);
}

/** The laws as tests. @param seed of the random designs @param count of them */
export const testSolidLaws = (seed: number, count: number) =>
  describe(`${count} random designs, a stage each`, () => {
    const { cases, broken } = makeCases(seed, count);
    const holds = lawOver(cases);

    test("become solids", () => {
      expect({ broken: broken.length, first: broken.slice(0, 3) }).toEqual({ broken: 0, first: [] });
      expect(cases).toHaveLength(count);
    });

    test("every part, standing and lying, is closed as an STL file holds it", () =>
      holds(({ parts }) =>
        [...parts.values()].flatMap(({ name, inPlace, lying }) =>
          (Object.entries({ inPlace, lying }) as [string, Part["inPlace"]][]).flatMap(([how, solid]) => {
            const faults = countEdgeFaults(solidTriangles(solid));
            return faults > 0 ? [`${name} ${how}: ${faults} edges`] : [];
          }),
        ),
      ));

    test("so is the body", () =>
      holds(({ plane, stage }) => {
        if (stage === "blank") return [];
        const faults = countEdgeFaults(solidTriangles(bodySolid(plane, stage).solid));
        return faults > 0 ? [`body: ${faults} edges`] : [];
      }));

    test("a prism holds the area of its facets times its width", () =>
      holds((c) =>
        Object.entries(prisms(c)).flatMap(([name, { facets, width }]) => {
          const [found, wanted] = [volumeOf(solidTriangles(c.parts.get(name)!.inPlace)), facets * width];
          return Math.abs(found / wanted - 1) <= 1e-6 ? [] : [`${name}: ${found} mm³, facets say ${wanted}`];
        }),
      ));

    test("and that of its exact outline, but for the chords", () =>
      holds((c) =>
        Object.entries(prisms(c)).flatMap(([name, { exact, arcs, width }]) => {
          const off = Math.abs(c.parts.get(name)!.volume - exact * width);
          const bound = arcs * CHORD_ERROR * width + 1e-6 * exact * width;
          return off <= bound ? [] : [`${name}: ${off} mm³ off its exact outline, chords allow ${bound}`];
        }),
      ));

    test("no two parts are in the same place", () => {
      const wood = ["front-block", "bed-block", "cheek-left", "cheek-right"];
      const pairs = wood.flatMap((a, i) => [...wood.slice(i + 1), "wedge", "cross-pin"].map((b) => [a, b] as const));
      holds(({ parts }) => {
        const solids = new Map([...parts].map(([name, { inPlace }]) => [name, manifoldOf(inPlace)]));
        const faults = pairs.flatMap(([a, b]) => {
          const shared = overlapVolume(solids.get(a)!, solids.get(b)!);
          return shared <= SPECK ? [] : [`${a} and ${b} share ${shared} mm³`];
        });
        for (const solid of solids.values()) solid.delete();
        return faults;
      });
    });

    test("the body is its blocks and cheeks", () =>
      holds(({ plane, stage, parts }) => {
        if (stage === "blank") return [];
        const wood = ["front-block", "bed-block", "cheek-left", "cheek-right"].map((name) => parts.get(name)!);
        const body = bodySolid(plane, stage);
        const sum = wood.reduce((total, { volume }) => total + volume, 0);
        // The body's arched top is chorded piece by piece, a cheek's as a whole.
        const arched = stage === "trued" ? arcsLength([plane.topChain]) * CHORD_ERROR * plane.widths.body : 0;
        const solids = wood.map(({ inPlace }) => manifoldOf(inPlace));
        const united = unionVolume(solids);
        for (const solid of solids) solid.delete();
        return [
          ...(Math.abs(body.volume - sum) <= SPECK + arched ? [] : [`body ${body.volume} mm³, parts ${sum}`]),
          ...(Math.abs(body.volume - united) <= 1e-6 * sum + arched
            ? []
            : [`body ${body.volume} mm³, united ${united}`]),
        ];
      }));
  });
