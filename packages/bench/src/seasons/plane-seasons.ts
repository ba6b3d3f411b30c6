// What a year does to this plane: its sizes, its woods and its shop's air put to the equations of moisture and movement.

import { BENCH_TOLERANCE } from "@lamplane/geometry";
import type { Elevation } from "@lamplane/parameters/elevation";
import { memoizeByPlane, pinLengths } from "@lamplane/parameters/elevation";
import { type Movement, movementOf } from "@lamplane/parameters/wood";
import { speciesFor } from "../plane-woods.ts";
import {
  moistureRange,
  type Season,
  type SeasonMovement,
  type SeasonSizes,
  type Seasons,
  type SeasonsInput,
  seasonSeries,
  seasons,
} from "./seasons.ts";

/** Gap that the worst day of the year must leave, mm: what a maker can hold. */
export const LEAST_GAP = BENCH_TOLERANCE;

/** The plane on the driest days, as it is cut, and on the dampest days. @see plane geometry: Seasons */
export const planeSeasons = memoizeByPlane((plane): Seasons => seasons(seasonsInput(plane)));

/** The plane from the driest moisture to the dampest, in even steps, for plotting. @param points 2 or more */
export const planeSeasonSeries = (plane: Elevation, points?: number): Season[] =>
  seasonSeries(seasonsInput(plane), points);

type SeasonSize = Exclude<keyof Season, "moisture">;

/** The three seasons' values of one size; undefined where a wood's movement is not known. mm. */
function yearlyValues(plane: Elevation, key: SeasonSize): readonly number[] | undefined {
  const { driest, planned, dampest } = planeSeasons(plane);
  const values = [driest[key], planned[key], dampest[key]].filter((value) => value !== undefined);
  return values.length === 3 ? values : undefined;
}

/** Least and most that a size or a gap is at any time of the year; undefined where it is not known. mm. */
export function yearlyMinimum(plane: Elevation, key: SeasonSize): number | undefined {
  const values = yearlyValues(plane, key);
  return values && Math.min(...values);
}
export function yearlyMaximum(plane: Elevation, key: SeasonSize): number | undefined {
  const values = yearlyValues(plane, key);
  return values && Math.max(...values);
}

function seasonsInput(plane: Elevation): SeasonsInput {
  const { driest, dampest, moisture } = plane.design.wood;
  const reached = moistureRange({ driest, dampest });
  return {
    planned: moisture === "auto" ? (reached.driest + reached.dampest) / 2 : moisture,
    driest,
    dampest,
    sizes: sizesOf(plane),
    movement: movementsOf(plane),
    leastGap: LEAST_GAP,
  };
}

function sizesOf(plane: Elevation): SeasonSizes {
  const { design, widths, pinHole } = plane;
  const { shoulder, end } = pinLengths(plane);
  return {
    ironWidth: design.iron.width,
    coreWidth: widths.core,
    cheek: widths.cheek,
    bodyHeight: design.body.height,
    wedgeWidth: widths.core - design.wedge.clearance,
    pinBody: 2 * shoulder,
    tenonLength: end - shoulder,
    tenon: plane.pinSize.tenon,
    hole: 2 * pinHole.radius,
  };
}

const UNKNOWN: Movement = { coefficient: undefined, shrinkage: undefined };

function movementsOf(plane: Elevation): SeasonMovement {
  const { rings, wedgeRings } = plane.design.wood;
  const along = (role: "body" | "pin" | "wedge", angle: number): Movement => {
    const wood = speciesFor(plane, role);
    return wood ? movementOf(wood, angle) : UNKNOWN;
  };
  return {
    bodyWidth: along("body", rings),
    bodyHeight: along("body", 90 - rings),
    wedgeWidth: along("wedge", wedgeRings === "auto" ? rings : wedgeRings),
    pinRadial: along("pin", 90),
    pinTangential: along("pin", 0),
  };
}
