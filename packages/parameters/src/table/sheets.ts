// A sheet that a router or laser cuts several flat things from.
import { choice, count, lengthOrAuto, requiredLength, text } from "../parameter.ts";
import { NAME_PATTERN } from "./name-pattern.ts";

const MEASURED = "measured on the maker's sheet";

export const sheet = {
  name: text({
    default: "",
    required: true,
    maxLength: 30,
    pattern: NAME_PATTERN,
    name: "sheet name",
    help: "What the sheet is called in files and on drawings.",
    source: "maker's choice",
  }),
  material: choice({
    choices: ["ply", "wood"],
    default: "ply",
    name: "sheet material",
    help: "ply: jigs are cut from it, turned as they fit. wood: cheeks and core layers are cut from it, their grain along its length.",
    source: MEASURED,
  }),
  length: requiredLength({
    min: 50,
    max: 4000,
    name: "sheet length",
    help: "Length, along the grain. It lies along the router's x.",
    source: MEASURED,
  }),
  width: requiredLength({
    min: 20,
    max: 2500,
    name: "sheet width",
    help: "Width, across the grain.",
    source: MEASURED,
  }),
  thickness: requiredLength({
    min: 2,
    max: 120,
    name: "sheet thickness",
    help: "Thickness by which the sheet is sold.",
    source: "the seller",
  }),
  measured: lengthOrAuto({
    min: 1.5,
    max: 120,
    step: 0.05,
    auto: "the thickness by which it is sold",
    name: "measured thickness",
    help: "Thickness by the caliper; ply is often thinner than it is sold. Programs cut to it.",
    source: MEASURED,
  }),
  count: count({
    default: 1,
    min: 1,
    max: 50,
    name: "sheets alike",
    help: "How many such sheets there are.",
    source: MEASURED,
  }),
};
