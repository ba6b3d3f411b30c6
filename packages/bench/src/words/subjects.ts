// What a judged value is, as the first words of its sentence: one for each subject of a check.

import type { ObstacleSubject } from "@lamplane/parameters/jigs";

const IN_SHAVING = "over the load of a fine shaving (indicative)";
const IN_CATCH = "over the load of a catch (indicative)";
const BENDING = "The cross pin's strength in bending";
const TENON_SHEAR = "The tenons' strength in shear";
const TENON_BENDING = "The tenons' strength in bending at the shoulder";
const TENON_CRUSHING = "The tenons' strength in the cheeks, across their grain,";
const CHEEK_BEARING = "The cheeks' strength under the tenons";
const CHEEK_SHEAR_OUT = "The cheeks' strength in shear from hole to edge";

const OF_BLOCKS = {
  "shorter-top-arc": "What the top's shorter arc has in length over its fall",
  "ramp-turn": "The turn of the curved ramp from its wear to its exit",
  "room-between-tips": "The room between the blocks' tips on the blank's sole, feather chamfer counted,",
  "mouth-opening": "The mouth's opening once the sole is trued",
  "chamfer-left": "What is left of the feather chamfer after truing, along the bed,",
  "trim-left": "What is left to trim off each block's end once the blocks are slid together",
  "front-block-top": "The front block's length along its top",
  "bed-block-top": "The bed block's length along its top, behind bed and recess,",
  "throat-narrowing": "The throat's narrowing on its way up",
} as const;

const OF_IRON = {
  "hump-to-pin": "The room between the cap iron's hump and the cross pin as the iron is put in",
  "cap-iron-to-pin": "The room between the cap iron and the cross pin as the iron is put in",
  "iron-to-pin": "The room between the iron and the cross pin as the iron is put in",
  "side-clearance": "The core's side clearance over the iron",
  "clearance-angle": "The clearance angle under the bevel",
  "iron-gauge-length": "The distance between the two places at which the iron's thickness is measured",
  "taper-against-thickness": "What the iron's thickness near its top differs from what its taper makes it",
  "iron-at-thin-end": "The iron's thickness at its thin end",
  "iron-out-of-top": "What the iron stands out of the bed's top",
  "bed-saw-angle": "The angle from square at which the bed is sawn",
  "ramp-saw-angle": "The angle from square at which the ramp is sawn",
} as const;

const OF_PIN_AND_WEDGE = {
  "wood-over-hole": "The wood over the pin's hole",
  "wood-before-hole": "The wood before the pin's hole, in the line of the wedge's thrust,",
  "wood-under-hole": "The wood under the pin's hole",
  "pin-to-ramp": "The room between cross pin and ramp",
  "turning-pin-to-ramp": "The room to the ramp that is left as the flatted pin turns",
  "pin-shoulder": "The pin's shoulder round its tenon",
  "pin-between-shoulders": "The pin's length between its shoulders",
  "tenon-in-cheek": "The tenon's length in the cheek",
  "wedge-below-pin": "The wedge's length below its contact with the pin",
  "wedge-above-pin": "The wedge's length above its contact with the pin",
  "wedge-tip-from-edge": "The wedge's tip from the cutting edge",
  "wedge-tip-thickness": "The wedge's thickness at its tip",
  "wedge-width": "The wedge's width",
} as const;

const OF_STOCK = {
  cheek: "The finished cheek",
  "recess-land": "The land on each side of the recess",
  "recess-pad": "The bed between the bevel's heel and the recess",
  "recess-width-over-head": "The recess's width over the screw's head",
  "recess-depth-over-head": "The recess's depth over the screw's head",
  "recess-width-over-cutter": "The recess's width over the cutter",
  "bed-above-recess": "The bed above the recess's rounded end",
  "peg-waste": "The waste at the blocks' ends over a peg and the wood round it",
  "billet-length": "The billet's length",
  "billet-width": "The billet's width",
  "billet-height": "The billet's height",
  "billet-length-on-its-side": "The billet's length, laid on its side,",
  "billet-width-on-its-side": "The billet's width, laid on its side,",
  "billet-height-on-its-side": "The billet's height, laid on its side,",
} as const;

const OF_STRENGTH = {
  "self-locking-margin": "The wedge's self-locking margin under the cross pin",
  "self-locking-margin-at-lowest": "The wedge's self-locking margin under the cross pin, at the lowest friction,",
  "friction-order": "The room between the frictions and their lowest and highest, at its least,",
  "bending-in-shaving": `${BENDING} ${IN_SHAVING}`,
  "bending-in-catch": `${BENDING} ${IN_CATCH}`,
  "tenonShear-in-shaving": `${TENON_SHEAR} ${IN_SHAVING}`,
  "tenonShear-in-catch": `${TENON_SHEAR} ${IN_CATCH}`,
  "tenonBending-in-shaving": `${TENON_BENDING} ${IN_SHAVING}`,
  "tenonBending-in-catch": `${TENON_BENDING} ${IN_CATCH}`,
  "tenonCrushing-in-shaving": `${TENON_CRUSHING} ${IN_SHAVING}`,
  "tenonCrushing-in-catch": `${TENON_CRUSHING} ${IN_CATCH}`,
  "cheekBearing-in-shaving": `${CHEEK_BEARING} ${IN_SHAVING}`,
  "cheekBearing-in-catch": `${CHEEK_BEARING} ${IN_CATCH}`,
  "cheekShearOut-in-shaving": `${CHEEK_SHEAR_OUT} ${IN_SHAVING}`,
  "cheekShearOut-in-catch": `${CHEEK_SHEAR_OUT} ${IN_CATCH}`,
  "pin-sag": "The cross pin's sag in a fine shaving (indicative)",
} as const;

const OF_SEASONS = {
  "side-gap-of-year": "The core's room over the iron at the worst of the year",
  "pin-end-gap-of-year": "The gap at each shoulder of the cross pin at the worst of the year",
  "wedge-gap-of-year": "The core's room over the wedge at the worst of the year",
  "tenon-gap-of-year": "The tenon's room in its hole at the worst of the year",
  "tenon-proud-of-year": "What the tenons stand out of the cheeks at the worst of the year",
  "strength-over-wedge-of-year":
    "The strength of pin and cheeks over the load of a wedge left alone at its tightest of the year (indicative)",
  "moisture-dampest-over-driest": "The wood's moisture on the dampest days over that on the driest",
} as const;

const OF_JIGS = {
  "bush-diameter": "The guide bush's diameter",
  "template-plate": "The plate that cutter and recess leave",
  "plate-to-fence": "The plate between opening and fence",
  "plate-to-stop": "The plate between stop and opening",
  "plate-to-slots": "The plate between the opening and the fences' slots",
  "guide-play": "How far the printed pin guide lets the drill off its place",
  "room-over-pin": "The room over the cross pin, under the spacer's flange,",
  "spacer-leg": "The spacer's narrower leg beside the cross pin",
  "spacer-flank": "The spacer's shorter flank",
  "spacer-leg-below-pin": "The spacer's shorter leg below the cross pin's axis",
} as const satisfies Record<ObstacleSubject | "guide-play", string>;

/** By a finding's subject. */
export const SUBJECTS = {
  ...OF_BLOCKS,
  ...OF_IRON,
  ...OF_PIN_AND_WEDGE,
  ...OF_STOCK,
  ...OF_STRENGTH,
  ...OF_SEASONS,
  ...OF_JIGS,
} as const;
export type SubjectCode = keyof typeof SUBJECTS;
