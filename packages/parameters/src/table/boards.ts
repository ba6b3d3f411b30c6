// A board at hand, for core and cheeks, and what in it to keep clear of.
import { angle, choice, count, length, ratio, requiredLength, text } from "../parameter.ts";

const MEASURED = "measured on the maker's board";

export const board = {
  name: text({
    default: "",
    required: true,
    maxLength: 30,
    pattern: {
      regex: /^[A-Za-z0-9](?:[A-Za-z0-9 ._-]*[A-Za-z0-9_-])?$/,
      words: "letters, digits, spaces, dots, dashes and underscores",
    },
    name: "board name",
    help: "What the board is called on the drawings of its cuts.",
    source: "maker's choice",
  }),
  length: requiredLength({
    min: 10,
    max: 6000,
    name: "board length",
    help: "Length along the grain.",
    source: MEASURED,
  }),
  width: requiredLength({ min: 5, max: 1200, name: "board width", help: "Width of its wide faces.", source: MEASURED }),
  thickness: requiredLength({ min: 3, max: 300, name: "board thickness", help: "Thickness.", source: MEASURED }),
  state: choice({
    choices: ["rough", "surfaced"],
    default: "rough",
    name: "state of the board",
    help: "Whether its long faces are sawn (rough), or true already (surfaced): a part that keeps a true face needs no milling there.",
    source: MEASURED,
  }),
  species: text({
    default: "same",
    maxLength: 60,
    name: "wood of the board",
    help: "Its wood; same: the body's. A body is not cut from another wood than its own.",
    source: MEASURED,
  }),
  rings: angle({
    default: 0,
    min: 0,
    max: 90,
    name: "rings of the board",
    help: "Angle of the growth rings to its wide faces, on the end grain: 0 flat sawn, 90 quarter sawn.",
    source: MEASURED,
  }),
  heart: choice({
    choices: ["down", "up"],
    default: "down",
    name: "heart side",
    help: "Which wide face is nearer to the heart of the tree, as the board is measured; the other is the bark side.",
    source: MEASURED,
  }),
  count: count({
    default: 1,
    min: 1,
    max: 50,
    name: "boards alike",
    help: "How many such boards there are.",
    source: MEASURED,
  }),
  price: ratio({
    default: 0,
    min: 0,
    max: 1_000_000,
    step: 1,
    name: "price of the board",
    help: "What one such board costs, in your money. 0 if it is at hand.",
    source: "the seller",
  }),
};

const ACROSS = "0 and 0: over the whole width.";

export const knot = {
  from: length({
    default: 0,
    min: 0,
    max: 6000,
    name: "knot begins",
    help: "From the board's end to where the knot begins.",
    source: MEASURED,
  }),
  to: requiredLength({
    min: 0,
    max: 6000,
    name: "knot ends",
    help: "From the board's end to where the knot ends.",
    source: MEASURED,
  }),
  across: {
    from: length({
      default: 0,
      min: 0,
      max: 1200,
      name: "knot's near side",
      help: `From the board's left edge to the knot. ${ACROSS}`,
      source: MEASURED,
    }),
    to: length({
      default: 0,
      min: 0,
      max: 1200,
      name: "knot's far side",
      help: `From the board's left edge over the knot. ${ACROSS}`,
      source: MEASURED,
    }),
  },
};
