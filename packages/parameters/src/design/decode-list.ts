// A list of things, each a section of rows with a name of its own.
import { LISTS, type ListName } from "../table/index.ts";
import { type DecodeContext, type DecodedSection, fillSection } from "./decode-section.ts";
import type { DesignNode } from "./design-nodes.ts";

/** Items of a list; what is none is added to the faults. Paths count items from 1. */
export function decodeList(name: ListName, node: DesignNode, filling: DecodeContext): readonly DecodedSection[] {
  if (node.kind === "nothing" || node.kind === "refused") return [];
  if (node.kind !== "list") {
    filling.faults.add(node.at, name, { code: "not-a-list" });
    return [];
  }
  const seen = new Map<unknown, number>();
  return node.items.flatMap((item, index) => {
    const path = `${name}.${index + 1}`;
    if (item.kind === "refused") return [];
    if (item.kind !== "map") {
      filling.faults.add(item.at, path, { code: "not-an-item" });
      return [];
    }
    const values = fillSection(LISTS[name].item, item.entries, item.at, path, filling);
    const first = seen.get(values.name);
    if (first === undefined) seen.set(values.name, item.at.line);
    else
      filling.faults.add(item.at, `${path}.name`, {
        code: "doubled-name",
        name: String(values.name),
        firstLine: first,
      });
    return [values];
  });
}
