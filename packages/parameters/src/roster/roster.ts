// A roster: many planes that differ from one base design by a row each.
import type { DesignNode } from "../design/design-nodes.ts";
import type { Fault } from "../design/fault.ts";
import type { ParameterValue } from "../design/value.ts";
import type { SourcePosition } from "../yaml/fault.ts";

/** Most planes of a roster: more than any school has benches. */
export const MOST_PLANES = 500;

/** A cell or key of a row as it stands in the file. */
export interface RosterCell {
  /** Dotted path of the parameter. */
  readonly path: string;
  readonly at: SourcePosition;
  readonly node: DesignNode;
}

/** A row as it stands in the file. */
export interface RosterRow {
  readonly at: SourcePosition;
  readonly cells: readonly RosterCell[];
}

/** A roster file whose layout is sound; what its rows hold is still to be decoded. */
export interface RosterFile {
  readonly file: string;
  /** The base design's file, as the roster names it. */
  readonly base?: string;
  readonly rows: readonly RosterRow[];
  /** Boards that the whole class is cut from, as they stand in the file. */
  readonly boards?: DesignNode;
}

/** Values of one plane against the base, or every fault of its row. */
export interface RosterPlane {
  /** As its files have it; empty where the row has none that may be read. */
  readonly name: string;
  /** The name as the row has it, where that is another. */
  readonly written?: string;
  readonly at: SourcePosition;
  readonly values: readonly { readonly path: string; readonly value: ParameterValue }[];
  readonly faults: readonly Fault[];
}
