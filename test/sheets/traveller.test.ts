// The traveller's steps: in the order of the work, with every figure and blank of the bench, safely rounded, and drawn without a clash.
import {
  CAUTIONS,
  expectedValue,
  MEASURED_KEYS,
  MEASURED_ROWS,
  measuredUnit,
  measuringStep,
  planeBeforeStep,
  STEPS,
  type Step,
} from "@lamplane/bench";
import { tessellate } from "@lamplane/geometry";
import { FIGURES, figureValue } from "@lamplane/parameters/elevation";
import { type Design, STEP_NAMES } from "@lamplane/parameters/table";
import {
  type Picture,
  type PictureRoom,
  STEP_ROOM,
  type TextMark,
  type TravellerStep,
  textCorners,
  traveller,
  travellerSteps,
} from "@lamplane/sheets";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { isBuildable } from "../support/buildable.ts";
import { designWith, randomDesigns, WORKED } from "../support/designs.ts";
import { drawnStep } from "../support/travellers.ts";

const CURVED = { ...WORKED, "bed.angle": 55, "ramp.angle": "auto", "pin.height": "auto", "mouth.fromToe": "auto" };
const IN_INCHES = { ...WORKED, units: "in", "shop.smallestFraction": "1/32" };

const stepsOf = (design: Design) => new Map(travellerSteps(design).map((step) => [step.key, step]));
const all = (step: TravellerStep) =>
  [
    ...step.numbers.map(({ value }) => value),
    ...step.blanks.map(({ expected }) => expected),
    ...step.instructions,
  ].join("\n");

test("steps stand in the bench's order, with the wood before and the season after", () =>
  expect(travellerSteps(designWith(WORKED)).map(({ key }) => key)).toEqual([
    "stock",
    ...STEP_NAMES,
    "first-shaving",
    "season",
  ]));

/** What is left of the sole is told at the mouth only once the sole has been trued: before, it would say all of it. */
const NOT_YET = new Set(["mouth soleToTake"]);

describe.each([
  ["straight, in mm", WORKED],
  ["curved, in mm", CURVED],
])("every figure of the bench's steps stands in its step: %s", (_, changes) => {
  const design = designWith(changes);
  const steps = stepsOf(design);
  test.each(STEP_NAMES)("%s", (name) => {
    for (const key of STEPS[name].figures) {
      const plane = planeBeforeStep(design, name);
      const value = figureValue(plane, key);
      if (value === undefined || NOT_YET.has(`${name} ${key}`)) continue;
      const { unit } = FIGURES[key];
      const shown = `${Math.round(value * 100) / 100}${unit === "mm" ? " mm" : unit}`;
      expect(all(steps.get(name)!), key).toContain(shown);
    }
  });
});

test("a size that may err one way only says so in words beside the number", () => {
  const steps = stepsOf(designWith(IN_INCHES));
  const cheek = steps.get("core")!.numbers.find(({ label }) => label === "Each cheek, milled")!;
  expect(cheek.value).toMatch(/, no less$/);
  const tenons = steps.get("wedge")!.numbers.find(({ label }) => label === "Tenon diameter")!;
  expect(tenons.value).toMatch(/, no more$/);
});

test("every value that is measured has its blank, in its own step, with what is expected there", () => {
  for (const changes of [WORKED, CURVED]) {
    const design = designWith(changes);
    const steps = stepsOf(design);
    for (const key of MEASURED_KEYS) {
      const blank = steps.get(measuringStep(key))!.blanks.find((each) => each.key === key);
      const expected = expectedValue(design, key);
      expect(blank !== undefined, key).toBe(expected !== undefined);
      if (MEASURED_ROWS[key].rule || expected === undefined) continue;
      const unit = measuredUnit(key) === "°" ? "°" : " mm";
      expect(blank!.expected, key).toBe(`${Math.round(expected * 100) / 100}${unit}`);
    }
  }
});

test("the mouth is read more than once, from closed to the one wanted; the sole stops short of the plan", () => {
  const steps = stepsOf(designWith(WORKED));
  expect(steps.get("mouth")!.blanks[0]).toMatchObject({ times: 4, expected: "closed at first, 0.15 mm in the end" });
  const [stop] = steps.get("sole")!.numbers.filter(({ label }) => label === "Of it, leave for the mouth");
  expect(Number.parseFloat(stop!.value)).toBeGreaterThan(0);
});

