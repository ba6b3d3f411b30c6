// Boards and router set-ups as drawn: every piece, cut and way of the cutter in its place, true to the scale that is given.
import { readFileSync } from "node:fs";
import { arc, line, outlineArea, point, polygon, type Segment } from "@lamplane/geometry";
import { readDesign } from "@lamplane/parameters/design";
import { boardPicture, boardSheet, type Picture, type PictureMark } from "@lamplane/sheets";
import { describe, expect, test } from "vitest";
import { type SetUpDrawing, setUpPicture } from "../../packages/sheets/src/router/set-up-picture.ts";
import { type Place, wordBoxesOf, wordsOverlap } from "../support/drawn-lines.ts";

interface Box {
  readonly left: number;
  readonly low: number;
  readonly wide: number;
  readonly high: number;
}

function boxOf(segments: readonly Segment[]): Box {
  const [xs, ys] = [segments.map(({ from }) => from.x), segments.map(({ from }) => from.y)];
  const [left, low] = [Math.min(...xs), Math.min(...ys)];
  return { left, low, wide: Math.max(...xs) - left, high: Math.max(...ys) - low };
}
const linesOfKind = ({ marks }: Picture, kind: string): Extract<PictureMark, { kind: "line" }>[] =>
  marks.filter((mark) => mark.kind === "line" && mark.line === kind) as never;
const areasOf = ({ marks }: Picture, shade: number): Box[] =>
  marks.flatMap((mark) =>
    mark.kind === "area" && Math.abs(mark.shade - shade) < 1e-9 ? [boxOf(mark.boundaries[0]!)] : [],
  );
const textsOf = ({ marks }: Picture) => marks.flatMap((mark) => (mark.kind === "text" ? [mark] : []));
const holds = ({ left, low, wide, high }: Box, { x, y }: Place, by = 0): boolean =>
  x > left - by && x < left + wide + by && y > low - by && y < low + high + by;

