// Drawings of the parts against the plane: their sizes, marks and words; and what moving and scaling a drawing keeps.
import { arc, distance, line, type Outline, outlineArea, point, polygon, type Segment } from "@lamplane/geometry";
import {
  bedBlockDrawing,
  cheekDrawing,
  crossPinDrawing,
  type Drawing,
  type DrawingEntry,
  drawingBounds,
  frontBlockDrawing,
  moveDrawing,
  moveToOrigin,
  scaleDrawing,
  wedgeDrawing,
} from "@lamplane/parameters/drawings";
import { elevation, figureValue } from "@lamplane/parameters/elevation";
import { describe, expect, test } from "vitest";
import { DRAWING_NOTE } from "../../../packages/parameters/src/words/drawings.ts";
import { type Changes, designWith, randomDesigns, WORKED } from "../../support/designs.ts";
import { expectLength, partsOf } from "../../support/figures-in-text.ts";

const sample: Drawing = {
  title: "sample",
  thickness: 12,
  entries: [
    { kind: "outline", work: "CUT", outline: polygon(point(2, 3), point(12, 3), point(12, 9), point(2, 9)) },
    { kind: "outline", work: "ROUT", outline: polygon(point(3, 4), point(5, 4), point(5, 6)), depth: 4 },
    { kind: "circle", work: "DRILL", circle: { centre: point(8, 6), radius: 1.5 } },
    { kind: "circle", work: "DRILL", circle: { centre: point(6, 7), radius: 1 }, depth: 3 },
    {
      kind: "path",
      work: "MARK",
      segments: [line(point(2, 5), point(4, 5)), arc(point(4, 5), point(5, 6), point(4, 6), 90)],
    },
    { kind: "path", work: "ENGRAVE", segments: [line(point(2, 8), point(4, 8))], depth: 0.6 },
    { kind: "note", work: "NOTE", at: point(5, 5), text: "a note", height: 3 },
  ],
};

/** Every number of a drawing by where it stands; degrees apart from lengths. */
function lengthsIn(value: unknown, path = ""): [string, number][] {
  if (typeof value === "number") return path.endsWith(".sweep") ? [] : [[path, value]];
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, each]) => lengthsIn(each, `${path}.${key}`));
}
const segmentsOf = (entry: DrawingEntry): readonly Segment[] =>
  entry.kind === "outline" ? entry.outline : entry.kind === "path" ? entry.segments : [];

describe("a drawing as a whole", () => {
  test("in another unit has every length so many times as long, depths and letters too, and its turns as they were", () => {
    const scaled = scaleDrawing(sample, 1 / 25.4);
    const [before, after] = [lengthsIn(sample), lengthsIn(scaled)];
    expect(after.map(([path]) => path)).toEqual(before.map(([path]) => path));
    for (const [i, [path, mm]] of before.entries()) expect(after[i]![1], path).toBeCloseTo(mm / 25.4, 12);
    expect(scaled.entries.flatMap(segmentsOf).flatMap((s) => (s.kind === "arc" ? [s.sweep] : []))).toEqual([90]);
    for (const [i, [path, mm]] of lengthsIn(scaleDrawing(scaled, 25.4)).entries())
      expect(mm, path).toBeCloseTo(before[i]![1], 9);
  });
  test("moved keeps every length between its points, its depths, radii and letters", () => {
    const moved = moveDrawing(sample, { turn: 37, shift: point(-4, 11) });
    const lengths = (drawing: Drawing) =>
      drawing.entries.flatMap((entry) => [
        ...segmentsOf(entry).map(({ from, to }) => distance(from, to)),
        ...(entry.kind === "circle" ? [entry.circle.radius] : []),
        ...(entry.kind === "note" ? [entry.height] : [entry.depth ?? -1]),
      ]);
    expect(lengths(moved)).toEqual(lengths(sample).map((mm) => expect.closeTo(mm, 9)));
    expect(moved.thickness).toBe(12);
    // A quarter turn brings (8, 6) to (−6, 8), and the shift to (−10, 19).
    const quarter = moveDrawing(sample, { turn: 90, shift: point(-4, 11) }).entries[2]!;
    expect(quarter).toMatchObject({ circle: { centre: { x: expect.closeTo(-10, 9), y: expect.closeTo(19, 9) } } });
  });
  test("reaches as far as its work, notes beside it left out, and is brought to 0, 0 by that", () => {
    expect(drawingBounds(sample)).toEqual({ min: point(2, 3), max: point(12, 9) });
    expect(drawingBounds(moveToOrigin(sample))).toEqual({ min: point(0, 0), max: point(10, 6) });
    expect(() => drawingBounds({ title: "none", entries: [sample.entries[6]!] })).toThrow(/"none" is empty/);
    const bounds = (entry: DrawingEntry) => drawingBounds({ title: "", entries: [entry] });
    expect(bounds({ kind: "circle", work: "CUT", circle: { centre: point(3, 4), radius: 2 } })).toEqual({
      min: point(1, 2),
      max: point(5, 6),
    });
  });
  test("of an arc reaches to where it runs level or upright, if it goes through there", () => {
    const at = (degrees: number) =>
      point(10 * Math.cos((degrees * Math.PI) / 180), 10 * Math.sin((degrees * Math.PI) / 180));
    for (const [start, sweep, box] of [
      [-30, 60, { right: 10 }],
      [60, 60, { high: 10 }],
      [150, 60, { left: -10 }],
      [240, 60, { low: -10 }],
      [30, -60, { right: 10 }],
      [20, 50, {}],
      [-45, 270, { right: 10, high: 10, left: -10 }],
      [80, -100, { right: 10 }],
    ] as const) {
      const segment = arc(at(start), at(start + sweep), point(0, 0), sweep);
      const { min, max } = drawingBounds({ title: "", entries: [{ kind: "path", work: "MARK", segments: [segment] }] });
      const ends = [at(start), at(start + sweep)];
      const want = {
        left: Math.min(...ends.map(({ x }) => x)),
        right: Math.max(...ends.map(({ x }) => x)),
        low: Math.min(...ends.map(({ y }) => y)),
        high: Math.max(...ends.map(({ y }) => y)),
        ...box,
      };
      expect([min.x, max.x, min.y, max.y]).toEqual(
        [want.left, want.right, want.low, want.high].map((v) => expect.closeTo(v, 9)),
      );
    }
  });
});

