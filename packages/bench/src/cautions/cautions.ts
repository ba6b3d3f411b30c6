// What can hurt at the bench, a caution for each kind of work. None is a whole set of rules: manual, local rules and training come first.

export interface CautionRow {
  readonly text: string;
  readonly source: string;
}

/** Said wherever a caution stands. */
export const DEFER =
  "These cautions are no training. Each machine's manual, your local rules and trained practice come first; where they differ from this sheet, they hold.";

const MEMORY = "from memory";

/** By the kind of work. What a source is cited for was read there; packages/bench/cautions.md says what was not. */
export const CAUTIONS = {
  ripping: {
    text: "Ripping: guard, riving knife and push stick in place, fence true to the blade, and nobody in the line in which wood can be thrown back. No gloves, loose sleeves or rings at a machine. By hand or at a bandsaw it is slower and kinder.",
    source: `29 CFR 1910.213(c), hand-fed ripsaws (from memory); HSE information sheet 16 (Revision 2), circular saw benches, which names missing guards and push sticks as the main causes of accidents; ${MEMORY} for the rest`,
  },
  jointing: {
    text: "A jointer or thicknesser has a shortest length and a least thickness: read them in its manual. Shorter or thinner pieces are planed by hand, or stuck to a longer carrier board.",
    source: `29 CFR 1910.213(j)(3), a guard over a hand-fed jointer's head; ${MEMORY} for the rest`,
  },
  shortAtSaw: {
    text: "The core is short for a mitre saw: clamp it to fence and table, never hold it by hand, and keep both hands out of the saw's marked no-hands zone. Support the waste so that it cannot tip into the blade; keep the head down until the blade stands still. Where it cannot be clamped so, saw by hand.",
    source: `HSE information sheet 36 (Revision 1), manually operated cross-cut sawing machines, on guards and training; ${MEMORY} for the rest`,
  },
  tiltedSaw: {
    text: "A tilted or swung blade passes where square cuts have taught the hand to be: with the saw unplugged, bring it down through its whole path and see where it comes out before the first cut. A hand in line with it is in it.",
    source: `HSE information sheet 36 (Revision 1), on guards and training; ${MEMORY} for the rest`,
  },
  disc: {
    text: "A small block stood on end at a disc or belt is snatched and the fingers follow: keep to the side that runs down to the table, the block against a fence or fixed to a longer carrier, the gap at the table as small as it goes. Short end-grain pieces are planed in a cradle instead.",
    source: `29 CFR 1910.213(p), sanding machines; both ${MEMORY}`,
  },
  router: {
    text: "Rout against the turning of the cutter, template and block clamped, both hands on the router, in several shallow passes. Fed the other way (a climb cut) the cutter pulls itself along and tears the router out of hand. Unplug it before you change or set the cutter.",
    source:
      "makers' manuals agree that a climb cut increases the chance of losing control; common practice, no published source, for the rest",
  },
  drilling: {
    text: "Clamp the cheeks and a backing board to the drill's table; a bit that catches spins what is only held. Hair, sleeves and gloves away from the spindle.",
    source: MEMORY,
  },
  smallParts: {
    text: "Wedge and pin are too small to be held by hand at a machine. Hold the wedge in the sled or in the vise; shape the pin on the end of a longer stick and cut it off last; keep fingers behind the blade.",
    source: MEMORY,
  },
  handTools: {
    text: "Chisel, knife and plane iron: work fixed, both hands behind the edge, cut away from the body. Sharp tools slip less than dull ones.",
    source: MEMORY,
  },
  dust: {
    text: "Wood dust harms the lungs, and hardwood dust, beech and oak above all, causes cancer of the nose. Draw it off at the machine, wear a mask made for fine dust when you sand, and do not sweep or blow it about.",
    source:
      "IARC Monographs 100C (2012), wood dust in group 1 (from memory); European guidance on hardwood dust says the same",
  },
  sharpIron: {
    text: "The iron is as sharp as a razor and heavy: carry it edge covered, handle it by its sides, never feel its edge along, and keep fingers out of the mouth while the wedge is driven.",
    source: MEMORY,
  },
  edgeBack: {
    text: "Whenever the sole is worked or lies toward you, the edge is drawn back above it. Look before every pass: an edge that stands out ruins the sole and the hand.",
    source: MEMORY,
  },
  glue: {
    text: "Read the glue's data sheet: open time, clamping time, least temperature, gloves and fresh air. Heavy clamps fall: stand them on the bench, not over feet.",
    source: MEMORY,
  },
  rags: {
    text: "Rags wet with a drying oil heat up by themselves and can set a shop on fire: spread them flat in the open until they are hard, or drown them in a closed metal tin of water. Never leave them in a heap.",
    source: `published fire safety advice on oily rags (National Fire Protection Association); ${MEMORY} for the wording`,
  },
} as const satisfies Record<string, CautionRow>;

export type CautionKey = keyof typeof CAUTIONS;
