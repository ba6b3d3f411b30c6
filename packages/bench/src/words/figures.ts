// What each figure of hold, strength and seasons is called, lower case, and what it is as a sentence.
import type { FigureWords } from "@lamplane/parameters/words";

/** Behind every figure that rests on estimates or averages. */
export const INDICATIVE = "Indicative.";

export const BENCH_FIGURE_WORDS = {
  mouthLeft: ["mouth at left cheek", "Mouth opening at the left cheek, edge even with the sole."],
  mouthRight: ["mouth at right cheek", "Mouth opening at the right cheek, edge even with the sole."],
  mouthUneven: [
    "mouth, wider side less narrower",
    "How much wider the mouth is at one cheek than at the other, as measured or as it may come out.",
  ],
  ironTilt: [
    "iron tilt",
    "Tilt of the iron on its bed that sets the edge even with the sole, if the bed alone is out of square.",
  ],
  ironLean: ["iron lean at top of bed", "How far the tilted iron leans to one side at the top of the bed."],
  roomAtTilt: ["side play of tilted iron", "Side play left when the iron is tilted, both sides together."],
  cuttingForce: ["cutting force, fine shaving", "Force on the edge in a fine shaving."],
  cuttingForceInCatch: ["cutting force, catch", "Force on the edge when the iron catches."],
  clampWanted: [
    "clamping force, fine shaving",
    "Force square on the iron that holds iron and wedge in a fine shaving.",
  ],
  clampWantedLeast: [
    "clamping force, highest friction",
    "Force square on the iron that holds iron and wedge in a fine shaving, at the highest friction.",
  ],
  clampWantedMost: [
    "clamping force, lowest friction",
    "Force square on the iron that holds iron and wedge in a fine shaving, at the lowest friction.",
  ],
  clampWantedInCatch: ["clamping force, catch", "Force square on the iron that holds it in a catch."],
  drivingForce: ["driving force", "Push on the wedge butt that clamps the iron for a fine shaving."],
  holdMargin: [
    "self-locking margin",
    "Friction angle between wedge and cross pin, less the angle from the bed to the upper side of the wedge. Below 0 the pin cannot hold the wedge.",
  ],
  holdMarginLeast: ["self-locking margin, lowest friction", "Self-locking margin at the lowest friction."],
  lockingMargin: [
    "margin against loosening",
    "Both friction angles less the wedge angle. Below 0 a wedge at rest works loose.",
  ],
  lockingMarginLeast: ["margin against loosening, lowest friction", "Margin against loosening at the lowest friction."],
  pinRollingFriction: [
    "friction angle under round pin",
    "Friction angle under a round pin, which rolls on its tenons.",
  ],
  pinBendingStress: ["cross pin bending stress", "Bending of the cross pin in a fine shaving."],
  pinBendingFactor: [
    "cross pin bending strength over load",
    "Bending strength of the cross pin over its stress in a fine shaving.",
  ],
  pinSag: ["cross pin sag", "Sag of the cross pin in a fine shaving."],
  tenonShearStress: ["tenon shear stress", "Shear in each tenon in a fine shaving."],
  tenonShearFactor: [
    "tenon shear strength over load",
    "Shear strength of each tenon over its stress in a fine shaving.",
  ],
  tenonBendingStress: ["tenon bending stress", "Bending of each tenon at its shoulder in a fine shaving."],
  tenonBendingFactor: [
    "tenon bending strength over load",
    "Bending strength of each tenon at its shoulder over its stress in a fine shaving.",
  ],
  bearingStress: ["tenon pressure", "Pressure of each tenon on its hole in a fine shaving."],
  tenonBearingFactor: [
    "tenon bearing strength over load",
    "Bearing strength of each tenon over its pressure in a fine shaving.",
  ],
  cheekBearingFactor: [
    "cheek bearing strength over load",
    "Bearing strength of the cheek over the pressure of the tenon, by Hankinson's formula.",
  ],
  shearOutStress: [
    "cheek shear stress",
    "Shear in the cheek from the hole to the nearest edge along the thrust, in a fine shaving.",
  ],
  shearOutFactor: ["cheek shear strength over load", "Shear strength of the cheek over its stress in a fine shaving."],
  smallestFactorInCatch: [
    "weakest strength over load, catch",
    "Strength of the weakest place over its stress when the iron catches.",
  ],
  smallestFactorLeast: [
    "weakest strength over load, lowest friction",
    "Strength of the weakest place over its stress in a fine shaving at the lowest friction.",
  ],
  smallestFactorInCatchLeast: [
    "weakest strength over load, catch, lowest friction",
    "Strength of the weakest place over its stress in a catch at the lowest friction.",
  ],
  moistureDriest: ["wood moisture, driest days", "Moisture of the wood on the driest days."],
  moistureDampest: ["wood moisture, dampest days", "Moisture of the wood on the dampest days."],
  moistureAsCut: ["wood moisture when cut", "Moisture of the wood when it is cut."],
  coreWidthDriest: ["core width, driest days", "Width of the core on the driest days."],
  coreWidthDampest: ["core width, dampest days", "Width of the core on the dampest days."],
  sideGapLeast: ["least iron side play", "Least side play of the iron over the year, both sides together."],
  pinEndGapLeast: ["least gap at pin shoulder", "Least gap at each shoulder of the pin over the year."],
  wedgeGapLeast: ["least wedge side play", "Least side play of the wedge over the year, both sides together."],
  tenonGapLeast: ["least tenon play", "Least play of the tenon in its hole over the year."],
  tenonProudMost: [
    "tenon beyond cheek",
    "Furthest that each tenon stands out of the cheek over the year. Below 0 it lies inside.",
  ],
  heightChange: ["change of height", "Change in height of the body over the year."],
  bedAngleDriest: ["bed angle, driest days", "Bed angle on the driest days. Height moves, length hardly."],
  bedAngleDampest: ["bed angle, dampest days", "Bed angle on the dampest days."],
  rampAngleDriest: ["ramp angle, driest days", "Ramp angle at the sole on the driest days."],
  rampAngleDampest: ["ramp angle, dampest days", "Ramp angle at the sole on the dampest days."],
  mouthDriest: ["mouth opening, driest days", "Mouth opening on the driest days, edge set to the sole again."],
  mouthDampest: ["mouth opening, dampest days", "Mouth opening on the dampest days, edge set to the sole again."],
  edgeOutDriest: [
    "edge out of sole, driest days",
    "How far the edge comes out of the sole by the driest days if it is not set again.",
  ],
  edgeOutDampest: [
    "edge out of sole, dampest days",
    "How far the edge comes out of the sole by the dampest days if it is not set again. Below 0 it draws in.",
  ],
  wedgeLoosens: ["gap above loose wedge", "Gap that opens above an untouched wedge at the loosest of the year."],
  wedgeLoosensTravel: ["tap in loose wedge by", "How far to tap the wedge in at the loosest of the year."],
  wedgeTightens: ["squeeze on tight wedge", "How much an untouched wedge is squeezed at the tightest of the year."],
  wedgeTightensTravel: ["draw tight wedge by", "How far to draw the wedge at the tightest of the year."],
  clampAtLoosest: [
    "clamping force at loosest",
    "Clamping force left at the loosest of the year if the wedge is not touched. At 0 the wedge is loose.",
  ],
  clampAtTightest: [
    "clamping force at tightest",
    "Largest clamping force at the tightest of the year if the wedge is not touched.",
  ],
  soleCup: ["cup of sole", "Cup of the sole across the body at the worst of the year."],
  bedCup: ["cup of bed", "Cup of the bed across the core at the worst of the year."],
  sideClearanceToPlan: ["iron side play to plan", "Least iron side play to plan for the year."],
  endClearanceToPlan: ["gap at pin shoulder to plan", "Least gap at each shoulder of the pin to plan for the year."],
  wedgeClearanceToPlan: ["wedge side play to plan", "Least wedge side play to plan for the year."],
} as const satisfies Record<string, FigureWords>;
