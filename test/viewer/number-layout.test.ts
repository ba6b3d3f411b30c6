// Where the numbers of the page's views stand, at five widths: on no other number, name or outline, in the field; their lines lead from
// the ends that they measure, at the drawing's scale, and are broken for them. The boxes are judged by sampling and plain geometry.
import { readFileSync } from "node:fs";
import { asBuiltPlane } from "@lamplane/bench";
import { readDesign } from "@lamplane/parameters/design";
import type { Design } from "@lamplane/parameters/table";
import { describe, expect, test } from "vitest";
import type { View } from "../../packages/viewer/src/protocol/view.ts";
import { layOutDimension, type Scale, toPixels, toSheet } from "../../packages/viewer/src/sheet/layout.ts";
import { numberBox, numberRoom } from "../../packages/viewer/src/sheet/number-box.ts";
import type { NumberBox } from "../../packages/viewer/src/sheet/obstacles.ts";
import { chooseDimensions, fitScaleOf, layOutView } from "../../packages/viewer/src/sheet/view-layout.ts";
import { sheetPlane } from "../../packages/viewer/src/worker/sheet-plane.ts";
import type { Chord, Place } from "../support/drawn-lines.ts";

function example(name: string): Design {
  const file = `examples/${name}.yaml`;
  const reading = readDesign(readFileSync(file), file);
  if (!reading.ok) throw new Error(JSON.stringify(reading.faults));
  return reading.design;
}

/** px: as the page itself has it. */
const ROOM = { padding: { left: 122, right: 150 }, narrow: { left: 74, right: 76 }, narrowFractions: 24 };
const WIDTHS = [360, 480, 720, 900, 1400];
const TALL = 520;

