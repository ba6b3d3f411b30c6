// What was typed, with its places, before anyone knows what it means. The same for YAML and for plain values.
import type { Place, Report } from "./fault.ts";

export interface TypedEntry {
  readonly key: string;
  /** Where the key stands. */
  readonly place: Place;
  readonly value: Typed;
}

export type Scalar = string | number | boolean | null;

export type Typed =
  | {
      readonly kind: "map";
      readonly place: Place;
      /** Asked for only where the table has a section, so that nothing can nest or loop deeper than the table. */
      readonly entries: (report: Report, path: string) => readonly TypedEntry[];
    }
  | { readonly kind: "scalar"; readonly place: Place; readonly value: Scalar }
  | { readonly kind: "other"; readonly place: Place; readonly words: string }
  /** Its fault has been reported already. */
  | { readonly kind: "refused"; readonly place: Place };

const NOWHERE: Place = { line: 0, column: 0 };

/** Plain values, such as JSON gives; `undefined` counts as absent. */
export function typedFromValues(value: unknown): Typed {
  if (value === null || typeof value === "string" || typeof value === "number" || typeof value === "boolean")
    return { kind: "scalar", place: NOWHERE, value };
  if (!isPlainObject(value)) return { kind: "other", place: NOWHERE, words: wordsFor(value) };
  const entries = () =>
    Object.entries(value)
      .filter(([, inner]) => inner !== undefined)
      .map(([key, inner]) => ({ key, place: NOWHERE, value: typedFromValues(inner) }));
  return { kind: "map", place: NOWHERE, entries };
}

function isPlainObject(value: unknown): value is Record<string, unknown> {
  if (typeof value !== "object" || value === null) return false;
  const prototype = Object.getPrototypeOf(value);
  return prototype === Object.prototype || prototype === null;
}

function wordsFor(value: unknown): string {
  if (Array.isArray(value)) return "a list";
  return typeof value === "object" ? "an object that is not plain" : `a ${typeof value}`;
}
