// One of the router's cutters: what it cuts and how fast it may go.
import { choice, feed, length, requiredLength, text, turns } from "../parameter.ts";
import { NAME_PATTERN } from "./name-pattern.ts";
import { COMMON_PRACTICE } from "./sources.ts";

const MAKER = "the cutter's maker; the router's manual";

export const cutter = {
  name: text({
    default: "",
    required: true,
    maxLength: 30,
    pattern: NAME_PATTERN,
    name: "cutter name",
    help: "What the cutter is called in programs and on their sheets.",
    source: "maker's choice",
  }),
  kind: choice({
    choices: ["end", "drill", "engrave"],
    default: "end",
    name: "cutter kind",
    help: "What the cutter does: end (an end mill, cuts with its side), drill (goes straight down only) or engrave (a V or point, for names and marks; its diameter is the width of its line).",
    source: MAKER,
  }),
  diameter: requiredLength({
    min: 0.5,
    max: 40,
    name: "cutter diameter",
    help: "Diameter of what the cutter cuts.",
    source: MAKER,
  }),
  cutting: requiredLength({
    min: 1,
    max: 150,
    name: "cutting length",
    help: "How deep the cutter reaches: from its tip to the end of its edges.",
    source: MAKER,
  }),
  speed: turns({
    default: 16000,
    min: 100,
    max: 60000,
    name: "spindle speed",
    help: "Turns of the spindle with this cutter.",
    source: MAKER,
  }),
  feed: feed({
    default: 1200,
    min: 10,
    max: 20000,
    name: "feed",
    help: "How fast the cutter goes sideways through wood.",
    source: MAKER,
  }),
  plunge: feed({
    default: 300,
    min: 10,
    max: 10000,
    name: "plunge feed",
    help: "How fast the cutter goes down into wood.",
    source: MAKER,
  }),
  step: length({
    default: 3,
    min: 0.1,
    max: 50,
    name: "depth of a pass",
    help: "How much deeper each pass goes than the one before; for a drill, how deep it goes before it is drawn out.",
    source: MAKER,
  }),
  finish: length({
    default: 0.2,
    min: 0,
    max: 2,
    name: "finishing allowance",
    help: "Wood left on the walls by the passes, for one finishing pass at full depth.",
    source: COMMON_PRACTICE,
  }),
};
