// A view on the sheet as plain data: lines and areas in mm, and the numbers that stand on it.

export interface SheetPoint {
  readonly x: number;
  readonly y: number;
}

/** Kind of line; weights and dashes are set in the style sheet. */
export type ViewLineKind = "outline" | "hidden" | "axis" | "cut" | "mark" | "thin";
/** What an area stands for. */
export type AreaKind =
  | "wood"
  | "wood-far"
  | "waste"
  | "steel"
  | "cap"
  | "wedge"
  | "pin"
  | "hollow"
  | "shaving"
  | "shade";
/** What is pointed at on the drawing, and whose numbers then come. */
export type DrawnPart = "iron" | "bed" | "mouth" | "body" | "ramp" | "pin";

/** What goes from step to step as one. */
export interface Piece {
  readonly name: string;
  /** How far it stands off its place in the plane, mm. */
  readonly off: SheetPoint;
  /** Where it comes from and goes to, mm from where it stands. */
  readonly from?: SheetPoint;
}

/** One stroke or area of a view: an SVG path in mm, y down. */
export interface ViewMark {
  readonly d: string;
  /** Corners of a closed outline, mm, y up: numbers keep off it. */
  readonly edge?: readonly SheetPoint[];
  readonly line?: ViewLineKind;
  readonly area?: AreaKind;
  /** Whether the area shows the grain of its wood. */
  readonly isGrained?: boolean;
  readonly part?: DrawnPart;
  readonly piece?: Piece;
  /** Outline beyond which nothing of the mark is seen. */
  readonly within?: string;
}

/** Where a dimension's number stands and what is drawn to it. Sides and tiers are counted outward from the view. */
export type DimensionShape =
  | {
      readonly kind: "along";
      readonly from: SheetPoint;
      readonly to: SheetPoint;
      readonly side: "below" | "above" | "left" | "right";
      readonly tier: number;
      /** Where the number stands along the line, 0 to 1; in the middle where absent. */
      readonly share?: number;
    }
  | {
      readonly kind: "angle";
      readonly at: SheetPoint;
      readonly fromAngle: number;
      readonly toAngle: number;
      readonly radius: number;
      /** Where the number stands along the arc, 0 to 1; in the middle where absent. */
      readonly share?: number;
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
  /** Part that brings this number when it is pointed at; absent on the details, whose numbers are always there. */
  readonly part?: DrawnPart;
  /** Whether the part can be taken hold of: then the number is always there. */
  readonly isHeld?: boolean;
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
