// A YAML text as a plain tree with places; what may stand where is for each decoder to say.
import type { SourcePosition } from "./fault.ts";

/** What makes YAML more than maps, lists and values. */
export type YamlFeature = "alias" | "anchor" | "tag";

interface Located {
  readonly at: SourcePosition;
  /** Offsets in the text: the first character and the one behind the last. */
  readonly start: number;
  readonly end: number;
  readonly feature?: YamlFeature;
}

export interface RawEntry {
  readonly key: RawNode;
  readonly value: RawNode;
}

export type RawNode =
  | (Located & { readonly kind: "map"; readonly entries: readonly RawEntry[] })
  | (Located & { readonly kind: "list"; readonly items: readonly RawNode[] })
  | (Located & { readonly kind: "text"; readonly text: string })
  /** `text` is the number as it stands in the file. */
  | (Located & { readonly kind: "number"; readonly value: number; readonly text: string })
  | (Located & { readonly kind: "boolean"; readonly value: boolean })
  | (Located & { readonly kind: "nothing" })
  /** Stands for another node, which is not looked up. */
  | (Located & { readonly kind: "alias" });