test("what came out stands in its blank, its step is ticked, and what follows says what it was", () => {
  const design = {
    ...designWith(WORKED),
    measured: { ...designWith(WORKED).measured, ironThickness: 3.6, coreWidth: 50.1 },
  };
  const steps = stepsOf(design);
  expect(steps.get("core")!.blanks.find(({ key }) => key === "coreWidth")!.measured).toBe("50.1 mm");
  expect([steps.get("core")!.done, steps.get("cuts")!.done]).toEqual([true, false]);
  const wedgeWidth = steps.get("wedge")!.numbers.find(({ label }) => label === "Width of the wedge")!;
  expect(wedgeWidth).toMatchObject({ value: "48.5 mm, no more", was: "48 mm" });
  expect(steps.get("core")!.numbers.find(({ label }) => label === "Core, milled")!.value).toBe("49.6 mm, no less");
});

test("a saw that does not swing so far is told of with the ways round it; one that does is not", () => {
  const text = (bed: number) =>
    stepsOf(designWith({ ...WORKED, "bed.angle": bed, "ramp.angle": 67 }))
      .get("cuts")!
      .instructions.join(" ");
  const steep = text(41);
  for (const word of ["49°", "45°", "wedge of 4°", "bandsaw", "complement, 41°", "handsaw"])
    expect(steep).toContain(word);
  expect(text(47)).not.toContain("your saw stops");
});

test("what must be done at the bench is told", () => {
  const steps = stepsOf(designWith(CURVED));
  const told = (key: Step | "stock" | "season") => {
    const { task, instructions, checks } = steps.get(key)!;
    return [task, ...instructions, ...checks].join(" ");
  };
  const wanted: readonly [Step | "stock" | "season", readonly RegExp[]][] = [
    ["stock", [/rings/, /[Ff]lat or rift sawn/, /run down toward the heel/]],
    ["core", [/matching marks/, /stand clear of every kerf/]],
    ["cuts", [/disc, belt, rasp or plane/, /[Aa] drum cannot form it/]],
    ["bed", [/straightedge/, /lamplane survey/, /never humped/]],
    ["dry-fit", [/once more against the clock/, /pegs/]],
    ["glue-up", [/[Ww]ax the pin/, /let the blank rest/]],
    ["sole", [/working tension/, /draw the edge back/, /with at least .* of wood still to come off/]],
    ["mouth", [/^Set/, /Read:/, /read again, and go on/, /\(wanted − seen\) \/ 0\.97/]],
    ["season", [/[Tt]rue the sole only as much/, /opens the mouth as above/]],
  ];
  for (const [key, patterns] of wanted) for (const pattern of patterns) expect(told(key), key).toMatch(pattern);
});

test("every caution stands at a step of its kind of work, and says where it comes from", () => {
  const steps = [...stepsOf(designWith(CURVED)).values()];
  const used = new Set(steps.flatMap(({ cautions }) => cautions.map(({ text }) => text)));
  for (const { text, source } of Object.values(CAUTIONS)) {
    expect(used, text).toContain(text);
    expect(source.length).toBeGreaterThan(5);
  }
  const at = (key: string) =>
    steps
      .find((step) => step.key === key)!
      .cautions.map(({ text }) => text)
      .join(" ");
  expect(at("cuts")).toMatch(/short for a mitre saw.*tilted or swung blade.*disc or belt/s);
  expect(at("recess")).toMatch(/climb cut/);
  expect(at("core")).toMatch(/push stick/);
});

test("a season's gaps are those of the year's figures", () => {
  const step = stepsOf(designWith(WORKED)).get("season")!;
  const side = step.numbers.find(({ label }) => label.startsWith("Side play of the iron"))!;
  // American beech, 49.6 mm, rings at 20°, 6.2 to 12.0 % moisture: about 1.2 mm of movement (Wood Handbook, eq. 13-2).
  const [least, most] = side.value.split(" to ").map(Number.parseFloat) as [number, number];
  expect(most - least).toBeGreaterThan(0.9);
  expect(most - least).toBeLessThan(1.5);
});

/** Points that a picture's marks reach, arcs in chords. */
const reached = ({ marks }: Picture) =>
  marks.flatMap((mark) =>
    mark.kind === "text"
      ? textCorners(mark)
      : (mark.kind === "area" ? mark.boundaries.flat() : mark.segments).flatMap((s) => [
          ...tessellate([s], 0.05),
          s.to,
        ]),
  );

