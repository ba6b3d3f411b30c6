// Measured values by keys of older files, which counted along the sole from the finished toe: read, and moved to the key that counts from the toe end.
import type { Design } from "../table/index.ts";
import { rowsOf, TABLE } from "../table/index.ts";
import { type DecodeContext, decodeRow } from "./decode-section.ts";
import type { DesignEntry } from "./design-nodes.ts";

const FORMER_KEYS = {
  pinHoleFromToe: "pinHoleFromEnd",
  bedTipX: "bedTipFromEnd",
  rampTipX: "rampTipFromEnd",
} as const;
type FormerKey = keyof typeof FORMER_KEYS;

/** A value under its former key, and the key that it stands for. */
export interface FormerEntry {
  readonly entry: DesignEntry;
  readonly key: (typeof FORMER_KEYS)[FormerKey];
}

/** A design's entries without those of former keys, and those; where both keys are there the former one stays, as a fault. */
export function splitFormerKeys(entries: readonly DesignEntry[]): {
  readonly entries: readonly DesignEntry[];
  readonly former: readonly FormerEntry[];
} {
  const former: FormerEntry[] = [];
  const own = entries.map((section) => {
    if (section.key !== "measured" || section.value.kind !== "map") return section;
    const inner = section.value.entries;
    const isFormer = ({ key }: DesignEntry) =>
      Object.hasOwn(FORMER_KEYS, key) && !inner.some((other) => other.key === FORMER_KEYS[key as FormerKey]);
    former.push(...inner.filter(isFormer).map((entry) => ({ entry, key: FORMER_KEYS[entry.key as FormerKey] })));
    return { ...section, value: { ...section.value, entries: inner.filter((entry) => !isFormer(entry)) } };
  });
  return { entries: own, former };
}

/** The design with the values of former keys, counted from the toe end of the cheeks; each is noted. */
export function addFormerValues(design: Design, former: readonly FormerEntry[], context: DecodeContext): Design {
  const values = former.flatMap(({ entry, key }) => {
    const path = `measured.${key}`;
    const { row } = rowsOf(TABLE).find((each) => each.path === path)!;
    const value = decodeRow(row, entry, entry.at, path, context);
    if (typeof value !== "number") return [];
    context.formerKeys.push({ at: entry.at, key, former: entry.key });
    return [[key, value + design.body.trim / 2] as const];
  });
  if (values.length === 0) return design;
  return { ...design, measured: { ...design.measured, ...Object.fromEntries(values) } };
}