const CHANGES: readonly Changes[] = [
  { ...WORKED, "pegs.perEnd": 2 },
  { ...WORKED, "bed.angle": 57, "body.trim": 0, "pin.tenonLength": 6 },
  { ...WORKED, "capIron.thickness": 0, "pegs.perEnd": 1 },
  ...randomDesigns(91, 3).map(({ changes }) => changes),
];
const CASES = CHANGES.flatMap((changes) =>
  (["mm", "in"] as const).map((units) => ({ units, plane: elevation({ ...designWith(changes), units }) })),
);

const cutOf = ({ entries }: Drawing): Outline =>
  (entries.find(({ kind, work }) => kind === "outline" && work === "CUT") as { outline: Outline }).outline;
const notesOf = ({ entries }: Drawing) => entries.flatMap((entry) => (entry.kind === "note" ? [entry.text] : []));
const sizeOf = (drawing: Drawing) => {
  const { min, max } = drawingBounds({ ...drawing, entries: drawing.entries.filter(({ work }) => work === "CUT") });
  return [max.x - min.x, max.y - min.y];
};

describe.each(CASES)("parts of plane %#", ({ plane, units }) => {
  const { design, widths } = plane;
  const drilled = (drawing: Drawing, work: string) =>
    drawing.entries.flatMap((entry) => (entry.kind === "circle" && entry.work === work ? [entry.circle] : []));
  const width = (drawing: Drawing, sentence: (data: never) => string, fixed = {}) => {
    const reported = notesOf(drawing).flatMap((text) => partsOf(sentence, ["width"], text, fixed) ?? []);
    return reported[0]?.width ?? "";
  };

  test("blocks, cheeks and wedge are as thick as the plane makes them, and say so", () => {
    const [front, bed, wedge] = [
      frontBlockDrawing(plane, "trued"),
      bedBlockDrawing(plane, "trued"),
      wedgeDrawing(plane),
    ];
    expect([front.thickness, bed.thickness]).toEqual([widths.core, widths.core]);
    expectLength(width(front, DRAWING_NOTE.wide, { part: "front block" }), widths.core, units);
    expectLength(width(bed, DRAWING_NOTE.wide, { part: "bed block" }), widths.core, units);
    expect(wedge.thickness).toBeCloseTo(figureValue(plane, "wedgeWidth")!, 9);
    expectLength(width(wedge, DRAWING_NOTE.wedge), figureValue(plane, "wedgeWidth")!, units);
    for (const hand of ["left", "right"] as const)
      expect(cheekDrawing(plane, "blank", hand).thickness).toBe(design.body.cheek);
  });

  test("a cheek has its pin's hole where it is bored, seen from inside, and the pegs as marks", () => {
    const x = plane.pin.centre.x + design.body.trim / 2;
    const y = plane.pin.centre.y + design.sole.allowance;
    const radius = figureValue(plane, "pinHoleDiameter")! / 2;
    const long = design.body.length + design.body.trim;
    for (const [hand, along] of [
      ["right", x],
      ["left", long - x],
    ] as const) {
      const drawing = cheekDrawing(plane, "blank", hand);
      expect(sizeOf(drawing)).toEqual([
        expect.closeTo(long, 9),
        expect.closeTo(design.body.height + design.sole.allowance, 9),
      ]);
      const [hole, ...others] = drilled(drawing, "DRILL");
      expect(others).toEqual([]);
      expect([hole!.centre.x, hole!.centre.y, hole!.radius]).toEqual(
        [along, y, radius].map((v) => expect.closeTo(v, 6)),
      );
      const pegs = drilled(drawing, "MARK");
      expect(pegs).toHaveLength(2 * design.pegs.perEnd);
      for (const { radius: r } of pegs) expect(r).toBeCloseTo(design.pegs.diameter / 2, 9);
      expect(notesOf(drawing).some((text) => partsOf(DRAWING_NOTE.pegs, ["diameter"], text) !== undefined)).toBe(
        pegs.length > 0,
      );
    }
  });

  test("each block has its own pegs alone, and only before the glue-up", () => {
    for (const drawingOf of [frontBlockDrawing, bedBlockDrawing]) {
      expect(drilled(drawingOf(plane, "blank"), "MARK")).toHaveLength(design.pegs.perEnd);
      expect(drilled(drawingOf(plane, "trued"), "MARK")).toHaveLength(0);
    }
  });

  test("a curved ramp's radius and the recess's depth are reported where there is one", () => {
    const curved = notesOf(frontBlockDrawing(plane, "blank")).flatMap(
      (text) => partsOf(DRAWING_NOTE.curvedRamp, ["radius"], text) ?? [],
    );
    expect(curved).toHaveLength(plane.ramp.curve ? 1 : 0);
    if (plane.ramp.curve) expectLength(curved[0]!.radius, plane.ramp.curve.radius, units);
    const bed = bedBlockDrawing(plane, "blank");
    const rout = bed.entries.filter(({ work }) => work === "ROUT");
    expect(rout).toHaveLength(plane.recess ? 1 : 0);
    if (!plane.recess) return;
    expect(rout[0]).toMatchObject({ depth: plane.recess.depth });
    expectLength(
      notesOf(bed).flatMap((text) => partsOf(DRAWING_NOTE.rout, ["depth"], text) ?? [])[0]!.depth,
      plane.recess.depth,
      units,
    );
    const pocket = (rout[0] as { outline: Outline }).outline;
    const xs = pocket.flatMap(({ from }) => from.x);
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(plane.recess.width, 6);
    // It stands in the middle of the bed, which is drawn beside the block, and clear of it.
    const face = bed.entries.find(({ kind, work }) => kind === "outline" && work === "MARK") as { outline: Outline };
    const across = face.outline.map(({ from }) => from.x);
    expect(Math.max(...across) - Math.min(...across)).toBeCloseTo(widths.core, 6);
    expect((Math.max(...xs) + Math.min(...xs)) / 2).toBeCloseTo((Math.max(...across) + Math.min(...across)) / 2, 6);
    expect(Math.min(...across)).toBeGreaterThan(sizeOf(bed)[0]!);
  });

  test("the cross pin from above is its barrel with a tenon at each end, symmetrical", () => {
    const drawing = crossPinDrawing(plane);
    const { diameter, tenon } = plane.pinSize;
    const outline = cutOf(drawing);
    const [length, high] = sizeOf(drawing) as [number, number];
    expect(high).toBeCloseTo(diameter, 9);
    const barrel = 2 * shoulderOf(outline, length);
    expect(barrel).toBeCloseTo(widths.core - 2 * design.pin.endClearance, 6);
    // Left to the plane, the tenons end inside the cheeks.
    const { tenonLength } = design.pin;
    if (tenonLength === "auto") expect(length).toBeLessThanOrEqual(widths.body);
    else expect(length).toBeCloseTo(barrel + 2 * tenonLength, 6);
    expect(outlineArea(outline)).toBeCloseTo(barrel * diameter + (length - barrel) * tenon, 6);
    const mirror = outline.map(({ from }) => ({ x: length - from.x, y: diameter - from.y }));
    for (const p of mirror) expect(outline.some(({ from }) => distance(from, p) < 1e-9)).toBe(true);
    const [note] = notesOf(drawing).flatMap(
      (text) => partsOf(DRAWING_NOTE.crossPin, ["diameter", "tenon"], text) ?? [],
    );
    expectLength(note!.diameter, diameter, units);
    expectLength(note!.tenon, tenon, units);
  });
});

/** Half the length between a pin's shoulders, from its outline seen from above: where it is widest. */
const shoulderOf = (outline: Outline, length: number): number =>
  Math.max(...outline.filter(({ from }) => Math.abs(from.y) < 1e-9).map(({ from }) => from.x)) - length / 2;
