// Every figure of hold, strength and seasons, once, beside those of the elevation. What the wood tables lack is left out.
import type { Elevation } from "@lamplane/parameters/elevation";
import { elevationFigures, evaluateFigures, type Figure, type FigureRow } from "@lamplane/parameters/elevation";
import { planeSeasons, yearlyMaximum, yearlyMinimum } from "./seasons/plane-seasons.ts";
import { clampThroughYear, planeShape, wedgeLoosens, wedgeTightens, yearlyCup } from "./seasons/plane-shape.ts";
import type { Season } from "./seasons/seasons.ts";
import { travelFor } from "./seasons/side-view.ts";
import type { Hold } from "./strength/friction-hold.ts";
import { planeHold } from "./strength/plane-hold.ts";
import {
  planePinStrength,
  smallestFactorInCatch,
  type WeakPlace,
  weakestPlace,
} from "./strength/plane-pin-strength.ts";

type Evaluate = FigureRow["of"];
const ESTIMATE = "plane geometry; forces and frictions are engineering estimates";
const STRENGTHS = "plane geometry; Wood Handbook (FPL-GTR-190, 2010), tables 5-3 and 5-5, some values from memory";
const MOISTURE = "Wood Handbook (FPL-GTR-190, 2010), eq. 4-5";
const MOVEMENT = "Wood Handbook (FPL-GTR-190, 2010), eq. 13-2 and 13-3, tables 4-3, 4-4 and 13-5";

/** A number that is none (no load, no wood left) is no figure. */
const finiteOrUndefined = (value: number | undefined): number | undefined =>
  Number.isFinite(value) ? value : undefined;

const indicative =
  (unit: string, source: string) =>
  (formula: string, help: string, of: Evaluate): FigureRow => ({
    unit,
    formula,
    help: `${help} Indicative.`,
    source,
    of: (e) => finiteOrUndefined(of(e)),
  });
const newtons = indicative("N", ESTIMATE);
const degrees = indicative("°", ESTIMATE);
const megapascals = indicative("MPa", STRENGTHS);
const times = indicative("×", STRENGTHS);
const millimetres = indicative("mm", STRENGTHS);

const evaluateHold =
  (key: keyof Hold): Evaluate =>
  (e) =>
    planeHold(e).fine[key];
const evaluateStress =
  (place: WeakPlace): Evaluate =>
  (e) =>
    planePinStrength(e).fine[place].stress;
const evaluateFactor =
  (place: WeakPlace): Evaluate =>
  (e) =>
    planePinStrength(e).fine[place].factor;

const HOLD_FIGURES = {
  cuttingForce: newtons(
    "force per mm of edge · iron width",
    "Force on the edge in a fine shaving.",
    evaluateHold("cutting"),
  ),
  cuttingForceInCatch: newtons(
    "force per mm of edge in a catch · iron width",
    "Force on the edge when the iron catches.",
    (e) => planeHold(e).inCatch.cutting,
  ),
  clampWanted: newtons(
    "F·(cos β − μ₂·sin β) / (μ₂ + min(μ₁, tan(φ₂ − ω))), at least 0",
    "Force square on the iron that holds iron and wedge in a fine shaving.",
    evaluateHold("clamp"),
  ),
  clampWantedLeast: newtons(
    "clampWanted, frictions at their highest",
    "The same where friction is best.",
    (e) => planeHold(e).fineAtHighest.clamp,
  ),
  clampWantedMost: newtons(
    "clampWanted, frictions at their lowest",
    "The same where friction is worst.",
    (e) => planeHold(e).fineAtLowest.clamp,
  ),
  clampWantedInCatch: newtons(
    "clampWanted with the catch's force",
    "Force square on the iron that holds it in a catch.",
    (e) => planeHold(e).inCatch.clamp,
  ),
  drivingForce: newtons(
    "N·(tan(ω + φ₂) + tan φ₁)",
    "Push on the wedge's butt that clamps the iron for a fine shaving.",
    evaluateHold("driving"),
  ),
  holdMargin: degrees(
    "φ₂ − ω",
    "Friction angle between wedge and cross pin less the wedge angle; below 0 the pin cannot hold the wedge.",
    evaluateHold("holdMargin"),
  ),
  holdMarginLeast: degrees(
    "φ₂ − ω, friction at its lowest",
    "The same at the lowest friction.",
    (e) => planeHold(e).fineAtLowest.holdMargin,
  ),
  lockingMargin: degrees(
    "φ₁ + φ₂ − ω",
    "Angle by which friction holds a wedge at rest; below 0 it comes out by itself.",
    evaluateHold("lockingMargin"),
  ),
  lockingMarginLeast: degrees(
    "φ₁ + φ₂ − ω, frictions at their lowest",
    "The same at the lowest frictions.",
    (e) => planeHold(e).fineAtLowest.lockingMargin,
  ),
  pinRollingFriction: degrees(
    "atan(μ·tenon / d)",
    "Friction angle under a round pin, which rolls on its tenons.",
    (e) => (e.design.pin.section === "round" ? planeHold(e).angleAtPin : undefined),
  ),
} satisfies Record<string, FigureRow>;

