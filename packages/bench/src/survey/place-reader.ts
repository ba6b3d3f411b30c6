// Reads YAML by its nodes, so that every fault has its place. Nothing in here throws on what a maker typed.

import { inMillimetres, limitText, readLength, type Units } from "@lamplane/parameters/units";
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
export interface Spot {
  readonly node: Node | undefined;
  readonly path: string;
  /** Offset in the text to point at: the node's own, or that of what should hold it. */
  readonly offset: number;
}

/** Limits of a length, mm. */
export interface Limits {
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
export class PlaceReader {
  readonly faults: ReadingFault[] = [];
  /** Faults that were found beyond those that are told. */
  beyond = 0;
  readonly root: Spot;
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
        quoted(text.slice(error.pos[0]).split("\n")[0]!),
        `YAML without this fault: ${sentence}`,
      );
    }
  }

  /** Notes that what stands at the spot is not allowed. */
  refuse(spot: Spot, allowed: string): undefined {
    const [start, end] = spot.node?.range ?? [0, 0];
    const read = spot.node === undefined ? "nothing" : quoted(this.#text.slice(start, end).trim());
    this.#add(spot.path, spot.offset, read, allowed);
  }

  /** The spots of a mapping by their keys, all of `keys` present whether typed or not. */
  keyed<K extends string>(spot: Spot, keys: readonly K[]): Record<K, Spot> | undefined {
    if (!isMap(spot.node)) return this.refuse(spot, `the keys ${keys.join(", ")}`);
    const spots = Object.fromEntries(
      keys.map((key) => [key, { node: undefined, path: joined(spot.path, key), offset: spot.offset }]),
    ) as Record<K, Spot>;
    const seen = new Set<K>(); // the parser's own way of finding doubled keys is slow on a long file
    for (const pair of spot.node.items) {
      const key = pair.key as Node;
      const name = isScalar(key) ? String(key.value) : "";
      const known = keys.find((candidate) => candidate === name);
      const offset = key.range?.[0] ?? spot.offset;
      if (known === undefined)
        this.refuse({ node: key, path: joined(spot.path, name), offset }, `the keys ${keys.join(", ")}`);
      else if (seen.has(known)) this.refuse({ node: key, path: joined(spot.path, name), offset }, "each key once");
      else spots[known] = spotOf(pair.value as Node | null, joined(spot.path, name), offset);
      if (known !== undefined) seen.add(known);
    }
    return spots;
  }

  /** The spots of a list that has at least `fewest` entries and at most `most`. */
  listed(spot: Spot, fewest: number, most: number, words: string): Spot[] | undefined {
    const allowed = `${fewest === most ? fewest : `${fewest} to ${most}`} ${words}, as a list`;
    if (!isSeq(spot.node)) return this.refuse(spot, allowed);
    const { items } = spot.node;
    if (items.length < fewest || items.length > most) return this.refuse(spot, `${allowed}; here are ${items.length}`);
    return items.map((item, i) => spotOf(item as Node | null, joined(spot.path, String(i)), spot.offset));
  }

  /** A length in mm within its limits: a bare number in the file's unit, or text that carries its own. */
  length(spot: Spot, units: Units, { min, max, words }: Limits): number | undefined {
    const allowed = `${words}, from ${limitText(min, units)} to ${limitText(max, units)}`;
    const value = isScalar(spot.node) ? spot.node.value : undefined;
    const reading = typeof value === "string" ? readLength(value, units) : { value: inMm(value, units) };
    if ("fault" in reading) return this.refuse(spot, `${allowed} (${reading.fault})`);
    return reading.value >= min && reading.value <= max + AS_SHOWN ? reading.value : this.refuse(spot, allowed);
  }

  /** One of the words. */
  word<W extends string>(spot: Spot, words: readonly W[]): W | undefined {
    const value = isScalar(spot.node) ? spot.node.value : undefined;
    return words.find((word) => word === value) ?? this.refuse(spot, words.join(" or "));
  }

  /** Line and column of a spot, from 1. */
  placeOf(spot: Spot): { line: number; column: number } {
    const { line, col } = this.#lines.linePos(spot.offset);
    return { line: Math.max(line, 1), column: Math.max(col, 1) };
  }

  #add(path: string, offset: number, read: string, allowed: string): void {
    if (this.faults.length >= MOST_FAULTS) {
      this.beyond += 1;
      return;
    }
    const { line, column } = this.placeOf({ node: undefined, path, offset });
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
function spotOf(node: Node | null, path: string, fallback: number): Spot {
  const empty = node === null || (isScalar(node) && node.value === null);
  if (empty && !isAlias(node)) return { node: undefined, path, offset: node?.range?.[0] ?? fallback };
  return { node, path, offset: node.range?.[0] ?? fallback };
}

const inMm = (value: unknown, units: Units) => (typeof value === "number" ? inMillimetres(value, units) : Number.NaN);

const joined = (path: string, key: string) => (path === "" ? key : `${path}.${key}`);

function quoted(text: string): string {
  const line = text.replace(/\s+/g, " ");
  return `"${line.length > LONGEST_QUOTE ? `${line.slice(0, LONGEST_QUOTE)}…` : line}"`;
}
