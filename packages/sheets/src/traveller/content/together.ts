// Wedge and pin, the dry rehearsal and the glue-up.
import { pinSeat } from "@lamplane/bench";
import { cotDeg } from "@lamplane/geometry";
import { fromToeEnd, isPlacedByContact, pegHoles, stageExtent } from "@lamplane/parameters/elevation";
import { formatDecimal, formatDrill } from "@lamplane/parameters/units";
import { listText } from "@lamplane/parameters/words";
import { DRY_FIT, GLUE_UP, WEDGE } from "../../words/together.ts";
import { dryFitPicture, glueFreeText, gluePicture } from "../draw/glue.ts";
import { wedgePicture } from "../draw/wedge.ts";
import type { StepNumber } from "../step.ts";
import { readAgain, type StepContext } from "../step-context.ts";
import { type ContentInput, keepSentences, type StepContent } from "./content.ts";

export function wedgeContent({ t, plan, hasJig }: ContentInput): StepContent {
  const { pin, wedge, capIron, wood } = t.plane.design;
  const seat = pinSeat(t.plane);
  return {
    numbers: [
      ...t.figureRow("wedgeAngle"),
      ...t.figureRow("wedgeTip"),
      ...t.figureRow("wedgeButt"),
      ...t.figureRow("wedgeLength"),
      ...t.figureRow("wedgeWidth"),
      ...t.figureRow("wedgeAtPin", WEDGE.atPin),
      ...t.figureRow("wedgeTipFromEdge"),
      ...t.figureRow("pinDiameter", WEDGE.pinSize),
      ...t.figureRow("pinBody", WEDGE.pinLength),
      ...t.figureRow("tenonDiameter", WEDGE.tenon),
      ...t.figureRow("tenonLength"),
    ],
    instructions: keepSentences(
      WEDGE.pin({ flatted: pin.section === "flatted", rings: wood.pinRings === 0 ? undefined : t.deg(wood.pinRings) }),
      WEDGE.blank({ fromWaste: plan.offcut.wedge.fits }),
      WEDGE.taper({ angle: t.deg(wedge.angle), hasSled: hasJig("wedge-sled") }),
      seat.gives > 0 && WEDGE.gives({ gives: t.mm(seat.gives), further: t.mm(seat.wedgeFurtherIn) }),
      WEDGE.clearance({ clearance: t.mm(wedge.clearance) }),
      WEDGE.tip,
    ),
    checks: [WEDGE.bears({ on: capIron.thickness > 0 ? "cap iron" : "iron" }), WEDGE.chalk],
    cautions: ["smallParts", "handTools"],
    draw: (room) => wedgePicture(t, room),
    jigs: ["wedge-sled"],
  };
}

export function dryFitContent({ t, plan }: ContentInput): StepContent {
  const { plane } = t;
  const { shift } = plan.marks;
  const hasPegs = pegHoles(plane).length > 0;
  const capped = plane.design.capIron.thickness > 0;
  return {
    numbers: [
      ...t.figureRow("edgeHeightAtContact", DRY_FIT.edge),
      ...readAgain(...t.figureRow("setInToe", DRY_FIT.frontSetIn), ...t.figureRow("setInHeel", DRY_FIT.bedSetIn)),
      ...tipRows(t, true),
      ...pegRows(t),
      ...readAgain(...t.figureRow("wedgeTipFromEdge", DRY_FIT.wedgeTip)),
    ],
    instructions: keepSentences(
      DRY_FIT.scrape,
      ...(isPlacedByContact(plane) ? contactTexts(t) : markTexts(t)),
      DRY_FIT.read,
      DRY_FIT.marks({ front: t.mm(shift["front block"]), bed: t.mm(Math.abs(shift["bed block"])) }),
      hasPegs ? DRY_FIT.pegs : DRY_FIT.noPegs,
      DRY_FIT.tryIron({ capped }),
      DRY_FIT.fitWedge({
        atContact: isPlacedByContact(plane),
        edge: t.mm(plane.design.sole.allowance),
        tip: t.mm(t.figure("wedgeTipFromEdge")),
      }),
      DRY_FIT.again,
    ),
    checks: [
      DRY_FIT.free({ parts: plane.recess ? DRY_FIT.withHead : DRY_FIT.withoutHead }),
      DRY_FIT.flush,
      DRY_FIT.ready,
    ],
    cautions: ["sharpIron", "drilling"],
    draw: (room) => dryFitPicture(t, room),
    jigs: ["throat-spacer"],
  };
}

