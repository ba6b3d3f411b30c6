// Sentences of a roster's faults: what was read, what is allowed, what to do; without their place.
import { sentence } from "./sentence.ts";

const BEGINNING =
  "write `planes:` and under it one row for each plane, such as `- { name: anna, iron: { width: 50.8 } }`";

export const ROSTER_FAULT = {
  "not-a-roster": `a roster has the keys base and planes; ${BEGINNING}`,
  "no-planes": `the roster has no planes; ${BEGINNING}`,
  "too-many-planes": sentence(
    ({ count, most }: { count: number; most: number }) => `${count} planes; allowed: up to ${most}. Split the roster`,
    { count: 612, most: 500 },
  ),
  "unknown-roster-key": sentence(
    ({ key, keys }: { key: string; keys: readonly string[] }) =>
      `"${key}" is not a key of a roster; known here: ${keys.join(", ")}`,
    { key: "plane", keys: ["base", "planes", "boards"] },
  ),
  "base-not-a-file": "base is the base design's file, such as `base: smoother.yaml`",
  "row-not-a-map": "a row is keys and values, such as `- { name: anna, iron: { width: 50.8 } }`",
  "open-quote": 'a quote opens here and is never closed; write ", and "" for a quote within',
  "doubled-column": sentence(({ head }: { head: string }) => `two columns are headed ${head}; keep one`, {
    head: "iron.width",
  }),
  "no-name-column": "no column is headed name; write `name,iron.width,iron.thickness` into the first line",
  "cells-beyond-head": sentence(
    ({ heads }: { heads: number }) =>
      `this row has more cells than the ${heads} of the first line; head the column, or take the cell out`,
    { heads: 3 },
  ),
  "no-name": "the row has no name; write one, which its pack will have too",
  "second-name": sentence(
    ({ name, firstLine }: { name: string; firstLine: number }) =>
      `${name} stands on line ${firstLine} already; a pack needs a name of its own`,
    { name: "anna", firstLine: 3 },
  ),
  "of-the-base": sentence(
    ({ key }: { key: string }) => `${key} is the base design's and the same for all; take it out of the roster`,
    { key: "units" },
  ),
} as const;
