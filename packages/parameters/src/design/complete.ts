// What was given + the table → a whole design, or every fault. A design is never half accepted.
import { type Design, isRow, type Row, rowsOf, type Section, TABLE } from "../table/index.ts";
import type { Units } from "../units.ts";
import type { Fault, Faults, Given, GivenEntry, Place } from "./given.ts";
import { unknownKey } from "./suggest.ts";
import { allowed, understood, type Value } from "./value.ts";

/** `given` names the paths that were given rather than filled in. */
export type DesignReading =
  | { readonly ok: true; readonly design: Design; readonly given: ReadonlySet<string> }
  | { readonly ok: false; readonly faults: Fault[] };

interface Filled {
  [key: string]: Value | Filled;
}
interface Filling {
  /** Undefined where what was given for it is no unit: then no length can be judged. */
  readonly units: Units | undefined;
  readonly rows: Set<string>;
  readonly faults: Faults;
}

/** The design that `given` and the defaults make; `given` is absent where faults were already told. */
export function completed(given: Given | undefined, units: Units | "as given", faults: Faults): DesignReading {
  if (given?.kind !== "map") return { ok: false, faults: faults.sorted() };
  const rows = new Set<string>();
  const filling = { units: units === "as given" ? unitsIn(given.entries) : units, rows, faults };
  const design = filled(TABLE, given.entries, given.at, "", filling);
  const told = faults.sorted();
  if (told.length > 0) return { ok: false, faults: told };
  return { ok: true, design: design as unknown as Design, given: rows };
}

/** Whether a section may stand in a file with nothing in it: one that the bench fills in. */
export const mayBeEmpty = (section: Section): boolean =>
  rowsOf(section).some(({ row }) => row.kind === "number" && row.unset === true);

function unitsIn(entries: readonly GivenEntry[]): Units | undefined {
  const value = entries.find(({ key }) => key === "units")?.value;
  if (!value) return TABLE.units.default;
  return value.kind === "text" ? TABLE.units.choices.find((unit) => unit === value.text) : undefined;
}

function filled(section: Section, entries: readonly GivenEntry[], at: Place, path: string, filling: Filling): Filled {
  const prefix = path === "" ? "" : `${path}.`;
  for (const { key, at: keyAt, value } of entries)
    if (!Object.hasOwn(section, key))
      filling.faults.add(keyAt, prefix + key, () => unknownKey(key, path, section, value.kind === "nothing"));
  const values: Filled = {};
  for (const [key, inner] of Object.entries(section)) {
    const entry = entries.find((candidate) => candidate.key === key);
    const value = isRow(inner)
      ? rowValue(inner, entry, at, prefix + key, filling)
      : sectionValue(inner, entry, at, prefix + key, filling);
    if (value !== undefined) values[key] = value;
  }
  return values;
}

function sectionValue(section: Section, entry: GivenEntry | undefined, at: Place, path: string, filling: Filling) {
  const given = entry?.value;
  if (entry && given?.kind === "map") return filled(section, given.entries, entry.at, path, filling);
  if (!entry || !given || (given.kind === "nothing" && mayBeEmpty(section)))
    return filled(section, [], at, path, filling);
  if (given.kind !== "refused") {
    const keys = Object.keys(section).join(", ");
    filling.faults.add(given.at, path, `${path} is a section; write keys into it (${keys}), or leave it out`);
  }
  return undefined;
}

const isLength = (row: Row): boolean => row.kind === "number" && row.quantity === "length";

function rowValue(row: Row, entry: GivenEntry | undefined, at: Place, path: string, filling: Filling) {
  if (entry) {
    filling.rows.add(path);
    if (entry.value.kind === "refused" || (filling.units === undefined && isLength(row))) return undefined;
    const reading = understood(entry.value, row, filling.units ?? "mm");
    if ("value" in reading) return reading.value;
    filling.faults.add(entry.value.at, path, reading.fault);
    return undefined;
  }
  if (row.kind === "number" && row.required)
    filling.faults.add(at, path, `${path} is missing: ${row.help} Write ${allowed(row, filling.units ?? "mm")}`);
  return row.default;
}
