// A roster's rows → each plane's values, or the faults of its row: one bad row keeps no other from being made.
import { decodeList } from "../design/decode-list.ts";
import type { DesignDetail, Fault } from "../design/fault.ts";
import { decodeValue } from "../design/value.ts";
import { type BoardEntry, isRow, type Row, TABLE, type TableSection } from "../table/index.ts";
import type { Units } from "../units.ts";
import { FaultCollector } from "../yaml/fault.ts";
import type { RosterCell, RosterFile, RosterPlane, RosterRow } from "./roster.ts";

/** What the base decides for all planes of a class. */
const OF_THE_BASE = ["units", "stage"];

/** @param units the base design's, in which a bare length is read */
export function decodeRoster({ file, rows }: RosterFile, units: Units): RosterPlane[] {
  const seen = new Map<string, number>();
  return rows.map((row) => {
    const plane = decodeRow(row, file, units);
    const folded = plane.name.toLowerCase(); // a pack's folder: names that differ by capitals are one on some disks
    const firstLine = seen.get(folded);
    if (plane.name === "" || firstLine === undefined) {
      seen.set(folded, row.at.line);
      return plane;
    }
    const faults = new FaultCollector<DesignDetail>(file);
    faults.add(nameCell(row)!.at, "name", { code: "second-name", name: plane.name, firstLine });
    return { ...plane, faults: [...plane.faults, ...faults.sorted()] };
  });
}

/** Boards of the whole class; none where the roster names none. @param units the base design's */
export function decodeRosterBoards(
  { file, boards }: RosterFile,
  units: Units,
): { readonly boards: readonly BoardEntry[] } | { readonly faults: readonly Fault[] } {
  if (!boards) return { boards: [] };
  const faults = new FaultCollector<DesignDetail>(file);
  const decoded = decodeList("boards", boards, {
    units,
    defaults: units,
    givenPaths: new Set(),
    slips: [],
    oldWords: [],
    formerKeys: [],
    overShop: [],
    faults,
  });
  return faults.isEmpty ? { boards: decoded as unknown as readonly BoardEntry[] } : { faults: faults.sorted() };
}

const nameCell = (row: RosterRow): RosterCell | undefined => row.cells.find(({ path }) => path === "name");

function decodeRow(row: RosterRow, file: string, units: Units): RosterPlane {
  const faults = new FaultCollector<DesignDetail>(file);
  if (!nameCell(row)) faults.add(row.at, "name", { code: "no-name" });
  const first = new Map<string, number>();
  const values = row.cells.flatMap((cell) => {
    const firstLine = first.get(cell.path);
    if (firstLine !== undefined) faults.add(cell.at, cell.path, { code: "doubled-key", key: cell.path, firstLine });
    first.set(cell.path, cell.at.line);
    const value = decodeCell(cell, units, faults);
    return value === undefined ? [] : [{ path: cell.path, value }];
  });
  const name = values.find(({ path }) => path === "name");
  const others = values.filter(({ path }) => path !== "name");
  const written = nameCell(row)?.node;
  const isWrittenOtherwise = written?.kind === "text" && name !== undefined && written.text !== name.value;
  return {
    name: String(name?.value ?? ""),
    ...(isWrittenOtherwise ? { written: written.text } : {}),
    at: row.at,
    values: others,
    faults: faults.sorted(),
  };
}

function decodeCell({ path, at, node }: RosterCell, units: Units, faults: FaultCollector<DesignDetail>) {
  const row = rowOrFault(path, at, faults);
  if (!row || node.kind === "refused") return undefined;
  const named = path === "name" && node.kind === "text" ? { ...node, text: planeName(node.text) } : node;
  const read = decodeValue(named, row, units);
  if ("value" in read) return read.value;
  const asWritten = named === node ? read : decodeValue(node, row, units);
  faults.add(node.at, path, { ...("fault" in asWritten ? asWritten.fault : read.fault), units });
  return undefined;
}

/** A person's name as a file may have it: spaces as dashes, letters without their marks. */
const planeName = (text: string): string =>
  text
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .replaceAll("ß", "ss")
    .replace(/['’,]/g, "")
    .trim()
    .replace(/\s+/g, "-")
    .replace(/\.+$/, "");

/** The table's row at a path that a class may set; otherwise a fault. */
export function rowOrFault(path: string, at: RosterCell["at"], faults: FaultCollector<DesignDetail>): Row | undefined {
  let section: TableSection = TABLE;
  const keys = path.split(".");
  for (const [i, key] of keys.entries()) {
    const inner = Object.hasOwn(section, key) ? section[key]! : undefined;
    if (inner && isRow(inner) && i === keys.length - 1) {
      if (!OF_THE_BASE.includes(path)) return inner;
      faults.add(at, path, { code: "of-the-base", key: path });
      return undefined;
    }
    if (!inner || isRow(inner)) {
      faults.add(at, path, { code: "unknown-key", key, section: keys.slice(0, i).join("."), isAlone: false });
      return undefined;
    }
    section = inner;
  }
  faults.add(at, path, { code: "not-a-section" });
  return undefined;
}
