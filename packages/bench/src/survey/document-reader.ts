// Reads YAML by its nodes, so that every fault has its place. Nothing in here throws on what a maker typed.

import { formatLimit, parseLength, toMillimetres, type Units } from "@lamplane/parameters/units";
import { isAlias, isMap, isScalar, isSeq, LineCounter, type Node, parseDocument } from "yaml";

/** One thing that was not understood, with its place in the file, both counted from 1. */
export interface ReadingFault {
  readonly line: number;
  readonly column: number;
  /** Dotted path of the value, `straightedge.0.gaps.2.refuses`; empty for the file itself. */
  readonly path: string;
  /** What stands in the file. */
  readonly read: string;
  /** What may stand there, in words. */
  readonly allowed: string;
  /** All of it in one line. */
  readonly message: string;
}

/** A node that may be missing: where it is looked for, and what it is called. */
export interface NodeLocation {
  readonly node: Node | undefined;
  readonly path: string;
  /** Offset in the text to point at: the node's own, or that of what should hold it. */
  readonly offset: number;
}

/** Limits of a length, mm. */
export interface LengthLimits {
  readonly min: number;
  readonly max: number;
  /** What the length measures, between what and what. */
  readonly words: string;
}

const LONGEST_QUOTE = 40; // characters of the maker's text shown back in a message
const AS_SHOWN = 0.02; // mm: limits are shown to 0.001 in, and a limit typed as shown must pass
const MOST_SYNTAX_FAULTS = 20; // one slip of a bracket makes hundreds
const MOST_FAULTS = 100; // more than anyone reads at once

/** A document being read: it gathers every fault, and hands out only what it has found sound. */
export class DocumentReader {
  readonly faults: ReadingFault[] = [];
  /** Faults that were found beyond those that are told. */
  beyond = 0;
  readonly root: NodeLocation;
  readonly #lines = new LineCounter();
  readonly #text: string;

  constructor(text: string) {
    const document = parseDocument(text, { lineCounter: this.#lines, merge: false, uniqueKeys: false });
    this.#text = text;
    const node = document.contents ?? undefined;
    this.root = { node, path: "", offset: node?.range?.[0] ?? 0 };
    for (const error of document.errors.slice(0, MOST_SYNTAX_FAULTS)) {
      const sentence = error.message.split(/ at line \d|\n/)[0]!;
      this.#add(
        "",
        error.pos[0],
        quoteText(text.slice(error.pos[0]).split("\n")[0]!),
        `YAML without this fault: ${sentence}`,
      );
    }
  }

  /** Notes that what stands at the spot is not allowed. */
  addFault(spot: NodeLocation, allowed: string): undefined {
    const [start, end] = spot.node?.range ?? [0, 0];
    const read = spot.node === undefined ? "nothing" : quoteText(this.#text.slice(start, end).trim());
    this.#add(spot.path, spot.offset, read, allowed);
  }

  /** The spots of a mapping by their keys, all of `keys` present whether typed or not. */
  readMap<K extends string>(spot: NodeLocation, keys: readonly K[]): Record<K, NodeLocation> | undefined {
    if (!isMap(spot.node)) return this.addFault(spot, `the keys ${keys.join(", ")}`);
    const spots = Object.fromEntries(
      keys.map((key) => [key, { node: undefined, path: joinPath(spot.path, key), offset: spot.offset }]),
    ) as Record<K, NodeLocation>;
    const seen = new Set<K>(); // the parser's own way of finding doubled keys is slow on a long file
    for (const pair of spot.node.items) {
      const key = pair.key as Node;
      const name = isScalar(key) ? String(key.value) : "";
      const known = keys.find((candidate) => candidate === name);
      const offset = key.range?.[0] ?? spot.offset;
      if (known === undefined)
        this.addFault({ node: key, path: joinPath(spot.path, name), offset }, `the keys ${keys.join(", ")}`);
      else if (seen.has(known)) this.addFault({ node: key, path: joinPath(spot.path, name), offset }, "each key once");
      else spots[known] = locateNode(pair.value as Node | null, joinPath(spot.path, name), offset);
      if (known !== undefined) seen.add(known);
    }
    return spots;
  }

  /** The spots of a list that has at least `fewest` entries and at most `most`. */
  readList(spot: NodeLocation, fewest: number, most: number, words: string): NodeLocation[] | undefined {
    const allowed = `${fewest === most ? fewest : `${fewest} to ${most}`} ${words}, as a list`;
    if (!isSeq(spot.node)) return this.addFault(spot, allowed);
    const { items } = spot.node;
    if (items.length < fewest || items.length > most)
      return this.addFault(spot, `${allowed}; here are ${items.length}`);
    return items.map((item, i) => locateNode(item as Node | null, joinPath(spot.path, String(i)), spot.offset));
  }

  /** A length in mm within its limits: a bare number in the file's unit, or text that carries its own. */
  readLength(spot: NodeLocation, units: Units, { min, max, words }: LengthLimits): number | undefined {
    const allowed = `${words}, from ${formatLimit(min, units)} to ${formatLimit(max, units)}`;
    const value = isScalar(spot.node) ? spot.node.value : undefined;
    const reading = typeof value === "string" ? parseLength(value, units) : { value: lengthInMm(value, units) };
    if ("fault" in reading) return this.addFault(spot, `${allowed} (${reading.fault})`);
    return reading.value >= min && reading.value <= max + AS_SHOWN ? reading.value : this.addFault(spot, allowed);
  }

  /** One of the words. */
  readWord<W extends string>(spot: NodeLocation, words: readonly W[]): W | undefined {
    const value = isScalar(spot.node) ? spot.node.value : undefined;
    return words.find((readWord) => readWord === value) ?? this.addFault(spot, words.join(" or "));
  }

  /** Line and column of a spot, from 1. */
  positionOf(spot: NodeLocation): { line: number; column: number } {
    const { line, col } = this.#lines.linePos(spot.offset);
    return { line: Math.max(line, 1), column: Math.max(col, 1) };
  }

  #add(path: string, offset: number, read: string, allowed: string): void {
    if (this.faults.length >= MOST_FAULTS) {
      this.beyond += 1;
      return;
    }
    const { line, column } = this.positionOf({ node: undefined, path, offset });
    const where = path === "" ? "" : `${path}: `;
    this.faults.push({
      line,
      column,
      path,
      read,
      allowed,
      message: `${line}:${column}: ${where}read ${read}; allowed: ${allowed}`,
    });
  }
}

/** A key without a value counts as not typed; its place is the key's. An alias is left to be refused as it stands. */
function locateNode(node: Node | null, path: string, fallback: number): NodeLocation {
  const empty = node === null || (isScalar(node) && node.value === null);
  if (empty && !isAlias(node)) return { node: undefined, path, offset: node?.range?.[0] ?? fallback };
  return { node, path, offset: node.range?.[0] ?? fallback };
}

const lengthInMm = (value: unknown, units: Units) =>
  typeof value === "number" ? toMillimetres(value, units) : Number.NaN;

const joinPath = (path: string, key: string) => (path === "" ? key : `${path}.${key}`);

function quoteText(text: string): string {
  const line = text.replace(/\s+/g, " ");
  return `"${line.length > LONGEST_QUOTE ? `${line.slice(0, LONGEST_QUOTE)}…` : line}"`;
}
