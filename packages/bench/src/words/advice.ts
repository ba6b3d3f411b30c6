// What to do about a finding, as a sentence: one for each advice code.

import type { ObstacleAdvice } from "@lamplane/parameters/jigs";
import { sentence } from "@lamplane/parameters/words";

const OF_BLOCKS = {
  "keep-ends-below-crown": "Keep toe and heel below the crown, and each drop shorter than its arc.",
  "flatten-ramp-exit": "Make the ramp flatter at its exit than at its wear.",
  "raise-feather-chamfer": "Cut the feather chamfer higher, or leave less wood under the sole.",
  "read-again-or-plane-ramp": "The front block stands too far back. Measure again, or plane its ramp.",
  "keep-chamfer-within-allowance":
    "Cut the chamfer no higher than the sole allowance, so that wood supports the bevel's heel.",
  "lengthen-blank": "Start with a longer blank.",
  "set-mouth-back-or-lengthen-plane": "Move the mouth back, or make the plane longer.",
  "lengthen-plane-or-set-mouth-forward": "Make the plane longer, or move the mouth forward.",
  "lean-ramp-or-raise-wedge-and-pin": "Lean the ramp further forward, or raise the wedge tip and the pin.",
} as const;

const OF_IRON = {
  "thicken-wedge-tip": "Make the wedge tip thicker.",
  "widen-core": "Make the core wider: the iron needs room to be squared, and the core shrinks.",
  "grind-lower-or-bed-steeper": "Grind a lower bevel, or bed the iron steeper.",
  "square-blocks-or-plane-ramp":
    "Truing the sole does not even out a crooked mouth. True the bed square and glue the front block square; or, with the edge even, plane wood off the foot of the ramp at the narrow side.",
  "true-bed-square-or-widen-core":
    "The cheeks stop the iron before its edge is even with the sole. True the bed square across, or plan more side clearance.",
  "measure-iron-further-apart":
    "Measure the iron just above its bevel and near its top. Enter how far from the edge each place is.",
  "enter-taper-once": "Enter the taper or the thickness near the top, not both.",
  "measure-taper-again": "An iron does not taper to nothing. Measure it again at both places.",
  "lower-plane-for-tapping": "Make the plane lower: you cannot tap an iron that ends inside the body.",
  "saw-otherwise": "The saw does not swing that far. Use a hand saw, a bevelled fence or another angle.",
} as const;

const OF_PIN_AND_WEDGE = {
  "lower-pin-or-raise-plane": "Lower the pin, or make the plane higher.",
  "raise-pin": "Raise the pin.",
  "make-room-for-fingers": "Fingers must reach a jammed shaving. Lean the ramp further forward, or raise the pin.",
  "let-pin-turn": "The pin must turn to seat on the wedge.",
  "thin-tenon-or-thicken-pin": "Make the tenon thinner, or the pin thicker.",
  "lessen-end-gaps": "Leave smaller gaps at the shoulders of the cross pin.",
  "lengthen-tenons": "Make the tenons longer.",
  "shorten-standing-tenon": "The tenon stands out of the cheek. Shorten it.",
  "lower-wedge-tip-or-raise-pin": "Bring the wedge tip nearer the edge, or raise the pin.",
  "lengthen-wedge": "Make the wedge longer.",
  "keep-wedge-off-hump": "The wedge must lie on the flat of the cap iron, not on its hump.",
  "end-wedge-higher-or-bore-anew":
    "The pin hole leaves no room for the wedge. End the wedge further from the edge, or bore a new hole.",
  "widen-wedge": "A narrow wedge holds the iron in its middle only.",
} as const;

