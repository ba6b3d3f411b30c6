// Figures of what a year does to the plane: gaps, slopes, mouth, the wedge's fit and cup. What the wood tables lack is left out.
import type { Elevation, FigureFormula } from "@lamplane/parameters/elevation";
import { planeSeasons, yearlyMaximum, yearlyMinimum } from "../seasons/plane-seasons.ts";
import { clampThroughYear, planeShape, wedgeLoosens, wedgeTightens, yearlyCup } from "../seasons/plane-shape.ts";
import type { Season } from "../seasons/seasons.ts";
import { travelFor } from "../seasons/side-view.ts";
import { type Evaluate, finiteOrUndefined, indicative } from "./indicative.ts";

const MOISTURE = "Wood Handbook (FPL-GTR-190, 2010), eq. 4-5";
const MOVEMENT = "Wood Handbook (FPL-GTR-190, 2010), eq. 13-2 and 13-3, tables 4-3, 4-4 and 13-5";

type Gap = Exclude<keyof Season, "moisture">;
const percent = (formula: string, of: Evaluate): FigureFormula => ({
  unit: "%",
  formula,
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
const CUP = "(C_T − C_R)·ΔM·z·φ about the ring centre";
const travel = (e: Elevation, slack: number | undefined) => (slack === undefined ? undefined : travelFor(e, slack));
const YEAR = "at the worst of driest, as cut and dampest";

export const SEASON_FIGURES = {
  moistureDriest: percent("air on the driest days", (e) => planeSeasons(e).driest.moisture),
  moistureDampest: percent("air on the dampest days", (e) => planeSeasons(e).dampest.moisture),
  moistureAsCut: percent("given, or midway between driest and dampest", (e) => planeSeasons(e).planned.moisture),
  coreWidthDriest: seasonal("coreWidth·(1 + C·ΔM)", (e) => planeSeasons(e).driest.coreWidth),
  coreWidthDampest: seasonal("coreWidth·(1 + C·ΔM)", (e) => planeSeasons(e).dampest.coreWidth),
  sideGapLeast: seasonal(`core less iron, ${YEAR}`, evaluateLeast("sideGap")),
  pinEndGapLeast: seasonal(`core less pin, halved, ${YEAR}`, evaluateLeast("pinEndGap")),
  wedgeGapLeast: seasonal(`core less wedge, ${YEAR}`, evaluateLeast("wedgeGap")),
  tenonGapLeast: seasonal(`hole less tenon, ${YEAR}`, evaluateLeast("tenonGap")),
  tenonProudMost: seasonal(`tenon less cheek and gap, ${YEAR}`, (e) => yearlyMaximum(e, "tenonProud")),
  heightChange: seasonal("dampest less driest", (e) => {
    const { driest, dampest } = planeSeasons(e);
    return driest.bodyHeight === undefined || dampest.bodyHeight === undefined
      ? undefined
      : dampest.bodyHeight - driest.bodyHeight;
  }),
  bedAngleDriest: seasonalDegrees("tan β·(1 + C·ΔM)", (e) => planeShape(e).driest.angles?.bed),
  bedAngleDampest: seasonalDegrees("tan β·(1 + C·ΔM)", (e) => planeShape(e).dampest.angles?.bed),
  rampAngleDriest: seasonalDegrees("tan ρ·(1 + C·ΔM)", (e) => planeShape(e).driest.angles?.ramp),
  rampAngleDampest: seasonalDegrees("tan ρ·(1 + C·ΔM)", (e) => planeShape(e).dampest.angles?.ramp),
  mouthDriest: seasonal("g + t / sin β − t / sin β'", (e) => planeShape(e).driest.angles?.mouth),
  mouthDampest: seasonal("g + t / sin β − t / sin β'", (e) => planeShape(e).dampest.angles?.mouth),
  edgeOutDriest: seasonal("the stack gripped under the pin", (e) => planeShape(e).driest.angles?.edgeOut),
  edgeOutDampest: seasonal("the stack gripped under the pin", (e) => planeShape(e).dampest.angles?.edgeOut),
  wedgeLoosens: fit("pin hole, bed, wedge and pin, each by its own wood", wedgeLoosens),
  wedgeLoosensTravel: fit("wedgeLoosens / tan ω", (e) => travel(e, wedgeLoosens(e))),
  wedgeTightens: fit("pin hole, bed, wedge and pin, each by its own wood", wedgeTightens),
  wedgeTightensTravel: fit("wedgeTightens / tan ω", (e) => travel(e, wedgeTightens(e))),
  clampAtLoosest: clampOfYear(
    "clampWanted·(1 − wedgeLoosens·cos ω / pinSag), at least 0",
    (e) => clampThroughYear(e)?.least,
  ),
  clampAtTightest: clampOfYear("clampWanted·(1 + wedgeTightens·cos ω / pinSag)", (e) => clampThroughYear(e)?.most),
  soleCup: seasonal(CUP, (e) => yearlyCup(e, "soleCup")),
  bedCup: seasonal(`${CUP}, times cos β`, (e) => yearlyCup(e, "bedCup")),
  sideClearanceToPlan: seasonal(
    "leaves 0.1 mm at the worst of the year",
    (e) => planeSeasons(e).clearance().sideClearance,
  ),
  endClearanceToPlan: seasonal(
    "leaves 0.1 mm at the worst of the year",
    (e) => planeSeasons(e).clearance().endClearance,
  ),
  wedgeClearanceToPlan: seasonal(
    "leaves 0.1 mm at the worst of the year",
    (e) => planeSeasons(e).clearance().wedgeClearance,
  ),
} satisfies Record<string, FigureFormula>;
