// YAML text → what was given. Only maps and plain scalars; whatever makes YAML clever is refused.
import {
  type Document,
  isAlias,
  isMap,
  isScalar,
  isSeq,
  type LineCounter,
  type Node,
  type Pair,
  parseDocument,
  type YAMLMap,
} from "yaml";
import { type Faults, type Given, type GivenEntry, type Place, shown } from "./given.ts";
import { DEEPEST, tooDeepAt } from "./nesting.ts";
import { placeAt, readSource, type Source, START } from "./source.ts";

interface Walk {
  readonly lines: LineCounter;
  readonly faults: Faults;
}

/** What a design file gives; nothing where it is not even YAML, with the faults told. */
export function givenInYaml(source: string | Uint8Array, faults: Faults): Given | undefined {
  const read = readSource(source, faults);
  if (!read) return undefined;
  const document = parsed(read, faults);
  if (!document) return undefined;
  const walk = { lines: read.lines, faults };
  if (tellSyntax(document, walk)) return undefined;
  const root = document.contents as Node | null;
  const top = root === null ? ({ kind: "nothing", at: START } as const) : givenIn(root, "", START, walk);
  if (top.kind === "map" || top.kind === "refused") return top.kind === "map" ? top : undefined;
  const what = top.kind === "nothing" ? "the design is empty" : "a design is a list of keys and values";
  faults.add(top.at, "", `${what}; begin with \`iron: { width: 48 mm, thickness: 3.6 mm }\``);
  return undefined;
}

/** How every design text is parsed. Doubled keys are found in the walk: the parser's own way is slow on a long file. */
export const PARSING = { schema: "core", prettyErrors: false, uniqueKeys: false, merge: false } as const;

function parsed({ text, lines }: Source, faults: Faults): Document | undefined {
  const deep = tooDeepAt(text);
  if (deep === undefined) return parseDocument(text, PARSING);
  faults.add(placeAt(lines, deep), "", `the file is nested more than ${DEEPEST} levels deep; a design has three`);
  return undefined;
}

function tellSyntax(document: Document, { lines, faults }: Walk): boolean {
  for (const { code, message, pos } of [...document.errors, ...document.warnings]) {
    if (code === "TAG_RESOLVE_FAILED") continue; // told as a tag, in the walk
    const several = "a second document begins here; a file holds one plane";
    const words = code === "MULTIPLE_DOCS" ? several : `not YAML: ${shown(message)}; check colons, quotes and brackets`;
    faults.add(placeAt(lines, pos[0]), "", words);
  }
  const directed = document.directives?.yaml.explicit === true;
  if (directed) faults.add(START, "", "%YAML directives are not read; leave the line out");
  return directed || document.errors.some(({ code }) => code !== "TAG_RESOLVE_FAILED");
}

function givenIn(node: Node, path: string, near: Place, walk: Walk): Given {
  const at = node.range ? placeAt(walk.lines, node.range[0]) : near;
  const clever = clevernessOf(node);
  if (clever !== undefined) {
    walk.faults.add(at, path, `${clever} are not read in a design; write the value out`);
    return { kind: "refused", at };
  }
  if (isMap(node)) return { kind: "map", at, entries: entriesOf(node, path, at, walk) };
  if (isSeq(node)) return { kind: "other", at, words: "a list" };
  return isScalar(node) ? scalar(node.value, node.source ?? String(node.value), at) : { kind: "refused", at };
}

function clevernessOf(node: Node): string | undefined {
  if (isAlias(node)) return "aliases (*)";
  if ("anchor" in node && node.anchor) return "anchors (&)";
  return node.tag === undefined ? undefined : "tags (!)";
}

function scalar(value: unknown, source: string, at: Place): Given {
  if (value === null || value === undefined) return { kind: "nothing", at };
  if (typeof value === "string") return { kind: "text", at, text: value };
  if (typeof value === "number" && !Number.isFinite(value) && !/\d/.test(source)) return { kind: "number", at, value };
  if (typeof value === "number" || typeof value === "bigint") return { kind: "text", at, text: source, bare: "number" };
  return { kind: "other", at, words: `${String(value)} (yes or no)` };
}

function entriesOf(map: YAMLMap, path: string, at: Place, walk: Walk): GivenEntry[] {
  const first = new Map<string, Place>();
  return (map.items as Pair<Node, Node | null>[]).flatMap((pair) => {
    const entry = entryOf(pair, path, at, walk);
    if (!entry) return [];
    const before = first.get(entry.key);
    first.set(entry.key, before ?? entry.at);
    if (!before) return [entry];
    const words = `"${shown(entry.key)}" was already given on line ${before.line}; keep one of the two`;
    walk.faults.add(entry.at, prefixed(path, entry.key), words);
    return [];
  });
}

function entryOf({ key, value }: Pair<Node, Node | null>, path: string, near: Place, walk: Walk) {
  const at = key?.range ? placeAt(walk.lines, key.range[0]) : near;
  const clever = key ? clevernessOf(key) : undefined;
  if (!isScalar(key) || clever !== undefined) {
    walk.faults.add(at, path, clever ? `${clever} are not read in a design` : "a key is one word; write `key: value`");
    return undefined;
  }
  const name = String(key.value ?? "");
  if (name === "<<") {
    walk.faults.add(at, path, "merge keys (<<) are not read in a design; write the keys out");
    return undefined;
  }
  const given: Given = value === null ? { kind: "nothing", at } : givenIn(value, prefixed(path, name), at, walk);
  return { key: name, at, value: given };
}

const prefixed = (path: string, key: string): string => (path === "" ? key : `${path}.${key}`);
