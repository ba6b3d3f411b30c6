// What a flat drawing holds: exact outlines and marks, each with the kind of work it stands for.
import type { Circle, Outline, Point, Segment } from "@lamplane/geometry";

/** Kind of work an entry asks for; every file format keeps them apart. ENGRAVE: letters as single lines. */
export type WorkKind = "CUT" | "DRILL" | "ROUT" | "MARK" | "ENGRAVE" | "NOTE";

/** `depth`: how far the work goes into the face, mm; absent where it goes through, or is a mark. */
export type DrawingEntry =
  | { readonly kind: "outline"; readonly work: WorkKind; readonly outline: Outline; readonly depth?: number }
  | { readonly kind: "circle"; readonly work: WorkKind; readonly circle: Circle; readonly depth?: number }
  | {
      readonly kind: "path";
      readonly work: WorkKind;
      readonly segments: readonly Segment[];
      readonly depth?: number;
    }
  | {
      readonly kind: "note";
      readonly work: "NOTE";
      readonly at: Point;
      readonly text: string;
      readonly height: number;
    };

/** A flat drawing in millimetres, the lower left corner of its work at the origin. */
export interface Drawing {
  readonly title: string;
  /** Of the stock that is cut through, mm. */
  readonly thickness?: number;
  readonly entries: readonly DrawingEntry[];
}
