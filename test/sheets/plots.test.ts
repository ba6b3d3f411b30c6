// Plots as a reader meets them: round ticks, every number finite and inside, and no words over other words.
import { lifeDepth } from "@lamplane/bench";
import { elevation, mouthOpeningAt, throatSeries } from "@lamplane/parameters/elevation";
import {
  lengthAxis,
  mouthPlot,
  niceStep,
  numberAxis,
  type Picture,
  type PictureMark,
  plotPicture,
  type SeasonGaps,
  seasonsPlot,
  sharesPlot,
  throatPlot,
} from "@lamplane/sheets";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { isBuildable } from "../support/buildable.ts";
import { designWith, randomDesigns, seeded, WORKED } from "../support/designs.ts";
import { expectSound, textsOf } from "../support/sound-picture.ts";

const wordsOf = (picture: Picture): string =>
  textsOf(picture)
    .map(({ text }) => text)
    .join(" ");
const strongLines = ({ marks }: Picture) => marks.filter((mark) => mark.kind === "line" && mark.line === "strong");

describe("axes", () => {
  const range = fc
    .tuple(fc.double({ min: -500, max: 500, noNaN: true }), fc.double({ min: 1e-3, max: 900, noNaN: true }))
    .map(([least, more]) => ({ label: "x", least, greatest: least + more }));

  test("of numbers: ticks on 1, 2 or 5 times a power of ten, written as they stand, holding all data", () => {
    fc.assert(
      fc.property(range, (need) => {
        const { from, to, ticks } = numberAxis(need, "%");
        expect(from).toBeLessThanOrEqual(need.least + 1e-9);
        expect(to).toBeGreaterThanOrEqual(need.greatest - 1e-9);
        expect(ticks.length).toBeGreaterThanOrEqual(2);
        expect(ticks.length).toBeLessThanOrEqual(8);
        for (const { at, text } of ticks) expect(Number(text)).toBeCloseTo(at, 9);
        const step = ticks[1]!.at - ticks[0]!.at;
        const leading = step / 10 ** Math.floor(Math.log10(step) + 1e-9);
        expect([1, 2, 5].some((nice) => Math.abs(leading - nice) < 1e-6)).toBe(true);
      }),
      { seed: 5 },
    );
  });

  test("of lengths: mm in mm, inches in decimals under one inch and on a rule's fractions over it", () => {
    const mm = lengthAxis({ label: "x", least: 0, greatest: 41.7 }, "mm");
    expect(mm.ticks.map(({ text }) => text)).toEqual(["0", "10", "20", "30", "40", "50"]);
    const fine = lengthAxis({ label: "x", least: 0, greatest: 5.39 }, "in");
    expect(fine.ticks.map(({ text }) => text)).toEqual(["0", "0.05", "0.10", "0.15", "0.20", "0.25"]);
    expect(fine.ticks.at(-1)!.at).toBeCloseTo(0.25 * 25.4, 9);
    const coarse = lengthAxis({ label: "x", least: 0, greatest: 45.5 }, "in");
    expect(coarse.ticks.map(({ text }) => text)).toEqual(["0", "1/2", "1", "1 1/2", "2"]);
    expect(coarse.ticks[1]!.at).toBeCloseTo(12.7, 9);
  });

  test("may end with the data, their ticks within", () => {
    fc.assert(
      fc.property(range, (need) => {
        const { from, to, ticks } = numberAxis({ ...need, tight: true }, "");
        expect([from, to]).toEqual([need.least, need.greatest]);
        expect(ticks.length).toBeGreaterThanOrEqual(2);
        for (const { at } of ticks) expect(at >= from - 1e-6 && at <= to + 1e-6).toBe(true);
      }),
      { seed: 6 },
    );
  });

  test("of one value alone have a range all the same", () => {
    for (const value of [0, 3, -2]) {
      const { from, to, ticks } = numberAxis({ label: "x", least: value, greatest: value, tight: true }, "");
      expect(to).toBeGreaterThan(from);
      expect(ticks.length).toBeGreaterThanOrEqual(2);
    }
    expect(niceStep(10, 5)).toBe(2);
    expect(niceStep(10.1, 5)).toBe(5);
  });
});

