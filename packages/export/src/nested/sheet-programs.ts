// The sheets of a plane with the router's program of each: planned once for files, reports and the page.
import { type Elevation, memoizeByPlane } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import { formatValue } from "@lamplane/parameters/units";
import { engravingOf } from "../router/engrave.ts";
import type { RouterLimit } from "../router/limit.ts";
import { hasRouter } from "../router/plane-programs.ts";
import { type Program, planProgram } from "../router/program.ts";
import { flatFeatures, type RouterSetUp } from "../router/set-up.ts";
import { NESTED } from "../words/nested.ts";
import { cutOf } from "./flat-items.ts";
import { type Nested, type NestedSheet, type NoPlace, nestPlane } from "./nested-sheets.ts";

/** Of the sheets' files in a pack. */
export const NESTED_FOLDER = "nested";

export interface SheetProgram {
  readonly sheet: NestedSheet;
  /** Of its files, without an ending. */
  readonly name: string;
  readonly title: string;
  /** Undefined without a router, and where `limit` keeps it from being cut. */
  readonly program?: Program;
  readonly limit?: RouterLimit;
}

export interface SheetPrograms {
  readonly sheets: readonly SheetProgram[];
  readonly noPlace: readonly NoPlace[];
}

/** Undefined where the shop names no sheet that anything could be cut from. */
export const sheetPrograms = memoizeByPlane((plane: Elevation): SheetPrograms | undefined => {
  const nested = nestPlane(plane);
  return nested && planSheets(nested, plane.design);
});

/** @param design whose shop it is */
export function planSheets(nested: Nested, design: Design): SheetPrograms {
  const sheets = nested.sheets.map((sheet, i): SheetProgram => {
    const { piece } = sheet;
    const thickness = formatValue(piece.thickness, "mm", design);
    const title = NESTED.sheet({ number: i + 1, name: piece.name, thickness });
    const named = { sheet, name: `${i + 1}-${fileName(piece.name)}`, title };
    if (!hasRouter(design)) return named;
    const planned = planProgram(nestedSetUp(sheet, named.name, title, design), design.router, design.cutters);
    return { ...named, ...planned };
  });
  return { sheets, noPlace: nested.noPlace };
}

/** Letters, digits, dots and dashes: a board's name may hold spaces. */
const fileName = (name: string): string => name.replaceAll(/[^A-Za-z0-9._-]+/g, "-");

/** Everything on a sheet as one set-up. */
export function nestedSetUp({ piece, items }: NestedSheet, name: string, title: string, design: Design): RouterSetUp {
  const { width, depth, thickness } = piece;
  return {
    name,
    title,
    stock: { width, depth, thickness },
    corner: { x: 0, y: 0 },
    holding: "tabs",
    height: thickness,
    features: items.flatMap(({ item, transform }) =>
      flatFeatures({ ...cutOf(item.drawing), thickness, engraving: engravingOf(item.drawing, design) }, transform),
    ),
  };
}
