// What a judged value is called, and what it is where it lies beyond its limit: one name and one word for each subject of a check.

import type { ObstacleSubject } from "@lamplane/parameters/jigs";

/** Name; and the word after "too" where it fails, alone where it is a warning. */
export type SubjectWords = readonly [name: string, fault: string];

const IN_SHAVING = "fine shaving (indicative)";
const IN_CATCH = "catch (indicative)";

const OF_BLOCKS = {
  "shorter-top-arc": ["Shorter top arc less its drop", "short"],
  "ramp-turn": ["Turn of curved ramp", "small"],
  "room-between-tips": ["Gap between block tips", "small"],
  "mouth-opening": ["Mouth opening", "small"],
  "chamfer-left": ["Feather chamfer left after truing", "long"],
  "trim-left": ["Waste to trim at each end", "small"],
  "front-block-top": ["Front block length along top", "short"],
  "bed-block-top": ["Bed block length along top", "short"],
  "throat-narrowing": ["Throat narrows", "tight"],
  "throat-where-it-narrows": ["Throat where it narrows", "tight"],
} as const;

const OF_IRON = {
  "hump-to-pin": ["Cap iron hump to cross pin", "tight"],
  "cap-iron-to-pin": ["Cap iron to cross pin", "tight"],
  "iron-to-pin": ["Iron to cross pin", "tight"],
  "side-clearance": ["Iron side play", "tight"],
  "clearance-angle": ["Clearance angle", "small"],
  "mouth-unevenness": ["Mouth wider at one cheek", "uneven"],
  "side-clearance-at-tilt": ["Side play of tilted iron", "tight"],
  "iron-gauge-length": ["Distance between both iron readings", "short"],
  "taper-against-thickness": ["Entered thickness near top against entered taper", "the two disagree"],
  "iron-at-thin-end": ["Iron thickness at thin end", "thin"],
  "iron-out-of-top": ["Iron above top of bed", "short"],
  "bed-saw-angle": ["Saw angle for bed", "large"],
  "ramp-saw-angle": ["Saw angle for ramp", "large"],
} as const;

const OF_PIN_AND_WEDGE = {
  "wood-over-hole": ["Wood above pin hole", "thin"],
  "wood-before-hole": ["Wood ahead of pin hole, along the thrust", "thin"],
  "wood-under-hole": ["Wood below pin hole", "thin"],
  "pin-to-ramp": ["Cross pin to ramp", "tight"],
  "turning-pin-to-ramp": ["Cross pin to ramp as it turns", "tight"],
  "pin-shoulder": ["Cross pin shoulder", "small"],
  "pin-between-shoulders": ["Cross pin between shoulders", "short"],
  "tenon-in-cheek": ["Tenon in cheek", "short"],
  "tenon-through-cheek": ["Tenon length from inside of cheek", "long"],
  "wedge-below-pin": ["Wedge below cross pin", "short"],
  "wedge-above-pin": ["Wedge above cross pin", "short"],
  "wedge-tip-from-edge": ["Wedge tip from edge", "close"],
  "wedge-tip-thickness": ["Wedge tip thickness", "thin"],
  "wedge-width": ["Wedge width", "narrow"],
} as const;

const OF_STOCK = {
  cheek: ["Cheek thickness", "thin"],
  "recess-land": ["Land beside recess", "narrow"],
  "recess-pad": ["Bed below recess", "short"],
  "recess-width-over-head": ["Recess wider than screw head", "tight"],
  "recess-depth-over-head": ["Recess deeper than screw head", "shallow"],
  "recess-width-over-cutter": ["Recess wider than cutter", "narrow"],
  "bed-above-recess": ["Bed above round end of recess", "short"],
  "layers-off-core": ["Layers together, off the core width", "far"],
  "thinnest-layer": ["Thinnest layer of the core", "thin"],
  "board-over-layer": ["Planed board over thickest layer", "thin"],
  "glue-line-inside-recess": ["Glue line inside the wall of the recess", "far"],
  "recess-off-middle": ["Recess of the layers, off the middle of the core", "far"],
  "recess-end-over-corner": ["Recess deeper than its corner relief", "shallow"],
  "wood-round-layer-pegs": ["Wood round layer pegs", "thin"],
  "peg-waste": ["Waste left beside pegs", "small"],
  "billet-length": ["Billet length", "short"],
  "billet-width": ["Billet width", "narrow"],
  "billet-height": ["Billet height", "low"],
  "billet-length-on-its-side": ["Billet length, laid on its side", "short"],
  "billet-width-on-its-side": ["Billet width, laid on its side", "narrow"],
  "billet-height-on-its-side": ["Billet height, laid on its side", "low"],
} as const;

