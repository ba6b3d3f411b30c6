// What to do about a finding, as a sentence: one for each advice code.

import type { ObstacleAdvice } from "@lamplane/parameters/jigs";

const OF_BLOCKS = {
  "keep-ends-below-crown": "Neither end may be higher than the crown, nor fall more than it is long.",
  "flatten-ramp-exit": "The ramp's exit must lie flatter than its wear.",
  "raise-feather-chamfer": "Take the feather off the bed's tip higher up, or leave less wood under the sole.",
  "read-again-or-plane-ramp":
    "The front block stands too far back: see whether a measured place was misread, or plane its ramp.",
  "keep-chamfer-within-allowance":
    "Make the feather chamfer no higher than the sole's allowance, so that the bevel's heel is borne.",
  "lengthen-blank": "Begin with a longer blank.",
  "set-mouth-back-or-lengthen-plane": "Set the mouth further back, or make the plane longer.",
  "lengthen-plane-or-set-mouth-forward": "Make the plane longer, or set the mouth nearer to the toe.",
  "lean-ramp-or-raise-wedge-and-pin":
    "Lean the ramp further to the toe, or bring the wedge's tip and the pin further up.",
} as const;

const OF_IRON = {
  "thicken-wedge-tip": "Make the wedge thicker at its tip.",
  "widen-core": "Leave room to set the iron square and for the core to shrink; {1.6 mm} is usual.",
  "grind-lower-or-bed-steeper": "Grind the bevel lower, or bed the iron more steeply.",
  "measure-iron-further-apart":
    "Measure the iron just above its bevel and near its top, and say how far from the edge each place is.",
  "enter-taper-once": "Enter the taper or the thickness near the top, not both.",
  "measure-taper-again": "An iron does not taper to nothing: measure it again at both places.",
  "lower-plane-for-tapping": "Make the plane lower; an iron that ends inside the body cannot be tapped.",
  "saw-otherwise": "The saw does not swing so far: use a hand saw or a bevelled fence, or another angle.",
} as const;

const OF_PIN_AND_WEDGE = {
  "lower-pin-or-raise-plane": "Set the pin lower, or make the plane higher.",
  "raise-pin": "Set the pin higher.",
  "make-room-for-fingers":
    "Fingers must reach a jammed shaving: lean the ramp further to the toe, or set the pin higher.",
  "let-pin-turn": "The pin must turn to find the wedge.",
  "thin-tenon-or-thicken-pin": "Make the tenon thinner or the pin thicker.",
  "lessen-end-gaps": "Leave less gap at its ends.",
  "lengthen-tenons": "Make the tenons longer.",
  "shorten-standing-tenon": "It stands out of the cheek: shorten it.",
  "lower-wedge-tip-or-raise-pin": "Bring the wedge's tip nearer to the edge, or set the pin higher.",
  "lengthen-wedge": "Make the wedge longer.",
  "keep-wedge-off-hump": "The wedge must lie on the flat of the cap iron, not on its hump.",
  "end-wedge-higher-or-bore-anew":
    "The pin's hole leaves the wedge no room there: end it further from the edge, or bore the hole anew.",
  "widen-wedge": "A narrow wedge holds the iron in its middle only.",
} as const;

const OF_STOCK = {
  "thicken-cheek": "{8 mm} or more is usual; the pin bears in it.",
  "narrow-recess": "The iron bears on these lands: make the recess narrower.",
  "lessen-head-travel": "The iron must be borne near its edge: leave the head less travel.",
  "let-head-in": "The head must go in.",
  "keep-head-off-floor": "The head must not bear on the floor.",
  "take-smaller-cutter": "Use a smaller cutter.",
  "omit-recess-or-raise-plane":
    "The head lies above the bed, so it needs no recess: leave the head's height at 0, or make the plane higher.",
  "thin-pegs-or-lengthen-blank": "Use thinner pegs or a longer blank, or none.",
  "change-billet-or-plane": "The plane does not come out of it: take another billet, or plan a smaller plane.",
} as const;

const OF_STRENGTH = {
  "lessen-wedge-angle-against-slip": "The iron may pull the wedge loose: make the wedge's angle smaller.",
  "lessen-wedge-angle-to-lock":
    "The cross pin cannot hold the wedge against the iron's pull: make the wedge's angle smaller.",
  "order-frictions": "Give each friction between its lowest and its highest.",
  "enlarge-bearing": "Give the tenons more to bear on: thicker tenons, or a thicker cheek.",
  "strengthen-pin": "Make the pin thicker, or of a stronger wood.",
  "strengthen-tenons": "Make the tenons thicker, or the pin of a stronger wood.",
  "lower-pin-or-thicken-cheeks": "Set the pin lower, or make the cheeks thicker.",
  "stiffen-pin": "It presses the wedge at its edges only: make the pin thicker, or of a stiffer wood.",
} as const;

const OF_SEASONS = {
  "plan-more-side-clearance": "The cheeks would bind the iron, or be split by it: plan more side clearance.",
  "plan-more-end-gap":
    "The pin's grain lies across, so that it does not shrink with the core: plan more gap at its ends.",
  "narrow-wedge": "The wedge would bind between the cheeks: make it narrower.",
  "bore-larger-holes": "The pin must turn to find the wedge: bore the holes larger.",
  "shorten-tenons-for-dry-days": "The body shrinks and the pin does not: shorten the tenons.",
  "ease-wedge-before-damp-days": "Ease the wedge before the damp days, or choose woods that move less.",
  "exchange-seasons": "Exchange the driest and the dampest days.",
} as const;

const OF_JIGS = {
  "take-smaller-bush": "Take a smaller bush, or a bearing (0).",
  "let-cutter-turn-in-bush":
    "The cutter must turn inside its bush: take a larger bush, a smaller cutter, or a bearing (0).",
  "take-longer-cutter": "Take a longer cutter.",
  "fix-fences": "Have the fences fixed.",
  "open-guide-holes-by-drill": "Print its holes tighter and open them with the drill itself.",
} as const satisfies Record<Exclude<ObstacleAdvice, "set-blocks-by-iron"> | "open-guide-holes-by-drill", string>;

/** By a finding's advice; those that name more than a sentence holds stand in `findings.ts`. */
export const ADVICE = {
  ...OF_BLOCKS,
  ...OF_IRON,
  ...OF_PIN_AND_WEDGE,
  ...OF_STOCK,
  ...OF_STRENGTH,
  ...OF_SEASONS,
  ...OF_JIGS,
} as const;
export type AdviceCode = keyof typeof ADVICE;
