// What page and file-making worker say to each other.

export interface PackRequest {
  /** The design file, with every change written into it. */
  readonly text: string;
  /** A file of the pack; "" for the whole pack as a zip; undefined for the list of its files. */
  readonly path?: string;
  readonly folder: string;
}

export type PackResponse =
  | { readonly kind: "progress"; readonly words: string }
  | { readonly kind: "list"; readonly paths: readonly string[] }
  | { readonly kind: "file"; readonly path: string; readonly bytes: Uint8Array<ArrayBuffer> }
  | { readonly kind: "failed"; readonly words: string };
