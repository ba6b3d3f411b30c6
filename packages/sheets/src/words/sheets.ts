// The sheets at true size: how to print, check and join them, and what stands on every page.
import { sentence } from "@lamplane/parameters/words";

/** A tile by its picture's name and its own, and the neighbour that it meets. */
interface TileNames {
  readonly tile: string;
  readonly other: string;
}

export const SHEET = {
  title: "Layout, true size, to be glued on the wood",
  fileTitle: sentence(({ name }: { name: string }) => `${name}: layout, true size`, { name: "first-smoother" }),
  subject: "1:1 sheets to glue on the wood",
  readFirst: "layout: read this first",
  howToUse: [
    "1. Print every page at 100 % (“actual size”), on one side only.",
    "2. On every page measure the 100 mm bar and the 4 in bar with the rule that you work with. Paper moves",
    "    with damp: measure again just before you glue it down.",
    "3. Before a cut, check the distances written on the picture with a rule. Where paper and number differ,",
    "    the number holds.",
    "4. Each picture says which side of which piece it is glued to. Let the glue dry before you cut.",
    "5. Follow each machine's manual, local rules and trained practice. Never hold a short block by hand at a saw.",
  ],
  howToJoin: [
    "To join tiles (A1, A2 … from the left; B below A)",
    "Cut each tile out roughly, then trim it at its line “trim here” and lay it over its neighbour, so that its edge lies",
    "on the dashed line and the halves of the register marks make whole circles. Glue, and measure across the joint.",
  ],
  lines: "Lines",
  kerf: "the saw's kerf",
  waste: "waste between the cuts",
  onWhichPage: "On which page",
  units: {
    mm: "Lengths without a unit are millimetres.",
    in: "In brackets, for the caliper, the length itself: the nearest fraction is + where the length is plainly over it, − where under.",
  },
  onPages: sentence(
    ({ name, first, last, tiles }: { name: string; first: number; last: number; tiles?: number | undefined }) => {
      const pages = first === last ? `page ${first}` : `pages ${first} to ${last}`;
      return `${name}: ${pages}${tiles === undefined ? "" : `, in ${tiles} tiles (map below)`}`;
    },
    { name: "core cuts", first: 2, last: 3, tiles: 2 },
    { name: "wedge", first: 5, last: 5 },
  ),
  tileOnPage: sentence(({ tile, page }: { tile: string; page: number }) => `${tile}: page ${page}`, {
    tile: "A1",
    page: 2,
  }),
  trimHere: sentence(({ tile, other }: TileNames) => `${tile}: trim here, lay over ${other}`, {
    tile: "cheek right A2",
    other: "A1",
  }),
  edgeHere: sentence(({ tile, other }: TileNames) => `${tile}: edge of ${other} lies here`, {
    tile: "cheek right A1",
    other: "A2",
  }),
} as const;

export const BAR_WORDS = { mm: "100 mm", in: "4 in" } as const;
export const CHECK_PRINT = [
  "Print at 100 %: no “fit”, no “shrink”.",
  "Measure both bars first: if either",
  "is off, do not use this page.",
] as const;

/** What each kind of line stands for. */
export const LINE_MEANINGS = {
  outline: "what is seen: edges, bed, ramp",
  hidden: "what lies behind or below",
  axis: "centre lines and axes",
  cut: "cut here, later: saw or shape to this line",
  mark: "what is pencilled on the wood",
  thin: "dimensions; parts that lie in the throat",
  grid: "grid of a plot",
  strong: "the line that a plot is about",
} as const;
