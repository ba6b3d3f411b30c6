// What was given + the table → a whole design, or every fault. A design is never half accepted.
import { type Design, isListName, LIST_NAMES, type ListName, rowsOf, TABLE } from "../table/index.ts";
import { SHOP_TABLE } from "../table/shop-table.ts";
import type { Units } from "../units.ts";
import { decodeList } from "./decode-list.ts";
import {
  type DecodeContext,
  type DecodedSection,
  type DecodedValues,
  decodeEntries,
  type OldKey,
  type OldWord,
  type OverShop,
} from "./decode-section.ts";
import type { DesignEntry, MapNode } from "./design-nodes.ts";
import type { DesignFaultCollector, Fault } from "./fault.ts";
import { addFormerValues, splitFormerKeys } from "./former-keys.ts";
import type { UnitSlip } from "./unit-slip.ts";
import type { ParameterValue } from "./value.ts";

/** `givenPaths` names the paths that were given rather than filled in; `slips` are to be asked about, `oldWords`, `formerKeys` and `overShop` to be noted. */
export type DesignResult =
  | {
      readonly ok: true;
      readonly design: Design;
      readonly givenPaths: ReadonlySet<string>;
      readonly slips: readonly UnitSlip[];
      readonly oldWords: readonly OldWord[];
      readonly formerKeys: readonly OldKey[];
      readonly overShop: readonly OverShop[];
    }
  | { readonly ok: false; readonly faults: Fault[] };

type Notes = Pick<DecodeContext, "slips" | "oldWords" | "formerKeys" | "overShop">;

/** The design that `node`, the shop and the defaults make; `node` is absent where the text holds none: its faults are added already. */
export function decodeDesign(
  node: MapNode | undefined,
  units: Units | "as given",
  faults: DesignFaultCollector,
  shop?: DecodedValues,
): DesignResult {
  if (!node) return { ok: false, faults: faults.sorted() };
  const givenPaths = new Set<string>();
  const own = decodeUnits(node.entries);
  const notes: Notes = { slips: [], oldWords: [], formerKeys: [], overShop: [] };
  const context = {
    units: units === "as given" ? own : units,
    defaults: own ?? "mm",
    givenPaths,
    ...notes,
    faults,
    shop,
  };
  const lists = decodeLists(node.entries, context);
  const { entries, former } = splitFormerKeys(node.entries.filter(({ key }) => !isListName(key)));
  const design = { ...decodeEntries(TABLE, entries, node.at, "", context), ...lists } as unknown as Design;
  const whole = faults.isEmpty ? addFormerValues(design, former, context) : design;
  const found = faults.sorted();
  if (found.length > 0) return { ok: false, faults: found };
  return { ok: true, design: whole, givenPaths, ...notes };
}

/** What a shop file gives; undefined, with the faults added, where it is none. */
export function decodeShop(node: MapNode | undefined, faults: DesignFaultCollector): DecodedValues | undefined {
  if (!node) return undefined;
  const units = decodeUnits(node.entries);
  const context: DecodeContext = {
    units,
    defaults: units ?? "mm",
    givenPaths: new Set(),
    slips: [],
    oldWords: [],
    formerKeys: [],
    overShop: [],
    faults,
  };
  const lists = decodeLists(node.entries, context);
  const foreign = node.entries.filter(({ key }) => Object.hasOwn(TABLE, key) && !Object.hasOwn(SHOP_TABLE, key));
  for (const { key, at } of foreign) faults.add(at, key, { code: "not-of-a-shop", key });
  const single = node.entries.filter((entry) => !foreign.includes(entry) && !isListName(entry.key));
  const values = decodeEntries(SHOP_TABLE, single, node.at, "", context);
  if (!faults.isEmpty) return undefined;
  const own = rowsOf(SHOP_TABLE).filter(({ path }) => path !== "units" && context.givenPaths.has(path));
  const given = own.map(({ path }) => [path, valueIn(values, path.split("."))] as const);
  const givenLists = LIST_NAMES.filter((name) => context.givenPaths.has(name)).map(
    (name) => [name, lists[name]!] as const,
  );
  return new Map<string, ParameterValue | readonly DecodedSection[]>([...given, ...givenLists]);
}

const valueIn = (values: DecodedSection, [key = "", ...rest]: string[]): ParameterValue =>
  rest.length > 0 ? valueIn(values[key] as DecodedSection, rest) : (values[key] as ParameterValue);

function decodeLists(entries: readonly DesignEntry[], context: DecodeContext) {
  const list = (name: ListName): readonly DecodedSection[] => {
    const entry = entries.find(({ key }) => key === name);
    const ofShop = context.shop?.get(name) as readonly DecodedSection[] | undefined;
    if (!entry) return ofShop ?? [];
    context.givenPaths.add(name);
    if (ofShop) context.overShop.push({ path: name, at: entry.at });
    return decodeList(name, entry.value, context);
  };
  return Object.fromEntries(LIST_NAMES.map((name) => [name, list(name)]));
}

function decodeUnits(entries: readonly DesignEntry[]): Units | undefined {
  const value = entries.find(({ key }) => key === "units")?.value;
  if (!value) return TABLE.units.default;
  return value.kind === "text" ? TABLE.units.choices.find((unit) => unit === value.text) : undefined;
}
