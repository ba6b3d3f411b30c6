// Boards: the way a body comes out of them, each cut in the order of sawing, what is missing and what would do.
import { listText, sentence } from "@lamplane/parameters/words";

export const BOARDS = {
  head: sentence(({ planes }: { planes: number }) => `BOARDS for ${planes === 1 ? "the body" : `${planes} planes`}`, {
    planes: 1,
  }),
  way: {
    "one-billet": "One piece, ripped into cheek, core and cheek: the grain runs on across the plane.",
    "end-of-the-board": "All from one board, cheeks from further along it.",
    resawn: "All from one board, some of it resawn: cheeks from its face.",
    "several-boards": "From several boards: match colour and grain before you saw.",
  },
  /** The same of a core that is glued up in layers. */
  layeredWay: {
    "one-billet": "One piece, ripped into cheeks and layers: the grain runs on across the plane.",
    "end-of-the-board": "All cheeks and layers from one board, one behind the other.",
    resawn: "All cheeks and layers from one board, some of it resawn.",
    "several-boards": "Cheeks and layers from several boards: match colour and grain before you saw.",
  },
  layer: sentence(({ number }: { number: number }) => `layer ${number}`, { number: 2 }),
  board: sentence(
    ({ name, size, heart, waste }: { name: string; size: string; heart: "up" | "down"; waste: string }) =>
      `${name}: ${size}, heart side ${heart}; ${waste} waste`,
    { name: "oak", size: "610 × 79.4 × 63.5 mm", heart: "down", waste: "38 %" },
  ),
  cut: {
    x: sentence(({ number, at }: { number: number; at: string }) => `${number}  crosscut ${at} from the end`, {
      number: 1,
      at: "255.4 mm",
    }),
    y: sentence(({ number, at }: { number: number; at: string }) => `${number}  rip ${at} from the left edge`, {
      number: 2,
      at: "12.6 mm",
    }),
    z: sentence(({ number, at }: { number: number; at: string }) => `${number}  resaw ${at} from the lower face`, {
      number: 3,
      at: "11.8 mm",
    }),
  },
  part: sentence(
    ({ name, size, rings }: { name: string; size: string; rings: string }) =>
      `${name}  ${size}, rings at ${rings} to the sole`,
    { name: "core", size: "255.4 × 53.6 × 64 mm", rings: "20°" },
  ),
  price: sentence(({ price }: { price: string }) => `The boards cost ${price}.`, { price: "24" }),
  left: sentence(({ sizes }: { sizes: readonly string[] }) => `Left whole: ${listText(sizes)}.`, {
    sizes: ["350 × 79.4 × 63.5 mm"],
  }),
  noFit: "The body does not come out of these boards by any cuts.",
  missing: sentence(
    ({ name, by, side }: { name: string; by: string; side: "length" | "width" | "thickness" }) =>
      `${name}: ${by} too ${{ length: "short", width: "narrow", thickness: "thin" }[side]}`,
    { name: "oak", by: "1.6 mm", side: "width" },
  ),
  tooFar: sentence(({ name }: { name: string }) => `${name}: too small on more than one side, or another wood`, {
    name: "offcut",
  }),
  fix: sentence(({ changes }: { changes: readonly string[] }) => `Fix: ${changes.join(" or ")}`, {
    changes: ["body.trim 25.4 mm → 19.8 mm", "body.cheek 9 mm → 8.2 mm"],
  }),
  change: sentence(
    ({ parameter, from, to }: Record<"parameter" | "from" | "to", string>) => `${parameter} ${from} → ${to}`,
    {
      parameter: "body.trim",
      from: "25.4 mm",
      to: "19.8 mm",
    },
  ),
  heart: "heart side",
  bark: "bark side",
  end: "end",
  drawing: sentence(
    ({ scale }: { scale: string }) => `Its wide face above, its edge below; cuts in the order of sawing (${scale})`,
    {
      scale: "1:4",
    },
  ),
  knot: "knot",
  sheet: "Boards and their cuts",
  paper: "boards",
  partHead: ["", "part", "as sawn", "rings to sole"],
  mark: "Mark the heart side on the board and on each part as it comes off.",
  short: "A piece that is crosscut before it is ripped is short: rip it by hand or on a bandsaw, with a push stick.",
  leftEdge: "left edge",
  waste: sentence(({ waste }: { waste: string }) => `Waste ${waste} of the boards used.`, { waste: "38 %" }),
  bound: sentence(
    ({ price, least, gap }: { price: string; least: string; gap: string | undefined }) =>
      gap === undefined
        ? `Price ${price}: no other layout costs less.`
        : `Price ${price}. No layout costs less than ${least}, so a better one could save ${gap} at most.`,
    { price: "70", least: "70", gap: undefined },
    { price: "150", least: "142", gap: "5 %" },
  ),
  most: sentence(
    ({ planes, placed, most }: { planes: number; placed: number; most: number }) =>
      `${placed} of ${planes} planes come out of these boards; ${most > placed ? `no layout gives more than ${most}` : "no layout gives more"}.`,
    { planes: 12, placed: 11, most: 11 },
    { planes: 12, placed: 10, most: 11 },
  ),
} as const;
