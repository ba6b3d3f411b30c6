// The iron and the cap iron on its face: what the maker already has, measured with a caliper.
import { angle, angleOrAuto, length, lengthOrAuto, requiredLength } from "../parameter.ts";
import { COMMON_PRACTICE } from "./sources.ts";

const CALIPER = "measured on the maker's own iron";

export const iron = {
  width: requiredLength({
    min: 8,
    max: 120,
    name: "iron width",
    help: "Greatest width of the iron, just above the edge or at the top.",
    source: CALIPER,
  }),
  thickness: requiredLength({
    min: 0.8,
    max: 12,
    step: 0.05,
    name: "iron thickness",
    help: "Thickness of the iron, back to face. Of a tapered iron: at the cutting edge, or where the thickness reading is taken.",
    source: CALIPER,
  }),
  thicknessFromEdge: length({
    default: 0,
    min: 0,
    max: 100,
    step: 0.5,
    name: "thickness reading from edge",
    help: "Tapered iron: from the cutting edge up to where its thickness is measured. A caliper reaches the back only above the bevel.",
    source: CALIPER,
  }),
  thicknessAtTop: lengthOrAuto({
    min: 0.8,
    max: 12,
    step: 0.05,
    auto: "what thickness and taper make it",
    name: "iron thickness near top",
    help: "Tapered iron: thickness near its top, back to face.",
    source: CALIPER,
  }),
  topFromEdge: lengthOrAuto({
    min: 10,
    max: 300,
    step: 0.5,
    auto: "the iron's length",
    name: "top reading from edge",
    help: "Tapered iron: from the cutting edge up to where its thickness near the top is measured.",
    source: CALIPER,
  }),
  taper: angleOrAuto({
    min: -5,
    max: 5,
    step: 0.05,
    auto: "from the two thicknesses and the distance between them; 0 without one near the top",
    name: "iron taper",
    help: "Taper of the iron: the angle between its back and its face. Above 0 where it is thicker at the edge than at the top.",
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
    source: COMMON_PRACTICE,
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
    source: COMMON_PRACTICE,
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