const PIN_FIGURES = {
  pinBendingStress: megapascals(
    "N·(2·L − b) / 8 / W, L between the middles of the tenons' bearings, b the wedge's width",
    "Bending of the cross pin in a fine shaving.",
    evaluateStress("bending"),
  ),
  pinBendingFactor: times("modulus of rupture / stress", "Strength over that stress.", evaluateFactor("bending")),
  pinSag: millimetres(
    "N·(8·L³ − 4·b²·L + b³) / (384·E·I), and shear with G = E / 16",
    "Sag of the cross pin in a fine shaving.",
    (e) => planePinStrength(e).fine.sag?.total,
  ),
  tenonShearStress: megapascals(
    "4·(N/2) / (3·A)",
    "Shear in each tenon in a fine shaving.",
    evaluateStress("tenonShear"),
  ),
  tenonShearFactor: times("shear along the grain / stress", "Strength over that stress.", evaluateFactor("tenonShear")),
  tenonBendingStress: megapascals(
    "N/2 · (end clearance + bearing / 2) / (π·tenon³ / 32)",
    "Bending of each tenon at its shoulder in a fine shaving.",
    evaluateStress("tenonBending"),
  ),
  tenonBendingFactor: times(
    "modulus of rupture / stress",
    "Strength over that stress.",
    evaluateFactor("tenonBending"),
  ),
  bearingStress: megapascals(
    "N/2 / (tenon · length in the cheek)",
    "Pressure of each tenon on its hole in a fine shaving.",
    evaluateStress("cheekBearing"),
  ),
  tenonBearingFactor: times(
    "compression across the grain / stress",
    "The tenon's strength over that pressure.",
    evaluateFactor("tenonCrushing"),
  ),
  cheekBearingFactor: times(
    "compression at the thrust's angle to the grain / stress",
    "The cheek's strength over that pressure, by Hankinson's formula.",
    evaluateFactor("cheekBearing"),
  ),
  shearOutStress: megapascals(
    "N/2 / (2 · shearOut · cheek)",
    "Shear in the cheek from hole to the nearest edge in the thrust's line, in a fine shaving.",
    evaluateStress("cheekShearOut"),
  ),
  shearOutFactor: times(
    "shear along the grain / stress",
    "Strength over that stress.",
    evaluateFactor("cheekShearOut"),
  ),
  smallestFactorInCatch: times(
    "the smallest of these factors under the catch's clamp",
    "Strength of the weakest place over its stress when the iron catches.",
    smallestFactorInCatch,
  ),
  smallestFactorLeast: times(
    "the smallest of these factors, frictions at their lowest",
    "Strength of the weakest place over its stress in a fine shaving where friction is worst.",
    (e) => weakestPlace(planePinStrength(e).fineAtLowest)?.factor,
  ),
  smallestFactorInCatchLeast: times(
    "the smallest of these factors under the catch's clamp, frictions at their lowest",
    "Strength of the weakest place over its stress in a catch where friction is worst.",
    (e) => weakestPlace(planePinStrength(e).inCatchAtLowest)?.factor,
  ),
} satisfies Record<string, FigureRow>;

