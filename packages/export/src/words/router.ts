// Sentences of router programs and their sheets. Lengths come as texts in the maker's unit.
import { countText, sentence } from "@lamplane/parameters/words";

/** What a maker reads before a program runs: comments at its head, and the sheet of its set-up. */
export const SET_UP = {
  title: sentence(
    ({ title, plane, version }: { title: string; plane: string; version: string }) =>
      `${title}; ${plane}, lamplane ${version}`,
    { title: "Left cheek, inside up", plane: "my-plane", version: "0.2.0" },
  ),
  stock: sentence(
    ({ width, depth, thickness }: { width: string; depth: string; thickness: string }) =>
      `Stock ${thickness} thick, no more and no less: measure it. At least ${width} along x, ${depth} along y.`,
    { width: "275 mm", depth: "81 mm", thickness: "8 mm" },
  ),
  plates: sentence(
    ({ count, total }: { count: number; total: string }) =>
      `Run it ${count} times: ${count} plates, glued face to face with their holes in line, make the jig, ${total} thick.`,
    { count: 4, total: "23.2 mm" },
  ),
  block: sentence(
    ({ width, depth }: { width: string; depth: string }) =>
      `Bed block as sawn and trued: bed ${width} along x, ${depth} along y.`,
    { width: "84 mm", depth: "49.6 mm" },
  ),
  zero: {
    "corner-top": "Zero: lower left corner of the stock, z at its top.",
    "corner-spoilboard": "Zero: lower left corner of the stock, z on the spoilboard under it.",
    "tip-top": "Zero: where the tip of the bed meets the right side of the block, z at the bed. x runs up the bed.",
    "tip-spoilboard":
      "Zero: where the tip of the bed meets the right side of the block, z on the spoilboard. x runs up the bed.",
  },
  cutter: {
    end: sentence(
      ({ number, name, diameter, speed }: { number: number; name: string; diameter: string; speed: number }) =>
        `Cutter ${number}, ${name}: end mill of ${diameter}, ${speed} rpm.`,
      { number: 1, name: "end-6", diameter: "6 mm", speed: 16000 },
    ),
    drill: sentence(
      ({ number, name, diameter, speed }: { number: number; name: string; diameter: string; speed: number }) =>
        `Cutter ${number}, ${name}: drill of ${diameter}, ${speed} rpm.`,
      { number: 3, name: "drill-9.7", diameter: "9.7 mm", speed: 8000 },
    ),
    engrave: sentence(
      ({ number, name, diameter, speed }: { number: number; name: string; diameter: string; speed: number }) =>
        `Cutter ${number}, ${name}: engraving cutter, line of ${diameter}, ${speed} rpm.`,
      { number: 4, name: "vee-60", diameter: "0.5 mm", speed: 18000 },
    ),
  },
  engraving: sentence(({ depth }: { depth: string }) => `Engraves marks and names ${depth} deep.`, { depth: "0.3 mm" }),
  unit: {
    mm: "Program in millimetres (G21), feeds in mm a minute.",
    in: "Program in inches (G20), feeds in inches a minute.",
  },
  fit: sentence(({ name }: { name: string }) => `Fit ${name}; set z for it before the start`, { name: "end-6" }),
  fitAtStop: sentence(
    ({ name }: { name: string }) => `Stop: fit ${name}, set z anew for it, raise it clear of clamps, start again`,
    { name: "end-3" },
  ),
  fitByLength: sentence(
    ({ name, number }: { name: string; number: number }) =>
      `Fit ${name}; its length stands in the control's table under ${number}`,
    { name: "end-3", number: 2 },
  ),
  begin: sentence(
    ({ name, height, delay, isMeasured }: { name: string; height: string; delay: number; isMeasured: boolean }) =>
      `Start: ${isMeasured ? `${name}, every cutter's length in the control's table` : `${name} fitted, z set for it`}; nothing under the cutter. It goes straight to ${height} over the stock, slowly; the spindle starts${delay > 0 ? ` and the program waits ${delay} s` : ""}.`,
    { name: "end-6", height: "30 mm", delay: 3, isMeasured: false },
  ),
  zeroPlace: { "corner-top": "at the stock's top", "corner-spoilboard": "on the spoilboard" },
  stop: sentence(
    ({ name, height, zero }: Record<"name" | "height" | "zero", string>) =>
      `Stop: the cutter is ${height} over the stock, the spindle off. Cut off the spindle's power, fit ${name}, set z anew for it ${zero}, raise it clear of clamps, start again. x and y stay.`,
    { name: "end-3", height: "30 mm", zero: "at the stock's top" },
  ),
  nextFile: sentence(
    ({ name, height, zero }: Record<"name" | "height" | "zero", string>) =>
      `Next program: the cutter is ${height} over the stock, the spindle off. Cut off the spindle's power, fit ${name}, set z anew for it ${zero}, start the program of ${name}. x and y stay.`,
    { name: "end-3", height: "30 mm", zero: "at the stock's top" },
  ),
  changeByLength: sentence(
    ({ name, height }: Record<"name" | "height", string>) =>
      `Change without a stop, from ${height} over the stock: the control fits ${name} and takes its length from the table.`,
    { name: "end-3", height: "30 mm" },
  ),
  end: sentence(({ height }: { height: string }) => `End: spindle off, cutter ${height} over the stock.`, {
    height: "30 mm",
  }),
  tabs: sentence(
    ({
      count,
      parts,
      width,
      height,
      margin,
    }: Record<"count" | "parts", number> & Record<"width" | "height" | "margin", string>) =>
      `Clamp the stock to the spoilboard on its outer ${margin}, off the cutter's way; the margin is too narrow for screws. ${countText(count, "tab")}, ${width} long and ${height} high, hold the ${parts === 1 ? "part" : "parts"}: saw them through and trim.`,
    { count: 4, parts: 1, width: "8 mm", height: "1.5 mm", margin: "3 mm" },
  ),
  cradle:
    "Hold the bed block in the bed cradle with its bed level, against a stop at its tip and one at its right side. Clamp both to the table; keep clamps off the bed.",
  through: sentence(({ depth }: { depth: string }) => `Cuts ${depth} into the spoilboard.`, { depth: "0.3 mm" }),
  clamps: sentence(
    ({ height }: { height: string }) => `Rapid moves between cuts pass ${height} over the stock: keep clamps lower.`,
    {
      height: "6 mm",
    },
  ),
  corners: sentence(
    ({ count, gap }: { count: number; gap: string }) =>
      `${countText(count, "inner corner")} left round by the cutter, at most ${gap} of wood: pare to the line.`,
    { count: 2, gap: "0.4 mm" },
  ),
  relief: sentence(
    ({ radius }: { radius: string }) =>
      `Or enter \`jigs.relief: ${radius}\`: then this cutter clears them, and nothing is pared.`,
    { radius: "3.1 mm" },
  ),
  minutes: sentence(
    ({ minutes }: { minutes: string }) => `About ${minutes} min of cutting, changes of cutter not counted.`,
    { minutes: "6" },
  ),
  caution:
    "The machine's manual comes first. Clear the table, then run the program above the wood with the spindle off, a hand at the stop. Wear eye and ear protection, draw off the dust, and stay beside the machine while it cuts.",
  draws:
    "Heavy lines: the part. Thin lines: the way of the cutter. Crosses: tabs. Dashes: the stock. Grey: where the cutter goes; clamp outside it. Circle: zero.",
} as const;

