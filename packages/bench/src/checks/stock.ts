// Whether the cheeks are sound, the pegs lie in the waste, and the billet holds it all.

import { layersOf, memoizeByPlane, pegWaste, ROUND_A_PEG } from "@lamplane/parameters/elevation";
import { COMMON_PRACTICE, PLANE_GEOMETRY } from "@lamplane/parameters/table";
import { stepIndex, stepsDone } from "../steps.ts";
import { billetFit } from "../stock/billet.ts";
import type { CheckRow } from "./judgement.ts";
import { decrease, increase, type Remedy } from "./remedy.ts";

export const CHEEK_CHECK: CheckRow = {
  code: "cheek-thickness",
  subject: "cheek",
  relation: "at least",
  value: ({ widths }) => widths.cheek,
  stop: 4,
  warn: 7.9,
  unit: "mm",
  parameters: ["body.cheek"],
  place: "pinCentre",
  advice: "thicken-cheek",
  remedies: [increase("body.cheek")],
  source: COMMON_PRACTICE,
};

/** Pegs must lie wholly in the waste at the blocks' ends. */
const PEGS: CheckRow = {
  code: "peg-room",
  subject: "peg-waste",
  appliesTo: ({ design }) => design.pegs.perEnd !== 0,
  relation: "at least",
  value: (plane) => {
    const { pegs, body, sole } = plane.design;
    const inWaste = pegWaste(plane) - pegs.diameter - 2 * ROUND_A_PEG;
    const inHeight = (body.height + sole.allowance) / 4 - pegs.diameter / 2 - ROUND_A_PEG;
    return Math.min(inWaste, inHeight);
  },
  stop: 0,
  unit: "mm",
  parameters: ["pegs.diameter", "body.trim"],
  place: "toe",
  advice: "thin-pegs-or-lengthen-blank",
  remedies: [decrease("pegs.diameter"), increase("body.trim"), decrease("pegs.perEnd")],
  source: PLANE_GEOMETRY,
};

const fitOf = memoizeByPlane(billetFit);

/** The billet at hand until it is sawn, where its size is given; on its side where the plane comes out of it only so. */
const billetCheck = (side: "length" | "width" | "height", remedies: readonly Remedy[]): CheckRow => ({
  code: `billet-${side}`,
  subject: (plane) => (fitOf(plane).lay === "on its side" ? `billet-${side}-on-its-side` : `billet-${side}`),
  appliesTo: (plane) => {
    const { design } = plane;
    return design.billet[side] !== 0 && !layersOf(plane) && stepsDone(design) <= stepIndex("core");
  },
  relation: "at least",
  value: (plane) => fitOf(plane).lies[side],
  stop: (plane) => fitOf(plane).needed[side],
  unit: "mm",
  parameters: [`billet.${side}`],
  place: "toe",
  advice: "change-billet-or-plane",
  remedies,
  source: PLANE_GEOMETRY,
});

export const STOCK_CHECKS: readonly CheckRow[] = [
  PEGS,
  billetCheck("length", [decrease("body.trim"), decrease("body.length")]),
  billetCheck("width", [decrease("shop.millingAllowance"), decrease("body.cheek")]),
  billetCheck("height", [decrease("body.height"), decrease("sole.allowance")]),
];