describe.each(["apprentice-smoother", "trestle-jack", "figured-finisher"])("%s", (name) => {
  const design = example(name);
  const plane = asBuiltPlane(design);
  const fields = (["cuts", "shaped"] as const).flatMap((stage) => {
    const sheet = sheetPlane(design, plane, stage);
    return sheet.views.flatMap((view) =>
      WIDTHS.map((width) => {
        const scale = fitScaleOf(view, sheet, ROOM, { width, tallest: TALL }, () => true);
        const chosen = chooseDimensions(view, width);
        const { places, names } = layOutView({ dimensions: chosen, view, plane: sheet, scale }, new Map(), false);
        const laid = chosen.flatMap((dimension, i) => {
          const place = places[i];
          return place ? [{ dimension, place, box: numberBox(place, numberRoom(dimension, design)) }] : [];
        });
        return {
          at: `${stage}, ${view.name}, ${width} px`,
          view,
          scale,
          width,
          chosen,
          laid,
          names: names.flatMap((box) => box ?? []),
        };
      }),
    );
  });

  test("the view fills its field at one scale, within it", () => {
    for (const { at, view, scale, width } of fields) {
      const [low, high] = [toPixels(scale, view.box.min), toPixels(scale, view.box.max)];
      expect(high.x - low.x, at).toBeCloseTo((view.box.max.x - view.box.min.x) * scale.perMm, 6);
      expect(low.y - high.y, at).toBeCloseTo((view.box.max.y - view.box.min.y) * scale.perMm, 6);
      expect(Math.min(low.x, high.y), at).toBeGreaterThanOrEqual(0);
      expect(high.x, at).toBeLessThanOrEqual(width);
      expect(low.y, at).toBeLessThanOrEqual(scale.height);
      expect(scale.height, at).toBeLessThanOrEqual(TALL + 1e-6);
      const back = toSheet(scale, toPixels(scale, { x: 12.5, y: -3 }));
      expect(Math.hypot(back.x - 12.5, back.y + 3), at).toBeLessThan(1e-9);
      // as large as its width or its height allows
      const gaps = [low.x + (width - high.x), high.y + (scale.height - low.y)];
      const isWide = gaps[0]! <= ROOM.padding.left + ROOM.padding.right + 60;
      expect(isWide || scale.height > TALL - 1, `${at}: ${gaps}`).toBe(true);
    }
  });

  test("most numbers find a place, those that can be taken hold of always", () => {
    const [chosen, laid] = [fields.flatMap((field) => field.chosen), fields.flatMap((field) => field.laid)];
    expect(laid.length / chosen.length).toBeGreaterThan(0.8);
    for (const field of fields)
      for (const dimension of field.chosen)
        if (dimension.isHeld)
          expect(
            field.laid.some((one) => one.dimension === dimension),
            `${field.at}: ${dimension.id}`,
          ).toBe(true);
  });

  test("no number lies on another, on a name, on an outline or beyond the field", () => {
    const over = fields.flatMap(({ at, view, scale, width, laid, names }) => {
      const boxes = [
        ...laid.map(({ box, dimension }) => ({ box, id: dimension.id })),
        ...names.map((box) => ({ box, id: "name" })),
      ];
      const pairs = boxes.flatMap((a, i) =>
        boxes.slice(i + 1).flatMap((b) => (boxesMeet(a.box, b.box) ? [`${at}: ${a.id} | ${b.id}`] : [])),
      );
      const free = laid.filter(({ dimension }) => !dimension.isHeld);
      const edges = outlinesOf(view, scale);
      const on = free.flatMap(({ box, dimension }) =>
        edges.some((edge) => samplesWithin(edge, box) > 0) ? [`${at}: ${dimension.id} on an outline`] : [],
      );
      const out = free.flatMap(({ box, dimension }) =>
        box.left < -2.01 || box.top < -2.01 || box.right > width + 2.01 || box.bottom > scale.height + 2.01
          ? [`${at}: ${dimension.id} outside`]
          : [],
      );
      return [...pairs, ...on, ...out];
    });
    expect(over).toEqual([]);
  });

  test("a dimension's line is as long as what it measures and square to it; arrows stand at its ends, a leader's line at its place", () => {
    for (const { at, scale, laid } of fields)
      for (const { dimension, place } of laid) {
        const { shape } = dimension;
        const where = `${at}: ${dimension.id}`;
        const tips = tipsOf(place.arrows());
        if (shape.kind === "leader") {
          const dot = toPixels(scale, shape.at);
          expect(Math.hypot(place.strokes[0]![0] - dot.x, place.strokes[0]![1] - dot.y), where).toBeLessThan(1e-6);
          expect(place.strokes.at(-1)![2], where).toBeCloseTo(place.number.x, 6);
          continue;
        }
        expect(tips, where).toHaveLength(2);
        if (shape.kind === "angle") {
          const corner = toPixels(scale, shape.at);
          const turns = tips.map(({ x, y }) => (Math.atan2(corner.y - y, x - corner.x) * 180) / Math.PI);
          expect(Math.abs(turns[0]! - turns[1]!), where).toBeCloseTo(dimension.value, 6);
          expect(Math.hypot(tips[0]!.x - corner.x, tips[0]!.y - corner.y), where).toBeCloseTo(
            Math.hypot(tips[1]!.x - corner.x, tips[1]!.y - corner.y),
            6,
          );
          continue;
        }
        const [a, b] = [toPixels(scale, shape.from), toPixels(scale, shape.to)];
        const isUpright = shape.side === "left" || shape.side === "right";
        const measured = (p: Place) => (isUpright ? p.y : p.x);
        expect(tips.map(measured).sort(inOrder), where).toEqual(
          [a, b]
            .map(measured)
            .sort(inOrder)
            .map((to) => expect.closeTo(to, 6)),
        );
        expect(isUpright ? tips[0]!.x : tips[0]!.y, where).toBeCloseTo(isUpright ? tips[1]!.x : tips[1]!.y, 6);
        // beyond the view on its own side
        const line = isUpright ? tips[0]!.x : tips[0]!.y;
        const outward = {
          left: Math.min(a.x, b.x) - line,
          right: line - Math.max(a.x, b.x),
          above: Math.min(a.y, b.y) - line,
          below: line - Math.max(a.y, b.y),
        };
        expect(outward[shape.side], where).toBeGreaterThan(10);
      }
  });

  test("a name's box holds the name, and names lie on their part", () => {
    const named = fields.filter(({ names }) => names.length > 0);
    expect(named.length).toBeGreaterThan(1);
    for (const { at, view, scale, names } of named)
      for (const box of names) {
        const label = view.labels.find(({ at: place }) => {
          const { x } = toPixels(scale, place);
          return Math.abs((box.left + box.right) / 2 - x) < 1;
        })!;
        const { y } = toPixels(scale, label.at);
        expect(box.top, at).toBeLessThan(y - 10); // letters of 14 px over their baseline
        expect(box.bottom, at).toBeGreaterThan(y + 3);
        expect(box.bottom - box.top, at).toBeLessThan(30);
        expect(box.right - box.left, at).toBeGreaterThan(6.5 * label.text.length);
        expect(box.right - box.left, at).toBeLessThan(9 * label.text.length + 10);
      }
  });

  test("lines are broken where their number stands, and start off the outline", () => {
    const struck = fields.flatMap(({ at, laid }) =>
      laid.flatMap(({ dimension, place, box }) => {
        if (dimension.shape.kind === "leader") return [];
        const words = { ...box, left: box.left + 2, right: box.right - 2, top: box.top + 3, bottom: box.bottom - 3 };
        return piecesOf(place.lines()).some((piece) => samplesWithin(piece, words) > 0)
          ? [`${at}: ${dimension.id}`]
          : [];
      }),
    );
    expect(struck).toEqual([]);
  });

  test("dimension lines of one side stand apart in their order where there is room for it", () => {
    for (const { at, laid } of fields.filter(({ width }) => width >= 900))
      for (const side of ["below", "left", "right"] as const) {
        const lines = laid
          .filter(({ dimension: { shape } }) => shape.kind === "along" && shape.side === side)
          .map(({ dimension, place }) => ({
            tier: (dimension.shape as { tier: number }).tier,
            tip: tipsOf(place.arrows())[0]!,
          }));
        for (const one of lines)
          for (const other of lines) {
            if (one.tier >= other.tier) continue;
            const apart =
              side === "below"
                ? other.tip.y - one.tip.y
                : side === "left"
                  ? one.tip.x - other.tip.x
                  : other.tip.x - one.tip.x;
            expect(apart, `${at}, ${side}`).toBeGreaterThan(12);
          }
      }
  });

  test("while a number is held none leaves its place", () => {
    const sheet = sheetPlane(design, plane, "shaped");
    const view = sheet.views[0]!;
    const scale = fitScaleOf(view, sheet, ROOM, { width: 900, tallest: TALL }, () => true);
    const chosen = chooseDimensions(view, 900);
    const drawn = { dimensions: chosen, view, plane: sheet, scale };
    const ways = new Map<string, number>();
    const first = layOutView(drawn, ways, false).places.map((place) => place?.number);
    const kept = new Map(ways);
    const again = layOutView({ ...drawn, scale: { ...scale, width: 300 } }, ways, true).places.map(
      (place) => place?.number,
    );
    expect(ways).toEqual(kept);
    expect(again).toEqual(first);
  });
});

