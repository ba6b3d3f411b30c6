// YAML text → a tree of plain nodes. Aliases are not followed, so that no text can make the tree larger than itself.
import {
  type Document,
  isAlias,
  isMap,
  isSeq,
  type LineCounter,
  type Node,
  type Pair,
  parseDocument,
  type Scalar,
} from "yaml";
import type { FaultCollector, FaultDetail, SourcePosition } from "./fault.ts";
import { DEEPEST, tooDeepAt } from "./nesting.ts";
import { PARSE_OPTIONS } from "./parse-options.ts";
import type { RawEntry, RawNode, YamlFeature } from "./raw-node.ts";
import { positionAt, readSource } from "./source.ts";
import { type SyntaxCode, syntaxCode } from "./syntax-code.ts";

/** What the parser stumbled over. */
export interface SyntaxProblem {
  readonly at: SourcePosition;
  readonly start: number;
  /** TAG_RESOLVE_FAILED for a tag that it does not know; its node is marked too. */
  readonly code: SyntaxCode;
  /** Else the tree is whole all the same. */
  readonly isError: boolean;
}

export interface YamlDocument {
  readonly text: string;
  /** Absent for a text without any value. */
  readonly root: RawNode | undefined;
  readonly problems: readonly SyntaxProblem[];
  readonly hasDirective: boolean;
}

/** Any text as YAML; undefined, with the faults added, where it is no text that may be parsed. */
export function parseYaml<D extends FaultDetail>(
  source: string | Uint8Array,
  faults: FaultCollector<D>,
): YamlDocument | undefined {
  const read = readSource(source, faults);
  if (!read) return undefined;
  const { text, lines } = read;
  const deep = tooDeepAt(text);
  if (deep !== undefined) {
    faults.add(positionAt(lines, deep), "", { code: "nested-too-deep", deepest: DEEPEST });
    return undefined;
  }
  const document = parseDocument(text, PARSE_OPTIONS);
  const contents = document.contents as Node | null;
  return {
    text,
    root: contents === null ? undefined : nodeOfYaml(contents, lines),
    problems: problemsOf(document, lines),
    hasDirective: document.directives?.yaml.explicit === true,
  };
}

const problemsOf = ({ errors, warnings }: Document, lines: LineCounter): SyntaxProblem[] =>
  [...errors, ...warnings].map(({ name, code, message, pos }) => ({
    at: positionAt(lines, pos[0]),
    start: pos[0],
    code: syntaxCode(code, message),
    isError: name === "YAMLParseError",
  }));

function nodeOfYaml(node: Node, lines: LineCounter): RawNode {
  const [start, end] = node.range!;
  const feature = featureOf(node);
  const located = { at: positionAt(lines, start), start, end, ...(feature && { feature }) };
  if (isAlias(node)) return { kind: "alias", ...located };
  if (isMap(node)) {
    const pairs = node.items as Pair<Node, Node | null>[];
    return { kind: "map", ...located, entries: pairs.map((pair) => entryOfPair(pair, lines)) };
  }
  if (isSeq(node))
    return { kind: "list", ...located, items: (node.items as Node[]).map((item) => nodeOfYaml(item, lines)) };
  const { value, source } = node as Scalar;
  if (value === null || value === undefined) return { kind: "nothing", ...located };
  if (typeof value === "number") return { kind: "number", ...located, value, text: source ?? String(value) };
  if (typeof value === "boolean") return { kind: "boolean", ...located, value };
  return { kind: "text", ...located, text: String(value) };
}

/** A key without a value has nothing where the key stands. */
function entryOfPair({ key, value }: Pair<Node, Node | null>, lines: LineCounter): RawEntry {
  const keyNode = nodeOfYaml(key, lines);
  const { at, start } = keyNode;
  return {
    key: keyNode,
    value: value === null ? { kind: "nothing", at, start, end: start } : nodeOfYaml(value, lines),
  };
}

function featureOf(node: Node): YamlFeature | undefined {
  if (isAlias(node)) return "alias";
  if ("anchor" in node && node.anchor) return "anchor";
  return node.tag === undefined ? undefined : "tag";
}
