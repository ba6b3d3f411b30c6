// How views say their dimensions: a parameter's path or a figure's key, and where the number stands.
import { valueAt } from "@lamplane/parameters/design";
import { type Elevation, FIGURES, type FigureKey, figureValue } from "@lamplane/parameters/elevation";
import type { Dimension, DimensionShape, SheetPoint } from "../../protocol/view.ts";

export interface SolvedPlane {
  readonly plane: Elevation;
  readonly solved: Readonly<Record<string, number>>;
}

type Rank = Dimension["rank"];
interface DimensionOptions {
  readonly rank?: Rank;
  readonly before?: string;
  readonly unit?: "mm" | "°";
}

/** A parameter's number, changeable; nothing where the design has no such thing (a curve's radius without a curve). */
export function parameterDimension(
  { plane, solved }: SolvedPlane,
  path: string,
  shape: DimensionShape,
  more: DimensionOptions = {},
): Dimension[] {
  const given = valueAt(plane.design, path);
  const value = typeof given === "number" ? given : solved[path];
  if (value === undefined) return [];
  const unit = more.unit ?? "mm";
  return [{ id: path, parameter: path, value, unit, shape, rank: more.rank ?? 2, ...prefixOf(more) }];
}

/** A figure that follows from the others; drawings put such numbers between brackets (ISO 129-1, auxiliary dimension). */
export function referenceDimension(
  { plane }: SolvedPlane,
  key: FigureKey,
  shape: DimensionShape,
  more: DimensionOptions = {},
): Dimension[] {
  const value = figureValue(plane, key);
  if (value === undefined || !Number.isFinite(value)) return [];
  const unit = FIGURES[key].unit === "°" ? "°" : "mm";
  return [{ id: `figure:${key}`, figure: key, value, unit, shape, rank: more.rank ?? 2, ...prefixOf(more) }];
}

const prefixOf = (more: DimensionOptions) => (more.before === undefined ? {} : { before: more.before });

type Side = Extract<DimensionShape, { kind: "along" }>["side"];
export const alongShape = (from: SheetPoint, to: SheetPoint, side: Side, tier = 0): DimensionShape => ({
  kind: "along",
  from,
  to,
  side,
  tier,
});
export const leaderShape = (at: SheetPoint, x: number, y: number): DimensionShape => ({
  kind: "leader",
  at,
  shift: { x, y },
});
export const angleShape = (at: SheetPoint, fromAngle: number, toAngle: number, radius: number): DimensionShape => ({
  kind: "angle",
  at,
  fromAngle,
  toAngle,
  radius,
});