describe("a number on its line", () => {
  const scale: Scale = { perMm: 2, origin: { x: 50, y: 300 }, width: 700, height: 400 };
  const box = { min: { x: 0, y: 0 }, max: { x: 250, y: 110 } };
  const room = { width: 46, right: 30, below: 0 };

  test.each(["below", "above", "left", "right"] as const)(
    "%s the view stands between its arrows, from one to the other",
    (side) => {
      const isUpright = side === "left" || side === "right";
      const to = isUpright ? { x: 20, y: 90 } : { x: 220, y: 20 };
      const taken = isUpright ? { width: 46, right: 0, below: 20 } : room;
      const at = [0, 0.25, 0.5, 0.75, 1].map((share) => {
        const shape = { kind: "along", from: { x: 20, y: 20 }, to, side, tier: 1, share } as const;
        const laid = layOutDimension(shape, scale, box, taken, false);
        const number = numberBox(laid, taken);
        const ends = tipsOf(laid.arrows()).map((tip) => (isUpright ? tip.y : tip.x));
        const [low, high] = isUpright ? [number.top, number.bottom] : [number.left, number.right];
        expect(low).toBeGreaterThan(Math.min(...ends) - 3);
        expect(high).toBeLessThan(Math.max(...ends) + 3);
        for (const piece of piecesOf(laid.lines()))
          expect(
            samplesWithin(piece, {
              ...number,
              left: number.left + 1,
              right: number.right - 1,
              top: number.top + 3,
              bottom: number.bottom - 3,
            }),
          ).toBe(0);
        return { middle: (low + high) / 2, of: (ends[0]! + ends[1]!) / 2 };
      });
      for (const [i, { middle }] of at.entries()) if (i > 0) expect(middle).toBeGreaterThan(at[i - 1]!.middle + 5);
      expect(Math.abs(at[2]!.middle - at[2]!.of)).toBeLessThan(3);
      // the outer places are as far from the middle as each other
      expect(at[0]!.middle + at[4]!.middle).toBeCloseTo(2 * at[2]!.middle, 6);
    },
  );

  test("that has no room between its arrows stands beside or beyond them, with the arrows outside", () => {
    for (const share of [0.2, 0.5, 0.95]) {
      const shape = {
        kind: "along",
        from: { x: 20, y: 20 },
        to: { x: 30, y: 20 },
        side: "below",
        tier: 0,
        share,
      } as const;
      const laid = layOutDimension(shape, scale, box, room, false);
      const number = numberBox(laid, room);
      const [a, b] = tipsOf(laid.arrows()).map(({ x }) => x) as [number, number];
      const y = tipsOf(laid.arrows())[0]!.y;
      const isClear = number.right < Math.min(a, b) || number.left > Math.max(a, b) || number.top > y;
      expect(isClear, String(share)).toBe(true);
      const wide = piecesOf(laid.lines())
        .filter(([p, q]) => p.y === q.y)
        .map(([p, q]) => Math.abs(q.x - p.x));
      expect(Math.max(...wide)).toBeGreaterThan(b - a);
    }
  });
});

