// What the mouth does as wood comes off the sole, enlarged and in true proportion.
import type { LengthStyle } from "@lamplane/parameters/units";
import type { SheetPoint, View, ViewMark } from "./view.ts";

export interface MouthFilm {
  readonly box: View["box"];
  /** Front block and bed block as glued up: the sole cuts off what lies under it. */
  readonly wood: readonly ViewMark[];
  /** Iron and cap iron, set for a sole at y = 0. */
  readonly steel: readonly ViewMark[];
  /** How far the iron goes down the bed for each mm taken off the sole: always 1 upward. */
  readonly along: SheetPoint;
  /** Up the iron's face from the edge, and the cap iron's front where there is one: the way that a shaving goes. */
  readonly shaving: readonly SheetPoint[];
  /** Height of the sole as glued, and at the last truing, mm. */
  readonly soles: { readonly first: number; readonly last: number };
  /** Mouth opening by the height of the sole, mm, in even steps from the first to the last; negative while shut. */
  readonly openings: readonly { readonly sole: number; readonly opening: number }[];
  readonly style: LengthStyle;
}