const DESIGNS = randomDesigns(51, 60, isBuildable);

describe.each(["mm", "in"] as const)("plots of random designs in %s", (units) => {
  test("of the mouth", () => {
    for (const { design } of DESIGNS) expectSound(mouthPlot(elevation({ ...design, units })));
  });
  test("of the throat", () => {
    for (const { design } of DESIGNS) expectSound(throatPlot(elevation({ ...design, units })));
  });
});

test("plots of designs at their limits", () => {
  for (const changes of [
    { "sole.allowance": 0 },
    { "mouth.opening": 0 },
    { "mouth.opening": 10 },
    { "sole.allowance": 20 },
    { "capIron.thickness": 0 },
    { name: "a-name-that-is-as-long-as-a-name-may-be-and-then-no-longer-x" },
    { "bed.angle": 65, "ramp.wearHeight": 0.5, "mouth.opening": 1 },
  ]) {
    const plane = elevation(designWith(changes));
    expectSound(mouthPlot(plane));
    expectSound(throatPlot(plane));
  }
});

test("the mouth's plot ends at the life's end, and marks the trued sole, the mouth wanted and the wear's end", () => {
  const plane = elevation(designWith(WORKED));
  const picture = mouthPlot(plane);
  expect(picture).toMatchObject({ name: "mouth-over-life", width: 160, height: 90 });
  const end = mouthOpeningAt(plane, lifeDepth(plane)).toFixed(2);
  expect(wordsOf(picture)).toContain(`mouth: ${end} mm after 1 mm of later truings`);
  expect(wordsOf(picture)).toMatch(/trued sole, 3 mm off: the mouth wanted/);
  expect(wordsOf(picture)).toMatch(/wanted: 0\.15 mm/);
  expect(wordsOf(picture)).toMatch(/the edge comes through, 2\.9 mm off/);
  expect(wordsOf(picture)).not.toMatch(/wear/);
  const curved = mouthPlot(elevation(designWith({ "bed.angle": 55, "ramp.wearHeight": 1, "mouth.opening": 0.8 })));
  expect(wordsOf(curved)).toMatch(/the wear ends/);
});

test("the throat's plot draws every station and marks the choke where there is one", () => {
  const open = elevation(designWith(WORKED));
  const [line] = strongLines(throatPlot(open));
  expect(line).toMatchObject({ segments: { length: throatSeries(open).length - 1 } });
  expect(wordsOf(throatPlot(open))).not.toMatch(/narrows/);
  const choking = elevation(designWith({ "bed.angle": 60, "ramp.shape": "straight", "ramp.angle": 80 }));
  expect(wordsOf(throatPlot(choking))).toMatch(
    /narrows here by 0\.\d+ mm, to 0\.?\d* mm at the cap iron.*narrows here by .* at the pin/,
  );
  expectSound(throatPlot(choking));
});

