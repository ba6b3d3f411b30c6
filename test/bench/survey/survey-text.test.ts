// The lines a maker reads: typed out whole, so that a change in them is seen.
import { describe, expect, it } from "vitest";
import {
  judgeBed,
  parseSurvey,
  SURVEY_SOURCES,
  surveyText,
  workText,
} from "../../../packages/bench/src/survey/index.ts";
import { BED, type BedForm, gapsOf, heightsOf, PLACEMENTS, seededUniform } from "./beds.ts";

const exact = (shape: BedForm) =>
  judgeBed(
    heightsOf(shape, 0.003, () => 0.5),
    BED,
  );

describe("the text of a survey", () => {
  it("a hump: verdict, figures and the map, tip on top, left on the left", () => {
    // The twist puts the corners at tip right and top left low: a mirrored map would show there what is to be taken off.
    const lines = surveyText(exact({ along: -0.1, across: -0.06, twist: 0.08 }), "mm");
    expect(lines.map((line) => line.trimEnd()).join("\n")).toMatchInlineSnapshot(`
      "FAILS: humped 0.240 mm, diagonal from right of tip. Take the hump off as mapped.

      Take off, in hundredths of a millimetre, as you look from the heel to the toe:
                     left                   right
                        0  12.5    25  37.5    50 mm
      tip      0  |     6     7     6     4     .
              10  |     8    10    12    12     4
              20  |    10    14    17    18     7
              30  |     9    17    21    19     9
              40  |    10    18    24    18    10
              50  |     9    19    21    17     9
              60  |     7    18    17    14    10
              70  |     4    12    12    10     8
      top     80  |     .     4     6     7     6"
    `);
  });

  it("a pass, in inches", () => {
    expect(surveyText(exact({ along: 0.05, across: 0.02, twist: 0 }), "in", true).join("\n")).toMatchInlineSnapshot(`
      "PASSES: hollow 0.0028 in, diagonal from left of tip (max 0.0039 in); no hump.
      Over the whole bed, and within which range 19 times in 20 (hollow +, hump -):
      along                       hollow 0.0020 in  +0.0019 to +0.0021
      across                      hollow 0.0008 in  +0.0007 to +0.0009
      diagonal from left of tip   hollow 0.0028 in  +0.0026 to +0.0029
      diagonal from right of tip  hollow 0.0028 in  +0.0026 to +0.0029
      15 readings, 9 of them to check the others: misfit 0.0 (max 21.7). Ranges follow from the error of the readings."
    `);
  });

  it("what is missing is said right after the verdict", () => {
    const survey = judgeBed(
      gapsOf({ along: 0, across: 0, twist: 0 }, 0.02, seededUniform(1), 3, PLACEMENTS.slice(0, 1)),
      BED,
    );
    expect(surveyText(survey, "mm").join("\n")).toMatchInlineSnapshot(`
      "UNDECIDED: the readings do not cover the whole bed.
      Missing: no reading shows the curve across the bed: read three stations or more on a line from left to right.
      Missing: no reading shows the wind of the bed: read three stations or more on each diagonal.
      along  straight 0.000 mm
      3 readings, just enough: none checks the others. Ranges follow from the error of the readings."
    `);
  });

  it("a reading that does not fit is named by its line in the file", () => {
    const points = [0, 20, 40, 60, 80].flatMap((x) =>
      [0, 25, 50].map((y) => `    - [${x}, ${y}, ${x === 40 && y === 25 ? 0.2 : 0}]`),
    );
    const text = ["heights:", "  error: 0.005", "  points:", ...points].join("\n");
    const survey = judgeBed(parseSurvey(text, BED).readings!, BED);
    const told = surveyText(survey, "mm");
    expect(survey.passes).toBe(false);
    expect(
      told.some((line) => /^Check the height at 40.0 up, 25.0 across \(line 11\).* too high there/.test(line)),
    ).toBe(true);
  });

  it("says where its rules come from", () => {
    expect(SURVEY_SOURCES.join(" ")).toMatch(/common practice, no published source/);
  });

  it("shows thousandths of an inch where the file is in inches", () => {
    const map = workText(
      {
        along: [0, 80],
        across: [0, 50],
        takeOff: [
          [0.0254, 0],
          [0, 0.127],
        ],
      },
      "in",
    );
    expect(map[0]).toMatch(/thousandths of an inch/);
    expect(map.at(-1)).toMatch(/^top +3.15 +\| +\. +5$/);
  });
});
