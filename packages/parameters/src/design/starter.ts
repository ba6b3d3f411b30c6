// A first design for a maker to go on from, with comments: short or with every parameter, for what the plane is to do.
import {
  commonInches,
  defaultIn,
  isRow,
  LIST_NAMES,
  LISTS,
  listRows,
  type NumberRow,
  type Row,
  TABLE,
  type TableSection,
  UNIT_OF,
} from "../table/index.ts";
import { SHOP_TABLE } from "../table/shop-table.ts";
import { formatDecimal, formatLength, fromMillimetres, toMillimetres, type Units } from "../units.ts";
import { STARTER } from "../words/design-faults.ts";
import { allowedText } from "./allowed-text.ts";
import { rowAt } from "./path.ts";
import { PURPOSE_SOURCE, PURPOSES, type Purpose, type PurposeRow } from "./purposes.ts";

export interface Starter {
  /** Stands in the file as it is; readDesign says whether it will do. */
  readonly name: string;
  readonly units: Units;
  /** What the plane is for; a smoother where it is left out. */
  readonly purpose?: Purpose;
  /** The maker's iron as it was typed, by "width" and "thickness"; an invented one of a common size where it is left out. */
  readonly iron?: Readonly<Record<"width" | "thickness", string>>;
}

/** Paths of a short design, in the order of the table: what a maker looks at first. */
const SHORT = [
  "iron.width",
  "iron.thickness",
  "iron.length",
  "capIron.thickness",
  "body.length",
  "body.height",
  "body.cheek",
  "bed.angle",
  "mouth.opening",
  "pin.diameter",
  "pin.tenon",
  "pin.tenonClearance",
  "wood.body",
];

/** A design of some twenty lines: iron, body, bed, mouth, pin and wood; everything else keeps its default. The shop's
 * keys are left out, since a design's own go before those of the shop file that is named later. */
export function shortStarter(starter: Starter): string {
  const sections = [...new Set(SHORT.map((path) => path.split(".")[0]!))];
  const lines = sections.flatMap((section) => [
    `${section}:`,
    ...SHORT.filter((path) => path.startsWith(`${section}.`)).map((path) => shortLine(path, starter)),
  ]);
  return [
    ...headLines(starter),
    `# ${STARTER.others}`,
    `# ${STARTER.shopApart}`,
    `name: ${quoteYaml(starter.name)}`,
    `units: ${starter.units}`,
    ...lines,
    "",
  ].join("\n");
}

const shortLine = (path: string, starter: Starter): string =>
  `  ${path.split(".")[1]}: ${starterValue(rowAt(path), path, starter)} # ${rowAt(path).help}`;

/** A whole design with a comment over each key; it gives each default, in inches the common size next to it. */
export function starterDesign(name: string, units: Units, more: Pick<Starter, "purpose" | "iron"> = {}): string {
  const starter = { name, units, ...more };
  return `${[...headLines(starter), ...sectionLines(TABLE, "", starter)].join("\n")}\n`;
}

/** A shop file with a comment over each key; it gives each default, and no router's cutters. */
export function starterShop(units: Units): string {
  const { units: unit, ...groups } = SHOP_TABLE;
  const starter = { name: "", units };
  const lists = LIST_NAMES.flatMap((name) => {
    const rows = listRows(name, "").map(({ path, row }) => `#   ${path}: ${listRowText(row, units)}`);
    return ["", `# ${STARTER.list({ help: LISTS[name].help })}`, ...rows, `${name}: []`];
  });
  const head = [`# ${STARTER.shop}`, `# ${STARTER.units({ units })}`];
  return `${[...head, ...sectionLines({ units: unit }, "", starter), ...sectionLines(groups, "", starter), ...lists].join("\n")}\n`;
}

