// A roster's text, YAML or CSV, → rows of cells by the parameters' paths, or the faults of its layout.
import { type DesignEntry, type DesignNode, designNode, reportSyntax } from "../design/design-nodes.ts";
import type { DesignDetail, DesignFaultCollector, Fault } from "../design/fault.ts";
import { isBareLength } from "../units.ts";
import { FaultCollector } from "../yaml/fault.ts";
import { parseYaml } from "../yaml/parse.ts";
import { readSource, START } from "../yaml/source.ts";
import { type CsvCell, csvCells } from "./csv-cells.ts";
import { type CsvColumn, columnOf, isTableFile } from "./csv-columns.ts";
import { rowOrFault } from "./decode-roster.ts";
import { MOST_PLANES, type RosterCell, type RosterFile, type RosterRow } from "./roster.ts";

export type RosterResult =
  | { readonly ok: true; readonly roster: RosterFile }
  | { readonly ok: false; readonly faults: readonly Fault[] };

const KEYS = ["base", "planes", "boards"];

/**
 * The roster in a file's text. CSV where the file's name ends so, else YAML.
 * @param file its name; nothing is opened
 */
export function parseRoster(source: string | Uint8Array, file: string): RosterResult {
  const faults = new FaultCollector<DesignDetail>(file);
  const roster = isTableFile(file) ? rosterOfCsv(source, file, faults) : rosterOfYaml(source, file, faults);
  if (roster && roster.rows.length === 0 && faults.isEmpty) faults.add(START, "", { code: "no-planes" });
  if (roster && roster.rows.length > MOST_PLANES)
    faults.add(START, "", { code: "too-many-planes", count: roster.rows.length, most: MOST_PLANES });
  return roster && faults.isEmpty ? { ok: true, roster } : { ok: false, faults: faults.sorted() };
}

function rosterOfYaml(source: string | Uint8Array, file: string, faults: DesignFaultCollector): RosterFile | undefined {
  const document = parseYaml(source, faults);
  if (!document || reportSyntax(document, faults)) return undefined;
  const root = document.root && designNode(document.root, "", faults);
  if (root?.kind !== "map") {
    if (root?.kind !== "refused") faults.add(root?.at ?? START, "", { code: "not-a-roster" });
    return undefined;
  }
  for (const { key, at } of root.entries)
    if (!KEYS.includes(key)) faults.add(at, key, { code: "unknown-roster-key", key, keys: KEYS });
  const valueAtKey = (key: string) => root.entries.find((entry) => entry.key === key)?.value;
  const planes = valueAtKey("planes");
  const base = valueAtKey("base");
  if (base && base.kind !== "text") faults.add(base.at, "base", { code: "base-not-a-file" });
  if (planes?.kind !== "list") {
    faults.add(planes?.at ?? root.at, "planes", { code: "no-planes" });
    return undefined;
  }
  const rows = planes.items.flatMap((item): RosterRow[] => {
    if (item.kind === "map") return [{ at: item.at, cells: cellsOf(item.entries, "") }];
    if (item.kind !== "refused") faults.add(item.at, "planes", { code: "row-not-a-map" });
    return [];
  });
  const boards = valueAtKey("boards");
  return { file, rows, ...(base?.kind === "text" ? { base: base.text } : {}), ...(boards ? { boards } : {}) };
}

/** Keys may be nested as in a design, or dotted. */
const cellsOf = (entries: readonly DesignEntry[], prefix: string): RosterCell[] =>
  entries.flatMap(({ key, at, value }) =>
    value.kind === "map" ? cellsOf(value.entries, `${prefix}${key}.`) : [{ path: prefix + key, at, node: value }],
  );

function rosterOfCsv(source: string | Uint8Array, file: string, faults: DesignFaultCollector): RosterFile | undefined {
  const read = readSource(source, faults);
  if (!read) return undefined;
  const { rows, separator, openQuote } = csvCells(read.text);
  if (openQuote) faults.add(openQuote, "", { code: "open-quote" });
  const [head = [], ...body] = rows;
  const columns = head.map(({ text }) => columnOf(text));
  columns.forEach(({ path }, i) => {
    const first = columns.findIndex((other) => other.path === path);
    if (first < i) faults.add(head[i]!.at, path, { code: "doubled-column", head: path });
  });
  columns.forEach(({ path }, i) => {
    if (path !== "") rowOrFault(path, head[i]!.at, faults);
  });
  if (!columns.some(({ path }) => path === "name")) faults.add(START, "", { code: "no-name-column" });
  for (const cells of body)
    if (cells.length > columns.length)
      faults.add(cells[columns.length]!.at, "", { code: "cells-beyond-head", heads: columns.length });
  const decimalComma = separator === ";";
  return { file, rows: body.map((cells) => csvRow(cells, columns, decimalComma)) };
}

/** An empty cell leaves what the base has. */
function csvRow(cells: readonly CsvCell[], columns: readonly CsvColumn[], decimalComma: boolean): RosterRow {
  const filled = cells.slice(0, columns.length).flatMap(({ text, at }, i): RosterCell[] => {
    const { path, unit } = columns[i]!;
    return text === "" ? [] : [{ path, at, node: cellNode(text, at, unit, decimalComma) }];
  });
  return { at: cells[0]!.at, cells: filled };
}

function cellNode(text: string, at: CsvCell["at"], unit: string | undefined, decimalComma: boolean): DesignNode {
  const plain = decimalComma ? text.replace(/^(-?\d+),(\d+)(?![\d,])/, "$1.$2") : text;
  return { kind: "text", at, text: unit !== undefined && isBareLength(plain) ? `${plain} ${unit}` : plain };
}
