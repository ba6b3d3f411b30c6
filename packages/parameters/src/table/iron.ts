// The iron and the cap iron on its face: what the maker already has, measured with a caliper.
import { angle, angleOrAuto, length, lengthOrAuto, requiredLength } from "../parameter.ts";

const CALIPER = "measured on the maker's own iron";

export const iron = {
  width: requiredLength({ min: 8, max: 120, help: "Width of the iron at its cutting edge.", source: CALIPER }),
  thickness: requiredLength({
    min: 0.8,
    max: 12,
    step: 0.05,
    help: "Thickness of the iron, back to face; of a tapered iron, at its cutting edge or where `iron.thicknessFromEdge` says.",
    source: CALIPER,
  }),
  thicknessFromEdge: length({
    default: 0,
    min: 0,
    max: 100,
    step: 0.5,
    help: "Tapered iron: from the cutting edge up to where its thickness is measured; a caliper reaches the back above the bevel only.",
    source: CALIPER,
  }),
  thicknessAtTop: lengthOrAuto({
    min: 0.8,
    max: 12,
    step: 0.05,
    auto: "what thickness and taper make it",
    help: "Tapered iron: thickness near its top, back to face.",
    source: CALIPER,
  }),
  topFromEdge: lengthOrAuto({
    min: 10,
    max: 300,
    step: 0.5,
    auto: "the iron's length",
    help: "Tapered iron: from the cutting edge up to where its thickness near the top is measured.",
    source: CALIPER,
  }),
  taper: angleOrAuto({
    min: -5,
    max: 5,
    step: 0.05,
    auto: "from the two thicknesses and the distance between them; 0 without one near the top",
    help: "Taper of the iron, the angle between its back and its face: above 0 where it is thicker at the edge than at the top, below 0 where it is thinner.",
    source: CALIPER,
  }),
  length: length({ default: 150, min: 40, max: 300, help: "Length of the iron, edge to top.", source: CALIPER }),
  bevel: angle({
    default: 28,
    min: 15,
    max: 45,
    help: "Angle of the bevel, from the face of the iron. The iron lies bevel down.",
    source: "common practice, no published source",
  }),
};

export const capIron = {
  thickness: length({
    default: 3.2,
    min: 0,
    max: 12,
    help: "Thickness of the cap iron where the wedge bears on it; 0 for a single iron, which needs no recess.",
    source: CALIPER,
  }),
  hump: length({
    default: 1,
    min: 0,
    max: 10,
    help: "How far the cap iron's hump near the edge stands over its own thickness.",
    source: CALIPER,
  }),
  humpEnd: length({
    default: 18,
    min: 2,
    max: 60,
    help: "From the cap iron's working edge to where the hump has fallen to the cap iron's thickness.",
    source: CALIPER,
  }),
  setback: length({
    default: 0.4,
    min: 0,
    max: 10,
    step: 0.05,
    help: "From the cutting edge back to the cap iron's working edge.",
    source: "common practice, no published source",
  }),
  screwHead: {
    diameter: length({
      default: 16,
      min: 0,
      max: 40,
      help: "Diameter of the cap iron screw's head, which stands out behind the iron; 0 for none.",
      source: CALIPER,
    }),
    height: length({
      default: 3.4,
      min: 0,
      max: 12,
      help: "How far the screw's head stands out of the iron's back.",
      source: CALIPER,
    }),
    fromEdge: length({
      default: 48,
      min: 5,
      max: 200,
      step: 0.5,
      help: "From the cutting edge up the iron to the middle of the screw's head.",
      source: CALIPER,
    }),
  },
};
