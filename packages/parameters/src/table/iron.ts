// The iron and the cap iron on its face: what the maker already has, measured with a caliper.
import { angle, length, requiredLength } from "../parameter.ts";

const CALIPER = "measured on the maker's own iron";

export const iron = {
  width: requiredLength({
    min: 8,
    max: 120,
    name: "iron width",
    help: "Width of the iron at the cutting edge.",
    source: CALIPER,
  }),
  thickness: requiredLength({
    min: 0.8,
    max: 12,
    step: 0.05,
    name: "iron thickness",
    help: "Thickness of the iron where it lies on the bed.",
    source: CALIPER,
  }),
  length: length({
    default: 150,
    min: 40,
    max: 300,
    name: "iron length",
    help: "Length of the iron, edge to top.",
    source: CALIPER,
  }),
  bevel: angle({
    default: 28,
    min: 15,
    max: 45,
    name: "bevel angle",
    help: "Angle of the bevel to the face of the iron. The iron lies bevel down.",
    source: "common practice, no published source",
  }),
};

export const capIron = {
  thickness: length({
    default: 3.2,
    min: 0,
    max: 12,
    name: "cap iron thickness",
    help: "Thickness of the cap iron where the wedge bears on it. 0 for a single iron, which needs no recess.",
    source: CALIPER,
  }),
  hump: length({
    default: 1,
    min: 0,
    max: 10,
    name: "cap iron hump",
    help: "Height of the hump near the edge, above the cap iron's own thickness.",
    source: CALIPER,
  }),
  humpEnd: length({
    default: 18,
    min: 2,
    max: 60,
    name: "end of hump",
    help: "From the edge of the cap iron to the end of the hump.",
    source: CALIPER,
  }),
  setback: length({
    default: 0.4,
    min: 0,
    max: 10,
    step: 0.05,
    name: "cap iron setback",
    help: "From the cutting edge back to the edge of the cap iron.",
    source: "common practice, no published source",
  }),
  screwHead: {
    diameter: length({
      default: 16,
      min: 0,
      max: 40,
      name: "screw head diameter",
      help: "Diameter of the head of the cap iron screw, which stands out of the back of the iron. 0 for none.",
      source: CALIPER,
    }),
    height: length({
      default: 3.4,
      min: 0,
      max: 12,
      name: "screw head height",
      help: "How far the screw head stands out of the back of the iron.",
      source: CALIPER,
    }),
    fromEdge: length({
      default: 48,
      min: 5,
      max: 200,
      step: 0.5,
      name: "screw head from edge",
      help: "From the cutting edge up the iron to the middle of the screw head.",
      source: CALIPER,
    }),
  },
};