const NUMBERS = { value: "22 mm", limit: "50 mm" };
interface Numbers {
  readonly value: string;
  readonly limit: string;
}

/** Why a set-up has no program, and what to do. */
export const ROUTER_LIMIT = {
  crossing: sentence(
    ({ value }: Numbers) =>
      `Its outline crosses itself and makes a loop of ${value}. Cure what \`check\` finds; then there is a way round it.`,
    { value: "1.2 mm", limit: "0 mm" },
  ),
  engraver: sentence(
    ({ value, limit }: Numbers) =>
      `Marks and names need an engraving cutter, or an end mill of ${limit} or less; the smallest is ${value}. Add one to \`cutters\`, or enter \`router.engraving: 0\`.`,
    { value: "3.18 mm", limit: "2 mm" },
  ),
  reach: sentence(
    ({ value, limit }: Numbers) =>
      `Longest cutter reaches ${value}; needs ${limit}. Use a longer cutter, or thinner wood.`,
    NUMBERS,
  ),
  "no-end-mill": "No end mill among the cutters. Add one to `cutters`.",
  opening: sentence(
    ({ value, limit }: Numbers) =>
      `An opening takes a cutter of ${value} at most; the smallest that reaches is ${limit}. Use a smaller cutter, or drill it.`,
    { value: "5.2 mm", limit: "6 mm" },
  ),
  "tab-run": sentence(
    ({ value, limit }: Numbers) =>
      `Longest straight run is ${value}; tabs need two of ${limit}, with stock beside them. Use narrower tabs, or saw this part.`,
    { value: "12 mm", limit: "16 mm" },
  ),
  speed: sentence(
    ({ value, limit }: Numbers) =>
      `A cutter is to turn at ${value}; the spindle turns at ${limit} at most. Enter a lower \`speed\` of the cutter and a feed that goes with it, or the spindle's own \`router.maxSpeed\`.`,
    { value: "30000 rpm", limit: "24000 rpm" },
  ),
  step: sentence(
    ({ value, limit }: Numbers) =>
      `A pass is to go ${value} deeper; the cutter's edges are ${limit} long. Enter a smaller \`step\` of the cutter.`,
    { value: "40 mm", limit: "22 mm" },
  ),
  "travel-x": sentence(({ value, limit }: Numbers) => `Needs ${value} of travel in x; the router has ${limit}.`, {
    value: "640 mm",
    limit: "600 mm",
  }),
  "travel-y": sentence(({ value, limit }: Numbers) => `Needs ${value} of travel in y; the router has ${limit}.`, {
    value: "440 mm",
    limit: "400 mm",
  }),
  "travel-z": sentence(
    ({ value, limit }: Numbers) =>
      `Needs ${value} of travel in z; the router has ${limit}. A lower \`router.parkHeight\` needs less.`,
    {
      value: "151 mm",
      limit: "80 mm",
    },
  ),
} as const;

