// What this maker's hands and shop can hold: each ± is two standard deviations of a normal error; 0 where there is none.
import { angle, choice, length } from "../parameter.ts";

const SHOP_PRACTICE = "common practice, no published source; the maker's own trial pieces tell better";

const OWN_ASSUMPTION = "our assumption, no source; the maker's own trial pieces tell better";

/** Whether a parameter's default is an assumption of ours, which nothing outside bears out. */
export const isAssumption = ({ source }: { readonly source: string }): boolean => source === OWN_ASSUMPTION;

const heldLength = (value: number, max: number, help: string, source = SHOP_PRACTICE) =>
  length({
    default: value,
    min: 0,
    max,
    step: 0.01,
    help: `${help}, ±, two standard deviations.`,
    source,
  });
const heldAngle = (value: number, help: string) =>
  angle({
    default: value,
    min: 0,
    max: 5,
    step: 0.05,
    help: `${help}, ±, two standard deviations.`,
    source: SHOP_PRACTICE,
  });

export const hand = {
  placing: choice({
    choices: ["contact", "marks"],
    default: "contact",
    help: "How the front block finds its place at glue-up: slid back until it touches the iron, its edge clamped over the blank's sole (contact), or set to its mark (marks).",
    source: "common practice, no published source",
  }),
  caliper: heldLength(0.02, 1, "Reading of the iron's and the cap iron's thickness"),
  sawAngle: heldAngle(0.25, "Bed and ramp angle as sawn and trued"),
  angleReading: heldAngle(0.1, "Reading of an angle once it is cut"),
  rampForm: heldLength(0.3, 5, "Curve of a curved ramp, square to it, as shaped to its template"),
  pinHole: heldLength(0.15, 5, "Place of the cross pin's hole, along the sole and over it"),
  pinDepth: heldLength(0.1, 2, "Width and depth of the cross pin as made"),
  wedgeTaper: heldAngle(0.1, "Wedge angle as planed"),
  wedgeThickness: heldLength(0.05, 2, "Thickness of the wedge at its tip as planed"),
  placement: heldLength(0.2, 5, "How near to its mark a block is set at glue-up"),
  edgeHeight: heldLength(
    0.05,
    2,
    "Height of the edge over the blank's sole when the front block is slid back to touch it",
  ),
  creep: heldLength(
    0.1,
    5,
    "How far the blocks creep together or apart on their pegs while glued and clamped",
    OWN_ASSUMPTION,
  ),
  frontSkew: heldLength(
    0.1,
    5,
    "How far out of square the front block is glued, along the sole over the core's width",
    OWN_ASSUMPTION,
  ),
  bedSkew: heldLength(
    0.1,
    5,
    "How far out of square the bed is trued, along the sole over the core's width",
    OWN_ASSUMPTION,
  ),
  planing: heldLength(0.05, 2, "Wood planed off the sole against what was to come off"),
  mouthReading: heldLength(0.03, 1, "Reading of the mouth opening with feeler leaves"),
  feel: length({
    default: 0.005,
    min: 0,
    max: 0.1,
    step: 0.001,
    help: "Feel of a feeler leaf under a straightedge: how far off a gap may be judged to let it in or not, ±, two standard deviations.",
    source: "common practice, no published source",
  }),
  mouthWithin: length({
    default: 0.1,
    min: 0.01,
    max: 5,
    step: 0.01,
    help: "How near to its opening the maker wants the mouth, ±; asks how well each step must then be done.",
    source: "maker's choice",
  }),
};
