// A class that was read → what the page shows of it.
import { asBuiltPlane, STEPS, stepsDone } from "@lamplane/bench";
import { classBoardsText } from "@lamplane/bench/boards";
import {
  hurdleText,
  measuredText,
  obstacleText,
  type PlaneStatus,
  planeStatus,
  setupLines,
  stepText,
} from "@lamplane/bench/class";
import { nestingLines } from "@lamplane/export/nested";
import { shopNameOf } from "@lamplane/parameters/design";
import type { Elevation } from "@lamplane/parameters/elevation";
import type { DesignText } from "@lamplane/parameters/roster";
import { formatBareLength, formatLength } from "@lamplane/parameters/units";
import { FIRST_SHOWN } from "../../protocol/build-steps.ts";
import type { ClassText, ClassView, PlaneCard, PlaneProgress } from "../../protocol/class-view.ts";
import { CLASS } from "../../words/class.ts";
import { elevationView } from "../views/elevation-view.ts";
import { type ReadClass, type ReadPlane, soundNumbers } from "./read-class.ts";

export function classView(read: ReadClass): ClassView {
  const { name, planes, setups, boards, nesting, coreWidths, shop } = read;
  const first = planes.find(({ made }) => made)?.made?.design;
  const cards = planes.map((plane) => planeCard(plane, shop));
  const drawn = cards.flatMap(({ plane }) => plane ?? []);
  return {
    name,
    heading: CLASS.heading({
      planes: planes.length,
      built: drawn.filter(({ stepsDone: done, steps }) => done === steps).length,
      stuck: drawn.filter(({ isStuck }) => isStuck).length,
      faulty: planes.length - drawn.length,
    }),
    setups: first ? setupLines(setups, first, soundNumbers(planes)).map((line) => line.trim()) : [],
    boards: boards ? classBoardsText(boards.sheet, boards.layout).split("\n").slice(1) : [],
    coreWidths,
    sheets: nesting ? nestingLines(nesting) : [],
    planes: cards,
    faults: [],
  };
}

function planeCard({ number, name, made, faults }: ReadPlane, shop: ClassText | undefined): PlaneCard {
  if (!made) return { number, name: name === "" ? CLASS.unnamed : name, notes: faults };
  const status = planeStatus(made.design);
  return {
    number,
    name,
    notes: status.stuckOn.map((obstacle) => obstacleText(made.design, obstacle)),
    plane: { ...planeProgress(made, status), ...(shop && shopNameOf(made.text) !== undefined ? { shop } : {}) },
  };
}

function planeProgress({ text, design }: DesignText, status: PlaneStatus): PlaneProgress {
  const plane = asBuiltPlane(design);
  const drawing = drawingOf(plane);
  return {
    file: { name: `${design.name}.yaml`, text },
    ...(drawing ? { drawing } : {}),
    size: CLASS.size({
      iron: `${formatBareLength(plane.design.iron.width, design)} × ${formatLength(plane.design.iron.thickness, design)}`,
      core: formatLength(plane.widths.core, design),
    }),
    step: stepText(design, status),
    stepsDone: status.step === undefined ? Object.keys(STEPS).length : stepsDone(design),
    steps: Object.keys(STEPS).length,
    measured: measuredText(design, status),
    hurdle: hurdleText(status),
    isStuck: status.stuckOn.length > 0,
  };
}

/** Undefined for a plane that cannot be drawn: its checks say why. */
function drawingOf(plane: Elevation) {
  try {
    const { box, marks } = elevationView({ plane, solved: {} }, FIRST_SHOWN);
    return { box, marks: marks.flatMap(({ d, area }) => (area ? [{ d, area }] : [])) };
  } catch {
    return undefined;
  }
}
