// Reads a YAML tree by its nodes, so that every fault has its place. Nothing in here throws on what a maker typed.

import { parseLength, toMillimetres, type Units } from "@lamplane/parameters/units";
import {
  FaultCollector,
  parseYaml,
  type RawNode,
  type SourcePosition,
  type YamlDocument,
} from "@lamplane/parameters/yaml";
import type { Allowed, LengthLimits, ReadingDetail, ReadingFault } from "./reading-fault.ts";

/** A node that may be missing: where it is looked for, and what it is called. */
export interface NodeLocation {
  readonly node: RawNode | undefined;
  readonly path: string;
  /** The node's own place, or that of what should hold it. */
  readonly at: SourcePosition;
}

const AS_SHOWN = 0.02; // mm: limits are shown to 0.001 in, and a limit typed as shown must pass
const MOST_SYNTAX_FAULTS = 20; // one slip of a bracket makes hundreds
const START: SourcePosition = { line: 1, column: 1 };

/** A document being read: it gathers every fault, and hands out only what it has found sound. */
export class DocumentReader {
  readonly root: NodeLocation;
  readonly #faults: FaultCollector<ReadingDetail>;
  readonly #text: string;
  readonly #isYaml: boolean;

  /** @param file its name, for the faults only */
  constructor(source: string | Uint8Array, file: string) {
    this.#faults = new FaultCollector(file);
    const document = parseYaml(source, this.#faults);
    this.#text = document?.text ?? "";
    this.root = { node: document?.root, path: "", at: document?.root?.at ?? START };
    if (document) this.#addSyntaxFaults(document);
    this.#isYaml = this.#faults.isEmpty;
  }

  get isSound(): boolean {
    return this.#faults.isEmpty;
  }

  /** Those of the readings by their place; of a text that is no YAML, in the parser's order, where the first slip makes the rest. */
  faults(): ReadingFault[] {
    return this.#isYaml ? this.#faults.sorted() : this.#faults.asAdded();
  }

  /** Notes that what stands at the spot is not allowed. */
  addFault({ node, path, at }: NodeLocation, allowed: Allowed): undefined {
    const read = node && { read: this.#text.slice(node.start, node.end).trim() };
    this.#faults.add(at, path, { ...allowed, ...read });
  }

  /** The spots of a mapping by their keys, all of `keys` present whether typed or not. */
  readMap<K extends string>(spot: NodeLocation, keys: readonly K[]): Record<K, NodeLocation> | undefined {
    if (spot.node?.kind !== "map") return this.addFault(spot, { code: "keys", keys });
    const spots = Object.fromEntries(
      keys.map((key) => [key, { node: undefined, path: joinPath(spot.path, key), at: spot.at }]),
    ) as Record<K, NodeLocation>;
    const seen = new Set<K>();
    for (const { key, value } of spot.node.entries) {
      const name = keyName(key);
      const path = joinPath(spot.path, name);
      const known = keys.find((candidate) => candidate === name);
      if (known === undefined) this.addFault({ node: key, path, at: key.at }, { code: "keys", keys });
      else if (seen.has(known)) this.addFault({ node: key, path, at: key.at }, { code: "key-once" });
      else spots[known] = locateNode(value, path);
      if (known !== undefined) seen.add(known);
    }
    return spots;
  }

  /** The spots of a list that has at least `fewest` entries and at most `most`. */
  readList(spot: NodeLocation, fewest: number, most: number, words: string): NodeLocation[] | undefined {
    const allowed = { code: "list", fewest, most, words } as const;
    if (spot.node?.kind !== "list") return this.addFault(spot, allowed);
    const { items } = spot.node;
    if (items.length < fewest || items.length > most) return this.addFault(spot, { ...allowed, count: items.length });
    return items.map((item, i) => locateNode(item, joinPath(spot.path, String(i))));
  }

  /** A length in mm within its limits: a bare number in the file's unit, or text that carries its own. */
  readLength(spot: NodeLocation, units: Units, limits: LengthLimits): number | undefined {
    const allowed = { code: "length", units, ...limits } as const;
    const { node } = spot;
    const reading =
      node?.kind === "text"
        ? parseLength(node.text, units)
        : { value: node?.kind === "number" ? toMillimetres(node.value, units) : Number.NaN };
    if ("fault" in reading) return this.addFault(spot, { ...allowed, reason: reading.fault });
    const isWithin = reading.value >= limits.min && reading.value <= limits.max + AS_SHOWN;
    return isWithin ? reading.value : this.addFault(spot, allowed);
  }

  /** One of the words. */
  readWord<W extends string>(spot: NodeLocation, choices: readonly W[]): W | undefined {
    const word = spot.node?.kind === "text" ? spot.node.text : undefined;
    return choices.find((choice) => choice === word) ?? this.addFault(spot, { code: "word", choices });
  }

  #addSyntaxFaults({ text, problems }: YamlDocument): void {
    for (const { at, start, code } of problems.filter(({ isError }) => isError).slice(0, MOST_SYNTAX_FAULTS)) {
      const [read = ""] = text.slice(start).split("\n");
      this.#faults.add(at, "", { code: "yaml", problem: code, read });
    }
  }
}

/** A key without a value counts as not typed. An alias is left to be refused as it stands. */
const locateNode = (node: RawNode, path: string): NodeLocation => ({
  node: node.kind === "nothing" ? undefined : node,
  path,
  at: node.at,
});

/** A key as text; empty for one that is no single word. */
function keyName(key: RawNode): string {
  if (key.kind === "text") return key.text;
  if (key.kind === "number" || key.kind === "boolean") return String(key.value);
  return key.kind === "nothing" ? "null" : "";
}

const joinPath = (path: string, key: string) => (path === "" ? key : `${path}.${key}`);
