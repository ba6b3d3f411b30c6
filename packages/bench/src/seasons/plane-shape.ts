// What a year does to this plane's shape: slopes, mouth, the wedge's fit and the cup of sole and bed. Indicative.
import { cosDeg } from "@lamplane/geometry";
import type { Elevation } from "@lamplane/parameters/elevation";
import { memoizeByPlane } from "@lamplane/parameters/elevation";
import { type MovementLaw, movementLaw, movementOf } from "@lamplane/parameters/wood";
import { speciesFor, type WoodRole } from "../plane-woods.ts";
import { planeHold } from "../strength/plane-hold.ts";
import { planePinStrength } from "../strength/plane-pin-strength.ts";
import { cup } from "./cupping.ts";
import { planeSeasonSeries, planeSeasons } from "./plane-seasons.ts";
import { type MovedAngles, movedAngles, wedgeSlack } from "./side-view.ts";

/** The plane's shape at one moisture; undefined where a wood's movement is not in the tables. mm. */
export interface SeasonShape {
  readonly angles: MovedAngles | undefined;
  /** Cup of the sole over the body's width, and of the bed over the core's, square to the bed. See `cup`. */
  readonly soleCup: number | undefined;
  readonly bedCup: number | undefined;
}

/** See `wedgeSlack`. The rings of a round pin turn with it: as they loosen most, and as they press most. mm */
export interface SeasonSlack {
  readonly loosest: number | undefined;
  readonly tightest: number | undefined;
}

/** On the driest and on the dampest days. */
export interface DriestAndDampest<T> {
  readonly driest: T;
  readonly dampest: T;
}

const throughYear = <T>(at: (plane: Elevation, moisture: number) => T): ((plane: Elevation) => DriestAndDampest<T>) =>
  memoizeByPlane((plane) => {
    const { driest, dampest } = planeSeasons(plane);
    return { driest: at(plane, driest.moisture), dampest: at(plane, dampest.moisture) };
  });

/** @see plane geometry: Seasons */
export const planeShape = throughYear(shapeAt);
export const planeSlack = throughYear(slackAt);

/** Slopes and mouth from the driest moisture to the dampest, in even steps; none where the wood's movement is not in the tables. */
export const yearlyAngles = (plane: Elevation): (MovedAngles & { readonly moisture: number })[] =>
  planeSeasonSeries(plane).flatMap(({ moisture }) => {
    const { angles } = shapeAt(plane, moisture);
    return angles ? [{ moisture, ...angles }] : [];
  });

/** Relative change of a part's wood since it was cut, in the direction at an angle to its rings' tangent. */
function strainAt(plane: Elevation, moisture: number): (role: WoodRole, angle: number) => number | undefined {
  const planned = planeSeasons(plane).planned.moisture;
  return (role, angle) => {
    const wood = speciesFor(plane, role);
    const law: MovementLaw | undefined = wood && movementLaw(movementOf(wood, angle), [planned, moisture]);
    return law?.change(1, planned, moisture);
  };
}

function shapeAt(plane: Elevation, moisture: number): SeasonShape {
  const { rings, pith } = plane.design.wood;
  const strain = strainAt(plane, moisture);
  const [height, radial, tangential] = [strain("body", 90 - rings), strain("body", 90), strain("body", 0)];
  const cupOver = (width: number): number | undefined =>
    radial === undefined || tangential === undefined ? undefined : cup(width, { radial, tangential }, rings, pith);
  const bedCup = cupOver(plane.widths.core);
  return {
    angles: height === undefined ? undefined : movedAngles(plane, height),
    soleCup: cupOver(plane.widths.body),
    bedCup: bedCup === undefined ? undefined : bedCup * cosDeg(plane.frame.bedAngle),
  };
}

function slackAt(plane: Elevation, moisture: number): SeasonSlack {
  const { rings, wedgeRings, pinRings } = plane.design.wood;
  const strain = strainAt(plane, moisture);
  const height = strain("body", 90 - rings);
  const wedge = strain("wedge", 90 - (wedgeRings === "auto" ? rings : wedgeRings));
  const pinAngles = plane.design.pin.section === "round" ? [90, 0] : [90 - pinRings];
  const pins = pinAngles.map((angle) => strain("pin", angle));
  const slacks = pins.flatMap((pin) =>
    height === undefined || wedge === undefined || pin === undefined ? [] : [wedgeSlack(plane, { height, wedge, pin })],
  );
  return {
    loosest: slacks.length > 0 ? Math.max(...slacks) : undefined,
    tightest: slacks.length > 0 ? Math.min(...slacks) : undefined,
  };
}

/** By how much an untouched wedge loosens at most in the year, and is pressed at most, mm of its thickness; 0 or more. */
export const wedgeLoosens = (plane: Elevation): number | undefined =>
  worst(planeSlack(plane), ({ loosest }) => loosest);
export const wedgeTightens = (plane: Elevation): number | undefined =>
  worst(planeSlack(plane), ({ tightest }) => (tightest === undefined ? undefined : -tightest));

/**
 * What opens over an untouched wedge at the loosest of the year, along the thrust, against the sag that the clamp wanted gives
 * the pin: beyond it the wedge is loose. mm; undefined where either is not known.
 */
export function wedgeHoldOfYear(plane: Elevation): { readonly opens: number; readonly sag: number } | undefined {
  const sag = planePinStrength(plane, "fine").sag?.total;
  const slack = wedgeLoosens(plane);
  if (sag === undefined || slack === undefined) return undefined;
  return { opens: slack * cosDeg(plane.design.wedge.angle), sag };
}

/** The larger cup of the year, whichever way. */
export const yearlyCup = (plane: Elevation, key: "soleCup" | "bedCup"): number | undefined =>
  worst(planeShape(plane), (shape) => (shape[key] === undefined ? undefined : Math.abs(shape[key])));

function worst<T>({ driest, dampest }: DriestAndDampest<T>, of: (season: T) => number | undefined): number | undefined {
  const [dry, damp] = [of(driest), of(dampest)];
  return dry === undefined || damp === undefined ? undefined : Math.max(0, dry, damp);
}

/**
 * Clamp that is left of the clamp wanted when the wedge is at its loosest, and what it grows to at its tightest, N. The pin's
 * sag alone is taken to give: cheeks and wedge give too, so that the true swing is smaller.
 */
export function clampThroughYear(plane: Elevation): { readonly least: number; readonly most: number } | undefined {
  const { clamp } = planeHold(plane).fine;
  const sag = planePinStrength(plane, "fine").sag?.total;
  const [loosens, tightens] = [wedgeLoosens(plane), wedgeTightens(plane)];
  if (sag === undefined || loosens === undefined || tightens === undefined || !(sag > 0)) return undefined;
  const perMm = (clamp / sag) * cosDeg(plane.design.wedge.angle);
  return { least: Math.max(0, clamp - perMm * loosens), most: clamp + perMm * tightens };
}
