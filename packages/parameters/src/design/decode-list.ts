// A list of things, each a section of rows with a name of its own.
import { LISTS, type ListName, listsWithin } from "../table/index.ts";
import { type DecodeContext, type DecodedSection, decodeEntries } from "./decode-section.ts";
import type { DesignEntry, DesignNode } from "./design-nodes.ts";

/** Items of a list; what is none is added to the faults. Paths count items from 1. */
export function decodeList(name: ListName, node: DesignNode, context: DecodeContext): readonly DecodedSection[] {
  if (node.kind === "nothing" || node.kind === "refused") return [];
  if (node.kind !== "list") {
    context.faults.add(node.at, name, { code: "not-a-list" });
    return [];
  }
  const seen = new Map<unknown, number>();
  return node.items.flatMap((item, index) => {
    const path = `${name}.${index + 1}`;
    if (item.kind === "refused") return [];
    if (item.kind !== "map") {
      context.faults.add(item.at, path, { code: "not-an-item" });
      return [];
    }
    const isWithin = (key: string) => Object.hasOwn(listsWithin(name), key);
    const single = item.entries.filter(({ key }) => !isWithin(key));
    const values = {
      ...decodeEntries(LISTS[name].item, single, item.at, path, context),
      ...decodeWithin(name, item.entries, path, context),
    };
    const first = seen.get(values.name);
    if (first === undefined) seen.set(values.name, item.at.line);
    else
      context.faults.add(item.at, `${path}.name`, {
        code: "doubled-name",
        name: String(values.name),
        firstLine: first,
      });
    return [values];
  });
}

/** The lists within an item, empty where it has none. */
function decodeWithin(name: ListName, entries: readonly DesignEntry[], path: string, context: DecodeContext) {
  const lists = Object.entries(listsWithin(name)).map(([key, { item }]): [string, readonly DecodedSection[]] => {
    const node = entries.find((entry) => entry.key === key)?.value;
    if (!node || node.kind === "nothing" || node.kind === "refused") return [key, []];
    if (node.kind !== "list") {
      context.faults.add(node.at, `${path}.${key}`, { code: "not-a-list" });
      return [key, []];
    }
    const items = node.items.flatMap((each, index) => {
      const own = `${path}.${key}.${index + 1}`;
      if (each.kind === "map") return [decodeEntries(item, each.entries, each.at, own, context)];
      if (each.kind !== "refused") context.faults.add(each.at, own, { code: "not-an-item" });
      return [];
    });
    return [key, items];
  });
  return Object.fromEntries(lists);
}
