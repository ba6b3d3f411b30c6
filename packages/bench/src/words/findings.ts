// A finding or a passed check → its sentence, in the maker's unit. Nothing else makes sentences of them.

import type { Design } from "@lamplane/parameters/table";
import { formatLength, formatValue } from "@lamplane/parameters/units";
import type { Finding, FindingData } from "../finding.ts";
import { ADVICE } from "./advice.ts";
import { SUBJECTS } from "./subjects.ts";

type MakersUnits = Pick<Design, "units" | "shop">;
/** What a sentence is made of; a passed check has no severity. */
type Sentence = Omit<Finding, "severity" | "cure"> & Partial<Pick<Finding, "severity">>;

/** A finding with its sentence, as scripts, pages and packs read it. */
export type FormattedFinding<T extends Sentence = Finding> = Omit<T, "subject" | "relation" | "advice" | "data"> & {
  /** What is wrong, with both numbers, and what to do. */
  readonly message: string;
};

/** What is judged, how it stands to its limit, and what to do about it. */
export function findingSentence(design: MakersUnits, finding: Sentence): string {
  const special = WHOLE[finding.subject];
  if (special) return special(design, finding);
  const { severity, subject, value, relation, limit, unit } = finding;
  const stated = `${SUBJECTS[subject as keyof typeof SUBJECTS]} is ${formatValue(value, unit, design)}`;
  const bound = `; ${relation} ${formatValue(limit, unit, design)} is wanted`;
  if (severity === "note")
    return `${stated}${bound}, so there is no ${finding.data?.jig}. ${adviceText(design, finding)}`;
  return `${stated}${bound}.${severity ? ` ${adviceText(design, finding)}` : ""}`;
}

const adviceText = (design: MakersUnits, { advice, data }: Sentence): string =>
  advice === "set-blocks-by-iron"
    ? `Set the blocks by the iron instead: its edge ${formatLength(data!.edgeHeight!, design)} over the blank's sole, the front block slid back until it touches.`
    : ADVICE[advice as keyof typeof ADVICE].replace(/\{([\d.]+) mm\}/, (_, mm: string) =>
        formatLength(Number(mm), design),
      );

/** Sentences that are not of the one pattern. */
const WHOLE: Readonly<Record<string, (design: MakersUnits, finding: Sentence) => string>> = {
  "printed-size": (design, { severity, data = {} }) => {
    const box = (sides: readonly number[] = []) => sides.map((side) => formatValue(side, "mm", design)).join(" × ");
    const otherwise = data.flat ? `Cut it from sheet by jigs/${data.jig}.dxf, or have` : "Have";
    const advice = severity ? ` ${otherwise} it printed on a larger one.` : "";
    return `The ${data.jig} is ${box(data.printed)} as it is printed; at most the printer's ${box(data.printer)} is wanted.${advice}`;
  },
  "wood-in-tables": (_, { parameters, data = {} }) => {
    const { nearest = [] } = data;
    const offered = nearest.length > 0 ? `; the nearest are ${nearest.map(quoted).join(", ")}` : "";
    return `The wood tables hold no ${quoted(data.wood!)} (${parameters[0]})${offered}. Strength and seasons of the ${listParts(data)} are not judged.`;
  },
  "wood-by-trade-name": (_, { parameters, data = {} }) =>
    `${quoted(data.wood!)} (${parameters[0]}) is taken for ${quoted(data.nearest![0]!)} of the wood tables, for the ${listParts(data)}.`,
  "wood-properties": (_, { data = {} }) => {
    const missing = data.missing!.map((key) => PROPERTIES[key as keyof typeof PROPERTIES]).join(", no ");
    return `The wood tables give ${quoted(data.wood!)} no ${missing}. What rests on it is not judged for the ${listParts(data)}; nothing stands in for it.`;
  },
  "cup-of-year": (design, { value, limit, unit, data = {} }) =>
    `The sole or the bed cups by up to ${formatValue(value, unit, design)} in a year, with the rings' centre ${formatValue(data.pithDistance!, "mm", design)} away; more than ${formatValue(limit, unit, design)} is felt. True the sole in the season of its use, or choose wood nearer to quarter sawn.`,
  "moisture-of-year": (design, { value, limit, unit, relation }) =>
    `The wood comes to ${formatValue(value, unit, design)} moisture; the equation of its movement is published ${relation === "at most" ? "up to" : "down to"} ${formatValue(limit, unit, design)}. Take the figures of the seasons as a guide only.`,
};

const PROPERTIES = {
  specificGravity: "specific gravity",
  bending: "modulus of rupture",
  elasticity: "modulus of elasticity",
  compressionAlong: "compression along the grain",
  compressionAcross: "compression across the grain",
  shearAlong: "shear along the grain",
  hardness: "hardness",
  movement: "shrinkage",
} as const;

const PARTS = { body: "body", pin: "cross pin", wedge: "wedge" } as const;

const quoted = (name: string): string => `"${name}"`;

function listParts({ parts = [] }: FindingData): string {
  const names = parts.map((part) => PARTS[part as keyof typeof PARTS]);
  return names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
}

/** The finding with its sentence in place of what the sentence is made of. Notes on woods keep their own order of keys. */
export function formatFinding<T extends Sentence>(design: MakersUnits, finding: T): FormattedFinding<T> {
  const { code, severity, parameters, value, limit, unit, place, source, advice } = finding;
  const message = findingSentence(design, finding);
  const cure = "cure" in finding ? { cure: finding.cure } : {};
  const graded = severity ? { severity } : {};
  const ordered =
    advice === undefined
      ? { code, value, limit, unit, parameters, place, message, source, ...graded }
      : { code, ...graded, parameters, value, limit, unit, message, place, source };
  return { ...ordered, ...cure } as unknown as FormattedFinding<T>;
}