/** What a key of a list's item means, what it may be, and what it is where it is left out. */
function listRowText(row: Row, units: Units): string {
  const text = STARTER.row({ help: row.help, allowed: allowedText(row, units) });
  if ("required" in row && row.required) return `${text} ${STARTER.mustBeGiven}`;
  const unit = row.kind === "number" && row.quantity === "feed" ? ` ${UNIT_OF.feed}` : "";
  const value = row.kind === "number" ? defaultText(row, units) : String(defaultIn(row, units));
  return value === undefined || value === "" ? text : `${text} ${STARTER.leftOut({ value: value + unit })}`;
}

const headLines = ({ units, purpose = "smoother", iron }: Starter): string[] => [
  `# ${STARTER.head({ title: PURPOSES[purpose].title, isOwn: iron !== undefined })}`,
  `# ${STARTER.units({ units })}`,
  `# ${STARTER.proportions({ title: PURPOSES[purpose].title, source: PURPOSE_SOURCE })}`,
];

function sectionLines(section: TableSection, path: string, asked: Starter): string[] {
  const indent = "  ".repeat(path === "" ? 0 : path.split(".").length);
  return Object.entries(section).flatMap(([key, entry]) => {
    const full = path === "" ? key : `${path}.${key}`;
    const isShopOfDesign = section === TABLE && key === "shop";
    const gap = path === "" ? ["", ...(isShopOfDesign ? [`# ${STARTER.shopHere}`] : [])] : [];
    if (!isRow(entry)) {
      const lines = sectionLines(entry, full, asked);
      const isEmpty = lines.every((line) => line.trimStart().startsWith("#"));
      return [...gap, `${indent}${key}:${isEmpty ? ` # ${STARTER.empty}` : ""}`, ...lines];
    }
    const value = starterValue(entry, full, asked);
    const comment = `${indent}# ${STARTER.row({ help: entry.help, allowed: allowedText(entry, asked.units) })}`;
    return [...gap, comment, value === undefined ? `${indent}# ${key}:` : `${indent}${key}: ${value}`];
  });
}

function starterValue(
  row: Row,
  path: string,
  { name, units, purpose = "smoother", iron }: Starter,
): string | undefined {
  if (path === "name") return quoteYaml(name);
  if (path === "units") return units;
  const typed = iron && /^iron\.(width|thickness)$/.exec(path)?.[1];
  if (typed) return quoteYaml(iron[typed as keyof typeof iron]);
  const proportion = (PURPOSES[purpose] as PurposeRow).values[path];
  if (row.kind !== "number") return quoteYaml(String(defaultIn(row, units)));
  return proportion === undefined ? defaultText(row, units) : lengthText(roundToUnit(proportion, units), units);
}

/** The default, with its unit where it is a length. */
function defaultText(row: NumberRow<unknown>, units: Units): string | undefined {
  const value = defaultIn(row as NumberRow, units);
  if (typeof value !== "number") return value === undefined ? undefined : String(value);
  if (row.quantity !== "length") return formatDecimal(value, 6);
  return lengthText(value, row.metric ? "mm" : units);
}

/** Exact: a fraction to 1/64 in where it is one, else decimals. */
function lengthText(mm: number, units: Units): string {
  if (units === "mm") return `${formatDecimal(mm, 6)} mm`;
  const inches = fromMillimetres(mm, "in");
  return Number.isInteger(Number((inches * 64).toFixed(4)))
    ? formatLength(mm, INCH_STYLE)
    : `${formatDecimal(inches, 4)} in`;
}
const INCH_STYLE = { units: "in", shop: { smallestFraction: "1/64", bothUnits: "no" } } as const;

/** A proportion in the maker's unit, mm: in inches the common size next to it. */
const roundToUnit = (mm: number, units: Units): number =>
  units === "mm" ? mm : toMillimetres(commonInches(fromMillimetres(mm, "in")), "in");

/** Plain where YAML reads it back as the same text. */
const quoteYaml = (text: string): string =>
  /^[A-Za-z][\w./-]*$/.test(text) && !/^(true|false|null)$/i.test(text) ? text : JSON.stringify(text);