/** Where the blocks stand on the sole of the blank; of a bed whose feather is off also what can be touched there. */
function tipRows(t: StepContext, isRead = false): StepNumber[] {
  const { points } = t.plane;
  const blanks = (rows: StepNumber[]) => (isRead ? readAgain(...rows) : rows);
  const tip = t.figureRow("bedTipFromEnd", DRY_FIT.bedTip);
  const front = blanks(t.figureRow("rampTipFromEnd", DRY_FIT.rampTip));
  const gap = (label: string) => blanks(t.figureRow("tipGap", label));
  if (points.bedChamfer.x === points.bedTip.x) return [...blanks(tip), ...front, ...gap(DRY_FIT.gap)];
  const foot = t.planeRow(DRY_FIT.bedFoot, (plane) => fromToeEnd(plane, plane.points.bedChamfer.x));
  return [...tip, ...front, ...blanks([foot]), ...gap(DRY_FIT.gapFeatherOff)];
}

/** What the pegs are bored with, and where. */
function pegRows(t: StepContext): StepNumber[] {
  const pegs = pegHoles(t.plane);
  const [peg] = pegs;
  if (!peg) return [];
  const { sole } = stageExtent(t.plane, "blank");
  const heights = pegs.filter(({ centre }) => centre.x === peg.centre.x).map(({ centre }) => t.mm(centre.y - sole));
  return [
    { label: DRY_FIT.pegDrill, value: formatDrill(t.design.pegs.diameter, t.design) },
    t.planeRow(DRY_FIT.pegPlace, (plane) => pegHoles(plane)[0]!.centre.x - stageExtent(plane, "blank").toe),
    { label: DRY_FIT.pegHeights, value: listText(heights) },
  ];
}

/** The front block's place by contact with the iron: contact governs, the spacer only checks it. */
const contactTexts = (t: StepContext): string[] => [
  DRY_FIT.shims({ height: t.mm(t.figure("edgeHeightAtContact")), capOff: t.plane.design.capIron.thickness > 0 }),
  DRY_FIT.bedBlock({ setIn: t.mm(t.plane.cuts.setInHeel), withIron: true }),
  DRY_FIT.contact,
];

/** The blocks' places by their marks, where the maker wants it so or the iron's edge would stand below the sole. */
const markTexts = (t: StepContext): string[] => [
  DRY_FIT.bedBlock({ setIn: t.mm(t.plane.cuts.setInHeel), withIron: false }),
  DRY_FIT.toMark({ setIn: t.mm(t.plane.cuts.setInToe), edgeBelow: t.figure("edgeHeightAtContact") < 0 }),
];

export function glueContent({ t, plan, hasJig }: ContentInput): StepContent {
  const { plane } = t;
  const { bedChamfer, bedTip } = plane.points;
  const [behind, height] = [bedChamfer.x - bedTip.x, bedChamfer.y - bedTip.y];
  return {
    numbers: [...tipRows(t)],
    instructions: keepSentences(
      GLUE_UP.wax,
      GLUE_UP.glue({ free: glueFreeText(t) }),
      GLUE_UP.order({ hasPegs: pegHoles(plane).length > 0 }),
      GLUE_UP.clamps,
      hasJig("throat-spacer") && GLUE_UP.spacer,
      GLUE_UP.readTips,
      behind > 0 &&
        GLUE_UP.footRead({
          chamfer: t.mm(behind),
          height: t.mm(height),
          factor: formatDecimal(cotDeg(plane.frame.bedAngle), 3),
        }),
      GLUE_UP.scrape,
      GLUE_UP.rest,
    ),
    checks: [GLUE_UP.turns, GLUE_UP.entered],
    cautions: ["glue"],
    draw: (room) => gluePicture(t, plan, room),
  };
}