type Gap = Exclude<keyof Season, "moisture">;
const percent = (formula: string, help: string, of: Evaluate): FigureRow => ({
  unit: "%",
  formula,
  help,
  source: MOISTURE,
  of: (e) => finiteOrUndefined(of(e)),
});
const seasonal = indicative("mm", MOVEMENT);
const evaluateLeast =
  (key: Gap): Evaluate =>
  (e) =>
    yearlyMinimum(e, key);
const seasonalDegrees = indicative("°", MOVEMENT);
const FIT = "plane geometry; movement by the Wood Handbook (FPL-GTR-190, 2010), eq. 13-2 and 13-3";
const clampOfYear = indicative("N", FIT);
const fit = indicative("mm", FIT);
const CUP = "(C_T − C_R)·ΔM·z·φ about the pith, 100 mm from the middle (our assumption)";
const travel = (e: Elevation, slack: number | undefined) => (slack === undefined ? undefined : travelFor(e, slack));
const YEAR = "at the worst of driest, as cut and dampest";

const SEASON_FIGURES = {
  moistureDriest: percent(
    "air on the driest days",
    "The wood's moisture on them.",
    (e) => planeSeasons(e).driest.moisture,
  ),
  moistureDampest: percent(
    "air on the dampest days",
    "The wood's moisture on them.",
    (e) => planeSeasons(e).dampest.moisture,
  ),
  moistureAsCut: percent(
    "given, or midway between driest and dampest",
    "Moisture of the wood when it is cut.",
    (e) => planeSeasons(e).planned.moisture,
  ),
  coreWidthDriest: seasonal(
    "coreWidth·(1 + C·ΔM)",
    "Width of the core on the driest days.",
    (e) => planeSeasons(e).driest.coreWidth,
  ),
  coreWidthDampest: seasonal(
    "coreWidth·(1 + C·ΔM)",
    "Width of the core on the dampest days.",
    (e) => planeSeasons(e).dampest.coreWidth,
  ),
  sideGapLeast: seasonal(
    `core less iron, ${YEAR}`,
    "Room beside the iron, both sides together.",
    evaluateLeast("sideGap"),
  ),
  pinEndGapLeast: seasonal(
    `core less pin, halved, ${YEAR}`,
    "Gap at each shoulder of the pin.",
    evaluateLeast("pinEndGap"),
  ),
  wedgeGapLeast: seasonal(
    `core less wedge, ${YEAR}`,
    "Room beside the wedge, both sides together.",
    evaluateLeast("wedgeGap"),
  ),
  tenonGapLeast: seasonal(`hole less tenon, ${YEAR}`, "Room of the tenon in its hole.", evaluateLeast("tenonGap")),
  tenonProudMost: seasonal(
    `tenon less cheek and gap, ${YEAR}`,
    "How far each tenon stands out of the cheek; below 0 it lies inside.",
    (e) => yearlyMaximum(e, "tenonProud"),
  ),
  heightChange: seasonal("dampest less driest", "How much the body's height changes in a year.", (e) => {
    const { driest, dampest } = planeSeasons(e);
    return driest.bodyHeight === undefined || dampest.bodyHeight === undefined
      ? undefined
      : dampest.bodyHeight - driest.bodyHeight;
  }),
  bedAngleDriest: seasonalDegrees(
    "tan β·(1 + C·ΔM)",
    "Bed angle on the driest days: height moves, length hardly.",
    (e) => planeShape(e).driest.angles?.bed,
  ),
  bedAngleDampest: seasonalDegrees(
    "tan β·(1 + C·ΔM)",
    "Bed angle on the dampest days.",
    (e) => planeShape(e).dampest.angles?.bed,
  ),
  rampAngleDriest: seasonalDegrees(
    "tan ρ·(1 + C·ΔM)",
    "Ramp angle at the sole on the driest days.",
    (e) => planeShape(e).driest.angles?.ramp,
  ),
  rampAngleDampest: seasonalDegrees(
    "tan ρ·(1 + C·ΔM)",
    "Ramp angle at the sole on the dampest days.",
    (e) => planeShape(e).dampest.angles?.ramp,
  ),
  mouthDriest: seasonal(
    "g + t / sin β − t / sin β'",
    "Mouth opening on the driest days, the edge set to the sole anew.",
    (e) => planeShape(e).driest.angles?.mouth,
  ),
  mouthDampest: seasonal(
    "g + t / sin β − t / sin β'",
    "Mouth opening on the dampest days, the edge set to the sole anew.",
    (e) => planeShape(e).dampest.angles?.mouth,
  ),
  edgeOutDriest: seasonal(
    "the stack gripped under the pin",
    "How far the edge comes out of the sole by the driest days if it is not set anew.",
    (e) => planeShape(e).driest.angles?.edgeOut,
  ),
  edgeOutDampest: seasonal(
    "the stack gripped under the pin",
    "The same by the dampest days; below 0 it draws in.",
    (e) => planeShape(e).dampest.angles?.edgeOut,
  ),
  wedgeLoosens: fit(
    "pin hole, bed, wedge and pin, each by its own wood",
    "Gap that opens over a wedge that is not touched, at the loosest of the year.",
    wedgeLoosens,
  ),
  wedgeLoosensTravel: fit("wedgeLoosens / tan ω", "How far that wedge is to be tapped in.", (e) =>
    travel(e, wedgeLoosens(e)),
  ),
  wedgeTightens: fit(
    "pin hole, bed, wedge and pin, each by its own wood",
    "By how much a wedge that is not touched is pressed, at the tightest of the year.",
    wedgeTightens,
  ),
  wedgeTightensTravel: fit("wedgeTightens / tan ω", "How far that wedge is to be drawn.", (e) =>
    travel(e, wedgeTightens(e)),
  ),
  clampAtLoosest: clampOfYear(
    "clampWanted·(1 − wedgeLoosens·cos ω / pinSag), at least 0",
    "What is left of the clamp at the loosest of the year if the wedge is not touched; at 0 it is loose.",
    (e) => clampThroughYear(e)?.least,
  ),
  clampAtTightest: clampOfYear(
    "clampWanted·(1 + wedgeTightens·cos ω / pinSag)",
    "What the clamp grows to at the tightest of the year if the wedge is not touched, at the most.",
    (e) => clampThroughYear(e)?.most,
  ),
  soleCup: seasonal(CUP, "Cup of the sole across the body at the worst of the year.", (e) => yearlyCup(e, "soleCup")),
  bedCup: seasonal(`${CUP}, times cos β`, "Cup of the bed across the core at the worst of the year.", (e) =>
    yearlyCup(e, "bedCup"),
  ),
  sideClearanceToPlan: seasonal(
    "leaves 0.1 mm at the worst of the year",
    "Least side clearance of core over iron.",
    (e) => planeSeasons(e).clearance.sideClearance,
  ),
  endClearanceToPlan: seasonal(
    "leaves 0.1 mm at the worst of the year",
    "Least gap to plan at each shoulder of the pin.",
    (e) => planeSeasons(e).clearance.endClearance,
  ),
  wedgeClearanceToPlan: seasonal(
    "leaves 0.1 mm at the worst of the year",
    "Least clearance of core over wedge.",
    (e) => planeSeasons(e).clearance.wedgeClearance,
  ),
} satisfies Record<string, FigureRow>;

/** Hold, strength of the pin, seasons, in this order. */
export const BENCH_FIGURES = { ...HOLD_FIGURES, ...PIN_FIGURES, ...SEASON_FIGURES } satisfies Record<string, FigureRow>;
export type BenchFigureKey = keyof typeof BENCH_FIGURES;

/** Every figure of a plane: the elevation's, then the bench's; those it does not have are left out. */
export const allFigures = (plane: Elevation): Figure[] => [
  ...elevationFigures(plane),
  ...evaluateFigures(BENCH_FIGURES, plane),
];
