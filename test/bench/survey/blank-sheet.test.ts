// The sheet to fill in fits every bed, and the bed's size is that of the block as it is sawn.
import { bedExtent, blankSheet, isOverRecess, judgeBed, parseSurvey, stationsInRecess } from "@lamplane/bench";
import { blocksAt, elevation, figureValue } from "@lamplane/parameters/elevation";
import { describe, expect, test } from "vitest";
import { isBuildable } from "../../support/buildable.ts";
import { designWith, randomDesigns } from "../../support/designs.ts";

const planes = randomDesigns(61, 60, isBuildable).map(({ design }) => elevation(design));
const smoother = elevation(designWith());

/** The sheet with the same leaf refused everywhere: a bed as flat as that leaf can tell. */
const filled = (sheet: string, leaf: string) => sheet.replaceAll("refuses: }", `refuses: ${leaf} }`);

test("the bed reaches from its tip on the blank's sole to the blank's flat top", () => {
  for (const plane of planes) {
    const { length, width } = bedExtent(plane);
    const top = blocksAt(plane, "blank").bedChain.at(-1)!.to;
    const { bedTip } = plane.points;
    expect(length).toBeCloseTo(Math.hypot(top.x - bedTip.x, top.y - bedTip.y), 6);
    expect(width).toBe(figureValue(plane, "coreWidth"));
  }
});

describe("the sheet", () => {
  test("is refused as it is printed, at the first empty station, and read whole once it is filled in", () => {
    for (const units of ["mm", "in"] as const)
      for (const { design } of planes) {
        const plane = elevation({ ...design, units });
        const [sheet, bed] = [blankSheet(plane), bedExtent(plane)];
        const { faults } = parseSurvey(sheet, bed);
        expect(faults![0]!.path).toBe("straightedge.0.gaps.0.refuses");
        const { readings, faults: none } = parseSurvey(filled(sheet, "0.02 mm"), bed);
        expect(none).toBeUndefined();
        expect(readings!.straightedges).toHaveLength(5);
      }
  });

  test("tells the whole bed: with the leaf that it names, an even bed passes", () => {
    const usual = planes.filter(({ design }) => design.bed.featherChamfer <= 3).slice(0, 8);
    for (const [i, { design }] of usual.entries()) {
      const units = i % 2 === 0 ? "mm" : "in";
      const plane = elevation({ ...design, units });
      const bed = bedExtent(plane);
      const sheet = blankSheet(plane);
      const leaf = /Thinnest leaf ([\d.]+ (mm|in))/.exec(sheet)![1]!;
      const { readings } = parseSurvey(filled(sheet, leaf), bed);
      expect(judgeBed(readings!, bed)).toMatchObject({ verdict: "flat", passes: true, missing: [] });
    }
  });

  test("keeps off the feather chamfer and the edges, also on the narrowest bed", () => {
    for (const changes of [{}, { "iron.width": 8, "body.sideClearance": 0.1 }, { "bed.featherChamfer": 9 }])
      for (const units of ["mm", "in"] as const) {
        const plane = elevation({ ...designWith(changes), units });
        const bed = bedExtent(plane);
        const { readings } = parseSurvey(filled(blankSheet(plane), "0.02 mm"), bed);
        for (const { from, to, gaps } of readings!.straightedges) {
          expect(gaps.length).toBeGreaterThanOrEqual(3);
          for (const { along, across } of [from, to]) {
            const above = along * Math.sin((plane.frame.bedAngle * Math.PI) / 180);
            expect(above).toBeGreaterThanOrEqual(plane.design.bed.featherChamfer - 1e-9);
            expect(Math.min(across, bed.width - across)).toBeGreaterThan(1);
          }
        }
      }
  });
});

describe("stations in the recess", () => {
  const bed = bedExtent(smoother);
  const low =
    figureValue(smoother, "recessFromBedEdge")! + smoother.design.sole.allowance / Math.sin((47 * Math.PI) / 180);

  test("lie above its lower end and between its lands", () => {
    expect(isOverRecess(smoother, { along: low + 0.1, across: bed.width / 2 })).toBe(true);
    expect(isOverRecess(smoother, { along: low - 0.1, across: bed.width / 2 })).toBe(false);
    const land = figureValue(smoother, "recessLand")!;
    expect(isOverRecess(smoother, { along: low + 10, across: land - 0.1 })).toBe(false);
    expect(isOverRecess(smoother, { along: low + 10, across: land + 0.1 })).toBe(true);
    const single = elevation(designWith({ "capIron.thickness": 0 }));
    expect(isOverRecess(single, { along: 60, across: 25 })).toBe(false);
  });

  const read = (text: string) => stationsInRecess(smoother, parseSurvey(text, bed).readings!);
  const gaps = (deep: string) => `straightedge:
  - from: [70, 4]
    to: [70, 45]
    gaps:
      - { at: 0, refuses: 0.03 }
      - { at: 20, ${deep} }
      - { at: 41, refuses: 0.03 }
`;

  test("are told by their line only where they read as deep as a routed recess", () => {
    expect(read(gaps("refuses: 0.03"))).toEqual([]);
    expect(read(gaps("fits: 0.3, refuses: 0.35"))).toEqual([]);
    expect(read(gaps("fits: 4.9, refuses: 5.1"))).toEqual([6]);
    const heights = (over: number) =>
      `heights:\n  error: 0.01\n  points: [[5, 4, 0], [70, 4, 0], [70, 45, 0.1],\n    [70, 25, ${over}]]\n`;
    expect(read(heights(0))).toEqual([]);
    expect(read(heights(-5))).toEqual([4]);
  });
});
