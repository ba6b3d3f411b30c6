// A first design for a maker to go on from, with comments: short or with every parameter, for what the plane is to do.
import { isRow, type NumberRow, type Row, TABLE, type TableSection } from "../table/index.ts";
import { formatDecimal, formatLength, fromMillimetres, toMillimetres, type Units } from "../units.ts";
import { allowedText } from "./allowed-text.ts";
import { rowAt } from "./path.ts";
import { PURPOSE_SOURCE, PURPOSES, type Purpose, type PurposeRow } from "./purposes.ts";

// What is no default: the paper and the drill that go
// with inches: a 3/8 in tenon in a 25/64 in hole, where 0.2 mm over the tenon would ask for a drill that nobody sells.
const OWN: Record<Units, Record<string, string>> = {
  mm: {},
  in: { "shop.paper": "Letter", "pin.tenonClearance": "1/64 in" },
};

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
  "shop.kerf",
  "shop.paper",
];

/** A design of some twenty lines: iron, body, bed, mouth, pin, wood and shop; everything else keeps its default. */
export function shortStarter(starter: Starter): string {
  const sections = [...new Set(SHORT.map((path) => path.split(".")[0]!))];
  const lines = sections.flatMap((section) => [
    `${section}:`,
    ...SHORT.filter((path) => path.startsWith(`${section}.`)).map((path) => shortLine(path, starter)),
  ]);
  return [
    ...headLines(starter),
    "# Every other value has a default: `lamplane explain` lists them, `lamplane new FILE --all` writes them out.",
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

const headLines = ({ units, purpose = "smoother", iron }: Starter): string[] => [
  `# A laminated wooden hand plane: ${PURPOSES[purpose].title}. ${iron ? "The iron is yours; every other" : "Measure your own iron first; every other"} value may stay as it is.`,
  `# A length without a unit is in ${units === "mm" ? "millimetres" : "inches"}; 44.5 mm, 1.75 in and 1 3/4 in are read too.`,
  `# Length, height, mouth, pin and tenon for ${PURPOSES[purpose].title}: ${PURPOSE_SOURCE}.`,
];

function sectionLines(section: TableSection, path: string, asked: Starter): string[] {
  const indent = "  ".repeat(path === "" ? 0 : path.split(".").length);
  return Object.entries(section).flatMap(([key, entry]) => {
    const full = path === "" ? key : `${path}.${key}`;
    const gap = path === "" ? [""] : [];
    if (!isRow(entry)) {
      const lines = sectionLines(entry, full, asked);
      const isEmpty = lines.every((line) => line.trimStart().startsWith("#"));
      return [...gap, `${indent}${key}:${isEmpty ? " # each to be filled in once it is measured" : ""}`, ...lines];
    }
    const value = starterValue(entry, full, asked);
    const comment = `${indent}# ${entry.help} ${sentence(allowedText(entry, asked.units))}`;
    return [...gap, comment, value === undefined ? `${indent}# ${key}:` : `${indent}${key}: ${value}`];
  });
}

const sentence = (words: string): string => `Allowed: ${words}.`;

function starterValue(
  row: Row,
  path: string,
  { name, units, purpose = "smoother", iron }: Starter,
): string | undefined {
  if (path === "name") return quoteYaml(name);
  if (path === "units") return units;
  const typed = iron && /^iron\.(width|thickness)$/.exec(path)?.[1];
  if (typed) return quoteYaml(iron[typed as keyof typeof iron]);
  const own = OWN[units][path];
  if (row.kind !== "number") return quoteYaml(own ?? row.default);
  if (path.startsWith("shop.printer.")) return numberText(row, "mm"); // printers are sold by the millimetre everywhere
  const proportion = (PURPOSES[purpose] as PurposeRow).values[path];
  return own ?? numberText(proportion === undefined ? row : { ...row, default: proportion }, units);
}

/** The default; in inches the size nearest to it that a maker in inches would plan. */
function numberText(row: NumberRow<unknown>, units: Units): string | undefined {
  if (typeof row.default !== "number") return row.default === undefined ? undefined : String(row.default);
  if (row.quantity !== "length") return formatDecimal(row.default, 6);
  return units === "mm" ? `${formatDecimal(row.default, 6)} mm` : roundToInchSize(row.default);
}

/**
 * To 1/8 in over an inch, to 1/32 over 1/8, to 1/64 over 1/32; under it thousandths, unless a rule shows it, and a tenth of
 * one where a hand's tolerance is that fine.
 */
function roundToInchSize(mm: number): string {
  const size = fromMillimetres(mm, "in");
  const step = size > 1 ? 1 / 8 : size > 1 / 8 ? 1 / 32 : 1 / 64;
  const planned = Math.round(size / step) * step;
  if (size >= 1 / 32 || Math.abs(planned - size) < ALIKE * size)
    return formatLength(toMillimetres(planned, "in"), "in");
  return `${formatDecimal(size, size < 0.002 ? 4 : 3)} in`;
}
const ALIKE = 0.02; // share by which a small size may differ and still be the rule's

/** Plain where YAML reads it back as the same text. */
const quoteYaml = (text: string): string =>
  /^[A-Za-z][\w./-]*$/.test(text) && !/^(true|false|null)$/i.test(text) ? text : JSON.stringify(text);
