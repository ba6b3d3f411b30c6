// What page and path worker say to each other.
import type { RouterPaths } from "./router-paths.ts";

export interface RouterRequest {
  /** The design file, with every change and the shop's values written into it. */
  readonly text: string;
  /** A shop file that stands in for the design's own. */
  readonly shop?: string;
}

export type RouterResponse =
  | { readonly kind: "paths"; readonly paths: RouterPaths }
  /** The design names no router. */
  | { readonly kind: "none" }
  | { readonly kind: "failed"; readonly words: string };