const OF_STRENGTH = {
  "self-locking-margin": ["Self-locking margin", "small"],
  "self-locking-margin-at-lowest": ["Self-locking margin, lowest friction", "small"],
  "friction-order": ["Friction between its lowest and highest", "out of order"],
  "bending-in-shaving": [`Cross pin bending strength, ${IN_SHAVING}`, "weak"],
  "bending-in-catch": [`Cross pin bending strength, ${IN_CATCH}`, "weak"],
  "tenonShear-in-shaving": [`Tenon shear strength, ${IN_SHAVING}`, "weak"],
  "tenonShear-in-catch": [`Tenon shear strength, ${IN_CATCH}`, "weak"],
  "tenonBending-in-shaving": [`Tenon bending strength, ${IN_SHAVING}`, "weak"],
  "tenonBending-in-catch": [`Tenon bending strength, ${IN_CATCH}`, "weak"],
  "tenonCrushing-in-shaving": [`Tenon bearing strength, ${IN_SHAVING}`, "weak"],
  "tenonCrushing-in-catch": [`Tenon bearing strength, ${IN_CATCH}`, "weak"],
  "cheekBearing-in-shaving": [`Cheek bearing strength, ${IN_SHAVING}`, "weak"],
  "cheekBearing-in-catch": [`Cheek bearing strength, ${IN_CATCH}`, "weak"],
  "cheekShearOut-in-shaving": [`Cheek shear strength, hole to edge, ${IN_SHAVING}`, "weak"],
  "cheekShearOut-in-catch": [`Cheek shear strength, hole to edge, ${IN_CATCH}`, "weak"],
  "pin-sag": [`Cross pin sag, ${IN_SHAVING}`, "large"],
} as const;

const OF_SEASONS = {
  "side-gap-of-year": ["Iron side play, worst of the year", "tight"],
  "pin-end-gap-of-year": ["Gap at pin shoulders, worst of the year", "tight"],
  "wedge-gap-of-year": ["Wedge side play, worst of the year", "tight"],
  "tenon-gap-of-year": ["Tenon play in its hole, worst of the year", "tight"],
  "tenon-proud-of-year": ["Tenon beyond cheek, worst of the year", "long"],
  "wedge-hold-of-year": ["Slack of untouched wedge over the year (indicative)", "loose"],
  "strength-over-wedge-of-year": ["Strength against a swollen wedge (indicative)", "weak"],
  "moisture-dampest-over-driest": ["Moisture on dampest days less driest", "the wrong way round"],
} as const;

const OF_JIGS = {
  "bush-diameter": ["Guide bush diameter", "small"],
  "template-plate": ["Template plate thickness", "thin"],
  "plate-to-fence": ["Plate between opening and fence", "narrow"],
  "plate-to-stop": ["Plate between stop and opening", "narrow"],
  "plate-to-slots": ["Plate between opening and fence slots", "narrow"],
  "guide-play": ["Drill play in printed pin guide", "large"],
  "room-over-pin": ["Room above cross pin, under spacer flange", "low"],
  "spacer-leg": ["Narrower spacer leg, beside cross pin", "narrow"],
  "spacer-flank": ["Shorter spacer flank", "short"],
  "spacer-leg-below-pin": ["Shorter spacer leg, below pin axis", "short"],
} as const satisfies Record<ObstacleSubject | "guide-play", SubjectWords>;

/** By a finding's subject. */
export const SUBJECTS = {
  ...OF_BLOCKS,
  ...OF_IRON,
  ...OF_PIN_AND_WEDGE,
  ...OF_STOCK,
  ...OF_STRENGTH,
  ...OF_SEASONS,
  ...OF_JIGS,
} as const satisfies Record<string, SubjectWords>;
export type SubjectCode = keyof typeof SUBJECTS;