describe("a board", () => {
  const file = "examples/class/crooked-board.yaml";
  const reading = readDesign(readFileSync(file), file);
  if (!reading.ok) throw new Error(JSON.stringify(reading.faults));
  const { boards, cuts } = boardSheet(reading.design)!;
  const [own] = cuts;
  const board = boards[own!.board]!;
  const picture = boardPicture(board, own!, 186);
  const [face, edge] = linesOfKind(picture, "outline").map(({ segments }) => boxOf(segments));
  const title = textsOf(picture).find(({ bold, text }) => bold && /\d:\d/.test(text))!.text;
  const [, paper, thing] = /([\d.]+):([\d.]+)/.exec(title)!;
  const scale = face!.wide / board.length;
  /** Lower end of a span on paper: the face has its left edge above, the edge its upper face. */
  const lowOf = (axis: "y" | "z", { from, to }: { from: number; to: number }) =>
    axis === "y" ? board.width - to : from;

  test("is drawn at the scale that it says, its edge below its face", () => {
    expect(Math.abs(scale / (Number(paper) / Number(thing)) - 1)).toBeLessThan(0.03);
    expect(scale).toBeLessThanOrEqual(0.5);
    expect(picture.width).toBeLessThanOrEqual(186);
    expect([face!.high, edge!.high, edge!.wide]).toEqual([
      expect.closeTo(board.width * scale, 6),
      expect.closeTo(board.thickness * scale, 6),
      expect.closeTo(board.length * scale, 6),
    ]);
    expect(edge!.left).toBeCloseTo(face!.left, 6);
    expect(face!.low - edge!.low - edge!.high).toBeGreaterThan(6);
  });

  test("has every part in both views where its box lies, with its letter within it", () => {
    const thin = linesOfKind(picture, "thin").map(({ segments }) => boxOf(segments));
    expect(thin).toHaveLength(2 * own!.parts.length);
    for (const [view, axis] of [
      [face!, "y"],
      [edge!, "z"],
    ] as const)
      own!.parts.forEach(({ box }, i) => {
        const drawn = thin.find(
          ({ left, low, wide, high }) =>
            Math.abs(left - view.left - box.x.from * scale) < 1e-6 &&
            Math.abs(low - view.low - lowOf(axis, box[axis]) * scale) < 1e-6 &&
            Math.abs(wide - (box.x.to - box.x.from) * scale) < 1e-6 &&
            Math.abs(high - (box[axis].to - box[axis].from) * scale) < 1e-6,
        );
        expect(drawn, `${i} along x and ${axis}`).toBeDefined();
        const letter = String.fromCharCode(65 + i);
        const within = textsOf(picture).filter(({ text, at }) => text === letter && holds(drawn!, at, 1.2));
        expect(within.length, letter).toBeGreaterThan(0);
      });
  });

  test("has each cut's kerf as broad as the saw's, its line along the middle, numbered on it or at its end", () => {
    const kerfs = areasOf(picture, 0.45);
    const seen = own!.cuts.flatMap(({ axis, kerf }, i) =>
      (axis === "x" ? ["y", "z"] : [axis]).map((up) => ({ i, axis, kerf, up })),
    );
    expect(kerfs).toHaveLength(seen.length);
    const lines = linesOfKind(picture, "cut");
    expect(lines).toHaveLength(seen.length);
    for (const { i, axis, kerf, up } of seen) {
      const view = up === "y" ? face! : edge!;
      const piece = own!.cuts[i]!.piece;
      const wanted: Box =
        axis === "x"
          ? {
              left: kerf.from,
              low: lowOf(up as "y", piece[up as "y"]),
              wide: kerf.to - kerf.from,
              high: piece[up as "y"].to - piece[up as "y"].from,
            }
          : {
              left: piece.x.from,
              low: lowOf(up as "y", kerf),
              wide: piece.x.to - piece.x.from,
              high: kerf.to - kerf.from,
            };
      const at = (box: Box) =>
        Math.abs(box.left - view.left - wanted.left * scale) +
        Math.abs(box.low - view.low - wanted.low * scale) +
        Math.abs(box.wide - wanted.wide * scale) +
        Math.abs(box.high - wanted.high * scale);
      const drawn = kerfs.find((box) => at(box) < 1e-6);
      expect(drawn, `cut ${i + 1} in ${up}`).toBeDefined();
      const along = lines.find(({ segments: [s] }) => {
        const middle = { x: (s!.from.x + s!.to.x) / 2, y: (s!.from.y + s!.to.y) / 2 };
        return Math.hypot(middle.x - drawn!.left - drawn!.wide / 2, middle.y - drawn!.low - drawn!.high / 2) < 1e-6;
      })!;
      const { from, to } = along.segments[0]!;
      expect(Math.hypot(to.x - from.x, to.y - from.y)).toBeCloseTo(axis === "x" ? drawn!.high : drawn!.wide, 6);
      const isAt = ({ x, y }: { x: number; y: number }) =>
        axis === "x"
          ? Math.hypot(x - from.x, y - Math.max(from.y, to.y)) < 4
          : Math.abs(y - from.y) < 1.5 && x > Math.min(from.x, to.x) && x < Math.max(from.x, to.x);
      const numbers = textsOf(picture).filter(({ text, at: place }) => text === `${i + 1}` && isAt(place));
      expect(numbers.length, `number ${i + 1} in ${up}`).toBeGreaterThan(0);
    }
  });

  test("has each knot where it is, on both views, and heart and bark at the edge", () => {
    const knots = areasOf(picture, 0.3);
    expect(knots).toHaveLength(2 * board.knots.length);
    board.knots.forEach(({ from, to, across }, i) => {
      const [onFace, onEdge] = [
        knots.filter(({ low }) => low >= face!.low - 1e-6)[i]!,
        knots.filter(({ low }) => low < face!.low - 1e-6)[i]!,
      ];
      for (const [box, view] of [
        [onFace, face!],
        [onEdge, edge!],
      ] as const) {
        expect(box.left - view.left).toBeCloseTo(from * scale, 6);
        expect(box.wide).toBeCloseTo((to - from) * scale, 6);
      }
      const rise = across ?? { from: 0, to: board.width };
      expect([onFace.low - face!.low, onFace.high, onEdge.high]).toEqual([
        expect.closeTo(lowOf("y", rise) * scale, 6),
        expect.closeTo((rise.to - rise.from) * scale, 6),
        expect.closeTo(edge!.high, 6),
      ]);
      const word = textsOf(picture).filter(({ text, at }) => text === "knot" && holds(onFace, at, 0.1));
      expect(word).toHaveLength(1);
    });
    const [heart, bark] = ["heart side", "bark side"].map(
      (side) => textsOf(picture).find(({ text }) => text === side)!.at.y,
    );
    const [above, below] = board.heart === "up" ? [heart!, bark!] : [bark!, heart!];
    expect(above).toBeGreaterThan(edge!.low + edge!.high);
    expect(above).toBeLessThan(face!.low);
    expect(below).toBeLessThan(edge!.low);
  });
});

