// The page's views as plain data, at every step of the build: a number stands at a length of that size, from edge to edge; names lie in
// their parts; the frame holds all that is drawn; parts do not lie in each other.
import { readFileSync } from "node:fs";
import { asBuiltPlane } from "@lamplane/bench";
import { readDesign } from "@lamplane/parameters/design";
import type { Design } from "@lamplane/parameters/table";
import { areaPathsD, FillRule, intersectD, type PathsD } from "clipper2-ts";
import { describe, expect, test } from "vitest";
import { STAGES } from "../../packages/viewer/src/protocol/build-steps.ts";
import type { DimensionShape, View, ViewMark } from "../../packages/viewer/src/protocol/view.ts";
import { sheetPlane } from "../../packages/viewer/src/worker/sheet-plane.ts";
import { distanceToChord, type Place } from "../support/drawn-lines.ts";
import { areaOf, cornersOf, endsOf, isWithin, viewNamed } from "../support/view-outlines.ts";

function example(name: string): Design {
  const file = `examples/${name}.yaml`;
  const reading = readDesign(readFileSync(file), file);
  if (!reading.ok) throw new Error(JSON.stringify(reading.faults));
  return reading.design;
}

/** A path is rounded to a thousandth of a mm. */
const ROUNDED = 0.002;

/** The middle of the screw's head; where a curved ramp would leave a flat top; thicknesses of a tapered iron, where it is measured. */
const TO_NO_CORNER = new Set(["capIron.screwHead.fromEdge", "ramp.exitAngle", "iron.thickness", "iron.thicknessAtTop"]);
/** Measured along the face, which leans by its taper. */
const ALONG_FACE = /^wedge\.(tipFromEdge|length)$/;
/** What the frame of each view is drawn round. */
const HOLDING: Partial<Record<View["name"], readonly string[]>> = {
  elevation: ["wood", "wood-far", "steel", "wedge"],
  stack: ["steel", "wedge", "pin"],
  end: ["wood", "waste", "steel", "wedge"],
};
/** In the hollow that the recess makes. */
const AT_NOTHING = new Set(["recess.depth"]);

