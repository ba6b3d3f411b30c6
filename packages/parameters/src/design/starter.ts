// A first design for a maker to go on from, with comments: short or with every parameter, for what the plane is to do.
import {
  commonInches,
  defaultIn,
  isOwnReading,
  isRow,
  LIST_NAMES,
  LISTS,
  listRows,
  type NumberRow,
  type Row,
  rowsOf,
  TABLE,
  type TableSection,
  UNIT_OF,
} from "../table/index.ts";
import { SHOP_TABLE } from "../table/shop-table.ts";
import { formatDecimal, formatLength, fromMillimetres, parseLength, toMillimetres, type Units } from "../units.ts";
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
  /** Values by path, each as the maker typed it; an example stands where one is left out. */
  readonly values?: Readonly<Record<string, string>>;
}

/** Paths of a short design: what is measured on iron and billet, then what a maker decides first. */
const SHORT = [
  "iron.width",
  "iron.thickness",
  "iron.length",
  "capIron.thickness",
  "capIron.screwHead.diameter",
  "capIron.screwHead.height",
  "capIron.screwHead.fromEdge",
  "body.length",
  "body.height",
  "body.cheek",
  "bed.angle",
  "mouth.opening",
  "wood.body",
  "billet.length",
  "billet.width",
  "billet.height",
];

/** A design of some thirty lines: iron, body, bed, mouth, wood and billet, with what the maker typed and what the purpose
 * asks for; everything else keeps its default. The shop's keys are left out, since a design's own go before those of the
 * shop file that is named later. */
export function shortStarter(starter: Starter): string {
  return [
    ...headLines(starter, SHORT),
    `# ${STARTER.others}`,
    `# ${STARTER.shopApart}`,
    `name: ${quoteYaml(starter.name)}`,
    `units: ${starter.units}`,
    ...shortLines(TABLE, "", shortPaths(starter), starter),
    "",
  ].join("\n");
}

function shortPaths(starter: Starter): ReadonlySet<string> {
  const { purpose = "smoother", values = {} } = starter;
  const usual = SHORT.filter((path) => !(isHeadOfCapIron(path) && isSingleIron(starter)));
  return new Set([...usual, ...Object.keys(PURPOSES[purpose].values), ...Object.keys(values)]);
}

function shortLines(section: TableSection, path: string, paths: ReadonlySet<string>, starter: Starter): string[] {
  const indent = "  ".repeat(path === "" ? 0 : path.split(".").length);
  return Object.entries(section).flatMap(([key, entry]) => {
    const full = path === "" ? key : `${path}.${key}`;
    if (!isRow(entry)) {
      const lines = shortLines(entry, full, paths, starter);
      return lines.length === 0 ? [] : [`${indent}${key}:`, ...lines];
    }
    if (!paths.has(full) || full === "name" || full === "units") return [];
    return [
      `${indent}${key}: ${starterValue(entry, full, starter)} # ${lineComment(entry, full, starter, entry.help)}`,
    ];
  });
}

/** Paths among these that a maker has still to measure: nobody typed them, and no default can know them. */
export const unmeasuredPaths = (starter: Starter, paths: readonly string[] = SHORT): string[] =>
  paths.filter((path) => isUnmeasured(rowAt(path), path, starter));

const isUnmeasured = (row: Row, path: string, starter: Starter): boolean =>
  isOwnReading(row) &&
  starter.values?.[path] === undefined &&
  !(isHeadOfCapIron(path) && isSingleIron(starter)) &&
  starterValue(row, path, starter) !== "auto";

const isHeadOfCapIron = (path: string): boolean => path.startsWith("capIron.screwHead.");

/** Whether no cap iron is to lie on the iron. */
function isSingleIron({ units, purpose = "smoother", values }: Starter): boolean {
  const typed = values?.["capIron.thickness"];
  if (typed === undefined) return (PURPOSES[purpose] as PurposeRow).values["capIron.thickness"] === 0;
  const read = parseLength(typed, units);
  return "value" in read && read.value === 0;
}

/** A line's words, beginning with "Measure" where its value is an example. */
const lineComment = (row: Row, path: string, starter: Starter, words: string): string =>
  isUnmeasured(row, path, starter) ? STARTER.measure({ words }) : words;

/** A whole design with a comment over each key; it gives each default, in inches the common size next to it. */
export function starterDesign(name: string, units: Units, more: Pick<Starter, "purpose" | "values"> = {}): string {
  const starter = { name, units, ...more };
  return `${[...headLines(starter, OWN_READINGS), ...sectionLines(TABLE, "", starter)].join("\n")}\n`;
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

/** Paths of everything that is measured on iron and billet. */
const OWN_READINGS = rowsOf(TABLE).flatMap(({ path, row }) => (isOwnReading(row) ? [path] : []));

const headLines = (starter: Starter, paths: readonly string[]): string[] => {
  const { units, purpose = "smoother" } = starter;
  const { title } = PURPOSES[purpose];
  return [
    `# ${STARTER.head({ title, isMeasured: unmeasuredPaths(starter, paths).length === 0 })}`,
    `# ${STARTER.units({ units })}`,
    `# ${STARTER.proportions({ title, source: PURPOSE_SOURCE })}`,
  ];
};

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
    const words = STARTER.row({ help: entry.help, allowed: allowedText(entry, asked.units) });
    const comment = `${indent}# ${lineComment(entry, full, asked, words)}`;
    return [...gap, comment, value === undefined ? `${indent}# ${key}:` : `${indent}${key}: ${value}`];
  });
}

function starterValue(row: Row, path: string, starter: Starter): string | undefined {
  const { name, units, purpose = "smoother", values } = starter;
  if (path === "units") return units;
  const typed = path === "name" ? name : values?.[path];
  if (typed !== undefined) return row.kind === "number" && /^\d+(\.\d+)?$/.test(typed) ? typed : quoteYaml(typed);
  const proportion = (PURPOSES[purpose] as PurposeRow).values[path];
  if (row.kind !== "number") return quoteYaml(String(defaultIn(row, units)));
  if (proportion === undefined) return defaultText(row, units);
  return row.quantity === "length" ? lengthText(roundToUnit(proportion, units), units) : String(proportion);
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
