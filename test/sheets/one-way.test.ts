// What is done at the bench is said one way: traveller, layout, drawings, solids and jigs agree on glue, contact, pegs, wedge, pin and sole.
import { formatFigure, STEPS, stepWords } from "@lamplane/bench";
import { distance, outlineArea, tessellate } from "@lamplane/geometry";
import {
  bedLowerEdge,
  blocksAt,
  distanceToRamp,
  type Elevation,
  elevation,
  glueFreeArea,
  isPlacedByContact,
  pegHoles,
  planeToIron,
} from "@lamplane/parameters/elevation";
import { jigPlans } from "@lamplane/parameters/jigs";
import { partsOf } from "@lamplane/parameters/solids";
import type { Design } from "@lamplane/parameters/table";
import { layoutPictures, traveller } from "@lamplane/sheets";
import { describe, expect, test } from "vitest";
import { solePasses } from "../../packages/sheets/src/traveller/content/use.ts";
import { isBuildable } from "../support/buildable.ts";
import { designWith, randomDesigns, WORKED } from "../support/designs.ts";
import { type DrawnStep, drawnSteps, drawnTraveller, jigsOf } from "../support/travellers.ts";

const DESIGNS: readonly Design[] = [
  designWith(WORKED),
  designWith({ ...WORKED, units: "in", "shop.smallestFraction": "1/32" }),
  ...randomDesigns(61, 8, isBuildable).map(({ design }) => design),
];
const PLANES: readonly Elevation[] = DESIGNS.map((design) => elevation(design));

const told = new Map<Design, readonly DrawnStep[]>();
function stepsOf(design: Design): readonly DrawnStep[] {
  const steps = told.get(design) ?? drawnSteps(design);
  told.set(design, steps);
  return steps;
}
const stepOf = (design: Design, key: string): DrawnStep => stepsOf(design).find((step) => step.key === key)!;
const textOf = ({ title, task, why = "", numbers, instructions, checks, picture, cautions }: DrawnStep): string =>
  [
    title,
    task,
    why,
    ...numbers.map(({ label }) => label),
    ...instructions,
    ...checks,
    ...cautions.map(({ text }) => text),
    picture.title,
    ...picture.marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : [])),
  ].join("\n");
const jigUse = (plane: Elevation, name: string): string =>
  jigPlans(plane).find((plan) => plan.name === name)?.use ?? "";

describe("glue", () => {
  test("goes up to 3 to 5 mm of bed and ramp, in words and in the area drawn", () => {
    expect(textOf(stepOf(DESIGNS[0]!, "glue-up"))).toMatch(/up to 3 to 5 mm from bed and ramp/);
    expect(textOf(stepOf(DESIGNS[1]!, "glue-up"))).toMatch(/up to 1\/8 to 3\/16 in from bed and ramp/);
    for (const plane of PLANES) {
      const area = glueFreeArea(plane);
      expect(outlineArea(area)).toBeGreaterThan(outlineArea(blocksAt(plane, "blank").throat));
      const { thickness } = plane.design.iron;
      const [low, high] = [-plane.design.sole.allowance, plane.design.body.height];
      for (const p of tessellate(area)) {
        if (p.y < low + 1e-6 || p.y > high - 1e-6) continue;
        const offBed = -planeToIron(plane.frame, p).v - thickness;
        const offRamp = -distanceToRamp(plane.ramp, p);
        expect(Math.max(offBed, offRamp)).toBeGreaterThan(3);
        expect(Math.max(offBed, offRamp)).toBeLessThan(5);
      }
      const [first] = area;
      expect(distance(first!.from, area.at(-1)!.to)).toBeLessThan(1e-9);
    }
  });
  test("no step leaves a finger's breadth", () => {
    for (const step of stepsOf(DESIGNS[0]!)) expect(textOf(step)).not.toMatch(/finger's breadth/);
  });
});

test("contact with the bare iron governs the front block's place, and the spacer only checks it; by marks, the marks govern", () => {
  for (const [i, design] of DESIGNS.entries()) {
    const plane = PLANES[i]!;
    const words = textOf(stepOf(design, "dry-fit"));
    const marked = { ...design, hand: { ...design.hand, placing: "marks" as const } };
    expect(words.includes("Contact governs")).toBe(isPlacedByContact(plane));
    if (design.capIron.thickness > 0 && isPlacedByContact(plane)) expect(words).toMatch(/cap iron off/);
    expect(textOf(stepOf(marked, "dry-fit"))).toMatch(/The marks govern/);
    const spacer = jigUse(plane, "throat-spacer");
    if (spacer === "") continue;
    expect(spacer).toMatch(isPlacedByContact(plane) ? /^It checks .* contact with the iron sets it/ : /^It sets/);
    expect(jigUse(elevation(marked), "throat-spacer")).toMatch(/^It sets the blocks/);
  }
});

describe("peg holes are bored at the dry fit, through cheeks and block together", () => {
  test("before it no file drills one: drawings and layout mark where they go", () => {
    for (const plane of PLANES) {
      const pegs = pegHoles(plane);
      const parts = partsOf(plane, "blank");
      for (const { name, drawing } of parts) {
        const circles = (work: string) => drawing.entries.filter((e) => e.kind === "circle" && e.work === work).length;
        const own = { "cheek-left": pegs.length, "cheek-right": pegs.length }[name];
        const ofBlock = name === "front-block" || name === "bed-block" ? pegs.length / 2 : 0;
        if (name === "cross-pin") continue;
        expect(circles("MARK"), name).toBe(own ?? ofBlock);
        expect(circles("DRILL"), name).toBe(name.startsWith("cheek") ? 1 : 0);
        const notes = drawing.entries.flatMap((e) => (e.kind === "note" ? [e.text] : [])).join(" ");
        if ((own ?? ofBlock) > 0) expect(notes).toMatch(/bore at the dry fit/);
      }
      for (const { name, marks } of layoutPictures(plane)) {
        if (!name.startsWith("cheek") || pegs.length === 0) continue;
        const words = marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : [])).join(" ");
        expect(words).toMatch(/bore them at the dry fit, not now/);
      }
    }
  });
  test("solids of cheeks carry the pin's hole alone", () => {
    const plane = PLANES[0]!;
    const cheek = partsOf(plane, "blank").find(({ name }) => name === "cheek-left")!;
    const { trim, height, length } = plane.design.body;
    const face = (length + trim) * (height + plane.design.sole.allowance) - Math.PI * plane.pinHole.radius ** 2;
    // The drum of facets is a little smaller than its circle.
    expect(cheek.volume / (face * plane.widths.cheek)).toBeCloseTo(1, 4);
  });
  test("the traveller bores them there and nowhere else", () => {
    for (const [i, design] of DESIGNS.entries()) {
      if (pegHoles(PLANES[i]!).length === 0) continue;
      for (const step of stepsOf(design))
        expect(
          step.instructions.some((s) => /\bbore the peg holes/i.test(s)),
          step.key,
        ).toBe(step.key === "dry-fit");
    }
  });
});

