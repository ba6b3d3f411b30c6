// What stands before the first step: key figures, tools and the head of the stock list.
import { sentence } from "@lamplane/parameters/words";

export const KEY_FIGURES = {
  length: "Length",
  height: "Height",
  width: "Width",
  bed: "Bed",
  face: "Face of the iron",
  ramp: "Ramp",
  wear: "Wear of the ramp",
  edge: "Edge from the toe",
  mouth: "Mouth wanted",
  soleToTake: "Sole still to take off",
} as const;

export const TOOLS = {
  measuring:
    "rule, caliper, square, bevel or protractor, straightedge, winding sticks, feeler leaves, pencil and knife",
  saws: sentence(
    ({ kerf }: { kerf: string }) =>
      `saw for ripping; mitre saw, bandsaw or handsaw for the two cuts (kerf entered as ${kerf})`,
    { kerf: "3.2 mm" },
  ),
  planes: "bench plane and block plane, sharp; scraper, rasp or spokeshave",
  router: sentence(({ cutter }: { cutter: string }) => `router with a cutter ⌀ ${cutter}, or chisels`, {
    cutter: "12.7 mm",
  }),
  drills: sentence(
    ({ pin, peg }: { pin: string; peg?: string | undefined }) =>
      `drill ⌀ ${pin}${peg === undefined ? "" : ` and ⌀ ${peg}`}, square to the table`,
    { pin: "9.7 mm", peg: "6 mm" },
    { pin: "9.7 mm" },
  ),
  glueUp: "six clamps or more with cauls, glue, wax, oil, a small hammer",
  protection: "eye, ear and dust protection as the manual of the machine asks",
} as const;

export const STOCK_HEAD = ["Piece", "No.", "Rough, no less", "Finished", "From", "Wood", "Grain"] as const;
