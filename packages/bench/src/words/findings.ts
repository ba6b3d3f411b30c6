// A finding or a passed check → its words, in the maker's unit: what is judged, its value, its limit, how it stands, what to do.

import type { Design } from "@lamplane/parameters/table";
import {
  formatBareLength,
  formatDecimal,
  formatLength,
  formatQuantity,
  fromMillimetres,
} from "@lamplane/parameters/units";
import type { Finding } from "../finding.ts";
import { ADVICE } from "./advice.ts";
import { DISPLAY_NAMES, NO_JIG, NOTES, PASSED, TIMES_LOAD } from "./notes.ts";
import { SUBJECTS } from "./subjects.ts";

type MakersUnits = Pick<Design, "units" | "shop">;
/** What the words are made of; a passed check has no severity. */
export type Judged = Omit<Finding, "severity" | "cure"> & Partial<Pick<Finding, "severity">>;

/** A finding's words, each part alone; what it does not have is empty. */
export interface FindingWords {
  /** What is judged. */
  readonly name: string;
  /** With its unit. */
  readonly value: string;
  /** "min 0.1" or "max 0.1", in the value's unit. */
  readonly limit: string;
  /** How it stands: "ok", "too tight". */
  readonly verdict: string;
  /** What to do, as a sentence. */
  readonly advice: string;
}

/** A finding with its sentence, as scripts, pages and packs read it. */
export type FormattedFinding<T extends Judged = Finding> = Omit<T, "subject" | "relation" | "advice" | "data"> & {
  /** What is judged, its value and limit, how it stands and what to do. */
  readonly message: string;
};

/** What a jig is called in a sentence. */
export const jigName = (jig = ""): string => jig.replaceAll("-", " ");

export function findingWords(design: MakersUnits, finding: Judged): FindingWords {
  const special = SPECIAL[finding.subject];
  if (special) return special(design, finding);
  const { severity, subject, data } = finding;
  const [name, fault] = SUBJECTS[subject as keyof typeof SUBJECTS];
  const figures = comparedFigures(design, finding);
  if (severity === undefined) return { name, ...figures, verdict: PASSED, advice: "" };
  const advice = adviceText(design, finding);
  if (severity === "note") {
    return { name, ...figures, verdict: NO_JIG({ jig: jigName(data?.jig) }), advice };
  }
  const verdict = severity === "stop" && !fault.includes(" ") ? `too ${fault}` : fault;
  return { name, ...figures, verdict, advice };
}

/** The words as one sentence: "Cheek thickness 3 mm (min 4): too thin. Make the cheeks thicker: the pin bears in them." */
export function findingSentence(design: MakersUnits, finding: Judged): string {
  const { name, value, limit, verdict, advice } = findingWords(design, finding);
  const figures = [name, value, limit && `(${limit})`].filter(Boolean).join(" ");
  return `${figures}: ${verdict}.${advice && ` ${advice}`}`;
}

const BOUND = { "at least": "min", "at most": "max" } as const;
const MOST_DECIMALS = 6;

/** Value and limit in one unit, with as many decimals as tell them apart where they differ. */
function comparedFigures(design: MakersUnits, { value, limit, unit, relation }: Judged) {
  const { units } = design;
  const usual: Format = (figure, bare) =>
    unit !== "mm"
      ? formatQuantity(figure, unit, unit === "" ? 2 : undefined)
      : bare
        ? formatBareLength(figure, design)
        : formatLength(figure, design);
  const finer =
    (decimals: number): Format =>
    (figure) =>
      unit === "mm" && units === "in"
        ? `${formatDecimal(fromMillimetres(figure, units), decimals)} in`
        : formatQuantity(figure, unit, decimals);
  const formats = [usual, ...Array.from({ length: MOST_DECIMALS - 2 }, (_, i) => finer(i + 3))];
  const format = formats.find((each) => value === limit || each(value) !== each(limit)) ?? usual;
  const bound = format(limit, true).replace(/[\s°×]*(mm|in|%)?$/, "");
  return {
    value: unit === "×" ? TIMES_LOAD({ times: format(value) }) : format(value),
    limit: relation ? `${BOUND[relation]} ${bound}` : "",
  };
}

