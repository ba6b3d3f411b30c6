// What one row of the parameter table is. A row that contradicts itself fails when the table is loaded.

/** What a number measures; decides how text is read and in which unit it is shown. */
export type Quantity =
  | "length"
  | "angle"
  | "ratio"
  | "count"
  | "temperature"
  | "humidity"
  | "force per length"
  | "feed"
  | "turns"
  | "time"
  | "percent";

/** Unit in which a quantity is kept inside; the maker's unit is a matter of the edge. */
export const UNIT_OF: Record<Quantity, string> = {
  length: "mm",
  angle: "°",
  ratio: "",
  count: "",
  temperature: "°C",
  humidity: "% RH",
  "force per length": "N/mm",
  feed: "mm/min",
  turns: "rpm",
  time: "s",
  percent: "%",
};

interface Documented {
  /** What a maker calls it, lower case, where prose names it. */
  readonly name: string;
  /** One sentence for the maker: what is measured, between what and what. */
  readonly help: string;
  /** Published work, "common practice, no published source", or why the value was chosen. */
  readonly source: string;
}

/** A number with its hard limits. `V` is what stands in a design: a number, perhaps "auto", perhaps nothing yet. */
export interface NumberRow<V = number | "auto" | undefined> extends Documented {
  readonly kind: "number";
  readonly quantity: Quantity;
  /** Absent where the maker must give it. */
  readonly default?: V;
  /** Default of a design in inches, inches: where it is not the common size next to `default`. */
  readonly inches?: number;
  /** Sold by the millimetre everywhere: a design in inches has the same default. */
  readonly metric?: true;
  readonly min: number;
  readonly max: number;
  /** What one press of an arrow key is worth. */
  readonly step: number;
  /** What "auto" solves, where it is allowed. */
  readonly auto?: string;
  readonly required?: true;
  /** A measured value: absent until the bench has given it. */
  readonly unset?: true;
}

/** One word out of a fixed list. */
export interface ChoiceRow<V extends string = string> extends Documented {
  readonly kind: "choice";
  readonly choices: readonly V[];
  readonly default: V;
  /** Default of a design in inches, where it is another. */
  readonly inches?: V;
  /** Words that older files hold, each with the choice that it means. */
  readonly oldChoices?: Readonly<Record<string, V>>;
}

/** Free text on one line. */
export interface TextRow extends Documented {
  readonly kind: "text";
  readonly default: string;
  readonly required?: true;
  readonly maxLength: number;
  /** What the text may look like, and the same in words. */
  readonly pattern?: { readonly regex: RegExp; readonly words: string };
}

/**
 * Lengths in a row, or one word out of a list. In a design it is text in which each length carries its unit, mm:
 * "17.3 mm + 15 mm + 17.3 mm".
 */
export interface LengthsRow extends Documented {
  readonly kind: "lengths";
  readonly words: readonly string[];
  readonly default: string;
  /** Limits of each length, mm, and the most of them that there may be. */
  readonly min: number;
  readonly max: number;
  readonly most: number;
  /** What "auto" solves, where it is one of the words. */
  readonly auto?: string;
}

export type Row = NumberRow | ChoiceRow | TextRow | LengthsRow;
/** A list of things of one kind, each a section of rows; each has a `name` of its own. */
export interface ListRow<T extends TableSection = TableSection> extends Documented {
  readonly item: T;
  /** Lists within an item, by their keys; their own items have no names. */
  readonly within?: Readonly<Record<string, { readonly help: string; readonly item: TableSection }>>;
}
export interface TableSection {
  readonly [key: string]: Row | TableSection;
}

/** The value a row, or a section of rows, puts into a design. */
export type ValueOf<T> =
  T extends NumberRow<infer V>
    ? V
    : T extends ChoiceRow<infer V>
      ? V
      : T extends TextRow | LengthsRow
        ? string
        : T extends TableSection
          ? { readonly [K in keyof T]: ValueOf<T[K]> }
          : never;

interface NumberSpec extends Documented {
  readonly min: number;
  readonly max: number;
  readonly step?: number;
}
type Defaulted = NumberSpec & Pick<NumberRow, "inches" | "metric"> & { readonly default: number };

const STEP: Record<Quantity, number> = {
  length: 0.1,
  angle: 0.5,
  ratio: 0.01,
  count: 1,
  temperature: 1,
  humidity: 1,
  "force per length": 0.5,
  feed: 50,
  turns: 500,
  time: 0.5,
  percent: 1,
};

