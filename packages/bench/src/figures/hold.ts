// Figures of what holds iron and wedge: forces, clamp and friction angles.
import type { FigureRow } from "@lamplane/parameters/elevation";
import type { Hold } from "../strength/friction-hold.ts";
import { planeHold } from "../strength/plane-hold.ts";
import { type Evaluate, indicative } from "./indicative.ts";

const ESTIMATE = "plane geometry; forces and frictions are engineering estimates";
const newtons = indicative("N", ESTIMATE);
const degrees = indicative("°", ESTIMATE);
const evaluateHold =
  (key: keyof Hold): Evaluate =>
  (e) =>
    planeHold(e).fine[key];

export const HOLD_FIGURES = {
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
    "F·(cos β − μ₂·sin β) / (μ₂·(cos taper − k·sin taper) + sin taper + k·cos taper), k = min(μ₁, tan(φ₂ − ω)); at least 0",
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
    "φ₂ − ω + taper",
    "Friction angle between wedge and cross pin less the angle from the bed to the wedge's upper side; below 0 the pin cannot hold the wedge.",
    evaluateHold("holdMargin"),
  ),
  holdMarginLeast: degrees(
    "φ₂ − ω + taper, friction at its lowest",
    "The same at the lowest friction.",
    (e) => planeHold(e).fineAtLowest.holdMargin,
  ),
  lockingMargin: degrees(
    "φ₁ + φ₂ − ω, and less a taper below 0",
    "Angle by which friction holds a wedge at rest; below 0 it comes out by itself.",
    evaluateHold("lockingMargin"),
  ),
  lockingMarginLeast: degrees(
    "φ₁ + φ₂ − ω, and less a taper below 0, frictions at their lowest",
    "The same at the lowest frictions.",
    (e) => planeHold(e).fineAtLowest.lockingMargin,
  ),
  pinRollingFriction: degrees(
    "atan(μ·tenon / d)",
    "Friction angle under a round pin, which rolls on its tenons.",
    (e) => (e.design.pin.section === "round" ? planeHold(e).angleAtPin : undefined),
  ),
} satisfies Record<string, FigureRow>;
