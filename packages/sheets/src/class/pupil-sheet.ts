// One pupil's page as plain data: the plane cut along its middle, and the numbers that tell it from its neighbours'.
import type { Design } from "@lamplane/parameters/table";
import type { Picture } from "../picture/picture.ts";
import { sectionPicture } from "../traveller/draw/section.ts";
import { keyFigures } from "../traveller/front-matter.ts";
import type { StepNumber } from "../traveller/step.ts";
import { stepContext } from "../traveller/step-context.ts";
import { STEP_ROOM } from "../traveller/views.ts";

export interface PupilSheet {
  readonly name: string;
  readonly section: Picture;
  readonly keyFigures: readonly StepNumber[];
  readonly sawing: readonly StepNumber[];
}

export function pupilSheet(design: Design): PupilSheet {
  const t = stepContext(design, "shaping");
  const sawing = (
    [
      "coreWidth",
      "sawRamp",
      "rampMark",
      "sawBed",
      "bedMark",
      "recessDepth",
      "pinX",
      "pinOverBlankSole",
      "edgeHeightAtContact",
    ] as const
  ).flatMap((key) => t.figureRow(key));
  return { name: design.name, section: sectionPicture(t, STEP_ROOM), keyFigures: keyFigures(t), sawing };
}
