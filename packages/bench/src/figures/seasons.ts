// Figures of what a year does to the plane: gaps, slopes, mouth, the wedge's fit and cup. What the wood tables lack is left out.
import type { Elevation, FigureRow } from "@lamplane/parameters/elevation";
import { planeSeasons, yearlyMaximum, yearlyMinimum } from "../seasons/plane-seasons.ts";
import { clampThroughYear, planeShape, wedgeLoosens, wedgeTightens, yearlyCup } from "../seasons/plane-shape.ts";
import type { Season } from "../seasons/seasons.ts";
import { travelFor } from "../seasons/side-view.ts";
import { type Evaluate, finiteOrUndefined, indicative } from "./indicative.ts";

const MOISTURE = "Wood Handbook (FPL-GTR-190, 2010), eq. 4-5";
const MOVEMENT = "Wood Handbook (FPL-GTR-190, 2010), eq. 13-2 and 13-3, tables 4-3, 4-4 and 13-5";

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

export const SEASON_FIGURES = {
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