const inOrder = (a: number, b: number) => a - b;

const boxesMeet = (a: NumberBox, b: NumberBox): boolean =>
  Math.min(a.right, b.right) - Math.max(a.left, b.left) > 1e-6 &&
  Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > 1e-6;

/** Closed outlines as the view gives them, in px. */
const outlinesOf = (view: View, scale: Scale): Chord[] =>
  view.marks.flatMap(({ edge = [] }) =>
    edge.map((a, i): Chord => [toPixels(scale, a), toPixels(scale, edge[(i + 1) % edge.length]!)]),
  );

/** How many points along a piece lie in a box. */
function samplesWithin([a, b]: Chord, { left, right, top, bottom }: NumberBox): number {
  if (
    Math.max(a.x, b.x) < left ||
    Math.min(a.x, b.x) > right ||
    Math.max(a.y, b.y) < top ||
    Math.min(a.y, b.y) > bottom
  )
    return 0;
  const count = Math.ceil(Math.hypot(b.x - a.x, b.y - a.y)) + 1;
  return Array.from({ length: count + 1 }, (_, i) => ({
    x: a.x + ((b.x - a.x) * i) / count,
    y: a.y + ((b.y - a.y) * i) / count,
  })).filter(({ x, y }) => x > left && x < right && y > top && y < bottom).length;
}

/** First points of the filled arrows of a path. */
const tipsOf = (path: string): Place[] =>
  [...path.matchAll(/M(\S+) (\S+?)L/g)].map(([, x, y]) => ({ x: Number(x), y: Number(y) }));

const piecesOf = (path: string): Chord[] =>
  [...path.matchAll(/M(\S+) (\S+?)L(\S+) ([^ML]+)/g)].map(
    ([, x1, y1, x2, y2]): Chord => [
      { x: Number(x1), y: Number(y1) },
      { x: Number(x2), y: Number(y2) },
    ],
  );
