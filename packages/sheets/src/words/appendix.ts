// Hold and strength in the appendix, each row in words that stand alone.
import type { BenchFigureKey } from "@lamplane/bench";

export const STRENGTH = {
  cuttingForce: "Force on the edge, fine shaving",
  cuttingForceInCatch: "Force on the edge, a catch",
  clampWanted: "Clamp on the iron that holds it, fine shaving",
  clampWantedLeast: "The same where friction is best",
  clampWantedMost: "The same where friction is worst",
  clampWantedInCatch: "Clamp on the iron that holds it, a catch",
  drivingForce: "Push on the wedge that clamps for a fine shaving",
  holdMargin: "Self-locking margin of the wedge",
  holdMarginLeast: "The same where friction is worst",
  pinSag: "Sag of the cross pin, fine shaving",
  pinBendingFactor: "Cross pin in bending: strength over stress, fine shaving",
  tenonBendingFactor: "Tenons in bending at the shoulder: strength over stress, fine shaving",
  tenonShearFactor: "Tenons in shear: strength over stress, fine shaving",
  tenonBearingFactor: "Tenons pressed in their holes: strength over stress, fine shaving",
  cheekBearingFactor: "Cheeks pressed by the tenons: strength over stress, fine shaving",
  shearOutFactor: "Cheeks sheared out to the edge: strength over stress, fine shaving",
  smallestFactorInCatch: "The weakest of these in a catch: strength over stress",
} as const satisfies Partial<Record<BenchFigureKey, string>>;