function numberRow<V>(quantity: Quantity, spec: NumberSpec, rest: Partial<NumberRow<V>>): NumberRow<V> {
  return { kind: "number", quantity, step: STEP[quantity], ...spec, ...rest } as NumberRow<V>;
}

const withDefault = (quantity: Quantity) => (spec: Defaulted) => numberRow<number>(quantity, spec, {});
const solvedWhenAuto =
  (quantity: Quantity) => (spec: NumberSpec & { readonly auto: string; readonly default?: number }) =>
    numberRow<number | "auto">(quantity, spec, { default: spec.default ?? "auto" });
const onceMeasured = (quantity: Quantity) => (spec: NumberSpec) =>
  numberRow<number | undefined>(quantity, spec, { unset: true });

export const length = withDefault("length");
export const angle = withDefault("angle");
export const ratio = withDefault("ratio");
export const count = withDefault("count");
export const temperature = withDefault("temperature");
export const humidity = withDefault("humidity");
export const forcePerLength = withDefault("force per length");
export const feed = withDefault("feed");
export const turns = withDefault("turns");
export const time = withDefault("time");
export const lengthOrAuto = solvedWhenAuto("length");
export const angleOrAuto = solvedWhenAuto("angle");
export const percentOrAuto = solvedWhenAuto("percent");
export const measuredLength = onceMeasured("length");
export const measuredAngle = onceMeasured("angle");
export const requiredLength = (spec: NumberSpec): NumberRow<number> => numberRow("length", spec, { required: true });

/** One word out of `choices`; the first is not special, the default is named. */
export const choice = <const V extends string>(
  spec: Documented & {
    choices: readonly V[];
    default: NoInfer<V>;
    inches?: NoInfer<V>;
    oldChoices?: Readonly<Record<string, NoInfer<V>>>;
  },
): ChoiceRow<V> => ({
  kind: "choice",
  ...spec,
});

/** One line of free text. */
export const text = (spec: Omit<TextRow, "kind">): TextRow => ({ kind: "text", ...spec });

/** Lengths in a row, or one of `words`. */
export const lengths = (spec: Omit<LengthsRow, "kind">): LengthsRow => ({ kind: "lengths", ...spec });

/** Tells a row from a section of rows. */
export const isRow = (entry: Row | TableSection): entry is Row => typeof (entry as Row).kind === "string";

/** Every row of a section with its dotted path, in the table's order. */
export function rowsOf(section: TableSection, prefix = ""): { path: string; row: Row }[] {
  return Object.entries(section).flatMap(([key, entry]) =>
    isRow(entry) ? [{ path: prefix + key, row: entry }] : rowsOf(entry, `${prefix}${key}.`),
  );
}

/**
 * The table itself, once every row in it has been found sound.
 * @throws Error (our bug) naming the rows that are not: limits reversed, default outside them, name, help or source missing.
 */
export function validateTable<const T extends TableSection>(table: T): T {
  const faults = rowsOf(table).flatMap(({ path, row }) => rowFaults(row).map((fault) => `${path}: ${fault}`));
  if (faults.length > 0) throw new Error(`parameter table: ${faults.join("; ")}`);
  return table;
}

function rowFaults(row: Row): string[] {
  const faults: string[] = [];
  if (row.name === "" || row.help === "" || row.source === "") faults.push("name, help or source missing");
  if (row.kind === "choice" && !row.choices.includes(row.default)) faults.push("default is not a choice");
  if (row.kind === "text" && row.default.length > row.maxLength) faults.push("default is too long");
  if (row.kind === "lengths" && !row.words.includes(row.default)) faults.push("default is not one of its words");
  if (row.kind === "lengths" && !(row.min < row.max)) faults.push("limits are not ordered");
  if (row.kind !== "number") return faults;
  if (!(Number.isFinite(row.min) && Number.isFinite(row.max) && row.min < row.max))
    faults.push("limits are not ordered");
  if (!(row.step > 0)) faults.push("step is not positive");
  if (typeof row.default === "number" && !(row.default >= row.min && row.default <= row.max))
    faults.push(`default ${row.default} is outside ${row.min} … ${row.max}`);
  if (row.default === "auto" && row.auto === undefined) faults.push("auto without saying what it solves");
  if (row.default === undefined && !row.required && !row.unset) faults.push("no default");
  return faults;
}
