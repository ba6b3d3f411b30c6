// What page and worker say to each other: plain data only; meshes travel as transferred arrays.
import type { FormattedFinding } from "@lamplane/bench/checks";
import type { Fault } from "@lamplane/parameters/design";
import type { Design } from "@lamplane/parameters/table";
import type { Picture } from "@lamplane/sheets";

/** State of the work that the sheet shows, in the order of the bench. */
export const STAGES = ["billet", "core", "bed", "glued", "trued", "shaped"] as const;
export type StageName = (typeof STAGES)[number];

export type ChangeValue = number | string;
/** A parameter's path and its new value; undefined takes a measured value back. */
export type ParameterChange = readonly [path: string, value: ChangeValue | undefined];

export interface SheetPoint {
  readonly x: number;
  readonly y: number;
}

/** Kind of line; weights and dashes are set in the style sheet. */
export type ViewLineKind = "outline" | "hidden" | "axis" | "cut" | "mark" | "thin";
/** What an area stands for. */
export type AreaKind = "wood" | "wood-far" | "waste" | "steel" | "cap" | "wedge" | "pin" | "hollow";

/** One stroke or area of a view: an SVG path in mm, y down. */
export interface ViewMark {
  readonly d: string;
  readonly line?: ViewLineKind;
  readonly area?: AreaKind;
}

/** Where a dimension's number stands and what is drawn to it. Sides and tiers are counted outward from the view. */
export type DimensionShape =
  | {
      readonly kind: "along";
      readonly from: SheetPoint;
      readonly to: SheetPoint;
      readonly side: "below" | "above" | "left" | "right";
      readonly tier: number;
    }
  | {
      readonly kind: "angle";
      readonly at: SheetPoint;
      readonly fromAngle: number;
      readonly toAngle: number;
      readonly radius: number;
    }
  | { readonly kind: "leader"; readonly at: SheetPoint; readonly shift: SheetPoint };

/** A number on a view: a parameter that can be changed, or a figure that follows. */
export interface Dimension {
  readonly id: string;
  readonly parameter?: string;
  /** Figure that tells what `auto` came out as, or the derived number itself. */
  readonly figure?: string;
  readonly value: number;
  readonly unit: "mm" | "°";
  /** Ø, R, 2 × … before the number. */
  readonly before?: string;
  readonly shape: DimensionShape;
  /** 1 always shown, 2 where there is room, 3 on a wide sheet only. */
  readonly rank: 1 | 2 | 3;
}

export interface View {
  readonly name: "elevation" | "mouth" | "stack" | "end";
  readonly title: string;
  readonly box: { readonly min: SheetPoint; readonly max: SheetPoint };
  readonly marks: readonly ViewMark[];
  readonly dimensions: readonly Dimension[];
  /** Names written on the parts. */
  readonly labels: readonly { readonly text: string; readonly at: SheetPoint }[];
}

/** Everything the sheet draws, for one design at one stage; what it tells in words follows in `SheetWords`. */
export interface SheetPlane {
  readonly design: Design;
  readonly views: readonly View[];
  readonly figures: Readonly<Record<string, number>>;
  /** Named points of the elevation, mm: notes and measuring use them. */
  readonly points: Readonly<Record<string, SheetPoint>>;
  /** Parameters that a step already done has settled: shown, no longer to be changed. */
  readonly locked: readonly string[];
  /** What each `auto` parameter has come out as. */
  readonly solved: Readonly<Record<string, number>>;
}

/** What stands beside the drawing: notes and bench steps. They come after it, so that the drawing waits for no check. */
export interface SheetWords {
  readonly findings: readonly FormattedFinding[];
  readonly passed: readonly PassedNote[];
  /** The steps of the stage that is shown. */
  readonly bench: readonly BenchStep[];
  /** What came out otherwise than asked for, in words. */
  readonly lost: readonly string[];
}

export interface PassedNote {
  readonly code: string;
  readonly message: string;
  readonly place: string;
}

/** One step at the bench: its task, its numbers, what is measured when it is done. */
export interface BenchStep {
  readonly title: string;
  readonly task: string;
  readonly isDone: boolean;
  readonly figures: readonly { readonly key: string; readonly value: number }[];
  readonly measures: readonly {
    /** `measured.…`, a row of the table. */
    readonly path: string;
    readonly expected: number | undefined;
    readonly value: number | undefined;
    readonly unit: "mm" | "°";
    /** What it should come to, in words. */
    readonly wanted: string;
    /** Why the value is taken for a slip; it counts all the same. */
    readonly doubt?: string;
  }[];
}

export interface FigureWords {
  readonly unit: string;
  readonly formula: string;
  readonly help: string;
  readonly source: string;
}

export type PlotName = "mouth" | "throat" | "seasons" | "shares";
export type Plots = Readonly<Partial<Record<PlotName, Picture | undefined>>>;

/** One part's mesh: corners three to a triangle, edges two corners each, section lines at the centre plane. */
export interface PartMesh {
  readonly name: string;
  readonly corners: Float32Array;
  readonly edges: Float32Array;
  readonly section: Float32Array;
  /** Grain direction, and the middle of the part for its label. */
  readonly grain: readonly [number, number, number];
  readonly middle: readonly [number, number, number];
}

/** What the drawing in 3D must know besides its parts. Angles in degrees, mm. */
export interface BodyInfo {
  readonly rings: number;
  readonly bedAngle: number;
  readonly bodyWidth: number;
}

export type WorkerRequest =
  | { readonly kind: "open"; readonly base: number; readonly text: string; readonly file: string }
  | DesignRequest<"plane">
  | DesignRequest<"solid">
  | DesignRequest<"cures">
  | (DesignRequest<"plots"> & { /** Of each picture, mm. */ readonly width: number })
  | DesignRequest<"written">;

export interface DesignRequest<K extends string> {
  readonly kind: K;
  readonly requestId: number;
  readonly base: number;
  readonly changes: readonly ParameterChange[];
  readonly stage: StageName;
}

export type WorkerResponse =
  | { readonly kind: "ready"; readonly figures: Readonly<Record<string, FigureWords>> }
  | { readonly kind: "opened"; readonly base: number; readonly name: string; readonly givenPaths: readonly string[] }
  | { readonly kind: "refused"; readonly requestId: number; readonly base: number; readonly faults: readonly Fault[] }
  /** Asked about a design that is not open (any more). */
  | { readonly kind: "skipped"; readonly requestId: number }
  /** Followed by the words of the same turn, which end it. */
  | { readonly kind: "plane"; readonly requestId: number; readonly plane: SheetPlane }
  | { readonly kind: "words"; readonly requestId: number; readonly words: SheetWords }
  | {
      readonly kind: "solid";
      readonly requestId: number;
      readonly parts: readonly PartMesh[];
      readonly about: BodyInfo;
    }
  | { readonly kind: "no-solid"; readonly requestId: number; readonly why: string }
  | { readonly kind: "cures"; readonly requestId: number; readonly findings: readonly FormattedFinding[] }
  | { readonly kind: "plots"; readonly requestId: number; readonly plots: Plots }
  | { readonly kind: "written"; readonly requestId: number; readonly text: string }
  | { readonly kind: "bug"; readonly requestId: number; readonly message: string };
