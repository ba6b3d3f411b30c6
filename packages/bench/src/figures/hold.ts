// Figures of what holds iron and wedge: forces, clamp and friction angles.
import type { FigureFormula } from "@lamplane/parameters/elevation";
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
  cuttingForce: newtons("force per mm of edge · iron width", evaluateHold("cutting")),
  cuttingForceInCatch: newtons("force per mm of edge in a catch · iron width", (e) => planeHold(e).inCatch.cutting),
  clampWanted: newtons(
    "F·(cos β − μ₂·sin β) / (μ₂·(cos taper − k·sin taper) + sin taper + k·cos taper), k = min(μ₁, tan(φ₂ − ω)); at least 0",
    evaluateHold("clamp"),
  ),
  clampWantedLeast: newtons("clampWanted, frictions at their highest", (e) => planeHold(e).fineAtHighest.clamp),
  clampWantedMost: newtons("clampWanted, frictions at their lowest", (e) => planeHold(e).fineAtLowest.clamp),
  clampWantedInCatch: newtons("clampWanted with the catch's force", (e) => planeHold(e).inCatch.clamp),
  drivingForce: newtons("N·(tan(ω + φ₂) + tan φ₁)", evaluateHold("driving")),
  holdMargin: degrees("φ₂ − ω + taper", evaluateHold("holdMargin")),
  holdMarginLeast: degrees("φ₂ − ω + taper, friction at its lowest", (e) => planeHold(e).fineAtLowest.holdMargin),
  lockingMargin: degrees("φ₁ + φ₂ − ω, and less a taper below 0", evaluateHold("lockingMargin")),
  lockingMarginLeast: degrees(
    "φ₁ + φ₂ − ω, and less a taper below 0, frictions at their lowest",
    (e) => planeHold(e).fineAtLowest.lockingMargin,
  ),
  pinRollingFriction: degrees("atan(μ·tenon / d)", (e) =>
    e.design.pin.section === "round" ? planeHold(e).angleAtPin : undefined,
  ),
} satisfies Record<string, FigureFormula>;