/** A small room for a drawing, most of a page, and a phone's screen, mm. */
const ROOMS: readonly PictureRoom[] = [
  ...[50, 160].map((height) => ({ ...STEP_ROOM, height })),
  ...[75].map((width): PictureRoom => ({ width, height: 150, names: "below" })),
];
const PAGE_MARGIN = 6; // mm: A4's column is as much wider than the usual room
const SMALLEST_LETTERS = 2.4; // mm

function clashes({ marks }: Picture): string[] {
  const boxes = marks
    .filter((mark): mark is TextMark => mark.kind === "text" && mark.text !== "")
    .map((mark) => {
      const corners = textCorners(mark);
      const [xs, ys] = [corners.map((p) => p.x), corners.map((p) => p.y)];
      return {
        text: mark.text,
        left: Math.min(...xs),
        right: Math.max(...xs),
        low: Math.min(...ys),
        high: Math.max(...ys),
      };
    });
  const by = 0.3; // mm by which boxes, which are larger than the letters in them, may touch
  return boxes.flatMap((a, i) =>
    boxes
      .slice(i + 1)
      .filter((b) => a.left + by < b.right && b.left + by < a.right && a.low + by < b.high && b.low + by < a.high)
      .map((b) => `${a.text} | ${b.text}`),
  );
}

describe("pictures of many planes", () => {
  let pictures: readonly (readonly [string, Picture, PictureRoom])[] = [];
  beforeAll(() => {
    const designs = [
      designWith(WORKED),
      designWith(CURVED),
      designWith(IN_INCHES),
      ...randomDesigns(41, 4, isBuildable).map(({ design }) => design),
      ...randomDesigns(42, 3, (design) => isBuildable({ ...design, units: "in" })).map(({ design }) => ({
        ...design,
        units: "in" as const,
      })),
    ];
    pictures = designs.flatMap((design, i) => {
      const { section, steps } = traveller(design);
      return ROOMS.flatMap((room) => {
        const drawn = steps.map((step) => drawnStep(step, room));
        const jigs = drawn.flatMap((step) => step.jigs.flatMap(({ picture }) => picture ?? []));
        return [section(room), ...drawn.map(({ picture }) => picture), ...jigs].map(
          (picture) => [`${picture.name} of design ${i}, ${room.width} × ${room.height}`, picture, room] as const,
        );
      });
    });
  });

  afterAll(() => {
    pictures = []; // the workers keep every test file: what it holds is what they carry on
  });

  test("are finite and lie inside their frames", () => {
    expect(pictures.length).toBeGreaterThan(200);
    for (const [name, picture] of pictures)
      for (const { x, y } of reached(picture)) {
        const inside = x >= -1e-6 && y >= -1e-6 && x <= picture.width + 1e-6 && y <= picture.height + 1e-6;
        expect(inside, `${name}: ${x}, ${y} in ${picture.width} × ${picture.height}`).toBe(true);
      }
  });

  test("fit their column with letters that can be read", () => {
    for (const [name, picture, { width }] of pictures) {
      expect(picture.width, name).toBeLessThanOrEqual(width + PAGE_MARGIN);
      for (const mark of picture.marks)
        if (mark.kind === "text") expect(mark.size, `${name}: ${mark.text}`).toBeGreaterThanOrEqual(SMALLEST_LETTERS);
    }
  });

  test("have no words over other words", () => {
    for (const [name, picture] of pictures) expect(clashes(picture), name).toEqual([]);
  });

  test("name the same parts below as beside, each by a letter", () => {
    const [beside, below] = (["beside", "below"] as const).map((names) =>
      drawnStep(stepsOf(designWith(WORKED)).get("season")!, { ...STEP_ROOM, names }).picture.marks.flatMap((mark) =>
        mark.kind === "text" ? [mark.text] : [],
      ),
    );
    const letters = ["a", "b", "c", "d"];
    expect(below!.filter((text) => letters.includes(text)).sort()).toEqual([...letters, ...letters].sort());
    // beside the drawing a name may be broken into lines
    const words = (texts: readonly string[]) =>
      texts
        .filter((text) => !letters.includes(text))
        .join(" ")
        .split(" ");
    const isScale = (word: string) => word.startsWith("(");
    expect(
      words(below!)
        .filter((word) => !isScale(word))
        .sort(),
    ).toEqual(
      words(beside!)
        .filter((word) => !isScale(word))
        .sort(),
    );
  });
});