describe("seasons", () => {
  const random = seeded(3);
  const year = (slope: number): SeasonGaps[] =>
    Array.from({ length: 25 }, (_, i) => ({
      moisture: 6 + i / 4,
      sideGap: 1.3 + slope * i,
      pinEndGap: 0.3 + slope * i * random(),
      wedgeGap: 1.4,
    }));

  test("names each line at its end with its least gap, also below 0, in both units", () => {
    for (const units of ["mm", "in"] as const)
      for (const slope of [0.02, 0, -0.02, -0.09])
        expectSound(seasonsPlot(year(slope), { units, of: "smoother", planned: 8, leastGap: 0.2 }));
    expect(wordsOf(seasonsPlot(year(0.02), { units: "mm" }))).toMatch(/side play of the iron: least 1\.3 mm/);
  });

  test("leaves out what the tables do not know, and says so where they know nothing", () => {
    const rows = year(0.01).map(({ moisture, sideGap }) => ({ moisture, sideGap, wedgeGap: undefined }));
    expect(wordsOf(seasonsPlot(rows, { units: "mm" }))).not.toMatch(/wedge|pin/);
    const nothing = seasonsPlot(
      rows.map(({ moisture }) => ({ moisture })),
      { units: "mm", planned: 8 },
    );
    expectSound(nothing);
    expect(nothing.title).toMatch(/no movement figures/);
    expectSound(seasonsPlot([], { units: "mm" }));
  });

  test("is plotted over humidity where every row has it", () => {
    const rows = year(0.01).map((row) => ({ ...row, humidity: row.moisture * 5 }));
    const picture = seasonsPlot(rows, { units: "mm" });
    expect(wordsOf(picture)).toMatch(/relative humidity, %/);
    const ticks = textsOf(picture).map(({ text }) => text);
    expect(ticks).toEqual(expect.arrayContaining(["30", "40", "50", "60"]));
    expect(wordsOf(seasonsPlot(rows.slice(0, 5).concat({ ...year(0)[9]! } as never), { units: "mm" }))).toMatch(
      /moisture/,
    );
  });

  test("marks what was cut on the line itself", () => {
    // Between two rows, where the line must be followed and not a row's own value.
    const picture = seasonsPlot(year(0.02), { units: "mm", planned: 8.1 });
    const dot = picture.marks.find((mark) => mark.kind === "area")!;
    const [line] = strongLines(picture);
    const right = (dot as Extract<PictureMark, { kind: "area" }>).boundaries[0]![0]!.from;
    const { segments } = line as Extract<PictureMark, { kind: "line" }>;
    const centre = { x: right.x - 0.8, y: right.y };
    const over = segments.find(({ from, to }) => from.x <= centre.x && centre.x <= to.x)!;
    const share = (centre.x - over.from.x) / (over.to.x - over.from.x);
    expect(share).toBeCloseTo(0.4, 6);
    expect(over.from.y + share * (over.to.y - over.from.y)).toBeCloseTo(centre.y, 6);
  });
});

describe("shares", () => {
  const options = { name: "mouth-shares", title: "Which step decides the mouth", axis: "share of the variance" };
  const rows = [
    { label: "height at which the iron is clamped at glue-up", share: 0.62, note: "± 0.2 mm; halve it first" },
    { label: "ramp's saw angle", share: 0.379 },
    { label: "sole", share: 0.001, note: "± 0.05 mm" },
    { label: "iron", share: 0 },
  ];

  test("are bars in their order, as long as their shares, each with its figure", () => {
    const picture = sharesPlot(rows, options);
    expectSound(picture);
    const bars = picture.marks.flatMap((mark) => (mark.kind === "area" ? [mark.boundaries[0]!] : []));
    const lengths = bars.map((bar) => bar[0]!.to.x - bar[0]!.from.x);
    expect(lengths[1]! / lengths[0]!).toBeCloseTo(0.379 / 0.62, 6);
    expect(bars).toHaveLength(3);
    expect(wordsOf(picture)).toMatch(/62 %: .*38 %.*under 1 %: .* 0 %/);
  });

  test("fit for any number of rows, and a share that is none is our bug", () => {
    for (const count of [0, 1, 7, 15, 30])
      expectSound(
        sharesPlot(
          Array.from({ length: count }, (_, i) => ({ ...rows[i % 4]!, share: 1 / (i + 1) })),
          options,
        ),
      );
    expect(() => sharesPlot([{ label: "x", share: Number.NaN }], options)).toThrow(/share/);
  });
});

test("a plot with a point outside its axes, or that is no number, is our bug", () => {
  const axis = numberAxis({ label: "x", least: 0, greatest: 1 }, "");
  const plot = (y: number) => () =>
    plotPicture({
      name: "p",
      title: "p",
      x: axis,
      y: axis,
      series: [
        {
          label: "a",
          line: "strong",
          points: [
            { x: 0, y: 0 },
            { x: 1, y },
          ],
        },
      ],
    });
  expect(plot(1)).not.toThrow();
  expect(plot(1.1)).toThrow(/outside/);
  expect(plot(Number.NaN)).toThrow(/plot p/);
});
