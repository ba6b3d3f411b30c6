// What can hurt at the bench, a caution for each kind of work. None is a whole set of rules: manual, local rules and training come first.

export interface CautionRow {
  readonly text: string;
  readonly source: string;
}

/** Beside every list of cautions. */
export const DEFER =
  "These cautions are no training. Each machine's manual, your local rules and trained practice come first; where they differ from this sheet, follow them.";

const MEMORY = "from memory";

/** By the kind of work. What a source is cited for was read there; packages/bench/cautions.md says what was not. */
export const CAUTIONS = {
  ripping: {
    text: "Rip with guard, riving knife and push stick in place and the fence parallel to the blade. Keep everyone out of the line of kickback. Wear no gloves, loose sleeves or rings at a machine. A hand saw or a bandsaw is slower and safer.",
    source: `29 CFR 1910.213(c), hand-fed ripsaws (from memory); HSE information sheet 16 (Revision 2), circular saw benches, which names missing guards and push sticks as the main causes of accidents; ${MEMORY} for the rest`,
  },
  jointing: {
    text: "A jointer or thicknesser has a shortest length and a least thickness: read them in its manual. Plane shorter or thinner pieces by hand, or fix them to a longer carrier board.",
    source: `29 CFR 1910.213(j)(3), a guard over a hand-fed jointer's head; ${MEMORY} for the rest`,
  },
  shortAtSaw: {
    text: "The core is short for a mitre saw. Clamp it to fence and table, never hold it by hand, and keep both hands out of the saw's no-hands zone. Support the waste so that it cannot tip into the blade. Keep the head down until the blade stops. If you cannot clamp it like this, saw by hand.",
    source: `HSE information sheet 36 (Revision 1), manually operated cross-cut sawing machines, on guards and training; ${MEMORY} for the rest`,
  },
  tiltedSaw: {
    text: "A tilted or swung blade passes where your hand is safe in a square cut. With the saw unplugged, bring the blade down through its whole path and see where it comes out before the first cut. Keep hands out of the blade's path.",
    source: `HSE information sheet 36 (Revision 1), on guards and training; ${MEMORY} for the rest`,
  },
  disc: {
    text: "A disc or belt can snatch a small block stood on end, and the fingers with it. Work on the side that runs down to the table, the block against a fence or fixed to a longer carrier, the gap at the table as small as possible. Better: plane short end-grain pieces in a cradle.",
    source: `29 CFR 1910.213(p), sanding machines; both ${MEMORY}`,
  },
  router: {
    text: "Rout against the rotation of the cutter, template and block clamped, both hands on the router, in several shallow passes. Fed the other way (a climb cut) the cutter pulls itself along and tears the router out of your hands. Unplug it before you change or set the cutter.",
    source:
      "makers' manuals agree that a climb cut increases the chance of losing control; common practice, no published source, for the rest",
  },
  drilling: {
    text: "Clamp the cheeks and a backing board to the drill table: a bit that catches spins work held by hand. Keep hair, sleeves and gloves away from the spindle.",
    source: MEMORY,
  },
  smallParts: {
    text: "Wedge and pin are too small to hold by hand at a machine. Hold the wedge in the sled or in the vise. Shape the pin on the end of a longer stick and cut it off last. Keep fingers behind the blade.",
    source: MEMORY,
  },
  handTools: {
    text: "Chisel, knife and plane iron: fix the work, keep both hands behind the edge, cut away from your body. Sharp tools slip less than dull ones.",
    source: MEMORY,
  },
  dust: {
    text: "Wood dust harms the lungs. Hardwood dust, beech and oak above all, causes cancer of the nose. Extract it at the machine, wear a fine-dust mask when you sand, and do not sweep or blow it about.",
    source:
      "IARC Monographs 100C (2012), wood dust in group 1 (from memory); European guidance on hardwood dust says the same",
  },
  sharpIron: {
    text: "The iron is heavy and razor sharp. Carry it with its edge covered, hold it by its sides, never run a finger along its edge, and keep fingers out of the mouth while you drive the wedge.",
    source: MEMORY,
  },
  edgeBack: {
    text: "Draw the edge back above the sole whenever you work the sole or turn it toward you. Look before every pass: an edge that stands out cuts sole and hand.",
    source: MEMORY,
  },
  glue: {
    text: "Read the data sheet of the glue: open time, clamping time, lowest temperature, gloves, ventilation. Heavy clamps fall: stand them on the bench, not above your feet.",
    source: MEMORY,
  },
  rags: {
    text: "Rags wet with a drying oil heat up by themselves and can set a shop on fire. Spread them flat in the open until they are hard, or put them under water in a closed metal tin. Never leave them in a heap.",
    source: `published fire safety advice on oily rags (National Fire Protection Association); ${MEMORY} for the wording`,
  },
} as const satisfies Record<string, CautionRow>;

export type CautionKey = keyof typeof CAUTIONS;
