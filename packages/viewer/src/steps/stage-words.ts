// What each stage is called, what is done to come to it, and the figures that it needs, in the order of use.
import type { StageName } from "../protocol.ts";

export const STAGE_WORDS: Readonly<Record<StageName, { title: string; words: string }>> = {
  billet: {
    title: "billet",
    words:
      "Rip a cheek off each side of the billet; joint the fresh faces. The pencilled slopes are where the core will be cut.",
  },
  core: {
    title: "core cut",
    words:
      "Cut ramp and bed on the core, each kerf on the waste side of its mark. Follow the machine's manual; hold short stock in a fixture, never by hand.",
  },
  bed: {
    title: "bed trued",
    words:
      "True the bed flat or slightly hollow, take its feather off, rout the recess for the cap iron's screw, bore the cheeks for the pin.",
  },
  glued: {
    title: "glued",
    words: "Rehearse dry, wax throat and pin, then glue the cheeks on with the blocks slid together to the gap given.",
  },
  trued: {
    title: "trued",
    words:
      "Trim the ends. True the sole with iron and wedge at working tension, the edge drawn back; stop short of the mouth wanted, set, read, repeat.",
  },
  shaped: {
    title: "shaped",
    words: "Shape the top and ease the edges that the hand meets.",
  },
};

export const FIGURE_KEYS_OF: Readonly<Record<StageName, readonly string[]>> = {
  billet: ["blankLength", "blankHeight", "billetWidth", "billetWidthByRule", "roughCore", "roughCheek"],
  core: ["coreWidth", "sawRamp", "rampMark", "sawBed", "bedMark"],
  bed: ["recessFromBedTip", "recessWidth", "recessDepth", "recessLand", "recessPad", "pinX", "pinY"],
  glued: ["glueGap", "edgeHeightAtContact", "setInToe", "setInHeel", "bodyWidth"],
  trued: ["mouthGrowth", "pinToRamp", "wedgeAtPin", "wedgeBelowPin", "wedgeAbovePin"],
  shaped: ["mouthX", "throatAtTop", "clearanceAngle", "woodOverPinHole", "shearOut"],
};
