// What can be wrong with a design, as data; the sentences are in words/.
import type { Units } from "../units.ts";
import type { SyntaxCode } from "../words/text-faults.ts";
import type { FaultCollector as FaultCollectorOf, LocatedFault as FaultOf, SourceDetail } from "../yaml/fault.ts";
import type { YamlFeature } from "../yaml/raw-node.ts";

/** A single value against its row. */
export type ValueDetail =
  | { readonly code: "no-value" }
  /** Something else than a value: `what` says it in words. */
  | { readonly code: "not-a-value"; readonly what: string }
  /** A bare number for a text or a word. */
  | { readonly code: "number-for-text"; readonly read: string }
  | { readonly code: "nothing-solves" }
  | { readonly code: "not-a-number"; readonly read: string; readonly reason: string }
  | { readonly code: "not-finite"; readonly read: string }
  /** `value` in mm, degrees or the row's own unit. */
  | { readonly code: "out-of-limits"; readonly read: string; readonly value: number }
  | { readonly code: "not-whole"; readonly read: string }
  | { readonly code: "too-many-lengths"; readonly count: number }
  | { readonly code: "hidden-in-text" }
  | { readonly code: "empty-text" }
  | { readonly code: "text-too-long"; readonly length: number }
  | { readonly code: "text-not-of-pattern"; readonly read: string }
  | { readonly code: "unknown-choice"; readonly read: string };

/** `units` is the unit of a bare length in the file, in which limits are written. */
export type DesignDetail =
  | (ValueDetail & { readonly units: Units })
  | { readonly code: "missing"; readonly units: Units }
  | { readonly code: "not-yaml"; readonly problem: SyntaxCode }
  | { readonly code: "second-document" }
  | { readonly code: "yaml-directive" }
  | { readonly code: "yaml-feature"; readonly feature: YamlFeature; readonly of: "key" | "value" }
  | { readonly code: "merge-key" }
  | { readonly code: "key-not-a-word" }
  | { readonly code: "doubled-key"; readonly key: string; readonly firstLine: number }
  | { readonly code: "empty-design" }
  | { readonly code: "not-a-design" }
  | { readonly code: "not-an-object" }
  /** `section` is its path; `isAlone` where no value stands behind the key. */
  | { readonly code: "unknown-key"; readonly key: string; readonly section: string; readonly isAlone: boolean }
  | { readonly code: "not-a-section" }
  | { readonly code: "not-a-list" }
  | { readonly code: "not-an-item" }
  | { readonly code: "doubled-name"; readonly name: string; readonly firstLine: number }
  | { readonly code: "no-file-name" }
  /** `problem` says in a few words why the shop file cannot be had. */
  | { readonly code: "shop-not-read"; readonly name: string; readonly problem: string }
  | { readonly code: "empty-shop" }
  | { readonly code: "not-a-shop" }
  /** A key of a design that a shop file does not take. */
  | { readonly code: "not-of-a-shop"; readonly key: string }
  | RosterDetail;

/** The layout of a roster, and what a row needs beside values. */
export type RosterDetail =
  | { readonly code: "not-a-roster" }
  | { readonly code: "no-planes" }
  | { readonly code: "too-many-planes"; readonly count: number; readonly most: number }
  | { readonly code: "unknown-roster-key"; readonly key: string; readonly keys: readonly string[] }
  | { readonly code: "base-not-a-file" }
  | { readonly code: "row-not-a-map" }
  | { readonly code: "open-quote" }
  | { readonly code: "doubled-column"; readonly head: string }
  | { readonly code: "no-name-column" }
  | { readonly code: "cells-beyond-head"; readonly heads: number }
  | { readonly code: "no-name" }
  | { readonly code: "second-name"; readonly name: string; readonly firstLine: number }
  | { readonly code: "of-the-base"; readonly key: string };

/** Something in a design that was not understood, with its place. */
export type Fault = FaultOf<DesignDetail | SourceDetail>;
export type DesignFaultCollector = FaultCollectorOf<DesignDetail>;
