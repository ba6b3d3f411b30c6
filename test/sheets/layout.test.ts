// Layout pictures: everything drawn lies in its picture, hands are mirror images, distances are those worked by hand.
import { matchingMarks } from "@lamplane/bench";
import { elevation, figureValue } from "@lamplane/parameters/elevation";
import { framePicture, layoutPictures, Marks, type Picture, type PictureMark, textCorners } from "@lamplane/sheets";
import { describe, expect, test } from "vitest";
import { isBuildable } from "../support/buildable.ts";
import { designWith, randomDesigns, WORKED } from "../support/designs.ts";
import { dimensionsOf } from "../support/dimensions.ts";
import { chordsCross, linesOf } from "../support/drawn-lines.ts";

const worked = elevation(designWith(WORKED));
const named = (name: string, plane = worked): Picture =>
  layoutPictures(plane).find((picture) => picture.name === name)!;
const wordsOf = ({ marks }: Picture) => marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : []));

/** Corners, ends and centres of a mark. */
const pointsOf = (mark: PictureMark) =>
  mark.kind === "text"
    ? textCorners(mark)
    : (mark.kind === "area" ? mark.boundaries.flat() : mark.segments).flatMap(({ from, to }) => [from, to]);

describe("over random planes", () => {
  const planes = randomDesigns(77, 25, isBuildable).map(({ design }) => elevation(design));

  test("every mark, words too, lies in its picture and is a number", () => {
    for (const plane of planes)
      for (const picture of layoutPictures(plane))
        for (const { x, y } of picture.marks.flatMap(pointsOf)) {
          expect(Math.min(x, y), picture.name).toBeGreaterThanOrEqual(0);
          expect(x, picture.name).toBeLessThanOrEqual(picture.width);
          expect(y, picture.name).toBeLessThanOrEqual(picture.height);
        }
  });

  test("names are each picture's own, and those of files", () => {
    for (const plane of planes) {
      const names = layoutPictures(plane).map(({ name }) => name);
      expect(new Set(names).size).toBe(names.length);
      for (const name of names) expect(name).toMatch(/^[a-z]+(-[a-z]+)*$/);
    }
  });

  test("matching marks stand clear of both kerfs", () => {
    for (const plane of planes) {
      const { design, cuts, widths } = plane;
      const rise = design.body.height + design.sole.allowance;
      const cot = (degrees: number) => 1 / Math.tan((degrees * Math.PI) / 180);
      // plane geometry: at the top, a straight cut has moved off its mark by the rise over the angle's tangent
      const between = [cuts.rampMark - rise * cot(plane.ramp.angle), cuts.bedMark + rise * cot(plane.frame.bedAngle)];
      const { marks } = matchingMarks(plane);
      expect(marks.length).toBeGreaterThan(1);
      for (const { over, at } of marks)
        for (const x of at) {
          expect(x).toBeGreaterThan(over === "front block" ? 0 : between[1]! + 1.9);
          expect(x).toBeLessThan(over === "front block" ? between[0]! - 1.9 : widths.blankLength);
        }
    }
  });
});

test("the left cheek is the right one's mirror image", () => {
  const [right, left] = [named("cheek-right"), named("cheek-left")];
  const outline = (picture: Picture) =>
    picture.marks.filter((mark) => mark.kind === "line" && mark.line === "outline").flatMap(pointsOf);
  const [seen, mirrored] = [outline(right), outline(left)];
  expect(seen.length).toBeGreaterThan(15);
  const sum = seen[0]!.x + mirrored[0]!.x;
  for (const [i, { x, y }] of seen.entries()) {
    expect(x + mirrored[i]!.x).toBeCloseTo(sum, 9);
    expect(y).toBeCloseTo(mirrored[i]!.y, 9);
  }
  expect(wordsOf(right).join(" ")).toContain("RIGHT CHEEK, INSIDE");
  expect(wordsOf(left).join(" ")).toContain("LEFT CHEEK, INSIDE");
});

