// How views say their dimensions: a parameter's path or a figure's key, and where the number stands.
import { valueAt } from "@lamplane/parameters/design";
import { type Elevation, FIGURES, type FigureKey, figure } from "@lamplane/parameters/elevation";
import type { Dimension, DimensionShape, Spot } from "../../protocol.ts";

export interface Drawn {
  readonly plane: Elevation;
  readonly settled: Readonly<Record<string, number>>;
}

type Rank = Dimension["rank"];
interface More {
  readonly rank?: Rank;
  readonly before?: string;
  readonly unit?: "mm" | "°";
}

/** A parameter's number, changeable; nothing where the design has no such thing (a curve's radius without a curve). */
export function parameter(
  { plane, settled }: Drawn,
  path: string,
  shape: DimensionShape,
  more: More = {},
): Dimension[] {
  const given = valueAt(plane.design, path);
  const value = typeof given === "number" ? given : settled[path];
  if (value === undefined) return [];
  const unit = more.unit ?? "mm";
  return [{ id: path, parameter: path, value, unit, shape, rank: more.rank ?? 2, ...before(more) }];
}

/** A figure that follows from the others; drawings put such numbers between brackets (ISO 129-1, auxiliary dimension). */
export function reference({ plane }: Drawn, key: FigureKey, shape: DimensionShape, more: More = {}): Dimension[] {
  const value = figure(plane, key);
  if (value === undefined || !Number.isFinite(value)) return [];
  const unit = FIGURES[key].unit === "°" ? "°" : "mm";
  return [{ id: `figure:${key}`, figure: key, value, unit, shape, rank: more.rank ?? 2, ...before(more) }];
}

const before = (more: More) => (more.before === undefined ? {} : { before: more.before });

type Side = Extract<DimensionShape, { kind: "along" }>["side"];
export const along = (from: Spot, to: Spot, side: Side, tier = 0): DimensionShape => ({
  kind: "along",
  from,
  to,
  side,
  tier,
});
export const leader = (at: Spot, x: number, y: number): DimensionShape => ({ kind: "leader", at, shift: { x, y } });
export const angleAt = (at: Spot, fromAngle: number, toAngle: number, radius: number): DimensionShape => ({
  kind: "angle",
  at,
  fromAngle,
  toAngle,
  radius,
});
