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
import { PARSE_OPTIONS } from "../yaml/parse-options.ts";
import { DEEPEST, tooDeepAt } from "./nesting.ts";
import { type Faults, type RawEntry, type RawNode, type SourcePosition, sanitizeForMessage } from "./raw-node.ts";
import { positionAt, readSource, type SourceText, START } from "./source.ts";

interface ParseContext {
  readonly lines: LineCounter;
  readonly faults: Faults;
}

/** What a design file gives; nothing where it is not even YAML, with the faults told. */
export function parseYaml(source: string | Uint8Array, faults: Faults): RawNode | undefined {
  const read = readSource(source, faults);
  if (!read) return undefined;
  const document = parseSourceText(read, faults);
  if (!document) return undefined;
  const walk = { lines: read.lines, faults };
  if (reportSyntax(document, walk)) return undefined;
  const root = document.contents as Node | null;
  const top = root === null ? ({ kind: "nothing", at: START } as const) : nodeOfYaml(root, "", START, walk);
  if (top.kind === "map" || top.kind === "refused") return top.kind === "map" ? top : undefined;
  const what = top.kind === "nothing" ? "the design is empty" : "a design is a list of keys and values";
  faults.add(top.at, "", `${what}; begin with \`iron: { width: 48 mm, thickness: 3.6 mm }\``);
  return undefined;
}

function parseSourceText({ text, lines }: SourceText, faults: Faults): Document | undefined {
  const deep = tooDeepAt(text);
  if (deep === undefined) return parseDocument(text, PARSE_OPTIONS);
  faults.add(positionAt(lines, deep), "", `the file is nested more than ${DEEPEST} levels deep; a design has three`);
  return undefined;
}

function reportSyntax(document: Document, { lines, faults }: ParseContext): boolean {
  for (const { code, message, pos } of [...document.errors, ...document.warnings]) {
    if (code === "TAG_RESOLVE_FAILED") continue; // told as a tag, in the walk
    const several = "a second document begins here; a file holds one plane";
    const words =
      code === "MULTIPLE_DOCS"
        ? several
        : `not YAML: ${sanitizeForMessage(message)}; check colons, quotes and brackets`;
    faults.add(positionAt(lines, pos[0]), "", words);
  }
  const directed = document.directives?.yaml.explicit === true;
  if (directed) faults.add(START, "", "%YAML directives are not read; leave the line out");
  return directed || document.errors.some(({ code }) => code !== "TAG_RESOLVE_FAILED");
}

function nodeOfYaml(node: Node, path: string, near: SourcePosition, walk: ParseContext): RawNode {
  const at = node.range ? positionAt(walk.lines, node.range[0]) : near;
  const clever = unsupportedFeature(node);
  if (clever !== undefined) {
    walk.faults.add(at, path, `${clever} are not read in a design; write the value out`);
    return { kind: "refused", at };
  }
  if (isMap(node)) return { kind: "map", at, entries: readEntries(node, path, at, walk) };
  if (isSeq(node)) return { kind: "other", at, words: "a list" };
  return isScalar(node) ? nodeOfScalar(node.value, node.source ?? String(node.value), at) : { kind: "refused", at };
}

function unsupportedFeature(node: Node): string | undefined {
  if (isAlias(node)) return "aliases (*)";
  if ("anchor" in node && node.anchor) return "anchors (&)";
  return node.tag === undefined ? undefined : "tags (!)";
}

function nodeOfScalar(value: unknown, source: string, at: SourcePosition): RawNode {
  if (value === null || value === undefined) return { kind: "nothing", at };
  if (typeof value === "string") return { kind: "text", at, text: value };
  if (typeof value === "number" && !Number.isFinite(value) && !/\d/.test(source)) return { kind: "number", at, value };
  if (typeof value === "number" || typeof value === "bigint") return { kind: "text", at, text: source, bare: "number" };
  return { kind: "other", at, words: `${String(value)} (yes or no)` };
}

function readEntries(map: YAMLMap, path: string, at: SourcePosition, walk: ParseContext): RawEntry[] {
  const first = new Map<string, SourcePosition>();
  return (map.items as Pair<Node, Node | null>[]).flatMap((pair) => {
    const entry = readEntry(pair, path, at, walk);
    if (!entry) return [];
    const before = first.get(entry.key);
    first.set(entry.key, before ?? entry.at);
    if (!before) return [entry];
    const words = `"${sanitizeForMessage(entry.key)}" was already given on line ${before.line}; keep one of the two`;
    walk.faults.add(entry.at, joinPath(path, entry.key), words);
    return [];
  });
}

function readEntry({ key, value }: Pair<Node, Node | null>, path: string, near: SourcePosition, walk: ParseContext) {
  const at = key?.range ? positionAt(walk.lines, key.range[0]) : near;
  const clever = key ? unsupportedFeature(key) : undefined;
  if (!isScalar(key) || clever !== undefined) {
    walk.faults.add(at, path, clever ? `${clever} are not read in a design` : "a key is one word; write `key: value`");
    return undefined;
  }
  const name = String(key.value ?? "");
  if (name === "<<") {
    walk.faults.add(at, path, "merge keys (<<) are not read in a design; write the keys out");
    return undefined;
  }
  const given: RawNode = value === null ? { kind: "nothing", at } : nodeOfYaml(value, joinPath(path, name), at, walk);
  return { key: name, at, value: given };
}

const joinPath = (path: string, key: string): string => (path === "" ? key : `${path}.${key}`);