describe("a set-up of the router", () => {
  const [R, WIDTH] = [20, 6];
  const straight = [line(point(10, 10), point(90, 10)), line(point(90, 10), point(90, 50))];
  const round = [arc(point(60, 30), point(60, 30 + 2 * R), point(60, 30 + R), 180)];
  const drawing: SetUpDrawing = {
    name: "sample",
    title: "Sample",
    stock: { min: point(-5, -3), max: point(215, 97) },
    outlines: [polygon(point(20, 20), point(80, 20), point(80, 40), point(20, 40))],
    ways: [
      { path: straight, width: WIDTH },
      { path: round, width: WIDTH },
    ],
    tabs: [point(50, 10)],
    names: [
      { text: "cheek-left", at: point(150, 60), room: 60, isUpright: false },
      { text: "gauge", at: point(190, 40), room: 40, isUpright: true },
    ],
    sizes: { width: "220 mm", depth: "100 mm", grain: "grain" },
    keepOuts: [polygon(point(120, 10), point(130, 10), point(130, 20), point(120, 20))],
  };

  test.each([1, 0.5, 0.4])("has stock, outlines, tabs and knots at scale %d about one zero", (scale) => {
    const picture = setUpPicture(drawing, scale);
    const [stock] = linesOfKind(picture, "hidden").map(({ segments }) => boxOf(segments));
    const zero = { x: stock!.left + 5 * scale, y: stock!.low + 3 * scale };
    expect([stock!.wide, stock!.high]).toEqual([expect.closeTo(220 * scale, 6), expect.closeTo(100 * scale, 6)]);
    const at = (x: number, y: number) => ({
      x: expect.closeTo(zero.x + x * scale, 6),
      y: expect.closeTo(zero.y + y * scale, 6),
    });
    const [part] = linesOfKind(picture, "outline");
    expect(part!.segments[0]!.from).toEqual(at(20, 20));
    expect(part!.segments[1]!.to).toEqual(at(80, 40));
    const strong = linesOfKind(picture, "strong").map(({ segments }) => segments);
    const cross = strong.find(
      ([s]) => s!.kind === "line" && Math.abs((s!.from.x + s!.to.x) / 2 - zero.x - 50 * scale) < 1e-6,
    )!;
    expect(cross).toHaveLength(2);
    for (const { from, to } of cross) {
      expect({ x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 }).toEqual(at(50, 10));
      expect(Math.abs(Math.abs(to.x - from.x) - Math.abs(to.y - from.y))).toBeLessThan(1e-9);
    }
    expect(Math.sign(cross[0]!.to.y - cross[0]!.from.y)).not.toBe(Math.sign(cross[1]!.to.y - cross[1]!.from.y));
    const [knot] = areasOf(picture, 0.3);
    expect([knot!.left, knot!.low, knot!.wide]).toEqual([at(120, 10).x, at(120, 10).y, expect.closeTo(10 * scale, 6)]);
    const ring = strong.flat().find((s) => s.kind === "arc")!;
    expect(ring.kind === "arc" && ring.centre).toEqual(at(0, 0));
    const axes = strong
      .flat()
      .filter((s) => s.kind === "line" && Math.hypot(s.from.x - zero.x, s.from.y - zero.y) < 1e-6);
    expect(
      axes.map(({ from, to }) => [Math.sign(Math.round(to.x - from.x)), Math.sign(Math.round(to.y - from.y))]),
    ).toEqual([
      [1, 0],
      [0, 1],
    ]);
    const word = (text: string) => textsOf(picture).find((each) => each.text === text)!.at;
    expect(word("x").x).toBeGreaterThan(axes[0]!.to.x);
    expect(word("y").y).toBeGreaterThan(axes[1]!.to.y);
    expect(Math.max(word("0").x - zero.x, word("0").y - zero.y)).toBeLessThan(0);
  });

  test.each([1, 0.5])("shades just what the cutter sweeps beside its way, at scale %d", (scale) => {
    const { marks } = setUpPicture(drawing, scale);
    const swept = marks.flatMap((mark) => (mark.kind === "area" && mark.shade === 0.12 ? [mark.boundaries[0]!] : []));
    const areas = swept.map((boundary) => Math.abs(outlineArea(boundary)) / scale ** 2);
    // length times width, along a line and along an arc alike
    expect(areas).toEqual([80 * WIDTH, 40 * WIDTH, Math.PI * R * WIDTH].map((area) => expect.closeTo(area, 6)));
    const first = boxOf(swept[0]!);
    expect([first.wide, first.high]).toEqual([expect.closeTo(80 * scale, 6), expect.closeTo(WIDTH * scale, 6)]);
  });

  test("has names within their places, sizes outside the stock, and an arrow along the grain over it", () => {
    const scale = 0.6;
    const picture = setUpPicture(drawing, scale);
    const [stock] = linesOfKind(picture, "hidden").map(({ segments }) => boxOf(segments));
    const boxes = wordBoxesOf(picture);
    const of = (text: string) => boxes.find((box) => box.text === text)!.corners;
    const middle = (text: string) => ({
      x: of(text).reduce((sum, { x }) => sum + x, 0) / 4,
      y: of(text).reduce((sum, { y }) => sum + y, 0) / 4,
    });
    const zero = { x: stock!.left + 5 * scale, y: stock!.low + 3 * scale };
    for (const { text, at, room, isUpright } of drawing.names!) {
      expect(
        Math.hypot(middle(text).x - zero.x - at.x * scale, middle(text).y - zero.y - at.y * scale),
        text,
      ).toBeLessThan(0.6);
      const axis = isUpright ? "y" : "x";
      const long = Math.max(...of(text).map((p) => p[axis])) - Math.min(...of(text).map((p) => p[axis]));
      expect(long, text).toBeLessThan(room * scale);
      expect(long, text).toBeGreaterThan(8);
    }
    for (const [i, box] of boxes.entries())
      for (const other of boxes.slice(i + 1))
        expect(wordsOverlap(box, other, 0.2), `${box.text} | ${other.text}`).toBe(false);
    expect(middle("220 mm")).toEqual({ x: expect.closeTo(stock!.left + stock!.wide / 2, 0), y: expect.any(Number) });
    expect(Math.max(...of("220 mm").map(({ y }) => y))).toBeLessThan(stock!.low);
    expect(Math.max(...of("100 mm").map(({ x }) => x))).toBeLessThan(stock!.left);
    expect(Math.abs(middle("100 mm").y - stock!.low - stock!.high / 2)).toBeLessThan(1);
    const arrow = linesOfKind(picture, "strong").find(({ segments }) => segments.length === 3)!.segments;
    const [shaft, ...barbs] = arrow;
    expect([shaft!.from.y, shaft!.to.x > shaft!.from.x]).toEqual([shaft!.to.y, true]);
    expect(shaft!.from.y).toBeGreaterThan(stock!.low + stock!.high);
    expect((shaft!.from.x + shaft!.to.x) / 2).toBeCloseTo(stock!.left + stock!.wide / 2, 6);
    for (const barb of barbs) {
      expect(barb.from).toEqual(shaft!.to);
      expect(barb.to.x).toBeLessThan(barb.from.x);
    }
    expect(barbs[0]!.to.y - shaft!.to.y).toBeCloseTo(shaft!.to.y - barbs[1]!.to.y, 9);
    expect(Math.min(...of("grain").map(({ x }) => x))).toBeGreaterThan(shaft!.to.x);
  });
});
