// Laws of the drawings that a machine reads: they begin at 0, 0, and a cutter reaches into every corner of a flat jig.
import { readFileSync } from "node:fs";
import { outlineArea, type Point, pointsEqual, type Segment } from "@lamplane/geometry";
import { readDesign } from "@lamplane/parameters/design";
import { type Drawing, type DrawingEntry, drawingBounds } from "@lamplane/parameters/drawings";
import { elevation } from "@lamplane/parameters/elevation";
import { partsOf, planeJigs } from "@lamplane/parameters/solids";
import { describe, expect, test } from "vitest";

const CUTTER = 1.5; // radius, mm
/** An example, its jigs cut from sheet by that cutter. */
function sheetPlane(name: string) {
  const read = readDesign(readFileSync(`examples/${name}.yaml`), `${name}.yaml`);
  if (!read.ok) throw new Error(`${name} is not read`);
  const { design } = read;
  return elevation({ ...design, jigs: { ...design.jigs, relief: CUTTER } });
}

const NAMES = ["apprentice-smoother", "trestle-jack", "figured-finisher", "tapered-panel"];

/** Direction in which a segment leaves its beginning, or comes to its end, radians. */
function heading(s: Segment, at: "from" | "to"): number {
  if (s.kind === "line") return Math.atan2(s.to.y - s.from.y, s.to.x - s.from.x);
  return Math.atan2(s[at].y - s.centre.y, s[at].x - s.centre.x) + (Math.sign(s.sweep) * Math.PI) / 2;
}

const turnBetween = (before: Segment, after: Segment): number => {
  const turn = heading(after, "from") - heading(before, "to");
  return Math.atan2(Math.sin(turn), Math.cos(turn));
};

/** Corners that a round cutter outside a boundary, or inside a hole, cannot reach. */
function unreachableCorners(drawing: Drawing): Point[] {
  const cuts = drawing.entries.filter(
    (entry): entry is Extract<DrawingEntry, { kind: "outline" }> => entry.kind === "outline" && entry.work === "CUT",
  );
  return cuts.flatMap(({ outline }, i) => {
    const keepsLeft = outlineArea(outline) > 0 === (i === 0);
    return outline.flatMap((segment, k) => {
      const before = outline.at(k - 1)!;
      expect(pointsEqual(before.to, segment.from)).toBe(true);
      const turn = turnBetween(before, segment) * (keepsLeft ? 1 : -1);
      const reached = segment.kind === "arc" && segment.radius >= CUTTER - 1e-9;
      const wasReached = before.kind === "arc" && before.radius >= CUTTER - 1e-9;
      return turn < -1e-6 && !reached && !wasReached ? [segment.from] : [];
    });
  });
}

describe.each(NAMES)("%s", (name) => {
  const plane = sheetPlane(name);
  test("every drawing of a part or a jig begins at 0, 0", () => {
    const drawings = [...partsOf(plane, "blank"), ...planeJigs(plane)].flatMap(({ drawing }) => drawing ?? []);
    expect(drawings.length).toBeGreaterThanOrEqual(12);
    for (const drawing of drawings) {
      const { min } = drawingBounds(drawing);
      expect([drawing.title, min.x, min.y]).toEqual([drawing.title, expect.closeTo(0, 9), expect.closeTo(0, 9)]);
    }
  });

  test("a cutter reaches into every corner of each flat jig", () => {
    for (const { drawing } of planeJigs(plane))
      if (drawing) expect([drawing.title, unreachableCorners(drawing)]).toEqual([drawing.title, []]);
  });

  test("what is engraved stands inside the jig, and is drawn with single lines", () => {
    for (const { drawing, name } of planeJigs(plane)) {
      if (!drawing) continue;
      const { max } = drawingBounds(drawing);
      const letters = drawing.entries.filter(({ work }) => work === "ENGRAVE");
      expect(letters.length, name).toBeGreaterThan(2);
      for (const entry of letters)
        for (const { from } of entry.kind === "path" ? entry.segments : [])
          expect(from.x > 0 && from.x < max.x && from.y > 0 && from.y < max.y, name).toBe(true);
    }
  });
});

test("a pocket open at an edge runs past it by more than the cutter's radius", () => {
  const plane = sheetPlane("apprentice-smoother");
  const { entries } = partsOf(plane, "blank").find((part) => part.name === "bed-block")!.drawing;
  const ys = (work: string) =>
    entries.flatMap((e) => (e.kind === "outline" && e.work === work ? e.outline.map(({ from }) => from.y) : []));
  const bedTop = Math.max(...ys("MARK"));
  expect(Math.max(...ys("ROUT")) - bedTop).toBeCloseTo(plane.recess!.cornerRadius + 1, 9);
});
