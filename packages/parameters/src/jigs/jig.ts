// What a jig is before it is a solid: flat bodies drawn as they lie on the printer's table, and how each stands at the plane.

import type { Outline, Point } from "@lamplane/geometry";
import type { Drawing } from "../drawings/drawing.ts";
import type { PlateChoice, PlateRange } from "./plate.ts";

/** Least wall of any jig, mm: three lines of a 0.4 mm nozzle. */
export const LEAST_WALL = 1.2;
/** Chamfer on every edge at the printer's table, mm: the first layers spread, and a spread edge would hold a jig off its wood. */
export const TABLE_CHAMFER = 0.5;
/** Least distance between a hole, a riser or a letter and the edge of the face it stands in, mm. */
export const INSIDE_FACE = 0.1;
/** Wall of a jig that hands and clamps bear on, mm. */
export const STOUT_WALL = 6;

/** A direction or a place in the plane's frame. */
export type Point3 = readonly [x: number, y: number, z: number];

/** How a body stands at the plane: where its own axes point (unit, right-handed) and where its own 0, 0, 0 lies. */
export interface Pose {
  readonly x: Point3;
  readonly y: Point3;
  readonly z: Point3;
  readonly origin: Point3;
}

/** A hole through a body; `chamfer` is its edge's at the printer's table, larger where a screw's head is let in. */
export interface JigHole {
  readonly outline: Outline;
  readonly chamfer?: number;
}

/** A bar or boss that rises from a body's upper face, wholly inside that face. */
export interface Riser {
  readonly outline: Outline;
  /** Over the body's upper face, mm. */
  readonly height: number;
}

/** Words sunk in a body's upper face, as near as they fit to a place. */
export interface JigLabel {
  /** Each a choice of lines, best first; the last must fit. */
  readonly choices: readonly (readonly string[])[];
  readonly near: Point;
  /** How far from there its middle may stand, mm, and then level; anywhere and either way on the face where this is absent. */
  readonly within?: number;
}

/** What the size of a body follows from: its outline, its thickness along z, and what rises from it. */
export interface JigBlock {
  readonly boundary: Outline;
  readonly thickness: number;
  readonly risers: readonly Riser[];
}

/** One closed shell: a plate with holes, printed with the plate's lower face on the table. */
export interface JigBody extends JigBlock {
  readonly holes: readonly JigHole[];
  /** Left out of the print to save material, where the labels leave room; no part of the drawing, since sawing it saves nothing. */
  readonly lightening: readonly Outline[];
  readonly labels: readonly JigLabel[];
  readonly pose: Pose;
}

/** Every jig by its name, which is also its file's. */
export const JIG_NAMES = [
  "fit-test",
  "bed-gauge",
  "ramp-gauge",
  "bed-cradle",
  "recess-template",
  "pin-guide",
  "wedge-sled",
  "throat-spacer",
] as const;
export type JigName = (typeof JIG_NAMES)[number];

/** A jig as far as its size follows from it: all that the checks read, of thousands of planes in a sweep. */
export interface JigForm {
  /** Kebab-case, which is also its file's name. */
  readonly name: JigName;
  readonly bodies: readonly JigBlock[];
  /** How thick it may be when it is cut from sheet; only for a jig that can be. */
  readonly plateRange?: PlateRange;
}

/** A jig of a plane, with all that it is made and used by. */
export interface JigPlan extends JigForm {
  readonly title: string;
  /** One closed shell each; more than one only for parts that are screwed together, side by side on the table. */
  readonly bodies: readonly JigBody[];
  /** Only for a jig that can be cut from sheet. */
  readonly drawing?: Drawing;
  /** Which of the shop's plates it is cut from; absent where the shop names none, or none serves. */
  readonly plate?: PlateChoice;
  readonly registersAgainst: string;
  /** How it is used, with its cautions. */
  readonly use: string;
  /** How it is printed. */
  readonly printed: string;
}

/** What keeps a jig from being made: the value that is too small. */
export type ObstacleSubject =
  | "bush-diameter"
  | "template-plate"
  | "plate-to-fence"
  | "plate-to-stop"
  | "plate-to-slots"
  | "room-over-pin"
  | "spacer-leg"
  | "spacer-flank"
  | "spacer-leg-below-pin";

/** What to do instead. */
export type ObstacleAdvice =
  | "take-smaller-bush"
  | "let-cutter-turn-in-bush"
  | "take-longer-cutter"
  | "fix-fences"
  | "set-blocks-by-iron";

/** Why a jig cannot be made for a design: a value under its limit. */
export interface NoJig {
  readonly name: JigName;
  readonly subject: ObstacleSubject;
  readonly value: number;
  readonly limit: number;
  readonly unit: "mm" | "°";
  readonly parameters: readonly string[];
  readonly advice: ObstacleAdvice;
  /** Height of the iron's edge over the blank's sole, by which the blocks are set, mm. */
  readonly edgeHeight?: number;
}

/** A jig's form, and its plan once that is asked for; or why there is none. */
export type JigResult = { readonly form: JigForm; readonly plan: () => JigPlan } | { readonly none: NoJig };

/** Standing at the plane as it is drawn, its lower face at a z of the plane's frame. */
export const poseAsDrawn = (z: number): Pose => ({
  x: [1, 0, 0],
  y: [0, 1, 0],
  z: [0, 0, 1],
  origin: [0, 0, z],
});

/** The place in the plane's frame of a body's own point. mm. */
export function applyPose({ x, y, z, origin }: Pose, [a, b, c]: Point3): Point3 {
  const along = (k: 0 | 1 | 2) => origin[k] + a * x[k] + b * y[k] + c * z[k];
  return [along(0), along(1), along(2)];
}