test("both cheeks are bored at once, with the guide or without", () => {
  for (const [i, design] of DESIGNS.entries()) {
    expect(textOf(stepOf(design, "pin-hole"))).toMatch(/Bore through both at once/);
    expect(stepWords(design, "pin-hole").task).toMatch(/both cheeks together/);
    expect(jigUse(PLANES[i]!, "pin-guide")).toMatch(/[Bb]ore both at once/);
    expect(jigUse(PLANES[i]!, "pin-guide")).not.toMatch(/other cheek|second/);
  }
});

test("the wedge's blank is cut to length first, wherever it is spoken of", () => {
  for (const [i, design] of DESIGNS.entries()) {
    const step = textOf(stepOf(design, "wedge"));
    const wedge = layoutPictures(PLANES[i]!).find(({ name }) => name === "wedge")!;
    const words = wedge.marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : [])).join(" ");
    expect(step).toMatch(/cut it to length and width/);
    expect(words).toMatch(/Cut the blank to length and width first/);
    expect(jigUse(PLANES[i]!, "wedge-sled")).toMatch(/cut it to .* × /);
    for (const text of [step, words, jigUse(PLANES[i]!, "wedge-sled")])
      expect(text).not.toMatch(/longer blank|cut them off last/);
  }
});

test("the core lies one way on the saw, and the lines on its sides slope", () => {
  const words = textOf(stepOf(DESIGNS[0]!, "cuts"));
  expect(words).toMatch(/on its right side, sole against the fence/);
  expect(words).toMatch(/[Jj]oin them down both sides with a bevel/);
  expect(words).not.toMatch(/on all four sides/);
  expect(jigPlans(PLANES[0]!).find(({ name }) => name === "bed-gauge")!.registersAgainst).toMatch(
    /along the saw's fence, where the core's sole will lie/,
  );
});

test("the recess is measured from the bed's lower edge as it can be touched", () => {
  for (const plane of PLANES) {
    const tip = blocksAt(plane, "blank").bedChain.at(-1)!.from;
    expect(planeToIron(plane.frame, tip).s).toBeCloseTo(bedLowerEdge(plane), 9);
  }
  const design = designWith({ ...WORKED, "bed.featherChamfer": 1.2 });
  const plane = elevation(design);
  const up = plane.recess!.low - bedLowerEdge(plane);
  const step = stepOf(design, "recess");
  const read = step.numbers.find(({ label }) => label.includes("lower edge"))!;
  expect(Number.parseFloat(read.value)).toBeCloseTo(up, 2);
  const shown = String(Math.round(up * 100) / 100);
  const drawn = step.picture.marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : []));
  const face = layoutPictures(plane)[1]!.marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : []));
  expect(drawn).toContain(shown);
  expect(face).toContain(shown);
});

