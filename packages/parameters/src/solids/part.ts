// What a solid part is, as the exporters receive it.
import type { Geom3 } from "@jscad/modeling/src/geometries/types.js";
import type { Drawing } from "../drawings/drawing.ts";

export interface Part {
  /** Kebab-case name, which is also its file's: "front-block". */
  readonly name: string;
  /** As it lies on the machine's table: lowest corner at 0, 0, 0. */
  readonly lying: Geom3;
  /** As it stands in the plane, in the plane's frame. */
  readonly inPlace: Geom3;
  /** Volume from the outlines its mesh was made from, mm³; the mesh must have it too. */
  readonly volume: number;
  /** The part in 2D; a prism's outline lies under its solid. */
  readonly drawing: Drawing;
}
