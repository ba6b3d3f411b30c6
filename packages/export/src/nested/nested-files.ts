// The files of the shop's sheets: a drawing and a program for each, a page each, a list with what lies on none.
import { circleOutline, transformCircle } from "@lamplane/geometry";
import type { Elevation } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import { formatDecimal, formatValue } from "@lamplane/parameters/units";
import type { RouterSheets, SetUpPage } from "@lamplane/sheets/pages";
import { dxfText } from "../dxf.ts";
import { engravingOf } from "../router/engrave.ts";
import { setUpPage } from "../router/files.ts";
import { hasRouter, limitText } from "../router/plane-programs.ts";
import { planProgram } from "../router/program.ts";
import { programFiles } from "../router/program-files.ts";
import { flatFeatures, type SetUp } from "../router/set-up.ts";
import { NESTED } from "../words/nested.ts";
import type { ClassNesting } from "./class-nesting.ts";
import { cutOf } from "./flat-items.ts";
import { type Nested, type NestedSheet, nestPlane } from "./nested-sheets.ts";
import { noPlaceRows } from "./no-place-text.ts";
import { placedOutlines, placeOfName, sheetDrawing } from "./sheet-drawing.ts";

export interface NestedFiles {
  /** Drawings, programs and their list by path. */
  readonly texts: ReadonlyMap<string, string>;
  readonly sheets: RouterSheets;
}

/** Whose sheets they are, and where their files go. */
interface SheetsOwner {
  /** Of the plane, or the class. */
  readonly name: string;
  /** Whose shop and unit count. */
  readonly design: Design;
  readonly folder: string;
  readonly version: string;
}

/** Undefined where the shop names no sheet that anything could be cut from. */
export function nestedFiles(plane: Elevation, version: string): NestedFiles | undefined {
  const nested = nestPlane(plane);
  const { design } = plane;
  return nested && filesOf(nested, { name: design.name, design, folder: "nested", version });
}

/** Name of the folder that a class's sheets unpack into. */
export const CLASS_SHEETS = "class-sheets";

/** The sheets of a class. @param name of the class */
export const classNestedFiles = ({ nested, design }: ClassNesting, name: string, version: string): NestedFiles =>
  filesOf(nested, { name, design, folder: CLASS_SHEETS, version });

function filesOf(nested: Nested, owner: SheetsOwner): NestedFiles {
  const { name, design, folder } = owner;
  const made = nested.sheets.map((sheet, i) => sheetFiles(sheet, i + 1, owner));
  const noPlace = [...made.flatMap(({ refused }) => refused), ...noPlaceRows(nested.noPlace, design)];
  const list = [
    NESTED.list({ plane: name }),
    ...made.map(({ texts, page }, i) => {
      const names = nested.sheets[i]!.items.map(({ item }) => item.name);
      return `${[...texts.keys()].join(", ")}: ${page.title}: ${names.join(", ")}`;
    }),
    ...(noPlace.length > 0 ? ["", NESTED.noPlace, ...noPlace.map(([what, why]) => `${what}: ${why}`)] : []),
    "",
  ].join("\n");
  return {
    texts: new Map([...made.flatMap(({ texts }) => [...texts]), [`${folder}/sheets.txt`, list]]),
    sheets: {
      plane: name,
      title: NESTED.title({ plane: name }),
      subject: NESTED.subject,
      pages: made.map(({ page }) => page),
      notCut: { heading: NESTED.noPlace, rows: noPlace },
    },
  };
}

interface SheetFiles {
  readonly texts: ReadonlyMap<string, string>;
  readonly page: SetUpPage;
  /** The sheet itself, where its program cannot be made. */
  readonly refused: readonly (readonly [string, string])[];
}