export const ROUTER_LIMIT_SOURCE = "the router's travel and the cutters' sizes, as entered";

/** What each limit is, for whoever asks what its name means. */
export const ROUTER_LIMIT_HELP = {
  crossing: "Router: an outline must not cross itself, or no cutter can go round it.",
  engraver: "Router: engraved marks and names need a cutter fine enough for letters.",
  reach: "Router: the longest end mill must reach through the part, and into the spoilboard.",
  "no-end-mill": "Router: outlines and openings need an end mill.",
  opening:
    "Router: every hole and opening must be wide enough for an end mill to wind down into it, or have a drill of its size.",
  "tab-run": "Router: a part needs two straight runs long enough for a tab and the cutter beside it.",
  speed: "Router: no cutter may turn faster than the spindle.",
  step: "Router: no pass may go deeper than the cutter's edges are long.",
  "travel-x": "Router: stock and cutter's way along x must lie within the travel.",
  "travel-y": "Router: stock and cutter's way along y must lie within the travel.",
  "travel-z": "Router: stock and the higher of park height and rapid height together must lie within the travel in z.",
} as const;

/** The list of set-ups beside the programs. */
/** What lies on the table, and how. */
export const SET_UP_TITLES = {
  cheek: { left: "Left cheek, inside up", right: "Right cheek, inside up" },
  block: { front: "Front block, whole, lying on its side", bed: "Bed block, whole, lying on its side" },
  layer: sentence(
    ({ block, number }: { block: "front" | "bed"; number: number }) =>
      `${block === "front" ? "Front block" : "Bed block"}, layer ${number} from the right cheek`,
    { block: "front", number: 2 },
  ),
  wedge: "Wedge blank, flat",
  pin: "Cross pin blank",
  recess: "Recess, bed block in its cradle",
} as const;

export const SET_UP_LIST = {
  head: sentence(({ plane }: { plane: string }) => `Router programs of ${plane}`, { plane: "my-plane" }),
  notCut: "Not cut, and why:",
  sheetTitle: sentence(({ plane }: { plane: string }) => `${plane}: router set-ups`, { plane: "my-plane" }),
  sheetSubject: "A page for each set-up of the router",
  stock: "Stock",
  cutters: "Cutters, in order",
  files: "Program",
} as const;
