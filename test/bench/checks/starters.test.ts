// Every start file, with any iron that such a plane usually has: no check fails, and what warns is no fault of its sizes.
import { asBuiltPlane } from "@lamplane/bench";
import { checkWithoutCures, findingSentence } from "@lamplane/bench/checks";
import { PURPOSE_NAMES, type Purpose, readDesign, shortStarter } from "@lamplane/parameters/design";
import type { Design } from "@lamplane/parameters/table";
import type { Units } from "@lamplane/parameters/units";
import { describe, expect, test } from "vitest";

/** Irons as they are sold: common practice, no published source. */
const WIDTHS: Readonly<Record<Units, Readonly<Record<Purpose, readonly string[]>>>> = {
  mm: {
    small: ["25", "32", "38"],
    smoother: ["44", "48", "51", "57"],
    jack: ["44", "51", "54"],
    jointer: ["57", "60", "67"],
  },
  in: {
    small: ["1", "1 1/4", "1 1/2"],
    smoother: ["1 3/4", "2", "2 1/4"],
    jack: ["1 3/4", "2", "2 1/8"],
    jointer: ["2 1/4", "2 3/8", "2 5/8"],
  },
};
const THICKNESSES: Readonly<Record<Units, readonly string[]>> = {
  mm: ["2.4", "3", "4", "4.8"],
  in: ["1/8", "5/32", "3/16"],
};

/** The year's weather and the maker's printer: neither a body nor a pin of another size helps against them. */
const OF_NO_SIZE = new Set(["wedge-hold-over-year", "pin-guide-print-size"]);

describe.each(["mm", "in"] as const)("start files in %s", (units) => {
  test.each(PURPOSE_NAMES)("%s", (purpose) => {
    const found = WIDTHS[units][purpose].flatMap((width) =>
      THICKNESSES[units].flatMap((thickness) =>
        [{}, { "capIron.thickness": "0" }].flatMap((capIron) => {
          const values = { "iron.width": width, "iron.thickness": thickness, ...capIron };
          const design = startDesign(units, purpose, values);
          return checkWithoutCures(asBuiltPlane(design))
            .filter(({ severity, code }) => severity !== "note" && !OF_NO_SIZE.has(code))
            .map((finding) => `${width} × ${thickness}: ${findingSentence(design, finding)}`);
        }),
      ),
    );
    expect(found).toEqual([]);
  });
});

test("a jack's bed is the trade's common pitch of 45°", () => {
  expect(startDesign("mm", "jack", {}).bed.angle).toBe(45);
});

function startDesign(units: Units, purpose: Purpose, values: Readonly<Record<string, string>>): Design {
  const reading = readDesign(shortStarter({ name: "plane", units, purpose, values }), "plane.yaml");
  if (!reading.ok) throw new Error(JSON.stringify(reading.faults));
  return reading.design;
}