test("the sole goes down in coarse shavings, iron out, to half a millimetre, and then in fine ones", () => {
  for (const [units, division] of [
    ["mm", 0.1],
    ["in", 25.4 / 64],
  ] as const) {
    for (const toTake of [0, 0.3, 0.5, 0.51, 2.5, 2.9, 6]) {
      const { coarse, fine } = solePasses(toTake, units);
      expect(coarse + fine).toBeCloseTo(toTake, 12);
      expect(fine).toBeGreaterThanOrEqual(Math.min(toTake, 0.5) - 1e-9);
      expect(fine).toBeLessThan(0.5 + division);
      expect(coarse / division).toBeCloseTo(Math.round(coarse / division), 9);
    }
  }
  expect(solePasses(2.5, "mm").coarse).toBeCloseTo(2, 12);
  const words = textOf(stepOf(DESIGNS[0]!, "sole"));
  expect(words).toMatch(/Iron and wedge out: take .* jack or jointer/);
  expect(STEPS.sole.task).toMatch(/with the iron out/);
});

test("a core in layers without a recess: no step but its own speaks of one", () => {
  const spoken = (capIron: number) =>
    stepsOf(designWith({ ...WORKED, "core.layers": "auto", "capIron.thickness": capIron }))
      .filter((step) => /recess/i.test(textOf(step)))
      .map(({ key }) => key);
  expect(spoken(0)).toEqual(["recess"]);
  expect(spoken(3.2)).toEqual(expect.arrayContaining(["core", "cuts", "recess"]));
});

test("a single iron's sheets speak of no cap iron and no screw", () => {
  const single = randomDesigns(62, 4, (design) => design.capIron.thickness === 0 && isBuildable(design));
  for (const { design } of single) {
    const sheets = drawnTraveller(design);
    const all = [
      ...sheets.steps.map(textOf),
      ...sheets.tools,
      ...jigsOf(sheets).map(({ title, use, against }) => `${title} ${use} ${against}`),
      stepWords(design, "recess").title,
      stepWords(design, "recess").task,
      ...layoutPictures(elevation(design)).flatMap(({ marks }) =>
        marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : [])),
      ),
    ].join("\n");
    const spoken = all.split("\n").filter((line) => /cap iron|screw(?!ed)/i.test(line));
    expect(spoken).toEqual([]);
  }
});

test("the drill, the pegs and the two tips are one number on every sheet", () => {
  for (const [i, design] of DESIGNS.entries()) {
    const plane = PLANES[i]!;
    const drill = stepOf(design, "pin-hole").numbers.find(({ label }) => label === "Drill")!.value;
    const cheeks = layoutPictures(plane).filter(({ name }) => name.startsWith("cheek"));
    const wordsOf = ({ marks }: (typeof cheeks)[number]) =>
      marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : [])).join("\n");
    for (const cheek of cheeks) expect(wordsOf(cheek)).toContain(`pin hole ⌀ ${drill} `);
    expect(traveller(design).tools.join("\n")).toContain(`drill ⌀ ${drill}`);
    expect(textOf(stepOf(design, "pin-hole")).replaceAll("\n", " ")).toContain(`⌀ ${drill}, both cheeks at once`);
    expect(jigPlans(plane).find(({ name }) => name === "pin-guide")!.title).toContain(drill);
    const rowOf = (key: string, label: string) =>
      stepOf(design, key).numbers.find((row) => row.label.startsWith(label));
    for (const tip of ["Bed tip", "Ramp tip"]) expect(rowOf("glue-up", tip)!.value).toBe(rowOf("dry-fit", tip)!.value);
    const [bedAtLayout] = /^bed (\d.*)$/m.exec(wordsOf(cheeks[0]!)) ?? [];
    expect(bedAtLayout!.startsWith(`bed ${rowOf("glue-up", "Bed tip")!.value.replace(/ mm$/, "")}`)).toBe(true);
  }
});

test("a hole has one name everywhere: its drill's, where the chart has the size", () => {
  for (const [i, design] of DESIGNS.entries()) {
    const mm = 2 * PLANES[i]!.pinHole.radius;
    const name = formatFigure(design, "pinHoleDiameter", mm, "mm");
    const step = stepOf(design, "pin-hole");
    expect(step.numbers.some(({ value }) => value === name)).toBe(true);
    expect(
      step.picture.marks.some((mark) => mark.kind === "text" && mark.text.includes(`⌀ ${name.split(" ")[0]}`)),
    ).toBe(true);
  }
  // 25/64 in is 0.3906 in. Fractional sizes of ASME B94.11M (from memory)
  const inches = designWith({ units: "in", "shop.smallestFraction": "1/32" });
  expect(formatFigure(inches, "pinHoleDiameter", (25 / 64) * 25.4, "mm")).toBe("25/64 in");
  expect(formatFigure(inches, "coreWidth", (25 / 64) * 25.4, "mm")).toBe("13/32− in (0.391)");
});
