// What keeps a router from cutting something, as data; the sentences are in words/.

/** `reach` of the cutters, `inner-radius` and room in an opening, `tab-run` of straight side for a bridge, `travel` of the machine. */
export type LimitCode = "reach" | "no-end-mill" | "opening" | "tab-run" | "travel-x" | "travel-y" | "travel-z";

/** A set-up that cannot be cut: the value and what it must be at least, or for travel at most. mm */
export interface RouterLimit {
  readonly setUp: string;
  readonly title: string;
  readonly code: LimitCode;
  readonly value: number;
  readonly limit: number;
}

/** Wood that a round cutter leaves in a corner: where, how far its arc stays off the corner, how far along the sides. mm */
export interface CornerLeft {
  readonly at: { readonly x: number; readonly y: number };
  readonly gap: number;
  readonly along: number;
}
