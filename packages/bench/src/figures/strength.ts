// Figures of the cross pin's and the cheeks' strength. What the wood tables lack is left out.
import type { FigureFormula } from "@lamplane/parameters/elevation";
import {
  planePinStrength,
  smallestFactorInCatch,
  type WeakPlace,
  weakestPlace,
} from "../strength/plane-pin-strength.ts";
import { type Evaluate, indicative } from "./indicative.ts";

const STRENGTHS = "plane geometry; Wood Handbook (FPL-GTR-190, 2010), tables 5-3 and 5-5, some values from memory";
const megapascals = indicative("MPa", STRENGTHS);
const times = indicative("×", STRENGTHS);
const millimetres = indicative("mm", STRENGTHS);
const evaluateStress =
  (place: WeakPlace): Evaluate =>
  (e) =>
    planePinStrength(e, "fine")[place].stress;
const evaluateFactor =
  (place: WeakPlace): Evaluate =>
  (e) =>
    planePinStrength(e, "fine")[place].factor;

export const PIN_FIGURES = {
  pinBendingStress: megapascals(
    "N·(2·L − b) / 8 / W, L between the middles of the tenons' bearings, b the wedge's width",
    evaluateStress("bending"),
  ),
  pinBendingFactor: times("modulus of rupture / stress", evaluateFactor("bending")),
  pinSag: millimetres(
    "N·(8·L³ − 4·b²·L + b³) / (384·E·I), and shear with G = E / 16",
    (e) => planePinStrength(e, "fine").sag?.total,
  ),
  tenonShearStress: megapascals("4·(N/2) / (3·A)", evaluateStress("tenonShear")),
  tenonShearFactor: times("shear along the grain / stress", evaluateFactor("tenonShear")),
  tenonBendingStress: megapascals(
    "N/2 · (end clearance + bearing / 2) / (π·tenon³ / 32)",
    evaluateStress("tenonBending"),
  ),
  tenonBendingFactor: times("modulus of rupture / stress", evaluateFactor("tenonBending")),
  bearingStress: megapascals("N/2 / (tenon · length in the cheek)", evaluateStress("cheekBearing")),
  tenonBearingFactor: times("compression across the grain / stress", evaluateFactor("tenonCrushing")),
  cheekBearingFactor: times("compression at the thrust's angle to the grain / stress", evaluateFactor("cheekBearing")),
  shearOutStress: megapascals("N/2 / (2 · shearOut · cheek)", evaluateStress("cheekShearOut")),
  shearOutFactor: times("shear along the grain / stress", evaluateFactor("cheekShearOut")),
  smallestFactorInCatch: times("the smallest of these factors under the catch's clamp", smallestFactorInCatch),
  smallestFactorLeast: times(
    "the smallest of these factors, frictions at their lowest",
    (e) => weakestPlace(planePinStrength(e, "fineAtLowest"))?.factor,
  ),
  smallestFactorInCatchLeast: times(
    "the smallest of these factors under the catch's clamp, frictions at their lowest",
    (e) => weakestPlace(planePinStrength(e, "inCatchAtLowest"))?.factor,
  ),
} satisfies Record<string, FigureFormula>;
