// Plain values → what was given; there is no file, so every place is line 0.
import type { DesignNode, MapNode } from "./design-nodes.ts";
import type { DesignFaultCollector } from "./fault.ts";

const NOWHERE = { line: 0, column: 0 };
const DEEPEST = 20; // levels: the table has three, and a value may hold itself

/** What nested plain values give; a key whose value is undefined counts as left out. */
export function fromObject(values: unknown, faults: DesignFaultCollector): MapNode | undefined {
  const given = nodeOfValue(values, 0);
  if (given.kind === "map") return given;
  faults.add(NOWHERE, "", { code: "not-an-object" });
  return undefined;
}

function nodeOfValue(value: unknown, depth: number): DesignNode {
  const at = NOWHERE;
  if (value === null || value === undefined) return { kind: "nothing", at };
  if (typeof value === "number") return { kind: "number", at, value };
  if (typeof value === "string") return { kind: "text", at, text: value };
  if (typeof value !== "object" || depth > DEEPEST) return { kind: "other", at, words: `a ${typeof value}` };
  if (Array.isArray(value)) return { kind: "list", at, items: value.map((item) => nodeOfValue(item, depth + 1)) };
  const entries = Object.entries(value).filter(([, inner]) => inner !== undefined);
  return {
    kind: "map",
    at,
    entries: entries.map(([key, inner]) => ({ key, at, value: nodeOfValue(inner, depth + 1) })),
  };
}
