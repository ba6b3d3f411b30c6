// What is drawn for eyes: sheets, steps and plots as lines, areas and words. Every page format draws the same picture.
import type { Point, Segment } from "@lamplane/geometry";

/**
 * Kind of line; weight and dashes are set once, for every format, where they are drawn. Told apart without colour.
 * `outline` what is seen, `hidden` what lies behind, `axis` centre lines, `cut` where a saw or a blade goes, `mark` what is
 * pencilled on wood, `thin` dimensions and leaders, `grid` a plot's grid, `strong` a plot's own line.
 */
export type LineKind = "outline" | "hidden" | "axis" | "cut" | "mark" | "thin" | "grid" | "strong";

/** Grey of a filled area: 0 white, 1 black. */
export type Shade = number;

export type PictureMark =
  | {
      readonly kind: "line";
      readonly line: LineKind;
      readonly segments: readonly Segment[];
      /** Whether the last point is joined to the first. */
      readonly closed?: boolean;
    }
  | { readonly kind: "area"; readonly shade: Shade; readonly boundaries: readonly (readonly Segment[])[] }
  | TextMark;

export interface TextMark {
  readonly kind: "text";
  readonly text: string;
  /** On the baseline. */
  readonly at: Point;
  /** Height of the letters' em, mm. */
  readonly size: number;
  readonly anchor?: "start" | "middle" | "end";
  /** Degrees, counter-clockwise, about `at`. */
  readonly turn?: number;
  readonly bold?: boolean;
  /** Grey of the letters, 1 (black) unless given. */
  readonly shade?: Shade;
}

/** A picture in millimetres, x to the right and y up, its lower left corner at the origin; later marks lie over earlier ones. */
export interface Picture {
  /** Kebab-case, which is also its file's name. */
  readonly name: string;
  /** Description for a reader who cannot see it. */
  readonly title: string;
  /** The same at length, where the title says too little. */
  readonly description?: string;
  readonly width: number;
  readonly height: number;
  readonly marks: readonly PictureMark[];
  /** Of a plot: where its axes lie. */
  readonly axes?: { readonly x: AxisPlace; readonly y: AxisPlace };
  /** Of a plot: its lines, to be read off at any place. */
  readonly lines?: readonly PlotLine[];
}

/** A line of a plot in the axes' units, left to right: mm for a length. */
export interface PlotLine {
  readonly name: string;
  readonly points: readonly Point[];
}

/** An axis: what it measures, its first and last value, and where they stand in the picture, mm. */
export interface AxisPlace {
  readonly label: string;
  /** As written: a length's values are mm whatever it says. */
  readonly unit: string;
  readonly from: number;
  readonly to: number;
  readonly low: number;
  readonly high: number;
}