describe.each(["apprentice-smoother", "trestle-jack", "figured-finisher", "layered-smoother", "tapered-panel"])(
  "%s",
  (name) => {
    const design = example(name);
    const plane = asBuiltPlane(design);
    const sheets = STAGES.map((stage) => sheetPlane(design, plane, stage));
    const all = sheets.flatMap(({ stage, views, points }) =>
      views.map((view) => ({ view, stage, points: Object.values(points), at: `${stage}, ${view.name}` })),
    );

    test("a length is as long as its number, an angle as wide", () => {
      const off = all.flatMap(({ view, at }) =>
        view.dimensions.flatMap(({ id, unit, value, shape }) => {
          if (shape.kind === "leader") return [];
          const size =
            shape.kind === "angle"
              ? Math.abs(shape.toAngle - shape.fromAngle)
              : sizeAlong(shape.from, shape.to, shape.side);
          expect(unit).toBe(shape.kind === "angle" ? "°" : "mm");
          return Math.abs(size - value) < (ALONG_FACE.test(id) ? 0.05 : 1e-6)
            ? []
            : [`${at}: ${id} ${value} is ${size}`];
        }),
      );
      expect(off).toEqual([]);
    });

    test("a length begins and ends at a corner, an end or a named point of the plane, an angle at one", () => {
      const off = all.flatMap(({ view, stage, points, at }) => {
        // before the blocks are slid together, the finished plane that is measured is not what is drawn
        if (view.name === "elevation" && STAGES.indexOf(stage) < STAGES.indexOf("dry-fit")) return [];
        const ofPlane = view.name === "elevation" || view.name === "mouth" ? points : [];
        const places = [...view.marks.flatMap(endsOf), ...ofPlane];
        return view.dimensions.flatMap(({ id, shape }) => {
          if (shape.kind === "leader" || TO_NO_CORNER.has(id)) return [];
          const ends = shape.kind === "angle" ? [shape.at] : [shape.from, shape.to];
          const least = ends.map((end) => Math.min(...places.map((place) => offBy(shape, end, place))));
          return Math.max(...least) < ROUNDED ? [] : [`${at}: ${id} ${least}`];
        });
      });
      expect(off).toEqual([]);
    });

    test("a number that is led to points at what is drawn", () => {
      const off = all.flatMap(({ view, at }) => {
        const outlines = view.marks.map(cornersOf);
        return view.dimensions.flatMap(({ id, shape }) => {
          if (shape.kind !== "leader" || AT_NOTHING.has(id)) return [];
          const hits = outlines.some(
            (corners) =>
              isWithin(shape.at, corners) ||
              corners.some((a, i) => distanceToChord(shape.at, [a, corners[(i + 1) % corners.length]!]) < 0.05),
          );
          return hits ? [] : [`${at}: ${id}`];
        });
      });
      expect(off).toEqual([]);
    });

    test("names lie in the blocks that they name", () => {
      for (const { stage, views } of sheets) {
        const { marks, labels } = viewNamed(views, "elevation");
        for (const { text, at } of labels) {
          const part = { "front block": "ramp", "bed block": "bed" }[text];
          const blocks = marks.filter((mark) => mark.area === "wood" && (!part || mark.part === part));
          expect(
            blocks.some((mark) => isWithin(at, cornersOf(mark))),
            `${stage}: ${text}`,
          ).toBe(true);
        }
      }
    });

    test("the frame of elevation, stack and end touches what is drawn on every side, and holds all wood and steel", () => {
      for (const { view, at } of all) {
        if (view.name === "mouth") continue;
        const places = view.marks
          .filter(({ area }) => area && (HOLDING[view.name] ?? []).includes(area))
          .flatMap(cornersOf);
        const { min, max } = view.box;
        const reached = boundsOf(places);
        if (view.name === "elevation" && /cuts|bed|recess/.test(at)) continue; // blocks slid apart, an offcut above
        expect(min.x, at).toBeLessThanOrEqual(reached.min.x + 0.6);
        expect(max.x, at).toBeGreaterThanOrEqual(reached.max.x - 0.6);
        expect(max.y, at).toBeGreaterThanOrEqual(reached.max.y - 0.6);
        expect(Math.abs(min.x - reached.min.x), `${at}, left`).toBeLessThan(0.6);
        expect(Math.abs(max.x - reached.max.x), `${at}, right`).toBeLessThan(0.6);
        expect(Math.abs(max.y - reached.max.y), `${at}, top`).toBeLessThan(0.6);
        expect(min.y, `${at}, foot`).toBeLessThanOrEqual(reached.min.y + 0.6);
      }
    });

    test("iron, wedge and blocks lie beside each other, not in each other, by Clipper2", () => {
      for (const { stage, views } of sheets.filter(({ views }) =>
        viewNamed(views, "elevation").marks.some(({ area }) => area === "steel"),
      ))
        for (const view of [viewNamed(views, "elevation"), viewNamed(views, "mouth")]) {
          const bodies = view.marks.filter(({ area }) => area && ["wood", "steel", "wedge"].includes(area));
          for (const [i, a] of bodies.entries())
            for (const b of bodies.slice(i + 1)) {
              const common = sharedArea(a, b);
              // the recess lies between the lands: the iron's screw stands in it, seen through the bed
              expect(common, `${stage}, ${view.name}: ${a.part ?? a.area} and ${b.part ?? b.area}`).toBeLessThan(0.5);
            }
        }
    });

    test("across, cheeks and core make up the body; what is ripped lies side by side in the billet", () => {
      for (const { stage, views } of sheets) {
        const { marks, box } = viewNamed(views, "end");
        const whole = (box.max.x - box.min.x) * (box.max.y - box.min.y);
        const pieces = marks.filter(({ area }) => area === "wood" || area === "wood-far");
        for (const [i, a] of pieces.entries())
          for (const b of pieces.slice(i + 1)) expect(sharedArea(a, b), stage).toBeLessThan(1e-3);
        const area = pieces.reduce((sum, mark) => sum + areaOf(cornersOf(mark)), 0);
        expect(area, stage).toBeLessThan(whole * 1.0001);
        if (
          pieces.length === 3 &&
          stage !== "billet" &&
          !marks.some(({ area }) => area === "steel" || area === "waste")
        )
          expect(area, stage).toBeCloseTo(whole, 1);
      }
    });
  },
);

/** How far an end lies off a place: across the line that is measured along. */
function offBy(shape: DimensionShape, end: Place, place: Place): number {
  if (shape.kind === "angle") return Math.hypot(place.x - end.x, place.y - end.y);
  const isUpright = shape.kind === "along" && (shape.side === "left" || shape.side === "right");
  return Math.abs(isUpright ? place.y - end.y : place.x - end.x);
}

const sizeAlong = (from: Place, to: Place, side: string): number =>
  side === "left" || side === "right" ? Math.abs(to.y - from.y) : Math.abs(to.x - from.x);

const boundsOf = (places: readonly Place[]): View["box"] => ({
  min: { x: Math.min(...places.map(({ x }) => x)), y: Math.min(...places.map(({ y }) => y)) },
  max: { x: Math.max(...places.map(({ x }) => x)), y: Math.max(...places.map(({ y }) => y)) },
});

function sharedArea(a: ViewMark, b: ViewMark): number {
  const [first, second]: PathsD[] = [[cornersOf(a)], [cornersOf(b)]];
  return Math.abs(areaPathsD(intersectD(first!, second!, FillRule.NonZero, 4)));
}