/** A figure as text; `bare` without its unit. */
type Format = (figure: number, bare?: boolean) => string;

function adviceText(design: MakersUnits, { advice, data }: Judged): string {
  const words = ADVICE[advice as keyof typeof ADVICE];
  if (typeof words === "string") return words;
  if (words === ADVICE["set-blocks-by-iron"])
    return ADVICE["set-blocks-by-iron"]({ height: formatLength(data!.edgeHeight!, design) });
  return ADVICE["cut-from-sheet-or-print-elsewhere"]({ jig: data!.jig! });
}

/** Findings whose value is no single number, or whose name names something of theirs. */
const SPECIAL: Readonly<Record<string, (design: MakersUnits, finding: Judged) => FindingWords>> = {
  "printed-size": (design, finding) => {
    const { severity, data = {} } = finding;
    const box = (sides: readonly number[] = []) => sides.map((side) => formatBareLength(side, design)).join(" × ");
    return {
      name: NOTES["printed-size"].name({ jig: jigName(data.jig) }),
      value: `${box(data.printed)} ${design.units}`,
      limit: `max ${box(data.printer)}`,
      verdict: severity ? NOTES["printed-size"].verdict : PASSED,
      advice: severity ? adviceText(design, finding) : "",
    };
  },
  "rings-of-layers": (_, { value, unit, limit }) => {
    const { name, verdict, advice } = NOTES["rings-of-layers"];
    const [rings, inBoard] = [formatQuantity(value, unit), formatQuantity(limit - value, unit)];
    return { name, value: rings, limit: "", verdict, advice: advice({ rings, inBoard }) };
  },
  "wood-in-tables": (_, { data = {} }) => {
    const { wood = "", nearest = [] } = data;
    const { name, verdict, advice } = NOTES["wood-in-tables"];
    return {
      name: name({ wood }),
      value: "",
      limit: "",
      verdict,
      advice: advice({ nearest, parts: partNames(data.parts) }),
    };
  },
  "wood-by-trade-name": (_, { data = {} }) => {
    const { name, verdict, advice } = NOTES["wood-by-trade-name"];
    const row = data.nearest![0]!;
    return {
      name: name({ wood: data.wood! }),
      value: "",
      limit: "",
      verdict: verdict({ row }),
      advice: advice({ parts: partNames(data.parts) }),
    };
  },
  "wood-properties": (_, { data = {} }) => {
    const { name, verdict, advice } = NOTES["wood-properties"];
    const missing = data.missing!.map((key) => DISPLAY_NAMES[key as keyof typeof DISPLAY_NAMES]);
    return {
      name: name({ wood: data.wood! }),
      value: "",
      limit: "",
      verdict: verdict({ missing }),
      advice: advice({ parts: partNames(data.parts) }),
    };
  },
  "cup-of-year": (design, finding) => {
    const { name, verdict, advice } = NOTES["cup-of-year"];
    const distance = formatLength(finding.data!.pithDistance!, design);
    return { name, ...comparedFigures(design, finding), verdict, advice: advice({ distance }) };
  },
  "moisture-of-year": (design, finding) => ({
    ...NOTES["moisture-of-year"],
    ...comparedFigures(design, finding),
  }),
};

const partNames = (parts: readonly string[] = []): readonly string[] =>
  parts.map((part) => DISPLAY_NAMES[part as keyof typeof DISPLAY_NAMES]);

/** The finding with its sentence in place of what the sentence is made of. Notes on woods keep their own order of keys. */
export function formatFinding<T extends Judged>(design: MakersUnits, finding: T): FormattedFinding<T> {
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