test("distances are the worked set's", () => {
  // The set worked apart from the project: from the finished toe ramp tip 79.5821, bed tip 80.1248, pin 92.3356; pin height 36; trim 25.4 in all, allowance 3.
  const words = wordsOf(named("cheek-right"));
  for (const text of ["ramp 92.28", "bed 92.82", "pin 105.04", "39", "blank 255.4", "finished 230", "61"])
    expect(words).toContain(text);
});

test("every sheet gives each size that its piece is made by, once, as worked by hand", () => {
  // The set worked apart from the project, and from it: marks on the core are those on the cheek less the set-in of 2.4163 and plus
  // that of the bed; at the top a cut of angle a has moved by 61 cot a; pegs divide the heel end in four.
  const sizes = (name: string) => {
    const words = dimensionsOf(named(name)).map((dimension) => dimension.words);
    return words.sort();
  };
  const cot = (degrees: number) => 1 / Math.tan((degrees * Math.PI) / 180);
  const shown = (mm: number) => String(Math.round(mm * 100) / 100);
  const core = dimensionsOf(named("core-cuts")).map(({ words }) => words);
  const [ramp, bed] = [/^ramp ([\d.]+)/, /^bed ([\d.]+)/].map((mark) =>
    core.flatMap((words) => (mark.exec(words) ? [Number(mark.exec(words)![1])] : [])),
  );
  expect(core.length).toBe(6);
  expect(ramp![0]! - ramp![1]!).toBeCloseTo(61 * cot(60), 1);
  expect(bed![1]! - bed![0]!).toBeCloseTo(61 * cot(47), 1);
  expect(core).toEqual(expect.arrayContaining(["blank 255.4", "61"]));
  const ofCheek = ["ramp 92.28", "bed 92.82", "blank 255.4", "finished 230", "pin 105.04", "39", "61"];
  const cheek = [...ofCheek, "12.7", "12.7", shown(61 / 4), shown(61 / 2)].sort();
  expect(sizes("cheek-right")).toEqual(cheek);
  expect(sizes("cheek-left")).toEqual(cheek);
  // between the shoulders the core of 49.6 less its clearance of 1, over all the body of 65.6 less 1; the pin's diameter twice
  expect(sizes("cross-pin")).toEqual(["12.7", "12.7", "48.6", "64.6"]);
  expect(sizes("wedge")).toHaveLength(5);
  expect(sizes("bed-face")).toHaveLength(5);
});

test("what is written at a peg of a layered core is where it is drilled, and the layers set back are those within the recess", () => {
  const layered = elevation(designWith({ ...WORKED, "core.layers": "auto" }));
  const picture = named("core-cuts", layered);
  const corner = picture.marks.find((mark) => mark.kind === "line" && mark.closed && mark.line === "outline")!;
  const [left, low] = (["x", "y"] as const).map((axis) => Math.min(...pointsOf(corner).map((at) => at[axis])));
  const rounds = picture.marks.flatMap((mark) =>
    mark.kind === "line" && mark.line === "cut"
      ? mark.segments.flatMap((s) => (s.kind === "arc" ? [s.centre] : []))
      : [],
  );
  const places = wordsOf(picture).flatMap((words) => {
    const [, x, y] = /^([\d.]+), ([\d.]+)$/.exec(words) ?? [];
    return x === undefined ? [] : [{ x: Number(x) + left!, y: Number(y) + low! }];
  });
  expect(places).toHaveLength(4);
  for (const { x, y } of places)
    expect(Math.min(...rounds.map((centre) => Math.hypot(centre.x - x, centre.y - y)))).toBeLessThan(0.01);
  // five layers of the core's 49.6 mm; the recess of 19 mm lies over the middle ones only
  const text = wordsOf(picture).join(" ");
  expect(text).toMatch(/layers? 2, 3 and 4|layers? 2 to 4|layers 2–4/i);
});

