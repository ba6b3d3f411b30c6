// The billet at hand.
import { length } from "../parameter.ts";
import { ON_BILLET } from "./sources.ts";

export const billet = {
  length: lengthOrNone("billet length", "Length of the billet at hand."),
  width: lengthOrNone("billet width", "Width of the billet at hand, across the sole."),
  height: lengthOrNone("billet height", "Height of the billet at hand."),
};

function lengthOrNone(name: string, help: string) {
  return length({
    default: 0,
    min: 0,
    max: 3000,
    step: 1,
    name,
    help: `${help} 0 if it is still to be bought.`,
    source: ON_BILLET,
  });
}
