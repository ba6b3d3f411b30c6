// One name has one value over commands, papers and page; every setting of the card stands in its step of `next`.
import {
  asBuiltPlane,
  buildNews,
  buildState,
  formatFigure,
  formatStepFigure,
  JOB_STEPS,
  LEAST_RUNS,
  STEPS,
  stepIndex,
  stockPlan,
  toleranceReport,
} from "@lamplane/bench";
import { findingWords, passedChecks } from "@lamplane/bench/checks";
import { elevationFigures } from "@lamplane/parameters/elevation";
import { type Design, STEP_NAMES, type Step } from "@lamplane/parameters/table";
import { formatLength, formatValue } from "@lamplane/parameters/units";
import { traveller } from "@lamplane/sheets";
import { describe, expect, test } from "vitest";
import { designWith } from "../support/designs.ts";

const JACK = {
  "iron.width": 50.8,
  "iron.thickness": 4,
  "bed.angle": 45,
  "mouth.opening": 0.8,
  "capIron.screwHead.diameter": 12,
  "capIron.screwHead.height": 6,
  "billet.length": 300,
  "billet.width": 95,
  "billet.height": 70,
  "shop.kerf": 1.2,
  "shop.millingAllowance": 2,
  "shop.jointingPass": 1,
};
const SMOOTHER = {
  units: "in",
  "iron.width": 38.1,
  "iron.thickness": 3.175,
  "capIron.thickness": 0,
  "body.length": 165.1,
  "body.height": 44.45,
};

const PLANES: readonly (readonly [string, Design])[] = [
  ["jack", designWith(JACK)],
  ["jack in inches", designWith({ ...JACK, units: "in" })],
  ["smoother", designWith(SMOOTHER)],
];

describe.each(PLANES)("%s", (_, design) => {
  const plane = asBuiltPlane(design);
  const { steps, setUps } = traveller(design);
  const stateAt = (step: Step): Design => {
    const before = STEP_NAMES[stepIndex(step) - 1];
    return before ? { ...design, measured: { ...design.measured, done: before } } : design;
  };

  test("one name, one value", () => {
    const sayings: (readonly [name: string, value: string, where: string])[] = [
      ...elevationFigures(plane).map(
        ({ key, name, value, unit }) => [name, formatFigure(design, key, value, unit), "figures"] as const,
      ),
      ...passedChecks(plane).map((finding) => {
        const { name, value } = findingWords(design, finding);
        return [name, value, "check"] as const;
      }),
      ...toleranceReport(design, { runs: LEAST_RUNS }).results.map(
        ({ label, planned }) => [label, formatValue(planned, "mm", design), "tolerance"] as const,
      ),
      ...steps.flatMap(({ key, numbers }) =>
        numbers.map(({ label, value }) => [label.replace(", feather off", ""), value, key] as const),
      ),
    ];
    const values = new Map<string, Set<string>>();
    for (const [name, value] of sayings) {
      const known = values.get(name.toLowerCase()) ?? new Set();
      values.set(name.toLowerCase(), known.add(value.replace(/, no (less|more)$/, "")));
    }
    expect([...values].filter(([, known]) => known.size > 1)).toEqual([]);
  });

  test("every fence stands in the step's numbers, sentences and drawing, on the card and in next", () => {
    const { sawLines } = stockPlan(plane).rip;
    const core = steps.find(({ key }) => key === "core")!;
    const texts = core
      .draw({ width: 180, height: 160 })
      .marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : []));
    const words = core.instructions.join("\n");
    const card = setUps.find(({ step }) => JOB_STEPS[step - 1] === "core")!.rows;
    const next = buildState(stateAt("core")).figures.filter(({ key }) => key.startsWith("fence"));
    for (const rows of [core.numbers, card])
      expect(rows.filter(({ label }) => /^Fence/.test(label))).toHaveLength(sawLines.length);
    expect(next.map(({ value }) => value)).toEqual(sawLines.map(({ fence }) => fence));
    sawLines.forEach(({ fence, frees }, i) => {
      expect(words).toContain(`Cut ${i + 1}, fence at ${formatLength(fence, design)}`);
      expect(words).toContain(`frees the ${frees}`);
      expect(texts.some((text) => text.startsWith(`fence, cut ${i + 1}: `))).toBe(true);
    });
    expect(words.match(/Cut \d, fence/g)).toHaveLength(sawLines.length);
    expect(core.numbers.filter(({ label }) => /rough|as sawn/i.test(label))).toEqual([]);
  });

  /** Settings of tools and sums over several steps, which `next` leaves to the card and the step's page. */
  const ON_PAPER_ONLY = [
    /^Cutter$/,
    /^Drill for the pegs$/,
    /take off$/,
    /^Leave for/,
    /off the sole it opens$/,
    /^Finished length$/,
  ];

  test("next has every size of the card at its step", () => {
    for (const { step, rows } of setUps) {
      const name = JOB_STEPS[step - 1] as Step;
      const figures = buildState(stateAt(name)).figures.map(({ key, value, unit }) =>
        formatStepFigure(design, key, value, unit),
      );
      const missing = rows.filter(
        ({ label, value }) => !ON_PAPER_ONLY.some((pattern) => pattern.test(label)) && !figures.includes(value),
      );
      expect(missing, STEPS[name].title).toEqual([]);
    }
  });
});

test("a core wider than planned moves wedge and pin alike in the news, at their step and in the stock list", () => {
  const design = designWith({
    ...JACK,
    "measured.ironThickness": 4,
    "measured.ironWidth": 50.8,
    "measured.coreWidth": 52,
  });
  const moved = buildNews(buildState(design))!.moved.map(({ key }) => key);
  expect(moved).toEqual(expect.arrayContaining(["wedgeWidth", "pinBody"]));
  const { steps, stock } = traveller(design);
  const sizeOf = (piece: string) => stock.rows.find(([name]) => name === piece)![3]!;
  const { numbers } = steps.find(({ key }) => key === "wedge")!;
  const number = (label: RegExp) => Number.parseFloat(numbers.find((row) => label.test(row.label))!.value);
  const [length, width] = sizeOf("wedge").split(" × ").map(Number) as [number, number];
  expect(width).toBe(number(/^Width of the wedge/));
  expect(length).toBe(number(/^Length of the wedge/));
  // A pin is as long as its body and both tenons.
  const pin = number(/shoulder to shoulder/) + 2 * number(/^Length of each tenon/);
  expect(Number.parseFloat(sizeOf("cross pin"))).toBeCloseTo(pin, 2);
});

test("the feather's height is asked for where it is cut, and the foot of the bed is read by it", () => {
  const steps = traveller(designWith({ ...JACK, "bed.angle": 47, "bed.featherChamfer": 2 })).steps;
  const words = (key: string) => steps.find((step) => step.key === key)!.instructions.join("\n");
  expect(words("bed")).toMatch(/Measure the height that it came to/);
  // Plane geometry: a chamfer of height c stands c·cot β behind the tip; cot 47° = 0.9325.
  expect(words("glue-up")).toContain("0.933 × the height to which the feather was cut (1.87 mm for 2 mm)");
});
