// A design's YAML as maps of single words and values only; whatever makes YAML clever is refused.
import type { SourcePosition } from "../yaml/fault.ts";
import { parseYaml, type YamlDocument } from "../yaml/parse.ts";
import type { RawEntry, RawNode } from "../yaml/raw-node.ts";
import { START } from "../yaml/source.ts";
import type { DesignFaultCollector } from "./fault.ts";

export interface DesignEntry {
  readonly key: string;
  readonly at: SourcePosition;
  readonly value: DesignNode;
}

/** Text that YAML takes for a number stays text, so that it is read in one place; `bare` tells it from quoted text. */
export type DesignNode =
  | { readonly kind: "map"; readonly at: SourcePosition; readonly entries: readonly DesignEntry[] }
  | { readonly kind: "text"; readonly at: SourcePosition; readonly text: string; readonly bare?: "number" }
  | { readonly kind: "number"; readonly at: SourcePosition; readonly value: number }
  | { readonly kind: "nothing"; readonly at: SourcePosition }
  | { readonly kind: "list"; readonly at: SourcePosition; readonly items: readonly DesignNode[] }
  | { readonly kind: "other"; readonly at: SourcePosition; readonly words: string }
  /** Already reported; not reported again. */
  | { readonly kind: "refused"; readonly at: SourcePosition };

export type MapNode = Extract<DesignNode, { kind: "map" }>;

/** The map that a design file, or a shop file, holds; undefined, with the faults added, where it holds none. */
export function parseDesignNodes(
  source: string | Uint8Array,
  faults: DesignFaultCollector,
  what: "design" | "shop" = "design",
): MapNode | undefined {
  const document = parseYaml(source, faults);
  if (!document || reportSyntax(document, faults)) return undefined;
  const top = document.root ? designNode(document.root, "", faults) : ({ kind: "nothing", at: START } as const);
  if (top.kind === "map") return top;
  const [empty, other] =
    what === "shop" ? (["empty-shop", "not-a-shop"] as const) : (["empty-design", "not-a-design"] as const);
  if (top.kind !== "refused") faults.add(top.at, "", { code: top.kind === "nothing" ? empty : other });
  return undefined;
}

/** Whether the text is too broken to be looked at. A tag that is not known is reported with its node. */
export function reportSyntax({ problems, hasDirective }: YamlDocument, faults: DesignFaultCollector): boolean {
  const relevant = problems.filter(({ code }) => code !== "TAG_RESOLVE_FAILED");
  for (const { at, code } of relevant)
    faults.add(at, "", code === "MULTIPLE_DOCS" ? { code: "second-document" } : { code: "not-yaml", problem: code });
  if (hasDirective) faults.add(START, "", { code: "yaml-directive" });
  return hasDirective || relevant.some(({ isError }) => isError);
}

/** A node of the file as a design has it. */
export function designNode(node: RawNode, path: string, faults: DesignFaultCollector): DesignNode {
  const { at, feature } = node;
  if (feature) {
    faults.add(at, path, { code: "yaml-feature", feature, of: "value" });
    return { kind: "refused", at };
  }
  switch (node.kind) {
    case "map":
      return { kind: "map", at, entries: designEntries(node.entries, path, faults) };
    case "list":
      return {
        kind: "list",
        at,
        items: node.items.map((item, i) => designNode(item, joinPath(path, `${i + 1}`), faults)),
      };
    case "boolean":
      return { kind: "other", at, words: `${node.value} (yes or no)` };
    case "number":
      return Number.isFinite(node.value) || /\d/.test(node.text)
        ? { kind: "text", at, text: node.text, bare: "number" }
        : { kind: "number", at, value: node.value };
    case "text":
      return { kind: "text", at, text: node.text };
    case "alias":
      return { kind: "refused", at };
    case "nothing":
      return { kind: "nothing", at };
  }
}

function designEntries(entries: readonly RawEntry[], path: string, faults: DesignFaultCollector): DesignEntry[] {
  const first = new Map<string, SourcePosition>();
  return entries.flatMap((raw) => {
    const entry = designEntry(raw, path, faults);
    if (!entry) return [];
    const before = first.get(entry.key);
    first.set(entry.key, before ?? entry.at);
    if (!before) return [entry];
    const { key, at } = entry;
    faults.add(at, joinPath(path, key), { code: "doubled-key", key, firstLine: before.line });
    return [];
  });
}

function designEntry({ key, value }: RawEntry, path: string, faults: DesignFaultCollector): DesignEntry | undefined {
  const { at, feature } = key;
  const name = keyName(key);
  if (feature || name === undefined || name === "<<") {
    faults.add(
      at,
      path,
      feature
        ? { code: "yaml-feature", feature, of: "key" }
        : { code: name === undefined ? "key-not-a-word" : "merge-key" },
    );
    return undefined;
  }
  return { key: name, at, value: designNode(value, joinPath(path, name), faults) };
}

/** A key as text; undefined for one that is no single word. */
function keyName(key: RawNode): string | undefined {
  if (key.kind === "text") return key.text;
  if (key.kind === "number" || key.kind === "boolean") return String(key.value);
  return key.kind === "nothing" ? "" : undefined;
}

const joinPath = (path: string, key: string): string => (path === "" ? key : `${path}.${key}`);