/** Its drawing, its program where there is a router, its page. */
function sheetFiles(sheet: NestedSheet, number: number, { design, folder, version }: SheetsOwner): SheetFiles {
  const { piece } = sheet;
  const title = NESTED.sheet({ number, name: piece.name, thickness: formatValue(piece.thickness, "mm", design) });
  const name = `${number}-${fileName(piece.name)}`;
  const texts = new Map([[`${folder}/${name}.dxf`, dxfText(sheetDrawing(sheet, title), design.shop.dxfUnit)]]);
  const plain: SetUpPage = plainPage(sheet, title, [...texts.keys()], design);
  if (!hasRouter(design)) return { texts, page: plain, refused: [] };
  const planned = planProgram(sheetSetUp(sheet, name, title, design), design.router, design.cutters);
  if ("limit" in planned) return { texts, page: plain, refused: [[`${name}.ngc`, limitText(planned.limit, design)]] };
  for (const { path, text } of programFiles(planned.program, design, version, folder)) texts.set(path, text);
  const page = setUpPage(planned.program, [...texts.keys()], design);
  return {
    texts,
    page: {
      ...page,
      steps: [...sheetLines(sheet, design), ...page.steps],
      drawing: { ...page.drawing, ...namesAndSizes(sheet, design) },
      drawingKey: NESTED.draws,
    },
    refused: [],
  };
}

/** Letters, digits, dots and dashes: a board's name may hold spaces. */
const fileName = (name: string): string => name.replaceAll(/[^A-Za-z0-9._-]+/g, "-");

/** Everything on a sheet as one set-up. */
export function sheetSetUp({ piece, items }: NestedSheet, name: string, title: string, design: Design): SetUp {
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

/** What is done with the sheet before it is cut. */
function sheetLines({ piece, items, used, end }: NestedSheet, design: Design): string[] {
  const mm = (value: number) => formatValue(value, "mm", design);
  const { width, depth, thickness, sawnFrom, material } = piece;
  const layers = material === "ply" ? stacksOf(items.map(({ item }) => item.name)) : [];
  return [
    ...(sawnFrom
      ? [NESTED.sawn({ width: mm(width), depth: mm(depth), from: `${mm(sawnFrom.width)} × ${mm(sawnFrom.depth)}` })]
      : []),
    NESTED.caliper({ thickness: mm(thickness) }),
    NESTED.grain[material],
    NESTED.used({ count: items.length, share: `${formatDecimal(100 * used, 0)} %`, end: mm(Math.ceil(end)) }),
    ...(layers.length > 0 ? [NESTED.stack({ jigs: layers })] : []),
  ];
}

/** Plates of one jig that are glued together. */
function stacksOf(names: readonly string[]): string[][] {
  const stacks = new Map<string, string[]>();
  for (const name of names) {
    const [, jig] = /^(.*)-\d+$/.exec(name) ?? [];
    if (jig !== undefined) stacks.set(jig, [...(stacks.get(jig) ?? []), name]);
  }
  return [...stacks.values()];
}

function namesAndSizes(sheet: NestedSheet, design: Design) {
  const { piece, items } = sheet;
  const mm = (value: number) => formatValue(value, "mm", design);
  return {
    names: items.map((nested) => ({ text: nested.item.name.replaceAll("-", " "), ...placeOfName(nested) })),
    sizes: {
      width: mm(piece.width),
      depth: mm(piece.depth),
      ...(piece.material === "wood" ? { grain: NESTED.grainArrow } : {}),
    },
    keepOuts: piece.keepOuts,
  };
}

/** The page of a sheet without a program. */
function plainPage(sheet: NestedSheet, title: string, files: readonly string[], design: Design): SetUpPage {
  const { piece, items } = sheet;
  const circles = items.flatMap(({ item, transform }) =>
    cutOf(item.drawing).circles.map((circle) => circleOutline(transformCircle(circle, transform))),
  );
  return {
    title,
    files,
    steps: [...sheetLines(sheet, design), NESTED.noRouter],
    cutters: [],
    caution: "",
    drawing: {
      name: files[0]!,
      title,
      stock: { min: { x: 0, y: 0 }, max: { x: piece.width, y: piece.depth } },
      outlines: [...items.flatMap(placedOutlines), ...circles],
      ways: [],
      tabs: [],
      ...namesAndSizes(sheet, design),
    },
    drawingKey: NESTED.drawsPlain,
  };
}
