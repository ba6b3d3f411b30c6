// A class as a table for spreadsheets: a row a plane, decimals of the design's unit, which the head names.
import { asBuiltPlane } from "@lamplane/bench";
import { figureValue } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import { formatDecimal, formatDecimalLength } from "@lamplane/parameters/units";
import { csvLine } from "../csv.ts";

type Plane = ReturnType<typeof asBuiltPlane>;

/** Columns by their heads; a length's head is followed by the unit. */
const LENGTHS: Readonly<Record<string, (plane: Plane) => number | undefined>> = {
  "iron width": ({ design }) => design.iron.width,
  "iron thickness": ({ design }) => design.iron.thickness,
  "core width": ({ widths }) => widths.core,
  "iron side play": ({ design }) => design.body.sideClearance,
  cheek: ({ widths }) => widths.cheek,
  "blank length": ({ widths }) => widths.blankLength,
  "blank height": ({ widths }) => widths.blankHeight,
  "ramp mark from toe end": (plane) => figureValue(plane, "rampMark"),
  "bed mark from toe end": (plane) => figureValue(plane, "bedMark"),
  "recess depth": (plane) => figureValue(plane, "recessDepth"),
  "pin hole diameter": (plane) => figureValue(plane, "pinHoleDiameter"),
  "pin over blank sole": (plane) => figureValue(plane, "pinOverBlankSole"),
};
const ANGLES: typeof LENGTHS = {
  "saw ramp": (plane) => figureValue(plane, "sawRamp"),
  "saw bed": (plane) => figureValue(plane, "sawBed"),
  "wedge angle": ({ design }) => design.wedge.angle,
};

/**
 * @param designs with the shared numbers in them
 * @param numbers of the designs in the roster; from 1 where left out
 */
export function classCsv(
  designs: readonly Design[],
  numbers: readonly number[] = designs.map((_, i) => i + 1),
): string {
  const units = designs[0]?.units ?? "mm";
  const heads = [
    "number",
    "name",
    ...Object.keys(LENGTHS).map((head) => `${head} ${units}`),
    ...Object.keys(ANGLES).map((head) => `${head} deg`),
  ];
  const rows = designs.map((design, i) => {
    const plane = asBuiltPlane(design);
    const length = (mm: number | undefined) =>
      mm === undefined
        ? ""
        : formatDecimalLength(mm, { units, decimals: { mm: 3, in: 4 }, halves: "binary", bare: true });
    const angle = (degrees: number | undefined) => (degrees === undefined ? "" : formatDecimal(degrees, 3));
    return [
      `${numbers[i]}`,
      design.name,
      ...Object.values(LENGTHS).map((of) => length(of(plane))),
      ...Object.values(ANGLES).map((of) => angle(of(plane))),
    ];
  });
  return [heads, ...rows].map(csvLine).join("");
}
