// Whether the widths are sound, the recess leaves the bed its lands and pad, and the billet holds it all.

import type { Elevation } from "@lamplane/parameters/elevation";
import { figureValue, pegWaste, planeToIron, ROUND_A_PEG } from "@lamplane/parameters/elevation";
import { stepIndex, stepsDone } from "../steps.ts";
import { billetFit } from "../stock/billet.ts";
import { decrease, GEOMETRY, increase, type Judgement, judgeAtLeast, type Remedy } from "./judgement.ts";

export function checkCheeks(plane: Elevation): Judgement[] {
  return judgeAtLeast(plane, {
    code: "cheek-thin",
    what: "The finished cheek",
    value: plane.widths.cheek,
    stop: 4,
    warn: 7.9,
    unit: "mm",
    parameters: ["body.cheek"],
    place: "pinCentre",
    advice: "8 mm (5/16 in) or more is usual; the pin bears in it.",
    remedies: [increase("body.cheek")],
  });
}

/** The recess: room for the head, wood left on every side of it. */
export function checkRecess(plane: Elevation): Judgement[] {
  const { recess, design } = plane;
  if (!recess) return [];
  const { diameter, height } = design.capIron.screwHead;
  const narrow = [decrease("recess.width"), decrease("recess.clearance")];
  const shoulder = planeToIron(plane.frame, plane.points.bedChamfer).s;
  return [
    ...judgeAtLeast(plane, {
      code: "recess-land",
      what: "The land on each side of the recess",
      value: figureValue(plane, "recessLand")!,
      stop: 3,
      warn: 8,
      unit: "mm",
      parameters: ["recess.width", "iron.width"],
      place: "recessLow",
      advice: "The iron bears on these lands: make the recess narrower.",
      remedies: narrow,
    }),
    ...judgeAtLeast(plane, {
      code: "recess-pad",
      what: "The bed between the bevel's heel and the recess",
      value: Math.min(figureValue(plane, "recessPad")!, recess.low - shoulder),
      stop: 4,
      warn: 12,
      unit: "mm",
      parameters: ["recess.travel", "capIron.screwHead.fromEdge", "bed.featherChamfer"],
      place: "recessLow",
      advice: "The iron must be borne near its edge: leave the head less travel.",
      remedies: [decrease("recess.travel"), decrease("bed.featherChamfer")],
    }),
    ...judgeAtLeast(plane, {
      code: "recess-misses-head",
      what: "The recess's width over the screw's head",
      value: recess.width - diameter,
      stop: 0.2,
      unit: "mm",
      parameters: ["recess.width"],
      place: "recessLow",
      advice: "The head must go in.",
      remedies: [increase("recess.width")],
      source: GEOMETRY,
    }),
    ...judgeAtLeast(plane, {
      code: "recess-shallow",
      what: "The recess's depth over the screw's head",
      value: recess.depth - height,
      stop: 0.2,
      warn: 0.5,
      unit: "mm",
      parameters: ["recess.depth"],
      place: "recessLow",
      advice: "The head must not bear on the floor.",
      remedies: [increase("recess.depth")],
    }),
    ...judgeAtLeast(plane, {
      code: "recess-cutter",
      what: "The recess's width over the cutter",
      value: recess.width - design.recess.cutter,
      stop: 0,
      unit: "mm",
      parameters: ["recess.cutter", "recess.width"],
      place: "recessLow",
      advice: "Use a smaller cutter.",
      remedies: [decrease("recess.cutter"), increase("recess.width"), increase("recess.clearance")],
      source: GEOMETRY,
    }),
    ...judgeAtLeast(plane, {
      code: "recess-off-bed",
      what: "The bed above the recess's rounded end",
      value: plane.bedTopS - recess.low - recess.cornerRadius,
      stop: 2,
      unit: "mm",
      parameters: ["capIron.screwHead.fromEdge", "recess.travel", "body.height"],
      place: "recessLow",
      advice:
        "The head lies above the bed, so it needs no recess: leave the head's height at 0, or make the plane higher.",
      remedies: [increase("body.height"), increase("recess.travel")],
      source: GEOMETRY,
    }),
  ];
}

/** Pegs must lie wholly in the waste at the blocks' ends. */
export function checkPegs(plane: Elevation): Judgement[] {
  const { pegs, body, sole } = plane.design;
  if (pegs.perEnd === 0) return [];
  const rise = body.height + sole.allowance;
  const inWaste = pegWaste(plane) - pegs.diameter - 2 * ROUND_A_PEG;
  const inHeight = rise / 4 - pegs.diameter / 2 - ROUND_A_PEG;
  return judgeAtLeast(plane, {
    code: "pegs-do-not-fit",
    what: "The waste at the blocks' ends over a peg and the wood round it",
    value: Math.min(inWaste, inHeight),
    stop: 0,
    unit: "mm",
    parameters: ["pegs.diameter", "body.trim"],
    place: "toe",
    advice: "Use thinner pegs or a longer blank, or none.",
    remedies: [decrease("pegs.diameter"), increase("body.trim"), decrease("pegs.perEnd")],
    source: GEOMETRY,
  });
}

/** The billet at hand, where its size is given; on its side where the plane comes out of it only so. */
export function checkBillet(plane: Elevation): Judgement[] {
  if (stepsDone(plane.design) > stepIndex("core")) return []; // sawn already
  const { billet } = plane.design;
  const { needed, lies, lay } = billetFit(plane);
  const turned = lay === "on its side" ? ", laid on its side," : "";
  const side = (name: "length" | "width" | "height", remedies: readonly Remedy[]) =>
    billet[name] === 0
      ? []
      : judgeAtLeast(plane, {
          code: `billet-${name}`,
          what: `The billet's ${name}${turned}`,
          value: lies[name],
          stop: needed[name],
          unit: "mm",
          parameters: [`billet.${name}`],
          place: "toe",
          advice: "The plane does not come out of it: take another billet, or plan a smaller plane.",
          remedies,
          source: GEOMETRY,
        });
  return [
    ...side("length", [decrease("body.trim"), decrease("body.length")]),
    ...side("width", [decrease("shop.millingAllowance"), decrease("body.cheek")]),
    ...side("height", [decrease("body.height"), decrease("sole.allowance")]),
  ];
}