test("an arrow along the grain crosses no edge", () => {
  for (const picture of layoutPictures(worked)) {
    const edges = linesOf(picture)
      .filter(({ line, closed }) => (line === "outline" || line === "cut") && !closed)
      .flatMap(({ chords }) => chords);
    const arrows = picture.marks.flatMap((mark, i) => {
      const word = picture.marks[i + 4];
      return mark.kind === "line" && word?.kind === "text" && word.text === "grain" ? mark.segments : [];
    });
    for (const { from, to } of arrows) {
      expect(Math.hypot(to.x - from.x, to.y - from.y)).toBeGreaterThan(8);
      for (const [a, b] of edges) expect(chordsCross([from, to], [a, b]), picture.name).toBe(false);
    }
    if (/core|cheek|wedge/.test(picture.name)) expect(arrows.length, picture.name).toBeGreaterThan(0);
  }
});

test("inches are fractions of the shop's own", () => {
  const inches = elevation(
    designWith({ ...WORKED, units: "in", "body.height": 57.15, "shop.smallestFraction": "1/32" }),
  );
  const words = wordsOf(named("cheek-right", inches));
  expect(words).toContain("2 3/8 in (2.368)"); // 57.15 + 3 = 60.15 mm; 2 3/8 in is 60.325
  expect(words.join(" ")).not.toMatch(/\/64/);
});

test("a picture is as large as what is in it", () => {
  const marks = new Marks().text("words", { x: 40, y: 20 }, { size: 5, turn: 90 }).circle("thin", { x: 0, y: 0 }, 10);
  const picture = framePicture({ name: "x", title: "x" }, marks.all);
  expect(picture.width).toBeCloseTo(10 + 40 + 0.25 * 5 + 1, 6); // the letters' tails stand right of a line that runs up
  const mirrored = new Marks({ mirrored: true }).text("words", { x: 40, y: 0 }, { anchor: "start" });
  expect(mirrored.all[0]).toMatchObject({ at: { x: -40, y: 0 }, anchor: "end" });
});

test("in inches a mark is rounded on the layout as on the traveller: the ramp's up, the bed's down", () => {
  const inches = elevation(
    designWith({ ...WORKED, units: "in", "mouth.fromToe": 76.67, "shop.smallestFraction": "1/16" }),
  );
  const { ramp, bed } = { ramp: figureValue(inches, "rampMark")!, bed: figureValue(inches, "bedMark")! };
  const words = wordsOf(named("core-cuts", inches));
  const told = (name: string, mm: number, round: (x: number) => number) =>
    words.some((word) => {
      const [, whole = "0", top = "0", bottom = "1", caliper] =
        new RegExp(`^${name} (\\d+)? ?(?:(\\d+)/(\\d+))? in \\(([\\d.]+)\\)$`).exec(word) ?? [];
      const rule = Number(whole) + Number(top) / Number(bottom);
      return rule === round((mm / 25.4) * 16) / 16 && caliper === (Math.round((mm / 25.4) * 1000) / 1000).toFixed(3);
    });
  expect(told("ramp", ramp, Math.ceil)).toBe(true);
  expect(told("bed", bed, Math.floor)).toBe(true);
});

test("a sheet is glued to the side that is seen with the toe where the sheet has it", () => {
  // Standing behind the heel and looking to the toe, with the sole down: right is the cross product of forward and up.
  const cross = (a: readonly number[], b: readonly number[]) => a[0]! * b[1]! - a[1]! * b[0]!; // its z
  const rightIs = cross([-1, 0], [0, 1]); // the toe lies toward -x
  const leftIs = -rightIs;
  // A sheet with x to the right and y up is looked at against z: its eye stands where z is positive.
  const seenFrom = Math.sign(leftIs) === 1 ? "LEFT" : "RIGHT";
  const core = wordsOf(named("core-cuts")).join(" ");
  expect(core).toContain(`toe to the left`);
  expect(core).toContain(`${seenFrom} side of the core`);
  expect(core).toContain(`${seenFrom.toLowerCase()} side  → heel`);
  expect(core.toUpperCase()).not.toContain(seenFrom === "LEFT" ? "RIGHT SIDE" : "LEFT SIDE");
  // The same eye sees the inside of the cheek on the far side.
  const far = seenFrom === "LEFT" ? "right" : "left";
  expect(wordsOf(named(`cheek-${far}`)).join(" ")).toContain("inside up, toe to the left");
});