const OF_STOCK = {
  "thicken-cheek": "Make the cheeks thicker: the pin bears in them.",
  "narrow-recess": "The iron rests on these lands. Make the recess narrower.",
  "lessen-head-travel": "The iron needs support near its edge. Allow the screw head less travel.",
  "let-head-in": "Make the recess wider: the screw head must go in.",
  "keep-head-off-floor": "The screw head must clear the floor of the recess.",
  "take-smaller-cutter": "Use a smaller cutter.",
  "omit-recess-or-raise-plane":
    "The screw head lies above the bed and needs no recess. Set its height to 0, or make the plane higher.",
  "match-layers-to-core":
    "The layers together must be as wide as the core. Change their thicknesses, or the side play of the iron.",
  "thicken-layers": "A thinner layer bends under the plane and in the clamps. Use fewer layers, or thicker boards.",
  "thin-layers-or-thicken-board": "Each face of a board loses a pass. Plan thinner layers, or use thicker boards.",
  "match-layer-to-recess": "The middle layers make the recess. Make them as wide as it is, or the recess narrower.",
  "balance-layers": "Plan the same layers left and right of the recess.",
  "take-smaller-corner-cutter": "Use a smaller drill or cutter for the corner of the recess.",
  "thin-layer-pegs": "Use thinner pegs.",
  "thin-pegs-or-lengthen-blank": "Use thinner pegs, a longer blank or no pegs.",
  "change-billet-or-plane": "Take a larger billet, or plan a smaller plane.",
} as const;

const OF_STRENGTH = {
  "lessen-wedge-angle-against-slip": "The iron may pull the wedge loose. Use a smaller wedge angle.",
  "lessen-wedge-angle-to-lock":
    "The cross pin cannot hold the wedge against the iron's pull. Use a smaller wedge angle.",
  "order-frictions": "Enter each friction between its lowest and its highest.",
  "enlarge-bearing": "Use thicker tenons, or a thicker cheek.",
  "strengthen-pin": "Use a thicker pin, or a stronger wood.",
  "strengthen-tenons": "Use thicker tenons, or a stronger wood for the pin.",
  "lower-pin-or-thicken-cheeks": "Lower the pin, or make the cheeks thicker.",
  "stiffen-pin": "A pin that sags presses the wedge at its edges only. Use a thicker pin, or a stiffer wood.",
} as const;

const OF_SEASONS = {
  "plan-more-side-clearance": "The cheeks would bind on the iron, or split on it. Plan more side clearance.",
  "plan-more-end-gap": "The core shrinks; the pin, with its grain across, does not. Plan a larger gap at its ends.",
  "narrow-wedge": "The wedge would bind between the cheeks. Make it narrower.",
  "bore-larger-holes": "The pin must turn to seat on the wedge. Bore larger holes.",
  "shorten-tenons-for-dry-days": "The body shrinks and the pin does not. Shorten the tenons.",
  "tap-wedge-in-on-dry-days": "Tap the wedge in again in the dry season, and back it out a little before the damp one.",
  "ease-wedge-before-damp-days": "Ease the wedge before the damp season, or choose woods that move less.",
  "exchange-seasons": "Exchange the driest and the dampest days.",
} as const;

const OF_JIGS = {
  "take-smaller-bush": "Use a smaller bush, or a bearing (0).",
  "let-cutter-turn-in-bush":
    "The cutter must turn inside its bush. Use a larger bush, a smaller cutter or a bearing (0).",
  "take-longer-cutter": "Use a longer cutter.",
  "fix-fences": "Use fixed fences.",
  "open-guide-holes-by-drill": "Print its holes tighter, and open them with the drill itself.",
} as const satisfies Record<Exclude<ObstacleAdvice, "set-blocks-by-iron"> | "open-guide-holes-by-drill", string>;

/** By a finding's advice. */
export const ADVICE = {
  ...OF_BLOCKS,
  ...OF_IRON,
  ...OF_PIN_AND_WEDGE,
  ...OF_STOCK,
  ...OF_STRENGTH,
  ...OF_SEASONS,
  ...OF_JIGS,
  "cut-from-sheet-or-print-elsewhere": sentence(
    ({ jig }: { jig: string }) => `Cut it from sheet by jigs/${jig}.dxf, or have it printed on a larger printer.`,
    { jig: "bed-gauge" },
  ),
  "print-elsewhere": "Have it printed on a larger printer.",
  "set-blocks-by-iron": sentence(
    ({ height }: { height: string }) =>
      `Set the blocks by the iron: edge ${height} above the sole of the blank, front block slid back until it touches.`,
    { height: "2.9 mm" },
  ),
} as const;
export type AdviceCode = keyof typeof ADVICE;
