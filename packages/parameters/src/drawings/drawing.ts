// What a flat drawing holds: exact outlines and marks, each with the kind of work it stands for.
import type { Circle, Outline, Point, Segment } from "@lamplane/geometry";

/** Kind of work an entry asks for; every file format keeps them apart. ROUT carries its depth in a NOTE beside it. */
export type WorkKind = "CUT" | "DRILL" | "ROUT" | "MARK" | "NOTE";

export type DrawingEntry =
  | { readonly kind: "outline"; readonly work: WorkKind; readonly outline: Outline }
  | { readonly kind: "circle"; readonly work: WorkKind; readonly circle: Circle }
  | { readonly kind: "path"; readonly work: WorkKind; readonly segments: readonly Segment[] }
  | {
      readonly kind: "note";
      readonly work: "NOTE";
      readonly at: Point;
      readonly text: string;
      readonly height: number;
    };

/** A flat drawing in millimetres, its lower left corner at or right and above of the origin. */
export interface Drawing {
  readonly title: string;
  readonly entries: readonly DrawingEntry[];
}
