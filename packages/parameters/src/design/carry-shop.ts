// A design that carries what its shop file holds, so that it can be sent on without it.
import { isMap } from "yaml";
import {
  isListName,
  isRow,
  LISTS,
  type ListName,
  listsWithin,
  type Row,
  type TableSection,
  UNIT_OF,
} from "../table/index.ts";
import { formatDecimal } from "../units.ts";
import { endOf, pairAt, parseEditableMap, splitByteOrderMark } from "../yaml/editable-map.ts";
import { applyEdits } from "../yaml/edits.ts";
import type { DecodedSection } from "./decode-section.ts";
import { readOwnDesign } from "./read.ts";
import { readShop, type ShopSource } from "./shop-file.ts";
import { removeKey, removeList } from "./value-removal.ts";
import { setValue } from "./value-update.ts";

/**
 * The text with the shop's values written into it where it has none of its own, and without the shop file's name.
 * @param source a design that readOwnDesign takes
 * @throws Error for a shop file with faults (our bug)
 */
export function carryShop(source: string, shop: ShopSource): string {
  const read = readShop(shop);
  const own = readOwnDesign(source);
  if ("faults" in read || !own.ok)
    throw new Error("a shop file is carried by a sound design only, and is sound itself");
  let text = withoutShopName(source);
  const lists: Partial<Record<ListName, readonly DecodedSection[]>> = {};
  for (const [path, value] of read.values) {
    if (own.givenPaths.has(path)) continue;
    if (isListName(path)) lists[path] = value as readonly DecodedSection[];
    else text = setValue(text, path, value as string | number);
  }
  return withLists(text, lists);
}

function withoutShopName(source: string): string {
  const { mark, text } = splitByteOrderMark(source);
  const root = parseEditableMap(text);
  const shop = pairAt(root, "shop")?.value;
  const hasMore = isMap(shop) && shop.items.length > 1;
  if (!shop || (isMap(shop) && !pairAt(shop, "file"))) return source;
  return mark + applyEdits(text, removeKey(text, root, hasMore ? ["shop", "file"] : ["shop"]));
}

/**
 * The text with another list in the place of one of the design's.
 * @param source a design that readDesign takes
 */
export const setList = (source: string, name: ListName, items: readonly object[]): string => {
  const without = removeList(source, name);
  return items.length === 0 ? without : withLists(without, { [name]: items as readonly DecodedSection[] });
};

/** Lists are written behind everything else, an item a line. */
function withLists(source: string, lists: Partial<Record<ListName, readonly DecodedSection[]>>): string {
  const { mark, text } = splitByteOrderMark(source);
  const root = parseEditableMap(text);
  const entries = Object.entries(lists).map(([name, items]) => {
    const rows = items.map((item) => JSON.stringify(itemWithUnits(name as ListName, item)));
    return `${JSON.stringify(name)}: [${rows.map((row) => `\n  ${row}`).join(",")}]`;
  });
  if (entries.length === 0) return source;
  const end = endOf(root.items.at(-1)!);
  if (root.flow) return mark + applyEdits(text, [{ start: end, end, text: `,\n${entries.join(",\n")}` }]);
  return `${mark}${text}${text.endsWith("\n") ? "" : "\n"}${entries.join("\n")}\n`;
}

/** With the unit behind each length, whatever the file's is. */
const itemWithUnits = (name: ListName, item: DecodedSection): object =>
  Object.fromEntries(
    Object.entries(item).map(([key, value]) => {
      const within = listsWithin(name)[key];
      if (within && Array.isArray(value)) return [key, value.map((each) => sectionWithUnits(within.item, each))];
      return [key, valueWithUnits((LISTS[name].item as TableSection)[key], value)];
    }),
  );

const sectionWithUnits = (section: TableSection, values: DecodedSection): object =>
  Object.fromEntries(Object.entries(values).map(([key, value]) => [key, valueWithUnits(section[key], value)]));

function valueWithUnits(entry: Row | TableSection | undefined, value: DecodedSection[string]): unknown {
  if (entry && !isRow(entry)) return sectionWithUnits(entry, value as DecodedSection);
  if (entry?.kind !== "number" || typeof value !== "number") return value;
  if (entry.quantity !== "length" && entry.quantity !== "feed") return value;
  return `${formatDecimal(value, 6)} ${UNIT_OF[entry.quantity]}`;
}
