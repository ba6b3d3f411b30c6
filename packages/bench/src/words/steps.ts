// What each step of the build is called and what to do at it; what an error of it is called, and a result that it decides.
import type { Step } from "@lamplane/parameters/table";
import type { ErrorKey } from "../error-keys.ts";

export interface StepWords {
  readonly title: string;
  /** What is off where the step went wrong, in a list of errors; absent where no error is made. */
  readonly outcome?: string;
  /** What to do. */
  readonly task: string;
  /** Its title where this plane has no such work. */
  readonly notNeededTitle?: string;
  /** What to do instead where this plane has no such work. */
  readonly notNeeded?: string;
  /** The same where the core is glued up from layers. */
  readonly inLayers?: { readonly title: string; readonly task: string; readonly taskWithoutRecess?: string };
}

export const STEP_WORDS: Readonly<Record<Step, StepWords>> = {
  iron: {
    title: "Measure the iron",
    outcome: "iron measured",
    task: "Measure the iron with a caliper. Every later cut follows from its thickness and width.",
  },
  core: {
    title: "Saw and mill core and cheeks",
    task: "Saw the billet into cheek, core and cheek. Mill each to width, sides parallel.",
    inLayers: {
      title: "Rip and plane layers and cheeks",
      task: "Rip a strip for each layer and each cheek. Plane each to its thickness; the stack of layers is the core.",
    },
  },
  cuts: {
    title: "Cut ramp and bed",
    outcome: "ramp cut",
    task: "Mark the core and set the saw. Cut the ramp, then the bed, each kerf in the waste.",
    inLayers: {
      title: "Cut the layers and glue the blocks",
      task: "Drill the peg holes of every layer. Cut its ramp and bed, and the recess of the middle ones. Glue the layers of each block on their pegs.",
      taskWithoutRecess:
        "Drill the peg holes of every layer. Cut its ramp and bed. Glue the layers of each block on their pegs.",
    },
  },
  bed: {
    title: "True the bed",
    outcome: "bed cut and trued",
    task: "True the bed flat or very slightly hollow, never humped. Measure its angle again.",
  },
  recess: {
    title: "Rout the recess",
    task: "Rout the recess for the cap iron screw into the bed, open at the top.",
    notNeededTitle: "No recess to rout",
    notNeeded: "This iron needs no recess in the bed. Rout nothing; go on to the pin hole.",
    inLayers: {
      title: "Clean out the recess",
      task: "The middle layers make the recess. Pare the glue off its floor and sides, and try the screw head in it.",
    },
  },
  "pin-hole": {
    title: "Bore the pin hole",
    outcome: "pin hole",
    task: "Bore the pin hole through both cheeks together, square to their inside faces.",
  },
  wedge: {
    title: "Make wedge and cross pin",
    outcome: "wedge and pin",
    task: "Turn or plane the cross pin. Cut the wedge with the grain along its length.",
  },
  "dry-fit": {
    title: "Rehearse the glue-up dry",
    task: "Put everything together dry. Find the front block's place by the iron, bore for the pegs, check that nothing binds.",
  },
  "glue-up": {
    title: "Glue up",
    outcome: "glue-up",
    task: "Take the iron out, wax ramp, cheeks and pin, spread the glue, and clamp cheeks and blocks where the dry fit has set them.",
  },
  sole: {
    title: "True the sole",
    outcome: "sole trued",
    task: "Let the glued blank rest. Take most of the wood off its sole with the iron out. Then true it with iron and wedge at working tension, the edge drawn back above it. Stop short of the planned sole: the last of the wood is for the mouth.",
  },
  mouth: {
    title: "Open the mouth",
    task: "Set the edge to the sole and read the mouth. Take off what it needs, and read again.",
  },
  shaping: {
    title: "Trim and shape",
    task: "Trim the ends, shape the top and ease the edges.",
  },
};

export const ERROR_LABELS: Readonly<Record<ErrorKey, string>> = {
  ironThickness: "iron thickness",
  ironTopThickness: "iron thickness near top",
  capIronThickness: "cap iron thickness",
  bedAngle: "bed angle",
  rampAngle: "ramp angle",
  rampForm: "ramp curve",
  pinHoleAlong: "pin hole along the sole",
  pinHoleUp: "pin hole above the sole",
  pinDepth: "cross pin depth",
  wedgeTaper: "wedge taper",
  wedgeThickness: "wedge thickness",
  bedPlace: "bed block position",
  frontPlace: "front block position",
  edgeHeight: "edge height at contact",
  creep: "creep under clamps",
  bedSkew: "bed out of square",
  frontSkew: "front block out of square",
  soleTaken: "wood planed off sole",
};

/** The reading that ends a second try at the mouth. */
export const MOUTH_READING_LABEL = "reading of the mouth";

export const RESULT_LABELS = {
  mouthOpening: "mouth opening",
  mouthUneven: "mouth, left less right",
  glueGap: "gap with feather uncut",
  pinToRamp: "cross pin to ramp",
  wedgeAtPin: "wedge thickness at pin",
  wedgeTipFromEdge: "wedge tip from edge",
} as const;
